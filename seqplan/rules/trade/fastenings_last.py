"""Hooks, snaps and buttons are attached when the edge that bears them is done.

Why
---
They are in the way of foot and iron, and their place is measured on the finished edge.

Fires
-----
`waist/turn`, and the tacking of the facing's ends, before `closure`, which sews a hook to
`back.waist`; `waistband/close` before a button on the band.

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
from seqplan.model.operation import Action, Operation
from seqplan.model.piece import Segment
from seqplan.recipes.construction import Construction
from seqplan.rules.rule import Rule, arc
from seqplan.surface.ring import EdgeEnd


def _derive(c: Construction) -> Iterator[Reason]:
    for fasten in c.acting(Action.ATTACH):
        for other in c.meeting(fasten, *_EDGE_WORK):
            yield arc(RULE, other, fasten)
        for tack in c.acting(Action.TACK):
            is_on_it = c.entry(tack).to_name in {fasten.entry, *fasten.notions}
            if not is_on_it and set(fasten.segments) & _at_the_ends(c, tack):
                yield arc(RULE, tack, fasten)
        for entry in c.garment.entries:
            bands = set(entry.partners) if entry.verb is Verb.BAND else set()
            if any(place.piece in bands for place in c.entry(fasten).places):
                yield arc(RULE, c.closing(entry.id), fasten)


def _at_the_ends(c: Construction, tack: Operation) -> set[Segment]:
    """The edges at either end of what is tacked, and those that they are sewn to."""
    found = set()
    for segment in tack.segments:
        for at_end in (False, True):
            beside = c.rings.across(EdgeEnd(segment, at_end)).neighbour
            mate = c.finished.mate(beside)
            found |= {beside.segment} | ({mate.segment} if mate else set())
    return found


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
