"""What is done for a while only, and has to be undone: basting, folds, rolls."""

from seqplan.base.diagnostic import Severity
from seqplan.base.ids import PieceId
from seqplan.explain.audit.audit import Found, told
from seqplan.explain.audit.ledger import Ledger
from seqplan.model.entry import Entry, SeamKind, Verb
from seqplan.model.operation import Action
from seqplan.model.piece import Layer, Segment
from seqplan.recipes.shape import Shape
from seqplan.surface.ring import EdgeEnd

_FOR_GOOD = (
    Action.SEW,
    Action.ENCLOSE,
    Action.SET_ON,
    Action.STITCH_ON,
    Action.CLOSE_BAND,
    Action.HEM,
    Action.CASE,
    Action.TOPSTITCH,
    Action.DO,
)
"""What holds a basted edge for good."""


def basting_left(ledger: Ledger) -> Found:
    """Basting is replaced by a seam, or taken out.

    Stays quiet where a seam holds the same edges, because basting in the allowance may stay. Of an
    opening with a zip, it has to come out.
    """
    for op in ledger.c.acting(Action.BASTE):
        if op.part:
            continue
        is_removed = any(ledger.has(s, Action.REMOVE_BASTING) for s in op.segments)
        is_zip = any(ledger.has(s, Action.SET_ZIP) for s in op.segments)
        is_sewn = all(ledger.has(s, *_FOR_GOOD) for s in op.segments)
        if not is_removed and (is_zip or not is_sewn):
            yield told("basting-left", op.path, entry=op.entry)


def fold_left(ledger: Ledger) -> Found:
    """An edge that is creased for a hem is opened out before a seam is sewn across the crease.

    Stays quiet where the hem is sewn before that seam, or no hem is made of the fold: then the
    seam is meant to catch it as it lies.
    """
    c = ledger.c
    for op in c.acting(Action.FOLD):
        if any(ledger.has(s, Action.UNFOLD) for s in op.segments):
            continue
        hems = {
            other.entry
            for segment in op.segments
            for other in c.on_segment[segment]
            if other.action in {Action.HEM, Action.CASE}
        }
        if not hems:
            continue
        start = ledger.place[op.entry]
        hemmed = min(ledger.place[hem] for hem in hems)
        across = [
            entry
            for entry in _sewn_across(ledger, op.segments)
            if start < ledger.place[entry.id] < hemmed
        ]
        if across:
            seam = min(across, key=lambda entry: ledger.place[entry.id])
            edges = ", ".join(dict.fromkeys(map(c.edge_name, op.segments)))
            yield told(
                "fold-left",
                op.path,
                # A tote in print is sewn so: the seams catch the ends of its hem.
                severity=Severity.HINT,
                entry=op.entry,
                seam=seam.id,
                edges=edges,
            )


def _sewn_across(ledger: Ledger, segments: tuple[Segment, ...]) -> list[Entry]:
    """The seams that end at an edge, at one of its corners."""
    c = ledger.c
    beside = {
        c.rings.across(EdgeEnd(segment, at_end)).neighbour.segment
        for segment in segments
        for at_end in (False, True)
    } - set(segments)
    seams = {
        op.entry: c.entry(op)
        for segment in beside
        for op in c.on_segment.get(segment, ())
        if op.action is Action.SEW
    }
    return list(seams.values())


def roll_left(ledger: Ledger) -> Found:
    """What is rolled up out of the way of a seam is drawn out again.

    Stays quiet where ``through:`` says by which way, or a later operation turns it.
    """
    if ledger.tells("unroll", "turn", "pull", "draw"):
        return
    for op in ledger.c.acting(Action.ROLL):
        if ledger.c.entry(op).through is not None:
            continue
        start = ledger.place[op.entry]
        seams = [
            other
            for other in ledger.c.on_pieces(op.pieces, Action.SEW)
            if ledger.place[other.entry] > start
        ]
        is_undone = any(ledger.place[turn.entry] > start for turn in ledger.turns(op.pieces))
        if seams and not is_undone:
            yield told("roll-left", op.path, entry=op.entry, seam=seams[0].entry)


def trimmed_before_fitting(ledger: Ledger) -> Found:
    """What is tried on still has its allowances, to be let out.

    Looks at trimming by an operation of its own, at seams of the outside, and only where the
    garment is tried on at all. Stays quiet of seams that are turned, as a collar's.
    """
    c = ledger.c
    fits = [entry for entry in c.garment.entries if entry.verb is Verb.FIT]
    if not fits:
        return
    first = min(fits, key=lambda entry: ledger.place[entry.id])
    pieces = c.main(first.id).pieces
    for op in c.acting(Action.TRIM, Action.GRADE):
        is_before = ledger.place[op.entry] < ledger.place[first.id]
        seams = [c.shapes[id_] for id_ in c.seams_at(op.segments)]
        if is_before and not op.part and any(_may_be_let_out(ledger, s, pieces) for s in seams):
            yield told("trimmed-before-fitting", op.path, entry=op.entry, fit=first.id)


def _may_be_let_out(ledger: Ledger, shape: Shape, pieces: frozenset[PieceId]) -> bool:
    """Whether fitting could change a seam: one of the outside, of what is tried on."""
    layers = {ledger.c.garment.piece[piece].layer for piece in shape.skins}
    is_turned = shape.entry.seam in {SeamKind.ENCLOSED, SeamKind.FACED}
    return shape.skins <= pieces and layers == {Layer.SHELL} and not is_turned
