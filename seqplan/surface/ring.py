"""The rings of edges round cut pieces, and the corners where two edges meet.

Every walk over the garment rests on one step: from the end of an edge, across the corner, to the
end of the edge next to it on the same piece of cloth. A piece cut on the fold is one ring of two
halves that meet at the top and the bottom of the fold.
"""

from collections.abc import Iterable, Mapping, Sequence
from itertools import pairwise
from typing import NamedTuple

from seqplan.base.ids import PieceId
from seqplan.model.piece import Cut, Half, Piece, Segment


class EdgeEnd(NamedTuple):
    """One end of a cut edge; ``at_end`` tells the end from the start, in the listed direction."""

    segment: Segment
    at_end: bool

    @property
    def opposite(self) -> "EdgeEnd":
        """The other end of the same edge."""
        return EdgeEnd(self.segment, not self.at_end)


class Corner(NamedTuple):
    """Where an edge end meets its neighbour; ``is_straight`` at a mark or a fold."""

    neighbour: EdgeEnd
    is_straight: bool


class Rings:
    """The rings of all cut copies of some pieces.

    Parameters
    ----------
    pieces
        The pieces; those without edges have no ring and take no part.
    """

    def __init__(self, pieces: Iterable[Piece]) -> None:
        self.pieces: Mapping[PieceId, Piece] = {piece.id: piece for piece in pieces}
        self._corners: dict[EdgeEnd, Corner] = {}
        self._discs: dict[Segment, tuple[PieceId, int]] = {}
        self._on: dict[tuple[PieceId, int], list[Segment]] = {}
        for piece in self.pieces.values():
            for copy, half in piece.halves():
                self._add_half(piece, copy, half)

    @property
    def segments(self) -> tuple[Segment, ...]:
        """Every cut edge, in the order of the pieces."""
        return tuple(self._discs)

    @property
    def discs(self) -> Iterable[tuple[PieceId, int]]:
        """Every cut copy that has edges, in the order of the pieces."""
        return self._on

    def name(self, segment: Segment) -> str:
        """The name of the edge."""
        return self.pieces[segment.piece].edges[segment.place].name

    def is_slit(self, segment: Segment) -> bool:
        """Whether the edge is one side of a slit."""
        return self.pieces[segment.piece].edges[segment.place].is_slit

    def disc(self, segment: Segment) -> tuple[PieceId, int]:
        """The cut copy of cloth that the edge belongs to; both halves of a fold are one."""
        return self._discs[segment]

    def on(self, disc: tuple[PieceId, int]) -> Sequence[Segment]:
        """The cut edges round one cut copy of cloth."""
        return self._on[disc]

    def across(self, end: EdgeEnd) -> Corner:
        """The corner at this end of an edge."""
        return self._corners[end]

    def _add_half(self, piece: Piece, copy: int, half: Half) -> None:
        segments = [Segment(piece.id, copy, half.value, i) for i in range(len(piece.edges))]
        for segment in segments:
            self._discs[segment] = (piece.id, copy)
            self._on.setdefault((piece.id, copy), []).append(segment)
        for left, right in pairwise(segments):
            self._meet(EdgeEnd(left, True), EdgeEnd(right, False), piece.edges[right.place].at_mark)
        if not segments:
            return
        if piece.cut is not Cut.FOLD:
            first_at_mark = piece.edges[0].at_mark
            self._meet(EdgeEnd(segments[-1], True), EdgeEnd(segments[0], False), first_at_mark)
        elif half is Half.MIRRORED:
            # The two halves of a fold meet where the fold begins and where it ends.
            twin = [Segment(s.piece, copy, Half.DESCRIBED.value, s.place) for s in segments]
            self._meet(EdgeEnd(twin[0], False), EdgeEnd(segments[0], False), True)
            self._meet(EdgeEnd(twin[-1], True), EdgeEnd(segments[-1], True), True)

    def _meet(self, one: EdgeEnd, other: EdgeEnd, is_straight: bool) -> None:
        self._corners[one] = Corner(other, is_straight)
        self._corners[other] = Corner(one, is_straight)
