"""Where the notches of a piece stand along its edges."""

from typing import Final, NamedTuple

from seqplan.model.piece import Cut, Notch, Piece
from seqplan.shape.outline import lay

FOLD: Final = "fold"
"""What notches call the fold of a piece that is cut on one."""


class Standing(NamedTuple):
    """A notch on one edge of the list.

    Parameters
    ----------
    notch
        The notch.
    before, after
        Millimetres along the stitching line from the start and to the end of the edge; ``None``
        where nobody knows.
    """

    notch: Notch
    before: float | None
    after: float | None


def standing(piece: Piece, place: int) -> tuple[Standing, ...]:
    """The notches on one edge, from its start to its end.

    Where it is not known how far all of them are from one end, they stand as they are listed.

    Parameters
    ----------
    piece
        The piece as described.
    place
        The place of the edge in its list.
    """
    name, whole = piece.edges[place].name, length_of(piece, place)
    found = [_standing(piece, place, n, whole) for n in piece.notches if n.edge == name]
    befores = [item.before for item in found if item.before is not None]
    afters = [item.after for item in found if item.after is not None]
    if len(befores) == len(found):
        found.sort(key=lambda item: item.before or 0.0)
    elif len(afters) == len(found):
        found.sort(key=lambda item: -(item.after or 0.0))
    return tuple(found)


def shares(piece: Piece, place: int) -> tuple[tuple[Notch, float], ...]:
    """The notches on one edge, each with how far along it stands, from 0 to 1, for a picture.

    Where a length is not known they stand at even distances.
    """
    found = standing(piece, place)
    exact = [_share(item) for item in found]
    even = [(number + 1) / (len(found) + 1) for number in range(len(found))]
    is_exact = all(share is not None for share in exact)
    return tuple(
        (item.notch, share if is_exact and share is not None else spread)
        for item, share, spread in zip(found, exact, even, strict=True)
    )


def beside(piece: Piece, place: int) -> tuple[str | None, str | None]:
    """What an edge meets at its start and at its end: the name of an edge, or ``fold``."""
    edges, is_fold = piece.edges, piece.cut is Cut.FOLD
    is_last = place + 1 == len(edges)
    before = FOLD if is_fold and place == 0 else edges[place - 1].name
    after = FOLD if is_fold and is_last else edges[(place + 1) % len(edges)].name
    is_alone = len(edges) == 1 and not is_fold
    return (None, None) if is_alone else (before, after)


def length_of(piece: Piece, place: int) -> float | None:
    """The length of one edge of the list in millimetres, as far as it is known."""
    laid = lay(piece)
    if laid is not None and laid.edges[place]:
        return laid.length[place]
    stated = dict(piece.lengths).get(piece.edges[place].name)
    return float(stated.mm) if stated is not None else None


def _standing(piece: Piece, place: int, notch: Notch, whole: float | None) -> Standing:
    if notch.is_middle:
        half = whole / 2 if whole is not None else None
        return Standing(notch, half, half)
    if notch.length is None:
        return Standing(notch, None, None)
    near = float(notch.length.mm)
    far = whole - near if whole is not None else None
    is_at_end = notch.neighbour == beside(piece, place)[1]
    return Standing(notch, far, near) if is_at_end else Standing(notch, near, far)


def _share(item: Standing) -> float | None:
    if item.notch.is_middle:
        return 0.5
    if item.before is None or item.after is None:
        return None
    return item.before / (item.before + item.after)
