from hypothesis import given, settings
from hypothesis import strategies as st

from seqplan.graph.closure import close
from seqplan.order.stretches import Sheet, _moves, distance, improve

UNITS = st.lists(st.frozensets(st.sampled_from("FBS"), min_size=1), min_size=1, max_size=7)


@given(UNITS, st.data())
@settings(max_examples=100)
def test_the_change_told_for_a_move_is_the_change_it_makes(units, data):
    size = len(units)
    entries = data.draw(st.lists(st.sampled_from("12"), min_size=size, max_size=size))
    sheet = Sheet.of(units, entries)
    order = tuple(range(size))
    closure = close(size, [(0, size - 1)] if size > 1 else [])
    before = sheet.judge(order)
    for move in _moves(order, closure, sheet):
        after = sheet.judge(move.apply(order))
        assert move.change(order, sheet) == (after[0] - before[0], after[1] - before[1])
        if size > 1:
            place = move.apply(order)
            assert place.index(0) < place.index(size - 1)


def test_an_entry_in_three_runs_is_torn_twice():
    sheet = Sheet.of([frozenset("F")] * 5, list("12121"))
    assert sheet.judge(range(5)) == (0, 3, 0)


def test_distance_adds_up_how_far_each_stands_from_its_place():
    assert distance((2, 0, 1)) == 4


def test_a_stretch_of_one_unit_moves_as_a_whole():
    """Moving one operation at a time would only tear the second unit apart."""
    units = [frozenset(each) for each in "FBBF"]
    sheet = Sheet.of(units, list("1234"))
    assert improve((0, 1, 2, 3), close(4, [(0, 1), (1, 2)]), sheet, 0) == (0, 3, 1, 2)
