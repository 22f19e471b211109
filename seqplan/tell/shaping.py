"""Sentences for single parts and for pauses: fusing, staystitching, darts, fitting, free words."""

from seqplan.base.measure import Length, both
from seqplan.model.operation import Action
from seqplan.tell import usual
from seqplan.tell.names import as_sentence, readable
from seqplan.tell.scene import Scene
from seqplan.tell.sentence import Told
from seqplan.words.say import say


def fuse(s: Scene) -> Told:
    """Fusing interfacing."""
    check = say("step-check-fuse")
    if s.entry.fabric is None:
        return Told((say("step-fuse-plain", pieces=s.pieces),), check)
    return Told((say("step-fuse", fabric=readable(s.entry.fabric), pieces=s.pieces),), check)


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
    return Told((say("step-gather", edges=s.edges, **rows),), say("step-check-pleat"))


def topstitch(s: Scene) -> Told:
    """Topstitching from the right side."""
    distance = s.usual(usual.TOPSTITCH)
    length = usual.stitch(usual.TOPSTITCH_LENGTH)
    return Told((say("step-topstitch", edges=s.edges, distance=distance, stitch=length),))


def fit(s: Scene) -> Told:
    """Trying on."""
    return Told((say("step-fit", pieces=s.pieces),))


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
    Action.TOPSTITCH: topstitch,
    Action.FIT: fit,
    Action.INSPECT: inspect,
    Action.DO: do,
}
