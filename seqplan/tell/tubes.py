"""Two tubes or bags that a seam joins: one of them is slipped into the other."""

from collections.abc import Collection, Iterable, Sequence
from typing import NamedTuple

from seqplan.base.ids import EntryId, OpId, PieceId
from seqplan.model.piece import Segment
from seqplan.recipes.construction import Construction
from seqplan.surface.glued import Glue, Part, Surface


class Tubes(NamedTuple):
    """Two tubes: the pieces of the smaller, and of the larger.

    ``inner`` is empty where they are equally large, so that either may be slipped in.
    """

    inner: frozenset[PieceId]
    outer: frozenset[PieceId]


def tubes_at(
    c: Construction, seam: EntryId, before: Collection[OpId], *, is_ring: bool
) -> Tubes | None:
    """Find the tubes that a seam joins.

    Parameters
    ----------
    c
        The garment.
    seam
        The entry of the seam.
    before
        The operations that are done by then.
    is_ring
        Whether the seam goes all the way round by then.

    Returns
    -------
    Tubes or None
        ``None`` if it joins no two tubes.
    """
    glues = c.shapes[seam].glues
    if not glues:
        return None
    sewn = [
        glue
        for shape in c.joins
        if shape.entry.id != seam and c.main(shape.entry.id).id in before
        for glue in shape.glues
    ]
    first, second = glues[0].first, glues[0].second
    parts = Surface(c.rings, sewn).parts_with({first.piece, second.piece})
    one, other = _part(c, parts, first), _part(c, parts, second)
    if one is other:
        return None
    if not all(
        len(part.loops) > 1 or (is_ring and _is_bag(c, part, sewn)) for part in (one, other)
    ):
        return None
    small, large = sorted((one, other), key=lambda part: len(part.discs))
    is_smaller = len(small.discs) < len(large.discs)
    return Tubes(_pieces(small) if is_smaller else frozenset(), _pieces(large))


def _is_bag(c: Construction, part: Part, sewn: Iterable[Glue]) -> bool:
    """Whether the one opening of a part, at which it is joined now, is that of a bag.

    A bag has more than one seam; a single one leaves the cloth flat.
    """
    inside = [glue for glue in sewn if c.rings.disc(glue.first) in part.discs]
    return len(part.loops) == 1 and len(inside) > 1


def _part(c: Construction, parts: Sequence[Part], segment: Segment) -> Part:
    disc = c.rings.disc(segment)
    return next(part for part in parts if disc in part.discs)


def _pieces(part: Part) -> frozenset[PieceId]:
    return frozenset(piece for piece, _ in part.discs)
