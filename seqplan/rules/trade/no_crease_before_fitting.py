"""Nothing is creased before the fit is confirmed.

Why
---
A sharp fold marks the cloth; when the garment is let out or lengthened afterwards, the mark
shows.

Fires
-----
`try-on` before `hem/turn-up` and before the pressing of a pleat on the pieces that are fitted.

Stays quiet
-----------
Seams may be pressed before the fitting.

Sources
-------
Costume text, chapter 5, Pressing, Central Washington University; Sewing darts, fitzpatterns.
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
        for other in c.on_pieces(fit.pieces, Action.TURN_UP, Action.PRESS):
            verb = c.entry(other).verb
            if verb is Verb.PLEAT or (other.action is Action.TURN_UP and verb is Verb.HEM):
                yield arc(RULE, fit, other)


RULE = Rule(
    RuleSlug("no-crease-before-fitting"), Strength.SHOULD, _derive, __doc__ or "", numbers=(29,)
)
