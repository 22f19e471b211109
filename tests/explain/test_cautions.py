"""Cautions for children's clothes: when they are given, and when not."""

import pytest

from seqplan.base.diagnostic import Severity
from seqplan.explain.cautions import check_cautions, find_cords
from seqplan.load.document import load_text

GARMENT = """
garment: Quay jacket
%s
pieces:
  front: {cut: fold, edges: [neck, shoulder, waist, sleeve]}
  hood: {cut: pair, edges: [neck, face, back]}
  tie: {cut: 2, edges: [end, long, tip, long]}
  tab: {cut: 2, edges: [end, long, tip, long]}
notions: {tape: {kind: tape}%s}
operations:
  hood-channel: {casing: hood.face, depth: 2}
  waist-channel: {casing: front.waist, depth: 2}
  %s
"""


def _garment(notions, operation, wearer="wearer: child"):
    loaded = load_text(GARMENT % (wearer, f", {notions}" if notions else "", operation))
    assert not loaded.diagnostics, loaded.diagnostics
    return loaded.garment


def _slugs(*words, **named):
    return [item.slug for item in check_cautions(_garment(*words, **named))]


FIRES = [
    ("cord: {kind: cord}", "c: {insert: cord, in: hood-channel}", "cord-at-neck"),
    ("pull: {kind: drawstrings}", "c: {insert: pull, in: hood-channel}", "cord-at-neck"),
    ("bow: {kind: ribbon}", "c: {attach: bow, at: front.neck}", "cord-at-neck"),
    ("cord: {kind: cord}", "c: {attach: cord, at: hood}", "cord-at-neck"),
    ("", "c: {attach: tie, at: front.neck}", "cord-at-neck"),
    (
        "",
        "c: {sew: front.neck, to: hood.neck, between: {tie.end: front.neck}}",
        "cord-at-neck",
    ),
    ("cord: {kind: elastic cord}", "c: {insert: cord, in: waist-channel}", "free-cord-ends"),
    ("", "c: {attach: tie, at: front.waist}", "free-cord-ends"),
    ("cord: {kind: cord}", "c: {do: Tie the cord in a bow, on: front}", "free-cord-ends"),
    ("b: {kind: wooden buttons}", "c: {attach: b, at: front.shoulder}", "small-part"),
    ("toggles: {kind: fastening}", "c: {attach: toggles, at: front.shoulder}", "small-part"),
    ("z: {kind: invisible zip}", "c: {insert: z, in: hood.back, method: invisible}", "small-part"),
]
QUIET = [
    ("e: {kind: elastic}", "c: {insert: e, in: waist-channel}"),
    ("l: {kind: lace}", "c: {attach: l, at: front.neck}"),
    ("l: {kind: label}", "c: {attach: l, at: front.neck}"),
    ("", "c: {attach: tab, at: front.neck}"),
    ("", "c: {sew: front.neck, to: hood.neck}"),
]


@pytest.mark.parametrize(("notions", "operation", "slug"), FIRES)
def test_cords_and_small_parts_are_cautioned_against(notions, operation, slug):
    found = list(check_cautions(_garment(notions, operation)))
    # A bow is small enough to swallow, too.
    assert slug in [item.slug for item in found]
    for item in found:
        assert item.severity is Severity.CAUTION
        assert any("16 CFR" in note.message or "EN 14682" in note.message for note in item.notes)
        assert item.notes[-1].message.endswith("where it is worn decide.")
        assert item.fix


@pytest.mark.parametrize(("notions", "operation"), QUIET)
def test_what_is_no_cord_and_no_small_part_is_not(notions, operation):
    assert _slugs(notions, operation) == []


@pytest.mark.parametrize(("notions", "operation", "slug"), FIRES)
@pytest.mark.parametrize("wearer", ["wearer: adult", "author: Nobody"])
def test_for_adults_and_where_nobody_says_who_wears_it_all_is_quiet(
    notions, operation, slug, wearer
):
    assert _slugs(notions, operation, wearer) == []


def test_a_cord_is_told_where_it_is_drawn_through_and_a_button_where_it_is_bought():
    garment = _garment(
        "cord: {kind: cord}, b: {kind: button}", "c: {insert: cord, in: hood-channel}"
    )
    assert {item.slug: item.path for item in check_cautions(garment)} == {
        "cord-at-neck": ("operations", "c"),
        "small-part": ("notions", "b"),
    }


def test_one_cord_at_two_places_is_told_at_both():
    garment = _garment(
        "cord: {kind: cord}",
        "c: {insert: cord, in: hood-channel}\n  d: {insert: cord, in: waist-channel}",
    )
    assert [(cord.path[1], cord.is_at_neck) for cord in find_cords(garment)] == [
        ("c", True),
        ("d", False),
    ]
