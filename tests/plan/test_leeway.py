"""Leeway: the places of operations, judged by every order that there is."""

from dataclasses import replace
from functools import cache

import pytest
from garments.shipped import GARMENTS, opened
from hypothesis import assume, given, settings
from hypothesis import strategies as st
from oracles import positions, valid_orders
from strategies import arcs, problems, reason

from seqplan.base.strength import Strength
from seqplan.graph.directions import NoOrderError, is_feasible
from seqplan.graph.reason import Arc
from seqplan.order.limits import StateLimit
from seqplan.plan.leeway import find_leeways, leeways
from seqplan.plan.lessons import LESSON


@cache
def _found(name, parts):
    garment = opened(name)
    return find_leeways(garment.garment, garment.binding, parts=parts)


def _places(orders, name):
    return {positions(order)[name] + 1 for order in orders}


def _binding(problem):
    names, reasons = problem
    return names, [each for each in reasons if each.strength is not Strength.PREFER]


def _musts(reasons):
    return [each for each in reasons if each.strength is Strength.MUST]


@given(problems(most=5, acyclic=True))
@settings(max_examples=100, deadline=None)
def test_the_earliest_and_the_latest_place_are_those_of_all_orders(problem):
    names, reasons = _binding(problem)
    orders = valid_orders(names, reasons)
    assume(orders)
    loose = valid_orders(names, _musts(reasons))
    found = leeways(names, reasons)
    assert [row.name for row in found.rows] == list(names)
    for row in found.rows:
        held, must = _places(orders, row.name), _places(loose, row.name)
        assert (row.span.earliest, row.span.latest) == (min(held), max(held))
        assert (row.must.earliest, row.must.latest) == (min(must), max(must))
        assert row.span.is_proven
        assert row.must.is_proven
        if not found.has_choices:
            assert held == set(range(row.span.earliest, row.span.latest + 1))


@given(problems(most=5, acyclic=True))
@settings(max_examples=100, deadline=None)
def test_what_is_told_to_come_before_or_after_does_so_in_every_order(problem):
    names, reasons = _binding(problem)
    orders = valid_orders(names, reasons)
    assume(orders)
    loose = valid_orders(names, _musts(reasons))
    for row in leeways(names, reasons).rows:
        for neighbours, is_after in ((row.before, False), (row.after, True)):
            for each in neighbours:
                among = loose if each.strength is Strength.MUST else orders
                for place in map(positions, among):
                    assert (place[row.name] < place[each.name]) == is_after


@given(problems(most=5, most_choices=0, acyclic=True))
@settings(max_examples=100, deadline=None)
def test_without_choices_it_is_too_late_for_exactly_what_no_order_puts_between(problem):
    names, reasons = _binding(problem)
    musts = _musts(reasons)
    orders = [positions(order) for order in valid_orders(names, musts)]
    for row in leeways(names, musts).rows:
        after = {n for n in names if all(place[row.name] < place[n] for place in orders)}
        direct = {
            n
            for n in after
            if not any(all(place[m] < place[n] for place in orders) for m in after - {n})
        }
        assert set(row.too_late) == direct


@given(problems(most=5, acyclic=True), st.integers(0, 2))
@settings(max_examples=100, deadline=None)
def test_a_search_that_is_broken_off_gives_a_bound_that_no_order_goes_beyond(problem, states):
    names, reasons = _binding(problem)
    orders = valid_orders(names, reasons)
    assume(orders)
    for row in leeways(names, reasons, limit=StateLimit(states)).rows:
        held = _places(orders, row.name)
        assert row.span.earliest <= min(held)
        assert row.span.latest >= max(held)
        if row.span.is_proven:
            assert (row.span.earliest, row.span.latest) == (min(held), max(held))


@given(problems(most=5, acyclic=True), st.data())
@settings(max_examples=100, deadline=None)
def test_the_places_are_those_of_the_orders_in_which_one_can_work(problem, data):
    """What can be worked in is only told order by order, and yet no place is missed or made up."""
    names, reasons = _binding(problem)
    hidden = data.draw(st.lists(arcs(names), max_size=3)) if len(names) > 1 else []
    needs = [reason(f"{arc.before}{arc.after}") for arc in hidden]
    orders = valid_orders(names, [*reasons, *needs])
    assume(orders)
    loose = valid_orders(names, [*_musts(reasons), *needs])

    def teach(order):
        broken = [need for need in needs if not need.is_held(positions(order))]
        return not broken, next(iter(broken), None)

    for row in leeways(names, reasons, teach=teach).rows:
        held, must = _places(orders, row.name), _places(loose, row.name)
        assert (row.span.earliest, row.span.latest) == (min(held), max(held))
        assert (row.must.earliest, row.must.latest) == (min(must), max(must))
        assert row.span.is_proven
        assert row.must.is_proven


def test_places_at_which_nobody_can_work_and_nothing_is_learnt_are_only_bounds():
    (a, _) = leeways("ab", [], teach=lambda order: (order[0] == "a", None)).rows
    assert (a.span.earliest, a.span.latest) == (1, 2)
    assert not a.span.is_proven


def test_reasons_that_admit_no_order_are_refused():
    with pytest.raises(NoOrderError):
        leeways("ab", [reason("ab"), reason("ba")])


def test_a_should_narrows_the_places_and_the_musts_alone_do_not():
    found = leeways("abc", [reason("ab"), reason("bc", strength=Strength.SHOULD)])
    (row,) = (row for row in found.rows if row.name == "b")
    assert (row.span.earliest, row.span.latest) == (2, 2)
    assert (row.must.earliest, row.must.latest) == (2, 3)
    assert row.too_late == ()
    assert [each.name for each in row.after] == ["c"]


def test_an_either_or_leaves_the_better_of_both_and_is_told():
    # a comes before b and c, or after both: never between them.
    found = leeways("abc", [reason("ab ac", "ba ca")])
    row = found.rows[0]
    assert (row.span.earliest, row.span.latest) == (1, 3)
    assert found.has_choices
    assert len(row.choices) == 1


@pytest.mark.parametrize("path", GARMENTS, ids=lambda path: path.stem)
@pytest.mark.parametrize("parts", [False, True])
def test_the_written_place_of_a_shipped_garment_lies_within_its_leeway(path, parts):
    found = _found(path.stem, parts)
    assert found.is_of_entries != parts
    for row in found.rows:
        assert row.span.is_proven
        assert row.must.is_proven
        assert row.must.earliest <= row.span.earliest <= row.written
        assert row.written <= row.span.latest <= row.must.latest
        assert row.must.earliest >= 1
        assert row.must.latest <= found.places


@pytest.mark.parametrize("path", GARMENTS, ids=lambda path: path.stem)
def test_what_it_is_too_late_for_cannot_be_passed(path):
    """By a must of the garment, or because an order the other way round gets stuck."""
    garment = opened(path.stem)
    c = garment.garment
    musts = _musts(garment.binding.held)
    for row in _found(path.stem, True).rows:
        for each in row.after:
            turned = replace(musts[0], alternatives=((Arc(each.name, row.name),),))
            if each.strength is Strength.MUST and LESSON not in {r.rule for r in each.reasons}:
                assert not is_feasible(c.ids, [*musts, turned])


def test_what_only_a_rehearsal_shows_makes_it_too_late():
    (row,) = (row for row in _found("chandlery-tote", False).rows if row.name == "interface")
    (turned,) = (each for each in row.after if each.name == "turn")
    assert [reason.rule for reason in turned.reasons] == [LESSON]
    assert row.too_late == ("turn",)
