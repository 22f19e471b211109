"""Sentences for preparing, holding, folding, turning through, waiting."""

from seqplan.base.ids import PieceId
from seqplan.base.measure import both
from seqplan.model.entry import Entry, Purpose, Verb
from seqplan.model.operation import Action
from seqplan.model.piece import Fullness, Hand, Layer, Piece, Spot
from seqplan.tell import usual
from seqplan.tell.names import as_clause, listing, name_pieces, name_seam, quoted, readable
from seqplan.tell.notches import notches_of
from seqplan.tell.scene import Scene
from seqplan.tell.sentence import Told
from seqplan.words.say import say

_HAND = "hand"


def pretreat(s: Scene) -> Told:
    """Washing cloth before it is cut."""
    check = say("step-check-pretreat")
    if not s.entry.fabrics:
        return Told((say("step-pretreat-plain"),), check)
    fabrics = listing(say("step-the", name=quoted(readable(name))) for name in s.entry.fabrics)
    return Told((say("step-pretreat", fabrics=fabrics),), check)


def cut(s: Scene) -> Told:
    """Cutting out."""
    return Told((say("step-cut", pieces=s.named_pieces),), say("step-check-cut"))


def mark(s: Scene) -> Told:
    """Carrying marks over."""
    marks = {id_: text for id_ in s.piece_ids if (text := _marks_of(s, id_))}
    check = say("step-check-mark")
    if not marks:
        return Told((say("step-mark", pieces=s.named_pieces),), check)
    pieces = name_pieces(s.garment, marks)
    return Told((say("step-mark-things", pieces=pieces, marks=listing(marks.values())),), check)


def _marks_of(s: Scene, id_: PieceId) -> str:
    """What is marked on a piece: darts, pleats, places, lines, slits, points on its edges."""
    piece = s.garment.piece[id_]
    found = marks_on(piece)
    found += [
        say(
            "step-mark-point",
            one=quoted(readable(piece.edges[at - 1].name)),
            other=quoted(readable(edge.name)),
        )
        for at, edge in enumerate(piece.edges)
        if edge.at_mark
    ]
    if not found:
        return ""
    return say("step-mark-piece", pieces=name_pieces(s.garment, (id_,)), marks=listing(found))


def marks_on(piece: Piece) -> list[str]:
    """What the pattern of a piece shows to be marked, without the points on its edges."""
    found = [_folds_at("dart", dart) for dart in piece.darts]
    found += [_folds_at("pleat", pleat) for pleat in piece.pleats]
    found += [_spot(spot) for spot in piece.spots]
    found += [
        say("step-mark-line", name=quoted(readable(line).removesuffix(" line")))
        for line in piece.lines
    ]
    found += notches_of(piece)
    found += [say("step-mark-slit", name=quoted(readable(slit.name))) for slit in piece.slits]
    return found


def _folds_at(kind: str, fullness: Fullness) -> str:
    return say(f"step-mark-{kind}s", count=fullness.number, edge=quoted(readable(fullness.on)))


def _spot(spot: Spot) -> str:
    name = quoted(readable(spot.name))
    if spot.hand is None:
        return say("step-mark-spot", name=name)
    key = "step-mark-spot-left" if spot.hand is Hand.LEFT else "step-mark-spot-right"
    return say(key, name=name)


def hold(s: Scene) -> Told:
    """Basting layers together for good."""
    distance = s.usual(usual.BASTE_OUTSIDE)
    if not s.entry.partners:
        return Told((say("step-hold-alone", edges=s.edges, distance=distance),))
    held = {s.garment.piece[id_].layer for id_ in s.entry.partners}
    key = "step-hold"
    if held == {Layer.SHELL}:
        key = "step-hold-over"
    elif held == {Layer.INTERLINING}:
        key = "step-hold-inside"
    base = name_pieces(s.garment, (ref.piece for ref in s.entry.run))
    values = {"partner": s.partners, "pieces": base, "edges": s.edges}
    if len(s.entry.partners) > 1 and key == "step-hold":
        row = say("step-hold-row-all", distance=distance)
        return Told((say("step-hold-all", **values), row), say("step-check-hold-all"))
    row = say("step-hold-row", distance=distance)
    return Told((say(key, **values), row), say("step-check-hold"))


def fold(s: Scene) -> Told:
    """Creasing an edge for later."""
    return Told((say("step-fold", edges=s.edges),))


def unfold(s: Scene) -> Told:
    """Opening a fold again."""
    return Told((say("step-unfold", edges=s.edges),))


def nest(s: Scene) -> Told:
    """Putting one layer into another."""
    pieces = s.entry.pieces
    inner = [id_ for id_ in pieces if s.garment.piece[id_].layer is not Layer.SHELL]
    outer = [id_ for id_ in pieces if id_ not in inner]
    if not inner or not outer:
        return Told((say("step-nest-plain", pieces=s.pieces),))
    key = "step-nest-right" if _is_joined_later(s, set(inner), set(outer)) else "step-nest"
    names = {"inner": name_pieces(s.garment, inner), "outer": name_pieces(s.garment, outer)}
    return Told((say(key, **names),))


def _is_joined_later(s: Scene, inner: set[str], outer: set[str]) -> bool:
    """Whether a seam that is still to be sewn joins the two layers, so that right sides meet."""
    for shape in s.c.joins:
        if s.c.main(shape.entry.id).id in s.before:
            continue
        for glue in shape.glues:
            ends = {glue.first.piece, glue.second.piece}
            if ends & inner and ends & outer:
                return True
    return False


def roll(s: Scene) -> Told:
    """Rolling the body up."""
    if s.entry.through:
        through = as_clause(s.entry.through)
        return Told((say("step-roll-through", pieces=s.pieces, through=through),))
    return Told((say("step-roll", pieces=s.pieces),))


def open_zip(s: Scene) -> Told:
    """Opening a zip, and why."""
    turned = any(op.id not in s.before for op in s.c.acting(Action.TURN))
    return Told((say("step-open" if turned else "step-open-plain", notion=s.notion_name),))


def sew_stop(s: Scene) -> Told:
    """Oversewing the teeth of a zip."""
    key = "step-sew-stop-bottom" if s.entry.from_bottom else "step-sew-stop"
    return Told((say(key, notion=s.notion_name),), say("step-check-stop"))


def shorten(s: Scene) -> Told:
    """Cutting the end of a zip off."""
    has_stop = bool(s.c.doing(s.entry.id, Action.SEW_STOP))
    key = "step-shorten" if has_stop else "step-shorten-crossed"
    return Told((say(key, notion=s.notion_name, beyond=s.usual(usual.ZIP_BEYOND)),))


def wait(s: Scene) -> Told:
    """Waiting until cloth has settled."""
    check = say("step-check-wait") if s.entry.pieces else ""
    key = "step-wait-on" if s.entry.pieces else "step-wait"
    values = {"pieces": s.pieces} if s.entry.pieces else {}
    count = s.entry.hours or 1
    if s.entry.purpose not in {None, Purpose.HANG}:
        return _wait_for(s, count, values)
    return Told((say(key, count=count, **values),), check)


def _wait_for(s: Scene, count: int, values: dict[str, str]) -> Told:
    """Waiting until something is dry, has set, or is back."""
    purpose = (s.entry.purpose or Purpose.HANG).value.replace(" ", "-")
    key = f"step-wait-{purpose}" if values else f"step-wait-{purpose}-all"
    check = say(f"step-check-wait-{purpose}")
    return Told((say(key, count=count, **values),), check)


def send_out(s: Scene) -> Told:
    """Giving pieces out of the house."""
    return Told((say("step-send-out", pieces=s.named_pieces),), say("step-check-send-out"))


def close(s: Scene) -> Told:
    """Closing a gap that was left in a seam, or in a casing."""
    other = s.garment.entry[s.entry.closes] if s.entry.closes else s.entry
    if other.verb is Verb.CASING:
        return Told((say("step-close-casing"),), say("step-check-casing"))
    seam = name_seam(s.garment, other)
    # What is closed has left a gap: the loader sees to that.
    gap = both(other.gap) if other.gap else ""
    first = say("step-close-seam-gap", seam=seam, gap=gap)
    if s.op.setup.station == _HAND:
        row = say("step-close-seam-hand", apart=s.usual(usual.SLIP_STITCH_APART))
    else:
        row = say("step-close-seam-machine", distance=s.usual(usual.EDGE_STITCH))
    inside = (say("step-close-lining"),) if _is_lining(s, other) else ()
    return Told((first, row, *inside), say("step-check-seam-gap"))


def _is_lining(s: Scene, seam: Entry) -> bool:
    """Whether a seam is in the lining of something that has an outside."""
    layers = {s.garment.piece[ref.piece].layer for ref in (*seam.run, *seam.to)}
    return layers == {Layer.LINING} and any(p.layer is Layer.SHELL for p in s.garment.pieces)


OF_VERB = {Verb.CLOSE: {Action.CLOSE_GAP: close}}

TELLERS = {
    Action.PRETREAT: pretreat,
    Action.CUT: cut,
    Action.MARK: mark,
    Action.HOLD: hold,
    Action.FOLD: fold,
    Action.UNFOLD: unfold,
    Action.NEST: nest,
    Action.ROLL: roll,
    Action.OPEN: open_zip,
    Action.SEW_STOP: sew_stop,
    Action.SHORTEN: shorten,
    Action.WAIT: wait,
    Action.SEND_OUT: send_out,
}
