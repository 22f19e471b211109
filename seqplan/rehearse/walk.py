"""The walk through an order: operation after operation, up to the first that cannot be done."""

from collections.abc import Callable, Sequence
from typing import NamedTuple

from seqplan.base.ids import OpId
from seqplan.model.operation import Operation
from seqplan.recipes.construction import Construction
from seqplan.rehearse.debts import debts
from seqplan.rehearse.demands import troubles
from seqplan.rehearse.trouble import Trouble
from seqplan.rehearse.work import Work


class Rehearsal(NamedTuple):
    """How far an order goes.

    Parameters
    ----------
    order
        The operations in the order that was walked.
    reached
        How many of them can be done.
    troubles
        What stands in the way of the next one; none where all of them can be done.
    debts
        What is left undone at the end: layers never turned, gaps never closed.
    """

    order: tuple[OpId, ...]
    reached: int
    troubles: tuple[Trouble, ...] = ()
    debts: tuple[Trouble, ...] = ()

    @property
    def is_clean(self) -> bool:
        """Whether every operation can be done."""
        return not self.troubles


Watch = Callable[[Work, Operation], None]
"""Sees the work after each operation."""


def rehearse(c: Construction, order: Sequence[OpId], watch: Watch | None = None) -> Rehearsal:
    """Walk through an order.

    Parameters
    ----------
    c
        The garment.
    order
        All of its operations, each once.
    watch
        Is shown the work after each operation that can be done.
    """
    work = Work(c)
    for place, id_ in enumerate(order):
        op = c.op[id_]
        found = tuple(troubles(work, op))
        if found:
            return Rehearsal(tuple(order), place, found)
        work.do(op)
        if watch is not None:
            watch(work, op)
    return Rehearsal(tuple(order), len(order), debts=tuple(debts(work)))
