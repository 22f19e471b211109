"""An edge is fitted before a band, a casing, a hem or a zip fixes it.

Why
---
Whatever is taken in or let out afterwards, the zip and the band have to come off first.

Fires
-----
`{fit: all, at: [front.waist, back.waist]}` before `zip`, whose opening ends at the waist, and
before `waistband`.

Stays quiet
-----------
The fitting names no edges: whether a garment is tried on before or after its waistband is left
to the author, for both are published.

Sources
-------
Common practice; two makers who fitted the waist when zip and band were in, and took all out again.
"""

from collections.abc import Iterator

from seqplan.base.ids import RuleSlug
from seqplan.base.strength import Strength
from seqplan.graph.reason import Reason
from seqplan.model.operation import Action, Operation
from seqplan.model.piece import Segment
from seqplan.recipes.construction import Construction
from seqplan.rules.rule import Rule, arc
from seqplan.surface.ring import EdgeEnd


def _derive(c: Construction) -> Iterator[Reason]:
    for fit in c.acting(Action.FIT):
        for fixed in c.meeting(fit, *_FIXING):
            yield arc(RULE, fit, fixed)
        beside = _beside(c, fit)
        for zip_ in c.acting(Action.SET_ZIP):
            if beside & set(zip_.segments):
                yield arc(RULE, fit, zip_)


_FIXING = (Action.SET_ON, Action.TURN_UP, Action.SET_ZIP)


def _beside(c: Construction, fit: Operation) -> set[Segment]:
    """The edges that meet what is fitted."""
    ends = (EdgeEnd(segment, at_end) for segment in fit.segments for at_end in (False, True))
    return {c.rings.across(end).neighbour.segment for end in ends}


RULE = Rule(RuleSlug("fitted-before-fixed"), Strength.SHOULD, _derive, __doc__ or "", numbers=(62,))
