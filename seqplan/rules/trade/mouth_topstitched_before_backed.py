"""A pocket mouth is topstitched before the back of the bag lies behind it.

Why
---
The row goes through the garment and the front of the bag. With the back of the bag sewn to it, the
pocket has to be held open under the needle, or is stitched shut.

Fires
-----
`mouths/topstitch` before `bags`, where `{hold: [front.waist, front.side], with: bag + bag-back}`
lays both halves of the bag on the front.

Stays quiet
-----------
The mouth is not topstitched, or nothing further is laid behind it.

Sources
-------
Cargo pant operation breakdown, 2015; M. R. Shields, Industry Clothing Construction Methods, 2010
(topstitching before a further layer).
"""

from collections.abc import Iterator

from seqplan.base.ids import RuleSlug
from seqplan.base.strength import Strength
from seqplan.graph.reason import Reason
from seqplan.model.operation import Action
from seqplan.recipes.construction import Construction
from seqplan.rules.rule import Rule, arc


def _derive(c: Construction) -> Iterator[Reason]:
    for hold in c.acting(Action.HOLD):
        layers = frozenset(c.entry(hold).partners)
        for mouth in c.joins:
            rows = c.doing(mouth.entry.id, Action.TOPSTITCH)
            front = mouth.skins & layers
            if not rows or len(front) != 1 or not mouth.skins <= hold.pieces:
                continue
            for bag in c.joins:
                is_bag = bag.skins <= layers and bag.skins > front
                if is_bag and bag.entry.id != mouth.entry.id:
                    yield arc(RULE, rows[-1], c.main(bag.entry.id))


RULE = Rule(
    RuleSlug("mouth-topstitched-before-backed"),
    Strength.SHOULD,
    _derive,
    __doc__ or "",
    numbers=(76,),
)
