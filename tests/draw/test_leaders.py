"""Names beside a drawing and the lines to what they name."""

from itertools import pairwise

from draw.looking import straight_crossings
from hypothesis import given
from hypothesis import strategies as st

from seqplan.draw.figure import Line, Words
from seqplan.draw.leaders import LEADING, Columns, Named, crossings, name_things, widest

COLUMNS = Columns(50, 150, 48, 48, 0, 100)
spots = st.tuples(st.integers(55, 145), st.integers(0, 100))


def placed(things, columns=COLUMNS):
    marks, down = name_things(things, columns)
    lines = [mark.points for mark in marks if isinstance(mark, Line)]
    words = [mark for mark in marks if isinstance(mark, Words)]
    return lines, words, down


@given(st.lists(spots, min_size=1, max_size=7, unique=True))
def test_lines_of_one_column_never_cross(found):
    things = [Named(str(number), (spot,)) for number, spot in enumerate(found)]
    lines, words, _ = placed(things, COLUMNS._replace(right_width=0))
    assert not straight_crossings(lines)
    assert {line[1] for line in lines} == set(found)
    assert sorted(word.text for word in words) == sorted(thing.text for thing in things)


@given(st.lists(st.tuples(spots, spots), min_size=1, max_size=5))
def test_names_stand_apart(found):
    things = [Named(f"layer {number}", pair) for number, pair in enumerate(found)]
    _, words, down = placed(things)
    for anchor in ("start", "end"):
        ys = sorted(word.spot[1] for word in words if word.anchor == anchor)
        assert all(after - before >= LEADING for before, after in pairwise(ys))
    assert down >= max(word.spot[1] for word in words)


def test_the_nearer_spot_is_taken():
    lines, _, _ = placed([Named("front", ((140, 20), (60, 20)))], COLUMNS._replace(right_width=0))
    assert lines[0][1] == (60, 20)


def test_a_line_goes_round_what_lies_in_its_way():
    wall = ((80, 0), (80, 60))
    thing = Named("front", ((90, 30), (90, 95)))
    columns = COLUMNS._replace(right_width=0)
    free, _ = name_things([thing], columns)
    kept, _ = name_things([thing], columns, [wall] * 4)
    ends = [mark.points[1] for found in (free, kept) for mark in found if isinstance(mark, Line)]
    assert crossings([wall, ((52, ends[1][1]), ends[1])]) == 0
    assert ends[1] == (90, 95)


def test_a_column_is_as_wide_as_its_widest_name():
    assert widest(["front", "a"], 60) == widest(["front"], 60) > widest(["a"], 60) > 0
