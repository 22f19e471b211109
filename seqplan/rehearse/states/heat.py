"""What must not meet the iron: elastic, sequins, plastic, cloth that melts, once it is sewn on."""

from collections.abc import Iterator
from typing import Final

from seqplan.base.ids import OpId, PieceId
from seqplan.model.operation import Action, Operation
from seqplan.model.piece import Segment
from seqplan.model.station import IRON
from seqplan.recipes.construction import Construction
from seqplan.rehearse.trouble import Trouble

_SEWN_ON: Final = frozenset(
    {
        Action.SEW,
        Action.SET_ON,
        Action.SET_ZIP,
        Action.STITCH_ON,
        Action.HOLD,
        Action.ATTACH,
        Action.THREAD,
    }
)


class Heat:
    """Where something that bears no iron is sewn on.

    Parameters
    ----------
    c
        The garment.
    """

    def __init__(self, c: Construction) -> None:
        self.edges: dict[Segment, OpId] = {}
        """Edges at which it lies, each with what has put it there."""
        self.pieces: dict[PieceId, OpId] = {}
        """Pieces on which it lies, each with what has put it there."""
        self._notions = {notion.id for notion in c.garment.notions if not notion.is_ironed}
        cloths = {fabric.id for fabric in c.garment.fabrics if not fabric.is_ironed}
        self._tender = {piece.id for piece in c.garment.pieces if piece.fabric in cloths}

    def hinders(self, op: Operation) -> Iterator[Trouble]:
        """The iron stays away from where it lies; what is fused is pressed all over."""
        if op.setup.station != IRON or not self.pieces:
            return
        at_edges = [self.edges[segment] for segment in op.segments if segment in self.edges]
        all_over = op.pieces if op.action is Action.FUSE else frozenset()
        on_pieces = [self.pieces[piece] for piece in sorted(all_over) if piece in self.pieces]
        found = [*at_edges, *on_pieces]
        if found:
            yield Trouble(op.id, "bears-no-iron", blame=found[0])

    def do(self, op: Operation) -> None:
        """Sew something on."""
        if op.action not in _SEWN_ON:
            return
        if self._notions & set(op.notions) or (self._tender & op.pieces):
            for segment in op.segments:
                self.edges.setdefault(segment, op.id)
            for piece in sorted(op.pieces):
                self.pieces.setdefault(piece, op.id)
