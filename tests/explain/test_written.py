"""What the checker says of a written order."""

from textwrap import dedent

from seqplan.base.diagnostic import Severity
from seqplan.explain.written import check_binding, check_written, state
from seqplan.load.document import load_text
from seqplan.plan.binding import bind
from seqplan.recipes.expand import construct
from seqplan.rules.derive import derive

PIECES = """
    garment: Quay shirt
    pieces:
      front: {cut: fold, edges: [neck, shoulder, armhole, side, hem]}
      back:  {cut: fold, edges: [neck, shoulder, armhole, side, hem]}
    operations:
"""


def _checked(operations: str):
    garment = load_text(dedent(PIECES + operations)).garment
    c, _ = construct(garment)
    binding = bind(c.ids, derive(c))
    return c, binding


def test_an_order_that_holds_has_no_finding():
    c, binding = _checked(
        """
      sides: {sew: front.side, to: back.side, as: pressed open}
      hem: {hem: [front.hem, back.hem], depth: 2}
        """
    )
    assert check_written(c, binding) == ()
    assert check_binding(binding) == ()


def test_each_pair_of_entries_is_told_once_with_its_strongest_rule():
    c, binding = _checked(
        """
      hem: {hem: [front.hem, back.hem], depth: 2}
      sides: {sew: front.side, to: back.side, as: pressed open}
        """
    )
    (finding,) = check_written(c, binding)
    assert finding.slug == "crossing-seams-before-hem"
    assert finding.severity is Severity.ERROR
    assert finding.path == ("operations", "hem")
    assert finding.message == "`hem` comes before `sides`"


def test_a_broken_should_is_a_warning():
    c, binding = _checked(
        """
      sides: {sew: front.side, to: back.side}
      hem: {hem: [front.hem, back.hem], depth: 2}
      press-sides: {press: front.side}
        """
    )
    (finding,) = check_written(c, binding)
    assert finding.severity is Severity.WARNING
    assert finding.slug == "press-before-crossing"


def test_the_fix_names_the_entry_that_the_smallest_repair_moves():
    c, binding = _checked(
        """
      hem: {hem: [front.hem, back.hem], depth: 2}
      sides: {sew: front.side, to: back.side, as: pressed open}
        """
    )
    (down,) = check_written(c, binding, ["hem"])
    (up,) = check_written(c, binding, ["sides"])
    assert down.fix == "Move `hem` below `sides`."
    assert up.fix == "Move `sides` above `hem`."


def test_reasons_that_no_order_can_hold_are_one_error_with_a_line_for_each():
    _, binding = _checked(
        """
      sides: {sew: front.side, to: back.side, as: pressed open, after: hem}
      hem: {hem: [front.hem, back.hem], depth: 2}
        """
    )
    (finding,) = check_binding(binding)
    assert finding.slug == "no-order"
    assert finding.severity is Severity.ERROR
    assert len(finding.notes) >= 2
    assert all(note.path is not None for note in finding.notes)


def test_an_either_or_is_stated_with_its_alternatives():
    _, binding = _checked(
        """
      shoulders: {sew: front.shoulder, to: back.shoulder, as: pressed open}
      sides: {sew: front.side, to: back.side, as: pressed open}
      armhole: {do: bind, at: front.armhole}
        """
    )
    assert all(" before " in state(reason) for reason in binding.held)
