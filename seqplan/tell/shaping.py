"""Sentences for single parts and for pauses: fusing, staystitching, darts, fitting, free words."""

from seqplan.base.measure import Length, both, parse_length
from seqplan.model.operation import Action
from seqplan.recipes import widths
from seqplan.tell import usual
from seqplan.tell.names import as_clause, as_sentence, name_edges, name_pieces, quoted, readable
from seqplan.tell.scene import Scene
from seqplan.tell.sentence import Told
from seqplan.words.say import say


def fuse(s: Scene) -> Told:
    """Fusing interfacing."""
    texts = [say("step-fuse-darts")] if _has_darts(s) else []
    texts.append(_fuse_text(s))
    if s.entry.half:
        texts.append(_fuse_half(s))
    return Told(tuple(texts), say("step-check-fuse"))


def _has_darts(s: Scene) -> bool:
    """Whether a dart is sewn already into a piece that is fused."""
    darts = s.c.on_pieces(s.op.pieces, Action.DART)
    return any(dart.id in s.before for dart in darts)


def _fuse_text(s: Scene) -> str:
    if s.entry.fabric is None:
        return say("step-fuse-plain", pieces=s.named_pieces)
    return say("step-fuse", fabric=quoted(readable(s.entry.fabric)), pieces=s.named_pieces)


def _fuse_half(s: Scene) -> str:
    """Of strips: which half of the width is fused."""
    return say("step-fuse-half", pieces=name_pieces(s.garment, s.entry.half))


def staystitch(s: Scene) -> Told:
    """Staystitching, inside the allowance."""
    values = {
        "edges": s.edges,
        "distance": s.usual(usual.STAYSTITCH_INSIDE),
        "stitch": usual.stitch(usual.STAYSTITCH_LENGTH),
    }
    check = say("step-check-staystitch")
    inside = usual.usual(s.garment, usual.STAYSTITCH_INSIDE).mm
    if s.allowance is None or s.allowance.mm <= inside:
        return Told((say("step-staystitch", **values),), check)
    from_edge = Length(s.allowance.mm - inside, s.allowance.written_in)
    return Told((say("step-staystitch-at", from_edge=both(from_edge), **values),), check)


def dart(s: Scene) -> Told:
    """Sewing darts."""
    texts = (say("step-dart", edges=s.edges), say("step-every-dart"))
    return Told(texts, say("step-check-dart"))


def pleat(s: Scene) -> Told:
    """Laying pleats."""
    text = say("step-pleat", edges=s.edges, distance=s.usual(usual.PLEAT_BASTE))
    return Told((text,), say("step-check-pleat"))


def gather(s: Scene) -> Told:
    """Gathering an edge."""
    rows = {"first": s.usual(usual.GATHER_FIRST), "second": s.usual(usual.GATHER_SECOND)}
    if not s.sewn_to:
        return Told((say("step-gather", edges=s.edges, **rows),), say("step-check-pleat"))
    other = name_edges(s.garment, s.sewn_to)
    key = "step-gather-notches" if _has_notches(s) else "step-gather-quarters"
    quarters = say(key, edges=s.edges, other=other)
    text = say("step-gather-to", edges=s.edges, other=other, **rows)
    return Told((quarters, text), say("step-check-gather"))


def _has_notches(s: Scene) -> bool:
    """Whether notches tell how the fullness divides, so that quarters need not."""
    return all(
        any(notch.edge == ref.edge for notch in s.garment.piece[ref.piece].notches)
        for ref in (*s.refs, *s.sewn_to)
    )


def where_topstitched(s: Scene, unsaid: int = usual.TOPSTITCH) -> tuple[str, str]:
    """How far from the seam or edge, ``unsaid`` mm where nobody says, and with which stitch."""
    written = s.entry.topstitch or ""
    length = parse_length(written, default_unit=s.garment.units)
    distance = both(length) if length is not None else s.usual(_within(s, unsaid))
    return distance, usual.stitch(usual.TOPSTITCH_LENGTH)


def _within(s: Scene, mm: int) -> int:
    """A distance that stays on the allowances that are left at a seam."""
    if not s.is_join or s.allowance is None:
        return mm
    is_graded = any(op.action is Action.GRADE for op in s.c.of_entry[s.entry.id])
    left = min(int(s.allowance.mm), widths.GRADED_WIDE) if is_graded else int(s.allowance.mm)
    return max(_LEAST_TOPSTITCH, min(mm, left - _FROM_RAW_EDGE))


_FROM_RAW_EDGE = 3
_LEAST_TOPSTITCH = 2
"""Millimetres from topstitching to the raw edges below, and to the seam: common practice."""


def topstitched_side(s: Scene) -> str:
    """The side on which a seam is topstitched, where the author names one."""
    written = (s.entry.topstitch or "").strip()
    if written.casefold() == "yes" or parse_length(written, default_unit=s.garment.units):
        return ""
    return as_clause(written).removeprefix("on ").removeprefix("the ")


def fit(s: Scene) -> Told:
    """Trying on."""
    at = (say("step-fit-at", edges=s.edges),) if s.entry.run else ()
    return Told((say("step-fit", pieces=s.pieces), *at))


def inspect(s: Scene) -> Told:
    """Looking over."""
    return Told((say("step-inspect", pieces=s.pieces),))


def do(s: Scene) -> Told:
    """The author's own words."""
    return Told((as_sentence(s.entry.words or readable(s.entry.id)),))


TELLERS = {
    Action.FUSE: fuse,
    Action.STAYSTITCH: staystitch,
    Action.DART: dart,
    Action.PLEAT: pleat,
    Action.GATHER: gather,
    Action.FIT: fit,
    Action.INSPECT: inspect,
    Action.DO: do,
}
