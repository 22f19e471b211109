"""Can it be turned? Layers that are joined right sides together, and the way out of them.

What is joined has to hang together like a bag with a way out: genus 0, and an edge, a gap or an
open zip through which all of it can be drawn. Layers that are joined on two separate edge loops
cannot be turned, however big the gap.
"""

from collections.abc import Iterator

from seqplan.base.ids import EntryId, NotionId, OpId, PieceId
from seqplan.model.entry import Verb
from seqplan.model.operation import Action, Operation
from seqplan.model.piece import Layer
from seqplan.rehearse.trouble import Trouble
from seqplan.rehearse.work import TURNED_SEAMS, Work
from seqplan.surface.glued import Part, Surface


def cannot_turn(work: Work, op: Operation) -> Iterator[Trouble]:
    """Find what keeps the work from being turned, by an entry of its own or within a seam."""
    if op.entry in work.turned:
        return
    fresh = [id_ for id_ in work.joined if not _lies_inside(work, id_)]
    pieces = op.pieces if _is_whole(work, op) else work.c.shapes[op.entry].skins
    if not pieces:
        return
    if _is_whole(work, op) and not any(work.c.shapes[id_].skins & pieces for id_ in work.joined):
        seams = (s.entry.id for s in work.c.joins if s.skins <= pieces)
        first = next(seams, None)
        if first is not None:
            yield Trouble(op.id, "nothing-there", missing=work.c.main(first).id)
        return
    inside = (id_ for id_ in work.joined if _lies_inside(work, id_))
    surface = work.surface.without_seams(g for id_ in inside for g in work.c.shapes[id_].glues)
    for part in _with_several(surface, pieces):
        if part.genus and part.is_two_sided:
            guilty = _first_that_traps(work, fresh, pieces)
            yield Trouble(op.id, "trapped", blame=guilty)
            return
        if not part.loops and not work.gaps_in(part):
            last = [work.joined[id_] for id_ in fresh if _is_in(work, id_, part)][-1]
            yield Trouble(op.id, "no-way-out", blame=last)
            return
    if _is_whole(work, op):
        yield from _behind_a_zip(work, op)


def _is_whole(work: Work, op: Operation) -> bool:
    return work.c.entry(op).verb is Verb.TURN


def _lies_inside(work: Work, entry: EntryId) -> bool:
    """Whether a seam between two layers has been turned before, and so is no bag any more."""
    return work.c.shapes[entry].entry.seam in TURNED_SEAMS and entry in work.turned


def _surface(work: Work, entries: list[EntryId]) -> Surface:
    glues = (glue for id_ in entries for glue in work.c.shapes[id_].glues)
    return Surface(work.c.rings, glues)


def _with_several(surface: Surface, pieces: frozenset[PieceId]) -> list[Part]:
    """The parts that are sewn together of several cut copies, and have to do with these pieces."""
    return [part for part in surface.parts_with(pieces) if len(part.discs) > 1]


def _is_in(work: Work, entry: EntryId, part: Part) -> bool:
    pieces = {piece for piece, _ in part.discs}
    return bool(work.c.shapes[entry].skins & pieces)


def _first_that_traps(work: Work, fresh: list[EntryId], pieces: frozenset[PieceId]) -> OpId:
    """The seam with which the work could not be turned any more, in the order of sewing."""
    for count in range(1, len(fresh) + 1):
        parts = _with_several(_surface(work, fresh[:count]), pieces)
        if any(part.genus and part.is_two_sided for part in parts):
            return work.joined[fresh[count - 1]]
    return work.joined[fresh[-1]]


def _behind_a_zip(work: Work, op: Operation) -> Iterator[Trouble]:
    """The way out leads through a zip where the outside is closed but for its edges."""
    for notion, setting in work.shut.items():
        if work.c.op[setting].pieces & op.pieces and closed_round(work, notion) is not None:
            opening = [o for o in work.c.acting(Action.OPEN) if notion in o.notions]
            missing = next((o.id for o in opening if o.id not in work.done), None)
            yield Trouble(op.id, "zip-shut", blame=setting, missing=missing)
            return


def closed_round(work: Work, zip_: NotionId) -> OpId | None:
    """The seam with which the outside is closed but for the edges of a zip; ``None`` if it is not.

    Once the work has been turned, the outside is in reach again.
    """
    setting = work.shut.get(zip_)
    if setting is None:
        return None
    edges, pieces = set(work.c.op[setting].segments), work.c.op[setting].pieces
    outside = [
        id_
        for id_ in work.joined
        if all(work.c.garment.piece[p].layer is Layer.SHELL for p in work.c.shapes[id_].skins)
    ]
    if any(id_ in work.gaps for id_ in outside):
        return None
    for part in _with_several(_surface(work, outside), pieces):
        free = {segment for loop in part.loops for segment in loop}
        turns = (work.mark(piece, {Action.TURN}) for piece in {p for p, _ in part.discs})
        is_turned = any(t and _is_whole(work, work.c.op[t]) for t in turns)
        if free and free <= edges and not is_turned:
            return [work.joined[id_] for id_ in outside if _is_in(work, id_, part)][-1]
    return None
