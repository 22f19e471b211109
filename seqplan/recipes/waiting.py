"""What a wait is for: which operations made something wet, sent it out, or have to set."""

from collections.abc import Iterable, Iterator

from seqplan.base.ids import PieceId
from seqplan.model.entry import Purpose
from seqplan.model.operation import Action, Operation
from seqplan.recipes.construction import Construction


def causes_of(c: Construction, wait: Operation) -> tuple[Operation, ...]:
    """What one waits for, as far as the file says.

    What has to set stands in the wait's ``after:``. What dries, or comes back, is what makes its
    pieces wet, or sends them out; where several do that to the same piece, ``after:`` has to say
    which of them is meant, and without it none is.
    """
    entry = c.entry(wait)
    named = [op for op in c.operations if entry.after and {op.id, op.entry} & set(entry.after)]
    if entry.purpose is Purpose.SET:
        return tuple(named)
    found = [op for op in _candidates(c, entry.purpose) if concerns(wait, begun(c, op))]
    meant = [op for op in found if op in named]
    if meant:
        return tuple(meant)
    return tuple(found) if _are_apart(begun(c, op) for op in found) else ()


def concerns(wait: Operation, pieces: Iterable[PieceId]) -> bool:
    """Whether one waits for some of these pieces; a bare wait is for everything."""
    return not wait.pieces or not wait.pieces.isdisjoint(pieces)


def begun(c: Construction, op: Operation) -> frozenset[PieceId]:
    """The pieces that an operation makes wet, or sends out: its own, or those of the cloth."""
    if op.action is not Action.PRETREAT:
        return op.pieces
    cloths = set(c.entry(op).fabrics)
    return frozenset(piece.id for piece in c.garment.pieces if piece.fabric in cloths)


def _candidates(c: Construction, purpose: Purpose | None) -> Iterator[Operation]:
    if purpose is Purpose.COME_BACK:
        yield from c.acting(Action.SEND_OUT)
    elif purpose is Purpose.DRY:
        wet = [op for op in c.acting(Action.DO, Action.SEND_OUT) if c.entry(op).is_wet]
        yield from wet or c.acting(Action.PRETREAT)


def _are_apart(groups: Iterable[frozenset[PieceId]]) -> bool:
    """Whether no piece is in two groups."""
    seen: set[PieceId] = set()
    for pieces in groups:
        if not seen.isdisjoint(pieces):
            return False
        seen |= pieces
    return True
