"""Notches in pictures: on the edge, pointing into the cloth, and where they meet in a stack."""

from itertools import pairwise

import pytest
from rules.reasoning import construction
from tell.sampler import OTHER_WAYS, SHIPPED, built

from seqplan.draw.figure import Area, Group, Line
from seqplan.draw.map import draw_map
from seqplan.draw.notch_marks import piece_notches
from seqplan.draw.pattern import Pattern
from seqplan.draw.stack import stack
from seqplan.draw.stack_picture import draw_stack
from seqplan.rehearse.work import Work

SHIRT = """
garment: Ebb shirt
pieces:
  front:  {cut: fold, worn: front, edges: [neck, shoulder, armhole, side, hem], notches: {armhole: single, side: 10 from hem}, lengths: {side: 40}}
  back:   {cut: fold, worn: back, edges: [neck, shoulder, armhole, side, hem], notches: {armhole: double, side: 10 from hem}, lengths: {side: 40}}
  sleeve: {cut: pair, edges: [cap, under-back, wrist, under-front], notches: {cap: [single, double]}}
operations:
  shoulders: {sew: front.shoulder, to: back.shoulder}
  sides:     {sew: front.side, to: back.side}
  under:     {sew: sleeve.under-front, to: sleeve.under-back}
  sleeves:   {sew: sleeve.cap, to: [front.armhole, back.armhole]}
"""  # noqa: E501


def notches(marks):
    for mark in marks:
        if isinstance(mark, Group):
            yield from notches(mark.marks)
        elif isinstance(mark, Area) and mark.role == "notch":
            yield mark


def distance(spot, one, other):
    """From a spot to a straight line between two others."""
    way = other - one
    share = ((spot - one) * way.conjugate()).real / abs(way) ** 2 if way else 0.0
    return abs(spot - (one + way * min(max(share, 0.0), 1.0)))


def is_inside(spot, ring):
    crossings = 0
    for one, other in pairwise([*ring, ring[0]]):
        if (one.imag <= spot.imag) != (other.imag <= spot.imag):
            at = one.real + (other - one).real * (spot - one).imag / (other - one).imag
            crossings += at > spot.real
    return crossings % 2 == 1


@pytest.mark.parametrize("name", [*SHIPPED, *OTHER_WAYS])
def test_every_notch_stands_on_its_outline_and_points_into_the_cloth(name):
    c = built(name)
    for id_, sized in Pattern(c).pieces.items():
        piece, split = c.garment.piece[id_], c.rings.pieces[id_]
        # As large as on a page.
        sized = sized.times(200 / max(sized.size), 200 / max(sized.size))
        drawn = list(notches(piece_notches(piece, split, sized)))
        halves = 2 if piece.cut.value == "fold" else 1
        edges = [edge.name for edge in piece.edges]
        count = sum(notch.marks * edges.count(notch.edge) for notch in piece.notches)
        assert len(drawn) == halves * count
        for mark in drawn:
            one, other, tip = (complex(*spot) for spot in mark.points)
            middle = (one + other) / 2
            assert (
                min(distance(middle, *line) for line in pairwise([*sized.ring, sized.ring[0]]))
                < 0.5
            )
            assert is_inside(middle + (tip - middle) * 0.5, sized.ring)


def drawn_stack(entry):
    c = construction(SHIRT)
    work = Work(c)
    for op in c.operations:
        if op.entry == entry:
            found = stack(c, work, op)
            return found, draw_stack(found, "title", "words")
        work.do(op)
    raise AssertionError(entry)


@pytest.mark.parametrize(
    ("entry", "shares"),
    [
        # The front lies wrong side up with its side at the right: the hem is at the top.
        ("sides", [(0.25, 1)]),
        ("shoulders", []),
        # The sleeve lies wrong side up, so that its cap is walked up the page, from front to back.
        ("sleeves", [(pytest.approx(2 / 3), 1), (pytest.approx(1 / 3), 2)]),
    ],
)
def test_a_stack_shows_where_notches_meet(entry, shares):
    found, figure = drawn_stack(entry)
    assert list(found.notches) == shares
    drawn = list(notches(figure.marks))
    edge = max(
        mark.points[0][0]
        for group in figure.marks
        if isinstance(group, Group)
        for mark in group.marks
        if isinstance(mark, Line) and mark.role == "edge"
    )
    on_edge = [mark for mark in drawn if mark.points[0][0] == pytest.approx(edge)]
    assert len(on_edge) == sum(marks for _, marks in shares)
    assert all(mark.points[2][0] < edge for mark in on_edge)
    # And one in the key.
    assert len(drawn) - len(on_edge) == bool(shares)


def test_the_key_of_a_map_tells_of_notches_where_there_are_any():
    c = construction(SHIRT)
    assert len(list(notches(draw_map(c, ()).marks))) == 2 * (2 + 3) + 3 + 1
    assert not list(notches(draw_map(built("galley-apron"), ()).marks))
