"""A corner is boxed when both seams that meet in it are sewn, and before the work is turned.

Why
---
Seam is laid on seam and stitched across, with the allowances outside.

Fires
-----
`sides` and `foot` before `corners`; the corners before `{turn: all}`.

Stays quiet
-----------
The edges named go into no seam. Whether outer bag and lining are joined before or after does not
matter. That the seams are pressed and finished first is the business of the rules about those.

Sources
-------
K. Omdahl, How to sew a lined tote bag, 2017 (sides and bottom, press, box corners, then lining).
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
    for box in c.acting(Action.BOX):
        for seam in c.seams_at(box.segments):
            yield arc(RULE, c.closing(seam), box)
        for turn in c.on_pieces(box.pieces, Action.TURN):
            if c.entry(turn).verb is Verb.TURN:
                yield arc(RULE, box, turn, key="because-boxed-before-turned")


RULE = Rule(
    RuleSlug("corner-boxed-after-its-seams"), Strength.MUST, _derive, __doc__ or "", numbers=(25,)
)
