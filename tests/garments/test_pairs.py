"""What a sample maker would say about the shipped garments, before asking the program.

For each garment, pairs that no sound order turns round, each with the reason why, and pairs that
sound orders show both ways.
"""

import pytest
from garments.shipped import GARMENTS, expected, opened
from rules.reasoning import can_precede

from seqplan.base.strength import Strength

PAIRS = expected("pairs")


def each(heading, mark):
    for name, data in PAIRS.items():
        for pair in data.get(heading, {}):
            one, between, other = pair.split()
            if between == mark:
                yield pytest.param(name, one, other, id=f"{name}: {pair}")


def ways(name, one, other):
    """Whether sound orders show a pair as it stands, and turned round."""
    data = PAIRS[name]
    garment = opened(data.get("garment", name), tuple(data.get("picks", {}).items()))
    assert {one, other} <= set(garment.garment.ids)
    reasons = [r for r in garment.reasons if r.strength is not Strength.PREFER]
    return can_precede(reasons, one, other), can_precede(reasons, other, one)


@pytest.mark.parametrize(("name", "before", "after"), list(each("ordered", "<")))
def test_no_sound_order_turns_this_pair_round(name, before, after):
    assert ways(name, before, after) == (True, False)


@pytest.mark.parametrize(("name", "one", "other"), list(each("free", "-")))
def test_sound_orders_show_this_pair_both_ways(name, one, other):
    assert ways(name, one, other) == (True, True)


def test_ten_pairs_of_each_kind_stand_for_every_shipped_garment():
    assert {data.get("garment", name) for name, data in PAIRS.items()} == {
        path.stem for path in GARMENTS
    }
    for data in PAIRS.values():
        everything = [*data["ordered"], *data["free"]]
        for mark in "<-":
            assert sum(mark in pair.split() for pair in everything) >= 10
