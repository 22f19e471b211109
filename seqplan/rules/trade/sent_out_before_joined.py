"""A piece that is sent out is sent before it is joined to pieces that stay.

Why
---
Cloth is printed, pleated or embroidered as long as it lies single and flat; later the rest of the
garment would have to go along, and be kept out of the way.

Fires
-----
`{send out: front}` before the shoulder seams, which join the front to a back that stays.

Stays quiet
-----------
All the pieces of a seam are sent out, as a whole garment that is dyed or washed at the end.

Sources
-------
Notes on "sew on the flat" order of construction, J. Pray, 2022; Construction of Clothing (chapters
of an early text), collar: trimming before lining.
"""

from collections.abc import Iterator

from seqplan.base.ids import RuleSlug
from seqplan.base.strength import Strength
from seqplan.graph.reason import Reason
from seqplan.model.operation import Action
from seqplan.recipes.construction import Construction
from seqplan.rules.rule import Rule, arc


def _derive(c: Construction) -> Iterator[Reason]:
    for out in c.acting(Action.SEND_OUT):
        for shape in c.joins:
            joined = c.main(shape.entry.id)
            if joined.pieces & out.pieces and not joined.pieces <= out.pieces:
                yield arc(RULE, out, joined)


RULE = Rule(
    RuleSlug("sent-out-before-joined"), Strength.SHOULD, _derive, __doc__ or "", numbers=(18,)
)
