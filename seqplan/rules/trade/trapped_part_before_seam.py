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
as into the fold. A tape may be caught by the seam or cover it, as the tape at the back neck of a
T-shirt.

Sources
-------
K. Omdahl, How to sew a lined tote bag, 2017; Men's formal shirt, operation breakdown, P. Sarkar,
2011 (label and loop); Production sequence of basic T-shirt, textileflowchart, 2015 (tape after
the rib).
"""

from collections.abc import Iterator

from seqplan.base.ids import NotionId, RuleSlug
from seqplan.base.strength import Strength
from seqplan.graph.reason import Reason
from seqplan.model.entry import Verb
from seqplan.model.operation import Action, Operation
from seqplan.recipes.construction import Construction
from seqplan.rules.rule import Rule, arc


def _derive(c: Construction) -> Iterator[Reason]:
    for part in c.acting(Action.STITCH_ON):
        if c.entry(part).verb is not Verb.ATTACH or _lies_over(c, part):
            continue
        for seam in c.meeting(part, Action.SEW, Action.SET_ON):
            yield arc(RULE, part, seam)


def _lies_over(c: Construction, part: Operation) -> bool:
    """Whether it is a tape, which may as well be sewn over a seam to cover it."""
    notion = c.garment.notion.get(c.entry(part).notion or NotionId(""))
    return notion is not None and "tape" in notion.kind.casefold()


RULE = Rule(
    RuleSlug("trapped-part-before-seam"),
    Strength.MUST,
    _derive,
    __doc__ or "",
    numbers=(23, 40, 41, 60),
)
