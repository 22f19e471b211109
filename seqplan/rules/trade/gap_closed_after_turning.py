"""The work is turned through its gap before the gap is closed.

Why
---
A layer that is sewn shut all round cannot be turned any more.

Fires
-----
The seam that leaves a gap, then `{turn: all}`, then `{close: lining-foot}`.

Stays quiet
-----------
No seam leaves a gap, or nothing is turned. A single layer may be turned before the seam joins it:
a lining is, when the bag is put into it.

Sources
-------
I sewed myself into a corner, 2008, and Good thing I don't design bridges, 2009 (two failures);
lined vest after M. R. Shields, Industry Clothing Construction Methods, 2010. A lining turned before
the top seam: K. Omdahl, How to sew a lined tote bag, 2017.
"""

from collections.abc import Iterator

from seqplan.base.ids import RuleSlug
from seqplan.base.strength import Strength
from seqplan.graph.reason import Reason
from seqplan.model.entry import Verb
from seqplan.model.operation import Action
from seqplan.recipes.construction import Construction
from seqplan.rules.rule import Rule, arc


def _derive(c: Construction) -> Iterator[Reason]:
    for close in c.acting(Action.CLOSE_GAP):
        gap = c.entry(close).closes
        if gap is None or c.garment.entry[gap].gap is None:
            continue
        yield arc(RULE, c.main(gap), close, key="because-gap-before-closed")
        for turn in c.on_pieces(close.pieces, Action.TURN):
            if c.entry(turn).verb is Verb.TURN and turn.pieces >= c.main(gap).pieces:
                yield arc(RULE, c.main(gap), turn, key="because-gap-before-turned")
                yield arc(RULE, turn, close)


RULE = Rule(
    RuleSlug("gap-closed-after-turning"), Strength.MUST, _derive, __doc__ or "", numbers=(35,)
)
