"""A garment is looked over when everything else is done.

Why
---
What is sewn after the inspection has not been looked at.

Fires
-----
Everything that is done to the garment before `{inspect: all}`.

Stays quiet
-----------
Some pieces only are inspected: a gate on the way, which stands where you put it. The last press
may follow the inspection.

Sources
-------
Sewing machine operation, Guide C-214, New Mexico State University (final press and inspection);
Production sequence of basic T-shirt, Textile Flow Chart, 2015 (inspection, then ironing).
"""

from collections.abc import Iterator

from seqplan.base.ids import RuleSlug
from seqplan.base.strength import Strength
from seqplan.graph.reason import Reason
from seqplan.model.operation import Action, Operation
from seqplan.recipes.construction import Construction
from seqplan.rules.rule import Rule, arc


def _derive(c: Construction) -> Iterator[Reason]:
    everything = frozenset(c.garment.piece)
    for look in c.acting(Action.INSPECT):
        if look.pieces < everything:
            continue
        for entry in c.garment.entries:
            done = [op for op in c.of_entry[entry.id] if op.pieces and not _may_follow(op)]
            yield from (arc(RULE, op, look) for op in done[-1:])


def _may_follow(op: Operation) -> bool:
    return op.action in {Action.INSPECT, Action.SEND_OUT} or op.setup.station == "iron"


RULE = Rule(RuleSlug("inspected-last"), Strength.SHOULD, _derive, __doc__ or "", numbers=(75,))
