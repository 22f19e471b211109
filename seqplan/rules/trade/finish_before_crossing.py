"""Raw edges are finished before the seam is pressed open for good or crossed.

Why
---
Edges that are finished each by itself are finished before or right after the seam, while it
still lies flat; edges that are finished together, before they are pressed to one side. Where
another seam runs across, the knife and the needle no longer reach the end.

Fires
-----
`neaten-back` before `centre-back/press`; `side-seams/finish` before `hem/turn-up`.

Stays quiet
-----------
The edges are enclosed, as in a French seam, or need no finish.

Sources
-------
Pressing a plain open seam, aimforquality, 2014; How to assemble trousers, kikolhi, 2016, step
2.
"""

from collections.abc import Iterator

from seqplan.base.ids import RuleSlug
from seqplan.base.strength import Strength
from seqplan.graph.reason import Reason
from seqplan.model.operation import Action
from seqplan.recipes.construction import Construction
from seqplan.rules.crossings import in_own_order, tidied_before_crossed, tidying
from seqplan.rules.rule import Rule, arc


def _derive(c: Construction) -> Iterator[Reason]:
    for shape in c.joins:
        for finish in tidying(c, shape.entry.id, Action.FINISH):
            for press in tidying(c, shape.entry.id, Action.PRESS):
                if not in_own_order(c, finish, press):
                    yield arc(RULE, finish, press, key="because-finish-before-pressing")
    yield from tidied_before_crossed(RULE, c, Action.FINISH)


RULE = Rule(
    RuleSlug("finish-before-crossing"), Strength.SHOULD, _derive, __doc__ or "", numbers=(27,)
)
