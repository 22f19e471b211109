"""Lines and spots of the unit in hand, on the canvas: rims, rows inside edges, room for letters."""

from collections.abc import Sequence
from functools import lru_cache
from itertools import pairwise
from typing import Final

from seqplan.draw.figure import Spot
from seqplan.draw.map_lines import beside, length_of, sampled
from seqplan.draw.unit_faces import Points
from seqplan.draw.unit_place import is_inside

_BULGE: Final = 0.13
"""How far the far rim of an opening bulges, in parts of its width."""
_LEAST: Final = 4.0
"""Points that it bulges at least."""


def middle_of(line: Sequence[complex]) -> complex:
    """The spot half way along a line."""
    return next(sampled(line, 1, length_of(line) / 2, 1.0))[0]


def bulged(line: Points, outwards: complex) -> Points:
    """The far rim of an opening: bowed outwards, and at least as far out as the near one."""
    total, chord = length_of(line), line[-1] - line[0]
    high = max(_BULGE * abs(chord), _LEAST)
    shares = [n / 10 for n in range(11)]
    spots = [next(sampled(line, 1, total * share, 1.0))[0] for share in shares]
    beyond = max(((spot - line[0]) * outwards.conjugate()).real for spot in spots)
    if beyond < _LEAST:
        spots = [line[0] + chord * share for share in shares]
    return tuple(
        spot + outwards * high * 4 * share * (1 - share)
        for spot, share in zip(spots, shares, strict=True)
    )


def between(one: Points, other: Points, share: float) -> complex:
    """Half way between two lines, so far along them."""
    spots = [next(sampled(line, 1, length_of(line) * share, 1.0))[0] for line in (one, other)]
    return sum(spots) / 2


def doubles_back(line: Points) -> bool:
    """Whether a line on a folded piece goes to the fold and comes back."""
    reach = max(abs(point - line[0]) for point in line)
    return abs(line[-1] - line[0]) < reach / 2


def way_there(line: Points) -> Points:
    """The way there of a line that comes back."""
    far = max(range(len(line)), key=lambda n: abs(line[n] - line[0]))
    return line[: far + 1]


def chained(lines: Sequence[Points]) -> Points | None:
    """Lines one after the other, each from where the last one ends."""
    waiting = list(lines)
    chain = list(waiting.pop(0))
    while waiting:
        nearest = min(
            ((abs(chain[end] - line[tip]), n, end, tip)
             for n, line in enumerate(waiting) for end in (0, -1) for tip in (0, -1)),
        )  # fmt: skip
        apart, number, end, tip = nearest
        if apart > 0.25 * abs(chain[-1] - chain[0]) + 6:
            return None
        line = list(waiting.pop(number))
        if end == -1:
            chain = [*chain, *(line if tip == 0 else line[::-1])]
        else:
            chain = [*(line if tip == -1 else line[::-1]), *chain]
    return tuple(chain)


def inside_of(line: Points, outline: Points, by: float = 3.0) -> Sequence[complex]:
    """The line that runs inside an outline beside one of its edges."""
    for hand in (by, -by):
        found = beside(line, hand)
        if is_inside(found[len(found) // 2], outline):
            return found
    return beside(line, by)


@lru_cache(maxsize=1000)
def middle_in(outline: Points) -> complex:
    """A spot well inside: the middle of the widest stretch on a few levels."""
    best = (0.0, sum(outline) / len(outline))
    top, bottom = min(p.imag for p in outline), max(p.imag for p in outline)
    for share in (0.5, 0.58, 0.42, 0.66, 0.34):
        level = top + (bottom - top) * share + 0.01
        found = _level(outline, level)
        for left, right in zip(found[::2], found[1::2], strict=False):
            if right - left > best[0] * 1.2:
                best = (right - left, complex((left + right) / 2, level))
    return best[1]


def _level(outline: Points, level: float) -> list[float]:
    return sorted(
        one.real + (other.real - one.real) * (level - one.imag) / (other.imag - one.imag)
        for one, other in pairwise((*outline, outline[0]))
        if (one.imag <= level) != (other.imag <= level)
    )


def room_in(outline: Points) -> float:
    """How much room there is round the middle."""
    middle = middle_in(outline)
    across = _level(outline, middle.imag)
    turned = tuple(complex(p.imag, p.real) for p in outline)
    down = _level(turned, middle.real)
    return min(across[-1] - across[0], down[-1] - down[0])


def inner_spots(outline: Points) -> list[complex]:
    """Some spots inside, away from the middle, where a letter stands."""
    top, bottom = min(p.imag for p in outline), max(p.imag for p in outline)
    found = []
    for share in (0.3, 0.72, 0.5, 0.12, 0.9):
        level = top + (bottom - top) * share + 0.01
        across = _level(outline, level)
        for at in (0.2, 0.8):
            if len(across) > 1:
                found.append(complex(across[0] + (across[-1] - across[0]) * at, level))
    return [spot for spot in found if is_inside(spot, outline)]


def spot_of(point: complex) -> Spot:
    """A point as a spot of the canvas."""
    return point.real, point.imag


def spots_of(points: Sequence[complex]) -> tuple[Spot, ...]:
    """Points as spots of the canvas."""
    return tuple((p.real, p.imag) for p in points)
