"""Names beside a drawing, each with a straight line to what it names; no two lines cross.

Every thing offers some spots at which a line may end. Names stand in a column at the left and one
at the right, in the order of their spots from the top down. Spots are tried until no lines cross,
and then so that lines are short and pass over as little as possible.
"""

from collections.abc import Iterable, Sequence
from functools import cache
from itertools import combinations
from math import hypot
from typing import Final, NamedTuple

from seqplan.draw.cloth import crossing
from seqplan.draw.figure import Disc, Line, Mark, Spot, Words
from seqplan.draw.textwidth import text_width, wrap

SIZE: Final = 8.0
LEADING: Final = 9.2
_LINES: Final = 4
_CROSSED: Final = 10_000.0
_PASSED: Final = 25.0
_ROUNDS: Final = 4
_GAP: Final = 3.0
_RISE: Final = 0.34
"""From the middle of a line of text to its base line, in parts of its size."""


class Named(NamedTuple):
    """A thing that is named: its name, and the spots at which a line to it may end."""

    text: str
    spots: tuple[Spot, ...]


class Columns(NamedTuple):
    """Where names may stand: inner ends of the two columns, their widths, top and bottom."""

    left: float
    right: float
    left_width: float
    right_width: float
    top: float
    bottom: float


class _Label(NamedTuple):
    lines: tuple[str, ...]
    spot: Spot
    is_left: bool
    middle: float

    def start(self, columns: Columns) -> Spot:
        """Where its line begins."""
        return (columns.left + 2 if self.is_left else columns.right - 2, self.middle)

    @property
    def height(self) -> float:
        return len(self.lines) * LEADING


def name_things(
    things: Sequence[Named], columns: Columns, obstacles: Sequence[tuple[Spot, Spot]] = ()
) -> tuple[tuple[Mark, ...], float]:
    """Place names and their lines.

    Parameters
    ----------
    things
        What is named.
    columns
        Where the names stand.
    obstacles
        Lines that a leader had better not pass over.

    Returns
    -------
    tuple of Mark, float
        The names with their lines, and how far down they reach.
    """
    choices = [_choices(thing, columns) for thing in things]
    picks = [0] * len(things)

    @cache
    def spread(column: tuple[tuple[int, int], ...]) -> list[_Label]:
        return _spread([choices[place][pick] for place, pick in column], columns)

    def placed(picks: Sequence[int]) -> list[_Label]:
        left: list[tuple[int, int]] = []
        right: list[tuple[int, int]] = []
        for place, pick in enumerate(picks):
            (left if choices[place][pick].is_left else right).append((place, pick))
        return [*spread(tuple(left)), *spread(tuple(right))]

    best = _cost(placed(picks), columns, obstacles)
    for _ in range(_ROUNDS):
        before = best
        for place, offered in enumerate(choices):
            for pick in range(len(offered)):
                tried = [*picks[:place], pick, *picks[place + 1 :]]
                cost = _cost(placed(tried), columns, obstacles)
                if cost < best - 1e-9:
                    best, picks = cost, tried
        if best == before:
            break
    labels = placed(picks)
    down = max((label.middle + label.height / 2 for label in labels), default=columns.top)
    return tuple(mark for label in labels for mark in _marks(label, columns)), down


def crossings(lines: Sequence[tuple[Spot, Spot]]) -> int:
    """How many pairs of lines cross."""
    return sum(crossing(one, other) is not None for one, other in combinations(lines, 2))


def _choices(thing: Named, columns: Columns) -> list[_Label]:
    """The ways to name a thing, those with the shortest line first."""
    sides = [
        (is_left, wrap(thing.text, width, SIZE, lines=_LINES))
        for is_left, width in ((True, columns.left_width), (False, columns.right_width))
        if width
    ]
    found = [
        _Label(lines, spot, is_left, spot[1]) for spot in thing.spots for is_left, lines in sides
    ]
    return sorted(found, key=lambda label: _reach(label, columns))


def _reach(label: _Label, columns: Columns) -> float:
    return abs(label.spot[0] - (columns.left if label.is_left else columns.right))


def _spread(labels: Iterable[_Label], columns: Columns) -> list[_Label]:
    """The names of one column, one below the other, each as near to its spot as can be.

    Names whose lines cross change places. Each time that makes the lines shorter as long as names
    are of one height, so that it ends; it is not tried for ever where they are not.
    """
    column = sorted(labels, key=lambda label: (label.spot[1], label.spot[0], label.lines))
    placed = _moved_apart(column, columns)
    for _ in range(len(column) ** 2):
        lines = [(label.start(columns), label.spot) for label in placed]
        pairs = combinations(range(len(lines)), 2)
        crossed = next((p for p in pairs if crossing(lines[p[0]], lines[p[1]]) is not None), None)
        if crossed is None:
            break
        one, other = crossed
        column[one], column[other] = column[other], column[one]
        placed = _moved_apart(column, columns)
    return placed


def _moved_apart(column: Sequence[_Label], columns: Columns) -> list[_Label]:
    """Names in this order from the top down, moved apart and back into the column."""
    placed: list[_Label] = []
    down = columns.top
    for label in column:
        middle = max(label.spot[1], down + label.height / 2)
        placed.append(label._replace(middle=middle))
        down = middle + label.height / 2 + _GAP
    room = sum(label.height + _GAP for label in placed) - _GAP
    up = max(columns.bottom, columns.top + room)
    for place in range(len(placed) - 1, -1, -1):
        label = placed[place]
        middle = min(label.middle, up - label.height / 2)
        placed[place] = label._replace(middle=middle)
        up = middle - label.height / 2 - _GAP
    return placed


def _cost(
    labels: Sequence[_Label], columns: Columns, obstacles: Sequence[tuple[Spot, Spot]]
) -> float:
    lines = [(label.start(columns), label.spot) for label in labels]
    length = sum(hypot(a[0] - b[0], a[1] - b[1]) for a, b in lines)
    passed = sum(
        0.02 < where < 0.98
        for line in lines
        for obstacle in obstacles
        for where in (crossing(line, obstacle),)
        if where is not None
    )
    return _CROSSED * crossings(lines) + _PASSED * passed + length


def _marks(label: _Label, columns: Columns) -> Iterable[Mark]:
    start = label.start(columns)
    yield Line((start, label.spot), width=0.5, role="leader")
    yield Disc(label.spot, 1.1)
    base = label.middle - label.height / 2 + LEADING / 2 + _RISE * SIZE
    for place, line in enumerate(label.lines):
        x = columns.left if label.is_left else columns.right
        anchor = "end" if label.is_left else "start"
        yield Words((x, base + place * LEADING), line, SIZE, anchor, role="label")


def widest(texts: Iterable[str], limit: float) -> float:
    """The room that names take in a column that is at most ``limit`` wide.

    >>> widest(["front"], 60) < 30
    True
    """
    lines = (line for text in texts for line in wrap(text, limit, SIZE, lines=_LINES))
    return max((text_width(line, SIZE) for line in lines), default=0.0)
