"""Curved and bias edges are staystitched before the piece is handled.

Why
---
Such edges grow when they are pinned, joined, tried on, clipped or cut into. A row of stitches
inside the allowance holds them; once they are stretched it is of no use.

Fires
-----
`stay-waist` before `side-seams`, which joins the same pieces.

Stays quiet
-----------
The other operation does not touch a staystitched piece, or only finishes or fuses it.

Sources
-------
Apparel: Design, Textiles & Construction, Goodheart-Willcox, 2012, p. 445 (staystitching); D.
Alexei, Staystitching.
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
        for other in c.on_pieces(stay.pieces, *_HANDLING):
            yield arc(RULE, stay, other)


_HANDLING = (
    Action.SEW,
    Action.BASTE,
    Action.SET_ZIP,
    Action.SET_ON,
    Action.CLIP,
    Action.SLASH,
    Action.TURN_UP,
    Action.FIT,
)


RULE = Rule(
    RuleSlug("staystitch-before-handling"), Strength.SHOULD, _derive, __doc__ or "", numbers=(7,)
)
