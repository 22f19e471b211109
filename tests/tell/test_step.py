import re

import pytest
from rules.reasoning import construction
from tell.sampler import OTHER_WAYS, SHIPPED, built, planned, sentences, sheet, told

from seqplan.model.operation import Action
from seqplan.tell.step import heading, tell_operation, tell_step
from seqplan.words.say import say, sentence
from seqplan.words.steps import SENTENCES

ALL = (*SHIPPED, *OTHER_WAYS, "dress", "tube")
BOTH_SYSTEMS = re.compile(r"\d ?(?:cm|mm) \([^)]* in\)|[\d⅛-⅞¼½¾] in \([^)]* (?:cm|mm)\)")


@pytest.mark.parametrize("name", SHIPPED)
def test_every_seam_names_its_allowance_in_both_systems(name):
    c = built(name)
    seams = [s for s in sentences(name) if c.op[s.operation].action in {Action.SEW, Action.ENCLOSE}]
    assert all(BOTH_SYSTEMS.search(seam.text) for seam in seams)


@pytest.mark.parametrize("name", ALL)
def test_a_sentence_is_whole_and_holds_no_name_from_inside_the_program(name):
    c = built(name)
    raw = {word for word in (*c.garment.entry, *c.garment.piece, *c.garment.notion) if "-" in word}
    for told_ in sentences(name):
        for text in (*told_.texts, told_.check):
            assert not re.search(r"inside out|[{}_]|\bNone\b|  ", text)
            assert not [word for word in raw if word in text]
            assert not text or text[-1] in ".!?"
        assert told_.text[0].isupper() or told_.text[0].isdigit()


@pytest.mark.parametrize("name", ALL)
def test_every_operation_is_told_once_in_the_order_of_the_plan(name):
    told_ = [s.operation for s in sentences(name)]
    assert told_ == list(planned(name).booklet().order)


FACTS = {
    "breakwater-skirt": {
        "stay-waist": "waist edges|front and back pieces|one layer|1.2 cm (½ in)|3 mm (⅛ in)|2 mm",
        "side-seams": "right sides together|side edges of the front piece|back pieces|backstitch"
        "|1.5 cm (⅝ in)|twice, once for each side",
        "side-seams/finish": "together as one layer|same on the other side",
        "side-seams/press": "flat as it was sewn|towards the back",
        "neaten-back": "centre and opening edges of the back pieces|one layer",
        "zip/coils": "barely warm",
        "zip": "mark|L on|opening edges|1.5 cm (⅝ in)|1.3 cm (½ in) below the waist seam line"
        "|top down to the mark where the opening ends|tape R|invisible zip foot",
        "centre-back": "the 2 back pieces|where the stitching of the zip ends|zip foot",
        "centre-back/press": "press them open",
        "interface": "fusible|wrong side of the front facing and back facing pieces|adhesive",
        "facing-edge": "in one go|over the seams",
        "waist": "Open the zip|front facing|side seam|tops of the tapes",
        "waist/trim": "3 mm (⅛ in)|6 mm (¼ in)|facing",
        "waist/clip": "6 mm (¼ in) to 1.3 cm (½ in)",
        "waist/press": "facing|all allowances",
        "waist/understitch": "3 mm (⅛ in) from the seam|right side up|not the outside",
        "waist/turn": "to the inside|roll",
        "facing-ends": "3 mm (⅛ in) clear of the teeth|slip stitch|tapes",
        "hem/turn-up": "1 cm (⅜ in)|3 cm (1⅛ in)|all the way round",
        "hem": "slip stitch|by hand",
        "closure": "hook|eye|inside|opening",
    },
    "night-watch-pyjamas": {
        "crotch": "tubes|right side out|inseam|1.5 cm (⅝ in)",
        "crotch/press": "wearer's left",
        "waist/turn-up": "1 cm (⅜ in)|3.2 cm (1¼ in)",
        "waist": "leave 5 cm (2 in) open|back pieces|2 mm",
        "elastic": "70 cm (27½ in)|safety pin|pin the other end",
        "elastic/join": "2 cm (¾ in)|without a twist",
        "elastic/close": "opening of 5 cm (2 in)|not catching the elastic",
        "hems": "all the way round|same on the other side",
    },
    "night-watch-pyjamas, crotch first": {
        "front-crotch": "the 2 front pieces|crotch edges",
        "inseam": "crosses the crotch seam",
    },
    "rope-walk-bag": {
        "seam": "wrong sides together|4 mm (⅛ in)|6 mm (¼ in)|mark where the slot begins|corner",
        "seam/trim": "3 mm (⅛ in)|snip|7 mm (¼ in)",
        "seam/press-over": "right sides are together|on the fold",
        "seam/enclose": "6 mm (¼ in) from the fold|raw edges are shut in|mark",
        "slots/turn-up": "5 mm (¼ in)|4 in all",
        "channel": "both ends open|other one",
        "cord": "2 lengths of 90 cm|knot|opposite side|back through the other",
    },
    "chandlery-tote": {
        "straps/fold": "raw edges lie inside. Make 2",
        "top": "tubes or bags|the part of the outer pieces|into the part of the lining pieces",
        "edge": "the lining pieces lie inside the outer pieces|exactly on the edge",
    },
    "ferry-waistcoat": {
        "press-edges": "press it flat from the side of the front lining and back lining pieces",
        "buttons": "sew the buttons on|opposite the buttonholes|There are 5 of them",
        "edge": "the neck edge of the back piece|closing edges of the front pieces",
        "back-hem": "leave 12 cm (4¾ in) open between them.",
    },
    "galley-apron": {
        "straps/fold": "First fold the tip edges of the tie pieces|by 1 cm (⅜ in)",
        "pocket/mouth-turn-up": "1 cm (⅜ in) and press; fold again by 2 cm (¾ in)",
        "neck": "On the wrong side|both ends of the neck piece|not twisted",
        "ties": "On the wrong side|the end edges of the tie pieces|pointing outwards",
    },
    "gull-skirt": {"upper-sides/press": "both allowances towards the front|in that direction, too"},
    "lamp-room-tee": {
        "shoulders": "tape on the right side along the seam line|without stretching it",
        "close-rib": "Fold the neckband piece, with right sides together|its end edges lie on",
        "neck/topstitch": "on the side of the body and 6 mm (¼ in) from the seam",
    },
    "dress": {
        "bust-darts": "right sides together|wide end to the point",
        "bust-darts/press": "towards the centre|downwards",
        "gathers": "two rows|6 mm (¼ in) and 1.3 cm (½ in)",
        "hold-shoulders": "longest stitch|within the seam allowance",
        "shoulders/finish": "Before they are joined|each by itself",
        "closing/baste": "longest stitch|1.5 cm (⅝ in)",
        "closing": "face down|6 mm (¼ in)|bottom stop|zip foot",
        "closing/unbaste": "Take out",
        "bag": "6 mm (¼ in) from the raw edges",
        "bag-turn": "right side out",
        "bag-topstitch": "6 mm (¼ in)|3 mm",
        "armholes/finish": "armhole edges",
        "armholes/turn-up": "7 mm",
        "facing-tack": "allowances of the shoulder seam",
        "try-on": "the whole thing|tried on",
        "last": "Wrap it up.",
    },
    "tube": {
        "legs": "first row in the middle of the seam allowance",
        "inner": "¼ in (6 mm)|⅜ in (1 cm)|⅝ in (1.5 cm)",
        "elastic/join": "¾ in (2 cm)",
        "opening": "invisible zip foot",
    },
}


@pytest.mark.parametrize(
    ("name", "operation", "facts"),
    [(name, op, facts) for name, table in FACTS.items() for op, facts in table.items()],
)
def test_an_operation_is_told_with_its_facts(name, operation, facts):
    sentence = told(name, operation)
    text = f"{sentence.foot} foot: {sentence.text}"
    assert [fact for fact in facts.split("|") if fact not in text] == []


def test_a_dart_that_is_sewn_already_is_cut_out_of_the_interfacing():
    c = built("ferry-waistcoat")
    fuse = c.op["interface"]
    assert "cut the dart out" not in tell_operation(c, fuse, ()).text
    assert "cut the dart out" in tell_operation(c, fuse, ["darts"]).text


def test_only_a_whole_row_is_checked_all_the_way_along():
    assert "all the way along" in told("chandlery-tote", "lining-sides").check
    assert "wherever the row runs" in told("chandlery-tote", "lining-foot").check


def test_special_feet_are_named_and_standard_ones_are_not():
    assert told("breakwater-skirt", "zip").foot == "invisible zip"
    assert told("breakwater-skirt", "side-seams").foot == ""


PARTS = """
pieces:
  front: {cut: fold, edges: [waist, side, hem]}
  back: {cut: fold, edges: [waist, side, hem]}
operations:
  %s
"""


def only(entry, operation="it"):
    c = construction(PARTS % f"it: {{{entry}}}")
    return tell_operation(c, c.op[operation], ())


def test_the_authors_sentence_stands_for_the_main_operation_only():
    entry = 'sew: front.side, to: back.side, as: finished together, say: "Sew it <my> way"'
    assert only(entry).texts == ("Sew it <my> way.",)
    assert "Finish" in only(entry, "it/finish").text


def test_without_an_allowance_the_seam_line_of_the_pattern_is_followed():
    assert "seam line of your pattern" in only("sew: front.side, to: back.side").text


@pytest.mark.parametrize(
    ("portion", "words"),
    [
        ("part: 10 from waist", "only the 10 cm (3⅞ in) next to the waist edge"),
        ("stop: 10 before waist", "stop 10 cm (3⅞ in) before the waist edge"),
    ],
)
def test_a_part_of_an_edge_is_named(portion, words):
    text = only(f"sew: front.side, to: back.side, allowance: 1.5, {portion}").text
    assert words in text
    assert "1.5 cm (⅝ in)" in text


@pytest.mark.parametrize(
    ("direction", "words"),
    [
        ("open", "press them open"),
        ("to back", "towards the back"),
        ("to the back", "towards the back"),
        ("left", "towards the wearer's left"),
        ("up", "upwards"),
        ("down", "downwards"),
        ("one side", "to one side"),
    ],
)
def test_the_direction_of_pressing_is_named(direction, words):
    entry = f"sew: front.side, to: back.side, as: finished together, press: {direction}"
    assert words in only(entry, "it/press").text


def test_a_station_that_the_author_chose_is_named():
    assert only("hem: front.hem, depth: 2, station: coverstitch").station == "coverstitch"


def test_sides_are_those_of_the_wearer():
    c = construction(
        "pieces: {front: {cut: fold, worn: front, edges: [waist, side, hem]}}\n"
        "operations: {it: {finish: front.side@left}}"
    )
    assert "left side edge of the front piece" in tell_operation(c, c.op["it"], ()).text


def test_a_heading_is_the_title_or_the_readable_name():
    c = construction(
        "operations: {first-one: {do: Begin}, second: {do: Go on, title: The  second}}"
    )
    steps = _steps(c)
    assert [heading(c, step) for step in steps] == ["First one", "The second"]
    assert heading(c, steps[0], is_continued=True) == "First one, continued"
    assert [s.text for step in steps for s in tell_step(c, step)] == ["Begin.", "Go on."]


def _steps(c):
    from seqplan.plan.plan import Step

    return [Step(n, op.entry, (op,)) for n, op in enumerate(c.operations, 1)]


def test_sentences_are_used_and_known():
    keys = [key for key in SENTENCES if key.startswith(("step-", "sheet-", "caution-", "term-"))]
    assert sorted(keys) == sorted(SENTENCES)
    assert all(sentence(key) for key in keys)
    assert say("step-the", name="{odd}") == "the {odd}"


def test_a_batch_sheet_goes_by_station():
    from seqplan.tell.sheet import make_sheet

    made = make_sheet(built("breakwater-skirt"), planned("breakwater-skirt").batch())
    assert made.kind == "Batch sheet"
    assert "Sewing machine, invisible zip foot" in [group.heading for group in made.groups]
    assert any(s.heading.endswith(", continued") for g in made.groups for s in g.steps)
    assert made.operations == sheet("breakwater-skirt").operations
