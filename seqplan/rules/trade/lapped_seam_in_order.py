"""The edge of a lapped seam is finished and pressed under before it is stitched down.

Why
---
The fold is what the row of stitches follows.

Fires
-----
`yoke/finish`, `yoke/press-under`, `yoke`, `yoke/press`, one after the other.

Stays quiet
-----------
The seam is of another kind.

Sources
-------
The classic shirt, P. Powell, 2020; Cargo pant operation breakdown, 2015.
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
        if entry.seam is SeamKind.LAPPED:
            yield from chain(RULE, c.of_entry[entry.id])


RULE = Rule(RuleSlug("lapped-seam-in-order"), Strength.MUST, _derive, __doc__ or "", numbers=(38,))
