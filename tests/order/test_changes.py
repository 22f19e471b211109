from itertools import pairwise, permutations

import pytest
from hypothesis import given
from hypothesis import strategies as st

from seqplan.order.changes import Changes, Track, shortest

NEEDS = {"a": "white", "b": "navy", "d": "white"}


def test_what_does_not_care_leaves_all_as_it_is():
    """The operation c needs no colour: white, navy, white is two changes."""
    assert Track.even(NEEDS, 3).cost("abcd") == 6
    assert Track.even(NEEDS, 3).cost("adcb") == 3


def test_the_first_state_is_free_unless_another_was_there_before():
    assert Track.even(NEEDS, 3).cost("a") == 0
    assert Track.even(NEEDS, 3, start="white").cost("a") == 0
    assert Track.even(NEEDS, 3, start="red").cost("a") == 3


def test_a_change_may_cost_what_it_leads_to():
    track = Track.entering(NEEDS, {"white": 1, "navy": 5})
    assert track.cost("abd") == 6
    assert track.cost("ba") == 1


def test_prices_of_tracks_are_added():
    changes = Changes((Track.even(NEEDS, 3), Track.even({"a": 1, "b": 2}, 10)))
    assert changes.cost("abd") == 3 + 10 + 3


def test_counting_is_a_track_with_the_price_of_one():
    changes = Changes.counted(NEEDS)
    assert changes.are_counted
    assert changes.cost("abd") == 2
    assert not Changes((Track.even(NEEDS, 2),)).are_counted
    assert not Changes((Track.even(NEEDS, 1, start="white"),)).are_counted
    assert not Changes((Track.even(NEEDS), Track.even(NEEDS))).are_counted


def test_going_through_another_state_may_be_cheaper():
    track = Track({"a": 0, "b": 1}, (0, 1, 2), ((0, 9, 2), (9, 0, 9), (4, 3, 0)))
    assert not track.is_direct
    assert track.cost("ab") == 9
    through = track.through()
    assert through.is_direct
    assert through.cost("ab") == 5
    assert through.through() == through


@given(st.data())
def test_the_cheapest_way_is_that_of_trying_every_way(data):
    size = data.draw(st.integers(1, 4))
    price = st.integers(0, 20)
    rows = tuple(tuple(0 if a == b else data.draw(price) for b in range(size)) for a in range(size))
    found = shortest(rows)
    for a in range(size):
        for b in range(size):
            others = [each for each in range(size) if each not in (a, b)]
            ways = [
                [a, *middle, b] for length in range(size) for middle in permutations(others, length)
            ]
            least = min(sum(rows[x][y] for x, y in pairwise(way)) for way in ways)
            assert found[a][b] == (0 if a == b else least)


@pytest.mark.parametrize(
    ("needs", "states", "costs", "start", "match"),
    [
        ({}, (1, 1), ((0, 0), (0, 0)), None, "twice"),
        ({}, (1, 2), ((0, 0),), None, "row and a column"),
        ({}, (1, 2), ((0, 0), (0,)), None, "row and a column"),
        ({}, (1, 2), ((0, -1), (0, 0)), None, "nothing or something"),
        ({}, (1, 2), ((0, 1), (1, 1)), None, "stays"),
        ({"a": 3}, (1, 2), ((0, 1), (1, 0)), None, "no state"),
        ({"a": 1}, (1, 2), ((0, 1), (1, 0)), 3, "no state"),
    ],
)
def test_a_table_that_is_out_of_order_is_refused(needs, states, costs, start, match):
    with pytest.raises(ValueError, match=match):
        Track(needs, states, costs, start)
