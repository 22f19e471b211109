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

from seqplan.base.ids import EntryId, RuleSlug
from seqplan.base.strength import Strength
from seqplan.graph.reason import Reason
from seqplan.model.operation import Action, Operation
from seqplan.recipes.construction import Construction
from seqplan.rules.rule import Rule, arc


def _derive(c: Construction) -> Iterator[Reason]:
    for gather in c.acting(Action.GATHER):
        for seam in _run_over(c, gather):
            for op in c.doing(seam, Action.SEW, Action.ENCLOSE, Action.FINISH, Action.PRESS):
                yield arc(RULE, op, gather)


def _run_over(c: Construction, gather: Operation) -> tuple[EntryId, ...]:
    """The seams between the gathered edges, as the gathering or the seam that takes it up runs."""
    found: list[EntryId] = []
    for entry in (gather.entry, *c.seams_at(gather.segments)):
        for link in (link for stretch in c.stretches.get(entry, ()) for link in stretch.links):
            edges = {end.segment for end in link.ends}
            # A cap of a sleeve meets itself over the underarm seam, and is gathered flat.
            if edges <= set(gather.segments) and len({c.rings.disc(edge) for edge in edges}) > 1:
                found += link.junctions
    return tuple(dict.fromkeys(found))


RULE = Rule(RuleSlug("gathers-after-seams"), Strength.SHOULD, _derive, __doc__ or "", numbers=(16,))
