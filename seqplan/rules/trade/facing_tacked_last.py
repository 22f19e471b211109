"""A facing is tacked down after it is attached, turned and pressed.

Why
---
Tacking holds the facing where it has come to lie; what is done to the seam afterwards would
pull it off again.

Fires
-----
`waist/turn` before `facing-ends`.

Stays quiet
-----------
The tack holds a piece that is no facing.

Sources
-------
Apparel: Design, Textiles & Construction, Goodheart-Willcox, 2012, p. 453; Facings Made Easy,
Guide C-233, New Mexico State University.
"""

from collections.abc import Iterator

from seqplan.base.ids import RuleSlug
from seqplan.base.strength import Strength
from seqplan.graph.reason import Reason
from seqplan.model.entry import SeamKind
from seqplan.model.operation import Action
from seqplan.model.piece import Layer
from seqplan.recipes.construction import Construction
from seqplan.rules.rule import Rule, arc


def _derive(c: Construction) -> Iterator[Reason]:
    for tack in c.acting(Action.TACK):
        facings = {id_ for id_ in tack.pieces if c.garment.piece[id_].layer is Layer.FACING}
        for shape in c.joins:
            if shape.entry.seam is SeamKind.FACED and facings & c.main(shape.entry.id).pieces:
                for op in c.doing(shape.entry.id, Action.SEW, Action.PRESS, Action.TURN):
                    yield arc(RULE, op, tack)


RULE = Rule(RuleSlug("facing-tacked-last"), Strength.SHOULD, _derive, __doc__ or "", numbers=(34,))
