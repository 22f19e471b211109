"""What is rolled up between two layers is rolled once the layers hold together on the other side.

Why
---
Rolling means to lay the body up inside two layers and sew the last edge round it. Sewn first, that
edge needs no rolling; and then there is nothing left to roll the other seam round.

Fires
-----
`{sew: yoke.lower, to: yoke-inner.lower, ...}` before `{sew: yoke.shoulder, to: yoke-inner.shoulder,
..., method: roll}`.

Stays quiet
-----------
Nothing is rolled, or the two layers meet in no other seam.

Sources
-------
How to sew a shirt yoke by the roll, common practice in shirt making; The classic shirt, P. Powell,
2020 (yoke seam, then shoulders).
"""

from collections.abc import Iterator

from seqplan.base.ids import RuleSlug
from seqplan.base.strength import Strength
from seqplan.graph.reason import Reason
from seqplan.model.entry import SeamMethod
from seqplan.recipes.construction import Construction
from seqplan.rules.rule import Rule, arc, either, names
from seqplan.words.say import say


def _derive(c: Construction) -> Iterator[Reason]:
    for rolled in c.joins:
        if rolled.entry.how is not SeamMethod.ROLL:
            continue
        others = [
            c.main(shape.entry.id)
            for shape in c.joins
            if shape.skins == rolled.skins and shape.entry.how is not SeamMethod.ROLL
        ]
        roll = c.main(rolled.entry.id)
        if len(others) == 1:
            yield arc(RULE, others[0], roll)
        elif others:
            seams = names(sorted(op.entry for op in others))
            because = say("because-rolled-after-one", run=rolled.entry.id, seams=seams)
            yield either(RULE, [[(op, roll)] for op in others], asker=roll, because=because)


RULE = Rule(
    RuleSlug("rolled-after-the-other-seam"), Strength.SHOULD, _derive, __doc__ or "", numbers=(35,)
)
