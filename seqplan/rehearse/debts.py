"""What is left undone at the end of the work."""

from collections.abc import Iterator

from seqplan.model.operation import Action
from seqplan.rehearse.trouble import Trouble
from seqplan.rehearse.work import Work, is_turned_seam


def debts(work: Work) -> Iterator[Trouble]:
    """Find what is left undone once every operation is done.

    Layers that are joined right sides together after the turning are never turned themselves; a
    gap that was closed before it was left stays open.
    """
    turns = [op for op in work.c.acting(Action.TURN) if op.id in work.done]
    for id_, sewn in work.joined.items():
        shape = work.c.shapes[id_]
        is_meant = any(shape.skins <= turn.pieces or turn.entry == id_ for turn in turns)
        if is_turned_seam(work.c, shape) and is_meant and id_ not in work.turned:
            yield Trouble(sewn, "never-turned")
    closings = {work.c.entry(op).closes for op in work.c.acting(Action.CLOSE_GAP)}
    for id_, sewn in work.gaps.items():
        if id_ in closings:
            yield Trouble(sewn, "gap-left-open")
