"""Garments that hold every action, and the way from a text or file to sentences and sheets."""

from functools import cache
from pathlib import Path

from rules.reasoning import construction

from seqplan.load.document import load_file, load_text
from seqplan.model.variant import choose
from seqplan.paper.booklet import compose
from seqplan.plan.binding import bind
from seqplan.plan.plan import Planner
from seqplan.recipes.expand import construct
from seqplan.render.handout.html import html
from seqplan.render.handout.paper import Paper
from seqplan.rules.derive import derive
from seqplan.tell.sheet import make_sheet
from seqplan.tell.step import tell_operation

GARMENTS = Path(__file__).parents[2] / "garments"
SHIPPED = tuple(sorted(path.stem for path in GARMENTS.glob("*.yaml")))
OTHER_WAYS = {"night-watch-pyjamas, crotch first": {"way": "crotch first"}}
"""Shipped garments with choices that are not the usual ones."""

DRESS = """
garment: Sampler dress
units: cm
allowance: 1.5
wearer: child
fabrics:
  shell: {kind: woven, weight: medium}
  fusible: {kind: interfacing}
pieces:
  front: {of: shell, cut: fold, worn: front, edges: [neck, shoulder, armhole, side, hem]}
  back:
    of: shell
    cut: pair
    worn: back
    edges: [neck, shoulder, armhole, side, hem, centre | opening]
  front-facing: {of: shell, cut: fold, layer: facing, edges: [neck, shoulder, lower]}
  back-facing: {of: shell, cut: pair, layer: facing, edges: [neck, shoulder, lower, end]}
  pocket: {of: shell, cut: 2, edges: [mouth, round]}
notions:
  zip: {kind: zip, length: 40}
  buttons: {kind: button, count: 3}
  label: {kind: label}
operations:
  stiffen: {fuse: [front-facing, back-facing], with: fusible}
  stay-neck: {staystitch: front.neck}
  bust-darts: {dart: front.side}
  back-pleats: {pleat: back.shoulder}
  gathers: {gather: front.hem}
  bag: {sew: pocket.round, to: pocket, allowance: 0.6}
  bag-trim: {trim: pocket.round}
  bag-clip: {clip: pocket.round}
  bag-turn: {turn: pocket}
  bag-press: {press: pocket.round}
  bag-topstitch: {topstitch: pocket.mouth}
  hold-shoulders: {baste: front.shoulder, to: back.shoulder}
  shoulders: {sew: front.shoulder, to: back.shoulder, as: pressed open}
  take-out: {remove basting: front.shoulder}
  sides: {sew: front.side, to: back.side, as: finished together, press: open}
  centre: {sew: back.centre, as: pressed open}
  closing: {insert: zip, in: back.opening, method: centred}
  facing-joins: {sew: front-facing.shoulder, to: back-facing.shoulder, as: pressed open}
  facing-edge: {finish: [front-facing.lower, back-facing.lower]}
  neck: {sew: [front.neck, back.neck], to: [front-facing.neck, back-facing.neck], as: faced}
  more-understitching: {understitch: front-facing.neck}
  facing-tack: {tack: front-facing.shoulder, to: shoulders}
  facing-ends: {tack: back-facing.end, to: zip}
  armholes: {hem: [front.armhole, back.armhole], depth: 0.7, turned: once}
  try-on: {fit: all}
  lower-hem: {hem: [front.hem, back.hem], depth: 3, turned: twice, by: hand}
  buttons: {attach: buttons, at: front.neck}
  name-label: {attach: label, at: back.neck}
  look: {inspect: all}
  last: {do: "Wrap it up", station: table}
"""

TUBE = """
garment: Sampler tubes
units: in
pieces:
  leg: {cut: pair, edges: [waist, outer, hem, inner]}
  band: {cut: 1, edges: [top, end, foot, end]}
notions:
  elastic: {kind: elastic}
  cord: {kind: cord, count: 2}
  zip: {kind: invisible zip, length: 9 in}
operations:
  legs: {sew: leg.outer, as: French}
  inner: {sew: leg.inner, allowance: 5/8 in, as: French}
  channel: {casing: leg.waist, depth: 1 1/4 in, gap: 2 in}
  elastic: {insert: elastic, in: channel}
  band-hem: {casing: band.top, depth: 1 in}
  cord: {insert: cord, in: band-hem}
  opening: {insert: zip, in: band.end}
"""


@cache
def built(name):
    """One of the samplers, or a shipped garment."""
    file = name.partition(",")[0]
    if file in SHIPPED:
        garment = load_file(GARMENTS / f"{file}.yaml").garment
        return construct(choose(garment, OTHER_WAYS.get(name, {})))[0]
    return construction({"dress": DRESS, "tube": TUBE}[name])


@cache
def planned(name):
    c = built(name)
    return Planner(c, bind(c.ids, derive(c)))


@cache
def sheet(name):
    return make_sheet(built(name), planned(name).booklet())


@cache
def document(name):
    """The booklet with its pictures."""
    return compose(built(name), planned(name))


@cache
def booklet(name, paper=Paper.A4):
    """The booklet with its pictures as a page."""
    return html(document(name), paper)


def sheet_of(text):
    c = construction(text)
    return make_sheet(c, Planner(c, bind(c.ids, derive(c))).booklet())


def document_of(text):
    """The booklet of a garment with choices, the usual ones made."""
    loaded = load_text(text, folder=GARMENTS)
    assert not loaded.diagnostics, loaded.diagnostics
    c = construct(choose(loaded.garment, {}))[0]
    return compose(c, Planner(c, bind(c.ids, derive(c))))


def told(name, operation):
    """What one operation is told with, all that the file lists before it being done."""
    c = built(name)
    before = c.ids[: c.ids.index(operation)]
    return tell_operation(c, c.op[operation], before)


def sentences(name):
    return [
        sentence
        for group in sheet(name).groups
        for step in group.steps
        for sentence in step.sentences
    ]
