"""The walk along every seam with a tape: whether the two edges that are joined are as long."""

from collections.abc import Iterable, Iterator
from fractions import Fraction
from math import ceil
from typing import Final, NamedTuple

from seqplan.base.diagnostic import Diagnostic
from seqplan.base.measure import Length, both, format_written
from seqplan.explain.audit.audit import Found, quoted, told
from seqplan.explain.audit.ledger import Ledger
from seqplan.model.entry import Entry, Verb
from seqplan.model.operation import Action
from seqplan.model.piece import Piece, Segment
from seqplan.recipes.notches import TOLERANCE
from seqplan.recipes.shape import Shape
from seqplan.shape.outline import edge_length
from seqplan.surface.portion import is_clear

_MEASURED: Final = frozenset({Verb.SEW, Verb.BAND})
"""Joins of edges that have to fit; bindings and plackets are cut to length on the garment."""

_TAKEN_UP: Final = (Action.DART, Action.PLEAT)


class _Edge(NamedTuple):
    """An edge of one cut copy, whatever parts it has been split into."""

    piece: str
    copy: int
    half: str
    name: str

    def __str__(self) -> str:
        return f"{self.piece}.{self.name}"


class _Side(NamedTuple):
    """The edges on one side of a seam that lie on the same stretch of the other side."""

    edges: tuple[_Edge, ...]
    length: float
    is_gathered: bool
    is_band: bool

    @property
    def names(self) -> str:
        return quoted(self.edges)


def lengths_differ(ledger: Ledger) -> Found:
    """Two edges that are sewn together are as long as each other, or the longer one is eased in.

    Lengths are those of the stitching line, from the `shape:` of a piece or its `lengths:`, less
    what darts and pleats take up. Where one long edge meets several, these count together. Edges
    that differ by less than 3 mm (an eighth of an inch) agree, and so do those that differ by no
    more than the `ease:` of the seam. A gathered edge and a band may be longer.

    Stays quiet where a length is not known, such as that of an edge with a dart of which nobody
    says the `intake:`, where both edges are gathered, and of knits, which are stretched to fit.
    """
    for shape in ledger.c.joins:
        if shape.entry.verb in _MEASURED:
            # Both halves of a garment tell the same.
            found: dict[frozenset[str], tuple[_Side, _Side]] = {}
            for one, other in _walk(ledger, shape):
                found.setdefault(frozenset(map(str, (*one.edges, *other.edges))), (one, other))
            for one, other in found.values():
                if not _agree(one, other, shape.entry):
                    yield _differ(ledger, shape.entry, one, other)


def _agree(one: _Side, other: _Side, entry: Entry) -> bool:
    """Whether two sides fit, as far as anybody can say."""
    if one.is_gathered and other.is_gathered:
        return True
    allowed = TOLERANCE + (float(entry.ease.mm) if entry.ease else 0.0)
    longer, shorter = sorted((one, other), key=lambda side: side.length, reverse=True)
    if longer.is_gathered or longer.is_band:
        return True
    return longer.length - shorter.length <= allowed


def _differ(ledger: Ledger, entry: Entry, one: _Side, other: _Side) -> Diagnostic:
    unit = "in" if ledger.c.garment.units == "in" else "cm"
    difference = abs(one.length - other.length)
    words = "check-lengths-differ-fix"
    shorter = min(one, other, key=lambda side: side.length)
    if shorter.is_gathered:
        words = "check-gathered-shorter-fix"
    elif shorter.is_band:
        words = "check-band-shorter-fix"
    return told(
        "lengths-differ",
        entry.path,
        fix=words,
        entry=entry.id,
        one=one.names,
        other=other.names,
        long=_measure(one.length, unit),
        short=_measure(other.length, unit),
        difference=_measure(difference, unit),
        ease=format_written(Length(Fraction(ceil(difference)))),
        shorter=shorter.names,
    )


def _measure(mm: float, unit: str) -> str:
    return both(Length(Fraction(round(mm)), unit))


def _walk(ledger: Ledger, shape: Shape) -> Iterator[tuple[_Side, _Side]]:
    """The pairs of sides that lie on each other, where both lengths are known."""
    used: dict[_Edge, dict[Segment, None]] = {}
    mates: dict[_Edge, dict[_Edge, None]] = {}
    for glue in shape.glues:
        ends = [_edge_of(ledger, segment) for segment in (glue.first, glue.second)]
        for edge, mate, segment in zip(ends, ends[::-1], (glue.first, glue.second), strict=True):
            used.setdefault(edge, {})[segment] = None
            mates.setdefault(edge, {})[mate] = None
    left = dict.fromkeys(mates)
    while left:
        sides = _two_sides(next(iter(left)), mates)
        for edge in (*sides[0], *sides[1]):
            left.pop(edge, None)
        one, other = (_side(ledger, shape, edges, used) for edges in sides)
        if one is not None and other is not None and not set(sides[0]) & set(sides[1]):
            yield one, other


def _two_sides(
    start: _Edge, mates: dict[_Edge, dict[_Edge, None]]
) -> tuple[tuple[_Edge, ...], tuple[_Edge, ...]]:
    """The edges that hang together with one at a seam: those on its side, and the others."""
    sides: tuple[dict[_Edge, None], dict[_Edge, None]] = ({start: None}, {})
    waiting = [(start, 0)]
    for edge, side in waiting:
        for mate in mates[edge]:
            if mate not in sides[1 - side]:
                sides[1 - side][mate] = None
                waiting.append((mate, 1 - side))
    return tuple(sides[0]), tuple(sides[1])


def _edge_of(ledger: Ledger, segment: Segment) -> _Edge:
    return _Edge(segment.piece, segment.copy, segment.half, ledger.c.rings.name(segment))


def _side(
    ledger: Ledger, shape: Shape, edges: Iterable[_Edge], used: dict[_Edge, dict[Segment, None]]
) -> _Side | None:
    """The edges of one side with their length, if it is known."""
    total, found = 0.0, tuple(edges)
    segments = [segment for edge in found for segment in used[edge]]
    for edge in found:
        length = _length(ledger, shape.entry, edge, used[edge])
        if length is None:
            return None
        total += length
    partners = set(shape.entry.partners)
    return _Side(
        found,
        total,
        is_gathered=any(ledger.has(segment, Action.GATHER) for segment in segments),
        is_band=shape.entry.verb is Verb.BAND and any(edge.piece in partners for edge in found),
    )


def _length(ledger: Ledger, entry: Entry, edge: _Edge, used: dict[Segment, None]) -> float | None:
    """How long an edge is in a seam, along the stitching line, without darts and pleats."""
    segment = next(iter(used))
    piece = ledger.c.garment.piece[segment.piece]
    fabric = ledger.c.garment.fabric.get(piece.fabric or "")
    whole = edge_length(piece, edge.name)
    if whole is None or (fabric is not None and fabric.kind == "knit"):
        return None
    taken = _taken_up(ledger, piece, edge.name, used)
    if taken is None:
        return None
    portion = entry.portion
    if portion is not None and is_clear(piece, edge.name, portion):
        part = float(portion.length.mm)
        is_one = sum(other.name == edge.name for other in piece.edges) == 1
        known = part if portion.is_named_part else whole - part
        return known if is_one and not taken else None
    parts = ledger.c.rings.pieces[piece.id].edges
    every = sum(other.name == edge.name for other in parts)
    return whole - taken if len(used) == every else None


def _taken_up(ledger: Ledger, piece: Piece, name: str, segments: Iterable[Segment]) -> float | None:
    """How much darts and pleats take out of an edge; ``None`` where nobody says how much."""
    fullness = [item for item in (*piece.darts, *piece.pleats) if item.on == name]
    if any(item.intake is None for item in fullness):
        return None
    if not fullness and any(ledger.has(segment, *_TAKEN_UP) for segment in segments):
        return None
    return sum(float(item.intake.mm) * item.number for item in fullness if item.intake)
