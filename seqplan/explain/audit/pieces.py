"""Pieces, notions, fabrics and marks: all that the file names is used."""

from collections.abc import Iterable, Iterator

from seqplan.base.ids import PieceId
from seqplan.explain.audit.audit import Found, told
from seqplan.explain.audit.ledger import Ledger
from seqplan.model.entry import Entry, Verb
from seqplan.model.operation import Action
from seqplan.model.piece import Cut, Fullness, Piece, Place

_ALONG_LINES = (
    Action.FOLD,
    Action.TURN_UP,
    Action.HEM,
    Action.CASE,
    Action.TOPSTITCH,
    Action.PLEAT,
    Action.STITCH_ON,
    Action.SLASH,
)
"""What is done along a line that is marked, though it is not named."""

_WORN_LOOSE = ("belt", "sash")
"""What pieces are called that nobody sews on."""


def unused_piece(ledger: Ledger) -> Found:
    """Every piece that is cut is used."""
    for piece in ledger.c.garment.pieces:
        if piece.id not in ledger.used and not _is_interfacing(ledger, piece):
            yield told("unused-piece", piece.path, name=piece.id)


def interfacing_not_fused(ledger: Ledger) -> Found:
    """A piece of interfacing is fused, sewn or held to what it stiffens."""
    for piece in ledger.c.garment.pieces:
        if piece.id not in ledger.used and _is_interfacing(ledger, piece):
            yield told("interfacing-not-fused", piece.path, name=piece.id, fabric=piece.fabric)


def _is_interfacing(ledger: Ledger, piece: Piece) -> bool:
    fabric = ledger.c.garment.fabric.get(piece.fabric or "")
    return fabric is not None and fabric.kind == "interfacing"


def unused_notion(ledger: Ledger) -> Found:
    """Every notion is inserted, attached, caught, or spoken of in free words."""
    notions = {notion for op in ledger.using for notion in op.notions}
    words = " ".join(entry.words or "" for entry in ledger.c.garment.entries)
    for notion in ledger.c.garment.notions:
        if notion.id not in notions and notion.id not in words:
            yield told("unused-notion", notion.path, name=notion.id)


def unused_fabric(ledger: Ledger) -> Found:
    """Every fabric is cut, or fused."""
    garment = ledger.c.garment
    fabrics = {piece.fabric for piece in garment.pieces}
    fabrics |= {entry.fabric for entry in garment.entries}
    for fabric in garment.fabrics:
        if fabric.id not in fabrics:
            yield told("unused-fabric", fabric.path, name=fabric.id)


def unused_mark(ledger: Ledger) -> Found:
    """What is marked on a piece is there for something.

    Stays quiet where a choice may bring it, where free words are about the piece, and of a line
    along which something may be folded or stitched. A piece that nobody uses may belong there, and
    is told already.
    """
    if any(piece.id not in ledger.used for piece in ledger.c.garment.pieces):
        return
    entries = (*ledger.c.garment.entries, *ledger.elsewhere)
    places = {(place.piece, place.name) for e in entries for place in e.places}
    for piece in ledger.c.garment.pieces:
        own = frozenset({piece.id})
        if piece.id not in ledger.used or ledger.c.on_pieces(own, Action.DO):
            continue
        for spot in dict.fromkeys(spot.name for spot in piece.spots):
            if (piece.id, spot) not in places:
                yield told("unused-mark", (*piece.path, "spots"), name=f"{piece.id}.{spot}")
        for line in piece.lines:
            is_followed = ledger.c.on_pieces(own, *_ALONG_LINES)
            if (piece.id, line) not in places and not is_followed:
                yield told("unused-mark", (*piece.path, "lines"), name=f"{piece.id}.{line}")


def darts_not_sewn(ledger: Ledger) -> Found:
    """The darts of a piece are sewn.

    Stays quiet where a choice may bring them, and where free words are about the piece.
    """
    for piece in ledger.c.garment.pieces:
        for dart in _not_taken_in(ledger, piece, piece.darts, Action.DART):
            path = (*piece.path, "darts")
            yield told("darts-not-sewn", path, name=f"{piece.id}.{dart.on}")


def pleats_not_sewn(ledger: Ledger) -> Found:
    """The pleats of a piece are laid.

    Stays quiet where a choice may bring them, and where free words are about the piece.
    """
    for piece in ledger.c.garment.pieces:
        for pleat in _not_taken_in(ledger, piece, piece.pleats, Action.PLEAT):
            path = (*piece.path, "pleats")
            yield told("pleats-not-sewn", path, name=f"{piece.id}.{pleat.on}")


def _not_taken_in(
    ledger: Ledger, piece: Piece, fullnesses: Iterable[Fullness], action: Action
) -> Iterator[Fullness]:
    """The darts or pleats of a piece that is used, of which nothing more is said."""
    is_brought = ledger.is_brought(Verb.DART if action is Action.DART else Verb.PLEAT)
    if is_brought or piece.id not in ledger.used:
        return
    for fullness in fullnesses:
        if not _is_taken_in(ledger, piece.id, fullness, action):
            yield fullness


def _is_taken_in(ledger: Ledger, piece: PieceId, fullness: Fullness, action: Action) -> bool:
    ops = ledger.c.on_pieces(frozenset({piece}), action, Action.DO)
    names = {(s.piece, ledger.c.rings.name(s)) for op in ops for s in op.segments}
    return (piece, fullness.on) in names or any(op.action is Action.DO for op in ops)


def gathers_not_held(ledger: Ledger) -> Found:
    """Gathers are sewn to something, or they slip out again."""
    for op in ledger.c.acting(Action.GATHER):
        is_held = any(
            other.action is not Action.FINISH
            for segment in op.segments
            for other in ledger.settling(segment)
        ) or any(ledger.has(s, Action.HOLD, Action.TOPSTITCH, Action.ENCLOSE) for s in op.segments)
        if not is_held:
            yield told("gathers-not-held", op.path, entry=op.entry)


def strap_not_attached(ledger: Ledger) -> Found:
    """A strap, tie or loop that is made is attached, or caught in a seam.

    Stays quiet where free words are about it, and of belts and sashes, which are worn loose.
    """
    for op in ledger.c.acting(Action.MAKE_STRAP):
        for piece in sorted(op.pieces):
            is_loose = any(word in piece for word in _WORN_LOOSE) and "loop" not in piece
            if is_loose:
                continue
            others = ledger.c.on_pieces(frozenset({piece}), *Action)
            if not any(o.entry != op.entry and _takes_up(o.action) for o in others):
                yield told("strap-not-attached", op.path, name=piece)


def _takes_up(action: Action) -> bool:
    return action in {
        Action.SEW,
        Action.HOLD,
        Action.BASTE,
        Action.STITCH_ON,
        Action.SET_ON,
        Action.ATTACH,
        Action.TACK,
        Action.THREAD,
        Action.HEM,
        Action.CASE,
        Action.DO,
    }


def pocket_copies(ledger: Ledger) -> Found:
    """As many pockets are cut as there are places for them.

    Of a piece on the fold, a place may lie on the fold or on both sides of it. Of the bags of
    pockets in a seam, those with two edges are counted, of which one is sewn on.
    """
    for entry in ledger.c.garment.entries:
        if entry.verb is Verb.IN_SEAM_POCKET:
            yield from _bags(ledger, entry)
        if entry.verb not in {Verb.PATCH_POCKET, Verb.WELT_POCKET} or not entry.places:
            continue
        least, most = _places(ledger, entry)
        for id_ in entry.pieces:
            piece = ledger.c.garment.piece[id_]
            others = [e for e in ledger.c.garment.entries if e is not entry and id_ in e.pieces]
            if not least <= piece.copies <= most and not others:
                yield told(
                    "pocket-copies",
                    (*piece.path, "cut"),
                    name=id_,
                    cut=piece.copies,
                    places=most if piece.copies > most else least,
                    entry=entry.id,
                )


def _bags(ledger: Ledger, entry: Entry) -> Found:
    pieces = [ledger.c.garment.piece[id_] for id_ in entry.pieces]
    cut = sum(piece.copies for piece in pieces)
    run = ledger.c.shapes[entry.id].run
    name = ledger.c.rings.name
    places = len({(ledger.c.rings.disc(s), s.half, name(s)) for s in run})
    if cut < places and all(len(piece.edge_names) == _ON_AND_ROUND for piece in pieces):
        first = pieces[0]
        yield told(
            "pocket-copies",
            (*first.path, "cut"),
            name=first.id,
            cut=cut,
            places=places,
            entry=entry.id,
        )


_ON_AND_ROUND = 2
"""The edges of a pocket bag of which one is sewn on, and the other goes round."""


def _places(ledger: Ledger, entry: Entry) -> tuple[int, int]:
    """How many places there are, at least and at most."""
    counts = [_count(ledger.c.garment.piece[place.piece], place) for place in entry.places]
    return sum(least for least, _ in counts), sum(most for _, most in counts)


def _count(piece: Piece, place: Place) -> tuple[int, int]:
    spots = [spot for spot in piece.spots if spot.name == place.name]
    is_on_one_side = place.hand is not None or any(spot.hand is not None for spot in spots)
    if piece.cut is Cut.FOLD:
        return piece.copies, piece.copies * (1 if is_on_one_side else 2)
    one = piece.copies // 2 if piece.cut is Cut.PAIR and is_on_one_side else piece.copies
    # Of pieces that are alike, only some may bear a pocket.
    return (1 if piece.cut is Cut.ALIKE else one), one
