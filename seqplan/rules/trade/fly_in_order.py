"""A fly is faced, its zip set and its shield added, and then it is topstitched.

Why
---
The seam below ends where the fly begins, so it is sewn first; the topstitching goes through the
facing and past the zip, and the shield is folded out of its way.

Fires
-----
The crotch seam below, then `fly/facing`, `fly/press`, `fly`, `fly/shield`, `fly/topstitch`.

Stays quiet
-----------
The zip is set by another method.

Sources
-------
The order of construction of the trousers, factory style, 2015; How to assemble trousers,
kikolhi, 2016; The tailor times, 2009 (shield pulled aside).
"""

from collections.abc import Iterator

from seqplan.base.ids import RuleSlug
from seqplan.base.strength import Strength
from seqplan.graph.reason import Reason
from seqplan.model.entry import ZipMethod
from seqplan.model.operation import Action
from seqplan.recipes.construction import Construction
from seqplan.rules.closures import seams_going_on
from seqplan.rules.rule import Rule, arc, chain


def _derive(c: Construction) -> Iterator[Reason]:
    for zip_ in c.acting(Action.SET_ZIP):
        if c.entry(zip_).method is ZipMethod.FLY:
            yield from chain(RULE, c.of_entry[zip_.entry])
            for seam in seams_going_on(c, zip_):
                first = c.of_entry[zip_.entry][0]
                yield arc(RULE, c.closing(seam), first, key="because-seam-before-fly")


RULE = Rule(RuleSlug("fly-in-order"), Strength.MUST, _derive, __doc__ or "", numbers=(58,))
