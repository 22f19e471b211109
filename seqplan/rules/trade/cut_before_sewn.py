"""Cloth is washed before it is cut, and cut and marked before it is sewn.

Why
---
Later shrinkage cannot be evened out and puckers the seams; marks cannot be found again once the
piece has a shape.

Fires
-----
`{pretreat: all}` before `{cut: all}`, that before `{mark: front}`, and that before everything
that is done to `front`.

Stays quiet
-----------
The file has no operation that washes, cuts or marks.

Sources
-------
Preparing fabric, Threads; Clothing and textiles leaflet 004, University of Kentucky Extension
(lining preshrunk before cutting); Apparel: Design, Textiles & Construction, Goodheart-Willcox,
2012, p. 465 (marks).
"""

from collections.abc import Iterator

from seqplan.base.ids import RuleSlug
from seqplan.base.strength import Strength
from seqplan.graph.reason import Reason
from seqplan.model.operation import Action
from seqplan.recipes.construction import Construction
from seqplan.rules.rule import Rule, arc


def _derive(c: Construction) -> Iterator[Reason]:
    cuts, marks = c.acting(Action.CUT), c.acting(Action.MARK)
    for wash in c.acting(Action.PRETREAT):
        fabrics = set(c.entry(wash).fabrics)
        for op in c.operations:
            is_of_it = {c.garment.piece[id_].fabric for id_ in op.pieces} & fabrics
            is_fused = c.entry(op).fabric in fabrics
            if op.action is not Action.PRETREAT and (is_of_it or is_fused):
                yield arc(RULE, wash, op, key="because-washed-before-cut")
    for early in (*cuts, *marks):
        for other in c.operations:
            if early.pieces & other.pieces and other.action not in _BEFORE_SEWING:
                yield arc(RULE, early, other)
    for cut in cuts:
        for mark in marks:
            if cut.pieces & mark.pieces:
                yield arc(RULE, cut, mark)


_BEFORE_SEWING = frozenset({Action.PRETREAT, Action.CUT, Action.MARK})


RULE = Rule(RuleSlug("cut-before-sewn"), Strength.MUST, _derive, __doc__ or "", numbers=(1, 2, 5))
