"""The edges of a slit are hemmed before or after a French seam, not between its two rows.

Why
---
The hem of a slit begins where the seam ends. Between the two rows the allowances lie wrong side
out, and a hem sewn then is caught askew in the second row.

Fires
-----
`slots`, which hems the edges above the mark where `seam` ends: the whole of one comes before the
whole of the other, whichever is first.

Stays quiet
-----------
The seam is of another kind, or the hem meets it at a corner.

Sources
-------
Common practice for drawstring bags and side slits; the two rows: Technique: French Seam, Utah
State University Extension.
"""

from collections.abc import Iterator

from seqplan.base.ids import RuleSlug
from seqplan.base.strength import Strength
from seqplan.graph.reason import Reason
from seqplan.model.entry import SeamKind
from seqplan.recipes.construction import Construction
from seqplan.recipes.shape import FOLDING
from seqplan.rules.closures import seams_going_on
from seqplan.rules.rule import Rule, either
from seqplan.words.say import say


def _derive(c: Construction) -> Iterator[Reason]:
    for entry in c.garment.entries:
        if entry.verb not in FOLDING:
            continue
        hem = c.of_entry[entry.id]
        for seam in seams_going_on(c, c.main(entry.id)):
            rows = c.of_entry[seam]
            if c.garment.entry[seam].seam is SeamKind.FRENCH:
                bundles = ([(hem[-1], rows[0])], [(rows[-1], hem[0])])
                because = say("because-slit-apart-from-french-rows", hem=entry.id, seam=seam)
                yield either(RULE, bundles, asker=hem[0], because=because)


RULE = Rule(
    RuleSlug("slit-apart-from-french-rows"), Strength.SHOULD, _derive, __doc__ or "", numbers=(36,)
)
