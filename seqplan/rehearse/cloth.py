"""Before any stitching: cloth is washed whole, pieces are cut, and marked where it matters."""

from collections.abc import Iterator
from typing import Final

from seqplan.model.entry import Verb
from seqplan.model.operation import Action, Operation
from seqplan.rehearse.trouble import Trouble
from seqplan.rehearse.work import Work, too_late

_AT_MARKS: Final = frozenset({Action.DART, Action.PLEAT, Action.SLASH})
"""What is done exactly where the pattern says, and so after it is marked."""


def cut_out(work: Work, op: Operation) -> Iterator[Trouble]:
    """A piece is cut before anything is done to it, and marked before it is shaped."""
    if op.action in {Action.CUT, Action.PRETREAT, Action.DO, Action.WAIT}:
        return
    for cut in work.c.acting(Action.CUT):
        if cut.id not in work.done and cut.pieces & op.pieces:
            yield Trouble(op.id, "not-cut", missing=cut.id)
    is_at_marks = op.action in _AT_MARKS or work.c.entry(op).verb is Verb.INSERT
    for mark in work.c.acting(Action.MARK) if is_at_marks else ():
        if mark.id not in work.done and mark.pieces & op.pieces:
            yield Trouble(op.id, "not-marked", missing=mark.id)


def whole_cloth(work: Work, op: Operation) -> Iterator[Trouble]:
    """Cloth is washed whole."""
    fabrics = set(work.c.entry(op).fabrics) if op.action is Action.PRETREAT else set()
    for cut in work.c.acting(Action.CUT) if fabrics else ():
        cloths = {work.c.garment.piece[piece].fabric for piece in cut.pieces}
        if cut.id in work.done and cloths & fabrics:
            yield Trouble(op.id, too_late(work, cut.id), blame=cut.id)
