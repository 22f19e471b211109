"""What every state of the work is: it changes with what is done, and may stand in the way."""

from collections.abc import Iterator, Mapping
from typing import Protocol

from seqplan.base.ids import OpId
from seqplan.model.entry import Purpose
from seqplan.model.operation import Action, Operation
from seqplan.recipes.construction import Construction
from seqplan.recipes.waiting import causes_of
from seqplan.rehearse.trouble import Trouble

Done = Mapping[OpId, int]
"""What is done, each with its number; it grows while the work goes on."""


class State(Protocol):
    """One thing about the work that changes while it is done."""

    def hinders(self, op: Operation) -> Iterator[Trouble]:
        """Find what stands in the way of the next operation."""

    def do(self, op: Operation) -> None:
        """Change with an operation that is done."""


Waits = Mapping[Operation, tuple[Operation, ...]]
"""Waits of one purpose, each with what one waits for."""


def waits_for(c: Construction, purpose: Purpose) -> Waits:
    """The waits of which the author says that this is their purpose."""
    waits = (wait for wait in c.acting(Action.WAIT) if c.entry(wait).purpose is purpose)
    return {wait: causes_of(c, wait) for wait in waits}
