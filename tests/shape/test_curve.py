"""Lengths and areas against values worked out by hand and against other libraries.

The libraries (`shapely`, `svgpathtools`) are wanted for these tests only. Without them the checks
against them are skipped, and pytest says so.
"""

import itertools
import math

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from seqplan.shape.curve import (
    area,
    cut,
    elevated,
    flattened,
    is_smooth,
    length,
    path_length,
    point_at,
    split,
    turned,
)
from seqplan.shape.pathdata import arc, read_path

PROMISED = 0.1
"""Millimetres to which a length is right."""

_COORDINATE = st.floats(-800, 800).map(lambda x: round(x, 2))
_POINT = st.builds(complex, _COORDINATE, _COORDINATE)
CURVES = st.integers(2, 4).flatmap(lambda n: st.tuples(*[_POINT] * n))


def circle(radius, degrees, *, clockwise=True):
    """An arc of a circle round the origin, from its right."""
    turn = math.radians(degrees) * (1 if clockwise else -1)
    end = radius * complex(math.cos(turn), math.sin(turn))
    found = arc(complex(radius), end, (radius, radius), 0, degrees > 180, clockwise)
    starts = (complex(radius), *(points[-1] for points in found))
    return tuple((start, *points) for start, points in zip(starts, found, strict=False))


# -- worked out by hand ------------------------------------------------------------------------


def test_a_straight_line_is_as_long_as_pythagoras_says():
    assert length((0j, 30 + 40j)) == 50


@pytest.mark.parametrize("degrees", [10, 90, 180, 270, 359])
@pytest.mark.parametrize("radius", [25, 240, 1000])
def test_an_arc_is_as_long_as_its_angle_times_its_radius(radius, degrees):
    wanted = radius * math.radians(degrees)
    assert path_length(circle(radius, degrees)) == pytest.approx(wanted, abs=0.01)


def test_a_parabola_is_as_long_as_its_integral():
    """Of y = x² from 0 to 1 the length is √5 / 2 + asinh(2) / 4; here times 100 mm."""
    parabola = (0j, 50 + 0j, 100 + 100j)
    assert length(parabola) == pytest.approx(100 * (math.sqrt(5) / 2 + math.asinh(2) / 4), abs=1e-3)


def test_a_curve_that_turns_back_on_itself_is_as_long_as_both_ways():
    """Of 0, 100, 0 the farthest point is at 50."""
    assert length((0j, 100 + 0j, 0j)) == pytest.approx(100, abs=1e-3)


def test_a_short_way_out_before_a_curve_turns_back_is_not_overlooked():
    """230 (1 - t)² + 470 t (1 - t) is farthest at t = 1 / 48, and 230 + 5 / 48 there."""
    assert length((230 + 0j, 235 + 0j, 0j)) == pytest.approx(230 + 2 * 5 / 48, abs=1e-3)


def test_a_quarter_of_a_circle_has_a_quarter_of_its_area():
    curves = (*circle(100, 90), (100j, 0j), (0j, 100 + 0j))
    assert area(curves) == pytest.approx(math.pi * 100**2 / 4, abs=0.1)


def test_area_is_positive_clockwise_on_the_page():
    square = ((0j, 10 + 0j), (10 + 0j, 10 + 10j), (10 + 10j, 10j), (10j, 0j))
    assert area(square) == 100
    assert area(tuple(map(turned, reversed(square)))) == -100


def test_the_area_under_a_parabola_is_two_thirds_of_the_box():
    """Archimedes: a segment of a parabola has two thirds of chord times height."""
    assert abs(area(((0j, 50 + 100j, 100 + 0j), (100 + 0j, 0j)))) == pytest.approx(100 * 50 * 2 / 3)


# -- laws --------------------------------------------------------------------------------------


@given(CURVES, st.floats(0.01, 0.99))
def test_two_parts_of_a_curve_are_together_as_long_as_the_curve(curve, t):
    one, other = split(curve, t)
    assert one[-1] == other[0]
    assert abs(one[-1] - point_at(curve, t)) < 1e-6
    assert abs(length(one) + length(other) - length(curve)) < PROMISED


@given(CURVES)
def test_a_curve_is_as_long_backwards_and_as_a_cubic(curve):
    assert abs(length(turned(curve)) - length(curve)) < PROMISED
    assert abs(length(elevated(curve)) - length(curve)) < PROMISED


@given(CURVES, st.floats(0, 1))
def test_a_path_is_cut_where_it_has_run_so_far(curve, part):
    path = (curve, (curve[-1], curve[-1] + 100))
    wanted = path_length(path) * part
    before, after = cut(path, wanted)
    assert abs(path_length(before) - wanted) < PROMISED
    assert abs(path_length(after) - path_length(path) + wanted) < PROMISED


@given(CURVES)
def test_straight_lines_lie_on_the_curve_that_they_stand_for(curve):
    points = flattened((curve,))
    assert (points[0], points[-1]) == (curve[0], curve[-1])
    straight = sum(abs(b - a) for a, b in itertools.pairwise(points))
    assert abs(straight - length(curve)) < 1 + 0.001 * length(curve)


def test_a_curve_goes_on_smoothly_or_at_a_corner():
    assert is_smooth((0j, 10 + 0j), (10 + 0j, 15 + 0j, 20 + 5j))
    assert not is_smooth((0j, 10 + 0j), (10 + 0j, 10 + 5j))
    assert not is_smooth((0j, 10 + 0j), (10 + 0j, 0j))


# -- other libraries ---------------------------------------------------------------------------


@settings(max_examples=60, deadline=None)
@given(CURVES)
def test_lengths_are_those_of_another_library(curve):
    other = pytest.importorskip("svgpathtools")
    kinds = {2: other.Line, 3: other.QuadraticBezier, 4: other.CubicBezier}
    assert abs(length(curve) - stepped(kinds[len(curve)](*curve))) < PROMISED


def stepped(segment):
    """The length of another library's segment in 4000 steps; its own fails where curves fold."""
    points = [segment.point(n / 4000) for n in range(4001)]
    return sum(abs(b - a) for a, b in itertools.pairwise(points))


_NUMBERS = {"L": 2, "H": 1, "V": 1, "C": 6, "S": 4, "Q": 4, "T": 2}


@st.composite
def path_data(draw):
    """Path data with every letter, in capitals or small."""
    number = st.floats(-300, 300).map(lambda x: f"{x:.2f}")
    parts = [f"M{draw(number)},{draw(number)}"]
    for letter in draw(st.lists(st.sampled_from("LHVCSQTA"), min_size=1, max_size=6)):
        count = _NUMBERS.get(letter, 0)
        numbers = " ".join(draw(number) for _ in range(count))
        if letter == "A":
            flags = draw(st.sampled_from(["00", "01", "10", "11"]))
            size = draw(st.integers(10, 400)), draw(st.integers(10, 400))
            away = draw(st.integers(1, 300))
            parts.append(f"a{size[0]} {size[1]} {draw(number)} {flags}{away} {draw(number)}")
            continue
        parts.append((letter if draw(st.booleans()) else letter.lower()) + numbers)
    return " ".join(parts)


@settings(max_examples=60, deadline=None)
@given(path_data())
def test_path_data_is_read_as_another_library_reads_it(data):
    other = pytest.importorskip("svgpathtools")
    ours, _ = read_path(data)
    theirs = [
        p for p in other.parse_path(data) if p.start != p.end or not isinstance(p, other.Line)
    ]
    wanted = sum(map(stepped, theirs))
    assert abs(path_length(ours) - wanted) < PROMISED
    if ours:
        assert abs(ours[-1][-1] - theirs[-1].end) < 1e-6


@settings(max_examples=60, deadline=None)
@given(st.lists(CURVES, min_size=1, max_size=5))
def test_areas_are_those_of_another_library(curves):
    shapely = pytest.importorskip("shapely")
    joined = [curves[0]]
    for curve in curves[1:]:
        joined.append((joined[-1][-1], *curve[1:]))
    joined.append((joined[-1][-1], joined[0][0]))
    points = [(p.real, p.imag) for p in flattened(joined, 0.001)]
    ring = shapely.LinearRing(points) if len(set(points)) > 2 else None
    wanted = sum(a[0] * b[1] - a[1] * b[0] for a, b in itertools.pairwise(points)) / 2
    assert area(joined) == pytest.approx(wanted, abs=0.01 * max(1, path_length(joined)))
    if ring is not None and ring.is_simple:
        assert abs(area(joined)) == pytest.approx(
            shapely.Polygon(ring).area, abs=0.01 * max(1, path_length(joined))
        )
