"""The sheets for a batch, a class and filming, of every garment that comes with the program."""

import re
from functools import cache

import pytest
from paper.reading import find, lines_of, walk
from rules.reasoning import construction
from tell.sampler import SHIPPED, built, planned

from seqplan.model.operation import Action
from seqplan.model.workroom import Machine, Workroom
from seqplan.paper import blocks as b
from seqplan.paper.handouts import Asked, compose
from seqplan.plan.binding import bind
from seqplan.plan.plan import Planner
from seqplan.plan.stops import find_pauses, gathered_late
from seqplan.rules.derive import derive
from seqplan.tell.skills import entry_skill, goes_wrong, skill_name
from seqplan.words.say import say

KINDS = ("batch", "class", "filming")
HALL = Workroom(
    (
        Machine("old machine", "lockstitch", count=4, setup_minutes=2, foot_minutes=3),
        Machine("knife", "overlocker", setup_minutes=2),
        Machine("board", "iron", count=2, setup_minutes=3),
    )
)
INTERNAL = re.compile(r"`|\bNone\b|[{}]|\w/\w+-\w|  ")
"""What nobody should read: names of the file in backticks, of operations, and empty places."""


@cache
def made(kind, name, **asked):
    return compose(kind, built(name), planned(name), Asked(**asked))


@cache
def in_the_hall(kind, name):
    asked = Asked(workroom=HALL, learners=8)
    return compose(kind, built(name), planned(name), asked)


def documents(name):
    return [one for kind in KINDS for one in made(kind, name).values()]


def texts_of_deeds(document):
    steps = (deed for step in find(document, b.Step) for deed in step.deeds)
    return [deed.texts for deed in (*steps, *find(document, b.Deed))]


@pytest.mark.parametrize("name", SHIPPED)
def test_nothing_of_the_inside_of_the_program_is_printed(name):
    for document in documents(name):
        for line in lines_of(document):
            assert not INTERNAL.search(line), (document.kind, line)


@pytest.mark.parametrize("name", SHIPPED)
def test_tables_are_as_wide_as_their_heads(name):
    for document in documents(name):
        for table in find(document, b.Table):
            assert table.rows
            assert {len(row.cells) for row in table.rows} == {len(table.head)}


@pytest.mark.parametrize("name", SHIPPED)
def test_each_operation_is_told_once_on_every_sheet_to_sew_from(name):
    count = len(built(name).operations)
    for document in (
        made("batch", name)[""],
        made("class", name)["learner"],
        made("filming", name)[""],
    ):
        assert len(texts_of_deeds(document)) == count


# -- batch -----------------------------------------------------------------------------------


@pytest.mark.parametrize("name", SHIPPED)
def test_each_caution_of_a_station_is_told_once(name):
    titles = [card.title for part in warnings_of(made("batch", name)[""]) for card in cards(part)]
    assert len(titles) == len(set(titles))
    used = {op.setup.station for op in built(name).operations}
    wanted = {"lockstitch": "Sewing machine", "iron": "Iron", "overlocker": "Overlocker"}
    assert {title for station, title in wanted.items() if station in used} <= set(titles)


def warnings_of(document):
    return [part for part in find(document, b.Part) if part.is_warning]


def cards(part):
    return [block for block in walk(part.blocks) if isinstance(block, b.Card)]


def test_a_visit_says_what_to_take_how_to_set_up_and_where_all_goes():
    document = made("batch", "breakwater-skirt")[""]
    (visit,) = [p for p in find(document, b.Part) if p.title.startswith("Visit 6:")]
    assert visit.title == "Visit 6: Sewing machine, invisible zip foot"
    (setup,) = [block for block in visit.blocks if isinstance(block, b.Pairs)]
    assert dict(setup.pairs)["Needle"] == "about 80/12, for medium cloth"
    take, leave = [block for block in walk(visit.blocks) if isinstance(block, b.Table)]
    assert [row.cells for row in take.rows] == [
        ("Front and back, in one", "visit 4"),
        ("1 \N{MULTIPLICATION SIGN} invisible zip, 23 cm (9 in) long", "visit 1"),
    ]
    assert [row.cells for row in leave.rows] == [
        ("Front and back, in one", "visit 7, sewing machine")
    ]
    (ready,) = [card for card in cards(visit) if card.title == say("batch-wants")]
    assert ready.blocks[0].lines == (
        "Zip: coils pressed (visit 1)",
        "Stay waist: staystitched (visit 2)",
        "Neaten back: edges finished (visit 3)",
    )


def test_the_machines_of_the_workroom_are_named_and_their_minutes_count():
    document = in_the_hall("batch", "breakwater-skirt")[""]
    lines = lines_of(document)
    assert "Machine: knife" in lines
    assert "Machine: old machine" in lines
    assert any("min in your workroom" in line for line in lines)
    assert not any(line.startswith("Getting ready: ") for line in lines)


# -- class -----------------------------------------------------------------------------------


@pytest.mark.parametrize("name", SHIPPED)
def test_each_session_but_the_last_ends_with_the_state_of_the_work(name):
    learner = made("class", name, sessions=3)["learner"]
    sessions = [part for part in learner.parts if part.title.startswith("Session")]
    for part in sessions[:-1]:
        assert any(isinstance(block, b.Picture) for block in walk(part.blocks))
        assert say("class-put-away") in [p.title for p in part.blocks if isinstance(p, b.Part)]
    assert sessions[-1].blocks[-1].texts == (say("class-end"),)


@pytest.mark.parametrize("name", SHIPPED)
def test_every_safe_stop_has_a_card_and_is_marked_for_the_learner(name):
    c, planner = built(name), planned(name)
    held = planner.binding.held
    plan = planner.regrouped(gathered_late(c, planner.booklet().order, held))
    safe = [p for p in find_pauses(c, plan, held) if p.is_safe]
    sheets = made("class", name, sessions=2)
    assert len(sheets["cards"].parts) == len(safe)
    texts = [text for block in find(sheets["learner"], b.Prose) for text in block.texts]
    sessions = [p for p in sheets["learner"].parts if p.title.startswith(("Session", "At home"))]
    assert texts.count(say("class-may-stop")) == len(safe) - (len(sessions) - 1)


@pytest.mark.parametrize("name", SHIPPED)
def test_the_teacher_reads_each_technique_once_with_where_it_goes_wrong(name):
    c = built(name)
    teacher = made("class", name)["teacher"]
    pairs = [pair for block in find(teacher, b.Pairs) for pair in block.pairs]
    new = " ".join(text for label, text in pairs if label == say("class-new-skills")).lower()
    wrong = " ".join(text for label, text in pairs if label == say("class-goes-wrong"))
    keys = {entry_skill(c, c.shapes[id_].entry) for id_ in c.garment.entry} - {None}
    for key in keys:
        assert skill_name(key).lower() in new
        assert goes_wrong(key) in wrong
    for op in c.acting(Action.UNDERSTITCH)[:1]:
        assert op
        assert new.count("understitching") == 1


def test_the_teacher_reads_until_when_and_at_what_cost():
    teacher = made("class", "breakwater-skirt")["teacher"]
    (part,) = [p for p in find(teacher, b.Part) if p.title == "2. Side seams"]
    pairs = dict(part.blocks[0].pairs)
    assert pairs["Latest point"] == "before step 9, Waist"
    assert pairs["After that"] == ("undo 6: Waist; this cannot be undone: Waist: trim and clip")
    assert pairs["At the end"] == "11 of 24 things to undo"
    assert "\N{LEFT DOUBLE QUOTATION MARK}Waist: sew\N{RIGHT DOUBLE QUOTATION MARK}" in pairs["Why"]


def test_a_queue_is_the_turns_of_all_learners_at_each_machine():
    teacher = in_the_hall("class", "breakwater-skirt")["teacher"]
    (table,) = [t for t in find(teacher, b.Table) if t.head[0] == say("class-col-steps")]
    column = table.head.index("Overlocker")
    machines, *rows = table.rows
    assert machines.cells[column] == "1"
    by_stretch = {row.cells[0]: row.cells[column] for row in rows}
    assert by_stretch["2"] == "1 (8)"
    assert by_stretch["1"] == "\N{EN DASH}"
    sewing = table.head.index("Sewing machine")
    assert {row.cells[0]: row.cells[sewing] for row in rows}["9"] == "2 (4)"


def test_fewer_sessions_than_asked_for_are_explained():
    teacher = made("class", "rope-walk-bag", sessions=9)["teacher"]
    assert say("class-few-stops") in lines_of(teacher)
    waiting = made("class", "lantern-dress", sessions=1)["teacher"]
    assert say("class-more-waits") in lines_of(waiting)


def test_where_no_session_may_end_is_told_with_its_reason():
    teacher = made("class", "chandlery-tote")["teacher"]
    (part,) = [p for p in find(teacher, b.Part) if p.title == say("class-part-unsafe")]
    assert [line[:14] for line in part.blocks[0].lines] == ["After step 8: ", "After step 9: "]
    assert "ready to be turned" in part.blocks[0].lines[0]


def test_samples_are_asked_for_stage_by_stage():
    teacher = made("class", "net-loft-shirt")["teacher"]
    (table,) = [t for t in find(teacher, b.Table) if t.head[0] == say("class-col-skill")]
    rows = {row.cells[0]: row.cells[2] for row in table.rows}
    assert rows["A shirt placket"].startswith("5: folded and pressed, cut open, sewn to the edge")
    assert "A plain seam" not in rows


TIMED = """
garment: Quay flag
allowance: 1
pieces:
  flag: {cut: 1, edges: [top, side, foot, other]}
  label: {cut: 1, edges: [top, side, foot, other]}
operations:
  top: {hem: flag.top, depth: 2, minutes: 20}
  foot: {hem: flag.foot, depth: 2, minutes: 10}
  join: {sew: flag.side, to: label.side, minutes: 5}
"""


def test_minutes_are_told_where_the_author_says_them():
    c = construction(TIMED)
    planner = Planner(c, bind(c.ids, derive(c)))
    batch = lines_of(compose("batch", c, planner)[""])
    assert "Work on one garment: at least 35 min, of the parts whose minutes are known" in batch
    teacher = compose("class", c, planner, Asked(sessions=1))["teacher"]
    (table,) = [t for t in find(teacher, b.Table) if t.head[0] == say("class-col-session")]
    assert table.rows[0].cells[table.head.index(say("class-col-minutes"))] == "35"


# -- filming ---------------------------------------------------------------------------------


@pytest.mark.parametrize("name", SHIPPED)
def test_the_chapters_hold_every_shot(name):
    document = made("filming", name)[""]
    shots = [p for p in find(document, b.Part) if p.title.startswith("Shot ")]
    chapters = [t for t in find(document, b.Table) if t.title.startswith("Chapter ")]
    named = {
        int(number)
        for table in chapters
        for row in table.rows
        for number in row.cells[-1].split(", ")
    }
    assert named == set(range(1, len(shots) + 1))


def test_a_shot_says_what_is_ready_and_what_is_left():
    document = made("filming", "breakwater-skirt")[""]
    (shot,) = [p for p in find(document, b.Part) if p.title.startswith("Shot 12:")]
    assert (shot.title, shot.remark) == ("Shot 12: Waist: sew", "chapter 3, step 9")
    seen, ready, left = cards(shot)
    assert seen.blocks[0].lines == (
        "Front and back, in one (after shot 11)",
        "Front facing and back facing, in one (after shot 10)",
    )
    assert "Zip: zip set (shot 11)" in ready.blocks[0].lines
    assert left.blocks[0].lines[0] == "Waist: trim and clip (shot 13)"


def test_what_is_cut_for_good_is_marked():
    lines = lines_of(made("filming", "breakwater-skirt")[""])
    start = lines.index("# " + say("film-part-spares"))
    assert lines[start + 2 : start + 4] == ["Shot 2: Interface", "Shot 13: Waist: trim and clip"]
    assert lines.count(say("film-once")) == 2
