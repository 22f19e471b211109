"""A zip is set before the band that ends at it is closed.

Why
---
The ends of the tapes lie inside the band. When its ends are sewn and its loose edge is fastened,
they can no longer be put there.

Fires
-----
`fly` before `waistband/ends` and `waistband/close`.

Stays quiet
-----------
The zip runs on to the top of the band. That the zip comes before the first seam of the band, too,
is good practice, and another rule.

Sources
-------
Finishing the waistline, netplaces; Lapped Zippers Rule, Threads, 2009.
"""

from collections.abc import Iterator

from seqplan.base.ids import RuleSlug
from seqplan.base.strength import Strength
from seqplan.graph.reason import Reason
from seqplan.model.entry import Verb
from seqplan.model.operation import Action
from seqplan.recipes.construction import Construction
from seqplan.rules.closures import entries_ending_at
from seqplan.rules.rule import Rule, arc


def _derive(c: Construction) -> Iterator[Reason]:
    for zip_ in c.acting(Action.SET_ZIP):
        for id_ in entries_ending_at(c, zip_.entry):
            if c.garment.entry[id_].verb in {Verb.BAND, Verb.BIND}:
                for op in c.doing(id_, Action.CLOSE_ENDS, Action.CLOSE_BAND):
                    yield arc(RULE, zip_, op)


RULE = Rule(
    RuleSlug("zip-before-band-closed"), Strength.MUST, _derive, __doc__ or "", numbers=(59,)
)
