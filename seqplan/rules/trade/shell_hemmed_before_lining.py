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

from seqplan.base.ids import EntryId, PieceId, RuleSlug
from seqplan.base.strength import Strength
from seqplan.graph.reason import Reason
from seqplan.model.entry import Entry, Verb
from seqplan.model.piece import Layer
from seqplan.recipes.construction import Construction
from seqplan.rules.rule import Rule, arc


def _derive(c: Construction) -> Iterator[Reason]:
    hems = [entry for entry in c.garment.entries if entry.verb is Verb.HEM]
    hemming: dict[tuple[PieceId, str], list[EntryId]] = {}
    for entry in hems:
        for ref in entry.run:
            hemming.setdefault((ref.piece, ref.edge), []).append(entry.id)
    for lining in hems:
        outer = (hem for edge in _lined_edges(c, lining) for hem in hemming.get(edge, ()))
        for hem in dict.fromkeys(outer):
            if hem != lining.id:
                yield arc(RULE, c.main(hem), c.opening(lining.id))


def _lined_edges(c: Construction, hem: Entry) -> Iterator[tuple[PieceId, str]]:
    """The edges of the outer cloth under which an entry hems a lining."""
    for ref in hem.run:
        piece = c.garment.piece[ref.piece]
        if piece.layer is Layer.LINING and piece.like is not None:
            yield piece.like, ref.edge


RULE = Rule(
    RuleSlug("shell-hemmed-before-lining"), Strength.SHOULD, _derive, __doc__ or "", numbers=(69,)
)
