"""An invisible zip is set before the seam below it is closed.

Why
---
Both sides must lie open to be stitched close to the coils, which are pressed flat first; the
seam below is then sewn up to the last stitch with the zip foot.

Fires
-----
`zip/coils` before `zip`, and `zip` before `centre-back`.

Stays quiet
-----------
The zip is set by another method, or no seam goes on below it.

Sources
-------
Invisible zipper and facing homework helper, Sew Chicago, 2011; Sew invisible zippers, R. Bucko.
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
        if c.entry(zip_).method is ZipMethod.INVISIBLE:
            yield from chain(RULE, c.of_entry[zip_.entry], key="because-coils-before-zip")
            for seam in seams_going_on(c, zip_):
                yield arc(RULE, zip_, c.main(seam))


RULE = Rule(
    RuleSlug("invisible-zip-before-seam-below"),
    Strength.SHOULD,
    _derive,
    __doc__ or "",
    numbers=(54,),
)
