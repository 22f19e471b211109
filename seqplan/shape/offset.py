"""Lines at a distance from a closed line: cutting lines outside, rows of stitches inside.

1. Each side is moved outwards by its own distance; neighbours are prolonged until they meet, or
   cut off where they would meet too far away.
2. In a hollow narrower than its distance, sides that were moved cross one another. What lies
   between two crossings and runs the wrong way round is cut off.

With n sides that takes n log n steps, and a few for each pair of sides that lie side by side.
"""

from collections.abc import Iterator, Sequence
from itertools import pairwise
from typing import Final, NamedTuple

from seqplan.shape.curve import TOLERANCE, cross

MITRE: Final = 2.0
"""How far out a corner may lie, in parts of the distance: the trade blunts what is sharper."""

FLATNESS: Final = 0.0005
"""Millimetres that straight lines may lie off a curve if a line beside them is to be right to a
tenth of one at corners: their direction counts there, and not only where they lie."""

_ROUNDING: Final = 1e-9
"""Of a side: a crossing at a corner is found with one of its two sides at least."""

_ROUNDS: Final = 200
"""How many loops are cut off at most; an outline has a few."""


def offset(points: Sequence[complex], distances: Sequence[float]) -> tuple[complex, ...]:
    """A closed line beside another one: the cutting line round a stitching line.

    Parameters
    ----------
    points
        The corners, clockwise on the page; the last is joined to the first.
    distances
        How far outside each side lies, in millimetres, or inside where it is negative; the first
        side is that from the first corner to the second.

    Returns
    -------
    tuple of complex
        Its corners. Sharp corners are cut off at twice the distance, as the trade blunts them.
        Inside a piece that is nowhere twice as wide as the distance there is no line, and none
        comes back.
    """
    sides = [
        (start, end, distance)
        for start, end, distance in zip(points, (*points[1:], points[0]), distances, strict=True)
        if abs(end - start) > TOLERANCE
    ]
    moved = [_moved(*side) for side in sides]
    found: list[complex] = []
    for place, (_, end, distance) in enumerate(sides):
        following = (place + 1) % len(sides)
        further = max(abs(distance), abs(sides[following][2]))
        found.extend(_corner(moved[place], moved[following], end, MITRE * further))
    return _without_loops(found)


def _moved(start: complex, end: complex, distance: float) -> tuple[complex, complex]:
    outwards = (end - start) / abs(end - start) * -1j * distance
    return start + outwards, end + outwards


def _corner(
    one: tuple[complex, complex], other: tuple[complex, complex], corner: complex, limit: float
) -> tuple[complex, ...]:
    """Where two moved sides meet; their ends where they are parallel or meet far away."""
    first, second = one[1] - one[0], other[1] - other[0]
    across = cross(first, second)
    if abs(across) < 1e-9 * abs(first) * abs(second):
        return (one[1], other[0]) if abs(one[1] - other[0]) > TOLERANCE else (one[1],)
    here = cross(other[0] - one[0], second) / across
    there = cross(other[0] - one[0], first) / across
    met = one[0] + first * here
    if here <= 1 and there >= 0:
        # A hollow: the sides cross, or would if they were longer; then loops come of it.
        return (met,) if here >= 0 and there <= 1 else (one[1], corner, other[0])
    return (one[1], other[0]) if abs(met - corner) > limit else (met,)


class _Crossing(NamedTuple):
    """Where two sides of a closed line cross: their places in it, and the spot."""

    first: int
    second: int
    spot: complex


def _without_loops(points: list[complex]) -> tuple[complex, ...]:
    """A closed line that crosses itself nowhere: the parts that run clockwise."""
    for _ in range(_ROUNDS):
        crossings = list(_crossings(points))
        if not crossings:
            break
        # The shortest loop of all holds no other one.
        count = len(points)
        spans = [(_inner(c, count), c) for c in crossings]
        (is_wrapped, _), found = min(spans, key=lambda span: (span[0][1], span[1][:2]))
        inner = points[found.first + 1 : found.second + 1]
        outer = points[found.second + 1 :] + points[: found.first + 1]
        loop, rest = (outer, inner) if is_wrapped else (inner, outer)
        kept = rest if _area([found.spot, *loop]) <= _area([found.spot, *rest]) else loop
        points = [found.spot, *kept]
    return tuple(points) if _area(points) > 0 else ()


def _inner(crossing: _Crossing, count: int) -> tuple[bool, int]:
    """Whether the shorter loop at a crossing is the one round the end of the list; its sides."""
    inner = crossing.second - crossing.first
    return inner > count - inner, min(inner, count - inner)


def _crossings(points: Sequence[complex]) -> Iterator[_Crossing]:
    """The crossings of sides that are no neighbours, found by a sweep from left to right."""
    sides = list(pairwise([*points, points[0]])) if len(points) > 2 else []
    spans = sorted((min(a.real, b.real), max(a.real, b.real), n) for n, (a, b) in enumerate(sides))
    open_: list[tuple[float, int]] = []
    for left, right, place in spans:
        open_ = [(end, other) for end, other in open_ if end >= left]
        for _, other in open_:
            first, second = sorted((place, other))
            if second - first in {1, len(sides) - 1}:
                continue
            spot = _met(sides[first], sides[second])
            if spot is not None:
                yield _Crossing(first, second, spot)
        open_.append((right, place))


def _met(one: tuple[complex, complex], other: tuple[complex, complex]) -> complex | None:
    """Where two straight lines cross between their ends."""
    first, second = one[1] - one[0], other[1] - other[0]
    across = cross(first, second)
    if abs(across) < 1e-12 * max(1e-12, abs(first) * abs(second)):
        return None
    between = other[0] - one[0]
    here, there = cross(between, second) / across, cross(between, first) / across
    is_between = all(-_ROUNDING < share < 1 + _ROUNDING for share in (here, there))
    return one[0] + first * here if is_between else None


def _area(points: Sequence[complex]) -> float:
    """Twice the area that a closed line goes round, positive where it runs clockwise."""
    return sum(cross(one, other) for one, other in pairwise([*points, points[0]])) if points else 0
