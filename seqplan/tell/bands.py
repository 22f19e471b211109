"""Sentences for what is set on an edge and folded over it, and for straps."""

from seqplan.base.measure import both
from seqplan.model.entry import Closing, Ends, Verb, ZipMethod
from seqplan.model.operation import Action
from seqplan.recipes import widths
from seqplan.tell import usual
from seqplan.tell.lapping import zip_over
from seqplan.tell.names import capital, name_copies, name_pieces, quoted, readable, where_words
from seqplan.tell.scene import Scene
from seqplan.tell.seams import again, matching, open_first, stitch
from seqplan.tell.sentence import Told
from seqplan.tell.shaping import topstitched_side, where_topstitched
from seqplan.words.say import say

_JOIN = "join"
_HALVES = 2

# -- bands and bindings --------------------------------------------------------------------


def fold_band(s: Scene) -> Told:
    """Pressing a band before it is set on."""
    check = say("step-check-band-fold")
    if s.entry.closing is Closing.IN_ONE_SEAM:
        return Told((say("step-band-fold-double", band=s.partners),), check)
    if s.entry.verb is Verb.BIND:
        return Told((say("step-binding-fold", band=s.partners),), check)
    key = "step-band-fold" if not s.entry.under else "step-band-under"
    if not s.entry.under:
        values = {"band": s.partners}
    else:
        values = {"outer": capital(_outer(s)), "inner": _inner(s)}
    if s.allowance is None:
        return Told((say(f"{key}-unknown", cover=_cover(s), **values),), check)
    under, _ = usual.shorter(s.allowance, by=usual.BAND_COVER)
    return Told((say(key, cover=_cover(s), under=both(under), **values),), check)


def _cover(s: Scene) -> str:
    """How far the loose edge reaches over the seam."""
    if s.allowance is None:
        return s.usual(usual.BAND_COVER[0])
    _, cover = usual.shorter(s.allowance, by=usual.BAND_COVER)
    return both(cover)


def set_band(s: Scene) -> Told:
    """Sewing a band to an edge."""
    check = say("step-check-set-on")
    if s.entry.closing is Closing.IN_ONE_SEAM:
        texts = [
            say("step-band-lay-double", band=s.partners, edges=s.edges),
            say("step-band-stretch"),
            *_ring_or_ends(s),
            *matching(s),
            stitch(s),
        ]
        return Told((*texts, *again(s)), check)
    side = "-wrong" if s.entry.from_wrong_side else ""
    if s.attached and s.entry.under:
        texts = [say(f"step-band-lay-outer{side}", attached=s.attached, edges=s.edges)]
    elif s.attached:
        texts = [say(f"step-band-lay{side}", attached=s.attached, edges=s.edges)]
    else:
        texts = [say(f"step-band-lay-plain{side}", band=s.partners, edges=s.edges)]
    texts += _one_each(s)
    if s.entry.under:
        texts.append(say("step-band-lay-two", inner=_inner(s)))
    if s.crosses_zip:
        texts.insert(0, say(open_first(s)))
    texts += [*_ring_or_ends(s), *matching(s), stitch(s), *_over_zip(s)]
    return Told((*texts, *again(s)), check)


def set_binding(s: Scene) -> Told:
    """Sewing a binding to an edge."""
    side = "-wrong" if s.entry.from_wrong_side else ""
    texts = [say(f"step-bind-lay{side}", band=s.partners, edges=s.edges)]
    if any(s.c.rings.is_slit(segment) for segment in s.op.segments):
        texts.append(say("step-bind-slit"))
    if s.is_ring and s.entry.ends is not Ends.JOINED:
        values = {
            "under": s.usual(usual.STRAP_END),
            "overlap": s.usual(usual.OVERLAP_OF_STITCHING),
        }
        texts.append(say("step-bind-stitch-ring", **values))
    elif s.is_ring:
        overlap = s.usual(usual.OVERLAP_OF_STITCHING)
        texts.append(say("step-bind-stitch-joined", overlap=overlap))
    else:
        texts.append(say("step-bind-stitch"))
    ends = [say("step-band-ends-out")] if _are_ends_to_close(s) else []
    texts[1:1] = [*_one_each(s), *ends]
    return Told((*texts, *again(s)), say("step-check-set-on"))


def _one_each(s: Scene) -> list[str]:
    """Which copy of a band or binding goes where, if the edge is in two halves."""
    if s.count != _HALVES or s.copies(s.entry.partners) != s.count:
        return []
    discs = [
        {s.c.rings.disc(x) for x in group if x.piece not in s.entry.partners} for group in s.groups
    ]
    if not set.intersection(*discs):
        return []
    return [say("step-band-each-half", band=name_copies(s.garment, s.entry.partners))]


def finish_band(s: Scene) -> Told:
    """Finishing the allowances of a band that is caught in one seam."""
    return Told((say("step-band-finish", edges=s.edges), *again(s)))


def press_band(s: Scene) -> Told:
    """Pressing the seam of a band."""
    if s.entry.closing is Closing.IN_ONE_SEAM:
        return Told((say("step-press-band-double", edges=s.edges), *again(s)))
    key = "step-press-binding" if s.entry.verb is Verb.BIND else "step-press-band"
    band = _outer(s) if s.entry.under else s.partners
    return Told((say(key, band=band), *again(s)))


def close_ends(s: Scene) -> Told:
    """Joining a band to a ring, or closing its ends."""
    if s.op.part == _JOIN:
        if s.allowance is None:
            return Told((say("step-band-join-unknown", band=s.partners),))
        return Told((say("step-band-join", band=s.partners, allowance=both(s.allowance)),))
    texts = (
        say("step-band-ends", band=s.partners),
        say("step-band-ends-trim", width=s.usual(widths.TRIMMED)),
    )
    return Told((*texts, *again(s)), say("step-check-band-ends"))


def wrap(s: Scene) -> Told:
    """Folding a band or binding over the edge."""
    cover = _cover(s)
    if s.entry.under:
        text = say("step-wrap-two", inner=_inner(s), cover=cover)
    else:
        side = "-wrong" if s.entry.from_wrong_side else ""
        text = say(f"step-wrap{side}", band=s.partners, cover=cover)
    return Told((text, *again(s)), say("step-check-wrap"))


def close_band(s: Scene) -> Told:
    """Fastening the loose edge of a band or binding."""
    check = say("step-check-close-band")
    if s.entry.closing is Closing.BY_HAND:
        apart = s.usual(usual.SLIP_STITCH_APART)
        band = _inner(s) if s.entry.under else s.partners
        text = say("step-close-band-hand", band=band, apart=apart)
    elif s.entry.closing is Closing.IN_THE_DITCH:
        text = say("step-close-band-ditch")
    else:
        side = "-wrong" if s.entry.from_wrong_side else ""
        ring = "-ring" if s.is_ring else ""
        band = _outer(s) if s.entry.under else s.partners
        values = {"band": band, "distance": s.usual(usual.EDGE_STITCH)}
        if s.is_ring:
            values["overlap"] = s.usual(usual.OVERLAP_OF_STITCHING)
        text = say(f"step-close-band{side}{ring}", **values)
    return Told((text, *again(s)), check)


def topstitch_band(s: Scene) -> Told:
    """Topstitching a band along its edges."""
    distance, length = where_topstitched(s)
    values = {"band": s.partners, "distance": distance, "stitch": length}
    side = topstitched_side(s)
    if side:
        text = say("step-band-topstitch-side", side=where_words(side), **values)
    else:
        text = say("step-band-topstitch", **values)
    return Told((text, *again(s)))


def _ring_or_ends(s: Scene) -> list[str]:
    is_closed = s.is_ring and s.entry.ends is None and bool(s.entry.partners)
    if s.entry.ends is Ends.JOINED or is_closed:
        return [say("step-band-ring")]
    if s.entry.ends is Ends.CLOSED or _are_ends_to_close(s):
        return [say("step-band-ends-out")]
    if s.entry.ends is Ends.OPEN:
        return [say("step-band-ends-level")]
    return [say("step-band-ends-sewn")] if _are_ends_sewn(s) else []


def _are_ends_to_close(s: Scene) -> bool:
    """Whether the ends of a band are stitched across once it is set on."""
    return any(op.part != _JOIN for op in s.c.doing(s.entry.id, Action.CLOSE_ENDS))


def _are_ends_sewn(s: Scene) -> bool:
    """Whether the layers of a band are joined round its ends before it is set on."""
    layers = (set(s.entry.outer), set(s.entry.under))
    ends = {side.piece for side in s.c.shapes[s.entry.id].to}
    for shape in s.c.joins:
        if shape.entry.id == s.entry.id or s.c.main(shape.entry.id).id not in s.before:
            continue
        for glue in shape.glues:
            pair = {glue.first.piece}, {glue.second.piece}
            if ends & pair[0] | ends & pair[1] and all(map(set.__le__, pair, layers)):
                return True
    return False


def _over_zip(s: Scene) -> list[str]:
    """What lies at the end of the edge where a zip is set, and is caught in the seam."""
    if not s.crosses_zip:
        return []
    entry = zip_over(s.c, s.entry)
    is_fly = entry is not None and entry.method is ZipMethod.FLY
    return [say("step-over-fly" if is_fly else "step-over-zip")]


def _outer(s: Scene) -> str:
    return name_pieces(s.garment, s.entry.outer)


def _inner(s: Scene) -> str:
    return name_pieces(s.garment, s.entry.under)


# -- plackets ------------------------------------------------------------------------------


def fold_placket(s: Scene) -> Told:
    """Pressing the strips of a placket."""
    seam = s.usual(usual.PLACKET_SEAM)
    texts = [say("step-placket-fold", band=s.partners, seam=seam)]
    if s.entry.verb is Verb.TOWER_PLACKET and len(s.entry.partners) > 1:
        tower = name_pieces(s.garment, s.entry.partners[1:])
        texts.append(say("step-placket-fold-tower", band=tower))
    return Told(tuple(texts), say("step-check-band-fold"))


def set_placket(s: Scene) -> Told:
    """Sewing the strips to the slit."""
    kind = "tower" if s.entry.verb is Verb.TOWER_PLACKET else "continuous"
    seam = s.usual(usual.PLACKET_SEAM)
    attached = s.attached or s.partners
    values = {"attached": attached, "edges": s.edges}
    lay = say(f"step-{kind}-lay", **({**values, "seam": seam} if kind != "tower" else values))
    row = say(f"step-{kind}-stitch", seam=seam)
    texts = (lay, *_sides_of_slit(s), row, *_each_slit(s))
    return Told(texts, say("step-check-set-on"))


def _sides_of_slit(s: Scene) -> tuple[str, ...]:
    """Which strip goes on which side of the slit: the first on the side named first."""
    if s.entry.verb is not Verb.TOWER_PLACKET or len(s.entry.partners) != 2:
        return ()
    slits = {slit.name: slit for ref in s.entry.run for slit in s.garment.piece[ref.piece].slits}
    slit = next((slits[ref.edge] for ref in s.entry.run if ref.edge in slits), None)
    if slit is None:
        return ()
    first, second = (name_pieces(s.garment, [id_]) for id_ in s.entry.partners)
    names = {"first": first, "second": second}
    sides = {"before": quoted(readable(slit.before)), "after": quoted(readable(slit.after))}
    return (say("step-tower-sides", **names, **sides),)


def wrap_placket(s: Scene) -> Told:
    """Folding the strips over."""
    kind = "tower" if s.entry.verb is Verb.TOWER_PLACKET else "continuous"
    return Told((say(f"step-{kind}-wrap", band=s.partners), *_each_slit(s)))


def close_placket(s: Scene) -> Told:
    """Fastening the strips."""
    distance = s.usual(usual.EDGE_STITCH)
    if s.entry.verb is Verb.TOWER_PLACKET:
        rows = (
            say("step-tower-close", distance=distance),
            say("step-tower-close-box", distance=distance),
        )
        return Told((*rows, *_each_slit(s)), say("step-check-tower"))
    rows = (
        say("step-continuous-close", distance=distance),
        say("step-continuous-close-corner"),
    )
    return Told((*rows, *_each_slit(s)), say("step-check-continuous"))


def _each_slit(s: Scene) -> tuple[str, ...]:
    """That both sleeves, or however many, are done alike."""
    count = s.copies(ref.piece for ref in s.entry.run)
    if count < 2:
        return ()
    if count == 2:
        return (say("step-other-side"),)
    return (say("step-the-others", count=count),)


_BANDS = {
    Action.FOLD_BAND: fold_band,
    Action.SET_ON: set_band,
    Action.FINISH: finish_band,
    Action.PRESS: press_band,
    Action.CLOSE_ENDS: close_ends,
    Action.WRAP: wrap,
    Action.CLOSE_BAND: close_band,
    Action.TOPSTITCH: topstitch_band,
}
_PLACKETS = {
    Action.FOLD_BAND: fold_placket,
    Action.SET_ON: set_placket,
    Action.WRAP: wrap_placket,
    Action.CLOSE_BAND: close_placket,
}

OF_VERB = {
    Verb.BAND: _BANDS,
    Verb.BIND: {**_BANDS, Action.SET_ON: set_binding},
    Verb.TOWER_PLACKET: _PLACKETS,
    Verb.CONTINUOUS_PLACKET: _PLACKETS,
}
"""Who tells what the recipes of these verbs do."""
