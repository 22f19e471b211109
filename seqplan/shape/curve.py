"""Straight lines and Bézier curves: their points, lengths, and the area under them.

A point is a complex number: millimetres to the right, and as its imaginary part millimetres down,
as in SVG. A curve is the tuple of its points: two of a straight line, three of a quadratic and
four of a cubic Bézier curve.
"""

import cmath
from collections.abc import Iterable, Iterator, Sequence
from itertools import pairwise
from typing import Final, TypeAlias

Curve: TypeAlias = tuple[complex, ...]
"""A straight line or a Bézier curve, by its end points and the handles between them."""

Path: TypeAlias = tuple[Curve, ...]
"""Curves of which each begins where the last one ends."""

TOLERANCE: Final = 0.0001
"""Millimetres: halving that changes a length by less is the last; a thousandth of what counts."""

FLATNESS: Final = 0.02
"""Millimetres that straight lines may lie off the curve that they stand for."""

_DEEPEST: Final = 16
"""How often a curve is halved at most; one with a cusp is halved round the cusp again and again."""

# Abscissae and weights of Gauss-Legendre quadrature with five points on [-1, 1]:
# Abramowitz and Stegun, Handbook of Mathematical Functions, table 25.4.
_GAUSS: Final = (
    (0.0, 0.5688888888888889),
    (0.5384693101056831, 0.4786286704993665),
    (-0.5384693101056831, 0.4786286704993665),
    (0.9061798459386640, 0.2369268850561891),
    (-0.9061798459386640, 0.2369268850561891),
)


def is_straight(curve: Curve) -> bool:
    """Whether it is a straight line."""
    return len(curve) == 2


def point_at(curve: Sequence[complex], t: float) -> complex:
    """The point at ``t``, from 0 at the start to 1 at the end: de Casteljau's construction."""
    points = list(curve)
    while len(points) > 1:
        points = [one + (other - one) * t for one, other in pairwise(points)]
    return points[0]


def split(curve: Curve, t: float) -> tuple[Curve, Curve]:
    """The two curves before and after the point at ``t``."""
    points, before, after = list(curve), [curve[0]], [curve[-1]]
    while len(points) > 1:
        points = [one + (other - one) * t for one, other in pairwise(points)]
        before.append(points[0])
        after.append(points[-1])
    return tuple(before), tuple(reversed(after))


def turned(curve: Curve) -> Curve:
    """The same curve from its end to its start."""
    return curve[::-1]


def length(curve: Curve) -> float:
    """How long a curve is, in millimetres, to less than a hundredth.

    Gauss-Legendre quadrature of the speed along the curve, halved until halving changes nothing.
    """
    if is_straight(curve):
        return abs(curve[1] - curve[0])
    return _measured(curve, _quadrature(curve), _DEEPEST)


def _measured(curve: Curve, whole: float, depth: int) -> float:
    left, right = split(curve, 0.5)
    one, other = _quadrature(left), _quadrature(right)
    is_sure = abs(one + other - whole) < TOLERANCE and _keeps_on(curve)
    if depth == 0 or is_sure:
        return one + other
    return _measured(left, one, depth - 1) + _measured(right, other, depth - 1)


def _keeps_on(curve: Curve) -> bool:
    """Whether a curve nowhere turns back, so that a few points of it tell its speed."""
    chord = curve[-1] - curve[0]
    steps = [other - one for one, other in pairwise(curve)]
    if sum(map(abs, steps)) < TOLERANCE:
        return True
    return chord != 0 and all((step * chord.conjugate()).real >= 0 for step in steps)


def _quadrature(curve: Curve) -> float:
    degree = len(curve) - 1
    velocity = [degree * (other - one) for one, other in pairwise(curve)]
    return sum(weight * abs(point_at(velocity, (1 + x) / 2)) for x, weight in _GAUSS) / 2


def path_length(path: Iterable[Curve]) -> float:
    """How long curves are together, in millimetres."""
    return sum(map(length, path))


def cut(path: Path, distance: float) -> tuple[Path, Path]:
    """Cut a path at so many millimetres from its start.

    A distance that is not within the path gives all of it and nothing.
    """
    before: list[Curve] = []
    for place, curve in enumerate(path):
        whole = length(curve)
        if distance < whole:
            if distance <= 0:
                return tuple(before), path[place:]
            left, right = split(curve, _parameter(curve, distance))
            return (*before, left), (right, *path[place + 1 :])
        distance -= whole
        before.append(curve)
    return path, ()


def _parameter(curve: Curve, distance: float) -> float:
    """Where a curve has run so many millimetres: found by halving, for length only grows."""
    low, high = 0.0, 1.0
    for _ in range(40):
        middle = (low + high) / 2
        low, high = (middle, high) if length(split(curve, middle)[0]) < distance else (low, middle)
    return (low + high) / 2


def flattened(path: Iterable[Curve], flatness: float = FLATNESS) -> tuple[complex, ...]:
    """The corners of straight lines that lie within ``flatness`` millimetres of the curves."""
    points: list[complex] = []
    for curve in path:
        if not points:
            points.append(curve[0])
        points.extend(_corners(curve, flatness, _DEEPEST))
    return tuple(points)


def _corners(curve: Curve, flatness: float, depth: int) -> Iterator[complex]:
    if depth == 0 or _is_flat(curve, flatness):
        yield curve[-1]
        return
    left, right = split(curve, 0.5)
    yield from _corners(left, flatness, depth - 1)
    yield from _corners(right, flatness, depth - 1)


def _is_flat(curve: Curve, flatness: float) -> bool:
    """Whether the handles lie where those of a straight line would, and so the curve too.

    A curve lies within the hull of the differences between its handles and those of the chord.
    """
    chord, degree = curve[-1] - curve[0], len(curve) - 1
    return all(
        abs(point - (curve[0] + chord * place / degree)) <= flatness
        for place, point in enumerate(curve[1:-1], start=1)
    )


def area(path: Iterable[Curve]) -> float:
    """The area that closed curves go round, in square millimetres.

    It is positive where they go clockwise as seen on the page, and exact but for rounding: by
    Green's theorem it is an integral of polynomials.
    """
    return sum(map(_swept, path))


def _swept(curve: Curve) -> float:
    """Half the integral of x dy - y dx along a curve."""
    n = len(curve) - 1
    cubic = elevated(curve)
    p, q, r, s = cubic
    if n == 1:
        return cross(curve[0], curve[1]) / 2
    # The integral of products of Bernstein polynomials, worked out for a cubic.
    return (
        6 * cross(p, q) + 3 * cross(p, r) + cross(p, s)
        + 3 * cross(q, r) + 3 * cross(q, s) + 6 * cross(r, s)
    ) / 20  # fmt: skip


def cross(one: complex, other: complex) -> float:
    """The area between two ways; positive where one turns clockwise to reach the other."""
    return (one.conjugate() * other).imag


def elevated(curve: Curve) -> Curve:
    """The same curve as a cubic."""
    while len(curve) < 4:
        degree = len(curve)
        inner = (
            curve[place - 1] * (place / degree) + curve[place] * (1 - place / degree)
            for place in range(1, degree)
        )
        curve = (curve[0], *inner, curve[-1])
    return curve


def is_smooth(one: Curve, other: Curve, degrees: float = 2.0) -> bool:
    """Whether a curve goes on into another one without a corner."""
    leaving, entering = _direction(turned(one)) * -1, _direction(other)
    if leaving == 0 or entering == 0:
        return True
    return abs(cmath.phase(entering / leaving)) <= degrees * cmath.pi / 180


def _direction(curve: Curve) -> complex:
    """Which way a curve sets out; a handle that lies on the start says nothing."""
    return next((point - curve[0] for point in curve[1:] if abs(point - curve[0]) > TOLERANCE), 0)
