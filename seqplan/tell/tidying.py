"""Sentences for what follows a seam: trimming, finishing, pressing, turning, topstitching."""

from seqplan.base.measure import Length, both
from seqplan.model.entry import SeamKind, Verb
from seqplan.model.operation import Action
from seqplan.model.piece import Layer, Worn
from seqplan.recipes import widths
from seqplan.tell import usual
from seqplan.tell.names import in_garment_order, name_pieces, readable, where_words
from seqplan.tell.pressing import BODY, pressed_side, worn
from seqplan.tell.scene import Scene
from seqplan.tell.seams import again
from seqplan.tell.sentence import Told
from seqplan.tell.shaping import topstitched_side, where_topstitched
from seqplan.tell.turning import turned_through
from seqplan.words.say import say


def trim(s: Scene) -> Told:
    """Trimming: of a French seam, of a faced one, or of what an entry names."""
    if s.entry.verb is Verb.TRIM:
        width = both(s.entry.left) if s.entry.left else s.usual(widths.TRIMMED)
        return Told((say("step-trim-edges", edges=s.edges, width=width),))
    if s.entry.seam is SeamKind.FRENCH:
        return _trim_french(s)
    if s.entry.seam is SeamKind.FLAT_FELLED:
        width = s.usual(widths.FELL_TRIMMED)
        return Told((say("step-trim-fell", seam=s.seam, width=width), *again(s)))
    if s.entry.seam is SeamKind.OWN:
        text = say("step-trim-seam", seam=s.seam, width=s.usual(widths.TRIMMED))
        return Told((text, *again(s)))
    return _graded(s)


def grade(s: Scene) -> Told:
    """Trimming allowances to different widths."""
    if s.is_join:
        return _graded(s)
    return Told((say("step-grade-edges", edges=s.edges, **_grades(s)),))


def _graded(s: Scene) -> Told:
    grades = _grades(s)
    corners = (say("step-trim-corner"),) if s.turns_corner else ()
    if s.entry.gap is not None:
        corners = (*corners, say("step-trim-not-gap"))
    if not s.inner():
        text = say("step-trim-graded-plain", seam=s.seam, **grades)
        return Told((text, *corners, *again(s)))
    names = {"inner": _inner(s), "outer": name_pieces(s.garment, s.outer())}
    return Told((say("step-trim-graded", seam=s.seam, **names, **grades), *corners, *again(s)))


def _grades(s: Scene) -> dict[str, str]:
    """The narrow and the wide allowance: as usual, or the wide one as the author says."""
    if s.entry.left is None:
        wide = s.usual(widths.GRADED_WIDE)
        return {"narrow": s.usual(widths.GRADED_NARROW), "wide": wide}
    narrow = s.entry.left._replace(mm=s.entry.left.mm / 2)
    return {"narrow": both(narrow), "wide": both(s.entry.left)}


def clip(s: Scene) -> Told:
    """Clipping along curves."""
    apart = {"from_width": s.usual(usual.CLIP_FROM), "to_width": s.usual(usual.CLIP_TO)}
    check = say("step-check-clip")
    if s.entry.verb is Verb.CLIP:
        return Told((say("step-clip-edges", edges=s.edges, **apart),), check)
    return Told((say("step-clip-seam", seam=s.seam, **apart), *again(s)), check)


def press_over(s: Scene) -> Told:
    """Pressing a French seam between its rows, or folding over the allowance of a felled one."""
    if s.entry.seam is SeamKind.FLAT_FELLED:
        return Told((say("step-fold-fell", seam=s.seam), *again(s)))
    return Told((say("step-press-over", seam=s.seam), *again(s)))


def press(s: Scene) -> Told:
    """Pressing a seam, a dart, a pleat, a hem or what an entry names."""
    verb = s.entry.verb
    if verb is Verb.PRESS:
        return Told((_press_edges(s),), say("step-check-press"))
    if verb in {Verb.DART, Verb.PLEAT}:
        return Told((say(f"step-press-{verb.value}", edges=s.edges),))
    if verb is Verb.HEM:
        return Told((say("step-press-hem", edges=s.edges), *again(s)))
    return Told((_press_join(s), *_press_bags(s), *again(s)))


def _press_edges(s: Scene) -> str:
    """Pressing edges; the wrong side of those that are turned already cannot be reached."""
    layers = _enclosed(s)
    is_turned = any(op.id in s.before and op.pieces & s.op.pieces for op in s.c.acting(Action.TURN))
    if layers is None or not is_turned:
        return say("step-press-edges", edges=s.edges)
    return say("step-press-edges-enclosed", edges=s.edges, inner=layers["inner"])


def _press_bags(s: Scene) -> tuple[str, ...]:
    if not s.meets_bags:
        return ()
    return (say("step-press-bags-along" if _goes_to_front(s) else "step-press-bags"),)


def _goes_to_front(s: Scene) -> bool:
    """Whether allowances go the way of the bags in the seam, since nobody says otherwise."""
    return s.meets_bags and not s.entry.press_to and s.entry.seam not in _PRESSED_OPEN


def _press_join(s: Scene) -> str:
    """Pressing a seam: the way its kind wants, unless the author names another."""
    seam = s.entry.seam
    if s.entry.press_to is not None:
        return _press_seam(s)
    if seam is SeamKind.FLAT_FELLED and pressed_side(s.c, s.entry):
        return _press_by_custom(s)
    if seam in _PRESSED_THEIR_WAY:
        return say(_PRESSED_THEIR_WAY[seam], seam=s.seam)
    if seam is SeamKind.FACED or (s.inner() and s.c.doing(s.entry.id, Action.UNDERSTITCH)):
        return _press_to_facing(s)
    return _press_seam(s)


_PRESSED_THEIR_WAY = {
    SeamKind.FLAT_FELLED: "step-press-fell",
    SeamKind.LAPPED: "step-press-lap",
    SeamKind.ENCLOSED: "step-press-enclosed",
}


def press_under(s: Scene) -> Told:
    """Pressing the upper edge of a lapped seam under."""
    if s.allowance is None:
        return Told((say("step-press-under-unknown", edges=s.edges),))
    return Told((say("step-press-under", edges=s.edges, allowance=both(s.allowance)),))


def understitch(s: Scene) -> Told:
    """The row that keeps a facing inside."""
    distance = s.usual(widths.UNDERSTITCH)
    if s.is_join and s.inner():
        text = say("step-understitch", seam=s.seam, inner=_inner(s), distance=distance)
    else:
        text = say("step-understitch-plain", edges=s.edges, distance=distance)
    return Told((text, *again(s)))


def turn(s: Scene) -> Told:
    """Turning a facing to the inside, or pieces right side out."""
    if not s.is_join:
        if s.entry.through:
            return Told((turned_through(s),), say("step-check-turned-out"))
        return Told((say("step-turn-pieces", pieces=s.pieces),), say("step-check-turned-out"))
    if s.entry.seam is SeamKind.ENCLOSED or (s.entry.seam is SeamKind.OWN and not s.inner()):
        key = "step-turn-enclosed" if s.entry.gap is None else "step-turn-enclosed-gap"
        return Told((say(key, pieces=s.pieces, seam=s.seam),), say("step-check-turned"))
    out = (say("step-turn-out"),) if s.turns_corner else ()
    if s.inner():
        return Told((*out, say("step-turn-facing", inner=_inner(s), seam=s.seam), *again(s)))
    return Told((*out, say("step-turn-facing-plain", seam=s.seam), *again(s)))


def finish(s: Scene) -> Told:
    """Finishing raw edges: two together, each apart, or what an entry names."""
    if s.entry.cuts is not None:
        return _finish_cutting(s, both(s.entry.cuts))
    if s.entry.seam is SeamKind.FINISHED_TOGETHER and s.is_join:
        bags = (say("step-finish-past-bags"),) if s.meets_bags else ()
        return Told((say("step-finish-together", seam=s.seam), *bags, *again(s)))
    if s.entry.seam is SeamKind.BOUND and s.is_join:
        key = "step-bind-apart" if s.entry.press_to == "open" else "step-bind-together"
        is_named = bool(s.entry.partners or s.entry.notion)
        binding = s.partners if is_named else say("step-some-binding")
        return Told((say(key, seam=s.seam, binding=binding), *again(s)))
    if s.is_join:
        if s.c.main(s.entry.id).id in s.before:
            return Told((say("step-finish-apart-after", seam=s.seam), *again(s)))
        return Told((say("step-finish-apart", edges=s.all_edges),))
    key = "step-finish-over" if s.crossed else "step-finish-edges"
    return Told((say(key, edges=s.edges),), say("step-check-finish"))


def _finish_cutting(s: Scene, cuts: str) -> Told:
    """Finishing with a knife that takes some of the allowance off."""
    if s.entry.seam is SeamKind.FINISHED_TOGETHER and s.is_join:
        text = say("step-finish-together-cutting", seam=s.seam, cuts=cuts)
        return Told((text, *again(s)))
    edges = s.all_edges if s.is_join else s.edges
    text = say("step-finish-edges-cutting", edges=edges, cuts=cuts)
    return Told((text,), say("step-check-finish"))


def topstitch(s: Scene) -> Told:
    """Topstitching a seam, or what an entry names."""
    distance, length = where_topstitched(s)
    values = {"distance": distance, "stitch": length}
    if not s.is_join:
        text = say("step-topstitch", edges=s.edges, **values)
        return Told((*_folded_first(s), text), say("step-check-topstitch"))
    if s.entry.seam is SeamKind.ENCLOSED:
        return Told((say("step-topstitch-edge", seam=s.seam, **values), *again(s)))
    side = topstitched_side(s)
    if side == "both sides":
        return Told((say("step-topstitch-both", seam=s.seam, **values), *again(s)))
    if side:
        return Told(
            (say("step-topstitch-side", seam=s.seam, side=where_words(side), **values), *again(s))
        )
    return Told((say("step-topstitch-seam", seam=s.seam, **values), *again(s)))


def _folded_first(s: Scene) -> tuple[str, ...]:
    """That the layers of an enclosed seam lie on one another before a row runs along its edge."""
    layers = _enclosed(s)
    return () if layers is None else (say("step-topstitch-enclosed", **layers),)


def _enclosed(s: Scene) -> dict[str, str] | None:
    """The inner and the outer layer, where the edges that are named lie in an enclosed seam."""
    for seam in dict.fromkeys(map(s.c.seam_at, s.op.segments)):
        joined = s.garment.entry[seam] if seam else None
        if joined is None or joined.seam is not SeamKind.ENCLOSED:
            continue
        glues = s.c.shapes[joined.id].glues
        met = [(g.first, g.second) for g in glues if {g.first, g.second} & set(s.op.segments)]
        named = {segment.piece for pair in met for segment in pair}
        ids = in_garment_order(s.garment, named)
        inner = [id_ for id_ in ids if s.garment.piece[id_].layer is not Layer.SHELL]
        outer = [id_ for id_ in ids if id_ not in inner]
        if inner and outer:
            names = {"inner": inner, "outer": outer}
            return {key: name_pieces(s.garment, pieces) for key, pieces in names.items()}
    return None


def _trim_french(s: Scene) -> Told:
    texts = [say("step-trim-french", seam=s.seam, width=s.usual(widths.FRENCH_TRIMMED))]
    if s.turns_corner:
        texts.append(say("step-trim-corner"))
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


_PRESSED_OPEN = frozenset({SeamKind.PRESSED_OPEN, SeamKind.PLAIN})
_PLAIN_DIRECTIONS = {"open": "open", "up": "up", "down": "down", "one side": "aside"}


def _press_seam(s: Scene) -> str:
    where = (s.entry.press_to or "").strip()
    word = where.removeprefix("the ").casefold()
    if not word and s.entry.seam not in _PRESSED_OPEN:
        return _press_by_custom(s)
    word = word or "open"
    if word in _PLAIN_DIRECTIONS:
        return say(f"step-press-seam-{_PLAIN_DIRECTIONS[word]}", seam=s.seam)
    if word in {"left", "right"}:
        return say(f"step-press-seam-worn-{word}", seam=s.seam)
    if word.startswith("away from "):
        away = where.removeprefix("the ")[len("away from ") :].removeprefix("the ")
        if s.entry.between and s.inner():
            layers = name_pieces(s.garment, (*s.outer(), *s.inner()))
            return say(
                "step-press-caught-away", seam=s.seam, pieces=layers, where=where_words(away)
            )
        return say("step-press-seam-away", seam=s.seam, where=where_words(away))
    told = where_words(where.removeprefix("the "))
    return say("step-press-seam-to", seam=s.seam, where=told)


def _press_by_custom(s: Scene) -> str:
    """Pressing a seam to the side that custom wants, or to either."""
    if readable(s.entry.topstitch or "") == BODY:
        return say("step-press-seam-to", seam=s.seam, where=where_words(BODY))
    side = pressed_side(s.c, s.entry)
    where = worn(s.c, side[0]) if side else None
    if where is not None:
        return say("step-press-seam-to", seam=s.seam, where=where_words(where.value))
    if side:
        pieces = name_pieces(s.garment, side)
        return say("step-press-seam-pieces", seam=s.seam, pieces=pieces)
    if _goes_to_front(s):
        return say("step-press-seam-to", seam=s.seam, where=where_words(Worn.FRONT.value))
    return say("step-press-seam-aside", seam=s.seam)


def _inner(s: Scene) -> str:
    return name_pieces(s.garment, s.inner())


TELLERS = {
    Action.TRIM: trim,
    Action.GRADE: grade,
    Action.CLIP: clip,
    Action.PRESS_OVER: press_over,
    Action.PRESS_UNDER: press_under,
    Action.PRESS: press,
    Action.UNDERSTITCH: understitch,
    Action.TURN: turn,
    Action.FINISH: finish,
    Action.TOPSTITCH: topstitch,
}
