"""On which level of a chart each box stands, so that the whole fits a page.

Layout programs put a box as high as its reasons allow, and so make a chart of a garment far wider
than a page. We fill levels from the bottom upwards instead:

1. A box may stand on a level when all that come after it stand on lower ones. Of these, the boxes
   with the longest way above them come first, then those whose lane has been begun.
2. A level takes only so many columns. A lane that is begun and not ended takes up its columns.
3. This is done for every number of columns that could be of use; the arrangement that can be
   printed largest is kept. Cost: the number of boxes, squared, for each number of columns.

So everything stands close above what it is made for, as small parts are made when they are wanted.
"""

from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass
from functools import cached_property

from seqplan.render.chart_look import PAGE_PT

_MOST_COLUMNS = 14


@dataclass(frozen=True, slots=True)
class Item:
    """A box as far as levels go: its lane (``None`` outside all) and its height in points."""

    lane: int | None
    height: float


@dataclass(frozen=True, slots=True, kw_only=True)
class Spacing:
    """What a drawing takes beside the boxes, in points.

    Parameters
    ----------
    column
        The width of a box with the gap beside it.
    lane
        What a lane takes beside its columns.
    gap
        From one level to the next.
    extra
        Height of title and key.
    """

    column: float
    lane: float
    gap: float
    extra: float


Levels = tuple[tuple[int, ...], ...]
"""The boxes of every level, by their index, from the top."""


@dataclass(frozen=True)
class Arrangement:
    """Boxes with what comes before what, to be put on levels.

    Parameters
    ----------
    items
        The boxes.
    arcs
        Pairs of indices: the first stands above the second. They form no circle.
    are_lanes_whole
        Whether every lane reaches from the top to the bottom.
    spacing
        What the drawing takes beside the boxes.
    """

    items: tuple[Item, ...]
    arcs: frozenset[tuple[int, int]]
    are_lanes_whole: bool
    spacing: Spacing

    def levels(self) -> Levels:
        """The levels with which the chart can be printed largest."""
        found = list(dict.fromkeys(self._candidates()))
        return max(found, key=lambda levels: (round(self.scale(levels), 2), -len(levels)))

    def width(self, levels: Levels) -> float:
        """About how wide the drawing becomes, in points."""
        columns = self._columns(levels)
        if self.are_lanes_whole:
            return sum(self._lane_width(count) for count in columns.values())
        spans = self._spans(levels)
        return max(
            sum(
                self._lane_width(columns[lane])
                for lane, (top, bottom) in spans.items()
                if top <= level <= bottom
            )
            for level in range(len(levels))
        )

    def scale(self, levels: Levels) -> float:
        """How much of its size the drawing keeps on A4, upright or lying."""
        width = self.width(levels)
        height = self.spacing.extra + sum(
            self.spacing.gap + max(self.items[item].height for item in level) for level in levels
        )
        short, long = PAGE_PT
        return min(1.0, max(min(short / width, long / height), min(long / width, short / height)))

    def _lane_width(self, columns: int) -> float:
        return columns * self.spacing.column + self.spacing.lane

    def _columns(self, levels: Levels) -> Mapping[int | None, int]:
        """How many boxes of a lane stand side by side at most."""
        found: dict[int | None, int] = {}
        for level in levels:
            lanes = [self.items[item].lane for item in level]
            for lane in lanes:
                found[lane] = max(found.get(lane, 0), lanes.count(lane))
        return found

    def _spans(self, levels: Levels) -> Mapping[int | None, tuple[int, int]]:
        """From which level to which a lane reaches."""
        found: dict[int | None, tuple[int, int]] = {}
        for number, level in enumerate(levels):
            for item in level:
                lane = self.items[item].lane
                found[lane] = (found.get(lane, (number, number))[0], number)
        return found

    # -- filling levels --------------------------------------------------------------------

    def _candidates(self) -> Iterator[Levels]:
        yield self._fill({}, None)
        counts = [item.lane for item in self.items]
        if self.are_lanes_whole:
            for most in range(len(self.depth_levels), len(self.items) + 1):
                limits = {lane: -(-counts.count(lane) // most) for lane in set(counts)}
                yield self._fill(limits, None)
        else:
            for columns in range(1, _MOST_COLUMNS):
                yield self._fill({}, columns)

    def _fill(self, limits: Mapping[int | None, int], columns: int | None) -> Levels:
        """Fill levels from the bottom, with so many boxes in a lane or columns in all."""
        levels: list[tuple[int, ...]] = []
        left = set(range(len(self.items)))
        while left:
            levels.append(self._level(left, limits, columns))
            left -= set(levels[-1])
        return tuple(reversed(levels))

    def _level(
        self, left: set[int], limits: Mapping[int | None, int], columns: int | None
    ) -> tuple[int, ...]:
        begun = self._begun(left)
        ready = [item for item in left if not self._after[item] & left]
        ready.sort(key=lambda item: (-self._depth[item], self.items[item].lane not in begun, -item))
        taken: list[int] = []
        for item in ready:
            lane = self.items[item].lane
            lanes = [self.items[other].lane for other in taken]
            if taken and lanes.count(lane) >= limits.get(lane, len(self.items)):
                continue
            used = len(taken) + len(begun - set(lanes) - {lane})
            if taken and columns is not None and used >= columns:
                continue
            taken.append(item)
        return tuple(sorted(taken))

    def _begun(self, left: set[int]) -> set[int | None]:
        """Lanes that have boxes both above and below."""
        lanes = [item.lane for item in self.items]
        above = {lanes[item] for item in left}
        return above & {lane for item, lane in enumerate(lanes) if item not in left}

    @cached_property
    def _after(self) -> tuple[set[int], ...]:
        found: tuple[set[int], ...] = tuple(set() for _ in self.items)
        for before, after in self.arcs:
            found[before].add(after)
        return found

    @cached_property
    def _depth(self) -> Sequence[int]:
        """How many levels lie above each box at least."""
        depth = [0] * len(self.items)
        for number, level in enumerate(self.depth_levels):
            for item in level:
                depth[item] = number
        return depth

    @cached_property
    def depth_levels(self) -> Levels:
        """Every box as high as the arcs allow."""
        left = set(range(len(self.items)))
        levels: list[tuple[int, ...]] = []
        while left:
            covered = set().union(*(self._after[item] for item in left))
            level = tuple(sorted(left - covered))
            levels.append(level)
            left -= set(level)
        return tuple(levels)
