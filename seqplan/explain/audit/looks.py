"""What has to be looked at, or thought of, before it is too late to sew it anew."""

from seqplan.base.diagnostic import Severity
from seqplan.base.ids import EntryId
from seqplan.explain.audit.audit import Found, told
from seqplan.explain.audit.ledger import Ledger
from seqplan.model.entry import SeamKind, Sides, Verb
from seqplan.model.operation import Action, Operation
from seqplan.model.piece import Cut, Layer, Segment

_NOT_TO_BE_UNDONE = (Action.TRIM, Action.GRADE, Action.CLIP, Action.ENCLOSE)


def trimmed_before_looked_at(ledger: Ledger) -> Found:
    """What is looked over on the way can still be sewn anew: no kind of seam has trimmed it yet.

    Looks at inspections of some pieces that have a left and a right. Stays quiet of seams that are
    turned, and of an inspection of everything, which comes last. Of what is trimmed or slashed by
    an operation of its own, a rule speaks.
    """
    c = ledger.c
    for look in c.acting(Action.INSPECT):
        if look.pieces >= frozenset(c.garment.piece):
            continue
        for op in c.on_pieces(look.pieces, *_NOT_TO_BE_UNDONE):
            is_before = ledger.place[op.entry] < ledger.place[look.entry]
            if op.part and is_before and _has_sides(ledger, op):
                yield told(
                    "trimmed-before-looked-at",
                    look.path,
                    look=look.entry,
                    op=op.id,
                    entry=op.entry,
                )
                break


def _has_sides(ledger: Ledger, op: Operation) -> bool:
    """Whether it cuts into a seam of a pair that is not turned."""
    is_of_pair = any(ledger.c.garment.piece[piece].cut is Cut.PAIR for piece in op.pieces)
    seams = [ledger.c.garment.entry[id_].seam for id_ in ledger.c.seams_at(op.segments)]
    return is_of_pair and bool(seams) and not {SeamKind.ENCLOSED, SeamKind.FACED} & set(seams)


def wadding_turned_out(ledger: Ledger) -> Found:
    """Wadding lies outermost when two layers are sewn right sides together.

    What is caught between the right sides lies outside once the work is turned.
    """
    for entry in ledger.c.garment.entries:
        if entry.verb is not Verb.SEW or entry.sides is not Sides.RIGHT_TOGETHER:
            continue
        caught = (item.piece or (item.edge and item.edge.piece) for item in entry.between)
        for piece in dict.fromkeys(caught):
            if piece and ledger.c.garment.piece[piece].layer is Layer.INTERLINING:
                yield told(
                    "wadding-turned-out",
                    entry.path,
                    severity=Severity.ERROR,
                    entry=entry.id,
                    piece=piece,
                )


def held_short_of_a_tube(ledger: Ledger) -> Found:
    """What lies across a piece is not fastened at both ends before the piece is closed to a tube.

    Stays quiet where an edge is folded in between, as it will lie when it is sewn.
    """
    c = ledger.c
    first: dict[tuple[str, Segment], EntryId] = {}
    for entry in c.garment.entries:
        if entry.verb is not Verb.ATTACH:
            continue
        what = entry.notion or "".join(entry.pieces)
        for segment in c.shapes[entry.id].run:
            glue = c.finished.glue_at(segment)
            if glue is None or c.rings.disc(glue.first) != c.rings.disc(glue.second):
                continue
            mate = glue.second if glue.first == segment else glue.first
            other = first.get((what, mate))
            is_open = ledger.place[entry.id] < ledger.place[glue.entry]
            if other and is_open and not _is_folded_between(ledger, segment, other, entry.id):
                yield told("held-short-of-a-tube", entry.path, entry=entry.id, seam=glue.entry)
                break
            first[what, segment] = entry.id


def _is_folded_between(ledger: Ledger, segment: Segment, one: EntryId, other: EntryId) -> bool:
    folds = [op.entry for op in ledger.c.on_segment[segment] if op.action is Action.FOLD]
    return any(ledger.place[one] < ledger.place[fold] < ledger.place[other] for fold in folds)
