"""A zip is set before the facing, band or hem that ends at it.

Why
---
The band or facing ends at the opening and encloses the ends of the tapes.

Fires
-----
`zip` before `waist`, which faces the edge where the zip ends.

Stays quiet
-----------
The run goes straight on as the zip, or the seam that ends there joins no facing and folds
nothing.

Sources
-------
Finishing the waistline, netplaces; Kinne & Cooley, Clothing and Health, 1916, lesson 12
(placket, then band). A zip that runs to the top of the band is set between its two halves: J.
Lawson, Adding a waistband with a zipper.
"""

from collections.abc import Iterator

from seqplan.base.ids import RuleSlug
from seqplan.base.strength import Strength
from seqplan.graph.reason import Reason
from seqplan.model.entry import SeamKind
from seqplan.model.operation import Action
from seqplan.recipes.construction import Construction
from seqplan.recipes.shape import COVERING
from seqplan.rules.closures import entries_ending_at
from seqplan.rules.rule import Rule, arc


def _derive(c: Construction) -> Iterator[Reason]:
    for zip_ in c.acting(Action.SET_ZIP):
        for id_ in entries_ending_at(c, zip_.entry):
            entry = c.garment.entry[id_]
            if entry.seam is SeamKind.FACED or entry.verb in COVERING:
                yield arc(RULE, zip_, c.opening(id_))


RULE = Rule(
    RuleSlug("zip-before-waist-finish"), Strength.SHOULD, _derive, __doc__ or "", numbers=(59,)
)
