"""What is out of the house: sent out to be printed or pleated, and not back yet."""

from collections.abc import Iterator

from seqplan.base.ids import OpId, PieceId
from seqplan.model.entry import Purpose
from seqplan.model.operation import Action, Operation
from seqplan.recipes.construction import Construction
from seqplan.recipes.waiting import concerns
from seqplan.rehearse.states.state import Done, waits_for
from seqplan.rehearse.trouble import Trouble


class Away:
    """Which pieces are out of the house.

    Only where the author waits for them (``wait: 48 hours, on: front, to: come back``) a piece is
    away until then; without, sending out is one step, after which everything is back.

    Parameters
    ----------
    c
        The garment.
    done
        What is done.
    """

    def __init__(self, c: Construction, done: Done) -> None:
        self.pieces: dict[PieceId, OpId] = {}
        """The pieces that are away, each with what sent it out."""
        self._waits = waits_for(c, Purpose.COME_BACK)
        self._done = done

    def hinders(self, op: Operation) -> Iterator[Trouble]:
        """What is away cannot be worked on."""
        if not self.pieces or op in self._waits:
            return
        sent = next((by for piece, by in self.pieces.items() if piece in op.pieces), None)
        wait = self._wait(sent) if sent is not None else None
        if wait is not None:
            yield Trouble(op.id, "away", blame=sent, missing=wait.id)

    def do(self, op: Operation) -> None:
        """Send pieces out, or have them back."""
        if op.action is Action.SEND_OUT and self._wait(op.id) is not None:
            self.pieces.update(dict.fromkeys(sorted(op.pieces), op.id))
        elif op in self._waits:
            for piece in [piece for piece in self.pieces if concerns(op, [piece])]:
                del self.pieces[piece]

    def _wait(self, sent: OpId) -> Operation | None:
        """The wait, still to come, after which what was sent out is back."""
        for wait, causes in self._waits.items():
            if wait.id not in self._done and any(cause.id == sent for cause in causes):
                return wait
        return None
