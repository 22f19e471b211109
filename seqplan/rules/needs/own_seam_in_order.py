"""The parts of a seam of your own come in the order in which you list them.

Why
---
The list under `recipes:` says how you make the seam.

Fires
-----
`recipes: {welted: [sew, trim, press, topstitch]}` and a seam `as: welted`: one part after the
other.

Stays quiet
-----------
The seam is of a usual kind: then the rules order its parts.

Sources
-------
Follows from what the operations make.
"""

from collections.abc import Iterator

from seqplan.base.ids import RuleSlug
from seqplan.base.strength import Strength
from seqplan.graph.reason import Reason, ReasonKind
from seqplan.model.entry import SeamKind
from seqplan.recipes.construction import Construction
from seqplan.rules.rule import Rule, chain


def _derive(c: Construction) -> Iterator[Reason]:
    for entry in c.garment.entries:
        if entry.seam is SeamKind.OWN:
            yield from chain(RULE, c.of_entry[entry.id])


RULE = Rule(
    RuleSlug("own-seam-in-order"),
    Strength.MUST,
    _derive,
    __doc__ or "",
    kind=ReasonKind.NEEDS,
)
