"""Every sentence of the garments that come along is complete: nobody has to guess or look it up.

Pieces, edges, which sides lie together, allowance, stitch, foot, direction of pressing, what stays
open, what to check; right side out from the state, and each measure in both systems.
"""

import re
from functools import cache

from tell.sampler import OTHER_WAYS, SHIPPED, built, planned, sheet, sheet_of

from seqplan.base.measure import both
from seqplan.model.entry import SeamKind, Sides, Verb
from seqplan.model.operation import Action
from seqplan.model.station import STANDARD_FOOT
from seqplan.tell.names import readable
from seqplan.tell.setups import foot_name
from seqplan.tell.terms import terms_in

NAMES = (*SHIPPED, *OTHER_WAYS)
DIRECTION = re.compile(
    r"\b(?:open|to one side|towards?|away from|upwards?|downwards?|flat|inside|up and away"
    r"|the way they were laid)\b"
)
METRIC = re.compile(r"\d+(?:\.\d+)? (?:mm|cm)\b")
IMPERIAL = re.compile(r"[\d¼½¾⅛⅜⅝⅞]+ in\b(?! all)|stitches to the inch")
LOOKS = {Action.FIT, Action.INSPECT, Action.OPEN}
"""What is a look itself, or leaves nothing to look at."""


@cache
def told(name):
    """Every operation with what it is told with and what is done before, in the booklet's order."""
    c = built(name)
    found, done = [], set()
    for group in sheet(name).groups:
        for step in group.steps:
            for sentence in step.sentences:
                found.append((c.op[sentence.operation], sentence, frozenset(done)))
                done.add(sentence.operation)
    return c, found


def acting(*actions):
    """All told operations that do one of these, of all garments, as (id, ...) for messages."""
    return [
        (c, op, sentence, before)
        for name in NAMES
        for c, found in [told(name)]
        for op, sentence, before in found
        if op.action in actions and not (c.entry(op).say and not op.part)
    ]


def test_the_whole_garment_is_told():
    for name in NAMES:
        c, found = told(name)
        assert [op.id for op, _, _ in found] == list(planned(name).booklet().order)
        assert len(found) == len(c.operations)


def test_nothing_is_ever_inside_out():
    for name in NAMES:
        for _, sentence, _ in told(name)[1]:
            assert not re.search(r"inside[- ]out", sentence.text + sentence.check, re.IGNORECASE)


def test_a_seam_tells_pieces_edges_sides_and_allowance():
    seams = acting(Action.SEW)
    assert len(seams) > 50
    for c, op, sentence, _ in seams:
        entry = c.entry(op)
        for ref in (*entry.run, *entry.to):
            assert c.garment.piece[ref.piece].title in sentence.text, op.id
            assert readable(ref.edge) in sentence.text, op.id
        allowance = entry.allowance or c.garment.allowance
        assert both(allowance) in sentence.text, op.id
        if entry.seam is SeamKind.FRENCH or entry.sides is Sides.WRONG_TOGETHER:
            assert re.search("wrong sides (?:together|face)", sentence.text)
        elif entry.seam is not SeamKind.LAPPED:
            assert re.search("right sides (?:together|face)", sentence.text), op.id


def test_a_row_tells_how_its_ends_hold():
    for _, op, sentence, _ in acting(Action.SEW, Action.ENCLOSE):
        is_chain = op.setup.station == "overlocker"
        assert is_chain == ("chain of thread" in sentence.text), op.id
        assert is_chain or re.search("backstitch|overlap the beginning", sentence.text), op.id


def test_a_gap_a_portion_and_a_mouth_are_told():
    gaps = [(op, s) for c, op, s, _ in acting(Action.SEW, Action.CASE) if c.entry(op).gap]
    assert len(gaps) >= 4
    assert all("open" in sentence.text for _, sentence in gaps)
    for c, op, sentence, _ in acting(Action.SEW):
        portion = c.entry(op).portion
        assert portion is None or both(portion.length) in sentence.text
    mouths = [s for c, op, s, _ in acting(Action.STITCH_ON) if c.entry(op).mouth]
    assert mouths
    assert all("the mouth stays open" in sentence.text for sentence in mouths)


def test_a_pressed_seam_tells_the_direction():
    pressed = acting(Action.PRESS, Action.PRESS_OVER)
    assert len(pressed) > 60
    for c, op, sentence, _ in pressed:
        is_fold = c.entry(op).verb in {Verb.HEM, Verb.STRAP}
        assert is_fold or DIRECTION.search(sentence.text), (op.id, sentence.text)


def test_what_the_author_says_of_the_direction_is_told():
    for c, op, sentence, _ in acting(Action.PRESS):
        wanted = c.entry(op).press_to
        if wanted is not None and op.part == "press":
            assert wanted.removeprefix("to ").removeprefix("the ") in sentence.text, op.id


def test_a_fold_tells_how_deep_and_a_hem_how_it_is_sewn():
    for c, op, sentence, _ in acting(Action.TURN_UP):
        depth = c.entry(op).depth
        if depth is not None:
            assert both(depth) in sentence.text, op.id
            assert "to the wrong side" in sentence.text
    for _, op, sentence, _ in acting(Action.HEM, Action.CASE):
        is_cover = op.setup.station == "coverstitch"
        side = "from the right side" if is_cover else "from the wrong side"
        is_mouth = op.part == "mouth"
        assert is_mouth or "by hand" in sentence.text or side in sentence.text.lower(), op.id


def test_a_foot_that_is_not_the_standard_one_is_told():
    for _, op, sentence, _ in acting(*Action):
        if op.setup.foot not in {"", STANDARD_FOOT}:
            assert sentence.foot, op.id
            assert sentence.foot == foot_name(op.setup.foot), op.id


def test_a_stitch_that_is_not_the_usual_one_is_told():
    for _, op, sentence, _ in acting(Action.STAYSTITCH, Action.TOPSTITCH):
        assert "stitches to the inch" in sentence.text, op.id
    for _, op, sentence, _ in acting(Action.GATHER, Action.BASTE, Action.HOLD):
        assert "longest stitch" in sentence.text, op.id


def test_every_measure_stands_in_both_systems():
    for name in NAMES:
        for op, sentence, _ in told(name)[1]:
            if op.action is Action.DO:
                continue
            metric, imperial = (len(p.findall(sentence.text)) for p in (METRIC, IMPERIAL))
            assert metric == imperial, (op.id, sentence.text)


def test_each_step_says_what_to_check():
    for name in NAMES:
        c = built(name)
        for group in sheet(name).groups:
            for step in group.steps:
                actions = {c.op[id_].action for id_ in step.operations}
                has_check = any(sentence.check for sentence in step.sentences)
                assert has_check or actions <= LOOKS, (name, step.heading)


def test_words_of_the_trade_are_explained_where_they_first_occur():
    for name in NAMES:
        known = set()
        for group in sheet(name).groups:
            for step in group.steps:
                texts = [t for s in step.sentences for t in (s.text, s.check)]
                used = set(terms_in(texts))
                assert set(step.terms) == used - known, (name, step.heading)
                known |= used


CUFF = """
garment: Net cuff
allowance: 1
pieces:
  left: {cut: 1, edges: [top, end, foot, side]}
  right: {cut: 1, edges: [top, end, foot, side]}
  band: {cut: 1, edges: [top, end, foot, side]}
  band-2: {cut: 1, edges: [top, end, foot, side]}
operations:
  one: {sew: left.end, to: right.side}
  three: {sew: band.end, to: band-2.side}
  four: {sew: band.side, to: band-2.end}
  round: {sew: [left.top, right.top], to: [band.top, band-2.top], open: two}
  two: {sew: left.side, to: right.end}
"""


def test_a_seam_that_is_left_open_across_the_run_is_named():
    steps = {s.entry: s for g in sheet_of(CUFF).groups for s in g.steps}
    assert steps["round"].number < steps["two"].number
    assert "Leave the seam between side and end open until this is sewn." in (
        steps["round"].sentences[0].text
    )
    flat = [s for _, op, s, _ in acting(Action.SEW) if op.id == "sleeves" and "Leave" in s.text]
    assert flat


def test_at_the_overlocker_and_the_coverstitch_nobody_backstitches():
    chained = [
        (op, sentence)
        for _, op, sentence, _ in acting(*Action)
        if op.setup.station in {"overlocker", "coverstitch"}
    ]
    assert len(chained) > 20
    assert not [op.id for op, sentence in chained if "backstitch" in sentence.text]
