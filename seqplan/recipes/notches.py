"""Which notches meet in a seam.

One side of a seam is an edge; along it lies the other side, an edge or several that were joined
before. Both are walked in the same direction. What stands there, notches and the seams between
edges, is laid one against the other in its order: a notch meets a notch of as many marks, or a
seam, as the top of a sleeve meets the shoulder.
"""

from collections.abc import Iterator, Sequence
from functools import lru_cache
from itertools import groupby
from typing import Final, NamedTuple

from seqplan.base.ids import PieceId
from seqplan.model.entry import Entry
from seqplan.model.operation import Action
from seqplan.model.piece import Notch, Piece, Segment
from seqplan.recipes.construction import Construction
from seqplan.recipes.shape import Shape
from seqplan.shape.notches import length_of, standing
from seqplan.surface.portion import part_counts

TOLERANCE: Final = 3.0
"""Millimetres by which lengths may differ without a word: an eighth of an inch, common practice."""

_RESHAPED: Final = (Action.GATHER, Action.DART, Action.PLEAT)
"""What is done to an edge that makes distances along it others than those that were cut."""


class WholeEdge(NamedTuple):
    """An edge of one cut copy, as the piece lists it, however it is split."""

    piece: PieceId
    copy: int
    half: str
    place: int


class Stop(NamedTuple):
    """A notch, or where the edge before ends and the next one begins, along a side of a seam.

    Parameters
    ----------
    edge
        Where it is; the edge that begins there, where it is no notch.
    notch
        The notch, if it is one.
    before, after
        Millimetres along the stitching line from the start and to the end of the side, if known.
    """

    edge: WholeEdge
    notch: Notch | None
    before: float | None
    after: float | None


class Side(NamedTuple):
    """One side of a seam: its edges in the order of the walk, and what stands along it."""

    edges: tuple[WholeEdge, ...]
    stops: tuple[Stop, ...]
    is_true: bool
    """Whether distances along it are in the seam what they were when it was cut."""


class Meeting(NamedTuple):
    """Two sides of a seam with the notches that meet, and those that meet nothing.

    Parameters
    ----------
    one, other
        An edge in its listed direction, and what lies along it.
    pairs
        What meets, a notch on one of the two at least, in its order.
    alone
        Notches that meet nothing.
    """

    one: Side
    other: Side
    pairs: tuple[tuple[Stop, Stop], ...]
    alone: tuple[Stop, ...]


def meetings(c: Construction, shape: Shape) -> Iterator[Meeting]:
    """The sides that an entry sews to one another, where there are notches on any of them.

    Nothing is said of a seam of which the entry means a part only, or in which several edges meet
    several at other places than their ends.
    """
    pieces = {segment.piece for glue in shape.glues for segment in (glue.first, glue.second)}
    if shape.entry.portion is not None or not any(
        c.garment.piece[piece].notches for piece in pieces
    ):
        return
    told: set[frozenset[WholeEdge]] = set()
    for one, others in _walks(c, shape):
        edges = frozenset((one, *(edge for edge, _ in others)))
        sides = _side(c, [(one, True)]), _side(c, others)
        has_notches = any(stop.notch for side in sides for stop in side.stops)
        if edges not in told and has_notches:
            told.add(edges)
            yield _met(shape.entry, *sides)


# -- the walk --------------------------------------------------------------------------------

_Walk = tuple[tuple[WholeEdge, bool], ...]
"""Edges in the order of a walk, each with whether it is walked in its listed direction."""


def _walks(c: Construction, shape: Shape) -> Iterator[tuple[WholeEdge, _Walk]]:
    """Edges that are sewn from end to end to whole edges, with those; the run's own edges first."""
    mates: dict[WholeEdge, dict[int, tuple[Segment, bool]]] = {}
    counts: dict[WholeEdge, int] = {}
    for glue in sorted(shape.glues, key=lambda glue: glue.first in shape.to):
        for segment, mate in ((glue.first, glue.second), (glue.second, glue.first)):
            edge, part, count = _whole(c, segment)
            mates.setdefault(edge, {})[part] = (mate, glue.aligned)
            counts[edge] = count
    for edge, by_part in mates.items():
        if len(by_part) < counts[edge]:
            continue
        steps = [(*_whole(c, mate), aligned) for _, (mate, aligned) in sorted(by_part.items())]
        others: list[tuple[WholeEdge, bool]] = []
        for (other, aligned), group in groupby(steps, key=lambda step: (step[0], step[3])):
            parts = [part for _, part, _, _ in group]
            if parts != list(range(counts[other]))[:: 1 if aligned else -1]:
                break
            others.append((other, aligned))
        else:
            yield edge, tuple(others)


def whole_edge(c: Construction, segment: Segment) -> WholeEdge:
    """The edge of the piece's list that a cut edge is, or is a part of."""
    return _whole(c, segment)[0]


def _whole(c: Construction, segment: Segment) -> tuple[WholeEdge, int, int]:
    """The edge of the piece's list that a cut edge is of, which part of it, and of how many."""
    whole = c.garment.piece[segment.piece]
    index, part, count = _origins(whole, c.rings.pieces[segment.piece])[segment.place]
    return WholeEdge(segment.piece, segment.copy, segment.half, index), part, count


@lru_cache(maxsize=512)
def _origins(whole: Piece, split: Piece) -> tuple[tuple[int, int, int], ...]:
    counts = part_counts(whole.edges, split.edges)
    return tuple(
        (index, part, count) for index, count in enumerate(counts) for part in range(count)
    )


def _side(c: Construction, walk: Sequence[tuple[WholeEdge, bool]]) -> Side:
    lengths = [length_of(c.garment.piece[edge.piece], edge.place) for edge, _ in walk]
    stops: list[Stop] = []
    for number, (edge, is_forward) in enumerate(walk):
        before, after = _sum(lengths[:number]), _sum(lengths[number + 1 :])
        if number:
            stops.append(Stop(edge, None, before, _sum(lengths[number:])))
        found = standing(c.garment.piece[edge.piece], edge.place)
        for notch, from_start, to_end in found if is_forward else found[::-1]:
            near, far = (from_start, to_end) if is_forward else (to_end, from_start)
            stops.append(Stop(edge, notch, _sum([before, near]), _sum([far, after])))
    edges = tuple(edge for edge, _ in walk)
    return Side(edges, tuple(stops), all(_is_true(c, edge) for edge in edges))


def _sum(lengths: Sequence[float | None]) -> float | None:
    known = [length for length in lengths if length is not None]
    return sum(known) if len(known) == len(lengths) else None


def _is_true(c: Construction, edge: WholeEdge) -> bool:
    """Whether an edge is sewn as long as it was cut: neither taken in nor a knit."""
    piece = c.garment.piece[edge.piece]
    name = piece.edges[edge.place].name
    fabric = c.garment.fabric.get(piece.fabric or "")
    if fabric is not None and fabric.kind == "knit":
        return False
    if any(item.on == name for item in (*piece.darts, *piece.pleats)):
        return False
    return not any(
        _whole(c, segment)[0] == edge for op in c.acting(*_RESHAPED) for segment in op.segments
    )


# -- what meets ------------------------------------------------------------------------------


def _met(entry: Entry, one: Side, other: Side) -> Meeting:
    allowed = TOLERANCE + (float(entry.ease.mm) if entry.ease else 0.0)
    limit = allowed if one.is_true and other.is_true else None
    pairs = _aligned(one.stops, other.stops, limit)
    met = {stop for pair in pairs for stop in pair}
    alone = (stop for side in (one, other) for stop in side.stops)
    return Meeting(
        one, other, pairs, tuple(stop for stop in alone if stop.notch and stop not in met)
    )


def _aligned(
    one: Sequence[Stop], other: Sequence[Stop], limit: float | None
) -> tuple[tuple[Stop, Stop], ...]:
    """Lay two rows of stops one against the other so that as many notches as can be meet."""
    worth: dict[tuple[int, int], int] = {}
    for i in range(len(one), -1, -1):
        for j in range(len(other), -1, -1):
            ways = [0]
            if i < len(one):
                ways.append(worth[i + 1, j])
            if j < len(other):
                ways.append(worth[i, j + 1])
            if i < len(one) and j < len(other):
                value = _worth(one[i], other[j], limit)
                ways.append(worth[i + 1, j + 1] + value if value else 0)
            worth[i, j] = max(ways)
    pairs: list[tuple[Stop, Stop]] = []
    i = j = 0
    while i < len(one) and j < len(other):
        value = _worth(one[i], other[j], limit)
        if value and worth[i, j] == worth[i + 1, j + 1] + value:
            pairs.append((one[i], other[j]))
            i, j = i + 1, j + 1
        elif worth[i, j] == worth[i + 1, j]:
            i += 1
        else:
            j += 1
    return tuple(pairs)


def _worth(one: Stop, other: Stop, limit: float | None) -> int:
    """How many notches find what they meet if two stops meet; none where they do not."""
    if one.notch is not None and other.notch is not None and one.notch.marks != other.notch.marks:
        return 0
    gap = apart(one, other)
    if limit is not None and gap is not None and gap > limit:
        return 0
    return (one.notch is not None) + (other.notch is not None)


def apart(one: Stop, other: Stop) -> float | None:
    """How far apart two stops lie in millimetres, measured from the end of which both are known."""
    if one.before is not None and other.before is not None:
        found = abs(one.before - other.before)
        if one.after is not None and other.after is not None:
            # Sides that differ in length are told elsewhere.
            found = min(found, abs(one.after - other.after))
        return found
    if one.after is not None and other.after is not None:
        return abs(one.after - other.after)
    return None
