"""Darts, pleats and gathers are made before the seam that crosses their open end.

Why
---
The seam has to catch the folded or drawn-up cloth; later it can only be done by unpicking.

Fires
-----
A dart on `front.waist` before the seam on `front.waist`, and before a lining is held there.

Stays quiet
-----------
The seam lies on another edge of the piece, or pleats are laid in both of the layers that it joins.

Sources
-------
The Unit Method of Construction (dressmaking handbook); West African Examinations Council,
Clothing & Textiles 2, 2018, examiner's report.
"""

from collections.abc import Iterator

from seqplan.base.ids import RuleSlug
from seqplan.base.strength import Strength
from seqplan.graph.reason import Reason
from seqplan.model.operation import Action
from seqplan.model.piece import Layer
from seqplan.recipes.construction import Construction
from seqplan.rules.parts import pleats_both_layers
from seqplan.rules.rule import Rule, arc


def _derive(c: Construction) -> Iterator[Reason]:
    for fold in c.acting(Action.DART, Action.PLEAT, Action.GATHER):
        for other in c.meeting(
            fold, Action.SEW, Action.BASTE, Action.TURN_UP, Action.SET_ZIP, Action.SET_ON
        ):
            if not pleats_both_layers(c, fold, other):
                yield arc(RULE, fold, other)
        for hold in c.meeting(fold, Action.HOLD):
            # Cloth and interlining are darted as one; a lining takes in its own fullness.
            layers = c.entry(hold).partners
            if any(c.garment.piece[id_].layer is not Layer.INTERLINING for id_ in layers):
                yield arc(RULE, fold, hold)


RULE = Rule(
    RuleSlug("fullness-before-crossing-seam"),
    Strength.MUST,
    _derive,
    __doc__ or "",
    numbers=(12, 15, 17, 60),
)
