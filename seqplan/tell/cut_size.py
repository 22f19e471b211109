"""How large a piece is cut: its shape along the stitching lines, and what is added at each edge."""

from fractions import Fraction
from math import isclose

from seqplan.base.measure import Length
from seqplan.model.entry import Verb
from seqplan.model.piece import Cut, Piece
from seqplan.recipes.construction import Construction
from seqplan.shape.outline import lay
from seqplan.tell.folds import whole_fold

_FOLDED = frozenset({Verb.HEM, Verb.CASING})
_SAME = 1e-3
"""How much of its area a rectangle may lack, as lengths are rounded."""


def allowances(c: Construction, piece: Piece) -> tuple[float, ...]:
    """How far outside its stitching line each edge of a piece is cut, in millimetres."""
    usual = float(c.garment.allowance.mm) if c.garment.allowance else 0.0
    own: dict[str, float] = {}
    sewn: set[str] = set()
    for entry in c.garment.entries:
        named = {ref.edge for ref in (*entry.run, *entry.to) if ref.piece == piece.id}
        sewn |= named if entry.verb is not Verb.FINISH else set()
        if entry.verb in _FOLDED and entry.depth is not None:
            own |= dict.fromkeys(named, float(whole_fold(entry.depth, entry.turned).mm))
        elif entry.verb is Verb.SEW and entry.allowance is not None:
            own |= dict.fromkeys(named, float(entry.allowance.mm))
        if entry.verb is Verb.STRAP and piece.id in entry.pieces:
            own |= dict.fromkeys(piece.edge_names, 0.0)
    return tuple(
        own.get(edge.name, usual if edge.name in sewn or piece.is_strip else 0.0)
        for edge in piece.edges
    )


def rectangle(c: Construction, piece: Piece) -> tuple[Length, Length] | None:
    """Width and height of a piece that is cut as a rectangle, with its allowances.

    ``None`` for every other piece, for one that is cut on the fold, and where the file tells no
    shape or no allowance.
    """
    laid = lay(piece) if piece.cut is not Cut.FOLD and c.garment.allowance is not None else None
    if laid is None:
        return None
    corners = laid.cutting_line(allowances(c, piece).__getitem__)
    across = [corner.real for corner in corners]
    down = [corner.imag for corner in corners]
    width, height = max(across) - min(across), max(down) - min(down)
    following = (*corners[1:], corners[0])
    doubled = sum((a.conjugate() * b).imag for a, b in zip(corners, following, strict=True))
    if not isclose(abs(doubled) / 2, width * height, rel_tol=_SAME):
        return None
    unit = c.garment.units
    return Length(_exact(width), unit), Length(_exact(height), unit)


def _exact(mm: float) -> Fraction:
    """A measure to the hundredth of a millimetre, as no shape is written finer."""
    return Fraction(round(mm * 100), 100)
