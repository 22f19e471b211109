"""What lies on the face of a piece."""

import pytest
from draw.looking import Seen
from rules.reasoning import construction

from seqplan.draw.face import face_figure
from seqplan.draw.svg import svg
from seqplan.draw.things import ThingKind, things_of
from seqplan.rehearse.work import Work

SHIRT = """
garment: Shirt
allowance: 1
fabrics: {linen: {kind: woven}, fusible: {kind: interfacing}}
pieces:
  front:
    of: linen
    cut: pair
    worn: front
    edges: [neck, shoulder, armhole, side, hem, front]
    spots: [place@left]
  back:   {of: linen, cut: fold, worn: back, edges: [neck, shoulder, armhole, side, hem]}
  pocket: {of: linen, cut: 1, edges: [mouth, side, foot, side]}
  tie:    {of: linen, cut: 2, edges: [end, long, tip, long]}
  string: {of: linen, cut: 2, edges: [end, long, tip, long]}
  loop:   {of: linen, cut: 5, edges: [end, long, tip, long]}
  band:   {of: linen, cut: pair, worn: front, strip: [attach, foot, fold, top]}
notions: {buttons: {kind: button, count: 5}, hook: {kind: hook and eye}}
operations:
  stiffen: {fuse: band, with: fusible}
  mark:    {mark: front}
  pocket:  {patch pocket: pocket, at: front.place, open: mouth}
  sides:   {sew: front.side, to: back.side}
  foot:    {hem: back.hem, depth: 2, flat: yes}
  ties:    {attach: tie, at: back.hem}
  strings: {attach: string, at: front.side}
  loops:   {attach: loop, at: front.side}
  tips:    {attach: loop, at: front.front}
  holes:   {buttonhole: band@left, number: 5}
  buttons: {attach: buttons, to: band@right}
  hook:    {attach: hook, at: back.neck}
"""

SKIRT = """
fabrics: {linen: {kind: woven}}
pieces:
  back:
    of: linen
    cut: pair
    edges: [waist, side, hem, centre | opening]
    darts: [{on: waist, number: 2}]
  facing: {of: linen, cut: pair, layer: facing, edges: [waist, side, lower, end]}
notions: {zip: {kind: invisible zip}, hook: {kind: hook and eye}}
operations:
  mark:  {mark: [back, facing]}
  zip:   {insert: zip, in: back.opening, method: invisible}
  waist: {sew: back.waist, to: facing.waist, as: faced}
  ends:  {tack: facing.end, to: zip}
  hook:  {attach: hook, at: back.waist}
"""


def drawn(*entries):
    c = construction(SHIRT)
    work = Work(c)
    ids = [op.id for op in c.operations if op.entry in entries]
    for id_ in ids:
        work.do(c.op[id_])
    figure = face_figure(c, work, ids)
    return None if figure is None else Seen(svg(figure))


def titles(picture):
    return [words for words, _ in picture.words("title")]


def things(entry):
    c = construction(SHIRT)
    return [thing for op in c.of_entry[entry] for thing in things_of(c, op)]


@pytest.mark.parametrize(
    ("entry", "kind"),
    [
        ("stiffen", ThingKind.INTERFACING),
        ("mark", ThingKind.MARK),
        ("pocket", ThingKind.POCKET),
        ("ties", ThingKind.STRAP),
        ("holes", ThingKind.HOLE),
        ("buttons", ThingKind.BUTTON),
        ("hook", ThingKind.NOTION),
    ],
)
def test_each_thing_is_known(entry, kind):
    assert {thing.kind for thing in things(entry)} == {kind}


def test_so_many_buttons_as_there_are_on_one_side_only():
    (buttons,) = things("buttons")
    (holes,) = things("holes")
    assert (buttons.number, holes.number) == (5, 5)
    assert buttons.half is not holes.half
    circles = list(drawn("buttons").root.iter("{http://www.w3.org/2000/svg}circle"))
    buttons_drawn = [c for c in circles if c.get("r") == "3.6"]
    assert len(buttons_drawn) == 5 + 1, "and one in the key"


def test_a_thing_on_one_copy_is_drawn_on_that_copy():
    assert titles(drawn("pocket")) == ["front"]
    assert titles(drawn("buttons")) == ["band, mirrored"]
    assert titles(drawn("mark")) == ["front"]


def test_a_strap_points_into_the_cloth_where_a_seam_is_to_come_or_has_its_other_end():
    assert [thing.is_inwards for thing in things("ties")] == [False]
    assert [thing.is_inwards for thing in things("strings")] == [True]
    assert [thing.is_inwards for thing in things("tips")] == [True]


def test_a_hook_lies_inside_beside_its_opening_and_a_facing_is_slip_stitched_to_a_zip():
    c = construction(SKIRT)
    (hook,), (ends,) = (things_of(c, c.op[id_]) for id_ in ("hook", "ends"))
    assert (hook.beside, hook.is_inside) == ("opening", True)
    assert ends.kind is ThingKind.SLIP


def test_marks_of_darts_lie_where_the_darts_open():
    c = construction(SKIRT)
    found = {(thing.piece, thing.edge, thing.number) for thing in things_of(c, c.op["mark"])}
    assert found == {("back", "waist", 2), ("back", "opening", 1)}


def test_what_is_fused_shows_its_wrong_side():
    picture = drawn("stiffen")
    assert [words for words, _ in picture.words("side")] == ["W", "W"], "on the piece, in the key"


def test_a_seam_puts_nothing_on_a_face():
    assert drawn("sides") is None


def test_only_the_edge_at_which_it_lies_is_named():
    names = [words for words, _ in drawn("hook").words("label")]
    assert names == ["neck"]


def test_marking_shows_each_place_where_it_is_and_the_notched_pieces():
    marks = """
garment: Blouse
pieces:
  front:
    {cut: fold, worn: front, edges: [neck, side, hem], darts: [side], spots: [badge, pair@left]}
  back:   {cut: pair, edges: [neck, side, hem, centre | opening]}
  sleeve: {cut: pair, edges: [cap, under, wrist], notches: {cap: 3 from under}}
  plain:  {cut: 1, edges: [top, side, foot]}
  badge:  {cut: 1, edges: [top, side, foot]}
operations:
  mark:  {mark: all}
  badge: {patch pocket: badge, at: front.badge}
"""
    c = construction(marks)
    found = things_of(c, c.op["mark"])
    assert {(t.piece, t.edge, t.is_central, t.is_at_start) for t in found} == {
        ("front", "", True, False),
        ("front", "", False, False),
        ("front", "side", False, False),
        ("back", "opening", False, True),
    }
    work = Work(c)
    work.do(c.op["mark"])
    picture = Seen(svg(face_figure(c, work, ["mark"])))
    assert {title.partition(" (")[0] for title in titles(picture)} == {"front", "back", "sleeve"}
    names = [words for words, _ in picture.words("label")]
    assert sorted(names) == ["opening", "side"]
