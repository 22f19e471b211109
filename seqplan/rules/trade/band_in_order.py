"""A band is folded, sewn on, pressed, closed at its ends, folded over and fastened.

Why
---
Each part needs what the one before it leaves: the fold shows where the loose edge lands, the ends
are closed while the band still stands up, and the loose edge covers all of it.

Fires
-----
`waistband/fold`, `waistband`, `waistband/press`, `waistband/ends`, `waistband/wrap`,
`waistband/close`, one after the other; likewise for cuffs, bindings and plackets.

Stays quiet
-----------
A part that is left out is passed over.

Sources
-------
Finishing the waistline, netplaces; Preparation, attachment: waist band (home-economics notes);
Waistline Treatments, CT-MMB.186, University of Kentucky.
"""

from collections.abc import Iterator

from seqplan.base.ids import RuleSlug
from seqplan.base.strength import Strength
from seqplan.graph.reason import Reason
from seqplan.model.entry import Verb
from seqplan.recipes.construction import Construction
from seqplan.recipes.shape import SETTING_ON
from seqplan.rules.rule import Rule, chain


def _derive(c: Construction) -> Iterator[Reason]:
    for entry in c.garment.entries:
        if entry.verb in SETTING_ON or entry.verb is Verb.STRAP:
            yield from chain(RULE, c.of_entry[entry.id])


RULE = Rule(RuleSlug("band-in-order"), Strength.MUST, _derive, __doc__ or "", numbers=(61,))
