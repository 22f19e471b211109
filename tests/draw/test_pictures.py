"""Every picture of every garment, looked at as it is written."""

import xml.etree.ElementTree as ET

import pytest
from draw.looking import NAMES, SVG, Box, Seen, figures, garment, points, seen, straight_crossings
from rules.reasoning import construction

from seqplan.draw.lay import JOINING
from seqplan.draw.pictures import Kind, draw_order, named_pictures
from seqplan.draw.section import DRAWN, section
from seqplan.draw.stack import stack
from seqplan.draw.svg import inline_svg, svg
from seqplan.model.entry import SeamKind, Sides, Verb, ZipMethod
from seqplan.model.operation import Action
from seqplan.rehearse.work import Work

PT_OF_2_MM = 2 * 72 / 25.4
AS_PRINTED = 0.7
"""How much of its size a picture keeps at least on a page."""

BESIDE = 160
"""Points that a picture takes at most beside the text."""

each = pytest.mark.parametrize("name", NAMES)


def stacks(name):
    return [(op, picture) for op, kind, picture in seen(name) if kind == "stack"]


def sections(name):
    return [(op, picture) for op, kind, picture in seen(name) if kind == "section"]


@each
def test_words_stand_on_the_canvas_and_apart_from_one_another(name):
    for op, kind, picture in seen(name):
        outside = [words for words, box in picture.words() if not picture.canvas.holds(box)]
        assert not outside, (op.id, kind)
        assert not picture.overlapping(), (op.id, kind)
        spots = [spot for path in picture.root.iter(f"{SVG}path") for spot in points(path.get("d"))]
        assert all(picture.canvas.holds(Box(x, y, x, y)) for x, y in spots), (op.id, kind)


@each
def test_lines_to_names_do_not_cross(name):
    for op, kind, picture in seen(name):
        assert not straight_crossings(picture.lines("leader")), (op.id, kind)


@each
def test_rows_run_beside_their_edge_and_far_enough_from_it(name):
    for op, picture in stacks(name):
        edges = picture.lines("edge")
        (x,) = {x for line in edges for x, _ in line}
        assert all(line[0][0] == line[1][0] for line in edges), op.id
        rows = picture.lines("stitch")
        assert rows, op.id
        for row in rows:
            assert row[0][0] == row[1][0], op.id
            assert (x - row[0][0]) * AS_PRINTED >= PT_OF_2_MM, op.id


@each
def test_print_beside_the_text_is_never_below_5_points(name):
    """Maps are sheets of their own, and not shown beside the text."""
    for op, kind, picture in seen(name):
        if kind == "map":
            continue
        width = float(picture.root.get("viewBox").split()[2])
        shown = min(1.0, BESIDE / width)
        sizes = [float(t.get("font-size")) for t in picture.root.iter(f"{SVG}text")]
        assert min(sizes, default=BESIDE) * shown >= 5, (op.id, kind)


@each
def test_every_side_is_marked(name):
    for op, picture in stacks(name):
        for place, layer in enumerate(picture.groups("layer")):
            letters = [t.text for t in layer.iter(f"{SVG}text") if t.get("class") == "side"]
            if layer.get("data-side") is None:
                assert not letters, op.id
                continue
            # The side that is up; of all layers but the lowest also the one that is turned back.
            assert letters[-1] == layer.get("data-side"), op.id
            assert set(letters) == ({"R", "W"} if place else {letters[-1]}), op.id
    for op, picture in sections(name):
        for ply in picture.groups("ply"):
            marks = [p for p in ply.iter(f"{SVG}path") if p.get("class") == "right-side"]
            assert len(marks) == (1 if ply.get("data-side") else 0), op.id


@each
def test_layers_lie_as_the_garment_says(name):
    """What is named first lies on top; which sides meet is what the entry says."""
    c = garment(name)
    for op, picture in stacks(name):
        entry, shape = c.entry(op), c.shapes[op.entry]
        if entry.verb is not Verb.SEW:
            continue
        layers = picture.groups("layer")
        keys = [layer.get("data-name").removesuffix("~") for layer in layers]
        named = {ref.piece for ref in entry.run}
        assert keys[-1] in named, op.id
        assert keys[0] in ({s.piece for s in shape.to} or named), op.id
        sides = layers[0].get("data-side"), layers[-1].get("data-side")
        wanted = {
            Sides.RIGHT_TOGETHER: ("R", "W"),
            Sides.WRONG_TOGETHER: ("W", "R"),
            Sides.RIGHT_TO_WRONG: ("W", "W"),
        }[entry.sides]
        if entry.seam is SeamKind.FRENCH:
            wanted = ("W", "R")
        if entry.seam is SeamKind.LAPPED:
            wanted = ("R", "R")
        assert sides == wanted, op.id
        caught = {glue.first.piece for glue in shape.riders if glue.entry == entry.id}
        hidden = [group.get("data-name") for group in picture.groups("hidden")]
        assert {k for k in (*keys[1:-1], *hidden) if not k.startswith("notion ")} <= caught | {
            piece
            for item in entry.between
            for piece in (item.piece, item.edge.piece if item.edge else None)
        }, op.id


def test_a_band_that_is_sewn_on_double_shows_its_right_side_above_and_below():
    picture = next(picture for op, picture in stacks("lamp-room-tee") if op.id == "neck")
    sides = [layer.get("data-side") for layer in picture.groups("layer")]
    assert sides == ["R", "W", "R"]


UNDRAWN = {Verb.ATTACH, Verb.SLASH, Verb.TURN}
"""What is put on a face, or cut into it, is shown there; a turn may treat no seam."""


@each
def test_whatever_joins_or_tidies_is_drawn(name):
    c = garment(name)
    for op in c.operations:
        entry = c.entry(op)
        is_bare = not op.segments and entry.verb not in {Verb.PATCH_POCKET, Verb.STRAP}
        if entry.verb in UNDRAWN or is_bare:
            continue
        pictures = figures(name).get(op.id, {})
        if op.action in DRAWN - {Action.REMOVE_BASTING, Action.HOLD}:
            assert pictures.get(Kind.SECTION), op.id
        is_at_opening = entry.method is ZipMethod.FLY or entry.verb is Verb.WELT_POCKET
        if op.action in JOINING - {Action.HOLD} and not is_at_opening:
            assert pictures.get(Kind.STACK), op.id


@each
def test_pictures_are_told_and_made_twice_alike(name):
    c = garment(name)
    once, again = named_pictures(c, c.ids), named_pictures(c, c.ids)
    assert once == again
    assert len(once) == len(seen(name))
    for figure in once.values():
        text = svg(figure)
        root = ET.fromstring(text)
        assert root.get("role") == "img"
        assert [child.tag for child in root][:2] == [f"{SVG}title", f"{SVG}desc"]
        assert root[0].text
        assert root[1].text
        assert " id=" not in text


HOSTILE = """
garment: '<script>alert(1)</script>'
allowance: 1
pieces:
  one: {cut: 1, edges: [top, side, foot]}
  other: {cut: 1, edges: [top, side, foot]}
notions: {zip: {kind: '</svg><b>zip</b>'}}
operations:
  seam:
    sew: one.top
    to: other.top
    between: zip
    gap: 4
    title: '<i>one</i>'
    say: 'Sew </desc><script>"it"</script> & rest.'
"""


def test_markup_in_any_text_is_text():
    c = construction(HOSTILE)
    pictures = [
        figure
        for found in draw_order(c, c.ids, {Kind.STACK, Kind.SECTION}).values()
        for figures in found.values()
        for figure in figures
    ]
    assert len(pictures) == 2
    for figure in pictures:
        for text in (
            svg(figure),
            inline_svg(figure).replace("<svg ", f'<svg xmlns="{SVG[1:-1]}" '),
        ):
            picture = Seen(text)
            tags = {element.tag.removeprefix(SVG) for element in picture.root.iter()}
            assert tags <= {"svg", "title", "desc", "g", "path", "circle", "text"}
            assert 'Sew </desc><script>"it"</script> & rest.' in picture.root[1].text
            assert any("</svg>" in words for words, _ in picture.words())


@each
def test_sections_and_stacks_agree_on_what_lies_on_what(name):
    c = garment(name)
    work = Work(c)
    for op in c.operations:
        laid = stack(c, work, op)
        work.do(op)
        cut = section(c, work, op)
        if op.action is not Action.SEW or laid is None or cut is None or cut.is_outside_up:
            continue
        left = min(x for ply in cut.plies for x, _ in ply.points) + 0.5
        lying = [(found.material.key, found.on_right) for found in cut.lying_at(left)]
        assert lying == [(x.material.key, x.is_right_up) for x in reversed(laid.layers)], op.id


def test_the_row_of_a_seam_goes_round_the_bag_of_its_pocket():
    with_bag = {op.id: p for op, p in stacks("gull-skirt") if p.lines("round-bag")}
    assert set(with_bag) == {"upper-sides"}
    picture = with_bag["upper-sides"]
    assert [group.get("data-name") for group in picture.groups("bag")] == ["pocket"]
    (round_it,) = picture.lines("round-bag")
    upper, lower = sorted(picture.lines("stitch"), key=lambda row: row[0][1])
    assert (round_it[0], round_it[-1]) == (upper[-1], lower[0]), "one row without a gap"
    (edge,) = {x for line in picture.lines("edge") for x, _ in line}
    assert max(x for x, _ in round_it) > edge
