"""The pieces that an operation works on, larger than on the map, with what it puts on them."""

from collections.abc import Collection
from typing import Final

from seqplan.base.ids import OpId, PieceId
from seqplan.draw.figure import Figure
from seqplan.draw.map import View, map_figure
from seqplan.draw.pattern import Pattern
from seqplan.draw.things import things_of
from seqplan.model.operation import Action
from seqplan.recipes.construction import Construction
from seqplan.rehearse.work import Work

_WIDTH: Final = 190.0
_LARGEST: Final = 92.0
_FEW: Final = 4
"""So many pieces stand beside one another at most; more are shown on the map."""


def face_figure(
    c: Construction, work: Work, step: Collection[OpId], pattern: Pattern | None = None
) -> Figure | None:
    """Draw what a step puts on the faces of pieces; ``None`` where it puts nothing there.

    Parameters
    ----------
    c
        The garment.
    work
        What has been done so far, the step itself included.
    step
        Its operations.
    pattern
        The pieces laid flat.
    """
    ops = [op for op in c.operations if op.id in step]
    things = tuple(dict.fromkeys(thing for op in ops for thing in things_of(c, op)))
    shown = {thing.piece for thing in things}
    shown |= {
        id_ for op in ops if op.action is Action.MARK for id_ in op.pieces if _notched(c, id_)
    }
    pieces = frozenset(id_ for id_ in shown if c.garment.piece[id_].edges)
    if not pieces:
        return None
    width = _WIDTH if len(pieces) <= _FEW else 2 * _WIDTH
    return map_figure(c, work, step, pattern, View(width, _LARGEST, pieces, things, "piece"))


def _notched(c: Construction, piece: PieceId) -> bool:
    """Whether a piece has notches, which are marked and drawn with its edges."""
    return bool(c.garment.piece[piece].notches)
