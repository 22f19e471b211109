"""Notches in words: on the sheet of marks, and in the step in which they meet."""

from collections.abc import Iterator

from seqplan.base.measure import both
from seqplan.model.piece import Cut, EdgeRef, Notch, Piece
from seqplan.recipes.notches import Meeting, Stop, meetings
from seqplan.shape.notches import FOLD
from seqplan.tell.names import listing, name_edges, quoted, readable
from seqplan.tell.scene import Scene
from seqplan.words.say import say


def tell_notch(notch: Notch, piece: Piece) -> str:
    """One notch: of how many marks it is, and where."""
    marks = say(f"step-notch-{notch.marks}")
    if notch.is_middle:
        return say("step-notch-middle", marks=marks)
    if notch.length is None or notch.neighbour is None:
        return marks
    if notch.neighbour == FOLD and piece.cut is Cut.FOLD:
        return say("step-notch-from-fold", marks=marks, length=both(notch.length))
    edge = quoted(readable(notch.neighbour))
    return say("step-notch-from", marks=marks, length=both(notch.length), edge=edge)


def notches_of(piece: Piece) -> Iterator[str]:
    """The notches of a piece, edge by edge, to be marked."""
    for edge in dict.fromkeys(notch.edge for notch in piece.notches):
        found = [tell_notch(notch, piece) for notch in piece.notches if notch.edge == edge]
        names = {"edge": quoted(readable(edge)), "notches": listing(found)}
        yield say("step-mark-notches", count=len(found), **names)


def notches_that_meet(s: Scene) -> tuple[str, ...]:
    """Which notches meet in a seam, each edge by itself; both halves of a garment tell the same."""
    told: dict[str, None] = {}
    for meeting in meetings(s.c, s.c.shapes[s.entry.id]):
        notches = list(_pairs(s, meeting))
        if notches:
            edge = meeting.one.edges[0]
            name = s.garment.piece[edge.piece].edges[edge.place].name
            edges = name_edges(s.garment, (EdgeRef(edge.piece, name),))
            words = say("step-notches", count=len(notches), edges=edges, notches=listing(notches))
            told[words] = None
    return tuple(told)


def _pairs(s: Scene, meeting: Meeting) -> Iterator[str]:
    """What meets along the side that is one edge, which has notches and no seams."""
    for one, other in meeting.pairs:
        if one.notch is not None:
            words = tell_notch(one.notch, s.garment.piece[one.edge.piece])
            yield words if other.notch is not None else _at_seam(s, words, meeting, other)


def _at_seam(s: Scene, notch: str, meeting: Meeting, stop: Stop) -> str:
    """A notch that meets the seam between two edges of the other side, or the fold of a piece."""
    edges = meeting.other.edges
    before = edges[edges.index(stop.edge) - 1]
    if (before.piece, before.copy) != (stop.edge.piece, stop.edge.copy):
        return say("step-notch-at-seam", notch=notch)
    if before.half == stop.edge.half:
        return say("step-notch-at-mark", notch=notch)
    return say("step-notch-at-fold", notch=notch, piece=s.garment.piece[stop.edge.piece].title)
