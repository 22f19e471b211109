"""Buttonholes are worked when all layers of the edge lie in place.

Why
---
They go through outer cloth, interfacing and facing or band; worked before, they have to be matched
or are covered.

Fires
-----
`bands` or `waistband`, with all its parts, before the buttonholes in that band; a facing before
buttonholes in the faced edge.

Stays quiet
-----------
The piece has neither band nor facing, as a front band folded in one with the front.

Sources
-------
Apparel: Design, Textiles & Construction, Goodheart-Willcox, 2012, p. 465; Making buttonholes,
secrets of self-sufficiency; Clothing leaflet 442, University of Hawaii.
"""

from collections.abc import Iterator

from seqplan.base.ids import PieceId, RuleSlug
from seqplan.base.strength import Strength
from seqplan.graph.reason import Reason
from seqplan.model.entry import Entry, SeamKind, Verb
from seqplan.model.operation import Action
from seqplan.recipes.construction import Construction
from seqplan.rules.rule import Rule, arc


def _derive(c: Construction) -> Iterator[Reason]:
    for hole in c.acting(Action.BUTTONHOLE):
        for entry in c.garment.entries:
            if any(_layers(c, entry, piece) for piece in hole.pieces):
                for op in c.of_entry[entry.id]:
                    yield arc(RULE, op, hole)


def _layers(c: Construction, entry: Entry, piece: PieceId) -> bool:
    """Whether an entry lays a further layer under a piece, or folds it over as a band."""
    if entry.verb in {Verb.BAND, Verb.PATCH_POCKET}:
        return piece in entry.partners or (
            entry.verb is Verb.PATCH_POCKET and piece in entry.pieces
        )
    is_layered = entry.seam in {SeamKind.FACED, SeamKind.ENCLOSED}
    return is_layered and piece in c.main(entry.id).pieces


RULE = Rule(
    RuleSlug("buttonholes-after-layers"), Strength.SHOULD, _derive, __doc__ or "", numbers=(47,)
)
