"""A seam is pressed before another seam, hem or zip crosses it.

Why
---
An unpressed seam that is stitched across stays a ridge for ever: the iron no longer gets into
the corner. Of two seams that end at the same point, the one sewn second waits for the press of
the first, whichever that is.

Fires
-----
`side-seams/press` before `hem/turn-up`; of `front-crotch` and `inseam`, one waits for the
other.

Stays quiet
-----------
One run begins at a mark where the other ends, and goes straight on: they do not cross.

Sources
-------
Pressing Skills, Oregon 4-H fact sheet 320-14, 2014; Apparel: Design, Textiles & Construction,
Goodheart-Willcox, 2012, p. 468; M. Johnson, 150 Sewing Tips, 1962 (as quoted).
"""

from collections.abc import Iterator

from seqplan.base.ids import RuleSlug
from seqplan.base.strength import Strength
from seqplan.graph.reason import Reason
from seqplan.model.operation import Action
from seqplan.recipes.construction import Construction
from seqplan.rules.crossings import tidied_before_crossed
from seqplan.rules.rule import Rule


def _derive(c: Construction) -> Iterator[Reason]:
    yield from tidied_before_crossed(RULE, c, Action.PRESS)


RULE = Rule(
    RuleSlug("press-before-crossing"), Strength.SHOULD, _derive, __doc__ or "", numbers=(25, 56, 65)
)
