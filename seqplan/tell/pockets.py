"""Sentences for pockets, boxed corners, slits and buttonholes."""

from typing import NamedTuple

from seqplan.base.ids import PieceId
from seqplan.base.measure import Length, both
from seqplan.model.entry import Entry, Verb
from seqplan.model.garment import Garment
from seqplan.model.operation import Action
from seqplan.tell import usual
from seqplan.tell.names import name_edge, name_pieces, name_places
from seqplan.tell.scene import Scene
from seqplan.tell.seams import again
from seqplan.tell.sentence import Told
from seqplan.words.say import say

_EDGES_OF_A_SLIT = 2

# -- patch pockets -------------------------------------------------------------------------


def fold_mouth(s: Scene) -> Told:
    """Folding the mouth of a pocket."""
    edges = s.op_edges or s.entry_pieces
    if s.entry.depth is None:
        return Told((say("step-pocket-mouth-fold", edges=edges),))
    values = {"first": both(usual.first_turn(s.entry.depth)), "depth": both(s.entry.depth)}
    return Told((say("step-turn-up-twice", edges=edges, **values),))


def hem_mouth(s: Scene) -> Told:
    """Stitching the mouth of a pocket."""
    edges = s.op_edges or s.entry_pieces
    distance = s.usual(usual.EDGE_STITCH)
    return Told((say("step-pocket-mouth", edges=edges, distance=distance),))


def press_under(s: Scene) -> Told:
    """Pressing the edges of a pocket under."""
    edges = s.op_edges or s.entry_pieces
    is_round = len({segment.place for segment in s.op.segments}) == 1
    key = "step-pocket-round" if is_round else "step-pocket-under"
    if s.allowance is None:
        text = say(f"{key}-unknown", edges=edges)
    else:
        text = say(key, edges=edges, allowance=both(s.allowance))
    return Told((text,), say("step-check-pocket-under"))


def patch(s: Scene) -> Told:
    """Stitching a pocket on."""
    place = name_places(s.garment, s.entry.places)
    lay = say("step-pocket-place", pocket=s.entry_pieces, place=place)
    distance = s.usual(usual.EDGE_STITCH)
    row = say("step-pocket-stitch", distance=distance)
    bars = say("step-pocket-bars", bar=s.usual(usual.POCKET_BAR))
    return Told((lay, row, bars, *_each_copy(s)), say("step-check-pocket"))


# -- pockets in seams ----------------------------------------------------------------------


def finish_bag(s: Scene) -> Told:
    """Finishing the edges of pocket bags."""
    return Told((say("step-bag-finish", edges=s.op_edges or s.entry_pieces),))


def set_bag(s: Scene) -> Told:
    """Sewing pocket bags to the edges of a seam to be."""
    values = {"bag": s.entry_pieces, "edges": s.edges}
    if s.allowance is None:
        texts = [say("step-bag-lay-unknown", **values)]
        texts.append(say("step-bag-stitch-unknown", less=s.usual(usual.BAG_NEARER[0])))
    else:
        texts = [say("step-bag-lay", allowance=both(s.allowance), **values)]
        row, nearer = usual.shorter(s.allowance, by=usual.BAG_NEARER)
        texts.append(say("step-bag-stitch", row=both(row), less=both(nearer)))
    count = s.copies(s.entry.pieces)
    if count > 1:
        texts.append(say("step-bag-all", count=count))
    return Told(tuple(texts), say("step-check-bag"))


def press_bag(s: Scene) -> Told:
    """Pressing the bags away from the garment."""
    return Told((say("step-bag-press", bag=s.entry_pieces),))


# -- welts ---------------------------------------------------------------------------------


class _Parts(NamedTuple):
    """The parts of a welt pocket as sentences call them; one may do for both."""

    welt: str
    bag: str
    is_one: bool


def welt_and_bag(garment: Garment, entry: Entry) -> tuple[tuple[PieceId, ...], tuple[PieceId, ...]]:
    """Tell welt and bag apart: a welt is a strip, or is called so, or is what the entry sets on.

    Where one piece does for both there is no welt.
    """
    ids = (*entry.pieces, *entry.partners)
    welts = [id_ for id_ in ids if garment.piece[id_].is_strip or "welt" in id_]
    welts = welts or list(entry.partners)
    bags = [id_ for id_ in ids if id_ not in welts]
    return (tuple(welts), tuple(bags)) if welts and bags else ((), ids)


def _parts(s: Scene) -> _Parts:
    welts, bags = welt_and_bag(s.garment, s.entry)
    bag = name_pieces(s.garment, bags)
    return _Parts(name_pieces(s.garment, welts), bag, False) if welts else _Parts(bag, bag, True)


def fold_welt(s: Scene) -> Told:
    """Folding a welt."""
    parts = _parts(s)
    if parts.is_one:
        return Told((say("step-welt-fold-plain", bag=parts.bag),))
    return Told((say("step-welt-fold", welt=parts.welt),))


def set_welt(s: Scene) -> Told:
    """Stitching welt and bag along the line."""
    line = name_places(s.garment, s.entry.places)
    if any(p.name not in s.garment.piece[p.piece].lines for p in s.entry.places):
        line = say("step-welt-line", place=line)
    parts = _parts(s)
    if parts.is_one:
        lay = say("step-welt-set-plain", bag=parts.bag, line=line)
    else:
        lay = say("step-welt-set", welt=parts.welt, bag=parts.bag, line=line)
    rows = say("step-welt-rows", seam=s.usual(usual.WELT_SEAM))
    return Told((lay, rows, *_each_copy(s)), say("step-check-welt-rows"))


def cut_welt(s: Scene) -> Told:
    """Cutting the mouth of a welt pocket."""
    text = say("step-welt-slash", end=s.usual(usual.WELT_END))
    return Told((text, *_each_copy(s)), say("step-check-slash-corner"))


def turn_welt(s: Scene) -> Told:
    """Pushing welt and bag through."""
    parts = _parts(s)
    if parts.is_one:
        text = say("step-welt-turn-plain", bag=parts.bag)
    else:
        text = say("step-welt-turn", welt=parts.welt, bag=parts.bag)
    return Told((text,), say("step-check-welt-turn"))


def close_bag(s: Scene) -> Told:
    """Closing the bag of a welt pocket."""
    parts = _parts(s)
    key = "step-welt-bag-plain" if parts.is_one else "step-welt-bag"
    if s.allowance is None:
        return Told((say(f"{key}-unknown", bag=parts.bag),))
    return Told((say(key, bag=parts.bag, allowance=both(s.allowance)),))


def close_welt_ends(s: Scene) -> Told:
    """Stitching the triangles at the ends of a mouth."""
    return Told((say("step-welt-ends"), *_each_copy(s)), say("step-check-welt"))


def _each_copy(s: Scene) -> tuple[str, ...]:
    count = s.copies(s.entry.pieces)
    if count < 2:
        return ()
    if count == 2:
        return (say("step-other-side"),)
    return (say("step-the-others", count=count),)


# -- corners, slits, buttonholes -----------------------------------------------------------


def box(s: Scene) -> Told:
    """Sewing across a corner."""
    check = say("step-check-box")
    key = "step-box-trim" if _is_finished(s) else "step-box-trim-plain"
    trim = say(key, width=s.usual(usual.BOX_TRIMMED))
    names = list(dict.fromkeys(name_edge(ref) for ref in s.entry.run))
    if len(names) == 1:
        row = say("step-box-row-plain")
        if s.allowance is not None:
            row = say("step-box-row-cut-out", allowance=both(s.allowance))
        return Told((say("step-box-cut-out", edges=s.edges), row, *again(s)), check)
    first = say("step-box", pieces=s.pieces, one=names[0], other=names[1])
    if s.entry.width is None:
        return Told((first, say("step-box-row-plain"), trim, say("step-box-all")), check)
    half = both(Length(s.entry.width.mm / 2, s.entry.width.written_in))
    row = say("step-box-row", half=half, width=both(s.entry.width))
    return Told((first, row, trim, say("step-box-all")), check)


def _is_finished(s: Scene) -> bool:
    """Whether the seams of a corner are finished; those inside a lining need not be."""
    edges = (x for ref in s.entry.run for x in s.garment.piece[ref.piece].segments(ref.edge))
    ops = (op for segment in edges for op in s.c.on_segment.get(segment, ()))
    return any(op.action is Action.FINISH for op in ops)


def slash(s: Scene) -> Told:
    """Cutting a slit."""
    if s.entry.verb is Verb.TOWER_PLACKET:
        seam = s.usual(usual.PLACKET_SEAM)
        text = say("step-slash-tower", edges=s.edges, seam=seam)
        return _one_by_one(s, text)
    slits = {slit.name: slit for ref in s.entry.run for slit in s.garment.piece[ref.piece].slits}
    length = next((slits[r.edge].length for r in s.entry.run if r.edge in slits), None)
    if length is None:
        text = say("step-slash", edges=s.edges)
    else:
        text = say("step-slash-long", edges=s.edges, length=both(length))
    return _one_by_one(s, text)


def _one_by_one(s: Scene, text: str) -> Told:
    """A cut, and that there are several to be made alike."""
    if len(s.op.segments) <= _EDGES_OF_A_SLIT:
        return Told((text,), say("step-check-slash"))
    return Told((text, say("step-slash-one-by-one")), say("step-check-slash-all"))


_UNCOUNTED = 2
"""Buttonholes whose number nobody gives are told as several."""


def buttonhole(s: Scene) -> Told:
    """Working buttonholes; those that come later are sewn and cut like the first."""
    count = s.entry.number or _UNCOUNTED
    is_first = not any(op.id in s.before for op in s.c.acting(Action.BUTTONHOLE))
    is_marked = any(place.name for place in s.entry.places)
    texts = [say("step-buttonhole-try")] if is_first else []
    key = "step-buttonhole-at" if is_marked else "step-buttonhole-on"
    texts.append(say(key if is_first else "step-buttonhole-again", place=s.places, count=count))
    if s.laps_over:
        texts.append(say("step-buttonhole-over", count=count))
    texts += _how_many(s)
    if is_first:
        texts.append(say("step-buttonhole-open", count=count))
    return Told(tuple(texts), say("step-check-buttonhole"))


def bind_hole(s: Scene) -> Told:
    """Making bound buttonholes in the outer cloth."""
    lips = s.usual(usual.LIPS)
    texts = (
        say("step-bound-try"),
        say("step-bound-lips", place=s.places, lips=lips),
        *_how_many(s),
        say("step-bound-cut"),
    )
    return Told(texts, say("step-check-bound"))


def press_hole(s: Scene) -> Told:
    """Pressing bound buttonholes before anything lies behind them."""
    return Told((say("step-bound-press"),))


def open_behind(s: Scene) -> Told:
    """Opening the facing behind bound buttonholes."""
    return Told((say("step-bound-behind", place=s.places),), say("step-check-buttonhole"))


def _how_many(s: Scene) -> list[str]:
    number = s.entry.number
    if number in {None, 1}:
        return []
    if len({place.piece for place in s.entry.places}) > 1:
        return [say("step-buttonhole-number-all", count=number)]
    copies = 1 if any(p.hand for p in s.entry.places) else s.copies(p.piece for p in s.entry.places)
    if copies > 1 and number % copies == 0:
        each = number // copies
        return [say("step-buttonhole-number-each", count=number, each=each)]
    return [say("step-buttonhole-number", count=number)]


OF_VERB = {
    Verb.PATCH_POCKET: {
        Action.TURN_UP: fold_mouth,
        Action.HEM: hem_mouth,
        Action.PRESS_UNDER: press_under,
        Action.STITCH_ON: patch,
    },
    Verb.IN_SEAM_POCKET: {
        Action.FINISH: finish_bag,
        Action.SET_ON: set_bag,
        Action.PRESS: press_bag,
    },
    Verb.WELT_POCKET: {
        Action.FOLD_BAND: fold_welt,
        Action.STITCH_ON: set_welt,
        Action.SLASH: cut_welt,
        Action.TURN: turn_welt,
        Action.CLOSE_BAND: close_bag,
        Action.CLOSE_ENDS: close_welt_ends,
    },
    Verb.BUTTONHOLE: {Action.PRESS: press_hole},
}
"""Who tells what the recipes of these verbs do."""

TELLERS = {
    Action.BOX: box,
    Action.SLASH: slash,
    Action.BUTTONHOLE: buttonhole,
    Action.BIND_HOLE: bind_hole,
    Action.OPEN_BEHIND: open_behind,
}
