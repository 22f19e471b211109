"""The holes through which a cord leaves its casing are worked before the casing is stitched.

Why
---
They go through one layer, the outer one. When the casing is stitched down they would go through
both, and shut the channel.

Fires
-----
`{buttonhole: front.waist}` before `waist`, the casing on that edge, through which a cord is drawn;
where that edge is creased first to find the place, the crease and its opening before the hole.

Stays quiet
-----------
Elastic is drawn through, or nothing: then the buttonhole is one for a button. It is worked at
another edge.

Sources
-------
Common practice.
"""

from collections.abc import Iterator

from seqplan.base.ids import EntryId, RuleSlug
from seqplan.base.strength import Strength
from seqplan.graph.reason import Reason
from seqplan.model.entry import Entry
from seqplan.model.operation import Action
from seqplan.recipes.construction import Construction
from seqplan.rules.rule import Rule, arc


def _derive(c: Construction) -> Iterator[Reason]:
    for hole in c.acting(Action.BUTTONHOLE):
        worked_at = {(p.piece, p.name) for p in c.entry(hole).places if p.piece in hole.pieces}
        for casing in _with_a_cord(c):
            if worked_at & {(ref.piece, ref.edge) for ref in c.garment.entry[casing].run}:
                yield arc(RULE, hole, c.main(casing))
                for fold in c.meeting(c.main(casing), Action.FOLD, Action.UNFOLD):
                    yield arc(
                        RULE,
                        fold,
                        hole,
                        key="because-hole-after-its-fold",
                        strength=Strength.SHOULD,
                    )


def _with_a_cord(c: Construction) -> Iterator[EntryId]:
    """The casings through which something is drawn that is no elastic."""
    for thread in c.acting(Action.THREAD):
        entry = c.entry(thread)
        if entry.into is not None and not _is_elastic(c, entry):
            yield entry.into


def _is_elastic(c: Construction, entry: Entry) -> bool:
    return entry.notion is not None and "elastic" in c.garment.notion[entry.notion].kind.casefold()


RULE = Rule(
    RuleSlug("cord-opening-before-casing"), Strength.MUST, _derive, __doc__ or "", numbers=(64,)
)
