"""What the walk notes after each step: what has begun to hold, what has ended, what is left."""

from fractions import Fraction

from rules.reasoning import construction

from seqplan.rehearse.edges import Kind
from seqplan.rehearse.lying import watch_steps

SKIRT = """
allowance: 1.5
fabrics: {linen: woven}
pieces:
  front: {of: linen, cut: fold, edges: [waist, side, hem]}
  back: {of: linen, cut: fold, edges: [waist, side, hem]}
  pocket: {of: linen, edges: [mouth, round]}
notions: {sequins: {kind: sequin trimming, iron: no}}
operations:
  tack: {baste: front.side, to: back.side}
  sides: {sew: front.side, to: back.side, as: pressed open, without: finish}
  trim: {trim: front.side, to: 5 mm}
  crease: {fold: front.hem}
  open: {unfold: front.hem}
  pocket: {attach: pocket, at: front.waist}
  wash: {do: Wash it., on: [front, back], wet: yes}
  dry: {wait: 5 hours, on: [front, back], to: dry}
  out: {send out: pocket}
  home: {wait: 1 day, on: pocket, to: come back}
  glue: {do: Glue the label on., on: back}
  set: {wait: 1 hour, on: back, to: set, after: glue}
  sequins: {attach: sequins, at: back.waist}
"""

LEGS = """
pieces:
  front: {cut: pair, edges: [waist, side, hem, inseam, crotch]}
  back: {cut: pair, edges: [waist, side, hem, inseam, crotch]}
operations:
  sides: {sew: front.side, to: back.side, as: French}
  inseams: {sew: front.inseam, to: back.inseam}
"""


def after():
    c = construction(SKIRT)
    steps, found = watch_steps(c, c.ids)
    assert found.is_clean
    return {step.entry: step for step in steps}


def test_what_is_for_a_while_is_told_until_it_ends():
    told = after()
    assert told["tack"].basted == ("front.side", "back.side")
    assert told["sides"].basted == ()
    assert told["crease"].folded == ("front.hem",)
    assert told["open"].folded == ()
    assert (told["wash"].wet, told["dry"].wet) == (("back", "front"), ())
    assert (told["out"].away, told["home"].away) == (("pocket",), ())
    assert (told["glue"].setting, told["set"].setting) == (("back",), ())


def test_what_is_for_good_stays():
    told = after()
    assert "pocket" in told["pocket"].caught
    assert told["sequins"].no_iron == ("back.waist",)
    assert told["sequins"].trimmed == (("front.side", Fraction(5)),)


def test_an_edge_is_told_with_its_state_its_press_and_what_is_left_of_it():
    sides = {edge.name: edge for edge in after()["sides"].edges}
    assert sides["front.side"].state.kind is Kind.SEWN
    assert sides["front.side"].pressed == "open"
    assert sides["front.side"].left == 15
    (trimmed,) = after()["trim"].edges
    assert (trimmed.name, trimmed.left) == ("front.side", 5)


def test_a_look_is_asked_for_before_a_seam_of_a_pair_is_trimmed_or_felled():
    c = construction(LEGS)
    sides, inseams = watch_steps(c, c.ids)[0]
    assert sides.look_before == ("sides/trim", "sides/enclose")
    assert inseams.look_before == ()
