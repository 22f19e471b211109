"""Wet or dry: water takes folds out, and damp cloth is neither cut, sewn nor fused."""

from collections.abc import Iterator
from typing import Final

from seqplan.base.ids import OpId, PieceId
from seqplan.model.entry import Purpose
from seqplan.model.operation import Action, Operation
from seqplan.recipes.construction import Construction
from seqplan.recipes.waiting import begun, concerns
from seqplan.rehearse.states.state import Done, waits_for
from seqplan.rehearse.trouble import Trouble

FOLDS: Final = frozenset({Action.FOLD, Action.FOLD_BAND, Action.TURN_UP, Action.PRESS_UNDER})
"""What comes out in the water. Marks may, but those of thread stay: of these a rule speaks."""

BY_FOLDS: Final = frozenset(
    {
        Action.HEM,
        Action.CASE,
        Action.SET_ON,
        Action.WRAP,
        Action.CLOSE_BAND,
        Action.STITCH_ON,
        Action.MAKE_STRAP,
    }
)
"""What is stitched along a fold."""

_AT_ANY_TIME: Final = FOLDS | frozenset(
    {
        Action.WAIT,
        Action.PRETREAT,
        Action.SEND_OUT,
        Action.INSPECT,
        Action.PRESS,
        Action.TURN,
        Action.UNFOLD,
        Action.DO,
    }
)
"""What may be done to damp cloth."""


class Damp:
    """Which pieces are wet, and which folds the water has taken out.

    Cloth is wet after what the author calls ``wet``, and after it is washed. It has to be dry for
    what comes next only where the author waits for it (``wait: 12 hours, to: dry``).

    Parameters
    ----------
    c
        The garment.
    done
        What is done.
    """

    def __init__(self, c: Construction, done: Done) -> None:
        self.pieces: dict[PieceId, OpId] = {}
        """The wet pieces, each with what has made it wet."""
        self.lost: dict[OpId, OpId] = {}
        """Folds that have come out, each with what took it out."""
        self._c = c
        self._waits = waits_for(c, Purpose.DRY)
        self._done = done

    def hinders(self, op: Operation) -> Iterator[Trouble]:
        """A fold that has come out is no fold; and damp cloth stretches under the foot."""
        for fold, wet in self.lost.items():
            if uses_fold(self._c.op[fold], op):
                yield Trouble(op.id, "washed-out", blame=wet)
                return
        if not self.pieces or op.action in _AT_ANY_TIME:
            return
        wet_by = next((by for piece, by in self.pieces.items() if piece in op.pieces), None)
        for wait, causes in self._waits.items():
            if wait.id not in self._done and any(cause.id == wet_by for cause in causes):
                yield Trouble(op.id, "still-wet", blame=wet_by, missing=wait.id)
                return

    def do(self, op: Operation) -> None:
        """Wet some pieces, let them dry, or fold anew what has come out."""
        entry = self._c.entry(op)
        if entry.is_wet:
            self.pieces.update(dict.fromkeys(sorted(op.pieces), op.id))
            self.lost.update((fold, op.id) for fold in self._folds_in(op))
        elif op.action is Action.PRETREAT:
            self.pieces.update(dict.fromkeys(sorted(begun(self._c, op)), op.id))
        elif op.action is Action.WAIT:
            for piece in [piece for piece in self.pieces if concerns(op, [piece])]:
                del self.pieces[piece]
        elif op.action in FOLDS and self.lost:
            for fold in [fold for fold in self.lost if folds_again(self._c.op[fold], op)]:
                del self.lost[fold]

    def _folds_in(self, wet: Operation) -> Iterator[OpId]:
        """What is folded on what gets wet."""
        for fold in self._c.on_pieces(wet.pieces, *FOLDS):
            if fold.id in self._done:
                yield fold.id


def uses_fold(fold: Operation, op: Operation) -> bool:
    """Whether an operation is done along a fold, or by marks, that another has made.

    A crease by an entry of its own serves what is done to the same edge, the folds of a recipe
    serve that recipe.
    """
    is_there = fold.action is Action.FOLD and not set(fold.segments).isdisjoint(op.segments)
    return op.action in BY_FOLDS and (is_there or op.entry == fold.entry)


def folds_again(fold: Operation, op: Operation) -> bool:
    """Whether an operation makes the fold of another anew."""
    return set(fold.segments) <= set(op.segments) and fold.pieces <= op.pieces
