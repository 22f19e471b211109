"""Ring and hand: what is twisted, and legs that are not two."""

from collections.abc import Iterable, Iterator
from typing import Final

from seqplan.base.ids import PieceId
from seqplan.explain.audit.audit import Found, told
from seqplan.explain.audit.ledger import Ledger
from seqplan.model.entry import Verb
from seqplan.model.piece import Cut, Segment
from seqplan.recipes.construction import Construction
from seqplan.surface.glued import Glue, Surface
from seqplan.surface.ring import EdgeEnd

_CROTCH: Final = "crotch"
_INSEAM: Final = "inseam"
_LEGS: Final = 2


def ring_twisted(ledger: Ledger) -> Found:
    """Right side and wrong side do not run into one another.

    Speaks up of the seam, in your order, with which a part can no longer be laid with one side up
    all over: a ring that is closed with a twist, or with one of its seams the wrong side up.
    """
    c = ledger.c
    surface = Surface(c.rings)
    twisted: set[PieceId] = set()
    if all(part.is_two_sided for part in c.finished.parts):
        return
    for entry in c.garment.entries:
        shape = c.shapes[entry.id]
        surface = surface.with_seams(shape.glues)
        for part in surface.parts_with(shape.skins):
            pieces = {piece for piece, _ in part.discs}
            if not part.is_two_sided and not pieces & twisted:
                yield told("ring-twisted", entry.path, entry=entry.id)
            if not part.is_two_sided:
                twisted |= pieces


def legs_not_two(ledger: Ledger) -> Found:
    """Trousers have an opening for each leg, and one for the waist.

    Looks at pairs of pieces with edges called `crotch` and `inseam`, where all of these are sewn to
    one another. Stays quiet where a gusset lies in between, or an end of such a seam meets nothing
    that is open; copies that do not mirror one another are told already.
    """
    c = ledger.c
    legs = [piece for piece in c.garment.pieces if {_CROTCH, _INSEAM} <= set(piece.edge_names)]
    pieces = {piece.id for piece in legs}
    seams = [s for s in c.rings.segments if s.piece in pieces and _is_of_legs(c, s)]
    glues = [glue for glue in c.finished.glues if {glue.first.piece, glue.second.piece} <= pieces]
    sewn = {segment for glue in glues for segment in (glue.first, glue.second)}
    if any(piece.cut is not Cut.PAIR for piece in legs) or not sewn.issuperset(seams):
        return
    loops = [set(loop) for part in _sewn(c, glues).parts_with(pieces) for loop in part.loops]
    ends, waists = (
        {place for place, loop in enumerate(loops) if loop & set(_beyond(c, seams, name))}
        for name in (_INSEAM, _CROTCH)
    )
    if ends and waists and (len(ends) != _LEGS or len(waists) != 1 or ends & waists):
        entry = c.garment.entry[next(g.entry for g in glues if c.rings.name(g.first) == _CROTCH)]
        yield told(
            "legs-not-two",
            entry.path,
            entry=entry.id,
            legs=len(ends),
            waists=len(waists),
            crotches=", ".join(f"{piece}.{_CROTCH}" for piece in sorted(pieces)),
        )


def _sewn(c: Construction, glues: Iterable[Glue]) -> Surface:
    """The legs with their plain seams, without bands and pockets."""
    entries = c.garment.entry
    return Surface(c.rings, (glue for glue in glues if entries[glue.entry].verb is Verb.SEW))


def _is_of_legs(c: Construction, segment: Segment) -> bool:
    return c.rings.name(segment) in {_CROTCH, _INSEAM}


def _beyond(c: Construction, seams: Iterable[Segment], name: str) -> Iterator[Segment]:
    """The edges in which seams of a name end, away from the other of the two: a hem, the waist."""
    for segment in seams:
        if c.rings.name(segment) == name:
            for at_end in (False, True):
                neighbour = c.rings.across(EdgeEnd(segment, at_end)).neighbour.segment
                if not _is_of_legs(c, neighbour):
                    yield neighbour
