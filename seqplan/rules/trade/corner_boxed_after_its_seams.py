"""A corner is boxed when both seams that meet in it are sewn and pressed.

Why
---
Seam is laid on seam, with the allowances as they were pressed, and stitched across.

Fires
-----
`sides` and `foot`, with their presses, before `corners`; the corners before the seam that joins
the bag to its lining.

Stays quiet
-----------
The edges named go into no seam.

Sources
-------
K. Omdahl, How to sew a lined tote bag, 2017 (sides and bottom, press, box corners, then lining).
"""

from collections.abc import Iterator

from seqplan.base.ids import RuleSlug
from seqplan.base.strength import Strength
from seqplan.graph.reason import Reason
from seqplan.model.entry import SeamKind
from seqplan.model.operation import Action
from seqplan.recipes.construction import Construction
from seqplan.rules.rule import Rule, arc


def _derive(c: Construction) -> Iterator[Reason]:
    for box in c.acting(Action.BOX):
        for seam in c.seams_at(box.segments):
            for op in c.doing(seam, Action.SEW, Action.ENCLOSE, Action.FINISH, Action.PRESS):
                yield arc(RULE, op, box)
        for shape in c.joins:
            join = c.main(shape.entry.id)
            is_lined = shape.entry.seam in {SeamKind.ENCLOSED, SeamKind.FACED}
            if is_lined and join.pieces & box.pieces and len(join.pieces) > 1:
                yield arc(RULE, box, join, key="because-boxed-before-lined")


RULE = Rule(
    RuleSlug("corner-boxed-after-its-seams"), Strength.MUST, _derive, __doc__ or "", numbers=(25,)
)
