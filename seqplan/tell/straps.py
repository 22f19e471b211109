"""Sentences for straps, ties and loops, and which of their ends hang free."""

from seqplan.base.ids import PieceId
from seqplan.base.measure import both
from seqplan.model.entry import StrapMethod, Verb
from seqplan.model.garment import Garment
from seqplan.model.operation import Action
from seqplan.model.piece import EdgeRef, Piece
from seqplan.recipes import widths
from seqplan.tell import usual
from seqplan.tell.names import name_edges
from seqplan.tell.scene import Scene
from seqplan.tell.sentence import Told
from seqplan.tell.shaping import where_topstitched
from seqplan.words.say import say

_SIDES = 4
"""Edges of a strap: two long ones and two ends, opposite one another."""


def free_ends(garment: Garment, piece: PieceId) -> tuple[EdgeRef, ...] | None:
    """Find the ends of a strap that hang free when the garment is done.

    Parameters
    ----------
    garment
        The garment.
    piece
        A strap.

    Returns
    -------
    tuple of EdgeRef, or None
        ``None`` where the file does not tell. A strap that is sewn on as a whole is held at both
        ends, if they bear one name; one that is sewn on twice, at one end after the other.
    """
    pairs = _opposite(garment.piece[piece])
    entries = [entry for entry in garment.entries if entry.verb is not Verb.STRAP]
    whole = [e for e in entries if e.verb is Verb.ATTACH and piece in e.pieces and e.by is None]
    if len(whole) > 1:
        return ()
    if whole:
        return () if pairs and all(len(set(pair)) == 1 for pair in pairs) else None
    named = [ref for e in entries for ref in (*e.run, *e.to, *(c.edge for c in e.between), e.by)]
    held = {ref.edge for ref in named if ref is not None and ref.piece == piece}
    ends = [pair for pair in pairs if held & set(pair)]
    if len(ends) != 1:
        return None
    return tuple(EdgeRef(piece, name) for name in dict.fromkeys(ends[0]) if name not in held)


def _opposite(piece: Piece) -> list[tuple[str, ...]]:
    """The edges of a strap that lie opposite one another, two by two; its ends are one pair."""
    if len(piece.edges) != _SIDES:
        return []
    pairs = (piece.edges[::2], piece.edges[1::2])
    return [tuple(e.name for e in pair) for pair in pairs if not any(e.is_folded for e in pair)]


def _free(s: Scene) -> list[tuple[EdgeRef, ...] | None]:
    return [free_ends(s.garment, piece) for piece in s.entry.pieces]


def fold_strap(s: Scene) -> Told:
    """Pressing a strap in."""
    under = s.usual(usual.STRAP_END)
    free = _free(s)
    ends = [ref for refs in free for ref in refs or ()]
    texts = []
    if ends:
        texts.append(say("step-strap-fold-ends", edges=name_edges(s.garment, ends), under=under))
    if None in free:
        texts.append(say("step-strap-fold-end", under=under))
    return Told((*texts, say("step-strap-fold", pieces=s.entry_pieces), *_each_strap(s)))


def make_strap(s: Scene) -> Told:
    """Stitching a strap along."""
    check = say("step-check-strap")
    if s.entry.strap is StrapMethod.FOLDED:
        distance = s.usual(usual.EDGE_STITCH)
        key = "step-strap-stitch" if s.entry.topstitch is None else "step-strap-stitch-open"
        text = say(key, pieces=s.entry_pieces, distance=distance)
        return Told((text,), check)
    if s.allowance is None:
        text = say("step-strap-sew-unknown", pieces=s.entry_pieces)
    else:
        text = say("step-strap-sew", pieces=s.entry_pieces, allowance=both(s.allowance))
    trim = say("step-strap-trim", width=s.usual(widths.TRIMMED))
    return Told((text, _ends_of_tube(s), trim, *_each_strap(s)))


def _ends_of_tube(s: Scene) -> str:
    """Which end of a strap is stitched across, and which stays open for turning."""
    free = _free(s)
    if all(refs == () for refs in free):
        return say("step-strap-sew-open")
    if all(refs is not None and len(refs) == 1 for refs in free):
        ends = [ref for refs in free for ref in refs or ()]
        return say("step-strap-sew-across", edges=name_edges(s.garment, ends))
    return say("step-strap-sew-end")


def turn_strap(s: Scene) -> Told:
    """Drawing a strap through itself."""
    is_open = all(refs == () for refs in _free(s))
    key = "step-strap-turn-open" if is_open else "step-strap-turn"
    return Told((say(key, pieces=s.entry_pieces),))


def press_strap(s: Scene) -> Told:
    """Pressing a strap."""
    return Told((say("step-strap-press", pieces=s.entry_pieces),), say("step-check-strap"))


def topstitch_strap(s: Scene) -> Told:
    """Topstitching a strap."""
    distance, length = where_topstitched(s, usual.EDGE_STITCH)
    values = {"distance": distance, "stitch": length}
    is_over = s.entry.strap is StrapMethod.FOLDED and distance == s.usual(usual.EDGE_STITCH)
    key = "step-strap-topstitch-over" if is_over else "step-strap-topstitch"
    return Told((say(key, pieces=s.entry_pieces, **values),))


def _each_strap(s: Scene) -> tuple[str, ...]:
    count = s.copies(s.entry.pieces)
    key = "step-strap-count" if len(s.entry.pieces) == 1 else "step-strap-all"
    return (say(key, count=count),) if count > 1 else ()


OF_VERB = {
    Verb.STRAP: {
        Action.FOLD_BAND: fold_strap,
        Action.MAKE_STRAP: make_strap,
        Action.TURN: turn_strap,
        Action.PRESS: press_strap,
        Action.TOPSTITCH: topstitch_strap,
    }
}
"""Who tells what the recipe of this verb does."""
