"""Where the edges of a piece lie on the map, each split as the operations split it."""

from collections.abc import Iterator, Mapping, Sequence

from seqplan.model.piece import Edge, Piece
from seqplan.recipes.construction import Construction
from seqplan.shape.curve import Path, cut, path_length, point_at
from seqplan.shape.outline import Laid, edge_length, lay
from seqplan.shape.sketch import sketch
from seqplan.surface.portion import is_clear

_PART = 0.25
"""What a part takes of an edge of which nobody knows the length."""

_SLIT = 0.3
"""How deep a slit goes, in parts of the size of its piece."""


def laid_out(piece: Piece) -> Laid:
    """The piece in its shape, or as a sketch where it tells none."""
    return lay(piece) or sketch(piece)


def edge_paths(c: Construction, piece: Piece) -> Mapping[int, Path]:
    """The line of every edge, by its place among the edges as the operations split them."""
    laid = laid_out(piece)
    split = c.rings.pieces[piece.id].edges
    found: dict[int, Path] = {}
    place = 0
    for index, count in enumerate(_part_counts(piece.edges, split)):
        path = laid.edges[index]
        for part in _parts(path, _marks(c, piece, index, count)) if path else ():
            found[place] = part
            place += 1
        place += 0 if path else count
    return found | dict(_slits(piece, split, found, laid))


def _part_counts(whole: Sequence[Edge], split: Sequence[Edge]) -> Iterator[int]:
    """Into how many parts each edge is split: they follow it, at marks and of the same name."""
    place = 0
    for index, edge in enumerate(whole):
        rest = len(whole) - index - 1
        count = 1
        while (
            len(split) - place - count > rest
            and split[place + count].name == edge.name
            and split[place + count].at_mark
        ):
            count += 1
        place += count
        yield count


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


def _parts(path: Path, marks: Sequence[float]) -> Iterator[Path]:
    total, done = path_length(path), 0.0
    for mark in marks:
        part, path = cut(path, total * mark - done)
        done = total * mark
        yield part
    yield path


def _slits(
    piece: Piece, split: Sequence[Edge], paths: Mapping[int, Path], laid: Laid
) -> Iterator[tuple[int, Path]]:
    """A line into the cloth for each slit, both of its edges on it; along the fold at a fold."""
    points = laid.whole()
    tall = max(p.imag for p in points) - min(p.imag for p in points)
    wide = max(p.real for p in points) - min(p.real for p in points)
    deep = _SLIT * min(tall, wide)
    for place, edge in enumerate(split):
        if not edge.is_slit:
            continue
        before = next((paths[n] for n in range(place - 1, -1, -1) if n in paths), None)
        after = next((paths[n] for n in range(place + 1, len(split)) if n in paths), None)
        if before is None and after is not None:
            start, inwards = after[0][0], 1j
        elif after is None and before is not None and laid.is_fold:
            start, inwards = before[-1][-1], -1j
        elif before is not None:
            last = before[-1]
            start = last[-1]
            along = start - point_at(last, 0.95)
            inwards = along / abs(along) * 1j
        else:
            continue
        yield place, ((start, start + inwards * deep),)
