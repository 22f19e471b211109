"""Parts of edges: an edge of which entries mean only a part is split at a mark.

``part: 10 from waist`` and ``stop: 10 before waist`` cut the edge 10 cm from where it meets
``waist``. After the split every walk deals in whole edges again, and the point between the parts
is a mark on a straight run.
"""

from collections.abc import Iterable, Iterator, Mapping, Sequence
from fractions import Fraction
from typing import NamedTuple

from seqplan.model.entry import Portion
from seqplan.model.piece import Cut, Edge, Piece


class _Cut(NamedTuple):
    """Where an edge is split: so many mm from its start, or from its end."""

    from_end: bool
    mm: Fraction


Portions = Mapping[str, Iterable[Portion]]
"""For each edge name, the portions that entries name."""


class SplitPiece:
    """A piece with its edges split at portions.

    Parameters
    ----------
    piece
        The piece as described.
    portions
        For each edge name, the portions that entries name.
        Each must be clear on every edge of that name, see ``is_clear``.
    parts
        For edges that lie along a run of several: into how many parts each is split.
    """

    def __init__(
        self, piece: Piece, portions: Portions, parts: Mapping[str, int] | None = None
    ) -> None:
        edges: list[Edge] = []
        self._parts: dict[int, list[int]] = {}
        self._cuts: dict[int, list[_Cut]] = {}
        self._origin = piece
        for index, edge in enumerate(piece.edges):
            wanted = {self._cut(index, portion) for portion in portions.get(edge.name, ())}
            from_start = sorted(cut for cut in wanted if not cut.from_end)
            from_end = sorted((cut for cut in wanted if cut.from_end), reverse=True)
            self._cuts[index] = [*from_start, *from_end]
            more = len(wanted) or (parts or {}).get(edge.name, 1) - 1
            self._parts[index] = list(range(len(edges), len(edges) + more + 1))
            edges.append(edge)
            edges.extend(edge._replace(at_mark=True) for _ in range(more))
        self.piece = piece._replace(edges=tuple(edges))

    def indices(self, name: str, portion: Portion | None = None) -> frozenset[int]:
        """Give the edges of the split piece that ``name`` means, or the portion of it.

        An edge that does not meet the portion's neighbour is meant whole.
        """
        found: set[int] = set()
        for index, edge in enumerate(self._origin.edges):
            if edge.name != name:
                continue
            parts = self._parts[index]
            if portion is not None and is_clear(self._origin, name, portion):
                cut = self._cut(index, portion)
                place = self._cuts[index].index(cut) + 1
                near, far = parts[:place], parts[place:]
                if cut.from_end:
                    near, far = far, near
                parts = near if portion.is_named_part else far
            found.update(parts)
        return frozenset(found)

    def _cut(self, index: int, portion: Portion) -> _Cut:
        from_end = _is_measured_from_end(self._origin, index, portion.neighbour)
        return _Cut(bool(from_end), portion.length.mm)


def is_clear(piece: Piece, name: str, portion: Portion) -> bool:
    """Whether every edge called ``name`` meets the portion's neighbour at exactly one end."""
    return all(
        _is_measured_from_end(piece, index, portion.neighbour) is not None
        for index, edge in enumerate(piece.edges)
        if edge.name == name
    )


def is_beside(piece: Piece, name: str, portion: Portion) -> bool:
    """Whether any edge called ``name`` meets the portion's neighbour, at whichever end."""
    return any(
        any(_meets(piece, index, portion.neighbour))
        for index, edge in enumerate(piece.edges)
        if edge.name == name
    )


def _is_measured_from_end(piece: Piece, index: int, neighbour: str) -> bool | None:
    """Tell at which end an edge meets its neighbour; ``None`` at neither or at both."""
    at_start, at_end = _meets(piece, index, neighbour)
    return at_end if at_start != at_end else None


def _meets(piece: Piece, index: int, neighbour: str) -> tuple[bool, bool]:
    """Whether an edge meets its neighbour at its start, and at its end."""
    edges = piece.edges
    is_fold = piece.cut is Cut.FOLD
    at_start = not (is_fold and index == 0) and edges[index - 1].name == neighbour
    is_last = index + 1 == len(edges)
    at_end = not (is_fold and is_last) and edges[(index + 1) % len(edges)].name == neighbour
    return at_start, at_end


def part_counts(whole: Sequence[Edge], split: Sequence[Edge]) -> Iterator[int]:
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
