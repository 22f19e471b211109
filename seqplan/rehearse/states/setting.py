"""What must lie still: glue, paint or resist that has to set before the piece is handled."""

from collections.abc import Iterator

from seqplan.base.ids import OpId, PieceId
from seqplan.model.entry import Purpose
from seqplan.model.operation import Action, Operation
from seqplan.recipes.construction import Construction
from seqplan.recipes.waiting import concerns
from seqplan.rehearse.states.state import Done, waits_for
from seqplan.rehearse.trouble import Trouble

_LEAVES_ALONE = frozenset({Action.WAIT, Action.INSPECT})


class Setting:
    """What is still setting.

    A wait ``to: set`` is for what stands in its ``after:``, the gluing or painting.

    Parameters
    ----------
    c
        The garment.
    done
        What is done.
    """

    def __init__(self, c: Construction, done: Done) -> None:
        self._waits = waits_for(c, Purpose.SET)
        self._done = done

    @property
    def pieces(self) -> dict[PieceId, OpId]:
        """The pieces that must not be handled, each with what has to set."""
        return {
            piece: cause.id
            for wait, causes in self._waits.items()
            for cause in causes
            if self._is_setting(wait, cause)
            for piece in sorted(wait.pieces or cause.pieces)
        }

    def hinders(self, op: Operation) -> Iterator[Trouble]:
        """What is setting is left alone."""
        if op.action in _LEAVES_ALONE:
            return
        for wait, causes in self._waits.items():
            mine = [cause for cause in causes if self._is_setting(wait, cause)]
            if mine and concerns(wait, op.pieces) and op not in causes:
                yield Trouble(op.id, "still-setting", blame=mine[-1].id, missing=wait.id)
                return

    def do(self, op: Operation) -> None:
        """Nothing but what is done is kept."""

    def _is_setting(self, wait: Operation, cause: Operation) -> bool:
        return cause.id in self._done and wait.id not in self._done
