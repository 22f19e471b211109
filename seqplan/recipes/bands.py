"""What a strip is set on by, and which of its ends nobody else takes up."""

from collections.abc import Iterator

from seqplan.base.ids import PieceId
from seqplan.model.entry import Ends, Entry, Verb
from seqplan.model.garment import Garment
from seqplan.model.piece import EdgeRef, Piece

ATTACH = "attach"
"""What the edge of a band is called by which it is set on."""


def edges_to_set_on(garment: Garment, piece: Piece) -> tuple[str, ...]:
    """The edge by which a piece is set on; several where that is not clear.

    It is called ``attach``, or is the first of a strip, or the one edge that no seam takes up.
    """
    names = piece.edge_names
    if ATTACH in names:
        return (ATTACH,)
    if piece.is_strip:
        return names[:1]
    sewn = {
        ref.edge
        for entry in garment.entries
        if entry.verb is Verb.SEW
        for ref in (*entry.run, *entry.to)
        if ref.piece == piece.id
    }
    return tuple(name for name in names if name not in sewn)


def named_elsewhere(garment: Garment, entry: Entry) -> frozenset[tuple[PieceId, str]]:
    """The edges that other entries name."""
    return frozenset(
        (ref.piece, ref.edge)
        for other in garment.entries
        if other.id != entry.id
        for ref in (*other.run, *other.to, *caught_edges(other))
    )


def caught_edges(entry: Entry) -> Iterator[EdgeRef]:
    """The edges that an entry catches between the two sides of its seam."""
    return (caught.edge for caught in entry.between if caught.edge is not None)


def free_ends(garment: Garment, entry: Entry) -> tuple[tuple[PieceId, str], ...]:
    """The ends of the strips that an entry sets on, as far as no other entry names them."""
    named = named_elsewhere(garment, entry)
    found = []
    for id_ in entry.partners:
        piece = garment.piece[id_]
        set_on = edges_to_set_on(garment, piece) if piece.is_strip else piece.edge_names
        folded = {edge.name for edge in piece.edges if edge.is_folded}
        found += [
            (id_, name)
            for name in piece.edge_names
            if name not in set_on and name not in folded and (id_, name) not in named
        ]
    return tuple(found)


def ends_of(garment: Garment, entry: Entry) -> Ends:
    """What becomes of the ends of a band: closed, unless the author or another entry says more."""
    if entry.ends is not None:
        return entry.ends
    return Ends.CLOSED if free_ends(garment, entry) else Ends.OPEN
