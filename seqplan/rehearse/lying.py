"""How the work lies after each step: what hangs together, what is open, inside out, still raw.

And what will not last, or has gone for good: folds and basting, what is wet, away or setting, where
the iron must not go any more, what is left of the allowances.
"""

from collections.abc import Callable, Iterator, Sequence
from fractions import Fraction
from typing import NamedTuple

from seqplan.base.ids import EntryId, NotionId, OpId, PieceId
from seqplan.model.operation import Action, Operation
from seqplan.model.piece import Cut, Layer, Segment
from seqplan.recipes.construction import Construction
from seqplan.rehearse.edges import EdgeNow, edge_now
from seqplan.rehearse.states.damp import FOLDS
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
_SETS_ON = frozenset({Action.SET_ON, Action.STITCH_ON})


class Lie(NamedTuple):
    """How a part of the work lies; with more than one loop of free edges it is a tube.

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
    edges
        Every edge that the step has touched, each state of it once.
    caught
        Pieces that lie in a seam or on another piece.
    folded, basted
        Edges that are creased and not stitched, or held by basting alone.
    wet, away, setting
        Pieces that are wet, out of the house, or must lie still.
    no_iron
        Edges that must not be pressed any more.
    look_before
        What is to be done yet and cannot be undone, where left and right, or the twist of a ring,
        can be looked at before: the trimming and the second row of a seam that is sewn now.
    trimmed
        The edges of which something has been cut off, each with what is left, in mm.
    """

    entry: EntryId
    ops: tuple[OpId, ...]
    lies: tuple[Lie, ...]
    to_be_turned: tuple[EntryId, ...]
    gaps: tuple[EntryId, ...]
    shut: tuple[NotionId, ...]
    raw: tuple[str, ...]
    edges: tuple[EdgeNow, ...]
    caught: tuple[str, ...]
    folded: tuple[str, ...]
    basted: tuple[str, ...]
    wet: tuple[str, ...]
    away: tuple[str, ...]
    setting: tuple[str, ...]
    no_iron: tuple[str, ...]
    look_before: tuple[OpId, ...]
    trimmed: tuple[tuple[str, Fraction], ...]


def watch_steps(c: Construction, order: Sequence[OpId]) -> tuple[tuple[After, ...], Rehearsal]:
    """Walk through an order and note how the work lies after each step.

    A step is a row of operations of one entry that stand together.
    """
    steps: list[After] = []

    def watch(work: Work, op: Operation) -> None:
        ops: tuple[OpId, ...] = (op.id,)
        look = tuple(_look_before(work, op))
        if steps and steps[-1].entry == op.entry:
            last = steps.pop()
            ops, look = (*last.ops, op.id), last.look_before or look
        steps.append(_after(work, op, ops)._replace(look_before=look))

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
        edges=tuple(
            dict.fromkeys(
                edge_now(work, s) for id_ in ops for s in dict.fromkeys(c.op[id_].segments)
            )
        ),
        caught=tuple(sorted(work.caught)),
        folded=_names(work, _is_folded),
        basted=_names(work, _is_basted),
        wet=tuple(work.damp.pieces),
        away=tuple(work.away.pieces),
        setting=tuple(work.setting.pieces),
        no_iron=tuple(dict.fromkeys(map(c.edge_name, work.heat.edges))),
        look_before=(),
        trimmed=tuple(
            dict.fromkeys((c.edge_name(s), cut.left) for s, cut in work.allowance.cut.items())
        ),
    )


def _look_before(work: Work, op: Operation) -> Iterator[OpId]:
    """What follows a seam and cannot be undone, where one can still see whether it is right.

    A seam of two of a pair may be sewn to the wrong side, and a ring may be twisted; what is turned
    is looked at when it is turned.
    """
    c = work.c
    shape = c.shapes[op.entry]
    if op.part or op.action is not Action.SEW or shape.entry.seam in TURNED_SEAMS:
        return
    is_of_pair = any(c.garment.piece[piece].cut is Cut.PAIR for piece in shape.skins)
    is_ring = any(stretch.is_ring for stretch in c.stretches_on(work.surface, op.entry))
    is_strip = any(c.garment.piece[piece].is_strip for piece in shape.skins)
    if is_of_pair or is_ring or is_strip:
        later = (o for o in c.on_pieces(shape.skins, *_CUTTING_INTO) if o.id not in work.done)
        yield from (o.id for o in later if not set(o.segments).isdisjoint(shape.run))


_CUTTING_INTO = (Action.TRIM, Action.GRADE, Action.CLIP, Action.ENCLOSE)


def _names(work: Work, holds: Callable[[Work, Segment], bool]) -> tuple[str, ...]:
    """The edges of which something holds, each once."""
    found = (work.c.edge_name(s) for s in work.c.rings.segments if holds(work, s))
    return tuple(dict.fromkeys(found))


def _is_folded(work: Work, segment: Segment) -> bool:
    """Whether an edge is creased, and neither opened out, washed out nor stitched yet."""
    if work.mark(segment, _STITCHED_DOWN) is not None:
        return False
    ops = (op.id for op in work.c.on_segment.get(segment, ()) if op.action in _CREASING)
    done = [id_ for id_ in ops if id_ in work.done and id_ not in work.damp.lost]
    last = max(done, key=work.done.__getitem__, default=None)
    return last is not None and work.c.op[last].action is not Action.UNFOLD


def _is_basted(work: Work, segment: Segment) -> bool:
    """Whether basting holds an edge, and nothing else yet."""
    if work.surface.glue_at(segment) is not None:
        return False
    is_in = work.mark(segment, {Action.BASTE}) is not None
    return is_in and work.mark(segment, {Action.REMOVE_BASTING, Action.SET_ZIP}) is None


_CREASING = frozenset({*FOLDS, Action.UNFOLD})

_STITCHED_DOWN = (
    Action.HEM,
    Action.CASE,
    Action.STITCH_ON,
    Action.SET_ON,
    Action.SEW,
    Action.MAKE_STRAP,
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
    is_caught = any(rider.first == segment for rider in work.surface.riders) or any(
        segment in work.c.shapes[entry].along for entry in work.joined
    )
    held = work.mark(segment, _HOLDS_AN_EDGE) is not None
    return _is_loose(work, segment) and not (is_caught or held or _is_set_on(work, segment.piece))


def _is_set_on(work: Work, piece: PieceId) -> bool:
    """Whether a piece lies on another as a whole, as a pocket or its bag does."""
    ops = (work.c.op[id_] for id_ in work.done)
    return any(op.action in _SETS_ON and piece in work.c.entry(op).pieces for op in ops)


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
