"""The parts of edges that entries mean: where an edge gets a mark, and so is split."""

from collections.abc import Iterable, Mapping

from seqplan.base.ids import EntryId, PieceId
from seqplan.model.entry import Portion, Verb
from seqplan.model.garment import Garment
from seqplan.model.piece import Piece
from seqplan.recipes.problems import Problems
from seqplan.surface.portion import SplitPiece, is_beside, is_clear

Parts = Mapping[tuple[PieceId, str], int]
"""Into how many parts the long edges are split, by piece and edge."""

TWO_SIDED = frozenset({Verb.SEW, Verb.BASTE})
"""Verbs that name two sides, or two copies of one."""


def clear_portions(garment: Garment, problems: Problems) -> dict[EntryId, Portion]:
    """Give the portion of each entry that means a part of its edges, and report unclear ones.

    A seam that stops before the hem may run over further edges first, which are sewn whole; a part
    that is named is a part of each edge.
    """
    clear = {}
    for entry in garment.entries:
        portion = entry.portion
        if portion is None:
            continue
        refs = [
            ref
            for ref in (*entry.run, *entry.to)
            if not is_clear(garment.piece[ref.piece], ref.edge, portion)
        ]
        is_somewhere = len(refs) < len(entry.run) + len(entry.to)
        if is_somewhere and not portion.is_named_part:
            refs = [r for r in refs if is_beside(garment.piece[r.piece], r.edge, portion)]
        if refs:
            problems.report("part-unclear", entry, edge=refs[0], neighbour=portion.neighbour)
        else:
            clear[entry.id] = portion
    return clear


def split_pieces(
    garment: Garment, portions: Mapping[EntryId, Portion], parts: Parts
) -> dict[PieceId, SplitPiece]:
    """Split the edges of every piece at the portions and parts that entries mean."""
    wanted = _wanted(garment, portions)
    return {
        piece.id: SplitPiece(piece, _of_piece(wanted, piece), _parts_of(piece, parts))
        for piece in garment.pieces
    }


def _wanted(
    garment: Garment, portions: Mapping[EntryId, Portion]
) -> dict[tuple[PieceId, str], dict[Portion, None]]:
    """The portions of every edge; a mark on one side of a seam is on the other side too."""
    wanted: dict[tuple[PieceId, str], dict[Portion, None]] = {}
    for id_, portion in portions.items():
        entry = garment.entry[id_]
        for ref in (*entry.run, *entry.to):
            if is_clear(garment.piece[ref.piece], ref.edge, portion):
                wanted.setdefault((ref.piece, ref.edge), {})[portion] = None
    mates = [
        ((one.piece, one.edge), (two.piece, two.edge))
        for entry in garment.entries
        if entry.verb in TWO_SIDED and len(entry.run) == len(entry.to)
        for pair in zip(entry.run, entry.to, strict=True)
        for one, two in (pair, pair[::-1])
    ]
    waiting = list(wanted)
    for edge in waiting:
        for mate in (two for one, two in mates if one == edge):
            new = [p for p in wanted[edge] if p not in wanted.get(mate, {})]
            new = [p for p in new if is_clear(garment.piece[mate[0]], mate[1], p)]
            if new:
                wanted.setdefault(mate, {}).update(dict.fromkeys(new))
                waiting.append(mate)
    return wanted


def _of_piece(
    wanted: Mapping[tuple[PieceId, str], Iterable[Portion]], piece: Piece
) -> dict[str, Iterable[Portion]]:
    return {edge: portions for (id_, edge), portions in wanted.items() if id_ == piece.id}


def _parts_of(piece: Piece, parts: Parts) -> dict[str, int]:
    return {name: count for (id_, name), count in parts.items() if id_ == piece.id}
