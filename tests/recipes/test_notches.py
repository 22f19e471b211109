"""Which notches meet: an edge with notches is cut up, and its parts are its own mirror image."""

from hypothesis import given
from hypothesis import strategies as st
from rules.reasoning import construction

from seqplan.recipes.notches import meetings

WHOLE = 600
PARTS = (150, 270, 180)


def garment(left, right):
    """A panel whose edge has some notches, and three others that are joined and sewn to it.

    The panel's edge runs down its right side; the others lie on it wrong side up, so that theirs,
    which also run down their right sides, are walked the other way.
    """
    others = []
    for number, (length, found) in enumerate(zip(PARTS, right, strict=True)):
        notches = f", notches: {{side: [{', '.join(found)}]}}" if found else ""
        others.append(
            f"  p{number}: {{cut: 1, edges: [top{number}, side, top{number + 1}, free],"
            f" lengths: {{side: {length} mm}}{notches}}}"
        )
    own = f", notches: {{side: [{', '.join(left)}]}}" if left else ""
    joins = [f"  j{n}: {{sew: p{n}.top{n + 1}, to: p{n + 1}.top{n + 1}}}" for n in (0, 1)]
    return "\n".join([
        "garment: Sail",
        "pieces:",
        f"  panel: {{cut: 1, edges: [head, side, tack, luff], lengths: {{side: {WHOLE} mm}}{own}}}",
        *others,
        "operations:",
        *joins,
        "  long: {sew: panel.side, to: [p2.side, p1.side, p0.side]}",
    ])  # fmt: skip


def met(text):
    c = construction(text)
    return next(meetings(c, c.shapes["long"]), None)


@st.composite
def places(draw):
    """Notches of the long edge, in millimetres from its head, no two near one another or a seam."""
    seams = {PARTS[2], PARTS[2] + PARTS[1]}
    found = []
    for _ in range(draw(st.integers(1, 5))):
        mm = draw(st.integers(1, WHOLE - 1))
        if all(abs(mm - other) > 10 for other in (*(at for at, _ in found), *seams)):
            found.append((mm, draw(st.integers(1, 3))))
    return found


WORDS = {1: "single", 2: "double", 3: "triple"}


def sides(found):
    """The same notches on the long edge, and on the three that lie along it from its head on."""
    left = [f"{WORDS[marks]} {mm} mm from head" for mm, marks in found]
    right = [[], [], []]
    for mm, marks in found:
        start = 0
        for number in (2, 1, 0):
            if start < mm < start + PARTS[number]:
                # The last one lies at the head with the end of its edge.
                words = f"{mm - start} mm from top{number + 1}"
                right[number].append(f"{WORDS[marks]} {words}")
            start += PARTS[number]
    return left, right


@given(places())
def test_the_notches_of_a_cut_up_edge_meet_its_own(found):
    meeting = met(garment(*sides(found)))
    if not found:
        assert meeting is None
        return
    assert meeting.alone == ()
    assert [one.notch.marks for one, _ in meeting.pairs] == [marks for _, marks in sorted(found)]
    assert all(one.notch.marks == other.notch.marks for one, other in meeting.pairs)


@given(places(), st.data())
def test_a_notch_that_is_moved_meets_nothing(found, data):
    if not found:
        return
    left, right = sides(found)
    number = data.draw(st.integers(0, len(found) - 1))
    mm, marks = found[number]
    left[number] = f"{WORDS[marks]} {mm + (4 if mm < WHOLE / 2 else -4)} mm from head"
    meeting = met(garment(left, right))
    assert [stop.notch.marks for stop in meeting.alone] == [marks, marks]
    assert len(meeting.pairs) == len(found) - 1


def test_a_notch_at_a_seam_of_the_other_side_meets_it():
    meeting = met(garment(["180 mm from head", "450 mm from head"], [[], [], []]))
    assert meeting.alone == ()
    assert [other.notch for _, other in meeting.pairs] == [None, None]
