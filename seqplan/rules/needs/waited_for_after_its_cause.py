"""What is waited for has begun: cloth is wet before it dries, and out before it comes back.

Why
---
A wait before the bath dries nothing.

Fires
-----
`dye` (`wet: yes`) before `{wait: 12 hours, on: tape, to: dry}`; `{send out: front}` before
`{wait: 48 hours, on: front, to: come back}`; `{pretreat: linen}` before a wait `to: dry` for pieces
of linen.

Stays quiet
-----------
The wait has another purpose, or there are several waits for the same pieces: then your `after:`
says which goes with which. What has to set is named there, too.

Sources
-------
Follows from what the operations make.
"""

from collections.abc import Iterator

from seqplan.base.ids import PieceId, RuleSlug
from seqplan.base.strength import Strength
from seqplan.graph.reason import Reason, ReasonKind
from seqplan.model.entry import Purpose
from seqplan.model.operation import Action, Operation
from seqplan.recipes.construction import Construction
from seqplan.rules.rule import Rule, arc


def _derive(c: Construction) -> Iterator[Reason]:
    for purpose, causes in _CAUSES.items():
        waits = [op for op in c.acting(Action.WAIT) if c.entry(op).purpose is purpose]
        for cause in c.acting(*causes):
            pieces = _begun(c, cause, purpose)
            mine = [wait for wait in waits if pieces and (not wait.pieces or wait.pieces & pieces)]
            if len(mine) == 1:
                yield arc(RULE, cause, mine[0])


_CAUSES = {
    Purpose.DRY: (Action.DO, Action.SEND_OUT, Action.PRETREAT),
    Purpose.COME_BACK: (Action.SEND_OUT,),
}


def _begun(c: Construction, cause: Operation, purpose: Purpose) -> frozenset[PieceId]:
    """The pieces that it makes wet, or sends out."""
    entry = c.entry(cause)
    if purpose is Purpose.DRY and cause.action is Action.PRETREAT:
        cloths = set(entry.fabrics)
        return frozenset(piece.id for piece in c.garment.pieces if piece.fabric in cloths)
    is_cause = entry.is_wet if purpose is Purpose.DRY else True
    return cause.pieces if is_cause else frozenset()


RULE = Rule(
    RuleSlug("waited-for-after-its-cause"),
    Strength.MUST,
    _derive,
    __doc__ or "",
    kind=ReasonKind.NEEDS,
)
