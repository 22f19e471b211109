"""A hem is turned up, then stitched, then pressed.

Why
---
The fold is measured and pressed while the edge can still be moved.

Fires
-----
`hem/turn-up`, `hem`, `hem/press`, one after the other.

Stays quiet
-----------
A part that is left out is passed over.

Sources
-------
Hemming Skills Level 2 & 3, Oregon 4-H fact sheet 320-32, 2014; Putting in Hems (clothing
handbook).
"""

from collections.abc import Iterator

from seqplan.base.ids import RuleSlug
from seqplan.base.strength import Strength
from seqplan.graph.reason import Reason
from seqplan.model.entry import Verb
from seqplan.model.operation import Action
from seqplan.recipes.construction import Construction
from seqplan.rules.rule import Rule, chain


def _derive(c: Construction) -> Iterator[Reason]:
    for entry in c.garment.entries:
        if entry.verb is Verb.HEM:
            folding = (op for op in c.of_entry[entry.id] if op.action is not Action.FINISH)
            yield from chain(RULE, folding)


RULE = Rule(RuleSlug("hem-in-order"), Strength.MUST, _derive, __doc__ or "", numbers=(71,))
