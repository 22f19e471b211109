"""What is tried on is joined first.

Why
---
Only what hangs together can be tried on.

Fires
-----
`sides` before `{fit: [front, back]}`.

Stays quiet
-----------
The seam joins a piece that is not tried on, or is basted: then the basting comes before. Whether
the waistband comes before or after the fitting is left to the author: both are published.

Sources
-------
Finishing the waistline, netplaces (try on and adjust before the waistband); trousers in factory
style, Remake Remodel Recycle, 2015 (tried on after it).
"""

from collections.abc import Iterator

from seqplan.base.ids import RuleSlug
from seqplan.base.strength import Strength
from seqplan.graph.reason import Reason
from seqplan.model.operation import Action
from seqplan.recipes.construction import Construction
from seqplan.rules.rule import Rule, arc


def _derive(c: Construction) -> Iterator[Reason]:
    for fit in c.acting(Action.FIT):
        for join in c.acting(Action.SEW):
            if len(join.pieces) > 1 and join.pieces <= fit.pieces:
                basted = [op for op in c.meeting(join, Action.BASTE) if op.pieces == join.pieces]
                yield from (arc(RULE, op, fit) for op in basted or (join,))


RULE = Rule(
    RuleSlug("joined-before-tried-on"), Strength.SHOULD, _derive, __doc__ or "", numbers=(62,)
)
