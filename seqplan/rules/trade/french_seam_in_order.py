"""A French seam is stitched, trimmed, pressed, stitched again and pressed.

Why
---
The first row, wrong sides together, is enclosed by the second; what is not trimmed before
sticks out of the second row.

Fires
-----
`seam`, `seam/trim`, `seam/press-over`, `seam/enclose`, `seam/press`, one after the other.

Stays quiet
-----------
The seam is of another kind.

Sources
-------
Technique: French Seam, Utah State University Extension; I. D. Conover, A Complete Course in
Dressmaking, vol. 1, 1921, p. 102; Kinne & Cooley, Clothing and Health, 1916, lesson 8.
"""

from collections.abc import Iterator

from seqplan.base.ids import RuleSlug
from seqplan.base.strength import Strength
from seqplan.graph.reason import Reason
from seqplan.model.entry import SeamKind
from seqplan.recipes.construction import Construction
from seqplan.rules.rule import Rule, chain


def _derive(c: Construction) -> Iterator[Reason]:
    for entry in c.garment.entries:
        if entry.seam is SeamKind.FRENCH:
            yield from chain(RULE, c.of_entry[entry.id])


RULE = Rule(RuleSlug("french-seam-in-order"), Strength.MUST, _derive, __doc__ or "", numbers=(36,))
