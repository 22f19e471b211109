from itertools import permutations

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from oracles import holds
from strategies import problems, reason

from seqplan.graph.choices import Problem
from seqplan.graph.precedence import UnknownOperationError


def agrees(decision, order):
    """Whether an order keeps to everything that is settled; ``order`` lists indices."""
    place = {node: number for number, node in enumerate(order)}
    return all(
        place[before] < place[after]
        for before in place
        for after in place
        if decision.closure.has(before, after)
    )


@given(problems(least=2, most=5, most_choices=4, acyclic=True))
@settings(max_examples=90)
def test_settling_loses_no_order_that_holds_everything(problem):
    names, given_reasons = problem
    start = Problem.of(names, given_reasons).start
    for order in permutations(range(len(names))):
        if holds([names[node] for node in order], given_reasons):
            assert start is not None
            assert agrees(start, order)


@given(problems(least=2, most=5, most_choices=4, acyclic=True), st.data())
@settings(max_examples=90)
def test_the_cases_of_an_either_or_lose_no_order_that_holds_everything(problem, data):
    names, given_reasons = problem
    start = Problem.of(names, given_reasons).start
    if start is None or not start.alive:
        return
    number = data.draw(st.sampled_from(sorted(start.alive)))
    children = list(start.children(number, range(len(names))))
    bundles = Problem.of(names, given_reasons).choices[number].alternatives
    for order in permutations(range(len(names))):
        if holds([names[node] for node in order], given_reasons):
            fitting = sum(agrees(child, order) for child in children)
            assert fitting >= 1
            if all(len(bundle) == 1 for bundle in bundles):
                assert fitting == 1


def test_an_alternative_that_closes_a_cycle_forces_the_other():
    start = Problem.of("abcd", [reason("ab"), reason("bc"), reason("ca", "cd")]).start
    assert start.alive == {}
    assert start.chosen == {0: 1}


def test_forced_alternatives_force_others_in_turn():
    given_reasons = [reason("ab"), reason("ba", "bc"), reason("ca", "cd"), reason("dc", "de")]
    assert Problem.of("abcde", given_reasons).start.alive == {}


def test_arcs_that_all_alternatives_share_are_settled():
    start = Problem.of("abcd", [reason("ab ac", "ab ad")]).start
    assert start.closure.has(0, 1)


def test_shared_arcs_that_close_a_cycle_leave_no_way():
    assert Problem.of("abcd", [reason("ab ba", "ab ba cd")]).start is None


def test_an_alternative_already_implied_satisfies_its_choice():
    start = Problem.of("abc", [reason("ab"), reason("bc"), reason("ca", "ac")]).start
    assert start.chosen == {0: 1}


def test_a_last_alternative_that_clashes_with_itself_leaves_no_way():
    assert Problem.of("abc", [reason("ac"), reason("ab ba", "ca")]).start is None


def test_either_ors_that_offer_the_same_are_one_choice():
    problem = Problem.of("abc", [reason("ab", "bc"), reason("ac"), reason("ab", "bc")])
    assert [choice.places for choice in problem.choices] == [(0, 2)]


def test_a_choice_whose_alternatives_all_close_cycles_leaves_no_way():
    assert Problem.of("abc", [reason("ab"), reason("bc"), reason("ba", "cb")]).start is None


def test_an_unknown_operation_is_named():
    with pytest.raises(UnknownOperationError, match="`x` is not among"):
        Problem.of("ab", [reason("ax", "ab")])
