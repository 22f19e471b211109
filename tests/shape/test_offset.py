"""Cutting lines and rows of stitches against values worked out by hand, and another library.

`shapely` is wanted for these tests only. Without it the checks against it are skipped, and pytest
says so.
"""

import cmath
import math
from itertools import pairwise

import pytest
from garments.shipped import GARMENTS
from hypothesis import assume, given, settings
from hypothesis import strategies as st

from seqplan.load.document import load_file
from seqplan.shape.curve import flattened
from seqplan.shape.offset import FLATNESS, offset
from seqplan.shape.outline import lay

PROMISED = 0.1
"""Millimetres to which a line is right."""

SHARPEST = 62
"""Degrees of a corner that is mitred; what is sharper is blunted."""


def test_a_seam_allowance_goes_round_corners():
    square = (0j, 100 + 0j, 100 + 100j, 100j)
    wanted = {complex(-15, -10), complex(110, -10), complex(110, 120), complex(-15, 120)}
    found = offset(square, (10, 10, 20, 15))
    assert {complex(round(p.real, 6), round(p.imag, 6)) for p in found} == wanted


def test_a_corner_sharper_than_its_allowance_is_blunted():
    needle = (0j, 200 + 10j, 20j)
    found = offset(needle, (10, 10, 10))
    assert len(found) == 4
    assert max(point.real for point in found) < 202


def test_no_allowance_is_no_change():
    square = (0j, 100 + 0j, 100 + 100j, 100j)
    assert set(offset(square, (0, 0, 0, 0))) == set(square)


def test_a_dent_narrower_than_its_allowance_has_no_loops():
    dented = (0j, 90 + 0j, 100 + 60j, 110 + 0j, 200 + 0j, 200 + 100j, 100j)
    found = offset(dented, [15] * 7)
    assert max(point.real for point in found) == 215
    assert not crossings(found)
    assert all(point.imag < 8 for point in found if abs(point.real - 100) < 1)


def test_a_row_inside_lies_within():
    square = (0j, 100 + 0j, 100 + 100j, 100j)
    assert set(offset(square, [-10] * 4)) == {10 + 10j, 90 + 10j, 90 + 90j, 10 + 90j}


def test_there_is_no_row_inside_what_is_too_narrow():
    assert offset((0j, 100 + 0j, 100 + 10j, 10j), [-10] * 4) == ()


# -- another library ---------------------------------------------------------------------------


def crossings(points):
    """Whether a closed line crosses itself, as another library sees it."""
    shapely = pytest.importorskip("shapely")
    return not shapely.LinearRing(flat(points)).is_simple


def flat(points):
    return [(point.real, point.imag) for point in points]


@settings(max_examples=40, deadline=None)
@given(st.lists(st.integers(0, 359), min_size=4, max_size=9, unique=True), st.floats(1, 30))
def test_seam_allowances_are_those_of_another_library(angles, distance):
    shapely = pytest.importorskip("shapely")
    turns = [math.radians(angle) for angle in sorted(angles)]
    points = [200 * complex(math.cos(turn), math.sin(turn)) for turn in turns]
    ours = offset(points, [distance] * len(points))
    inner = shapely.Polygon([(p.real, p.imag) for p in points])
    outer = shapely.Polygon([(p.real, p.imag) for p in ours])
    mitred = inner.buffer(distance, join_style="mitre", mitre_limit=100)
    # Sharp corners are blunted, further out than rounded ones would be or not.
    assert outer.buffer(0.01).contains(inner)
    assert mitred.buffer(0.01).contains(outer)
    wide = all(
        (b - a) % 360 < 100
        for a, b in zip(sorted(angles), [*sorted(angles)[1:], min(angles) + 360], strict=True)
    )
    if wide:
        assert outer.area == pytest.approx(mitred.area, rel=1e-6)


@st.composite
def outlines(draw):
    """Pieces of four to seven edges, bent inwards, outwards or both ways, none of them sharp."""
    count = draw(st.integers(4, 7))
    corners = [
        cmath.rect(
            draw(st.integers(150, 400)), 2 * math.pi * (place + draw(st.floats(-0.2, 0.2))) / count
        )
        for place in range(count)
    ]
    curves = []
    for one, other in pairwise([*corners, corners[0]]):
        along = other - one
        bends = [draw(st.floats(-0.25, 0.25)) for _ in range(2)]
        handles = [one + along * (n / 3) + along * 1j * bend for n, bend in enumerate(bends, 1)]
        curves.append((one, *handles, other))
    for before, after in pairwise([curves[-1], *curves]):
        turn = math.degrees(cmath.phase((after[1] - after[0]) / (before[3] - before[2])))
        assume(abs(turn) < 180 - SHARPEST)
    return curves


def swept(points, distance):
    """What a piece is with a strip along each side added, or taken off if it lies inside.

    The corners of strips that stand apart are filled. `buffer` of the same library would do it all
    at once, but takes curves for straighter than they are, by a hundredth of the distance.
    """
    shapely = pytest.importorskip("shapely")
    sides = list(pairwise([*points, points[0]]))
    strips = []
    for (start, corner), (_, end) in pairwise([*sides, sides[0]]):
        one, other = (corner - start) / abs(corner - start), (end - corner) / abs(end - corner)
        before, after = -1j * one * distance, -1j * other * distance
        strips.append([start, corner, corner + before, start + before])
        if (one.conjugate() * other).imag * distance > 0:
            apex = (before + after) / (1 + (one.conjugate() * other).real)
            strips.append([corner, corner + before, corner + apex, corner + after])
    joined = shapely.union_all([shapely.Polygon(flat(strip)).buffer(0) for strip in strips])
    piece = shapely.Polygon(flat(points))
    return piece.union(joined) if distance > 0 else piece.difference(joined)


@settings(max_examples=25, deadline=None)
@given(outlines(), st.floats(-40, 40))
def test_a_line_beside_curves_is_that_of_another_library(curves, distance):
    shapely = pytest.importorskip("shapely")
    points = flattened(curves, FLATNESS)[:-1]
    fine = flattened(curves, FLATNESS / 4)[:-1]
    assume(shapely.Polygon(flat(fine)).is_valid)
    theirs = swept(fine, distance)
    found = offset(points, [distance] * len(points))
    if theirs.is_empty:
        assert found == ()
        return
    assume(theirs.geom_type == "Polygon")
    ours = shapely.Polygon(flat(found))
    assert ours.is_valid
    assert ours.exterior.hausdorff_distance(theirs.exterior) < PROMISED


@pytest.mark.parametrize("path", GARMENTS, ids=lambda path: path.stem)
def test_the_lines_beside_shipped_pieces_are_those_of_another_library(path):
    shapely = pytest.importorskip("shapely")
    for piece in load_file(path).garment.pieces:
        laid = lay(piece)
        if laid is not None:
            whole = laid.whole()
            inner = shapely.Polygon(flat(whole))
            for distance in (-6, 6, 10, 15, 40):
                theirs = inner.buffer(distance, join_style="mitre", mitre_limit=3)
                ours = shapely.Polygon(flat(offset(whole, [distance] * len(whole))))
                apart = ours.exterior.hausdorff_distance(theirs.exterior)
                assert apart < PROMISED, (piece.id, distance)
