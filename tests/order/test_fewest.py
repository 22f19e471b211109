import json
import os
from pathlib import Path

import oracles
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from strategies import problems, reason, reasons, setups

from seqplan.order.changes import count_changes
from seqplan.order.fewest import fewest_changes
from seqplan.order.limits import StateLimit
from seqplan.order.result import Proof

DATA = Path(os.environ.get("SEQPLAN_DATA", Path(__file__).parents[3] / "shared" / "data"))
INSTANCES = sorted((DATA / "garmentlike").glob("*_n[01]*.json"))
needs_data = pytest.mark.skipif(not INSTANCES, reason=f"no garment-like instances in {DATA}")

PUBLISHED_BATCHES = {"layered_n030_k4_s0": 13, "parts_n030_k4_s0": 10, "layered_n030_k6_s2": 8}
"""Proven by another solver with another model."""


@st.composite
def tasks(draw, **options):
    names, given_reasons = draw(problems(**options))
    return names, given_reasons, draw(setups(names))


def agrees(task):
    names, given_reasons, setup_of = task
    expected = oracles.fewest_changes(names, given_reasons, setup_of)
    result = fewest_changes(names, given_reasons, setup_of)
    if expected is None:
        assert result.proof is Proof.INFEASIBLE
        assert result.order is None
        assert result.gap is None
        return
    assert result.proof is Proof.OPTIMAL
    assert result.cost == result.lower_bound == expected
    assert oracles.holds(result.order, given_reasons)
    assert sorted(result.order) == sorted(names)
    assert oracles.changes(result.order, setup_of) == expected


@given(tasks(most=6, most_choices=0, acyclic=True))
@settings(max_examples=100)
def test_plain_arcs_cost_what_trying_every_order_says(task):
    agrees(task)


@given(tasks(most=6, most_choices=5, acyclic=True))
@settings(max_examples=90)
def test_either_ors_cost_what_trying_every_order_says(task):
    agrees(task)


@given(tasks(most=5, most_arcs=6, most_choices=6))
@settings(max_examples=100)
def test_an_impossible_task_is_called_infeasible(task):
    agrees(task)


@given(tasks(most=6, acyclic=True), st.randoms(use_true_random=False))
@settings(max_examples=60)
def test_shuffled_reasons_give_the_same_order(task, shuffler):
    names, given_reasons, setup_of = task
    shuffled = list(given_reasons)
    shuffler.shuffle(shuffled)
    assert fewest_changes(names, shuffled, setup_of) == fewest_changes(
        names, given_reasons, setup_of
    )


@given(tasks(least=2, most=8, acyclic=True), st.data())
@settings(max_examples=60)
def test_one_reason_more_never_lowers_the_cost(task, data):
    names, given_reasons, setup_of = task
    more = [*given_reasons, *data.draw(reasons(names, most_arcs=1, most_choices=1))]
    before, after = (fewest_changes(names, each, setup_of) for each in (given_reasons, more))
    assert after.proof is Proof.INFEASIBLE or before.cost <= after.cost


@given(tasks(most=6, acyclic=True), st.integers(0, 3))
@settings(max_examples=60)
def test_a_search_that_is_stopped_says_what_is_known(task, most):
    names, given_reasons, setup_of = task
    expected = oracles.fewest_changes(names, given_reasons, setup_of)
    result = fewest_changes(names, given_reasons, setup_of, limit=StateLimit(most))
    assert result.states <= most
    if expected is None:
        assert result.proof is Proof.INFEASIBLE
        return
    assert result.lower_bound <= expected <= result.cost
    assert (result.gap == 0) == (result.proof is Proof.OPTIMAL)
    assert oracles.holds(result.order, given_reasons)
    assert oracles.changes(result.order, setup_of) == result.cost


def test_within_a_visit_the_written_order_is_kept():
    setup_of = {"d": 1, "a": 1, "x": 2, "c": 1, "b": 1}
    order = fewest_changes("daxcb", [reason("bc")], setup_of).order
    assert order == ("d", "a", "b", "c", "x")


def test_no_operations_need_no_change():
    result = fewest_changes((), (), {})
    assert (result.order, result.cost, result.proof) == ((), 0, Proof.OPTIMAL)


def test_the_cheaper_alternative_is_taken():
    """The written order costs two changes, the other alternative one."""
    setup_of = {"a": 1, "x": 2, "b": 1}
    result = fewest_changes("axb", [reason("ax xb", "ab bx")], setup_of)
    assert result.order == ("a", "b", "x")
    assert result.cost == 1


def test_changes_are_counted_between_neighbours():
    assert count_changes("abc", {"a": 1, "b": 1, "c": 2}) == 1
    assert count_changes("", {}) == 0


@needs_data
@pytest.mark.parametrize("path", [each for each in INSTANCES if "n200" not in each.name], ids=str)
def test_garment_like_instances_are_proven(path):
    instance = json.loads(path.read_text(encoding="utf-8"))
    names = [chr(1000 + number) for number in range(instance["n"])]
    given_reasons = [reason(names[one] + names[other]) for one, other in instance["edges"]]
    setup_of = dict(zip(names, instance["class_of"], strict=True))
    result = fewest_changes(names, given_reasons, setup_of)
    assert result.proof is Proof.OPTIMAL
    assert result.cost == count_changes(result.order, setup_of)
    assert oracles.holds(result.order, given_reasons)
    if path.stem in PUBLISHED_BATCHES:
        assert result.cost + 1 == PUBLISHED_BATCHES[path.stem]
