import pytest
from strategies import reason

from seqplan.base.strength import Strength
from seqplan.graph.reason import Reason, ReasonKind


def place(order):
    return {name: number for number, name in enumerate(order)}


def test_all_alternatives_that_hold_are_told():
    either = reason("ab cb", "bc", "ac")
    assert either.held_alternatives(place("acb")) == (0, 2)
    assert either.held_alternatives(place("abc")) == (1, 2)
    assert either.held_alternatives(place("cba")) == ()


def test_a_reason_is_held_when_one_alternative_is():
    assert reason("ab", "cb").is_held(place("cba"))
    assert not reason("ab", "cb").is_held(place("bca"))


def test_a_reason_speaks_of_all_operations_in_its_alternatives():
    assert reason("ab", "cb db").operations == set("abcd")


def test_only_more_than_one_alternative_is_a_choice():
    assert reason("ab", "ba").is_either_or
    assert not reason("ab cb").is_either_or


@pytest.mark.parametrize(
    "alternatives",
    [
        (),  # no way to hold it
        ((),),  # a bundle that asks for nothing
        (reason("ab").alternatives[0], ()),
    ],
)
def test_a_reason_that_asks_for_nothing_is_refused(alternatives):
    with pytest.raises(ValueError, match="at least one alternative"):
        Reason(
            alternatives=alternatives,
            kind=ReasonKind.RULE,
            strength=Strength.MUST,
            rule="made-up",
            because="It is so.",
        )
