"""Whether the notches of edges that are sewn together meet."""

from collections.abc import Iterator
from fractions import Fraction
from itertools import product

from seqplan.base.diagnostic import Diagnostic
from seqplan.base.measure import Length, both
from seqplan.explain.audit.audit import Found, quoted, told
from seqplan.explain.audit.ledger import Ledger
from seqplan.model.entry import Entry
from seqplan.recipes.notches import Meeting, Side, Stop, apart, meetings


def notches_apart(ledger: Ledger) -> Found:
    """Every notch of an edge that is sewn to another meets a notch of as many marks, or a seam.

    Distances are measured along the stitching line; 3 mm (an eighth of an inch) and the `ease:` of
    the seam may lie between them. Of edges that are gathered, have darts or pleats, or are of a
    knit, and where a distance is not known, only the order of the notches counts.

    Stays quiet where neither edge has a notch, of a seam with `part:` or `stop:`, and where several
    edges meet several at other places than their ends.
    """
    for shape in ledger.c.joins:
        # Both halves of a garment tell the same.
        found: dict[str, Diagnostic] = {}
        for meeting in meetings(ledger.c, shape):
            for finding in _wrong(ledger, shape.entry, meeting):
                found.setdefault(finding.message, finding)
        yield from found.values()


def _wrong(ledger: Ledger, entry: Entry, meeting: Meeting) -> Iterator[Diagnostic]:
    """Two notches that were meant to meet and lie apart; then those that have nothing to meet."""
    sides = meeting.one, meeting.other
    here, there = ([stop for stop in side.stops if stop in meeting.alone] for side in sides)
    left = {id(stop): stop for stop in (*here, *there)}
    for one, other in product(here, there):
        gap = apart(one, other)
        are_left = id(one) in left and id(other) in left
        if are_left and gap is not None and _marks(one) == _marks(other):
            del left[id(one)], left[id(other)]
            yield told(
                "notches-apart",
                entry.path,
                entry=entry.id,
                one=_edge(ledger, one),
                notch=one.notch,
                other=_edge(ledger, other),
                mate=other.notch,
                gap=both(Length(Fraction(round(gap)), ledger.c.garment.units)),
            )
    for stops, opposite in ((here, meeting.other), (there, meeting.one)):
        for stop in stops:
            if id(stop) in left:
                yield told(
                    "notches-apart",
                    entry.path,
                    words="check-notch-alone",
                    fix="check-notch-alone-fix",
                    entry=entry.id,
                    one=_edge(ledger, stop),
                    notch=stop.notch,
                    other=_names(ledger, opposite),
                )


def _marks(stop: Stop) -> int:
    return stop.notch.marks if stop.notch is not None else 0


def _edge(ledger: Ledger, stop: Stop) -> str:
    piece = ledger.c.garment.piece[stop.edge.piece]
    return f"{piece.id}.{piece.edges[stop.edge.place].name}"


def _names(ledger: Ledger, side: Side) -> str:
    pieces = ledger.c.garment.piece
    return quoted(f"{e.piece}.{pieces[e.piece].edges[e.place].name}" for e in side.edges)
