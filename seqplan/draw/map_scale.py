"""How large the pieces of one sheet are drawn: all at one scale, as long as they can be read."""

from collections.abc import Mapping
from typing import Final, NamedTuple

from seqplan.base.ids import PieceId
from seqplan.draw.pattern import Sized

_SMALLEST: Final = 44.0
_THINNEST: Final = 19.0
"""Points that the longer and the shorter side of a piece have at least."""
_NARROW: Final = 4.0
_STRIPS: Final = 2.4
"""A strip is so many times longer than wide, and may take so much more room than other pieces."""
_SEEN: Final = 1.05


class Drawn(NamedTuple):
    """A piece in points of the canvas; ``is_larger`` where it is drawn larger than the rest."""

    piece: Sized
    is_larger: bool


def fit(pieces: Mapping[PieceId, Sized], largest: float, widest: float) -> Mapping[PieceId, Drawn]:
    """Bring pieces to one scale.

    Parameters
    ----------
    pieces
        The pieces.
    largest
        How many points the longest side of all of them takes; strips may be longer.
    widest
        How many points a strip may take at most.

    Returns
    -------
    Mapping
        A piece that would be too small to be read is drawn larger, and a strip wider.
    """
    sizes = [piece.size for piece in pieces.values()]
    wide = [max(size) for size in sizes if max(size) < _NARROW * min(size)]
    scale = min(
        largest / max(wide, default=1e-9),
        min(widest, _STRIPS * largest) / max(map(max, sizes), default=1.0),
    )
    return {id_: _fitted(piece, scale) for id_, piece in pieces.items()}


def _fitted(piece: Sized, scale: float) -> Drawn:
    width, height = (side * scale for side in piece.size)
    more = max(1.0, _SMALLEST / max(width, height))
    across = more * max(1.0, _THINNEST / (width * more))
    down = more * max(1.0, _THINNEST / (height * more))
    return Drawn(piece.times(scale * across, scale * down), max(across, down) > _SEEN)
