"""Ways in and out: casings, gaps, sliders of zips, and what is fastened to them."""

from collections.abc import Iterator
from typing import Final

from seqplan.model.entry import SeamMethod, Verb
from seqplan.model.operation import Action, Operation
from seqplan.recipes.recipe import MAIN
from seqplan.rehearse.trouble import Trouble
from seqplan.rehearse.turning import cannot_turn, closed_round
from seqplan.rehearse.work import Work

_ROLLED: Final = frozenset({SeamMethod.ROLL, SeamMethod.WRAP})
"""Seams that are sewn round the body, which lies rolled up between the layers."""


def way_into_casing(work: Work, op: Operation) -> Iterator[Trouble]:
    """Elastic or cord needs a way into its casing: an end, a gap, a gap in a seam, a hole."""
    entry = work.c.entry(op)
    if op.action is not Action.THREAD or entry.into is None:
        return
    casing = work.c.shapes[entry.into]
    stretches = work.c.stretches_on(work.surface, entry.into)
    is_ring = all(stretch.is_ring for stretch in stretches)
    crossed = {seam for stretch in stretches for seam in stretch.junctions}
    holes = work.c.acting(Action.BUTTONHOLE)
    pieces = {segment.piece for segment in casing.run}
    is_open = bool({entry.into, *crossed} & work.gaps.keys()) or casing.entry.gap is not None
    is_open |= any(hole.id in work.done and hole.pieces & pieces for hole in holes)
    if is_ring and not is_open:
        yield Trouble(op.id, "no-way-into-casing", blame=work.c.main(entry.into).id)


def hole_of_a_cord(work: Work, op: Operation) -> Iterator[Trouble]:
    """A hole for a cord goes through the outer layer of its casing only."""
    if op.action is not Action.BUTTONHOLE:
        return
    at = {(place.piece, place.name) for place in work.c.entry(op).places}
    for thread in work.c.acting(Action.THREAD):
        casing = work.c.entry(thread).into
        if casing is None or work.c.main(casing).id not in work.done:
            continue
        if at & {(ref.piece, ref.edge) for ref in work.c.garment.entry[casing].run}:
            yield Trouble(op.id, "through-the-casing", blame=work.c.main(casing).id)
            return


def all_in_before_closing(work: Work, op: Operation) -> Iterator[Trouble]:
    """A gap is closed once nothing has to go through it any more."""
    entry = work.c.entry(op)
    if op.action is not Action.CLOSE_GAP:
        return
    id_ = entry.closes or entry.into or entry.id
    shape = work.c.shapes[id_]
    for turn in work.c.acting(Action.TURN):
        if work.c.entry(turn).verb is not Verb.TURN or not shape.skins & turn.pieces:
            continue
        if turn.id not in work.done:
            yield Trouble(op.id, "still-to-be-turned", missing=turn.id)
            continue
        inner = (s for s in work.c.joins if s.skins <= turn.pieces and s.entry.id != id_)
        later = [s.entry.id for s in inner if s.entry.id not in work.joined]
        if later:
            yield Trouble(op.id, "still-to-be-sewn", missing=work.c.main(later[0]).id)
    for other in work.c.acting(Action.THREAD, Action.JOIN_ENDS):
        if work.c.entry(other).into == id_ and other.id not in work.done:
            yield Trouble(op.id, "still-to-be-threaded", missing=other.id)


def slider_in_reach(work: Work, op: Operation) -> Iterator[Trouble]:
    """A zip is opened while its slider can be got at."""
    if op.action is Action.OPEN:
        for notion in op.notions:
            guilty = closed_round(work, notion)
            if guilty is not None:
                yield Trouble(op.id, "slider-out-of-reach", blame=guilty)


def what_it_is_fastened_to(work: Work, op: Operation) -> Iterator[Trouble]:
    """A facing is tacked to a zip that is set, a zip opened that is there."""
    entry = work.c.entry(op)
    name = entry.to_name if op.action is Action.TACK else None
    if op.action is Action.OPEN:
        name = entry.notion
    for other in work.c.operations if name else ():
        is_it = other.part == MAIN and (name in other.notions or other.entry == name)
        if is_it and other != op and other.id not in work.done:
            yield Trouble(op.id, "nothing-to-fasten-to", missing=other.id)
            return


def room_for_the_roll(work: Work, op: Operation) -> Iterator[Trouble]:
    """What is rolled up inside a seam is drawn out again through an end that is still open.

    A seam that runs right round has no end.
    """
    entry = work.c.entry(op)
    if op.part != MAIN or op.action is not Action.SEW or entry.how not in _ROLLED:
        return
    for stretch in work.c.stretches_on(work.surface, op.entry):
        closed = [id_ for id_ in work.joined if id_ in stretch.junctions]
        if stretch.is_ring and closed and entry.gap is None:
            yield Trouble(op.id, "rolled-in-a-ring", blame=work.joined[closed[-1]])
            return
    shape = work.c.shapes[op.entry]
    layers = work.surface.with_seams(shape.glues)
    for part in layers.parts_with(shape.skins):
        if not part.loops and not work.gaps_in(part):
            last = [id_ for id_ in work.joined if work.c.shapes[id_].skins & shape.skins][-1]
            yield Trouble(op.id, "no-way-out-of-roll", blame=work.joined[last])
            return


def can_be_turned(work: Work, op: Operation) -> Iterator[Trouble]:
    """What is turned has a way out."""
    if op.action is Action.TURN:
        yield from cannot_turn(work, op)
