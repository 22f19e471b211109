"""The booklet as a document: it holds all of the sheet, in an order that a reader can follow."""

from dataclasses import replace
from pathlib import Path

import pytest
from paper.documents import steps, texts_of
from tell.sampler import SHIPPED, built, document, sheet

from seqplan.load.document import load_file
from seqplan.model.size import check_size, in_size
from seqplan.model.variant import choose
from seqplan.paper.blocks import Blanks, Items, Table
from seqplan.paper.booklet import booklet
from seqplan.paper.handouts import HANDOUTS, compose
from seqplan.paper.steps import paragraphs
from seqplan.plan.binding import bind
from seqplan.plan.plan import Planner
from seqplan.recipes.expand import construct
from seqplan.rules.derive import derive
from seqplan.tell.sheet import make_sheet

POUCH = load_file(Path(__file__).parents[1] / "tell/garments/spyglass-pouch.yaml").garment
ALL = (*SHIPPED, "dress", "tube")


def titled(made, title):
    return next(part for part in made.parts if part.title == title)


@pytest.mark.parametrize("name", ALL)
def test_the_booklet_holds_all_that_the_sheet_says(name):
    made = sheet(name)
    texts = " ".join(texts_of(document(name)))
    for group in made.groups:
        assert group.heading in texts
        for step in group.steps:
            for sentence in step.sentences:
                assert " ".join(sentence.texts) in texts
                assert sentence.check in texts
    for lines in (made.allowances, made.marks, made.reading, made.checks, made.cutting_notes):
        assert all(line in texts for line in lines)
    for titled_lines in (*made.needs, *made.cautions):
        assert all(line in texts for line in titled_lines.lines)
    for row in made.cutting:
        assert all(each in texts for each in (row.piece, row.cut, row.edges, *row.notes))
    assert all(term.meaning in texts for term in made.glossary)


@pytest.mark.parametrize("name", ALL)
def test_every_operation_is_ticked_once_in_the_order_of_the_sheet(name):
    told = [s for group in sheet(name).groups for step in group.steps for s in step.sentences]
    deeds = [deed for step in steps(name) for deed in step.deeds]
    assert [deed.texts for deed in deeds] == [paragraphs(s.texts) for s in told]
    assert [step.number for step in steps(name)] == list(range(1, len(steps(name)) + 1))


@pytest.mark.parametrize("name", ALL)
def test_a_step_has_its_pictures_or_a_place_to_draw_one(name):
    for step in steps(name):
        assert bool(step.figures) != bool(step.sketch)
    assert len({id(figure) for step in steps(name) for figure in step.figures}) >= 1


@pytest.mark.parametrize("name", ALL)
def test_one_list_names_every_step_of_the_variant(name):
    (beside,) = titled(document(name), "All steps at a glance").blocks
    lines = [line for (items,) in (beside.left, beside.right) for line in items.lines]
    assert lines == [f"{step.number}. {step.heading}" for step in steps(name)]
    assert isinstance(beside.left[0], Items)
    assert beside.left[0].is_ticked


def test_the_list_of_another_variant_names_its_own_steps():
    usual = titled(document("night-watch-pyjamas"), "All steps at a glance")
    other = titled(document("night-watch-pyjamas, crotch first"), "All steps at a glance")
    assert usual != other


def test_each_handout_has_a_composer():
    for kind in HANDOUTS:
        c = built("rope-walk-bag")
        made = compose(kind, c, Planner(c, bind(c.ids, derive(c))))
        assert {document.title for document in made.values()} == {c.garment.name}


def test_short_sentences_follow_on():
    long = "Stitch from the mark to the other end, as close beside the fold as you can."
    assert paragraphs([long, "Do so twice.", long]) == (f"{long} Do so twice.", long)


def test_in_one_size_only_its_measures_are_left():
    whole = choose(POUCH, {"bottom": "boxed"})
    made = _booklet_of(in_size(whole, "small"))
    texts = list(texts_of(made))
    assert "Size: small" in texts
    assert "1 \N{MULTIPLICATION SIGN} zip, 20 cm (8 in) long" in texts
    assert not any("30 cm" in text or "large" in text for text in texts)
    assert not any(isinstance(b, Table) and b.title for part in made.parts for b in part.blocks)
    (blanks,) = (block for block in made.cover if isinstance(block, Blanks))
    assert "Size" not in blanks.labels


def test_in_all_sizes_there_is_a_table_and_a_place_for_the_size():
    made = _booklet_of(choose(POUCH, {"bottom": "boxed"}))
    tables = [b for part in made.parts for b in part.blocks if isinstance(b, Table) and b.title]
    assert [table.head for table in tables] == [("Size", "small", "large")]
    (blanks,) = (block for block in made.cover if isinstance(block, Blanks))
    assert "Size" in blanks.labels


def test_a_size_that_is_not_offered_is_found_with_those_that_are():
    whole = choose(POUCH, {"bottom": "boxed"})
    assert check_size(whole, "large") == ()
    (found,) = check_size(whole, "medium")
    assert found.message == "the garment does not come in size `medium`"
    assert found.fix == "Known here: `small`, `large`."
    (found,) = check_size(replace(whole, sizes=()), "small")
    assert found.fix == "It comes in one size only: name no size."


def _booklet_of(whole):
    c, problems = construct(whole)
    assert not problems
    reasons = derive(c)
    return booklet(make_sheet(c, Planner(c, bind(c.ids, reasons)).booklet()))
