"""The size of what is cut as a rectangle."""

import pytest
from rules.reasoning import construction

from seqplan.base.measure import both
from seqplan.tell.cut_size import allowances, rectangle
from seqplan.tell.cutting import tell_cutting

BAG = """
garment: Bag
allowance: 1
fabrics: {canvas: {kind: woven}}
pieces:
  body:  {of: canvas, cut: 2, edges: [top, slot | side, foot, side | slot], lengths: {slot: 6},
          shape: [[0, 0], [34, 0], [34, 46], [0, 46]]}
  flap:  {of: canvas, cut: 1, edges: [top, side, foot, side],
          shape: [[0, 0], [30, 0], [26, 20], [4, 20]]}
  strap: {of: canvas, cut: 1, edges: [end, long, end, long],
          shape: [[0, 0], [10, 0], [10, 60], [0, 60]]}
  front: {of: canvas, cut: fold, edges: [top, side, foot],
          shape: [[0, 0], [20, 0], [20, 40], [0, 40]]}
  label: {of: canvas, cut: 1, edges: [top, side, foot, side]}
operations:
  strap:   {strap: strap, method: folded}
  seam:    {sew: [body.side, body.foot], to: body, as: finished together}
  slots:   {hem: body.slot, depth: 0.5, turned: twice}
  channel: {casing: body.top, depth: 2.5, turned: twice}
  flap:    {hem: flap.foot, depth: 1}
"""


@pytest.mark.parametrize(
    ("piece", "size"),
    [
        # 34 and an allowance of 1 at each side; 46, 1 at the foot, 2.5 and 1 for the channel.
        ("body", ("36 cm (14⅛ in)", "50.5 cm (19⅞ in)")),
        # A strap is drawn as it is cut.
        ("strap", ("10 cm (3⅞ in)", "60 cm (23⅝ in)")),
        ("flap", None),
        ("front", None),
        ("label", None),
    ],
)
def test_what_is_cut_as_a_rectangle_is_told_with_its_allowances(piece, size):
    c = construction(BAG)
    found = rectangle(c, c.garment.piece[piece])
    assert (found and tuple(map(both, found))) == size


def test_without_an_allowance_no_size_is_told():
    c = construction(BAG.replace("allowance: 1\n", ""))
    assert rectangle(c, c.garment.piece["body"]) is None


def test_each_edge_is_cut_with_what_is_done_to_it():
    c = construction(BAG)
    assert allowances(c, c.garment.piece["body"]) == (35.0, 10.0, 10.0, 10.0, 10.0, 10.0)


def test_the_cutting_list_tells_it():
    (row, *_) = tell_cutting(construction(BAG))
    assert row.notes[0].startswith("A rectangle, 36 cm")
