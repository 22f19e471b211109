"""Bound buttonholes are made in the outer cloth, before a facing or band lies behind it.

Why
---
They are slashed and turned to the wrong side, which a facing would cover; the facing is opened
behind them once it lies as it will.

Fires
-----
`holes`, with its pressing, before the facing seam of the same piece; the facing, turned and
pressed, before `holes/behind`; the fusing of the piece before `holes`.

Stays quiet
-----------
The buttonholes are worked with thread. Nothing is laid behind the piece.

Sources
-------
The Bound Buttonhole, Circular 442, University of Hawaii; Apparel: Design, Textiles & Construction,
Goodheart-Willcox, 2012, p. 465.
"""

from collections.abc import Iterator

from seqplan.base.ids import RuleSlug
from seqplan.base.strength import Strength
from seqplan.graph.reason import Reason
from seqplan.model.entry import SeamKind, Verb
from seqplan.model.operation import Action
from seqplan.recipes.construction import Construction
from seqplan.rules.crossings import turned_by_hand
from seqplan.rules.rule import Rule, arc, chain


def _derive(c: Construction) -> Iterator[Reason]:
    for hole in c.acting(Action.BIND_HOLE):
        making = c.of_entry[hole.entry]
        behind = c.doing(hole.entry, Action.OPEN_BEHIND)
        yield from chain(RULE, making, key="because-bound-in-order")
        for entry in c.garment.entries:
            covers = entry.verb is Verb.BAND or entry.seam in {SeamKind.FACED, SeamKind.ENCLOSED}
            touched = {ref.piece for ref in (*entry.run, *entry.to)} | set(entry.partners)
            if not covers or not hole.pieces & touched:
                continue
            yield arc(RULE, making[-2] if behind else making[-1], c.main(entry.id))
            for opened in behind:
                for op in (*c.of_entry[entry.id], *turned_by_hand(c, entry.id)):
                    yield arc(RULE, op, opened, key="because-opened-behind")
        for fuse in c.on_pieces(hole.pieces, Action.FUSE):
            yield arc(RULE, fuse, hole, key="because-fused-before-bound", strength=Strength.SHOULD)


RULE = Rule(
    RuleSlug("bound-buttonholes-before-facing"),
    Strength.MUST,
    _derive,
    __doc__ or "",
    numbers=(47,),
)
