"""What something is fastened to is there first.

Why
---
A facing end is sewn to the tape of a zip that is set, a label to a band that is on.

Fires
-----
`zip` before `facing-ends`, which tacks the facing to the zip; `waistband/close` before belt loops
are sewn down at the fold of the band.

Stays quiet
-----------
The entry fastens to nothing by name, and the edge is one that a seam takes up.

Sources
-------
Follows from what the operations make.
"""

from collections.abc import Iterator

from seqplan.base.ids import EntryId, RuleSlug
from seqplan.base.strength import Strength
from seqplan.graph.reason import Reason, ReasonKind
from seqplan.model.entry import Verb
from seqplan.model.operation import Action, Operation
from seqplan.recipes.construction import Construction
from seqplan.rules.rule import Rule, arc


def _derive(c: Construction) -> Iterator[Reason]:
    for op in c.acting(Action.TACK):
        name = c.entry(op).to_name
        if name is None:
            continue
        for other in c.operations:
            holds = other.action in _HOLDING and name in other.notions
            if other.entry != op.entry and (holds or other is _entry_end(c, name)):
                yield arc(RULE, other, op, name=name)
    bands = [entry for entry in c.garment.entries if entry.verb is Verb.BAND]
    for op in c.acting(Action.STITCH_ON):
        entry = c.entry(op)
        if entry.verb is not Verb.ATTACH or c.seams_at(op.segments):
            continue
        for band in bands:
            if any(segment.piece in band.partners for segment in op.segments):
                yield arc(RULE, c.closing(band.id), op, name=band.id)


_HOLDING = frozenset({Action.SET_ZIP, Action.ATTACH, Action.THREAD})


def _entry_end(c: Construction, name: str) -> Operation | None:
    """The operation with which the entry called ``name`` holds, if there is such an entry."""
    return c.closing(EntryId(name)) if EntryId(name) in c.garment.entry else None


RULE = Rule(
    RuleSlug("there-before-fastened"),
    Strength.MUST,
    _derive,
    __doc__ or "",
    numbers=(68,),
    kind=ReasonKind.NEEDS,
)
