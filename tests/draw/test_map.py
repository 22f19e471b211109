"""The map: what it shows of the work, and that nothing on it lies on anything else."""

from itertools import combinations, pairwise
from xml.etree import ElementTree

import pytest
from garments.shipped import GARMENTS
from rules.reasoning import construction

from seqplan.draw.figure import Area
from seqplan.draw.map import WIDTH, draw_map, map_figure
from seqplan.draw.pattern import Pattern
from seqplan.draw.svg import svg
from seqplan.draw.textwidth import text_width
from seqplan.draw.thing_marks import thing_marks
from seqplan.draw.things import Thing, ThingKind
from seqplan.pipeline import open_garment
from seqplan.rehearse.edges import EdgeState, Kind, state_of
from seqplan.rehearse.work import Work

TIMES = "\N{MULTIPLICATION SIGN}"
SVG = "{http://www.w3.org/2000/svg}"
_ONE_SIDE = """{finish: front.side}
  left:   {finish: back.side@left}
  right:  {finish: back.side@right}
  join:   {sew: front.side, to: back.side}"""
SKIRT = """
garment: Quay skirt
fabrics: {linen: {kind: woven}}
pieces:
  front: {of: linen, cut: fold, worn: front, edges: [waist, side, hem]}
  back:  {of: linen, cut: pair, worn: back, edges: [waist, side, hem, centre | opening]}
  band:  {of: linen, cut: 1, strip: [attach, end, fold, end]}
notions: {zip: {kind: zip, length: 20}}
operations:
  stay:   {staystitch: [front.waist, back.waist]}
  neaten: {finish: [back.centre, back.opening]}
  centre: {sew: back.centre}
  zip:    {insert: zip, in: back.opening, method: lapped}
  sides:  {sew: front.side, to: back.side, as: overlocked}
  band:   {band: [front.waist, back.waist], with: band, ends: closed}
  hem:    {hem: [front.hem, back.hem], depth: 2}
"""


def worked(text, *entries):
    """The work when these entries are done, and the garment."""
    c = construction(text)
    work = Work(c)
    for op in c.operations:
        if op.entry in entries:
            work.do(op)
    return c, work


def states(text, *entries, step=()):
    c, work = worked(text, *entries)
    ids = [op.id for op in c.operations if op.entry in step]
    return {
        f"{c.edge_name(s)}.{s.half}": state_of(work, s, ids) for s in reversed(c.rings.segments)
    }


def drawn(text, *entries, step=()):
    c, work = worked(text, *entries)
    return svg(draw_map(c, work.done, [op.id for op in c.operations if op.entry in step]))


def texts(written):
    return list(ElementTree.fromstring(written).iter(f"{SVG}text"))


def box(text):
    """Left, top, right and bottom of a text on the canvas."""
    size, x, y = (float(text.get(name)) for name in ("font-size", "x", "y"))
    width = text_width(text.text, size, bold=text.get("font-weight") == "bold")
    left = x - {None: 0, "middle": width / 2, "end": width}[text.get("text-anchor")]
    return left, y - 0.72 * size, left + width, y + 0.2 * size


def meet(one, other):
    return one[0] < other[2] and other[0] < one[2] and one[1] < other[3] and other[1] < one[3]


def test_an_edge_is_raw_then_treated_then_sewn_then_hidden():
    done = []
    found = []
    for entry in ("stay", "sides", "band"):
        done.append(entry)
        found.append(states(SKIRT, *done)["front.waist.a"].kind)
    assert found == [Kind.ROWS, Kind.ROWS, Kind.ENCLOSED]
    assert states(SKIRT)["front.hem.a"] == EdgeState(Kind.RAW)
    assert states(SKIRT, "hem")["front.hem.a"].kind is Kind.HEMMED
    assert states(SKIRT)["band.fold.a"].kind is Kind.FOLD


def test_an_edge_may_be_finished_by_itself_or_in_the_pass_that_sews_it():
    assert states(SKIRT, "neaten")["back.centre.a"] == EdgeState(Kind.RAW, is_finished=True)
    assert states(SKIRT, "sides")["back.side.a"] == EdgeState(Kind.SEWN, is_finished=True)
    assert states(SKIRT, "centre")["back.centre.a"] == EdgeState(Kind.SEWN)


def test_the_edges_of_the_step_are_marked_and_no_others():
    found = states(SKIRT, "sides", step=["sides"])
    assert {name for name, state in found.items() if state.is_active} == {
        "front.side.a",
        "front.side.b",
        "back.side.a",
        "back.side.b",
    }
    assert 'class="active"' in drawn(SKIRT, "sides", step=["sides"])
    assert 'class="active"' not in drawn(SKIRT, "sides")


def test_basting_that_is_taken_out_is_gone():
    text = """
garment: Try
pieces:
  front: {cut: fold, edges: [waist, side, hem]}
  back:  {cut: fold, edges: [waist, side, hem]}
operations:
  baste: {baste: front.side, to: back.side}
  out:   {remove basting: front.side}
"""
    assert states(text, "baste")["front.side.a"].kind is Kind.ROWS
    assert states(text, "baste", "out")["front.side.a"].kind is Kind.RAW


def test_copies_are_drawn_apart_only_where_they_differ():
    text = SKIRT.replace("{sew: front.side, to: back.side, as: overlocked}", _ONE_SIDE)
    titles = [t.text for t in texts(drawn(text)) if t.get("class") == "title"]
    assert titles == ["front", f"back (2{TIMES})", "band"]
    titles = [t.text for t in texts(drawn(text, "left")) if t.get("class") == "title"]
    assert titles == ["front", "back", "back, mirrored", "band"]


def test_a_piece_lies_wrong_side_up_where_its_wrong_side_is_worked_on():
    text = SKIRT.replace("operations:", "operations:\n  stiffen: {fuse: band, with: linen}")
    letters = [t.text for t in texts(drawn(text, "stiffen", step=["stiffen"]))
               if t.get("class") == "side"]  # fmt: skip
    assert letters == ["R", "R", "W", "R", "W"], "three pieces and two samples in the key"


def test_a_part_of_an_edge_has_a_state_of_its_own():
    text = SKIRT.replace("as: overlocked", "as: overlocked, stop: 10 before hem")
    c, work = worked(text, "sides")
    found = [state_of(work, s).kind for s in c.rings.segments if c.edge_name(s) == "front.side"]
    assert sorted(kind.value for kind in found) == ["raw", "raw", "sewn", "sewn"]


def test_the_picture_is_told_in_words():
    root = ElementTree.fromstring(drawn(SKIRT, "neaten", "sides", step=["sides"]))
    assert root.get("role") == "img"
    assert root.find(f"{SVG}title").text == "sides: all pieces laid flat"
    told = root.find(f"{SVG}desc").text
    assert "front (right side up): waist as cut, side sewn and finished in this step" in told
    assert "centre finished" in told


def test_names_in_any_script_are_shown():
    text = SKIRT.replace("side, hem", "side, Säume-縫").replace(".hem", ".Säume-縫")
    assert "Säume 縫" in [t.text for t in texts(drawn(text))]


def test_the_same_work_gives_the_same_picture():
    assert drawn(SKIRT, "neaten", "sides") == drawn(SKIRT, "sides", "neaten")


def test_only_black_white_and_greys_are_used():
    for element in ElementTree.fromstring(drawn(SKIRT, "neaten", "sides", step=["sides"])).iter():
        for name in ("fill", "stroke"):
            colour = element.get(name)
            assert colour in {None, "none"} or len(set(colour.strip("#")[::])) == 1, colour


def several(c):
    """The work at the beginning, twice on the way, and at the end, each with its last step."""
    entries = list(dict.fromkeys(op.entry for op in c.operations))
    work, shown = Work(c), {0, len(entries) // 3, 2 * len(entries) // 3, len(entries) - 1}
    for place, entry in enumerate(entries):
        ops = c.of_entry[entry]
        for op in ops:
            work.do(op)
        if place in shown:
            yield work, [op.id for op in ops]


@pytest.mark.parametrize("path", GARMENTS, ids=lambda path: path.stem)
def test_nothing_on_a_map_lies_on_anything_else(path):
    c = open_garment(path).garment
    for work, step in several(c):
        root = ElementTree.fromstring(svg(map_figure(c, work, step)))
        found = [(t.text, box(t)) for t in root.iter(f"{SVG}text")]
        for (one, first), (other, second) in combinations(found, 2):
            assert not meet(first, second), (one, other)
        height = float(root.get("viewBox").split()[3])
        for text, (left, top, right, bottom) in found:
            assert min(left, top) >= 0, text
            assert right <= WIDTH, text
            assert bottom <= height, text
        labels = [box(t) for t in root.iter(f"{SVG}text") if t.get("class") in {"label", "title"}]
        for line in root.iter(f"{SVG}path"):
            if line.get("class") in {"edge", "active"}:
                points = [tuple(map(float, p.split())) for p in
                          line.get("d").replace("M", "").split("L")]  # fmt: skip
                for label in labels:
                    assert not crosses(points, label), (path.stem, label)


def crosses(points, label):
    """Whether a line, walked in small steps, enters a box."""
    left, top, right, bottom = label
    for (ax, ay), (bx, by) in pairwise(points):
        for step in range(21):
            x, y = ax + (bx - ax) * step / 20, ay + (by - ay) * step / 20
            if left < x < right and top < y < bottom:
                return True
    return False


def test_edges_of_every_state_are_told_apart_by_their_lines():
    """Each state is drawn with another pen: what is inside the edge differs."""
    from seqplan.draw.map_lines import edge_marks

    line = [0j, 60 + 0j]
    seen = {
        str(edge_marks(line, EdgeState(kind, is_finished), 1))
        for kind in Kind
        for is_finished in (False, True)
    }
    assert len(seen) == 2 * len(Kind)


@pytest.mark.parametrize("is_inwards", [False, True])
def test_straps_on_both_sides_of_a_piece_are_mirror_images(is_inwards):
    c = construction(
        "pieces: {body: {cut: fold, edges: [top, side, foot]}, tie: {cut: 2, edges: [end, long]}}\n"
        "operations: {ties: {attach: tie, at: body.side}}"
    )
    piece = c.garment.piece["body"]
    sized = Pattern(c).pieces["body"]
    thing = Thing(ThingKind.STRAP, "body", "side", is_inwards=is_inwards)
    areas = [mark.points for mark in thing_marks(thing, piece, sized) if isinstance(mark, Area)]
    one, other = ({(round(x, 3), round(y, 3)) for x, y in area} for area in areas)
    assert other == {(round(2 * sized.axis - x, 3), y) for x, y in one}
