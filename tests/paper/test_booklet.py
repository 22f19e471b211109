"""The booklet as a document: it holds all of the sheet, in an order that a reader can follow."""

from dataclasses import replace
from pathlib import Path

import pytest
from paper.documents import steps, texts_of
from paper.reading import walk
from tell.sampler import GARMENTS, SHIPPED, built, document, sheet

from seqplan.load.document import load_file, load_text
from seqplan.model.operation import Action
from seqplan.model.size import check_size, in_size
from seqplan.model.variant import choose
from seqplan.paper.blocks import Blanks, Image, Items, Part, Table
from seqplan.paper.booklet import booklet
from seqplan.paper.handouts import HANDOUTS, Asked, compose
from seqplan.paper.steps import paragraphs
from seqplan.plan.binding import bind
from seqplan.plan.plan import Planner
from seqplan.recipes.expand import construct
from seqplan.rules.derive import derive
from seqplan.tell.sheet import make_sheet

POUCH = load_file(Path(__file__).parents[1] / "tell/garments/spyglass-pouch.yaml").garment
ALL = (*SHIPPED, "dress", "tube")


def find(made, kind):
    """The blocks of a kind in a document or a part, those within others too."""
    blocks = made.blocks if isinstance(made, Part) else (*made.cover, *made.parts)
    return [block for block in walk(blocks) if isinstance(block, kind)]


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
    assert all(text in texts for text in (*made.terms, made.date or ""))
    images = find(document(name), Image)
    assert images == [Image(*picture) for picture in (made.mark, *made.plans) if picture]


def told_steps(name):
    return [step for group in sheet(name).groups for step in group.steps]


@pytest.mark.parametrize("name", ALL)
def test_every_operation_is_ticked_once_in_the_order_of_the_sheet(name):
    told = [s for group in sheet(name).groups for step in group.steps for s in step.sentences]
    deeds = [deed for step in steps(name) for deed in step.deeds]
    assert [deed.texts for deed in deeds] == [paragraphs(s.texts) for s in told]
    assert [step.number for step in steps(name)] == list(range(1, len(steps(name)) + 1))


@pytest.mark.parametrize("name", ALL)
def test_a_step_has_its_pictures_or_a_place_to_draw_one_unless_nothing_could_be_drawn(name):
    still = {Action.WAIT, Action.PRETREAT, Action.OPEN, Action.FIT, Action.INSPECT, Action.SEND_OUT}
    c = built(name)
    for step, told in zip(steps(name), told_steps(name), strict=True):
        assert not (step.figures and step.sketch)
        if not step.figures and not step.sketch:
            assert {c.op[op].action for op in told.operations} <= still
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


@pytest.mark.parametrize("kind", HANDOUTS)
@pytest.mark.parametrize("is_large", [False, True])
def test_each_kind_of_handout_is_composed(kind, is_large):
    c = built("rope-walk-bag")
    planner = Planner(c, bind(c.ids, derive(c)))
    made = compose(kind, c, planner, Asked(is_large=is_large))
    assert all(each.title == c.garment.name for each in made.values())
    assert {each.is_large for each in made.values()} == {is_large}


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


SACK = """
garment: Try
sizes: [small, large]
mark: makers-hall-mark.svg
fabrics: {cotton: {kind: woven, amounts: {150: {small: 1 m, large: 1.2 m}, 115: 2 m}}}
plans:
  - {picture: makers-hall-mark.svg, fabric: cotton, size: small}
  - {picture: makers-hall-mark.svg, fabric: cotton, size: large}
  - {picture: makers-hall-mark.svg, fabric: cotton}
pieces: {sack: {of: cotton, edges: [top, side]}}
operations: {hem: {hem: [sack.top, sack.side], depth: 1}}
"""


@pytest.mark.parametrize(("size", "amount"), [("small", "1 m (1⅛ yd)"), ("large", "1.2 m (1⅜ yd)")])
def test_in_one_size_only_its_cloth_and_its_lay_plans_are_left(size, amount):
    whole = load_text(SACK, folder=GARMENTS).garment
    made = _booklet_of(in_size(whole, size))
    texts = list(texts_of(made))
    assert f"Cotton, 150 cm (60 in) wide: {amount}" in texts
    assert "or cotton, 115 cm (45 in) wide: 2 m (2¼ yd)" in texts
    assert [image.caption for image in find(made, Image)] == [
        "",
        f"Lay plan: Cotton, size {size}",
        "Lay plan: Cotton",
    ]


def test_mark_date_and_terms_have_their_places():
    made = document("chandlery-tote")
    assert isinstance(made.cover[0], Image)
    assert "As of August 2026" in list(texts_of(made))
    assert titled(made, "Terms of use").blocks[0].texts == sheet("chandlery-tote").terms
    assert find(titled(made, "Cut"), Image)
    assert "Terms of use" not in [part.title for part in document("gull-skirt").parts]


def _booklet_of(whole):
    c, problems = construct(whole)
    assert not problems
    reasons = derive(c)
    return booklet(make_sheet(c, Planner(c, bind(c.ids, reasons)).booklet()))
