"""Which cut edge meets which in a seam.

A designer writes ``sew: front.side, to: back.side`` and means both sides. Which half of the front
meets which copy of the back follows from two facts:

1. Right sides together, the cloth goes on with the same side up, so the listed starts meet where
   one edge lies in a mirrored half and the other does not, and are reversed otherwise.
2. At both ends of the seam, edges of the same name should meet: waist to waist, hem to hem.

All ways to pair the copies are weighed by the second; where they tie, left meets left.
"""

from itertools import permutations
from typing import NamedTuple

from seqplan.model.piece import Segment
from seqplan.surface.ring import EdgeEnd, Rings


class Pair(NamedTuple):
    """Two cut edges that meet; ``aligned`` when their listed starts meet."""

    first: Segment
    second: Segment
    aligned: bool


class UnpairableError(ValueError):
    """The two sides cannot be paired; ``key`` is the slug of the fault."""

    def __init__(self, key: str) -> None:
        super().__init__(key)
        self.key = key


def pair_two_sides(
    rings: Rings, one: tuple[Segment, ...], other: tuple[Segment, ...]
) -> tuple[Pair, ...]:
    """Pair the copies of one edge with the copies of another.

    Parameters
    ----------
    rings
        The pieces.
    one, other
        All copies of either edge that are meant, at most a handful each.

    Raises
    ------
    UnpairableError
        When the numbers of copies differ (``copies-differ``).
    """
    if len(one) != len(other):
        raise UnpairableError("copies-differ")
    best = max(
        permutations(other),
        key=lambda chosen: _worth(rings, tuple(zip(one, chosen, strict=True))),
    )
    return tuple(_pair(a, b) for a, b in zip(one, best, strict=True))


def pair_with_itself(rings: Rings, edges: tuple[Segment, ...]) -> tuple[Pair, ...]:
    """Pair the left copy of an edge with the right, as ``sew: back.centre`` alone means.

    Raises
    ------
    UnpairableError
        When there is one copy only (``nothing-to-join``), an odd number
        (``odd-copies``), or more than one reading (``which-copies``).
    """
    if len(edges) == 1:
        raise UnpairableError("nothing-to-join")
    if len(edges) % 2:
        raise UnpairableError("odd-copies")
    described = tuple(s for s in edges if not s.is_mirrored)
    mirrored = tuple(s for s in edges if s.is_mirrored)
    if len(described) == len(mirrored):
        return pair_two_sides(rings, described, mirrored)
    if len(edges) > 2:
        raise UnpairableError("which-copies")
    return (_pair(*edges),)


def _pair(one: Segment, other: Segment) -> Pair:
    """Lay two edges right sides together."""
    return Pair(one, other, one.is_mirrored != other.is_mirrored)


def _worth(rings: Rings, chosen: tuple[tuple[Segment, Segment], ...]) -> tuple[int, int, int]:
    """Weigh a pairing: corners that agree, then left to left, then the order of the list."""
    agreeing = sum(_agreeing_ends(rings, _pair(a, b)) for a, b in chosen)
    usual = sum(_is_usual(a, b) for a, b in chosen)
    in_step = -sum(abs(a.index - b.index) + abs(a.copy - b.copy) for a, b in chosen)
    return agreeing, usual, in_step


def _agreeing_ends(rings: Rings, pair: Pair) -> int:
    return sum(
        _neighbour_name(rings, EdgeEnd(pair.first, at_end))
        == _neighbour_name(rings, EdgeEnd(pair.second, at_end == pair.aligned))
        for at_end in (False, True)
    )


def _neighbour_name(rings: Rings, end: EdgeEnd) -> str:
    return rings.name(rings.across(end).neighbour.segment)


def _is_usual(one: Segment, other: Segment) -> bool:
    """Left meets left: across two pieces unlike halves meet, within one piece like halves."""
    return (one.half != other.half) == (one.piece != other.piece or one.index == other.index)
