from itertools import pairwise

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from oracles import fewest_given_up, has_order
from strategies import problems, reason

from seqplan.base.strength import Strength
from seqplan.graph.conflict import conflicts, find_conflict, give_up
from seqplan.graph.directions import NoOrderError
from seqplan.graph.reason import ReasonKind


def without(reasons, dropped):
    return [each for each in reasons if each is not dropped]


@given(problems(most=5, most_arcs=7))
@settings(max_examples=100)
def test_conflicts_are_reported_exactly_when_no_order_exists(problem):
    names, given_reasons = problem
    assert bool(conflicts(names, given_reasons)) == (not has_order(names, given_reasons))


@given(problems(least=2, most=4, most_arcs=8))
@settings(max_examples=90)
def test_a_conflict_less_any_one_reason_admits_an_order(problem):
    names, given_reasons = problem
    for conflict in conflicts(names, given_reasons):
        assert set(conflict.reasons) <= set(given_reasons)
        assert not has_order(names, conflict.reasons)
        for each in conflict.reasons:
            assert has_order(names, without(conflict.reasons, each))


@given(problems(least=2, most=4, most_arcs=8))
@settings(max_examples=90)
def test_giving_up_the_weakest_of_every_conflict_is_enough(problem):
    names, given_reasons = problem
    weakest = {conflict.weakest for conflict in conflicts(names, given_reasons)}
    assert has_order(names, [each for each in given_reasons if each not in weakest])


@given(problems(most=5, most_arcs=7), st.randoms(use_true_random=False))
def test_shuffled_reasons_give_the_same_conflicts(problem, shuffler):
    names, given_reasons = problem
    shuffled = list(given_reasons)
    shuffler.shuffle(shuffled)
    assert conflicts(names, shuffled) == conflicts(names, given_reasons)


@given(problems(least=2, most=4, most_arcs=6, most_choices=3), st.data())
@settings(max_examples=90)
def test_what_is_given_up_is_the_least(problem, data):
    names, given_reasons = problem
    split = data.draw(st.integers(0, len(given_reasons)))
    musts, shoulds = given_reasons[:split], given_reasons[split:]
    expected = fewest_given_up(names, musts, shoulds)
    if expected is None:
        with pytest.raises(NoOrderError, match="admit no order"):
            give_up(names, musts, shoulds)
        return
    dropped = give_up(names, musts, shoulds)
    assert (len(dropped), sum(each.strength.weight for each in dropped)) == expected
    assert has_order(names, [*musts, *(each for each in shoulds if each not in dropped)])


def test_a_cycle_is_told_as_a_chain():
    given_reasons = [reason("bc"), reason("ca"), reason("ab"), reason("ad")]
    (conflict,) = conflicts("abcd", given_reasons)
    assert [arc.before + arc.after for arc in conflict.chain] == ["ab", "bc", "ca"]
    for each, arc in zip(conflict.reasons, conflict.chain, strict=True):
        assert each.alternatives == ((arc,),)
    assert all(one.after == other.before for one, other in pairwise(conflict.chain))


def test_of_two_reasons_for_one_arc_the_stronger_is_named():
    weak = reason("ab", strength=Strength.SHOULD)
    strong = reason("ab", strength=Strength.MUST)
    back = reason("ba", strength=Strength.PREFER)
    (conflict,) = conflicts("ab", [weak, strong, back])
    assert conflict.reasons == (strong, back)
    assert conflict.weakest == back


def test_of_two_equally_strong_reasons_for_one_arc_the_said_one_is_not_named():
    said = reason("ab", kind=ReasonKind.SAID)
    needs = reason("ab", kind=ReasonKind.NEEDS)
    (conflict,) = conflicts("ab", [said, needs, reason("ba")])
    assert needs in conflict.reasons
    assert said not in conflict.reasons


def test_conflicts_that_share_nothing_come_before_those_that_do():
    shared = reason("ab")
    first, second, apart = reason("ba"), reason("bc"), [reason("de"), reason("ed")]
    back = reason("ca", strength=Strength.MUST)
    weak = reason("ba", strength=Strength.PREFER)
    found = conflicts("abcde", [shared, weak, second, back, *apart])
    assert [{*each.reasons} for each in found] == [
        {shared, weak},
        {*apart},
        {shared, second, back},
    ]
    assert first not in found[0].reasons


def test_a_conflict_with_an_either_or_holds_only_what_is_needed():
    needed = [reason("ab"), reason("bc"), reason("ca", "ba")]
    given_reasons = [*needed, reason("ad"), reason("dc", "cd")]
    (conflict,) = conflicts("abcd", given_reasons)
    assert set(conflict.reasons) == set(needed)
    assert conflict.chain == ()


def test_a_bundle_that_enters_a_cycle_twice_is_listed_once():
    bundle = reason("ab cd")
    (conflict,) = conflicts("abcd", [bundle, reason("bc"), reason("da")])
    assert set(conflict.reasons) == {bundle, reason("bc"), reason("da")}
    assert len(conflict.reasons) == 3
    assert conflict.chain == ()


def test_an_operation_before_itself_is_a_conflict_of_its_own():
    found = find_conflict("ab", [reason("aa")])
    assert found.reasons == (reason("aa"),)


def test_no_conflict_is_found_where_there_is_an_order():
    assert find_conflict("abc", [reason("ab"), reason("cb", "ba")]) is None


def test_the_weaker_of_two_candidates_is_given_up():
    should = reason("ab", strength=Strength.SHOULD)
    prefer = reason("bc", strength=Strength.PREFER)
    assert give_up("abc", [reason("ca")], [should, prefer]) == (prefer,)


def test_fewer_reasons_are_given_up_even_if_they_are_stronger():
    should = reason("ab", strength=Strength.SHOULD)
    prefers = [reason("ba", strength=Strength.PREFER), reason("bc ca", strength=Strength.PREFER)]
    assert give_up("abc", [], [should, *prefers]) == (should,)
