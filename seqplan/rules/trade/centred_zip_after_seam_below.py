"""The seam below a centred or lapped zip is closed first, then the opening basted and pressed.

Why
---
The zip is set under one seam line from waist to hem: sewn below the mark, basted above it,
pressed open over its whole length.

Fires
-----
`centre-back` before `zip`; `zip/baste`, `zip/press`, `zip`, `zip/unbaste`, one after the other.

Stays quiet
-----------
The zip is set by another method, or no seam goes on below it.

Sources
-------
How to ensure a perfectly centered zipper application, D. Alexei; Zipped fastening (home-
economics notes); How to fix a stuck zipper, webcasty, 2013.
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
        if c.entry(zip_).method in {ZipMethod.CENTRED, ZipMethod.LAPPED}:
            yield from chain(RULE, c.of_entry[zip_.entry], key="because-centred-zip-in-order")
            for seam in seams_going_on(c, zip_):
                yield arc(RULE, c.closing(seam), c.of_entry[zip_.entry][0])


RULE = Rule(
    RuleSlug("centred-zip-after-seam-below"), Strength.MUST, _derive, __doc__ or "", numbers=(53,)
)
