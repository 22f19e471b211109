from fractions import Fraction

import pytest
from hypothesis import given
from hypothesis import strategies as st

from seqplan.base.measure import Length, both, inches, parse_length
from seqplan.tell.names import listing
from seqplan.tell.usual import BAND_COVER, first_turn, french_rows, shorter


@given(st.integers(6, 40), st.sampled_from(["cm", "mm"]))
def test_the_rows_of_a_french_seam_take_up_its_allowance(mm, unit):
    rows = french_rows(Length(Fraction(mm), unit))
    assert rows.first.mm + rows.second.mm == mm
    assert 0 < rows.first.mm <= rows.second.mm


@pytest.mark.parametrize(
    ("allowance", "first", "second"),
    [
        ("1 cm", "4 mm (⅛ in)", "6 mm (¼ in)"),
        ("1.2 cm", "6 mm (¼ in)", "6 mm (¼ in)"),
        ("1.5 cm", "7 mm (¼ in)", "8 mm (⅜ in)"),
        ("5/8 in", "¼ in (6 mm)", "⅜ in (1 cm)"),
        ("3/4 in", "⅜ in (1 cm)", "⅜ in (1 cm)"),  # Utah State University
        ("3/8 in", "⅛ in (3 mm)", "¼ in (6 mm)"),  # Conover 1921
    ],
)
def test_the_rows_add_up_in_both_systems(allowance, first, second):
    rows = french_rows(parse_length(allowance))
    assert (both(rows.first), both(rows.second)) == (first, second)


def test_the_first_turn_is_a_centimetre_or_less():
    assert first_turn(Length(Fraction(30))).mm == 10
    assert first_turn(Length(Fraction(5))).mm == 5


@given(st.lists(st.text("abc", min_size=1), min_size=1))
def test_a_list_of_names_holds_each_once_in_its_order(names):
    parts = listing(names).replace(" and ", ", ").split(", ")
    assert parts == names


@given(st.integers(4, 60), st.sampled_from([(2, 3, 4), (3, 2, 4)]))
def test_what_remains_and_what_is_taken_off_are_the_whole(mm, by):
    rest, off = shorter(Length(Fraction(mm)), by=by)
    assert rest.mm + off.mm == mm
    assert rest.mm >= off.mm


@given(st.integers(8, 30))
def test_a_band_is_turned_under_less_than_its_allowance_in_both_systems(mm):
    whole = Length(Fraction(mm))
    rest, off = shorter(whole, by=BAND_COVER)
    assert both(rest) != both(whole)
    assert inches(rest) != inches(whole)
    assert off.mm in BAND_COVER
