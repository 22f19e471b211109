"""Layers that are to be one are held together before a seam takes them up.

Why
---
The seam has to go through all of them; a layer that is not held slips out of it. And layers that
are joined elsewhere lie on one another only once those seams are sewn.

Fires
-----
`{hold: yoke.neck, with: yoke-inner}` before the seam on `yoke.neck`; the seams that join yoke and
inner yoke before the holding.

Stays quiet
-----------
The layer is held along an edge that no seam, fold or band takes up.

Sources
-------
Follows from what the operations make.
"""

from collections.abc import Iterator

from seqplan.base.ids import RuleSlug
from seqplan.base.strength import Strength
from seqplan.graph.reason import Reason
from seqplan.model.operation import Action
from seqplan.recipes.construction import Construction
from seqplan.rules.rule import Rule, arc


def _derive(c: Construction) -> Iterator[Reason]:
    for hold in c.acting(Action.HOLD):
        for other in c.meeting(hold, *_TAKING_UP):
            yield arc(RULE, hold, other)
        layers = frozenset(c.entry(hold).partners)
        for shape in c.joins:
            join = c.main(shape.entry.id)
            joins_both = join.pieces & layers and join.pieces & (hold.pieces - layers)
            if joins_both and not set(join.segments) & set(hold.segments):
                yield arc(RULE, c.of_entry[join.entry][-1], hold, key="because-lie-together")


_TAKING_UP = (
    Action.SEW,
    Action.BASTE,
    Action.SET_ON,
    Action.SET_ZIP,
    Action.TURN_UP,
    Action.FINISH,
)


RULE = Rule(RuleSlug("layers-held-before-sewn"), Strength.MUST, _derive, __doc__ or "")
