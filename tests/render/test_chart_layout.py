"""Laws of the layout of charts, for any boxes with any lines between them."""

from itertools import combinations, pairwise

from hypothesis import given, settings
from hypothesis import strategies as st

from seqplan.render.chart_layout import Layouter
from seqplan.render.chart_levels import Leveling, leads_to
from seqplan.render.chart_wires import Wire

WIDTH = 100


@st.composite
def layouters(draw):
    """Boxes in lanes with lines that form no circle, and one that may lead backwards."""
    count = draw(st.integers(1, 14))
    lanes = draw(st.lists(st.integers(0, 3), min_size=count, max_size=count))
    pairs = st.tuples(st.integers(0, count - 1), st.integers(0, count - 1))
    forwards = {
        (min(pair), max(pair)) for pair in draw(st.lists(pairs, max_size=20)) if pair[0] != pair[1]
    }
    backwards = {(after, before) for before, after in sorted(forwards)[:1] if draw(st.booleans())}
    looks = st.sampled_from(["solid", "dashed"])
    wires = [
        Wire(before, after, draw(looks), draw(looks), draw(st.sampled_from([0, 12])))
        for before, after in [*sorted(forwards), *backwards]
    ]
    return Layouter(
        lanes=tuple(lanes),
        heights=tuple(draw(st.integers(12, 90)) for _ in lanes),
        wires=tuple(dict.fromkeys(wires)),
        chain=frozenset(wires[:2]),
        width=WIDTH,
        heads=(12,) * 4,
        heads_on=(24,) * 4,
        label_height=11,
        are_lanes_whole=draw(st.booleans()),
        frames=((200.0, 80.0), (300.0, 60.0)),
        grids={},
    )


def _areas(layouter, layout):
    corners = [layout.corner_of(item) for item in range(len(layouter.lanes))]
    return [
        (x, y, x + WIDTH, y + height)
        for (x, y), height in zip(corners, layouter.heights, strict=True)
    ]


def _overlap(one, other, by=0.1):
    return (
        one[0] + by < other[2]
        and other[0] + by < one[2]
        and one[1] + by < other[3]
        and other[1] + by < one[3]
    )


@settings(max_examples=25, deadline=None)
@given(layouters())
def test_boxes_and_lanes_keep_apart_and_lines_run_between_them(layouter):
    layout = layouter.best()
    boxes = _areas(layouter, layout)
    assert not any(_overlap(*pair) for pair in combinations(boxes, 2))
    frames = [layout.frame_of(band) for band in layout.bands]
    assert not any(_overlap(*pair) for pair in combinations(frames, 2))
    for band, (left, top, right, bottom) in zip(layout.bands, frames, strict=True):
        for item in band.items:
            x, y, end, foot = boxes[item]
            assert left <= x
            assert end <= right
            assert top <= y
            assert foot <= bottom
    assert set(layout.paths) == set(layouter.wires)
    for path in layout.paths.values():
        for one, other in pairwise(path.points):
            assert one[0] == other[0] or one[1] == other[1]
            piece = (*map(min, one, other), *map(max, one, other))
            assert not any(_overlap(piece, box) for box in boxes)
            assert piece[0] >= 0
            assert piece[2] <= layout.width


@settings(max_examples=25, deadline=None)
@given(layouters())
def test_every_line_ends_at_its_box_or_joins_one_that_does(layouter):
    layout = layouter.best()
    boxes = _areas(layouter, layout)
    reached = {(w.after, w.enters) for w, path in layout.paths.items() if path.reaches}
    for wire, path in layout.paths.items():
        assert (wire.after, wire.enters) in reached
        (x, y), (end, _) = path.points[0], path.points[-1]
        left, _, right, bottom = boxes[wire.before]
        assert left < x < right
        assert y == bottom
        if path.reaches:
            assert boxes[wire.after][0] < end < boxes[wire.after][2]


@settings(max_examples=25, deadline=None)
@given(layouters())
def test_what_comes_before_stands_on_an_earlier_level(layouter):
    arcs = {(wire.before, wire.after) for wire in layouter.wires if wire.before < wire.after}
    for levels in Leveling(layouter.lanes, arcs, layouter.are_lanes_whole).ways():
        level_of = {item: number for number, level in enumerate(levels) for item in level}
        assert sorted(level_of) == list(range(len(layouter.lanes)))
        assert all(level_of[before] < level_of[after] for before, after in arcs)


def test_boxes_that_lead_to_one_another_are_known():
    arcs = {(0, 1), (1, 2), (3, 1)}
    assert leads_to(arcs, 0, 2)
    assert leads_to(arcs, 3, 2)
    assert not leads_to(arcs, 2, 0)
    assert not leads_to(arcs, 0, 3)
