"""Seams that run into a gathered edge are sewn and pressed before the gathering rows.

Why
---
The rows run over the flattened allowances; sewn before, they are cut in two by the seam.

Fires
-----
`skirt-sides/press` before `gathers` on the edge into which the side seams run.

Stays quiet
-----------
The gathered edge lies on one piece.

Sources
-------
Kinne & Cooley, Clothing and Health, 1916, lesson 12 (seams before gathering).
"""

from collections.abc import Iterator

from seqplan.base.ids import RuleSlug
from seqplan.base.strength import Strength
from seqplan.graph.reason import Reason
from seqplan.model.operation import Action
from seqplan.recipes.construction import Construction
from seqplan.rules.rule import Rule, arc


def _derive(c: Construction) -> Iterator[Reason]:
    for gather in c.acting(Action.GATHER):
        for stretch in c.stretches.get(gather.entry, ()):
            # A cap of a sleeve meets itself over the underarm seam, and is gathered flat.
            if len({c.rings.disc(segment) for segment in stretch.segments}) == 1:
                continue
            for seam in stretch.junctions:
                for op in c.doing(seam, Action.SEW, Action.ENCLOSE, Action.FINISH, Action.PRESS):
                    yield arc(RULE, op, gather)


RULE = Rule(RuleSlug("gathers-after-seams"), Strength.SHOULD, _derive, __doc__ or "", numbers=(16,))
