"""Three small garments, read as a newcomer reads them: what is said, needed, cut and minded."""

from functools import cache
from pathlib import Path

import pytest

from seqplan.load.document import load_file
from seqplan.model.variant import choose
from seqplan.paper.booklet import booklet
from seqplan.plan.binding import bind
from seqplan.plan.plan import Planner
from seqplan.plan.waivers import set_aside
from seqplan.recipes.expand import construct
from seqplan.render.handout.html import html
from seqplan.render.handout.paper import Paper
from seqplan.rules.derive import derive
from seqplan.tell.sheet import make_sheet
from seqplan.tell.step import tell_operation

GARMENTS = Path(__file__).parent / "garments"

FACTS = {
    "spyglass-pouch": {
        "zip-sides": "face down on the right side along the top edges of the outer pieces"
        "|teeth pointing inwards|zip foot|In the second seam take the other tape",
        "zip-sides/topstitch": "3 mm (⅛ in) from it",
        "zip-open": "half of its length|turned out through it",
        "outer-round": "the end edges of the tab piece on the right side along the side edges"
        " of the outer pieces|points inwards|along the side, foot and side edges|at each corner",
        "lining-foot": "leave 8 cm (3⅛ in) open|backstitch at both pins|it is turned later",
        "corners": "side seam exactly on the foot seam|Measure 3 cm|6 cm (2⅜ in) long"
        "|backstitch|Cut the tip off 1 cm",
        "turn": "right side out through the gap in the lining and the open zip|something blunt",
        "shut": "gap of 8 cm|foot seam of the lining|slip stitch",
    },
    "tiller-cuff": {
        "wash": "poplin|before anything is cut",
        "mark": "2 pleats at the wrist front edge|slit line",
        "stiffen": "only half of the width",
        "placket/fold": "6 mm (¼ in)|tower pieces fold both corners under",
        "placket/slash": "stop 6 mm (¼ in) before the marked end|not a thread further|small sharp",
        "placket": "right side down, on the wrong side of the slit edges|backstitch"
        "|the underlap pieces go on that side of the slit which meets the wrist back edge"
        "|the tower pieces on the side which meets the wrist front edge",
        "placket/wrap": "through the slit to the right side|triangle",
        "placket/close": "2 mm (⅛ in)|as a box|stays free of the underlap",
        "under/trim": "underneath to 3 mm (⅛ in)",
        "under/turn-under": "wide allowance|over the trimmed one",
        "under/fell": "2 mm (⅛ in) from the fold",
        "cuff/fold": "7 mm (¼ in)|that is 3 mm (⅛ in) less than the allowance",
        "cuff": "foot edges of the underlap and tower pieces|beyond the edge by its own allowance",
        "cuff/ends": "right sides together|level with the end|6 mm (¼ in)|blunt",
        "cuff/wrap": "over the seam line by 3 mm (⅛ in)",
        "cuff/close": "2 mm (⅛ in) from the seam|caught all the way",
        "cuff/topstitch": "5 mm (¼ in) from the edge",
        "holes": "scrap|on the cuff pieces|4 of them|pin across each end|never towards your hand",
    },
    "ropeloft-apron": {
        "straps": "½ in (1.3 cm) from the raw edges|Leave a short end open|all 3 of them",
        "straps/turn": "safety pin",
        "chalk": "along the lower side of the chalk line|¼ in (6 mm) from it",
        "chalk/slash": "not the welt and not the bag|four corners|last thread",
        "chalk/bag": "free edge meets the raw edges of the welt",
        "pocket/press-under": "by ½ in (1.3 cm), the lower edge first",
        "pocket": "at the tool pocket mark of the body piece|⅛ in (2 mm) from the folded edges"
        "|triangle, ¼ in (6 mm) long",
        "armholes": "first pressed fold",
        "neck-on": "top edge of the body piece|square with a cross",
        "name": "Fold the ends of the label under",
        "hang": "12 hours|upper edge",
    },
}


@cache
def garment(name, **picks):
    loaded = load_file(GARMENTS / f"{name}.yaml")
    assert not loaded.diagnostics
    c, problems = construct(choose(loaded.garment, picks))
    assert not problems
    return c


@cache
def made(name, bottom="boxed"):
    c = garment(name, bottom=bottom)
    reasons = derive(c)
    waived = set_aside(c.garment.waivers, reasons)
    return make_sheet(c, Planner(c, bind(c.ids, reasons, waived)).booklet())


def page(name):
    return html(booklet(made(name)), Paper.A4)


def steps(sheet):
    return {step.entry: step for group in sheet.groups for step in group.steps}


@pytest.mark.parametrize(
    ("name", "operation", "facts"),
    [(name, op, facts) for name, table in FACTS.items() for op, facts in table.items()],
)
def test_an_operation_is_told_with_its_facts(name, operation, facts):
    c = garment(name, bottom="boxed")
    text = tell_operation(c, c.op[operation], c.ids[: c.ids.index(operation)]).text
    assert [fact for fact in facts.split("|") if fact not in text] == []


def test_the_booklet_says_which_choices_and_sizes_it_is_for():
    sheet = made("spyglass-pouch")
    assert sheet.variant == ("Bottom: boxed (there is also: flat)",)
    assert sheet.sizes == ("small", "large")
    flat = made("spyglass-pouch", bottom="flat")
    assert flat.variant == ("Bottom: flat (there is also: boxed)",)
    assert "corners" not in steps(flat)


def test_what_differs_from_size_to_size_is_a_table():
    sheet = made("spyglass-pouch")
    assert sheet.measures.rows == (("Zip, length", ("20 cm (8 in)", "30 cm (12 in)")),)
    lines = [line for need in sheet.needs for line in need.lines]
    assert "1 \N{MULTIPLICATION SIGN} zip, its length by the table of sizes" in lines
    assert "Sewing machine with standard foot and zip foot" in lines
    assert made("tiller-cuff").measures is None


def test_why_a_rule_is_set_aside_stands_in_the_step():
    step = steps(made("spyglass-pouch"))["outer-round"]
    (why,) = step.waived
    assert why.startswith("For this step a usual rule is set aside on purpose. The rule: A seam is")
    assert why.endswith("The reason: the waxed cloth shows a second row of holes.")


def test_a_picture_has_its_place_and_caption():
    assert steps(made("spyglass-pouch"))["zip-sides"].picture == (
        "The zip between outer and lining"
    )
    place = "Place for the designer&#39;s picture: The zip between outer and lining"
    assert page("spyglass-pouch").count(f'aria-label="{place}"') == 1


def test_what_the_page_says_of_choices_sizes_and_waivers():
    for text in (
        "This booklet is for",
        "Sizes: small, large",
        "a usual rule is set aside on purpose",
    ):
        assert text in page("spyglass-pouch")
    assert "This booklet is for" not in page("tiller-cuff")


def test_what_cuts_into_a_piece_is_cautioned_against():
    titles = [caution.title for caution in made("tiller-cuff").cautions]
    assert {"Cutting into a piece", "Seam ripper"} <= set(titles)
    assert "Seam ripper" not in [c.title for c in made("ropeloft-apron").cautions]
    assert "Cutting into a piece" not in [c.title for c in made("spyglass-pouch").cautions]


def test_strips_are_cut_whole_and_half_of_one_is_fused():
    rows = {(row.piece, row.is_interfacing): row for row in made("tiller-cuff").cutting}
    assert rows["Cuff", False].edges == "attach, end back and end front"
    assert rows["Cuff", False].notes[0].startswith("A strip: cut both halves in one")
    assert rows["Cuff", True].notes[0].startswith("Interfacing half as wide")


def test_marks_and_allowances_of_slits_and_pleats_are_listed():
    sheet = made("tiller-cuff")
    assert (
        "On the sleeve pieces: the 2 pleats at the wrist front edge and the slit line with its end."
    ) in sheet.marks
    assert (
        "The slit edges of the sleeve pieces and the strips that are sewn to them: 6 mm (¼ in)"
        " for the seam."
    ) in sheet.allowances
    assert not any("attach" in line for line in sheet.allowances)


def test_tools_follow_what_is_done():
    tools = {need.title: need.lines for need in made("ropeloft-apron").needs}["Tools"]
    assert "Safety pin or bodkin, a thick blunt needle" in tools
    assert "Small scissors that are sharp up to the points, for cutting into a piece" in tools
    assert "Hanger with clips" in tools


def test_only_words_that_occur_are_explained():
    words = {name: {term.name for term in made(name).glossary} for name in FACTS}
    assert {"placket", "underlap and tower", "flat-felled seam", "band"} <= words["tiller-cuff"]
    assert {"welt", "binding"} <= words["ropeloft-apron"]
    assert not {"placket", "band", "welt", "binding"} & words["spyglass-pouch"]
