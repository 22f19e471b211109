"""Notches: small black triangles at an edge that point into the cloth, one for each mark."""

from collections.abc import Iterator
from itertools import pairwise
from typing import Final

from seqplan.draw.figure import INK, Area, Mark
from seqplan.draw.map_lines import length_of, sampled
from seqplan.draw.pattern import Sized
from seqplan.model.piece import Cut, Notch, Piece
from seqplan.shape.notches import shares
from seqplan.surface.portion import part_counts

DEEP: Final = 4.6
_HALF: Final = 2.1
_APART: Final = 4.8
"""Points: how deep one mark is, half of its base, how far the marks of one notch are apart."""


def notch_marks(spot: complex, along: complex, marks: int, size: float = 1.0) -> Iterator[Mark]:
    """Draw a notch.

    Parameters
    ----------
    spot
        Where it is on the edge.
    along
        The direction of the edge, of length 1; the cloth is at its right hand.
    marks
        Of how many marks it is.
    size
        How large, compared with those of the map.
    """
    for number in range(marks):
        base = spot + along * (number - (marks - 1) / 2) * _APART * size
        corners = (
            base - along * _HALF * size,
            base + along * _HALF * size,
            base + along * 1j * DEEP * size,
        )
        yield Area(tuple((p.real, p.imag) for p in corners), INK, role="notch")


def piece_notches(whole: Piece, split: Piece, sized: Sized) -> Iterator[Mark]:
    """Draw the notches of a piece that lies right side up; of a fold, on both halves.

    Parameters
    ----------
    whole, split
        The piece as described, and with its edges as the operations split them.
    sized
        How it is drawn.
    """
    for spot, along, notch in _spots(whole, split, sized):
        yield from notch_marks(spot, along, notch.marks)
        if whole.cut is Cut.FOLD:
            mirrored = complex(2 * sized.axis - spot.real, spot.imag)
            # Its mirror image runs the other way, so that the cloth stays on the same hand.
            yield from notch_marks(mirrored, along.conjugate(), notch.marks)


def _spots(whole: Piece, split: Piece, sized: Sized) -> Iterator[tuple[complex, complex, Notch]]:
    place = 0
    for index, count in enumerate(part_counts(whole.edges, split.edges)):
        parts = [sized.edges[n] for n in range(place, place + count) if n in sized.edges]
        place += count
        line = [point for part in parts for point in part]
        if not any(one != other for one, other in pairwise(line)):
            continue
        total = length_of(line)
        for notch, share in shares(whole, index):
            spot, along = next(sampled(line, 1, total * share, total))
            yield spot, along, notch
