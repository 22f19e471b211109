"""What is tried on is joined first, and tried on before its band is set.

Why
---
Only what hangs together can be tried on; and a waist that is let out or taken in afterwards takes
its band off again.

Fires
-----
`sides` before `{fit: [front, back]}`, and that before the waistband of these pieces.

Stays quiet
-----------
The seam joins a piece that is not tried on.

Sources
-------
Finishing the waistline, netplaces (try on and adjust before the waistband, which is no more than
a preference: trousers in factory style, Remake Remodel Recycle, 2015, are tried on after it).
"""

from collections.abc import Iterator

from seqplan.base.ids import RuleSlug
from seqplan.base.strength import Strength
from seqplan.graph.reason import Reason
from seqplan.model.entry import Verb
from seqplan.model.operation import Action
from seqplan.recipes.construction import Construction
from seqplan.rules.rule import Rule, arc


def _derive(c: Construction) -> Iterator[Reason]:
    for fit in c.acting(Action.FIT):
        for join in c.acting(Action.SEW):
            if len(join.pieces) > 1 and join.pieces <= fit.pieces:
                yield arc(RULE, join, fit)
        for band in c.acting(Action.SET_ON):
            body = {ref.piece for ref in c.entry(band).run}
            if c.entry(band).verb is Verb.BAND and len(body) > 1 and body <= fit.pieces:
                # Published both ways: trousers in factory style are tried on with their band.
                key = "because-fitted-before-banded"
                yield arc(RULE, fit, band, key=key, strength=Strength.PREFER)


RULE = Rule(
    RuleSlug("joined-before-tried-on"), Strength.SHOULD, _derive, __doc__ or "", numbers=(62,)
)
