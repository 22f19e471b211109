"""A zip is set while the part that bears it lies flat.

Why
---
Both of its sides lie on the table, and nothing else gets under the foot. But a dress that has to be
fitted at its sides gets its zip when these are sewn: both are published.

Fires
-----
`zip` at a centre back before the side seams of the skirt.

Stays quiet
-----------
The zip is a fly, which has a rule of its own; or the seam goes on from the zip, as the one below
it.

Sources
-------
The Unit Method of Construction (dressmaking handbook), which names the rival order in the same
text; Getting to zipper, 2011 (zip nearly last).
"""

from collections.abc import Iterator

from seqplan.base.ids import RuleSlug
from seqplan.base.strength import Strength
from seqplan.graph.reason import Reason
from seqplan.model.entry import ZipMethod
from seqplan.model.operation import Action
from seqplan.recipes.construction import Construction
from seqplan.rules.closures import seams_going_on
from seqplan.rules.rule import Rule, arc
from seqplan.rules.tubes import Tubes


def _derive(c: Construction) -> Iterator[Reason]:
    tubes = Tubes(c)
    for zip_ in c.acting(Action.SET_ZIP):
        if c.entry(zip_).method is ZipMethod.FLY:
            continue
        pieces = sorted({segment.piece for segment in zip_.segments})
        closing = {id_ for piece in pieces for seams in tubes.closing(piece) for id_ in seams}
        for seam in sorted(closing - {zip_.entry, *seams_going_on(c, zip_)}):
            yield arc(RULE, c.of_entry[zip_.entry][-1], c.main(seam), key="because-set-while-flat")


RULE = Rule(RuleSlug("zip-while-flat"), Strength.PREFER, _derive, __doc__ or "", numbers=(57,))
