"""Which seams close a piece to a tube: as long as one of them is open, it lies flat."""

from collections.abc import Iterable, Iterator
from dataclasses import replace
from functools import cached_property
from itertools import combinations

from seqplan.base.ids import EntryId, PieceId
from seqplan.model.entry import Verb
from seqplan.recipes.construction import Construction
from seqplan.recipes.shape import Shape
from seqplan.rules.parts import hanging_together, pieces_of, rings_of
from seqplan.surface.closing import WaysRound
from seqplan.surface.glued import Glue


class Tubes:
    """Finds the seams that close pieces of a garment to tubes.

    Parameters
    ----------
    c
        The garment.
    """

    def __init__(self, c: Construction) -> None:
        self._whole = c
        self._parts: dict[frozenset[PieceId], Construction] = {}

    def closing(self, piece: PieceId) -> Iterator[tuple[EntryId, ...]]:
        """Find the seams that close a piece to a tube.

        Of a seam at the piece only what it sews there counts. One that closes a tube by itself does
        so together with seams elsewhere, as the side seams do with a centre back seam.

        Parameters
        ----------
        piece
            The piece.

        Yields
        ------
        tuple of EntryId
            Seams of which one at least is open while the piece lies flat.
        """
        if piece in self._together:
            yield from _closing(self._part_with(piece), piece)

    def _part_with(self, piece: PieceId) -> Construction:
        """What hangs together with a piece, as a garment of its own."""
        pieces = self._together[piece]
        if pieces not in self._parts:
            self._parts[pieces] = replace(
                self._whole,
                rings=rings_of(self._whole, pieces),
                shapes={s.entry.id: s for s, joined in self._sewn if joined <= pieces},
            )
        return self._parts[pieces]

    @cached_property
    def _sewn(self) -> tuple[tuple[Shape, frozenset[PieceId]], ...]:
        """The seams, each with the pieces that it joins or catches."""
        return tuple(
            (shape, pieces_of((*shape.glues, *shape.riders)))
            for shape in self._whole.joins
            if shape.entry.verb is Verb.SEW
        )

    @cached_property
    def _together(self) -> dict[PieceId, frozenset[PieceId]]:
        return hanging_together(joined for _, joined in self._sewn)


def _closing(c: Construction, piece: PieceId) -> Iterator[tuple[EntryId, ...]]:
    at_piece = {shape.entry.id: _at(shape, piece) for shape in c.joins}
    ours = {id_: shape for id_, shape in at_piece.items() if shape.glues or shape.riders}
    others = [shape for shape in c.joins if shape.entry.id not in ours]
    ways = WaysRound(c.body(others))
    seams = {id_: c.body([shape]).glues for id_, shape in ours.items()}
    alone = [id_ for id_, glues in seams.items() if ways.added_by(glues) > 0]
    if len(alone) == 1:
        seam = seams[alone[0]]
        closes_by_itself = WaysRound(c.body(())).added_by(seam) > 0
        helping = [] if closes_by_itself else others
        elsewhere = (o.entry.id for o in helping if _lies_flat(c, seam, others, o))
        yield (*alone, *sorted(elsewhere))
    elif alone:
        # With its shoulders sewn a body lies flat round its neck, with its sides sewn it does not;
        # which of the two is which, edges do not tell.
        yield tuple(sorted(alone))
    for one, other in combinations(sorted(ours.keys() - set(alone)), 2):
        if ways.added_by((*seams[one], *seams[other])) > 0 and _is_hollow(c, ways, one, other):
            yield one, other


def _is_hollow(c: Construction, ways: WaysRound, one: EntryId, other: EntryId) -> bool:
    """Whether two seams close a tube with all that they sew, and not just go round a point.

    A collar goes round the end of the shoulder seam, and lies flat with it.
    """
    return ways.added_by(c.body([c.shapes[one], c.shapes[other]]).glues) > 0


def _lies_flat(
    c: Construction, seam: tuple[Glue, ...], others: Iterable[Shape], open_: Shape
) -> bool:
    """Whether a seam closes no tube as long as another one is open."""
    sewn = WaysRound(c.body(shape for shape in others if shape is not open_))
    return sewn.added_by(seam) == 0


def _at(shape: Shape, piece: PieceId) -> Shape:
    """A seam as far as it touches a piece."""

    def touching(glues: tuple[Glue, ...]) -> tuple[Glue, ...]:
        return tuple(g for g in glues if piece in {g.first.piece, g.second.piece})

    return shape._replace(glues=touching(shape.glues), riders=touching(shape.riders))
