"""How often the parts of a drawing are shown: one may show another, which shows another, and so on.

Ten lines that each show the line before ten times would draw ten thousand million things. So every
part is counted with all that it shows, from the inside out, and no drawing may come to more than
``MOST`` elements in all.
"""

from collections import Counter
from typing import Final, NamedTuple

MOST: Final = 500_000
"""Elements of a drawing, repeats counted; a file of 5 MB hardly has as many without repeats."""


class Shows(NamedTuple):
    """A place that shows a part of the file by its ``id``."""

    to: str
    line: int
    column: int


class Repeats:
    """Counts elements while a file is read from its start to its end."""

    def __init__(self) -> None:
        self._open: list[str | None] = []
        self._size: Counter[str] = Counter()
        self._shown: dict[str, Counter[str]] = {}
        self._places: list[Shows] = []

    def start(self, id_: str | None) -> None:
        """An element begins; it counts for all that it stands in."""
        self._open.append(id_)
        for part in self._parts():
            self._size[part] += 1

    def end(self) -> None:
        """The element that began last ends."""
        self._open.pop()

    def shows(self, to: str, line: int, column: int) -> None:
        """The element that began last shows another part of the file."""
        self._places.append(Shows(to, line, column))
        for part in self._parts():
            self._shown.setdefault(part, Counter())[to] += 1

    def _parts(self) -> set[str]:
        return {part for part in self._open if part is not None}

    def first_endless(self) -> Shows | None:
        """The place with which there is too much to draw; ``None`` where there is none."""
        total = 0
        drawn = self._drawn()
        for place in self._places:
            total += drawn.get(place.to, 0)
            if total > MOST:
                return place
        return None

    def _drawn(self) -> dict[str, int]:
        """How many elements each part comes to, those that it shows included.

        What shows itself, and what shows that, comes to more than ``MOST``.
        """
        drawn: dict[str, int] = {}
        for first in self._size:
            waiting = [first]
            on_the_way: set[str] = set()
            while waiting:
                part = waiting[-1]
                shown = self._shown.get(part, Counter())
                missing = [to for to in shown if to in self._size and to not in drawn]
                if part in drawn:
                    waiting.pop()
                elif not missing:
                    shows = sum(count * drawn.get(to, 0) for to, count in shown.items())
                    drawn[part] = min(self._size[part] + shows, MOST + 1)
                    waiting.pop()
                elif part in on_the_way:
                    drawn[part] = MOST + 1
                    waiting.pop()
                else:
                    on_the_way.add(part)
                    waiting += missing
        return drawn
