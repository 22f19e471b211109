"""Where the edges of a piece lie, each split as the operations split it, as straight lines."""

from collections.abc import Iterator, Mapping, Sequence
from itertools import pairwise
from typing import Final

from seqplan.model.piece import Edge, Piece
from seqplan.recipes.construction import Construction
from seqplan.shape.curve import flattened
from seqplan.shape.outline import Laid, edge_length, lay
from seqplan.shape.sketch import sketch
from seqplan.surface.portion import is_clear, part_counts

Points = tuple[complex, ...]
"""The corners of straight lines that stand for an edge."""

_PART: Final = 0.25
"""What a part takes of an edge of which nobody knows the length."""
_SLIT: Final = 0.3
"""How deep a slit goes, in parts of the size of its piece."""
_FLATNESS: Final = 0.3
"""Millimetres that straight lines may lie off an edge."""


def laid_out(piece: Piece) -> Laid:
    """The piece in its shape, or as a sketch where it tells none."""
    return lay(piece) or sketch(piece)


def whole_edges(laid: Laid) -> tuple[Points, ...]:
    """The line of every edge of the list; none of those of a slit."""
    return tuple(flattened(path, _FLATNESS) if path else () for path in laid.edges)


def ring_of(lines: Sequence[Points], *, is_fold: bool) -> Points:
    """The corners of an outline all round; of a fold, of both halves."""
    points = [point for line in lines for point in line[:-1]]
    if not is_fold:
        return tuple(points)
    points.append(next(line for line in reversed(lines) if line)[-1])
    axis = points[0].real
    mirrored = [complex(2 * axis - point.real, point.imag) for point in reversed(points)]
    return (*points, *mirrored[1:-1])


def split_edges(
    c: Construction, piece: Piece, lines: Sequence[Points], *, is_fold: bool
) -> Mapping[int, Points]:
    """The line of every edge, by its place among the edges as the operations split them."""
    split = c.rings.pieces[piece.id].edges
    found: dict[int, Points] = {}
    place = 0
    for index, count in enumerate(part_counts(piece.edges, split)):
        line = lines[index]
        for part in _parts(line, _marks(c, piece, index, count)) if line else ():
            found[place] = part
            place += 1
        place += 0 if line else count
    return found | dict(_slits(split, found, ring_of(lines, is_fold=is_fold), is_fold=is_fold))


def _marks(c: Construction, piece: Piece, index: int, count: int) -> list[float]:
    """Where an edge is split, in parts of its length from its start."""
    name = piece.edges[index].name
    names = [edge.name for edge in piece.edges]
    whole = edge_length(piece, name) if names.count(name) == 1 else None
    following = names[(index + 1) % len(names)]
    found: set[float] = set()
    for entry in c.garment.entries:
        portion = entry.portion
        named = {(ref.piece, ref.edge) for ref in (*entry.run, *entry.to)}
        if portion is None or (piece.id, name) not in named:
            continue
        if is_clear(piece, name, portion):
            share = float(portion.length.mm) / whole if whole else _PART
            share = min(max(share, 0.05), 0.95)
            found.add(1 - share if portion.neighbour == following else share)
    marks = sorted(found)
    even = [number / count for number in range(1, count)]
    return marks if len(marks) == count - 1 else even


def _parts(line: Points, marks: Sequence[float]) -> Iterator[Points]:
    """A line cut at some shares of its length."""
    lengths = [abs(other - one) for one, other in pairwise(line)]
    total, run, place = sum(lengths), 0.0, 0
    points = [line[0]]
    for mark in marks:
        while run + lengths[place] < total * mark and place < len(lengths) - 1:
            run += lengths[place]
            place += 1
            points.append(line[place])
        one, other = line[place], line[place + 1]
        at = one + (other - one) * (total * mark - run) / (lengths[place] or 1.0)
        yield (*points, at)
        points = [at]
    yield (*points, *line[place + 1 :])


def _slits(
    split: Sequence[Edge], lines: Mapping[int, Points], ring: Points, *, is_fold: bool
) -> Iterator[tuple[int, Points]]:
    """A line into the cloth for each slit, both of its edges on it; along the fold at a fold."""
    if not any(edge.is_slit for edge in split):
        return
    tall = max(p.imag for p in ring) - min(p.imag for p in ring)
    wide = max(p.real for p in ring) - min(p.real for p in ring)
    deep = _SLIT * min(tall, wide)
    for place, edge in enumerate(split):
        if not edge.is_slit:
            continue
        before = next((lines[n] for n in range(place - 1, -1, -1) if n in lines), None)
        after = next((lines[n] for n in range(place + 1, len(split)) if n in lines), None)
        if before is None and after is not None:
            start, inwards = after[0], 1j
        elif after is None and before is not None and is_fold:
            start, inwards = before[-1], -1j
        elif before is not None:
            start = before[-1]
            along = start - before[-2]
            inwards = along / abs(along) * 1j
        else:
            continue
        yield place, (start, start + inwards * deep)
