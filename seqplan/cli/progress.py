"""What a long search tells while it runs, and when it stops."""

import sys
import time
from collections.abc import Callable, Sequence

import click

from seqplan.order.limits import Limit
from seqplan.order.observer import Observer
from seqplan.words.say import say

_QUIET_FOR = 1.0
_EVERY = 0.5


def deadline(seconds: float) -> Limit:
    """Make a limit that stops a search after so many seconds."""
    end = time.monotonic() + seconds
    return lambda states: time.monotonic() > end


def stages() -> Callable[[str], None]:
    """Make something that shows on a terminal which stage is reached, after the first second."""
    quiet_until = time.monotonic() + _QUIET_FOR
    is_terminal = sys.stderr.isatty()

    def show(stage: str) -> None:
        if is_terminal and time.monotonic() > quiet_until:
            click.echo(stage, err=True)

    return show


class SearchProgress(Observer):
    """Shows on a terminal how far a search is, once it has taken longer than a second."""

    def __init__(self) -> None:
        self._is_shown = sys.stderr.isatty()
        self._next = time.monotonic() + _QUIET_FOR
        self._best: int | None = None
        self._bound = 0

    def took_up(self, states: int) -> None:
        """Show the state of the search now and then."""
        if self._is_shown and time.monotonic() > self._next:
            self._next = time.monotonic() + _EVERY
            best = "?" if self._best is None else self._best
            click.echo("\r" + say("searching", best=best, bound=self._bound), err=True, nl=False)

    def raised(self, lower_bound: int) -> None:
        """Keep the bound."""
        self._bound = lower_bound

    def found(self, order: Sequence[int], cost: int) -> None:
        """Keep the best."""
        self._best = cost
