"""Interfacing is fused to a piece before the piece is sewn, finished or folded.

Why
---
Fusing needs the piece open and flat under the iron, and it stiffens the edge for what follows.

Fires
-----
`interface` before `facing`, which joins the interfaced pieces.

Stays quiet
-----------
Darts may be sewn before or after: the rule speaks of seams, edge finishes and folds.

Sources
-------
Interfacing, Alberta distance learning; Apparel: Design, Textiles & Construction, Goodheart-
Willcox, 2012, p. 454; Interfacing types 5.06 (school slides).
"""

from collections.abc import Iterator

from seqplan.base.ids import RuleSlug
from seqplan.base.strength import Strength
from seqplan.graph.reason import Reason
from seqplan.model.operation import Action
from seqplan.recipes.construction import Construction
from seqplan.rules.rule import Rule, arc


def _derive(c: Construction) -> Iterator[Reason]:
    for fuse in c.acting(Action.FUSE):
        for other in c.on_pieces(fuse.pieces, *_STITCHING):
            yield arc(RULE, fuse, other)


_STITCHING = (
    Action.SEW,
    Action.BASTE,
    Action.HOLD,
    Action.FINISH,
    Action.SET_ZIP,
    Action.SET_ON,
    Action.STITCH_ON,
    Action.FOLD_BAND,
    Action.MAKE_STRAP,
    Action.TURN_UP,
    Action.BUTTONHOLE,
    Action.BIND_HOLE,
)


RULE = Rule(
    RuleSlug("fuse-before-first-seam"), Strength.SHOULD, _derive, __doc__ or "", numbers=(9, 55)
)
