"""What is looked over on the way is sewn, and not yet trimmed, clipped, slashed or felled.

Why
---
A sleeve that is in wrong side out can be sewn anew as long as its allowances are there.

Fires
-----
Of `{inspect: sleeve}`, `armholes` and `{trim: sleeve.cap}`: `armholes` before the inspection, and
that before `trim`.

Stays quiet
-----------
Everything is inspected, which comes last; the seam is turned, as a collar's; no piece of it is one
of a pair, and nothing is slashed; or the trimming is a part of a kind of seam, of which the check
says that it leaves no time to look.

Sources
-------
Common practice; two makers who saw that a sleeve, and a pocket, was the wrong way round when it was
felled and trimmed.
"""

from collections.abc import Iterator

from seqplan.base.ids import RuleSlug
from seqplan.base.strength import Strength
from seqplan.graph.reason import Reason
from seqplan.model.entry import SeamKind
from seqplan.model.operation import Action, Operation
from seqplan.model.piece import Cut
from seqplan.recipes.construction import Construction
from seqplan.rules.rule import Rule, arc


def _derive(c: Construction) -> Iterator[Reason]:
    everything = frozenset(c.garment.piece)
    for look in c.acting(Action.INSPECT):
        if look.pieces >= everything:
            continue
        for op in c.on_pieces(look.pieces, *_CUTTING_INTO):
            seams = [c.main(id_) for id_ in c.seams_at(op.segments)]
            if op.part or not (op.action is Action.SLASH or _has_sides(c, op, seams)):
                continue
            yield arc(RULE, look, op)
            for seam in seams:
                yield arc(RULE, seam, look, key="because-sewn-before-looked-at")


_CUTTING_INTO = (Action.TRIM, Action.GRADE, Action.CLIP, Action.SLASH)


def _has_sides(c: Construction, op: Operation, seams: list[Operation]) -> bool:
    """Whether left and right can be confused in a seam that is not turned."""
    is_of_pair = any(c.garment.piece[piece].cut is Cut.PAIR for piece in op.pieces)
    kinds = {c.entry(seam).seam for seam in seams}
    return is_of_pair and bool(seams) and not {SeamKind.ENCLOSED, SeamKind.FACED} & kinds


RULE = Rule(
    RuleSlug("looked-at-before-cut-into"), Strength.SHOULD, _derive, __doc__ or "", numbers=(62,)
)
