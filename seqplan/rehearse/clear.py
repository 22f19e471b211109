"""What has to stay out of the way of the needle, and whether it can be folded away still.

A layer can be folded away while it hangs from one hinge: what holds it is one stretch of its edges,
and a corner of it hangs free, or an edge that runs right round, such as the hem of a lining that is
sewn in at the waist. What is held on all sides, on all but one, or at two places that lie apart,
lies under the needle.
"""

from collections.abc import Iterator

from seqplan.base.ids import OpId, PieceId
from seqplan.model.operation import Action, Operation
from seqplan.model.piece import Segment
from seqplan.recipes.recipe import MAIN
from seqplan.rehearse.trouble import Trouble
from seqplan.rehearse.work import Work
from seqplan.surface.glued import Surface
from seqplan.surface.ring import EdgeEnd

_HOLDING = (Action.SET_ZIP, Action.TACK, Action.STITCH_ON, Action.HOLD, Action.SET_ON)
"""What holds an edge without a seam that joins it to another."""


def kept_clear(work: Work, op: Operation) -> Iterator[Trouble]:
    """A layer that is to be kept clear can be folded out of the way."""
    layer = set(work.c.entry(op).keep_clear)
    if not layer or op.part != MAIN:
        return
    glues = [g for g in work.surface.glues if {g.first.piece, g.second.piece} <= layer]
    for part in Surface(work.c.rings, glues).parts_with(layer):
        held = {s: by for loop in part.loops for s in loop if (by := _holding(work, s, layer))}
        is_loose = any(not held.keys() & set(loop) for loop in part.loops)
        is_held_round = held and not is_loose and not _has_free_corner(work, part.loops, held)
        hinges = sum(_stretches_of(loop, held) for loop in part.loops)
        if is_held_round or hinges > 1:
            last = max(held.values(), key=work.done.__getitem__)
            why = "cannot-be-kept-clear" if is_held_round else "held-at-two-places"
            yield Trouble(op.id, why, blame=last)
            return


def _stretches_of(loop: tuple[Segment, ...], held: dict[Segment, OpId]) -> int:
    """How many stretches of a loop are held, one beside the other or apart."""
    flags = [segment in held for segment in loop]
    if all(flags):
        return 1
    return sum(now and not before for before, now in zip((flags[-1], *flags), flags, strict=False))


def _holding(work: Work, segment: Segment, layer: set[PieceId]) -> OpId | None:
    """What holds an edge of a layer to anything else."""
    glues = [work.surface.glue_at(segment)]
    glues += [glue for glue in work.surface.riders if segment in {glue.first, glue.second}]
    for glue in glues:
        if glue is not None and not {glue.first.piece, glue.second.piece} <= layer:
            return work.c.main(glue.entry).id
    return work.mark(segment, _HOLDING)


def _has_free_corner(
    work: Work, loops: tuple[tuple[Segment, ...], ...], held: dict[Segment, OpId]
) -> bool:
    free = {segment for loop in loops for segment in loop} - held.keys()
    for segment in free:
        corner = work.c.rings.across(EdgeEnd(segment, True))
        if not corner.is_straight and corner.neighbour.segment in free:
            return True
    return False
