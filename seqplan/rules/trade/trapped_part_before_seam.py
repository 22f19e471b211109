"""Labels, loops, trimmings and straps are fastened to an edge before the seam that traps them.

Why
---
The seam has to catch them; a forgotten loop means unpicking.

Fires
-----
`{attach: loop, at: back.neck}` before the seam, band or facing on `back.neck`.

Stays quiet
-----------
It is sewn onto the face of a piece, or the edge is hemmed: straps go onto a hemmed edge as well
as into the fold.

Sources
-------
K. Omdahl, How to sew a lined tote bag, 2017; Men's formal shirt, operation breakdown, P. Sarkar,
2011 (label and loop).
"""

from collections.abc import Iterator

from seqplan.base.ids import RuleSlug
from seqplan.base.strength import Strength
from seqplan.graph.reason import Reason
from seqplan.model.operation import Action
from seqplan.recipes.construction import Construction
from seqplan.rules.rule import Rule, arc


def _derive(c: Construction) -> Iterator[Reason]:
    for part in c.acting(Action.STITCH_ON):
        for seam in c.meeting(part, Action.SEW, Action.SET_ON):
            if seam.entry != part.entry:
                yield arc(RULE, part, seam)


RULE = Rule(
    RuleSlug("trapped-part-before-seam"), Strength.MUST, _derive, __doc__ or "", numbers=(40, 41)
)
