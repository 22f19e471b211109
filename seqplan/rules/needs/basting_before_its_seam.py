"""Basting comes before the seam that it prepares, and is removed after it.

Why
---
Basting holds the cloth until the seam does.

Fires
-----
`{baste: front.side, to: back.side}` before the seam on the same edges; the seam before its
`remove basting`.

Stays quiet
-----------
No seam is sewn on the basted edges.

Sources
-------
Follows from what the operations make.
"""

from collections.abc import Iterator

from seqplan.base.ids import RuleSlug
from seqplan.base.strength import Strength
from seqplan.graph.reason import Reason, ReasonKind
from seqplan.model.entry import Verb
from seqplan.model.operation import Action
from seqplan.recipes.construction import Construction
from seqplan.rules.rule import Rule, arc


def _derive(c: Construction) -> Iterator[Reason]:
    for op in c.acting(Action.BASTE):
        if c.entry(op).verb is not Verb.BASTE:
            continue
        for seam in c.seams_at(op.segments):
            yield arc(RULE, op, c.main(seam))
    for op in c.acting(Action.REMOVE_BASTING):
        if c.entry(op).verb is not Verb.REMOVE_BASTING:
            continue
        fits = [fit for fit in c.acting(Action.FIT) if op.pieces <= fit.pieces]
        wanted_by = (Action.BASTE,) if fits else (Action.BASTE, Action.SEW, Action.SET_ZIP)
        for other in (*c.meeting(op, *wanted_by), *fits):
            yield arc(RULE, other, op, key="because-basting-removed-after")


RULE = Rule(
    RuleSlug("basting-before-its-seam"),
    Strength.MUST,
    _derive,
    __doc__ or "",
    kind=ReasonKind.NEEDS,
)
