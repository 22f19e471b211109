"""The unit in hand: how it is laid in the plane, and what its picture says."""

import pytest
from draw.looking import NAMES, SVG, Seen, garment, points, seen
from rules.reasoning import construction

from seqplan.draw.pattern import Pattern
from seqplan.draw.svg import svg
from seqplan.draw.unit import Need, need_of, unit
from seqplan.draw.unit_faces import area_of, size_of, spread
from seqplan.draw.unit_lines import middle_in
from seqplan.draw.unit_picture import draw_unit
from seqplan.draw.unit_place import Placer, is_inside
from seqplan.rehearse.work import Work

each = pytest.mark.parametrize("name", NAMES)
TUBE = """
garment: Quay skirt
pieces:
  front: {cut: fold, worn: front, edges: [waist, side, hem]}
  back:  {cut: fold, worn: back, edges: [waist, side, hem]}
operations:
  left:  {sew: front.side@left, to: back.side@left}
  right: {sew: front.side@right, to: back.side@right}
  hem:   {hem: [front.hem, back.hem], depth: 2}
"""
BAG = """
garment: Bag
pieces:
  outer:  {cut: 2, edges: [top, side, foot, side]}
  lining: {cut: 2, layer: lining, edges: [top, side, foot, side]}
operations:
  outer-seams: {sew: [outer.side, outer.foot], to: outer}
  lining-sides: {sew: lining.side, to: lining}
  lining-foot: {sew: lining.foot, to: lining, gap: 10}
  top: {sew: outer.top, to: lining.top, method: in the round, as: enclosed, without: turn}
  turn: {turn: all, through: the gap}
  close: {close: lining-foot}
"""
SLEEVE = """
garment: Tunic
pieces:
  front:  {cut: fold, worn: front, edges: [neck, shoulder, armhole, side, hem]}
  back:   {cut: fold, worn: back, edges: [neck, shoulder, armhole, side, hem]}
  sleeve: {cut: pair, edges: [cap, underarm-back, wrist, underarm-front]}
operations:
  shoulders: {sew: front.shoulder, to: back.shoulder}
  sides:     {sew: front.side, to: back.side}
  underarms: {sew: sleeve.underarm-front, to: sleeve.underarm-back}
  sleeves:   {sew: sleeve.cap, to: [front.armhole, back.armhole], method: in the round}
"""


def units(c, order=None):
    """Every unit that is shown, with the operation and the work after it."""
    work, placer = Work(c), Placer(c, Pattern(c))
    for id_ in order or c.ids:
        op, before = c.op[id_], work.surface
        work.do(op)
        need = need_of(work, op, before)
        if need is not None:
            yield op, work, unit(work, op, need, placer)


def of(text):
    return {op.id: found for op, _, found in units(construction(text))}


def pieces_of(found, *, is_behind):
    return [one.face.piece for one in found.placed if one.is_behind == is_behind]


def test_a_tube_lies_folded_with_its_front_over_its_back():
    found = of(TUBE)
    assert "left" not in found, "one side closes nothing"
    assert found["right"].need is Need.CLOSED
    assert pieces_of(found["right"], is_behind=False) == ["front"]
    assert pieces_of(found["right"], is_behind=True) == ["back"]
    assert {opening.names for opening in found["right"].openings} == {("waist",), ("hem",)}
    assert not found["right"].is_right_out
    assert found["hem"].is_right_out


def test_a_bag_is_turned_through_its_gap_and_the_gap_is_closed():
    found = of(BAG)
    assert found["turn"].need is Need.TURNED
    assert not found["turn"].is_right_out
    assert found["close"].is_right_out
    for one in (found["turn"], found["close"]):
        assert {s.piece for s in one.gaps} == {"lining"}
        assert sorted(pieces_of(one, is_behind=False)) == ["lining", "outer"]
    picture = Seen(svg(draw_unit(found["turn"], construction(BAG).garment, "t", "w")))
    assert [words for words, _ in picture.words("label") if "through" in words]
    assert picture.lines("arrow")


def test_sleeves_hang_down_at_the_sides_folded():
    found = of(SLEEVE)["sleeves"]
    (front,) = (one for one in found.placed if one.face.piece == "front")
    sleeves = [one for one in found.placed if one.face.piece == "sleeve"]
    middle = sum(front.face.outline) / len(front.face.outline)
    xs = []
    for one in sleeves:
        assert one.face.is_folded
        lowest = max(one.face.outline, key=lambda p: p.imag)
        highest = min(one.face.outline, key=lambda p: p.imag)
        assert abs(lowest.real - middle.real) > abs(highest.real - middle.real)
        xs.append(lowest.real - middle.real)
    assert len(xs) == 2
    assert xs[0] * xs[1] < 0, "one on each side"
    names = {opening.names for opening in found.openings}
    assert ("wrist",) in names
    assert ("armhole",) not in names, "that is where the sleeves are"


def test_what_can_be_told_flat_is_not_shown():
    assert "shoulders" not in {id_ for id_, found in of(SLEEVE).items() if found is not None}


@each
def test_edges_that_are_sewn_lie_beside_one_another(name):
    """Whatever is shown, sewn edges meet as nearly as sketches can."""
    for op, work, found in units(garment(name)):
        if found is None:
            continue
        lying = {s: one for one in found.placed for s in one.face.edges}
        for glue in work.surface.glues:
            if glue.first not in lying or glue.second not in lying:
                continue
            faces = lying[glue.first].face, lying[glue.second].face
            one = faces[0].edges[glue.first].line
            other = faces[1].edges[glue.second].line
            ends = zip(spread(one), spread(other if glue.aligned else other[::-1]), strict=True)
            size = max(size_of(face.outline) for face in faces)
            apart = sum(abs(a - b) for a, b in ends) / 3
            assert apart < 0.42 * size, (op.id, glue)


@each
def test_no_cloth_of_one_layer_lies_on_another(name):
    for op, _, found in units(garment(name)):
        if found is None:
            continue
        largest = max(area_of(one.face.outline) for one in found.placed)
        for one in found.placed:
            for other in found.placed:
                is_apart = one.is_behind != other.is_behind or one.face.is_inner
                if one is other or is_apart or other.face.is_inner:
                    continue
                middle = middle_in(one.face.outline)
                is_large = area_of(one.face.outline) > 0.45 * largest
                if is_large:
                    assert not is_inside(middle, other.face.outline), (op.id, one.face.piece)


@each
def test_every_face_bears_the_side_that_is_out(name):
    c = garment(name)
    for op, _, found in units(c):
        if found is None:
            continue
        picture = Seen(svg(draw_unit(found, c.garment, "t", "w")))
        letter = "R" if found.is_right_out else "W"
        sides = [words for words, _ in picture.words("side")]
        assert sides, op.id
        assert set(sides) == {letter}, op.id
        assert {g.get("data-side") for g in picture.groups("face")} == {letter}, op.id
        behind = {g.get("data-side") for g in picture.groups("behind")}
        assert letter not in behind, op.id


@each
def test_openings_are_those_of_the_surface(name):
    c = garment(name)
    for op, work, found in units(c):
        if found is None:
            continue
        pieces = {one.face.piece for one in found.placed}
        free = {
            s for part in work.parts_with(frozenset(pieces)) for loop in part.loops for s in loop
        }
        for opening in found.openings:
            assert set(opening.segments) <= free, op.id
        picture = Seen(svg(draw_unit(found, c.garment, "t", "w")))
        assert len(picture.groups("opening")) <= len(found.openings), op.id


@each
def test_what_the_step_does_is_marked(name):
    c = garment(name)
    for op, _, found in units(c):
        if found is None or not found.active or found.need is Need.GAP:
            continue
        picture = Seen(svg(draw_unit(found, c.garment, "t", "w")))
        assert picture.lines("active"), op.id
        for path in picture.root.iter(f"{SVG}path"):
            if "active" in (path.get("class") or ""):
                assert len(points(path.get("d"))) > 1


def test_most_units_of_the_shipped_garments_can_be_laid_flat():
    from tell.sampler import SHIPPED, built, planned

    shown, left_out = 0, []
    for name in SHIPPED:
        for op, _, found in units(built(name), planned(name).booklet().order):
            if found is None:
                left_out.append((name, op.id))
            else:
                shown += 1
    assert shown >= 35, left_out


def test_the_gap_of_a_casing_is_shown_at_the_back_where_the_sentence_leaves_it():
    c = garment("night-watch-pyjamas")
    for op, kind, picture in seen("night-watch-pyjamas"):
        if kind == "unit" and op.entry in {"waist", "elastic"}:
            fronts = [group.get("data-name") for group in picture.groups("face")]
            assert {c.garment.piece[id_].worn.value for id_ in fronts} == {"back"}, op.id


SACK = """
garment: Bag
allowance: 1
pieces:
  panel: {cut: 2, edges: [top, side, foot, side]}
  apart: {cut: 2, edges: [top, side, foot, side]}
operations:
  round: {sew: [panel.side, panel.foot], to: panel}
  foot:  {sew: apart.foot, to: apart}
"""


def test_a_row_round_corners_makes_a_bag():
    found = of(SACK)
    assert found["round"].need is Need.BAG
    assert [opening.names for opening in found["round"].openings] == [("top",)]
    assert "foot" not in found, "one straight seam makes nothing of two layers"


def test_a_band_that_would_look_out_from_behind_is_left_out():
    for op, kind, picture in seen("pilot-boat-trousers"):
        if kind == "unit" and op.id == "hems":
            groups = [*picture.groups("face"), *picture.groups("behind")]
            assert {group.get("data-name") for group in groups} == {"front", "back"}
            return
    raise AssertionError("no picture of the hems")
