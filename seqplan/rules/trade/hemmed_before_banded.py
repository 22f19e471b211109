"""An edge is hemmed before it ends in a band, or in an edge that is gathered.

Why
---
The band takes the end of the hem up and covers it, and the rows of gathering begin at the finished
edge; a hem that is folded later has to be squeezed in under the band.

Fires
-----
The back edges of a wrapped skirt, hemmed and pressed, before `gathers` and before the waistband.

Stays quiet
-----------
The hem runs over the end of the band, as a shirt hem over its front bands.

Sources
-------
School Needlework, two-breadth apron (sides and bottom, then gathers and band); Kinne & Cooley,
Clothing and Health, 1916 (placket, then band).
"""

from collections.abc import Iterator

from seqplan.base.ids import RuleSlug
from seqplan.base.strength import Strength
from seqplan.graph.reason import Reason
from seqplan.model.entry import Verb
from seqplan.model.operation import Action
from seqplan.recipes.construction import Construction
from seqplan.rules.closures import entries_ending_at, runs_over
from seqplan.rules.rule import Rule, arc


def _derive(c: Construction) -> Iterator[Reason]:
    for entry in c.garment.entries:
        if entry.verb not in {Verb.BAND, Verb.GATHER}:
            continue
        for id_ in entries_ending_at(c, entry.id):
            if c.garment.entry[id_].verb is Verb.HEM and not runs_over(c, id_, entry.id):
                for op in c.doing(id_, Action.HEM, Action.PRESS):
                    yield arc(RULE, op, c.opening(entry.id))


RULE = Rule(
    RuleSlug("hemmed-before-banded"), Strength.SHOULD, _derive, __doc__ or "", numbers=(16, 46)
)
