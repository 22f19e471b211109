"""Understitching follows trimming, clipping and pressing, and precedes turning and tacking.

Why
---
The row goes through the facing and the allowances, so these must be in their final shape and
pressed to the facing; once the facing is turned for good, tacked or its ends are closed, the
foot no longer gets in.

Fires
-----
`waist/press` before `waist/understitch`, and that before `waist/turn` and `facing-ends`.

Stays quiet
-----------
The seam is not understitched, or what is tacked is a piece of the garment and not of the facing.

Sources
-------
Apparel: Design, Textiles & Construction, Goodheart-Willcox, 2012, p. 453; How to understitch a
facing, Threads, 2019; Facings Made Easy, Guide C-233, New Mexico State University.
"""

from collections.abc import Iterator

from seqplan.base.ids import RuleSlug
from seqplan.base.strength import Strength
from seqplan.graph.reason import Reason
from seqplan.model.operation import Action
from seqplan.model.piece import Layer
from seqplan.recipes.construction import Construction
from seqplan.rules.crossings import tidying
from seqplan.rules.rule import Rule, arc


def _derive(c: Construction) -> Iterator[Reason]:
    for shape in c.joins:
        seam = shape.entry.id
        for row in tidying(c, seam, Action.UNDERSTITCH):
            for action in (Action.TRIM, Action.CLIP, Action.PRESS):
                for before in tidying(c, seam, action):
                    yield arc(RULE, before, row, key="because-ready-before-understitching")
            facings = frozenset(
                id_ for id_ in shape.skins if c.garment.piece[id_].layer is not Layer.SHELL
            )
            yield from (arc(RULE, row, after) for after in tidying(c, seam, Action.TURN))
            yield from (arc(RULE, row, tack) for tack in c.on_pieces(facings, Action.TACK))


RULE = Rule(
    RuleSlug("understitch-before-turning"), Strength.SHOULD, _derive, __doc__ or "", numbers=(32,)
)
