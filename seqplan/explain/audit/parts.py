"""What hangs together with what in the end."""

from seqplan.base.ids import PieceId
from seqplan.explain.audit.audit import Found, quoted, told
from seqplan.explain.audit.edges import unsettled_edges
from seqplan.explain.audit.ledger import Ledger
from seqplan.model.operation import Action, Operation
from seqplan.recipes.shape import JOINS

_MOST = 0.5
"""A garment has a part that is so much of it; what has none is a set of several things."""


def loose_part(ledger: Ledger) -> Found:
    """Every part of a garment is joined to the rest.

    Two copies of one piece, as a pair of sleeves, hang together where the same is done to both.
    Stays quiet where free words are about the part, of straps and of pieces without edges; where an
    edge of the part is raw, because this is told already; where ``not shown: finish`` says that the
    file is an outline; and of a set of things of which none is most of the garment.
    """
    if "finish" in ledger.c.garment.not_shown:
        return
    parts = _parts(ledger)
    raw = {edge.piece for edge in unsettled_edges(ledger)}
    straps = {piece for op in ledger.c.acting(Action.MAKE_STRAP) for piece in op.pieces}
    largest = max(parts, key=len, default=frozenset())
    if len(largest) < _MOST * len(ledger.used):
        return
    for part in parts:
        pieces = [piece for piece in ledger.c.garment.pieces if piece.id in part]
        is_told = part <= straps or not any(piece.edges for piece in pieces)
        if part is not largest and not is_told and not part & raw:
            yield told(
                "loose-part",
                pieces[0].path,
                pieces=quoted(piece.id for piece in pieces),
                piece=pieces[0].id,
            )


def _parts(ledger: Ledger) -> list[frozenset[PieceId]]:
    """The pieces that are used, as seams, stitching, fastenings or free words join them."""
    c = ledger.c
    links: dict[PieceId, set[PieceId]] = {piece: set() for piece in ledger.used}
    groups = [frozenset({g.first.piece, g.second.piece}) for s in c.joins for g in s.glues]
    groups += [
        frozenset({g.first.piece, g.second.piece}) for s in c.shapes.values() for g in s.riders
    ]
    groups += [
        frozenset(s.piece for s in shape.along) | shape.skins for shape in c.joins if shape.along
    ]
    # A seam that could not be laid out is told already.
    astray = {s.entry.id for s in c.shapes.values() if s.entry.verb in JOINS and not s.glues}
    groups += [
        op.pieces
        for op in ledger.using
        if op.action in _LINKING
        or _is_caught(op)
        or op.entry in astray
        or op.pieces & set(c.entry(op).partners)
    ]
    fastened = [op.pieces for op in c.acting(Action.BUTTONHOLE, Action.BIND_HOLE, Action.ATTACH)]
    groups.append(frozenset().union(*fastened))
    for group in groups:
        for piece in group & ledger.used:
            links[piece] |= group & ledger.used
    seen: set[PieceId] = set()
    parts = []
    for start in (piece.id for piece in c.garment.pieces if piece.id in links):
        if start not in seen:
            part = {start}
            waiting = [start]
            while waiting:
                more = links[waiting.pop()] - part
                part |= more
                waiting += more
            seen |= part
            parts.append(frozenset(part))
    return parts


_LINKING = frozenset(
    {
        Action.HOLD,
        Action.BASTE,
        Action.SET_ZIP,
        Action.STITCH_ON,
        Action.SET_ON,
        Action.CLOSE_BAND,
        Action.TACK,
        Action.HEM,
        Action.CASE,
        Action.NEST,
        Action.THREAD,
        Action.DO,
    }
)
"""What joins all the pieces that it is done to, besides seams."""


def _is_caught(op: Operation) -> bool:
    """Whether an operation is a seam with pieces in it of which it names no edge."""
    return op.action is Action.SEW and not {s.piece for s in op.segments} >= op.pieces
