"""What a long search tells while it runs, and when it stops."""

import sys
import time
from collections.abc import Sequence
from threading import Event, Thread

import click

from seqplan.order.limits import Limit
from seqplan.order.observer import Observer
from seqplan.words.say import say

_QUIET_FOR = 1.0
_EVERY = 0.5
_CELLS = 20


def deadline(seconds: float) -> Limit:
    """Make a limit that stops a search after so many seconds."""
    end = time.monotonic() + seconds
    return lambda states: time.monotonic() > end


class Stages:
    """A bar on a terminal: which stage is reached, and for how long it has run.

    It is shown after the first second, is drawn anew while the work goes on, and is wiped away at
    the end. Where nobody looks at a terminal there is none.
    """

    def __init__(self) -> None:
        self._start = time.monotonic()
        self._stage, self._share = "", 0.0
        self._width = 0
        self._is_over = Event()
        self._drawing = Thread(target=self._draw, daemon=True)

    def __enter__(self) -> "Stages":
        if sys.stderr.isatty():
            self._drawing.start()
        return self

    def __exit__(self, *_: object) -> None:
        self._is_over.set()
        if self._drawing.ident is not None:
            self._drawing.join()
        if self._width:
            self._write("")

    def reach(self, stage: str, share: float) -> None:
        """Tell what is done now, and which share of all was done before."""
        self._stage, self._share = stage, share

    def _draw(self) -> None:
        wait = _QUIET_FOR
        while not self._is_over.wait(wait):
            done = round(_CELLS * self._share)
            bar = "#" * done + "-" * (_CELLS - done)
            seconds = int(time.monotonic() - self._start)
            self._write(say("stage-bar", bar=bar, stage=self._stage, seconds=seconds))
            wait = _EVERY

    def _write(self, line: str) -> None:
        """Write over the line that stands there."""
        click.echo(f"\r{line.ljust(self._width)}" + ("" if line else "\r"), err=True, nl=False)
        self._width = max(self._width, len(line))


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
