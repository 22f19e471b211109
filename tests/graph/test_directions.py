import random

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from oracles import has_order, holds, positions
from strategies import problems, reason

from seqplan.graph.directions import find_directions, is_feasible
from seqplan.graph.precedence import Precedence, UnknownOperationError


@given(problems(most=5, most_arcs=5, most_choices=6))
@settings(max_examples=90)
def test_directions_are_found_exactly_when_an_order_exists(problem):
    names, given_reasons = problem
    chosen = find_directions(names, given_reasons)
    assert (chosen is not None) == has_order(names, given_reasons)
    assert is_feasible(names, given_reasons) == has_order(names, given_reasons)
    if chosen is not None:
        arcs = [
            arc
            for each, index in zip(given_reasons, chosen, strict=True)
            for arc in each.alternatives[index]
        ]
        assert holds(Precedence.of(names, arcs).topological_order(), given_reasons)


@given(problems(most=5, most_choices=6), st.randoms(use_true_random=False))
def test_shuffled_reasons_get_the_same_directions(problem, shuffler):
    names, given_reasons = problem
    chosen = find_directions(names, given_reasons)
    places = list(range(len(given_reasons)))
    shuffler.shuffle(places)
    shuffled = find_directions(names, [given_reasons[place] for place in places])
    assert shuffled == (None if chosen is None else tuple(chosen[place] for place in places))


@given(problems(least=2, most=5, most_choices=6), st.data())
def test_an_order_that_holds_everything_gets_the_directions_that_hold_in_it(problem, data):
    names, given_reasons = problem
    order = data.draw(st.permutations(names))
    place = positions(order)
    held = [each for each in given_reasons if each.is_held(place)]
    chosen = find_directions(names, held, preferred=place)
    assert all(
        index in each.held_alternatives(place) for each, index in zip(held, chosen, strict=True)
    )


def test_the_author_s_order_decides_where_nothing_else_does():
    assert find_directions("ab", [reason("ba", "ab")]) == (1,)


def test_a_preferred_order_decides_where_nothing_else_does():
    preferred = {"a": 1, "b": 0}
    assert find_directions("ab", [reason("ab", "ba")], preferred=preferred) == (1,)


def test_forced_alternatives_force_others_in_turn():
    given_reasons = [reason("ab"), reason("ba", "bc"), reason("ca", "cd"), reason("dc", "de")]
    assert find_directions("abcde", given_reasons) == (0, 1, 1, 1)


def test_a_bundle_that_clashes_with_itself_is_no_way_out():
    assert find_directions("abc", [reason("ab ba", "bc cb")]) is None
    assert find_directions("abc", [reason("ab ba", "bc")]) == (1,)


def test_an_unknown_operation_is_named():
    with pytest.raises(UnknownOperationError, match="`x` is not among"):
        find_directions("ab", [reason("ax", "ab")])


def test_many_crossings_of_many_seams_are_settled():
    """Three alternatives each over forty operations: tight, yet settled without trouble."""
    shuffler = random.Random(3)
    names = [chr(number) for number in range(200, 240)]
    hidden = shuffler.sample(names, 40)
    given_reasons = []
    for _ in range(150):
        right, *wrong = (sorted(shuffler.sample(range(40), 2)) for _ in range(3))
        ways = (right, *(pair[::-1] for pair in wrong))
        given_reasons.append(reason(*(hidden[one] + hidden[other] for one, other in ways)))
    assert find_directions(names, given_reasons) is not None
