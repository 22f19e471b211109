"""A facing is joined and its outer edge finished before it is attached.

Why
---
The facing lies flat and light in the hand, and the finish of its outer edge runs over the joins
in one go.

Fires
-----
`facing` before `facing-edge`, and `facing-edge` before `waist`, which attaches the facing.

Stays quiet
-----------
The edge that is finished belongs to the garment and not to the facing.

Sources
-------
The Unit Method of Construction (dressmaking handbook), unit 4; Facings Made Easy, Guide C-233,
New Mexico State University; Facings, aimforquality, 2021.
"""

from collections.abc import Iterator

from seqplan.base.ids import PieceId, RuleSlug
from seqplan.base.strength import Strength
from seqplan.graph.reason import Reason
from seqplan.model.entry import SeamKind
from seqplan.model.operation import Action, Operation
from seqplan.model.piece import Layer
from seqplan.recipes.construction import Construction
from seqplan.rules.rule import Rule, arc


def _derive(c: Construction) -> Iterator[Reason]:
    for shape in c.joins:
        if shape.entry.seam is not SeamKind.FACED:
            continue
        attach = c.main(shape.entry.id)
        facings = _facings(c, attach)
        joins = [op for op in c.acting(Action.SEW) if op is not attach and op.pieces <= facings]
        finishes = [op for op in c.acting(Action.FINISH, Action.HEM) if op.pieces <= facings]
        for finish in finishes:
            if finish.entry not in {join.entry for join in joins}:
                yield arc(RULE, finish, attach)
                for join in joins:
                    if finish.pieces >= join.pieces:
                        yield arc(RULE, c.of_entry[join.entry][-1], finish, key=_OVER_THE_JOINS)


_OVER_THE_JOINS = "because-facing-finished-over-its-joins"


def _facings(c: Construction, attach: Operation) -> frozenset[PieceId]:
    """The facing pieces of the garment that this seam attaches."""
    return frozenset(id_ for id_ in attach.pieces if c.garment.piece[id_].layer is Layer.FACING)


RULE = Rule(
    RuleSlug("facing-built-before-attached"), Strength.SHOULD, _derive, __doc__ or "", numbers=(10,)
)
