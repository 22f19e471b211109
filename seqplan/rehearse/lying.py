"""How the work lies after each step: what hangs together, what is open, inside out, still raw."""

from collections.abc import Sequence
from typing import NamedTuple

from seqplan.base.ids import EntryId, NotionId, OpId, PieceId
from seqplan.model.operation import Action, Operation
from seqplan.model.piece import Layer, Segment
from seqplan.recipes.construction import Construction
from seqplan.rehearse.walk import Rehearsal, rehearse
from seqplan.rehearse.work import TURNED_SEAMS, Work
from seqplan.surface.glued import Part

_CLOSES_AN_EDGE = (
    Action.FINISH,
    Action.HEM,
    Action.CASE,
    Action.WRAP,
    Action.CLOSE_BAND,
    Action.CLOSE_ENDS,
    Action.ENCLOSE,
    Action.STITCH_ON,
    Action.MAKE_STRAP,
)
_HOLDS_AN_EDGE = (
    *(action for action in _CLOSES_AN_EDGE if action is not Action.FINISH),
    Action.SET_ZIP,
    Action.SET_ON,
    Action.TACK,
)


class Lie(NamedTuple):
    """How a part of the work lies.

    Parameters
    ----------
    pieces
        What hangs together.
    open_edges
        Its free edges, loop by loop, by name and each once.
    is_twisted
        Whether it cannot be laid with one side up all over.
    """

    pieces: tuple[PieceId, ...]
    open_edges: tuple[tuple[str, ...], ...]
    is_twisted: bool


class After(NamedTuple):
    """The work after a step.

    Parameters
    ----------
    entry
        Whose operations the step consists of.
    ops
        These.
    lies
        The parts of several pieces, or of one piece sewn to itself, that the step has touched.
    to_be_turned
        Seams that are sewn right sides together and still to be turned.
    gaps
        Seams and casings with a gap left open.
    shut
        Zips that are set, and shut.
    raw
        Edges of what the step has touched that nothing holds or covers yet.
    """

    entry: EntryId
    ops: tuple[OpId, ...]
    lies: tuple[Lie, ...]
    to_be_turned: tuple[EntryId, ...]
    gaps: tuple[EntryId, ...]
    shut: tuple[NotionId, ...]
    raw: tuple[str, ...]


def watch_steps(c: Construction, order: Sequence[OpId]) -> tuple[tuple[After, ...], Rehearsal]:
    """Walk through an order and note how the work lies after each step.

    A step is a row of operations of one entry that stand together.
    """
    steps: list[After] = []

    def watch(work: Work, op: Operation) -> None:
        ops: tuple[OpId, ...] = (op.id,)
        if steps and steps[-1].entry == op.entry:
            ops = (*steps.pop().ops, op.id)
        steps.append(_after(work, op, ops))

    found = rehearse(c, order, watch)
    return tuple(steps), found


def _after(work: Work, op: Operation, ops: tuple[OpId, ...]) -> After:
    c = work.c
    pieces = op.pieces | {s.piece for s in op.segments}
    return After(
        entry=op.entry,
        ops=ops,
        lies=tuple(_lie(c, part) for part in work.parts_with(pieces) if _is_sewn(work, part)),
        to_be_turned=tuple(
            id_
            for id_ in work.joined
            if c.shapes[id_].entry.seam in TURNED_SEAMS and id_ not in work.turned
        ),
        gaps=tuple(work.gaps),
        shut=tuple(work.shut),
        raw=tuple(
            dict.fromkeys(
                c.edge_name(s) for s in c.rings.segments if s.piece in pieces and _is_raw(work, s)
            )
        ),
    )


def _is_sewn(work: Work, part: Part) -> bool:
    return len(part.discs) > 1 or any(
        work.surface.glue_at(s) is not None for disc in part.discs for s in work.c.rings.on(disc)
    )


def _lie(c: Construction, part: Part) -> Lie:
    ids = {piece for piece, _ in part.discs}
    return Lie(
        pieces=tuple(piece.id for piece in c.garment.pieces if piece.id in ids),
        open_edges=tuple(tuple(dict.fromkeys(map(c.edge_name, loop))) for loop in part.loops),
        is_twisted=not part.is_two_sided,
    )


def _is_raw(work: Work, segment: Segment) -> bool:
    return _is_loose(work, segment) and work.mark(segment, _CLOSES_AN_EDGE) is None


def is_free(work: Work, segment: Segment) -> bool:
    """Whether nothing holds or covers an edge so far; that it is finished does not count."""
    is_caught = any(rider.first == segment for rider in work.surface.riders)
    held = work.mark(segment, _HOLDS_AN_EDGE) is not None
    return _is_loose(work, segment) and not is_caught and not held


def _is_loose(work: Work, segment: Segment) -> bool:
    """Whether an edge was cut, could ravel, and is sewn to no other."""
    piece = work.c.garment.piece[segment.piece]
    is_fold = work.c.rings.pieces[segment.piece].edges[segment.place].is_folded
    return not (
        is_fold
        or work.c.rings.name(segment) in piece.selvage
        or piece.layer is Layer.INTERLINING
        or work.surface.glue_at(segment) is not None
    )
