"""To which side the allowances of a seam are pressed where the author names none.

One answer for the sentence and for the picture, so that they cannot differ. Common practice:
away from gathers, towards the side that is topstitched, with the bag of a pocket to the front,
else to the back; and where nothing else decides, towards what the entry names first.
"""

from collections.abc import Callable, Iterable, Iterator
from typing import Final

from seqplan.base.ids import PieceId
from seqplan.model.entry import Entry, Verb
from seqplan.model.piece import Segment, Worn
from seqplan.recipes.construction import Construction
from seqplan.tell.names import readable

BODY: Final = "body"
"""An author's word for the side of a seam to which the other is sewn: a sleeve to the body."""


def bags_at(c: Construction, segments: Iterable[Segment]) -> tuple[PieceId, ...]:
    """The bags of pockets that were sewn to some of these edges."""
    run = set(segments)
    pockets = (e for e in c.garment.entries if e.verb is Verb.IN_SEAM_POCKET)
    return tuple(id_ for e in pockets if run & set(c.shapes[e.id].run) for id_ in e.pieces)


def pressed_side(c: Construction, entry: Entry) -> tuple[PieceId, ...]:
    """The pieces towards which both allowances of a seam are pressed by custom.

    Parameters
    ----------
    c
        The garment.
    entry
        A seam for which the author names no direction.

    Returns
    -------
    tuple of PieceId
        Those that lie on this side of the seam only; none where either side will do, because
        both are cut from the same pieces.
    """
    one, other = _sides(c, entry)
    if not one or not other:
        return ()
    if readable(entry.topstitch or "") == BODY:
        return other
    for wanted in _customs(c, entry):
        found = [side for side in (one, other) if all(map(wanted, side))]
        if len(found) == 1:
            return found[0]
    return other if len(other) < len(one) else one


def worn(c: Construction, piece: PieceId) -> Worn | None:
    """Where a piece is worn: as the file says, or as the piece is simply called."""
    found = c.garment.piece[piece]
    return found.worn or next((place for place in Worn if place.value == found.title), None)


def is_called(c: Construction, piece: PieceId, name: str) -> bool:
    """Whether an author's word for a side means a piece: its title, a word of it, or its worn."""
    found = c.garment.piece[piece]
    worn = found.worn.value if found.worn else ""
    return bool(name) and name in {found.title, worn, *found.title.split()}


def _customs(c: Construction, entry: Entry) -> Iterator[Callable[[PieceId], bool]]:
    """What draws allowances to a side, the strongest first."""
    stitched = readable(entry.topstitch or "")
    yield lambda piece: is_called(c, piece, stitched)
    gathered = _gathered(c, entry)
    if gathered:
        yield lambda piece: piece not in gathered
    wanted = Worn.FRONT if bags_at(c, c.main(entry.id).segments) else Worn.BACK
    yield lambda piece: worn(c, piece) is wanted


def _sides(c: Construction, entry: Entry) -> tuple[tuple[PieceId, ...], tuple[PieceId, ...]]:
    """The pieces on either side of a seam, without those that lie on both."""
    one = dict.fromkeys(ref.piece for ref in entry.run)
    other = dict.fromkeys(segment.piece for segment in c.shapes[entry.id].to)
    return (
        tuple(piece for piece in one if piece not in other),
        tuple(piece for piece in other if piece not in one),
    )


def _gathered(c: Construction, entry: Entry) -> frozenset[PieceId]:
    """The pieces of a seam whose edges at it are gathered."""
    gathers = (e.id for e in c.garment.entries if e.verb is Verb.GATHER)
    edges = {segment for id_ in gathers for segment in c.shapes[id_].run}
    shape = c.shapes[entry.id]
    return frozenset(s.piece for s in (*shape.run, *shape.to) if s in edges)
