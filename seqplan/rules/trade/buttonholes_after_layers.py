"""Buttonholes are worked when all layers of the edge lie in place.

Why
---
They go through outer cloth, interfacing and facing or band; worked before, they have to be matched
or are covered.

Fires
-----
`bands` or `waistband`, with all its parts, before the buttonholes in that band; a facing before
buttonholes in the faced piece, and the turning of it; the hem of a pocket's mouth before
buttonholes in the pocket, and these before it is stitched on.

Stays quiet
-----------
The piece has neither band nor facing, as a front band folded in one with the front. Where the
buttonholes name an edge (`front.edge`), what is done to other edges does not matter.

Sources
-------
Apparel: Design, Textiles & Construction, Goodheart-Willcox, 2012, p. 465; Making buttonholes,
secrets of self-sufficiency; The Bound Buttonhole, Circular 442, University of Hawaii.
"""

from collections.abc import Iterator

from seqplan.base.ids import PieceId, RuleSlug
from seqplan.base.strength import Strength
from seqplan.graph.reason import Reason
from seqplan.model.entry import Entry, SeamKind, Verb
from seqplan.model.operation import Action, Operation
from seqplan.recipes.construction import Construction
from seqplan.rules.crossings import turned_by_hand
from seqplan.rules.rule import Rule, arc


def _derive(c: Construction) -> Iterator[Reason]:
    touching: dict[PieceId, list[Entry]] = {}
    for entry in c.garment.entries:
        for piece in _touched(entry):
            touching.setdefault(piece, []).append(entry)
    for hole in c.acting(Action.BUTTONHOLE):
        named = {place.name for place in c.entry(hole).places if place.piece in hole.pieces}
        found = (entry for piece in hole.pieces for entry in touching.get(piece, ()))
        for entry in dict.fromkeys(found):
            if entry.verb is Verb.PATCH_POCKET and hole.pieces & set(entry.pieces):
                yield from _in_a_pocket(c, entry, hole)
            elif any(_layers(c, entry, piece, named) for piece in hole.pieces):
                for op in (*c.of_entry[entry.id], *turned_by_hand(c, entry.id)):
                    yield arc(RULE, op, hole)


def _touched(entry: Entry) -> frozenset[PieceId]:
    edges = (ref.piece for ref in (*entry.run, *entry.to))
    return frozenset((*edges, *entry.pieces, *entry.partners))


def _in_a_pocket(c: Construction, entry: Entry, hole: Operation) -> Iterator[Reason]:
    """Through the hem of its mouth, while the pocket lies free."""
    for op in c.doing(entry.id, Action.TURN_UP, Action.HEM):
        yield arc(RULE, op, hole)
    yield arc(RULE, hole, c.main(entry.id), key="because-buttonhole-while-free")


def _layers(c: Construction, entry: Entry, piece: PieceId, named: set[str | None]) -> bool:
    """Whether an entry lays a further layer under a piece, or folds it over as a band.

    Where the author names the edge at which the buttonholes are, only what is done there counts.
    """
    if entry.verb in {Verb.BAND, Verb.STRAP}:
        return piece in (*entry.partners, *entry.pieces)
    edges = {ref.edge for ref in (*entry.run, *entry.to) if ref.piece == piece}
    at_edge = named & set(c.garment.piece[piece].edge_names)
    is_there = bool(edges & at_edge) if at_edge else bool(edges)
    if entry.verb is Verb.HEM:
        return is_there and bool(at_edge)
    return is_there and entry.seam in {SeamKind.FACED, SeamKind.ENCLOSED}


RULE = Rule(
    RuleSlug("buttonholes-after-layers"), Strength.SHOULD, _derive, __doc__ or "", numbers=(47,)
)
