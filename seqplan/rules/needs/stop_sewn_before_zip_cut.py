"""A zip is cut off only where a stop, or a seam across it, keeps the slider on.

Why
---
The slider runs off an end that nothing holds, and does not go on again.

Fires
-----
`top/stop` before `top`, which is `{shorten: zip}`; with `without: stop`, the waistband that crosses
the upper end of the zip before it is cut.

Stays quiet
-----------
Nothing crosses the end and no stop is sewn: then there is nothing to order, and the rehearsal says
what is lacking.

Sources
-------
Follows from what the operations make.
"""

from collections.abc import Iterator

from seqplan.base.ids import RuleSlug
from seqplan.base.strength import Strength
from seqplan.graph.reason import Reason, ReasonKind
from seqplan.model.operation import Action, Operation
from seqplan.recipes.construction import Construction
from seqplan.rules.rule import Rule, arc
from seqplan.surface.ring import EdgeEnd


def _derive(c: Construction) -> Iterator[Reason]:
    for cut in c.acting(Action.SHORTEN):
        stops = c.doing(cut.entry, Action.SEW_STOP)
        for stop in stops:
            yield arc(RULE, stop, cut)
        for across in _across(c, cut)[:1] if not stops else ():
            yield arc(RULE, across, cut, key="because-crossed-before-zip-cut")


_CROSSING = frozenset({Action.SEW, Action.SET_ON})


def _across(c: Construction, cut: Operation) -> list[Operation]:
    """What crosses the zip at the end that is cut."""
    found: list[Operation] = []
    for zip_ in c.acting(Action.SET_ZIP):
        if not set(zip_.notions) & set(cut.notions):
            continue
        for segment in zip_.segments:
            for at_end in (False, True):
                corner = c.rings.across(EdgeEnd(segment, at_end))
                if corner.is_straight is c.entry(cut).from_bottom:
                    found += c.on_segment.get(corner.neighbour.segment, ())
    return [op for op in found if op.action in _CROSSING]


RULE = Rule(
    RuleSlug("stop-sewn-before-zip-cut"),
    Strength.MUST,
    _derive,
    __doc__ or "",
    kind=ReasonKind.NEEDS,
)
