"""Nothing in a chart of the dependencies stands over anything else: measured on the picture."""

from itertools import combinations

import pytest
from render.chart_geometry import Drawing
from render.charts import BOTH, NAMES, coat, coverall, drawn, opened

from seqplan.explain.chart import Lanes
from seqplan.pipeline import open_garment

INVENTED = [(text, lanes) for text in (coat(), coverall(60), coverall(120)) for lanes in Lanes]


@pytest.fixture(
    scope="module", params=[*BOTH, *INVENTED], ids=[*NAMES, *map(str, range(len(INVENTED)))]
)
def drawing(request, tmp_path_factory):
    source, lanes = request.param
    if isinstance(source, str):
        return Drawing(drawn(opened(tmp_path_factory.mktemp("garment"), source), lanes))
    return Drawing(drawn(open_garment(source), lanes))


def test_there_is_something_to_measure(drawing):
    assert drawing.lanes
    assert drawing.boxes
    assert drawing.lines
    assert all(lane.heading for lane in drawing.lanes)
    assert all(drawing.lines)


def test_lanes_do_not_overlap(drawing):
    for one, other in combinations(drawing.lanes, 2):
        assert not one.area.meets(other.area), (one.words, other.words)


def test_every_box_and_every_heading_is_within_its_lane(drawing):
    for lane in drawing.lanes:
        assert all(lane.area.holds(heading) for heading in lane.heading), lane.words
        assert any(lane.area.holds(box) for box in drawing.boxes), lane.words
    for box in drawing.boxes:
        assert sum(lane.area.holds(box) for lane in drawing.lanes) == 1


def test_no_line_crosses_the_heading_of_a_lane(drawing):
    for lane in drawing.lanes:
        for line in drawing.lines:
            assert not any(piece.meets(area) for area in lane.heading for piece in line), lane.words


def test_no_line_crosses_a_box(drawing):
    for box in drawing.boxes:
        for line in drawing.lines:
            assert not any(piece.meets(box, by=0.6) for piece in line)


def test_no_two_boxes_or_words_overlap(drawing):
    for one, other in combinations(drawing.boxes, 2):
        assert not one.meets(other)
    words = [*drawing.words_in_lanes(), *drawing.numbers]
    for one, other in combinations(words, 2):
        assert not one.meets(other)
    for word in words:
        assert not any(word.meets(box, by=0.6) for box in drawing.boxes)


def test_no_line_runs_through_a_number(drawing):
    for number in drawing.numbers:
        for line in drawing.lines:
            assert not any(piece.meets(number, by=0.3) for piece in line)


def test_everything_is_on_the_page(drawing):
    page = drawing.page
    for area in (*drawing.boxes, *drawing.numbers, *(lane.area for lane in drawing.lanes)):
        assert page.holds(area)
    assert all(page.holds(piece) for line in drawing.lines for piece in line)
