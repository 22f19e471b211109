"""All pieces at one scale."""

from itertools import pairwise

import pytest
from garments.shipped import GARMENTS
from rules.reasoning import construction

from seqplan.draw.map_lines import length_of
from seqplan.draw.map_scale import fit
from seqplan.draw.pattern import Pattern
from seqplan.pipeline import open_garment

SKIRT = """
garment: Quay skirt
pieces:
  front:  {cut: fold, edges: [waist, side, hem]}
  back:   {cut: pair, edges: [waist, side, hem, centre]}
  pocket: {cut: 1, edges: [mouth, side, foot, side]}
  patched: {cut: 1, edges: [top, side, foot, side], spots: [place]}
operations:
  sides:  {sew: front.side, to: back.side}
  centre: {sew: back.centre}
  pocket: {patch pocket: pocket, at: patched.place, open: mouth}
"""
SHAPED = """
garment: Bag
units: mm
pieces:
  panel: {cut: 2, edges: [top, side, foot, side], shape: [[0, 0], [400, 0], [400, 500], [0, 500]]}
  strap: {cut: 2, edges: [end, long, end, long]}
operations:
  sides: {sew: [panel.side, panel.foot], to: panel}
"""


def test_edges_that_are_sewn_together_are_alike_long():
    pieces = Pattern(construction(SKIRT)).pieces
    front, back = (length_of(pieces[name].edges[1]) for name in ("front", "back"))
    assert front == pytest.approx(back, rel=0.03)


def test_what_lies_on_a_face_is_smaller_than_that_piece():
    pieces = Pattern(construction(SKIRT)).pieces
    assert max(pieces["pocket"].size) < 0.5 * max(pieces["patched"].size)


def test_a_shape_keeps_its_size():
    pieces = Pattern(construction(SHAPED)).pieces
    assert pieces["panel"].size == pytest.approx((400, 500))
    assert max(pieces["strap"].size) > 200, "a sketch beside it is as large as pieces usually are"


@pytest.mark.parametrize("path", GARMENTS, ids=lambda path: path.stem)
def test_pieces_of_a_sheet_are_at_one_scale_but_those_that_say_so(path):
    pieces = Pattern(open_garment(path).garment).pieces
    drawn = fit(pieces, 88.0, 380.0)
    scales = {
        round(side / other, 6)
        for id_, one in drawn.items()
        if not one.is_larger
        for side, other in zip(one.piece.size, pieces[id_].size, strict=True)
    }
    assert max(scales) <= 1.06 * min(scales)
    for id_, one in drawn.items():
        assert max(one.piece.size) >= 44 - 1e-6, id_
        assert min(one.piece.size) >= 19 - 1e-6, id_
        assert max(one.piece.size) <= 380 + 1e-6, id_


@pytest.mark.parametrize("path", GARMENTS, ids=lambda path: path.stem)
def test_edges_of_a_piece_follow_one_another(path):
    c = open_garment(path).garment
    for id_, piece in Pattern(c).pieces.items():
        places = [p for p in piece.edges if not c.rings.pieces[id_].edges[p].is_slit]
        for one, other in pairwise(places):
            gap = abs(piece.edges[one][-1] - piece.edges[other][0])
            assert gap < 0.02 * max(piece.size), (id_, one)
