"""Planned orders keep what is wet, away, setting, trimmed or looked at in mind."""

import pytest

from seqplan.pipeline import open_garment
from seqplan.rehearse.walk import rehearse

BAG = """
garment: Sail-loft bag
allowance: 1.5
not shown: [press, finish]
fabrics: {canvas: {kind: woven}}
pieces:
  front:  {of: canvas, cut: pair, edges: [top, side, foot, centre]}
  back:   {of: canvas, cut: fold, edges: [top, side, foot]}
  pocket: {of: canvas, edges: [top, side, foot, side], spots: [badge]}
notions: {badge: {kind: plastic badge, iron: no}}
operations:
  number: {send out: pocket}
  home:   {wait: 3 days, on: pocket, to: come back}
  wax:    {do: Wax the body., on: [front, back], wet: yes}
  dry:    {wait: 1 day, on: [front, back], to: dry}
  top:    {hem: pocket.top, depth: 2}
  badge:  {attach: badge, to: pocket.badge}
  centre: {sew: front.centre}
  look:   {inspect: front}
  trim:   {trim: front.centre, to: 6 mm}
  sides:  {sew: [front.side, front.foot], to: [back.side, back.foot]}
  neaten: {finish: [front.side, back.side], cuts: 5 mm}
  rim:    {hem: [front.top, back.top], depth: 3}
  glue:   {do: Glue the pocket on., on: [back, pocket]}
  set:    {wait: 2 hours, on: [back, pocket], to: set, after: glue}
  crease: {press: [front.side, back.side], after: set}
"""


@pytest.mark.parametrize("purpose", ["booklet", "batch", "repair"])
def test_orders_for_every_purpose_wait_as_long_as_it_takes(tmp_path, purpose):
    path = tmp_path / "bag.yaml"
    path.write_text(BAG, encoding="utf-8")
    opened = open_garment(path)
    c = opened.garment
    assert rehearse(c, c.ids).is_clean
    order = getattr(opened.planner, purpose)().order
    assert rehearse(c, order).is_clean
    at = {id_: place for place, id_ in enumerate(order)}
    for first, then in (
        ("number", "home"),
        ("wax", "dry"),
        ("glue", "set"),
        ("centre", "look"),
        ("look", "trim"),
        ("sides", "neaten"),
    ):
        assert at[first] < at[then]
    assert not at["number"] < at["badge"] < at["home"]
    assert not at["wax"] < at["centre"] < at["dry"]
    assert not any(at["glue"] < at[id_] < at["set"] for id_ in ("badge", "sides", "rim", "top"))
