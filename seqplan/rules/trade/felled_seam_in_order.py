"""A flat-felled seam is stitched, pressed to one side, trimmed, turned under and stitched down.

Why
---
The upper allowance is folded over the trimmed under one; what is not trimmed makes a ridge.

Fires
-----
`side`, `side/press`, `side/trim`, `side/turn-under`, `side/fell`, one after the other.

Stays quiet
-----------
The seam is of another kind.

Sources
-------
How to sew a flat-felled seam, WHAFI; Flat-felled seam, Sewing Parts Online; Complex
Seams for Woven Fabrics, Oregon State University Extension.
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
        if entry.seam is SeamKind.FLAT_FELLED:
            yield from chain(RULE, c.of_entry[entry.id])


RULE = Rule(RuleSlug("felled-seam-in-order"), Strength.MUST, _derive, __doc__ or "", numbers=(37,))
