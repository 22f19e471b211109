"""A curve or corner is staystitched before it is clipped.

Why
---
The clips stop at the row of stitches. Without it nothing stops them, and the cut runs on through
the seam line when the edge is spread.

Fires
-----
`stay-neck` before `neck/clip`, which clips the same edge.

Stays quiet
-----------
What is clipped is another edge.

Sources
-------
Apparel: Design, Textiles & Construction, Goodheart-Willcox, 2012, p. 452; Collars Made Sew Easy
(extension leaflet).
"""

from collections.abc import Iterator

from seqplan.base.ids import RuleSlug
from seqplan.base.strength import Strength
from seqplan.graph.reason import Reason
from seqplan.model.operation import Action
from seqplan.recipes.construction import Construction
from seqplan.rules.rule import Rule, arc


def _derive(c: Construction) -> Iterator[Reason]:
    for stay in c.acting(Action.STAYSTITCH):
        for clip in c.meeting(stay, Action.CLIP):
            yield arc(RULE, stay, clip)


RULE = Rule(
    RuleSlug("staystitch-before-clipping"), Strength.MUST, _derive, __doc__ or "", numbers=(8,)
)
