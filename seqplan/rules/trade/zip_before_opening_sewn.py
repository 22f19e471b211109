"""A zip is set before a seam that sews up its own opening.

Why
---
In a seam that is sewn for good from end to end there is nowhere for the zip to open. What holds the
opening while a zip is set under it is basted, and taken out again.

Fires
-----
`zip` before a seam on both of the edges in which it is set.

Stays quiet
-----------
The opening is basted, or its edges are faced, or only the seam below it is sewn.

Sources
-------
Invisible zipper and facing homework helper, Sew Chicago, 2011; Sew invisible zippers, R. Bucko.
"""

from collections.abc import Iterator

from seqplan.base.ids import RuleSlug
from seqplan.base.strength import Strength
from seqplan.graph.reason import Reason
from seqplan.model.operation import Action
from seqplan.recipes.construction import Construction
from seqplan.rules.rule import Rule, arc


def _derive(c: Construction) -> Iterator[Reason]:
    for zip_ in c.acting(Action.SET_ZIP):
        opening = set(zip_.segments)
        for shape in c.joins:
            is_sewn_up = any({glue.first, glue.second} <= opening for glue in shape.glues)
            if is_sewn_up and shape.entry.id != zip_.entry:
                yield arc(RULE, zip_, c.main(shape.entry.id))


RULE = Rule(
    RuleSlug("zip-before-opening-sewn"), Strength.MUST, _derive, __doc__ or "", numbers=(53, 54)
)
