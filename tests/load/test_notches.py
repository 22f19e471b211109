"""`notches:`: what stands along an edge, and what a piece takes over from the one it is like."""

import pytest
from load.files import file_with

from seqplan.base.measure import parse_length
from seqplan.load.document import load_text
from seqplan.model.piece import Notch, Piece

FRONT = "flap: {cut: fold, edges: [neck, shoulder, armhole, side, hem], notches: {%s}}"


def _pieces(lines: str) -> tuple[Piece, ...]:
    loaded = load_text(file_with(piece=lines))
    assert loaded.diagnostics == ()
    assert loaded.garment is not None
    return loaded.garment.pieces


def cm(text: str):
    return parse_length(text, default_unit="cm")


@pytest.mark.parametrize(
    ("written", "notches"),
    [
        ("side: single", [Notch("side")]),
        ("side: middle", [Notch("side", is_middle=True)]),
        ("side: triple middle", [Notch("side", 3, is_middle=True)]),
        ("side: 20 from armhole", [Notch("side", 1, cm("20 cm"), "armhole")]),
        ("side: double 5/8 in from hem", [Notch("side", 2, cm("5/8 in"), "hem")]),
        ("neck: 4 from fold", [Notch("neck", 1, cm("4 cm"), "fold")]),
        ("armhole: [single, double]", [Notch("armhole"), Notch("armhole", 2)]),
        ("armhole: [single, single]", [Notch("armhole"), Notch("armhole")]),
        (
            "side: single, hem: 3 from fold",
            [Notch("side"), Notch("hem", 1, cm("3 cm"), "fold")],
        ),
    ],
)
def test_a_notch_says_of_how_many_marks_it_is_and_where(written, notches):
    assert list(_pieces(FRONT % written)[-1].notches) == notches


@pytest.mark.parametrize(
    "written", ["single", "double", "middle", "triple middle", "3 cm from hem"]
)
def test_a_notch_is_written_as_it_may_be_read(written):
    (notch,) = _pieces(FRONT % f"side: {written}")[-1].notches
    assert str(notch) == written


def test_a_piece_that_is_like_another_has_its_notches_but_for_edges_with_its_own():
    lines = FRONT % "side: single, armhole: double, neck: 4 from fold"
    lines += "\n  inner: {like: flap, notches: {side: triple}}\n  whole: {like: flap, cut: 2}"
    *_, inner, whole = _pieces(lines)
    assert set(inner.notches) == {
        Notch("side", 3),
        Notch("armhole", 2),
        Notch("neck", 1, cm("4 cm"), "fold"),
    }
    # What is measured from a fold says nothing about a piece without one.
    assert set(whole.notches) == {Notch("side"), Notch("armhole", 2)}
