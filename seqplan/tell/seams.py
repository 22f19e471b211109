"""Sentences for seams: laying together, stitching, tidying, pressing, turning."""

from seqplan.base.measure import Length, both
from seqplan.model.entry import Portion, SeamKind, Verb
from seqplan.model.operation import Action
from seqplan.tell import usual
from seqplan.tell.names import (
    listing,
    name_copies,
    name_edge,
    name_edges,
    name_pieces,
    name_seam_plainly,
    readable,
)
from seqplan.tell.scene import Scene
from seqplan.tell.sentence import Told
from seqplan.words.say import say


def sew(s: Scene) -> Told:
    """The stitching that makes a seam, or the first row of a French one."""
    crosses_zip = _crosses_zip(s)
    texts = [say("step-open-zip-first")] if crosses_zip else []
    texts += [_lay(s), *_matching(s), _stitch(s), *_ends(s)]
    if crosses_zip:
        texts.append(say("step-over-zip"))
    if s.turns_corner:
        texts.append(say("step-turned-at-corner"))
    if s.is_once_for_each_side:
        texts.append(say("step-twice-sides"))
    elif s.count > 1:
        texts.append(say("step-seam-times", count=s.count))
    return Told(tuple(texts), say("step-check-crossing" if s.crossed else "step-check-seam"))


def enclose(s: Scene) -> Told:
    """The second row of a French seam."""
    if s.allowance is None:
        text = say("step-enclose-unknown", seam=s.seam)
    else:
        rows = usual.french_rows(s.allowance)
        text = say("step-enclose", seam=s.seam, second=both(rows.second))
    return Told((text, *_ends(s), *again(s)), say("step-check-enclosed"))


def baste(s: Scene) -> Told:
    """Basting that holds two edges until a seam does."""
    if s.entry.method is not None:
        return _baste_for_zip(s)
    key = "step-baste-alone" if s.is_alone else "step-baste"
    values = {"distance": s.usual(usual.BASTE_OUTSIDE)}
    if s.is_alone:
        values |= {"pieces": name_copies(s.garment, s.piece_ids), "edges": s.edges}
    else:
        values |= {"one": s.edges, "other": name_edges(s.garment, s.entry.to)}
    if s.allowance is None:
        return Told((say(f"{key}-unknown", **values),))
    return Told((say(key, allowance=both(s.allowance), **values),))


def trim(s: Scene) -> Told:
    """Trimming: of a French seam, of a faced one, or of what an entry names."""
    if s.entry.verb is Verb.TRIM:
        return Told((say("step-trim-edges", edges=s.edges, width=s.usual(usual.TRIMMED)),))
    if s.entry.seam is SeamKind.FRENCH:
        return _trim_french(s)
    widths = {"narrow": s.usual(usual.GRADED_NARROW), "wide": s.usual(usual.GRADED_WIDE)}
    if not s.inner():
        return Told((say("step-trim-graded-plain", seam=s.seam, **widths), *again(s)))
    names = {"inner": _inner(s), "outer": name_pieces(s.garment, s.outer())}
    return Told((say("step-trim-graded", seam=s.seam, **names, **widths), *again(s)))


def clip(s: Scene) -> Told:
    """Clipping along curves."""
    widths = {"from_width": s.usual(usual.CLIP_FROM), "to_width": s.usual(usual.CLIP_TO)}
    check = say("step-check-clip")
    if s.entry.verb is Verb.CLIP:
        return Told((say("step-clip-edges", edges=s.edges, **widths),), check)
    return Told((say("step-clip-seam", seam=s.seam, **widths), *again(s)), check)


def press_over(s: Scene) -> Told:
    """Pressing a French seam between its rows."""
    return Told((say("step-press-over", seam=s.seam), *again(s)))


def press(s: Scene) -> Told:
    """Pressing a seam, a dart, a pleat, a hem or what an entry names."""
    entry = s.entry
    if entry.verb is Verb.PRESS:
        return Told((say("step-press-edges", edges=s.edges),))
    if entry.verb in {Verb.DART, Verb.PLEAT}:
        return Told((say(f"step-press-{entry.verb.value}", edges=s.edges),))
    if entry.verb is Verb.HEM:
        return Told((say("step-press-hem", edges=s.edges), *again(s)))
    if entry.verb is Verb.INSERT:
        return Told((say("step-zip-press", opening=s.edge_title(s.op.segments[0])),))
    if entry.seam is SeamKind.FACED and entry.press_to is None:
        return Told((_press_to_facing(s), *again(s)))
    return Told((_press_seam(s), *again(s)))


def understitch(s: Scene) -> Told:
    """The row that keeps a facing inside."""
    distance = s.usual(usual.UNDERSTITCH)
    if s.is_join and s.inner():
        text = say("step-understitch", seam=s.seam, inner=_inner(s), distance=distance)
    else:
        text = say("step-understitch-plain", edges=s.edges, distance=distance)
    return Told((text, *again(s)))


def turn(s: Scene) -> Told:
    """Turning a facing to the inside, or pieces right side out."""
    if not s.is_join:
        return Told((say("step-turn-pieces", pieces=s.pieces),))
    if s.inner():
        return Told((say("step-turn-facing", inner=_inner(s), seam=s.seam), *again(s)))
    return Told((say("step-turn-facing-plain", seam=s.seam), *again(s)))


def finish(s: Scene) -> Told:
    """Finishing raw edges: two together, each apart, or what an entry names."""
    if s.entry.seam is SeamKind.FINISHED_TOGETHER and s.is_join:
        return Told((say("step-finish-together", seam=s.seam), *again(s)))
    if s.is_join:
        if s.c.main(s.entry.id).id in s.before:
            return Told((say("step-finish-apart-after", seam=s.seam), *again(s)))
        return Told((say("step-finish-apart", edges=s.all_edges),))
    if s.crossed:
        return Told((say("step-finish-over", edges=s.edges),))
    return Told((say("step-finish-edges", edges=s.edges),))


def again(s: Scene) -> tuple[str, ...]:
    """That it is done on the other side too, or on all others."""
    if s.count < 2:
        return ()
    if s.is_once_for_each_side:
        return (say("step-other-side"),)
    if s.count == 2:
        return (say("step-the-other"),)
    return (say("step-the-others", count=s.count),)


def _crosses_zip(s: Scene) -> bool:
    """Whether a seam runs over the top of a zip that is set already."""
    zips = (s.zip_at(segment) for segment in s.beside(s.op.segments, at_mark=False))
    return any(op is not None and op.id in s.before for op in zips)


def _lay(s: Scene) -> str:
    suffix = "-french" if s.entry.seam is SeamKind.FRENCH else ""
    if s.joins_tubes:
        return say(f"step-lay-tubes{suffix}", edges=s.all_edges)
    if s.is_alone:
        edges = listing(dict.fromkeys(name_edge(ref) for ref in s.refs))
        key = "step-lay-alone" if len(s.piece_ids) == 1 else "step-lay-halves"
        return say(f"{key}{suffix}", pieces=name_copies(s.garment, s.piece_ids), edges=edges)
    other = name_edges(s.garment, s.entry.to)
    return say(f"step-lay{suffix}", one=s.edges, other=other)


def _matching(s: Scene) -> tuple[str, ...]:
    names = list(dict.fromkeys(name_seam_plainly(entry) for entry in s.crossed))
    if not names:
        return ()
    if len(names) == 1:
        return (say("step-match-seam", seams=names[0]),)
    return (say("step-match-seams", seams=listing(say("step-the", name=n) for n in names)),)


def _stitch(s: Scene) -> str:
    if s.entry.portion is not None:
        return _stitch_portion(s, s.entry.portion)
    if s.allowance is None:
        is_french = s.entry.seam is SeamKind.FRENCH
        return say("step-stitch-french-unknown" if is_french else "step-stitch-unknown")
    allowance = both(s.allowance)
    if s.entry.seam is SeamKind.FRENCH:
        rows = usual.french_rows(s.allowance)
        measures = {"first": both(rows.first), "second": both(rows.second)}
        return say("step-stitch-french", allowance=allowance, **measures)
    if s.is_ring:
        overlap = s.usual(usual.OVERLAP_OF_STITCHING)
        return say("step-stitch-ring", allowance=allowance, overlap=overlap)
    return say("step-stitch", allowance=allowance)


def _stitch_portion(s: Scene, portion: Portion) -> str:
    key = "step-stitch-part" if portion.is_named_part else "step-stitch-stop"
    values = {"length": both(portion.length), "neighbour": readable(portion.neighbour)}
    if s.allowance is None:
        return say(f"{key}-unknown", **values)
    return say(key, allowance=both(s.allowance), **values)


def _ends(s: Scene) -> list[str]:
    """Where the seam ends at a mark and its edges go on open."""
    texts = []
    for segment in s.beside(s.op.segments, at_mark=True):
        op = s.zip_at(segment)
        if op is not None and op.id in s.before:
            texts.append(say("step-below-zip"))
        elif s.entry.portion is None:
            texts.append(say("step-at-mark", edge=s.edge_title(segment)))
    return texts


def _trim_french(s: Scene) -> Told:
    texts = [say("step-trim-french", seam=s.seam, width=s.usual(usual.FRENCH_TRIMMED))]
    if s.turns_corner:
        texts.append(say("step-trim-french-corner"))
    if s.allowance is not None:
        texts += [
            say(
                "step-clip-french-mark",
                edge=s.edge_title(segment),
                depth=both(_clip_depth(s, s.allowance)),
                short=s.usual(usual.FRENCH_CLIP_SHORT),
            )
            for segment in s.beside(s.op.segments, at_mark=True)
        ]
    return Told((*texts, *again(s)))


def _clip_depth(s: Scene, allowance: Length) -> Length:
    short = usual.usual(s.garment, usual.FRENCH_CLIP_SHORT).mm
    return Length(max(allowance.mm - short, allowance.mm / 2), allowance.written_in)


def _press_to_facing(s: Scene) -> str:
    if not s.inner():
        return say("step-press-facing-plain", seam=s.seam)
    return say("step-press-facing", seam=s.seam, inner=_inner(s))


_PLAIN_DIRECTIONS = {"open": "open", "up": "up", "down": "down", "one side": "aside"}


def _press_seam(s: Scene) -> str:
    where = (s.entry.press_to or "").strip()
    word = where.removeprefix("the ").casefold()
    if not word:
        word = "open" if s.entry.seam in {SeamKind.PRESSED_OPEN, SeamKind.PLAIN} else "one side"
    if word in _PLAIN_DIRECTIONS:
        return say(f"step-press-seam-{_PLAIN_DIRECTIONS[word]}", seam=s.seam)
    if word in {"left", "right"}:
        return say("step-press-seam-worn", seam=s.seam, where=word)
    return say("step-press-seam-to", seam=s.seam, where=where.removeprefix("the "))


def _inner(s: Scene) -> str:
    return name_pieces(s.garment, s.inner())


def _baste_for_zip(s: Scene) -> Told:
    if s.allowance is None:
        return Told((say("step-zip-baste-plain", edges=s.edges),))
    return Told((say("step-zip-baste", edges=s.edges, allowance=both(s.allowance)),))


TELLERS = {
    Action.SEW: sew,
    Action.ENCLOSE: enclose,
    Action.BASTE: baste,
    Action.TRIM: trim,
    Action.CLIP: clip,
    Action.PRESS_OVER: press_over,
    Action.PRESS: press,
    Action.UNDERSTITCH: understitch,
    Action.TURN: turn,
    Action.FINISH: finish,
}
