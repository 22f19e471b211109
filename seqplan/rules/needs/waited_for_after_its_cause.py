"""What is waited for has begun: cloth is wet before it dries, and out before it comes back.

Why
---
A wait before the bath dries nothing.

Fires
-----
`dye` (`wet: yes`) before `{wait: 12 hours, on: tape, to: dry}`; `{send out: front}` before
`{wait: 48 hours, on: front, to: come back}`; `{pretreat: linen}` before a wait `to: dry` for pieces
of linen.

Stays quiet
-----------
The wait has another purpose, or the same piece gets wet, or is sent out, more than once: then the
`after:` of the wait says which is meant. What has to set is named there, too.

Sources
-------
Follows from what the operations make.
"""

from collections.abc import Iterator

from seqplan.base.ids import RuleSlug
from seqplan.base.strength import Strength
from seqplan.graph.reason import Reason, ReasonKind
from seqplan.model.entry import Purpose
from seqplan.model.operation import Action
from seqplan.recipes.construction import Construction
from seqplan.recipes.waiting import causes_of
from seqplan.rules.rule import Rule, arc


def _derive(c: Construction) -> Iterator[Reason]:
    for wait in c.acting(Action.WAIT):
        if c.entry(wait).purpose in {Purpose.DRY, Purpose.COME_BACK}:
            for cause in causes_of(c, wait):
                yield arc(RULE, cause, wait)


RULE = Rule(
    RuleSlug("waited-for-after-its-cause"),
    Strength.MUST,
    _derive,
    __doc__ or "",
    kind=ReasonKind.NEEDS,
)
