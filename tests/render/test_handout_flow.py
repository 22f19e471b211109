"""How a step lies on the page: nothing is lost, and no picture stands without what it shows."""

from dataclasses import replace

import pytest
from hypothesis import given
from hypothesis import strategies as st
from paper.documents import FIGURE, MACHINE, steps
from tell.sampler import SHIPPED

from seqplan.draw.textwidth import text_width
from seqplan.paper.blocks import (
    Beside,
    Card,
    Cards,
    Deed,
    Document,
    Part,
    Row,
    Step,
    Table,
)
from seqplan.render.handout.flow import column_widths, handfuls, lay, shown, widths_by_head
from seqplan.tell.sentence import Term

FIGURES = st.floats(20, 300).map(lambda height: FIGURE._replace(width=180, height=height))
DEEDS = st.builds(
    lambda count, figures: Deed(
        station=MACHINE, texts=("Stitch it now. " * count,), figures=figures
    ),
    st.integers(1, 60),
    st.lists(FIGURES, max_size=2).map(tuple),
)
TERMS = st.integers(1, 40).map(lambda n: Term("word", "what it means " * n))
STEPS = st.builds(
    Step,
    number=st.just(1),
    heading=st.just("A step"),
    deeds=st.lists(DEEDS, min_size=1, max_size=8).map(tuple),
    terms=st.lists(TERMS, max_size=6).map(tuple),
    sketch=st.just(""),
)


@given(STEPS)
def test_a_step_is_laid_out_whole_and_in_order(step):
    laid = lay(step)
    assert tuple(deed for row in laid.rows for deed in row.deeds) == step.deeds
    assert tuple(figure for row in laid.rows for figure in row.figures) == step.figures
    assert (*(term for row in laid.rows for term in row.terms), *laid.below) == step.terms


@given(STEPS)
def test_every_picture_stands_beside_its_operation(step):
    for row in lay(step).rows:
        assert row.deeds
        assert row.figures == tuple(figure for deed in row.deeds for figure in deed.figures)


@given(STEPS)
def test_no_picture_stands_before_its_operation(step):
    for row in lay(step).rows:
        told = above = 0.0
        for deed in row.deeds:
            assert not deed.figures or told <= above + 15
            told += sum(text_width(text, 10) for text in deed.texts) / 300 * 14.5
            above += sum(map(shown, deed.figures))


def test_operations_part_where_nothing_is_gained_beside_a_high_picture():
    def picture(height):
        return FIGURE._replace(width=180, height=height)

    deed = Deed(station=MACHINE, texts=("Stitch it now. " * 12,), figures=(picture(140),))
    for count in range(1, 6):
        rows = lay(Step(number=1, heading="", deeds=(deed,) * count)).rows
        assert len(rows) == count
    short = Deed(station=MACHINE, texts=("Press it.",))
    saving = (replace(deed, texts=("Stitch it.",), figures=(picture(180),)), short, short, short)
    assert len(lay(Step(number=1, heading="", deeds=saving)).rows) == 1


@pytest.mark.parametrize("name", SHIPPED)
def test_no_row_is_too_high_to_stand_on_a_page(name):
    for step in steps(name):
        assert all(sum(map(shown, row.figures)) < 400 for row in lay(step).rows)


def test_words_stand_beside_a_step_as_long_as_there_is_room():
    long, short = (Deed(station=MACHINE, texts=("Stitch it now. " * n,)) for n in (60, 2))
    word = Term("notch", "A small sign at the edge of a pattern piece.")
    assert lay(Step(number=1, heading="", deeds=(long,), terms=(word,))).below == ()
    assert lay(Step(number=1, heading="", deeds=(short,), terms=(word,), sketch="x")).below == (
        word,
    )


@pytest.mark.parametrize("count", range(40))
def test_words_of_the_trade_stay_in_handfuls(count):
    terms = [Term(str(number), "") for number in range(count)]
    parts = handfuls(terms)
    assert [term for part in parts for term in part] == terms
    assert all(len(part) % 2 == 0 for part in parts[:-1])
    assert all(5 <= len(part) <= 12 for part in parts) or count < 5


def test_a_column_is_as_wide_as_its_longest_word_at_least():
    narrow, wide = column_widths([Table("", ("a", "b"), (Row(("i", "unquestionably " * 40)),))])
    assert narrow < 30 < wide < 300


def test_tables_with_the_same_head_have_the_same_columns():
    head = ("Step", "Shots")
    short, long = (Table(name, head, (Row((name * 20, "1")),)) for name in ("i", "steps"))
    other = Table("", ("Step", "Place"), (Row(("1", "iron")),))
    held = (Card("", (short,)), Cards((Card("", (long,)),)), Beside((other,), ()))
    made = Document(kind="", title="", parts=(Part(title="", blocks=held),))
    widths = widths_by_head(made)
    assert set(widths) == {head, other.head}
    assert widths[head] == column_widths([long])
