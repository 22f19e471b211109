"""What is laid on what, and where a thing lies: what would mislead whoever sews by a picture."""

from draw.looking import SVG, Seen, points
from rules.reasoning import construction

from seqplan.draw.face import face_figure
from seqplan.draw.lay import layers
from seqplan.draw.pictures import Kind, draw_order
from seqplan.draw.subject import Subject
from seqplan.draw.svg import svg
from seqplan.draw.things import things_of
from seqplan.rehearse.work import Work

WORK = """
garment: Trousers with a tab
allowance: 1.5
fabrics: {drill: {kind: woven}}
pieces:
  front:    {of: drill, cut: pair, worn: front, edges: [waist, mouth, side, hem, inseam, crotch]}
  bag:      {of: drill, cut: pair, layer: lining, edges: [waist, mouth, round]}
  bag-back: {of: drill, cut: pair, edges: [waist, side, round]}
  lower:    {of: drill, cut: pair, layer: lining, edges: [side, round]}
  sleeve:   {of: drill, cut: pair, edges: [cap, underarm-back, wrist, underarm-front]}
  panel:    {of: drill, cut: 2, edges: [top, side, foot, side]}
  tab:      {of: drill, cut: 1, edges: [end, long, end, long]}
  strap:    {of: drill, cut: 2, edges: [near, long, far, long]}
  band:     {of: drill, cut: 1, strip: [attach, end, fold, end]}
notions: {button: {kind: button}}
operations:
  mouths:  {sew: front.mouth, to: bag.mouth, as: faced}
  bags:    {sew: bag.round, to: bag-back.round}
  pockets: {hold: [front.waist, front.side], with: bag + bag-back}
  under:   {sew: sleeve.underarm-front, to: sleeve.underarm-back}
  crotch:  {sew: front.crotch}
  tab:     {strap: tab, method: folded}
  tab-on:  {attach: tab, at: panel.side}
  straps:  {strap: strap, method: turned}
  top:     {sew: panel.top, to: panel, between: {strap.near: panel.top}}
  sides:   {sew: panel.side, to: panel}
  hole:    {buttonhole: band, number: 1}
  button:  {attach: button, to: band}
  holes:   {buttonhole: strap, number: 2}
"""


def laid(entry):
    c = construction(WORK)
    work = Work(c)
    for id_ in c.ids[: c.ids.index(entry)]:
        work.do(c.op[id_])
    op = c.op[entry]
    found = layers(Subject(c, work, c.entry(op), op))
    return [(layer.side.material.title, layer.is_right_up) for layer in found]


def face(entry):
    c = construction(WORK)
    work = Work(c)
    work.do(c.op[entry])
    return Seen(svg(face_figure(c, work, [entry])))


def test_halves_of_a_bag_lie_as_they_were_sewn():
    assert laid("pockets") == [("front", False), ("bag", True), ("bag back", False)]


def test_layers_that_no_seam_joins_lie_the_same_side_up():
    apart = WORK.replace("  bags:    {sew: bag.round, to: bag-back.round}\n", "")
    c = construction(apart)
    op = c.op["pockets"]
    found = layers(Subject(c, Work(c), c.entry(op), op))
    assert [layer.is_right_up for layer in found] == [False, True, True]


def test_a_piece_sewn_to_itself_is_not_called_another_copy():
    assert laid("under") == [("sleeve", True), ("sleeve, its other edge", False)]
    assert laid("crotch") == [("front", True), ("front, the other one", False)]
    pictures = draw_order(construction(WORK), ["under", "crotch"], {Kind.SECTION})
    told = {id_: svg(figures[Kind.SECTION][0]) for id_, figures in pictures.items()}
    assert "the other one" not in told["under"]


def test_one_tab_is_drawn_on_one_copy():
    assert [words for words, _ in face("tab-on").words("title")] == ["panel"]
    assert [words for words, _ in face("holes").words("title")] != ["strap"]


def test_a_button_lies_at_the_other_end_than_its_hole():
    c = construction(WORK)
    far = {entry: [t.is_far for t in things_of(c, c.op[entry])] for entry in ("hole", "button")}
    assert far == {"hole": [False], "button": [True]}


def test_a_hole_lies_at_the_free_end_of_a_strap():
    c = construction(WORK)
    (thing,) = things_of(c, c.op["holes"])
    assert "near" in thing.sewn
    assert "far" not in thing.sewn
    bars, turned = (hole_at(text) for text in (WORK, WORK.replace("strap.near:", "strap.far:")))
    assert bars > turned


def hole_at(text):
    """How far down the strap its buttonhole is drawn."""
    c = construction(text)
    picture = Seen(svg(face_figure(c, Work(c), ["holes"])))
    (piece,) = picture.groups("piece")
    strokes = (path for path in piece.iter(f"{SVG}path") if path.get("stroke-width") == "1.2")
    return next(y for path in strokes for _, y in points(path.get("d")))
