"""When a search stops. Searches know states, never seconds, so that every run is the same."""

from dataclasses import dataclass
from typing import Protocol

from seqplan.order.observer import Observer


class Limit(Protocol):
    """Says whether a search has gone on for long enough.

    Anything that can be called with the number of states taken up so far will do, also one that
    looks at a clock.
    """

    def __call__(self, states: int) -> bool:
        """Whether to stop after this many states."""
        ...


def no_limit(states: int) -> bool:
    """Never stop."""
    return False


@dataclass(frozen=True, slots=True)
class StateLimit:
    """Stop after a number of states.

    Parameters
    ----------
    most
        How many states may be taken up; not negative.
    """

    most: int

    def __call__(self, states: int) -> bool:
        """Whether the number is reached."""
        return states >= self.most


class Meter:
    """Counts states over all parts of one search and asks the limit.

    Parameters
    ----------
    limit
        Says when to stop.
    observer
        Told of every state.

    Attributes
    ----------
    states
        How many states were taken up.
    is_spent
        Whether the limit has said stop.
    """

    __slots__ = ("_limit", "_observer", "is_spent", "states")

    def __init__(self, limit: Limit, observer: Observer) -> None:
        self._limit = limit
        self._observer = observer
        self.states = 0
        self.is_spent = limit(0)

    def take_up(self) -> bool:
        """Count one state; False when the search must stop instead."""
        if self.is_spent or self._limit(self.states):
            self.is_spent = True
            return False
        self.states += 1
        self._observer.took_up(self.states)
        return True
