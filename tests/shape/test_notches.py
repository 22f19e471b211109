"""Where notches stand along an edge."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from seqplan.base.measure import Length
from seqplan.model.piece import Cut, Edge, Notch, Piece
from seqplan.shape.notches import beside, shares, standing


def piece(*notches, lengths=(), cut=Cut.ALIKE):
    edges = tuple(map(Edge, ("top", "side", "foot")))
    return Piece("p", edges, cut=cut, lengths=lengths, notches=notches)


def at(mm, neighbour, marks=1):
    return Notch("side", marks, Length(mm), neighbour)


SIDE = (("side", Length(400)),)


def test_distances_count_from_the_end_at_which_the_neighbour_is():
    found = standing(piece(at(100, "foot"), at(50, "top"), lengths=SIDE), 1)
    assert [(item.before, item.after) for item in found] == [(50, 350), (300, 100)]


def test_without_a_length_only_one_of_the_distances_is_known():
    found = standing(piece(at(50, "top"), at(100, "foot")), 1)
    assert [(item.before, item.after) for item in found] == [(50, None), (None, 100)]


def test_the_order_follows_the_distances_as_far_as_they_can_be_compared():
    near, far = at(50, "foot"), at(90, "foot")
    assert [item.notch for item in standing(piece(near, far), 1)] == [far, near]
    assert [item.notch for item in standing(piece(near, Notch("side", 2)), 1)] == [
        near,
        Notch("side", 2),
    ]


def test_both_ends_of_half_a_piece_are_at_its_fold():
    folded = piece(cut=Cut.FOLD)
    assert [beside(folded, place) for place in range(3)] == [
        ("fold", "side"),
        ("top", "foot"),
        ("side", "fold"),
    ]
    assert beside(piece(), 0) == ("foot", "side")


def test_a_picture_spreads_notches_where_a_distance_is_not_known():
    assert [share for _, share in shares(piece(at(100, "top"), lengths=SIDE), 1)] == [0.25]
    notches = (at(100, "top"), Notch("side"), Notch("side"))
    assert [share for _, share in shares(piece(*notches, lengths=SIDE), 1)] == [0.25, 0.5, 0.75]
    assert [share for _, share in shares(piece(Notch("side", is_middle=True)), 1)] == [0.5]


@given(st.lists(st.tuples(st.integers(1, 399), st.booleans()), max_size=5))
def test_before_and_after_are_the_whole_edge_and_grow_along_it(places):
    notches = [at(mm, "top" if is_from_start else "foot") for mm, is_from_start in places]
    found = standing(piece(*notches, lengths=SIDE), 1)
    assert all(item.before + item.after == pytest.approx(400) for item in found)
    befores = [item.before for item in found]
    assert befores == sorted(befores)
