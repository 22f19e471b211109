"""Cut edges: every one is sewn, finished, hemmed, bound, or may stay as it is."""

from collections.abc import Iterable, Mapping
from typing import NamedTuple

from seqplan.base.ids import PieceId
from seqplan.explain.audit.audit import Found, quoted, told
from seqplan.explain.audit.ledger import Ledger
from seqplan.model.entry import Entry, SeamKind, SeamMethod, Verb
from seqplan.model.operation import Action
from seqplan.model.piece import Segment

_FINISHED_SO = frozenset(
    {
        SeamKind.FACED,
        SeamKind.ENCLOSED,
        SeamKind.OVERLOCKED,
        SeamKind.FRENCH,
        SeamKind.FLAT_FELLED,
        SeamKind.BOUND,
        SeamKind.LAPPED,
    }
)
"""Kinds of seam that leave no raw edge to see, or say themselves how it is finished."""

_COVERING = (Action.FINISH, Action.ENCLOSE, Action.HEM, Action.CASE, Action.SET_ON, Action.DO)
"""What covers or finishes a raw allowance, besides the seam itself."""


class Edge(NamedTuple):
    """An edge as it is named, with its copies that nothing settles."""

    piece: PieceId
    name: str
    raw: tuple[Segment, ...]
    all: tuple[Segment, ...]

    @property
    def is_whole(self) -> bool:
        """Whether it is raw wherever it is there."""
        return len(self.raw) == len(self.all)

    @property
    def is_of_one_copy(self) -> bool:
        """Whether it is raw all along in one copy or half, and settled all along in another."""
        raw = {(s.copy, s.half) for s in self.raw}
        settled = {(s.copy, s.half) for s in self.all if s not in self.raw}
        return not raw & settled


def raw_edge(ledger: Ledger) -> Found:
    """Every cut edge is sewn, finished, hemmed or bound, unless it does not ravel.

    Stays quiet where ``not shown: finish`` says that this is left out.
    """
    for edge in unsettled_edges(ledger):
        if edge.is_whole:
            yield told("raw-edge", _path(ledger, edge), name=f"{edge.piece}.{edge.name}")


def open_part(ledger: Ledger) -> Found:
    """What a seam or hem leaves over of an edge is taken up by another operation."""
    for edge in unsettled_edges(ledger):
        if not edge.is_whole and not edge.is_of_one_copy:
            yield told("open-part", _path(ledger, edge), name=f"{edge.piece}.{edge.name}")


def one_copy_only(ledger: Ledger) -> Found:
    """What is done to an edge on one side is done on the other, or something else is."""
    unused = unused_copies(ledger)
    for edge in unsettled_edges(ledger):
        left = [s for s in edge.raw if (s.piece, s.copy) not in unused]
        if left and not edge.is_whole and edge.is_of_one_copy:
            yield told("one-copy-only", _path(ledger, edge), name=f"{edge.piece}.{edge.name}")


def unused_copy(ledger: Ledger) -> Found:
    """Of a piece that is cut several times, every copy is used."""
    unused: dict[PieceId, int] = {}
    for id_, _ in unused_copies(ledger):
        unused[id_] = unused.get(id_, 0) + 1
    for id_, count in unused.items():
        piece = ledger.c.garment.piece[id_]
        yield told(
            "unused-copy",
            (*piece.path, "cut"),
            name=id_,
            cut=piece.copies,
            used=piece.copies - count,
        )


def slit_not_cut(ledger: Ledger) -> Found:
    """A slit of a piece that is worked on is cut open."""
    c = ledger.c
    for piece in c.garment.pieces:
        for slit in piece.slits:
            edges = [
                s for s in c.rings.segments if (s.piece, c.rings.name(s)) == (piece.id, slit.name)
            ]
            is_cut = any(ledger.has(s, Action.SLASH, Action.DO) for s in edges)
            if edges and not is_cut and piece.id in ledger.used and not _is_cut_elsewhere(ledger):
                yield told("slit-not-cut", (*piece.path, "slits"), name=f"{piece.id}.{slit.name}")


def _is_cut_elsewhere(ledger: Ledger) -> bool:
    return ledger.is_brought(Verb.SLASH, Verb.TOWER_PLACKET, Verb.CONTINUOUS_PLACKET)


def unfinished_seam(ledger: Ledger) -> Found:
    """Inside a garment that is washed, the allowances of a seam do not ravel.

    Stays quiet where the cloth is not named or does not ravel, where a lining, a facing of the same
    shape or the garment itself shuts the seam in, where something covers the allowances, and where
    the author leaves the finish out with ``without: finish`` or ``not shown: finish``. The ends of
    strips lie inside the band.
    """
    if "finish" in ledger.c.garment.not_shown:
        return
    for shape in ledger.c.joins:
        entry = shape.entry
        is_strip = any(ledger.c.garment.piece[piece].is_strip for piece in shape.skins)
        if entry.verb is not Verb.SEW or shape.riders or is_strip:
            continue
        if _is_finished_so(ledger, entry):
            continue
        raw = [
            segment
            for glue in shape.glues
            for segment in (glue.first, glue.second)
            if all(ledger.is_known_to_ravel(s) for s in (glue.first, glue.second))
            and not ledger.has(segment, *_COVERING)
            and not ledger.is_hidden(segment)
        ]
        if raw:
            edges = quoted(dict.fromkeys(map(ledger.c.edge_name, raw)))
            yield told("unfinished-seam", entry.path, entry=entry.id, edges=edges)


def _is_finished_so(ledger: Ledger, entry: Entry) -> bool:
    is_by_kind = entry.seam in _FINISHED_SO or entry.how in {SeamMethod.ROLL, SeamMethod.WRAP}
    return (
        is_by_kind
        or "finish" in entry.without
        or ledger.c.main(entry.id).setup.station == "overlocker"
    )


def raw_under_zip(ledger: Ledger) -> Found:
    """The edges of an opening are finished, because the tape of the zip does not stop ravelling.

    Stays quiet as `unfinished-seam` does, and where the rest of the same edge is finished.
    """
    c = ledger.c
    if "finish" in c.garment.not_shown:
        return
    finished = {(s.piece, s.copy, s.half, c.rings.name(s)) for s in _finished(ledger)}
    for op in c.acting(Action.SET_ZIP):
        raw = [
            segment
            for segment in c.shapes[op.entry].run
            if ledger.is_known_to_ravel(segment)
            and (segment.piece, segment.copy, segment.half, c.rings.name(segment)) not in finished
            and not any(
                other.action in _COVERING and other.entry != op.entry
                for other in c.on_segment[segment]
            )
            and not ledger.is_hidden(segment)
        ]
        if raw:
            edges = quoted(dict.fromkeys(map(c.edge_name, raw)))
            yield told("raw-under-zip", op.path, entry=op.entry, edges=edges)


def _finished(ledger: Ledger) -> Iterable[Segment]:
    return (segment for op in ledger.c.acting(Action.FINISH) for segment in op.segments)


def unused_copies(ledger: Ledger) -> dict[tuple[PieceId, int], None]:
    """The copies of which no edge is taken up, though those of another copy are."""
    taken: dict[PieceId, set[int]] = {}
    every: dict[PieceId, set[int]] = {}
    for segment in ledger.c.rings.segments:
        every.setdefault(segment.piece, set()).add(segment.copy)
        if ledger.settling(segment):
            taken.setdefault(segment.piece, set()).add(segment.copy)
    return {
        (piece, copy): None
        for piece, copies in taken.items()
        for copy in sorted(every[piece] - copies)
    }


def unsettled_edges(ledger: Ledger) -> Iterable[Edge]:
    """The edges that are not settled in all their copies, in the order of the pieces."""
    if "finish" in ledger.c.garment.not_shown:
        return
    for (piece, name), segments in _by_name(ledger).items():
        raw = tuple(s for s in segments if not ledger.is_fine(s) and not ledger.settling(s))
        if raw and piece in ledger.used:
            yield Edge(piece, name, raw, segments)


def _by_name(ledger: Ledger) -> Mapping[tuple[PieceId, str], tuple[Segment, ...]]:
    found: dict[tuple[PieceId, str], list[Segment]] = {}
    for segment in ledger.c.rings.segments:
        found.setdefault((segment.piece, ledger.c.rings.name(segment)), []).append(segment)
    return {name: tuple(segments) for name, segments in found.items()}


def _path(ledger: Ledger, edge: Edge) -> tuple[str | int, ...]:
    return (*ledger.c.garment.piece[edge.piece].path, "edges")
