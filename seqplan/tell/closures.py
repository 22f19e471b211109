"""Sentences for zips and for what is sewn on."""

from seqplan.base.measure import both
from seqplan.model.entry import Entry, Verb, ZipMethod
from seqplan.model.operation import Action
from seqplan.model.piece import Segment
from seqplan.model.station import IRON
from seqplan.recipes import widths
from seqplan.recipes.construction import Construction
from seqplan.tell import usual
from seqplan.tell.names import (
    name_edges,
    name_pieces,
    name_seam,
    notion_words,
    quoted,
    readable,
)
from seqplan.tell.scene import Scene
from seqplan.tell.sentence import Told
from seqplan.tell.straps import free_ends
from seqplan.words.say import say


def press_coils(s: Scene) -> Told:
    """Pressing the coils of an invisible zip."""
    key = "step-press-coils" if s.op.setup.station == IRON else "step-bend-coils"
    return Told((say(key, notion=s.notion_name),))


def set_zip(s: Scene) -> Told:
    """Setting a zip; one that is basted in is opened only when the basting is out."""
    opening = s.edge_title(s.op.segments[0])
    upper = _upper_edge(s)
    values = {"notion": s.notion_name, "opening": opening, "below": stop_below(s)}
    if s.entry.method is ZipMethod.CENTRED:
        row = say("step-stitch-centred", distance=s.usual(widths.CENTRED_ZIP))
        return Told((say("step-set-centred", **values), row))
    if s.entry.method is ZipMethod.LAPPED:
        rows = [say(key, distance=s.usual(widths.LAPPED_ZIP)) for key in _LAPPED_ROWS]
        return Told((on_top(s), say("step-set-lapped", **values), *rows))
    if s.entry.method is ZipMethod.FLY:
        return Told(_set_fly(s), say("step-check-zip-runs"))
    values["edges"] = s.edges
    if s.allowance is None or upper is None:
        first = say("step-set-invisible-plain", **values)
    else:
        names = {"allowance": both(s.allowance), "upper": s.edge_title(upper)}
        first = say("step-set-invisible", **names, **values)
    mark = say("step-zip-mark-sides", notion=s.notion_name)
    row = say("step-stitch-invisible", opening=opening)
    return Told((mark, first, row, say("step-set-other-tape")), say("step-check-invisible"))


_LAPPED_ROWS = ("step-stitch-lapped-under", "step-stitch-lapped-over")


def _set_fly(s: Scene) -> tuple[str, ...]:
    """The zip of a fly: first tape to the facing, second to the other side."""
    opening = s.edge_title(s.op.segments[0])
    values = {"notion": s.notion_name, "opening": opening, "below": stop_below(s)}
    return (
        say("step-set-fly-under", **values),
        say("step-set-fly-over", facing=_fly_facing(s)),
    )


def set_fly_facing(s: Scene) -> Told:
    """Sewing the facing of a fly on."""
    values = {"facing": _fly_facing(s), "opening": s.edge_title(s.op.segments[0])}
    if s.allowance is None:
        return Told((on_top(s), say("step-fly-facing-unknown", **values)))
    return Told((on_top(s), say("step-fly-facing", allowance=both(s.allowance), **values)))


def on_top(s: Scene) -> str:
    """Which side of an opening covers its zip."""
    side = s.entry.on_top
    return say("step-on-top" if side is None else f"step-on-top-{side.value}")


def press_zip(s: Scene) -> Told:
    """Pressing what a zip is set into: a basted opening, or the facing of a fly."""
    if s.entry.method is ZipMethod.FLY:
        values = {"facing": _fly_facing(s), "opening": s.edge_title(s.op.segments[0])}
        if s.allowance is None:
            less = s.usual(usual.FLY_UNDER[0])
            return Told((say("step-fly-press-unknown", less=less, **values),))
        under, nearer = usual.shorter(s.allowance, by=usual.FLY_UNDER)
        measures = {"under": both(under), "less": both(nearer)}
        return Told((say("step-fly-press", **measures, **values),))
    return Told((say("step-zip-press", opening=s.edge_title(s.op.segments[0])),))


def stitch_shield(s: Scene) -> Told:
    """Sewing the shield of a fly on."""
    shield = s.entry.partners[1:]
    name = name_pieces(s.garment, shield) if shield else say("step-fly-the-shield")
    return Told((say("step-fly-shield", shield=name),), say("step-check-fly-shield"))


def topstitch_fly(s: Scene) -> Told:
    """The curved row of a fly."""
    text = say("step-fly-topstitch", stitch=usual.stitch(usual.TOPSTITCH_LENGTH))
    return Told((text,), say("step-check-fly"))


def _fly_facing(s: Scene) -> str:
    facing = s.entry.partners[:1]
    return name_pieces(s.garment, facing) if facing else say("step-fly-the-facing")


def stop_below(s: Scene) -> str:
    """How far the top stop lies below the seam line at the top of an opening."""
    upper = _upper_edge(s)
    is_faced = upper is not None and s.is_faced(upper)
    return s.usual(usual.ZIP_STOP_UNDER_FACING if is_faced else usual.ZIP_STOP)


def remove_basting(s: Scene) -> Told:
    """Taking basting out, that of a zip or what an entry names."""
    if s.entry.verb is Verb.INSERT:
        return Told((say("step-zip-unbaste", edges=s.edges),), say("step-check-zip-runs"))
    return Told((say("step-unbaste", edges=s.edges),))


def attach(s: Scene) -> Told:
    """Sewing on a hook, buttons or anything else."""
    name = s.notion_name
    kind = s.notion_kind
    check = say("step-check-attach")
    count = s.entry.number or (s.notion.count if s.notion else 1)
    how_many = (say("step-attach-count", count=count),) if count > 1 else ()
    where = s.edges_and_places
    if "hook" in kind:
        key = "step-attach-hook-over" if s.laps_over else "step-attach-hook"
        return Told((say(key, edges=where), *how_many), check)
    if "button" in kind:
        text = say("step-attach-button", count=count, edges=where)
        under = (say("step-button-under", count=count),) if s.laps_over else ()
        return Told((text, *under, *how_many), check)
    return Told((say("step-attach", notion=name, edges=where), *how_many))


def stitch_on(s: Scene) -> Told:
    """Sewing a finished piece, a label or a loop onto the garment by machine."""
    where = s.edges_and_places
    side = "-wrong" if s.entry.from_wrong_side else ""
    by = name_edges(s.garment, (s.entry.by,)) if s.entry.by else ""
    if s.is_seam_to_come:
        name = s.entry_pieces if s.entry.pieces else say("step-the", name=s.notion_name)
        if s.entry.pieces and s.copies(s.entry.pieces) == 1 < len(s.op.segments):
            where = say("step-one-of", edges=where)
        values = {"name": by or name, "place": where, "distance": s.usual(usual.BASTE_OUTSIDE)}
        key = "step-stitch-piece-in-seam" if s.entry.pieces else "step-stitch-in-seam"
        text = say("step-stitch-in-seam-wrong" if side else key, **values)
        return Told((*_doubled(s), text), say("step-check-stitch-in-seam"))
    if holds_free_ends(s.c, s.entry):
        values = {"pieces": s.entry_pieces, "place": where, "under": s.usual(usual.STRAP_END)}
        return Told((say("step-stitch-free-ends", **values),), say("step-check-stitch-on"))
    if s.entry.pieces:
        if by:
            text = say(f"step-stitch-end-on{side}", end=by, place=where)
        elif any(free_ends(s.garment, piece) is None for piece in s.entry.pieces):
            text = say(f"step-stitch-ends-on{side}", pieces=s.entry_pieces, place=where)
        else:
            text = say(f"step-stitch-piece-on{side}", pieces=s.entry_pieces, place=where)
        box = say("step-stitch-piece-box")
        return Told((*_doubled(s), text, box), say("step-check-stitch-on"))
    values = {"notion": s.notion_name, "place": where}
    if "label" in s.notion_kind:
        return Told((say("step-stitch-label-on", distance=s.usual(usual.EDGE_STITCH), **values),))
    if "loop" in s.notion_kind:
        return Told((say("step-stitch-loop-on", **values),), say("step-check-stitch-on"))
    return Told((say("step-stitch-trimming-on", distance=s.usual(usual.EDGE_STITCH), **values),))


def holds_free_ends(c: Construction, entry: Entry) -> bool:
    """Whether straps are sewn down by the ends that the seam at their other ends leaves free."""
    if not entry.pieces or c.seams_at(c.shapes[entry.id].run):
        return False
    others = (e for e in c.garment.entries if e.verb is Verb.ATTACH and e.pieces == entry.pieces)
    return any(c.seams_at(c.shapes[other.id].run) for other in others)


def _doubled(s: Scene) -> tuple[str, ...]:
    """That it is folded in half before it is laid down."""
    if not s.entry.is_doubled:
        return ()
    name = s.entry_pieces if s.entry.pieces else say("step-the", name=s.notion_name)
    return (say("step-attach-doubled", name=name),)


def tack(s: Scene) -> Told:
    """Fastening an edge to a notion or to the allowances of a seam."""
    name = s.entry.to_name or ""
    garment = s.garment
    notion = next((n for n in garment.notions if n.id == name), None)
    if notion is not None and "zip" in notion.kind:
        clear = s.usual(usual.FOLD_CLEAR_OF_ZIP)
        text = say("step-tack-zip", edges=s.edges, name=notion_words(notion.kind), clear=clear)
        return Told((text,), say("step-check-tack-zip"))
    if notion is not None:
        return Told((say("step-tack-notion", edges=s.edges, name=notion_words(notion.kind)),))
    entry = next((e for e in garment.entries if e.id == name), None)
    if entry is None:
        return Told((say("step-tack-notion", edges=s.edges, name=quoted(readable(name))),))
    if entry.verb is Verb.SEW:
        return Told((say("step-tack-seam", edges=s.edges, name=name_seam(garment, entry)),))
    target = name_edges(garment, entry.run) if entry.run else quoted(readable(name))
    return Told((say("step-tack-edges", edges=s.edges, other=target),))


def _upper_edge(s: Scene) -> Segment | None:
    """The edge at the top of an opening: the one that it meets at a corner."""
    found = s.beside(s.op.segments, at_mark=False)
    return found[0] if found else None


TELLERS = {
    Action.PRESS_COILS: press_coils,
    Action.SET_ZIP: set_zip,
    Action.REMOVE_BASTING: remove_basting,
    Action.ATTACH: attach,
    Action.STITCH_ON: stitch_on,
    Action.TACK: tack,
}

OF_VERB = {
    Verb.INSERT: {
        Action.SET_ON: set_fly_facing,
        Action.PRESS: press_zip,
        Action.STITCH_ON: stitch_shield,
        Action.TOPSTITCH: topstitch_fly,
    }
}
"""Who tells what the recipes of this verb do."""
