"""Lines of the map: how the state of an edge is drawn along it, in black and white."""

from bisect import bisect
from collections.abc import Iterator, Sequence
from itertools import accumulate, pairwise
from typing import Final

from seqplan.draw.figure import (
    DASHES,
    DOTS,
    FOLD,
    HEAVY,
    INK,
    PAPER,
    THIN,
    Line,
    Mark,
    Spot,
    Strokes,
)
from seqplan.rehearse.edges import EdgeState, Kind

INSET: Final = 3.2
"""How far inside an edge lies what tells its state, in points."""

_STEP: Final = 3.0
_ZIGZAG: Final = 1.5
_TICK: Final = 2.6


def edge_marks(points: Sequence[complex], state: EdgeState, inwards: int) -> list[Mark]:
    """Draw an edge in its state.

    Parameters
    ----------
    points
        The line of the edge on the canvas, in points.
    state
        What has become of it.
    inwards
        1 where the cloth is at the right hand of who walks along the line, -1 where it is at the
        left.
    """
    width = HEAVY if state.is_active else THIN
    role = "active" if state.is_active else "edge"
    marks: list[Mark] = []
    if state.kind is Kind.FOLD:
        marks.append(Line(_spots(points), width, FOLD, role=role))
    else:
        marks.append(Line(_spots(points), width, is_round=True, role=role))
    inner = _spots(beside(points, inwards * INSET))
    if state.kind is Kind.ROWS:
        marks.append(Line(inner, 1.0, DOTS, is_round=True))
    elif state.kind is Kind.SEWN:
        marks.append(Line(inner, 0.9, DASHES))
    elif state.kind is Kind.HEMMED:
        marks.append(Line(inner, 0.7))
    elif state.kind is Kind.ENCLOSED:
        marks.append(Strokes(tuple(_ticks(points, inwards * (_TICK + 1))), 0.7))
    if state.is_finished:
        marks.append(Line(_spots(_zigzag(points, -inwards)), 0.6))
    return marks


def slit_marks(points: Sequence[complex], is_cut: bool) -> list[Mark]:
    """Draw a slit: dotted before it is cut, a narrow gap afterwards."""
    if not is_cut:
        return [Line(_spots(points), 0.8, DOTS, is_round=True, role="slit")]
    return [
        Line(_spots(points), 3.0, role="slit"),
        Line(_spots(points), 1.6, ink=PAPER),
    ]


def beside(points: Sequence[complex], distance: float) -> list[complex]:
    """The points of a line at one side of another; its ends drawn in, so that they stay within."""
    found = []
    for place, point in enumerate(points):
        before = points[place - 1] if place else point
        after = points[place + 1] if place + 1 < len(points) else point
        along = after - before
        if along == 0:
            continue
        found.append(point + along / abs(along) * 1j * distance)
    return list(_shortened(found, abs(distance)))


def _shortened(points: Sequence[complex], by: float) -> Iterator[complex]:
    """A line without so much at either end, if enough is left."""
    total = length_of(points)
    by = min(by, total / 4)
    return iter([point for point, _ in sampled(points, max(2, int(total / 2) + 1), by, total - by)])


def length_of(points: Sequence[complex]) -> float:
    """How long a line is."""
    return sum(abs(other - one) for one, other in pairwise(points))


def sampled(
    points: Sequence[complex], count: int, start: float, end: float
) -> Iterator[tuple[complex, complex]]:
    """So many points of a line from one distance to another, each with the direction there."""
    pairs = [(a, b) for a, b in pairwise(points) if a != b]
    runs = [0.0, *accumulate(abs(b - a) for a, b in pairs)]
    for number in range(count):
        at = start + (end - start) * number / max(1, count - 1)
        place = min(max(bisect(runs, at) - 1, 0), len(pairs) - 1)
        one, other = pairs[place]
        along = (other - one) / abs(other - one)
        yield one + along * (at - runs[place]), along


def _zigzag(points: Sequence[complex], side: int) -> list[complex]:
    """A zigzag over the edge."""
    total = length_of(points)
    count = max(2, round(total / _STEP) + 1)
    return [
        point + along * 1j * side * (_ZIGZAG if number % 2 else -_ZIGZAG)
        for number, (point, along) in enumerate(sampled(points, count, 0.5, total - 0.5))
    ]


def _ticks(points: Sequence[complex], reach: float) -> Iterator[tuple[Spot, Spot]]:
    """Short strokes into the cloth."""
    total = length_of(points)
    count = max(2, round(total / _STEP) + 1)
    for point, along in sampled(points, count, 1.0, total - 1.0):
        inner = point + along * 1j * reach
        yield (point.real, point.imag), (inner.real, inner.imag)


def hatched(ring: Sequence[complex], gap: float = 5.0) -> Strokes:
    """Slanting strokes all over what a closed line goes round."""
    turn = (1 + 1j) / abs(1 + 1j)
    turned = [point * turn for point in ring]
    sides = list(pairwise([*turned, turned[0]]))
    lowest = min(point.imag for point in turned)
    highest = max(point.imag for point in turned)
    strokes: list[tuple[Spot, Spot]] = []
    level = lowest + gap / 2
    while level < highest:
        crossed = sorted(
            one.real + (other.real - one.real) * (level - one.imag) / (other.imag - one.imag)
            for one, other in sides
            if (one.imag <= level) != (other.imag <= level)
        )
        for left, right in zip(crossed[::2], crossed[1::2], strict=False):
            start, end = (complex(x, level) / turn for x in (left, right))
            strokes.append(((start.real, start.imag), (end.real, end.imag)))
        level += gap
    return Strokes(tuple(strokes), 0.35, ink=INK)


def _spots(points: Sequence[complex]) -> tuple[Spot, ...]:
    return tuple((point.real, point.imag) for point in points)
