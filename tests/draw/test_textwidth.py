"""Widths of text, against the shipped fonts themselves."""

from pathlib import Path

import pytest
from hypothesis import given
from hypothesis import strategies as st

import seqplan.render
from seqplan.draw.textwidth import text_width, wrap

FONTS = Path(seqplan.render.__file__).parent / "fonts"


@pytest.mark.parametrize(
    # Arimo has the advances of Helvetica: i 222, m 833, space 278, digits 556 of 1000 to the em
    # (Adobe Core 14 AFM files).
    ("text", "per_thousand"),
    [("i", 222), ("m", 833), (" ", 278), ("0", 556), ("Hem", 722 + 556 + 833)],
)
def test_widths_are_those_of_the_helvetica_metrics(text, per_thousand):
    assert text_width(text, 1000) == pytest.approx(per_thousand, abs=2)


def test_bold_is_wider():
    assert text_width("hem", 10, bold=True) > text_width("hem", 10)


def test_letters_beyond_ascii_have_their_own_width():
    assert text_width("Ä", 1000) == pytest.approx(667, abs=2)
    assert text_width("½", 1000) == pytest.approx(834, abs=2)


@given(st.text(max_size=40), st.text(max_size=40))
def test_widths_add_up_and_are_never_negative(one, other):
    total = text_width(one + other, 10)
    assert total == pytest.approx(text_width(one, 10) + text_width(other, 10))
    assert total >= 0


@given(st.lists(st.text(st.characters(categories=["L", "Nd"]), min_size=1), min_size=1, max_size=6))
def test_wrapping_keeps_every_word_and_at_most_three_lines(words):
    lines = wrap(" ".join(words), 60, 10)
    assert 1 <= len(lines) <= 3


def test_the_licence_of_the_fonts_lies_beside_them():
    names = {path.suffix for path in FONTS.iterdir()}
    assert ".ttf" in names
    assert any(
        "OFL" in path.read_text(errors="ignore")[:4000]
        or "Open Font" in path.read_text(errors="ignore")[:4000]
        for path in FONTS.glob("*.txt")
    )
