"""A pocket is made in its own order, and before the seam that closes round it.

Why
---
A mouth is hemmed and edges are pressed under while the pocket lies free; a slash cannot be taken
back; and the bag of a pocket in a seam is a part of that seam.

Fires
-----
`pocket/mouth-turn-up`, `pocket/mouth`, `pocket/press-under`, `pocket`; the bags before the seam
on the same edges, and their finish and understitching before that seam is sewn.

Stays quiet
-----------
The seam lies on other edges.

Sources
-------
D. P. Coffin, book on shirtmaking, chapter 6; In-seam pockets, 100 Acts of Sewing; for
welts: common practice.
"""

from collections.abc import Iterator

from seqplan.base.ids import RuleSlug
from seqplan.base.strength import Strength
from seqplan.graph.reason import Reason
from seqplan.model.entry import Verb
from seqplan.model.operation import Action
from seqplan.recipes.construction import Construction
from seqplan.rules.rule import Rule, arc, chain


def _derive(c: Construction) -> Iterator[Reason]:
    for entry in c.garment.entries:
        if entry.verb is Verb.PATCH_POCKET:
            yield from chain(RULE, c.of_entry[entry.id])
        if entry.verb is Verb.WELT_POCKET:
            yield from chain(RULE, c.of_entry[entry.id], key="because-welt-in-order")
        if entry.verb is Verb.IN_SEAM_POCKET:
            made = (op for op in c.of_entry[entry.id] if op.action is not Action.FINISH)
            yield from chain(RULE, made, key="because-bag-in-order")
            for op in c.of_entry[entry.id]:
                for seam in c.meeting(c.main(entry.id), Action.SEW):
                    yield arc(RULE, op, seam, key="because-bag-before-its-seam")
            for row in c.meeting(c.main(entry.id), Action.UNDERSTITCH):
                yield arc(RULE, c.main(entry.id), row, key="because-bag-in-order")
                for seam in c.meeting(row, Action.SEW):
                    yield arc(RULE, row, seam, key="because-bag-flat-under-the-foot")


RULE = Rule(
    RuleSlug("pocket-in-order"), Strength.MUST, _derive, __doc__ or "", numbers=(19, 20, 21)
)
