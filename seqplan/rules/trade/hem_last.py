"""The hem comes when everything that hangs together with it is sewn.

Why
---
Its length is then sure, and it is marked on the whole garment. But many orders in print hem early,
while the part is light in the hand.

Fires
-----
The waistband, and the zip, before the hem of a skirt.

Stays quiet
-----------
The hem is sewn flat, or the seam is on pieces that do not hang together with it.

Sources
-------
Hemming Skills Level 2 & 3, Oregon 4-H fact sheet 320-32, 2014; Hems can be finished in a variety of
ways, R. Stroot. Against it: Kinne & Cooley, Clothing and Health, 1916, lesson 12 (hem before
placket and band).
"""

from collections.abc import Iterator

from seqplan.base.ids import RuleSlug
from seqplan.base.strength import Strength
from seqplan.graph.reason import Reason
from seqplan.model.entry import Verb
from seqplan.model.operation import Action
from seqplan.recipes.construction import Construction
from seqplan.rules.parts import hanging_together, pieces_of
from seqplan.rules.rule import Rule, arc


def _derive(c: Construction) -> Iterator[Reason]:
    hems = [e for e in c.garment.entries if e.verb is Verb.HEM and not e.is_flat]
    together = hanging_together(pieces_of(shape.glues) for shape in c.joins) if hems else {}
    for hem in hems:
        hemmed = c.main(hem.id).pieces
        hanging = hemmed.union(*(together.get(id_, ()) for id_ in hemmed))
        for op in c.on_pieces(hanging, Action.SEW, Action.SET_ON, Action.SET_ZIP):
            if not op.part:
                yield arc(RULE, c.closing(op.entry), c.opening(hem.id))


RULE = Rule(RuleSlug("hem-last"), Strength.PREFER, _derive, __doc__ or "", numbers=(72,))
