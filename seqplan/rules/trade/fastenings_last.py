"""Hooks, snaps and buttons are attached when the edge that bears them is done.

Why
---
They are in the way of foot and iron, and their place is measured on the finished edge.

Fires
-----
`waist/turn` before `closure`, which sews a hook to `back.waist`; `waistband/close` before a button
on the band.

Stays quiet
-----------
The operation acts on another edge.

Sources
-------
Kinne & Cooley, Clothing and Health, 1916 (hooks after the hem); The order of construction of
the trousers, factory style, 2015.
"""

from collections.abc import Iterator

from seqplan.base.ids import RuleSlug
from seqplan.base.strength import Strength
from seqplan.graph.reason import Reason
from seqplan.model.entry import Verb
from seqplan.model.operation import Action
from seqplan.recipes.construction import Construction
from seqplan.rules.rule import Rule, arc


def _derive(c: Construction) -> Iterator[Reason]:
    for fasten in c.acting(Action.ATTACH):
        for other in c.meeting(fasten, *_EDGE_WORK):
            yield arc(RULE, other, fasten)
        for entry in c.garment.entries:
            bands = set(entry.partners) if entry.verb is Verb.BAND else set()
            if any(place.piece in bands for place in c.entry(fasten).places):
                yield arc(RULE, c.closing(entry.id), fasten)


_EDGE_WORK = (
    Action.SEW,
    Action.SET_ON,
    Action.CLOSE_BAND,
    Action.FINISH,
    Action.PRESS,
    Action.TURN,
    Action.HEM,
    Action.CASE,
    Action.TOPSTITCH,
)


RULE = Rule(RuleSlug("fastenings-last"), Strength.SHOULD, _derive, __doc__ or "", numbers=(74,))
