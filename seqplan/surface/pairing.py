"""Which cut edge meets which in a seam.

A designer writes ``sew: front.side, to: back.side`` and means both sides. Which half of the front
meets which copy of the back follows from two facts:

1. Right sides together, the cloth goes on with the same side up, so the listed starts meet where
   one edge lies in a mirrored half and the other does not, and are reversed otherwise.
2. At both ends of the seam, edges of the same name should meet: waist to waist, hem to hem.

All ways to pair the copies are weighed by the second; where they tie, left meets left. Where
names tell nothing, as where a sleeve meets a front, `settle` looks at the whole garment: the
right pairing is the one in which most corners close up, so that the cloth lies flattest.
"""

from collections.abc import Iterable, Mapping, Sequence
from functools import partial
from itertools import permutations, product
from typing import NamedTuple

from seqplan.base.ids import EntryId, PieceId
from seqplan.model.piece import Segment
from seqplan.surface.closing import merged_points
from seqplan.surface.glued import Glue, Surface
from seqplan.surface.ring import EdgeEnd, Rings
from seqplan.surface.stretch import find_stretches


class Pair(NamedTuple):
    """Two cut edges that meet; ``aligned`` when their listed starts meet."""

    first: Segment
    second: Segment
    aligned: bool


Pairing = tuple[Pair, ...]
"""All copies of an edge, each with the one that it meets."""

MOST_READINGS = 8
"""More ways than these to lay the same edges together are not weighed."""

MOST_COPIES = 5
"""Of so many copies every way to pair them is tried: five have 120 ways, twelve 479 million."""

_FOLD = "|fold|"
"""A name that no edge has."""


class UnpairableError(ValueError):
    """The two sides cannot be paired; ``key`` is the slug of the fault."""

    def __init__(self, key: str) -> None:
        super().__init__(key)
        self.key = key


def pair_two_sides(rings: Rings, one: tuple[Segment, ...], other: tuple[Segment, ...]) -> Pairing:
    """Pair the copies of one edge with the copies of another, as they usually meet.

    Raises
    ------
    UnpairableError
        When the numbers of copies differ (``copies-differ``).
    """
    return readings(rings, one, other)[0]


def readings(
    rings: Rings, one: tuple[Segment, ...], other: tuple[Segment, ...]
) -> tuple[Pairing, ...]:
    """Give the ways in which the copies of two edges can meet.

    Parameters
    ----------
    rings
        The pieces.
    one, other
        All copies of either edge that are meant. Of a handful every way is weighed; many more
        are alike, and each takes the best that is left.

    Returns
    -------
    tuple of Pairing
        The pairings in which the most corners agree by name, the usual one first.

    Raises
    ------
    UnpairableError
        When the numbers of copies differ (``copies-differ``).
    """
    if len(one) != len(other):
        raise UnpairableError("copies-differ")
    if len(one) > MOST_COPIES:
        return (_one_after_the_other(rings, one, other),)
    weighed = sorted(
        (
            (_worth(rings, tuple(zip(one, chosen, strict=True))), chosen)
            for chosen in permutations(other)
        ),
        key=lambda item: item[0],
        reverse=True,
    )
    most = weighed[0][0][0]
    return tuple(
        tuple(_pair(a, b) for a, b in zip(one, chosen, strict=True))
        for worth, chosen in weighed[:MOST_READINGS]
        if worth[0] == most
    )


def _one_after_the_other(
    rings: Rings, one: tuple[Segment, ...], other: tuple[Segment, ...]
) -> Pairing:
    """Pair many copies, each with the best that is left: they are alike, or mirrored."""
    left = list(other)
    pairs = []
    for segment in one:
        best = max(left, key=lambda mate: _worth(rings, ((segment, mate),)))
        left.remove(best)
        pairs.append(_pair(segment, best))
    return tuple(pairs)


def pair_with_itself(rings: Rings, edges: tuple[Segment, ...]) -> Pairing:
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
        return _to_a_ring(rings, edges)
    return (_pair(*edges),)


def _to_a_ring(rings: Rings, edges: tuple[Segment, ...]) -> Pairing:
    """Join strips that are alike, each with two such ends, one after the other to a ring.

    An end of one meets the other end of the next, so that the long edges go on into one another.
    """
    ends: dict[tuple[PieceId, int], list[Segment]] = {}
    for segment in edges:
        ends.setdefault(rings.disc(segment), []).append(segment)
    strips = list(ends.values())
    if any(len(two) != 2 or two[0].place == two[1].place for two in strips):
        raise UnpairableError("which-copies")
    nexts = (*strips[1:], strips[0])
    return tuple(_pair(one[1], other[0]) for one, other in zip(strips, nexts, strict=True))


def lay_on(
    rings: Rings,
    riders: tuple[Segment, ...],
    carriers: tuple[Segment, ...],
    sewn: Iterable[Glue] = (),
) -> Pairing:
    """Pair what is caught or held with the edges that carry it.

    A held layer may lie with either side up, so the ends are matched by what stands nearest to
    them on their pieces: where both pieces have a side, the end towards the side meets the end
    towards the side. Where names tell nothing, right sides lie together.

    Parameters
    ----------
    rings
        The pieces.
    riders, carriers
        All copies of either edge that are meant.
    sewn
        The seams of the garment: of several copies, each is held where it hangs already.

    Raises
    ------
    UnpairableError
        When the numbers of copies differ (``copies-differ``).
    """
    usual = readings(rings, riders, carriers)[0]
    found = usual
    if 1 < len(riders) <= MOST_COPIES:
        near = _Nearness(rings, sewn)
        ways = (
            tuple(_pair(a, b) for a, b in zip(riders, chosen, strict=True))
            for chosen in permutations([pair.second for pair in usual])
        )
        found = min((usual, *ways), key=near.total)
    return tuple(_lain(rings, pair) for pair in found)


class _Nearness:
    """How many seams lie between two halves or copies of pieces."""

    def __init__(self, rings: Rings, sewn: Iterable[Glue]) -> None:
        self._beside: dict[_Half, set[_Half]] = {}
        for glue in sewn:
            one, other = _half(glue.first), _half(glue.second)
            self._beside.setdefault(one, set()).add(other)
            self._beside.setdefault(other, set()).add(one)
        self._far = len(rings.segments)

    def total(self, pairing: Pairing) -> int:
        """All the seams between what is paired."""
        return sum(self._between(_half(p.first), _half(p.second)) for p in pairing)

    def _between(self, start: "_Half", goal: "_Half") -> int:
        waiting, seen = [(start, 0)], {start}
        for here, steps in waiting:
            if here == goal:
                return steps
            for other in sorted(self._beside.get(here, ())):
                if other not in seen:
                    seen.add(other)
                    waiting.append((other, steps + 1))
        return self._far


_Half = tuple[str, int, str]


def _half(segment: Segment) -> _Half:
    return segment.piece, segment.copy, segment.half


def _lain(rings: Rings, pair: Pair) -> Pair:
    shared = {rings.name(s) for s in rings.segments if s.piece == pair.first.piece}
    shared &= {rings.name(s) for s in rings.segments if s.piece == pair.second.piece}
    one = _end_towards_more(rings, pair.first, shared)
    other = _end_towards_more(rings, pair.second, shared)
    if one is None or other is None or one[0] != other[0]:
        return pair
    return pair._replace(aligned=one[1] == other[1])


def _end_towards_more(rings: Rings, segment: Segment, shared: set[str]) -> tuple[str, bool] | None:
    """The nearest other edge with a shared name, and the end of the segment that looks to it."""
    others = shared - {rings.name(segment)}
    walks = [EdgeEnd(segment, False), EdgeEnd(segment, True)]
    for _ in rings.pieces[segment.piece].edges:
        walks = [rings.across(end).neighbour.opposite for end in walks]
        found = [(rings.name(walks[at].segment), at) for at in (False, True)]
        named = [item for item in found if item[0] in others]
        if len({name for name, _ in named}) == 1 == len(named):
            return named[0]
        if named:
            return None
    return None


def settle(
    rings: Rings,
    fixed: Surface,
    open_pairings: Mapping[EntryId, Sequence[Sequence[Pairing]]],
    runs: Iterable[tuple[EntryId, Sequence[Segment]]],
) -> dict[EntryId, tuple[Pair, ...]]:
    """Choose among pairings that names leave open.

    The more corners close up, the better; of pairings that are equal in that, the one in which the
    runs of the garment are torn into the fewest stretches, since a list is one run; of these the
    one in which edges of the same names meet at the ends; of these the usual one. A sleeve set in
    upside down closes as many corners as one set in right, but then the seam from hem to wrist goes
    nowhere.

    Parameters
    ----------
    rings
        The pieces.
    fixed
        The garment with the seams whose pairing is settled.
    open_pairings
        For each entry, edge by edge of its list, the pairings to choose from, the usual first.
    runs
        The cut edges of either side of every entry that names more than one edge.

    Returns
    -------
    dict
        The pairs of each entry. Entries are settled one after the other by name, each with what is
        chosen so far for the others.
    """
    chosen = {id_: _usual(open_pairings[id_]) for id_ in sorted(open_pairings)}
    whole = fixed.with_seams(g for id_, pairs in chosen.items() for g in _glues(id_, pairs))
    held_runs = list(runs)
    for id_, items in sorted(open_pairings.items()):
        ways = [tuple(pair for pairing in way for pair in pairing) for way in product(*items)]
        if len(ways) == 1:
            continue
        ground = whole.without_seams(_glues(id_, chosen[id_]))
        pieces = {s.piece for pair in ways[0] for s in (pair.first, pair.second)}
        near = [(name, run) for name, run in held_runs if any(s.piece in pieces for s in run)]
        chosen[id_] = max(ways, key=partial(_worth_of, id_, ground, near))
        whole = ground.with_seams(_glues(id_, chosen[id_]))
    return chosen


def _worth_of(
    entry: EntryId,
    ground: Surface,
    runs: Sequence[tuple[EntryId, Sequence[Segment]]],
    pairs: tuple[Pair, ...],
) -> tuple[int, int, int]:
    """Weigh a pairing by the corners that close up, the stretches of runs nearby, and names."""
    glues = _glues(entry, pairs)
    surface = ground.with_seams(glues)
    stretches = sum(
        len(find_stretches(surface, run, lambda _one, _other: True, id_)) for id_, run in runs
    )
    agreeing = sum(_agreeing_ends(ground.rings, pair) for pair in pairs)
    return -merged_points(ground, glues), -stretches, agreeing


def _usual(items: Sequence[Sequence[Pairing]]) -> tuple[Pair, ...]:
    return tuple(pair for pairings in items for pair in pairings[0])


def _glues(entry: EntryId, pairs: Iterable[Pair]) -> list[Glue]:
    return [Glue(pair.first, pair.second, pair.aligned, entry) for pair in pairs]


def _pair(one: Segment, other: Segment) -> Pair:
    """Lay two edges right sides together."""
    return Pair(one, other, one.is_mirrored != other.is_mirrored)


def _worth(rings: Rings, chosen: tuple[tuple[Segment, Segment], ...]) -> tuple[int, int, int]:
    """Weigh a pairing: corners that agree, then left to left, then the order of the list."""
    agreeing = sum(_agreeing_ends(rings, _pair(a, b)) for a, b in chosen)
    usual = sum(_is_usual(a, b) for a, b in chosen)
    in_step = -sum(abs(a.place - b.place) + abs(a.copy - b.copy) for a, b in chosen)
    return agreeing, usual, in_step


def _agreeing_ends(rings: Rings, pair: Pair) -> int:
    return sum(
        _neighbour_name(rings, EdgeEnd(pair.first, at_end))
        == _neighbour_name(rings, EdgeEnd(pair.second, at_end == pair.aligned))
        for at_end in (False, True)
    )


def _neighbour_name(rings: Rings, end: EdgeEnd) -> str:
    """What an edge meets at this end: another edge by its name, or the fold of its piece."""
    other = rings.across(end).neighbour.segment
    is_fold = other.half != end.segment.half and other.place == end.segment.place
    return _FOLD if is_fold else rings.name(other)


def _is_usual(one: Segment, other: Segment) -> bool:
    """Left meets left: across two pieces unlike halves meet, within one piece like halves."""
    return (one.half != other.half) == (one.piece != other.piece or one.place == other.place)
