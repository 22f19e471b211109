"""A seam that is trimmed where a band or casing will cross it is trimmed before.

Why
---
A curve such as a crotch is sewn a second time and trimmed to a narrow allowance; once the band lies
over its end, neither needle nor scissors get there.

Fires
-----
`{trim: [front.crotch, back.crotch]}` before the waistband that runs over the crotch seam.

Stays quiet
-----------
The part that is trimmed does not reach the band; or a hem runs over it, inside which allowances are
trimmed when it is turned up. A second row of stitches that is called topstitching is ordered by the
rule about topstitching.

Sources
-------
Sewing for Fun 3, Publication 346-005, Virginia Tech, 1981 (its list of skills); that it comes
before the band: common practice.
"""

from collections.abc import Iterator

from seqplan.base.ids import EntryId, RuleSlug
from seqplan.base.strength import Strength
from seqplan.graph.reason import Reason
from seqplan.model.entry import Verb
from seqplan.model.operation import Action
from seqplan.model.piece import Segment
from seqplan.recipes.construction import Construction
from seqplan.recipes.shape import COVERING
from seqplan.rules.rule import Rule, arc
from seqplan.surface.ring import EdgeEnd


def _derive(c: Construction) -> Iterator[Reason]:
    trims = [op for op in c.acting(Action.TRIM) if c.entry(op).verb is Verb.TRIM]
    for id_, demand in c.meetings.demands.items() if trims else ():
        if c.garment.entry[id_].verb not in COVERING - {Verb.HEM}:
            continue
        beside = _beside(c, id_)
        for trim in trims:
            is_crossed = demand.always.intersection(c.seams_at(trim.segments))
            if is_crossed and beside & set(trim.segments):
                yield arc(RULE, trim, c.opening(id_))


def _beside(c: Construction, entry: EntryId) -> frozenset[Segment]:
    """The cut edges that the edges of an entry meet at their ends."""
    ends = (EdgeEnd(segment, at) for segment in c.shapes[entry].run for at in (True, False))
    return frozenset(c.rings.across(end).neighbour.segment for end in ends)


RULE = Rule(
    RuleSlug("trimmed-before-banded"), Strength.SHOULD, _derive, __doc__ or "", numbers=(66,)
)
