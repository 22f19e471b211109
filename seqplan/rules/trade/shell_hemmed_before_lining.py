"""The outer cloth is hemmed before its lining.

Why
---
The lining is cut to the finished length of the garment and hemmed a little shorter, so that it does
not show.

Fires
-----
The hem of `front` before the hem of `front-lining`, which is like it.

Stays quiet
-----------
The lining is sewn to the hem, or another edge of it is hemmed.

Sources
-------
Lining pants and skirts II, Online Fabric Store.
"""

from collections.abc import Iterator

from seqplan.base.ids import RuleSlug
from seqplan.base.strength import Strength
from seqplan.graph.reason import Reason
from seqplan.model.entry import Entry, Verb
from seqplan.model.piece import Layer
from seqplan.recipes.construction import Construction
from seqplan.rules.rule import Rule, arc


def _derive(c: Construction) -> Iterator[Reason]:
    hems = [entry for entry in c.garment.entries if entry.verb is Verb.HEM]
    for hem in hems:
        for lining in hems:
            if lining is not hem and _is_of_the_lining(c, hem, lining):
                yield arc(RULE, c.main(hem.id), c.opening(lining.id))


def _is_of_the_lining(c: Construction, hem: Entry, lining: Entry) -> bool:
    """Whether an entry hems the lining where the other hems the outer cloth."""
    hemmed = {(ref.piece, ref.edge) for ref in hem.run}
    pieces = ((c.garment.piece[ref.piece], ref.edge) for ref in lining.run)
    return any(
        piece.layer is Layer.LINING and piece.like is not None and (piece.like, edge) in hemmed
        for piece, edge in pieces
    )


RULE = Rule(
    RuleSlug("shell-hemmed-before-lining"), Strength.SHOULD, _derive, __doc__ or "", numbers=(69,)
)
