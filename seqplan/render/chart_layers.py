"""On which level of a chart each box stands, so that the whole fits a page.

Layout programs put a box as early as its reasons allow, and so make a chart of a garment far wider
than a page. We fill levels from the last to the first instead:

1. A box may stand on a level when all that come after it stand on later ones. Of these, the boxes
   with the longest way before them come first, then those whose lane has been begun.
2. A level has only so much room. A lane that is begun and not ended takes up room too.
3. This is done for every amount of room that could be of use, running down the page and across it;
   the arrangement that can be printed largest is kept. Cost: the number of boxes, squared, for
   each amount of room.

So everything stands close before what it is made for, as small parts are made when they are wanted.
"""

from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass
from functools import cached_property

from seqplan.render.chart_look import page_scale

_STEPS = 24
"""How many amounts of room are tried."""


@dataclass(frozen=True, slots=True)
class Item:
    """A box as far as levels go, with its size in points; ``lane`` is ``None`` outside all."""

    lane: int | None
    width: float
    height: float


@dataclass(frozen=True, slots=True, kw_only=True)
class Spacing:
    """What a drawing takes beside the boxes, in points.

    Parameters
    ----------
    beside
        Between boxes of a level.
    lane
        What a lane takes beside its boxes, across the way that the chart runs.
    gap
        From one level to the next.
    frames
        Width and height of what stands above and below, in all the ways that it can be made.
    """

    beside: float
    lane: float
    gap: float
    frames: tuple[tuple[float, float], ...]


Levels = tuple[tuple[int, ...], ...]
"""The boxes of every level, by their index, the first level first."""


@dataclass(frozen=True)
class Arrangement:
    """Boxes with what comes before what, to be put on levels.

    Parameters
    ----------
    items
        The boxes.
    arcs
        Pairs of indices: the first stands before the second. They form no circle.
    runs_down
        Whether the levels stand one below the other; if not, they stand side by side.
    are_lanes_whole
        Whether every lane reaches from the first level to the last.
    spacing
        What the drawing takes beside the boxes.
    """

    items: tuple[Item, ...]
    arcs: frozenset[tuple[int, int]]
    runs_down: bool
    are_lanes_whole: bool
    spacing: Spacing

    @cached_property
    def levels(self) -> Levels:
        """The levels with which the chart can be printed largest."""
        found = list(dict.fromkeys(self._candidates()))
        return max(found, key=lambda levels: (round(self.scale(levels), 2), -len(levels)))

    def scale(self, levels: Levels) -> float:
        """How much of its size the drawing keeps on A4, upright or lying, about."""
        return max(self._scales(levels))

    @cached_property
    def frame(self) -> int:
        """Which way to make what stands above and below, the first of the best."""
        scales = [round(scale, 2) for scale in self._scales(self.levels)]
        return scales.index(max(scales))

    def _scales(self, levels: Levels) -> Sequence[float]:
        along = sum(max(self._along(item) for item in level) for level in levels)
        along += self.spacing.gap * (len(levels) - 1)
        across = self._across_all(levels)
        width, height = (across, along) if self.runs_down else (along, across)
        return [
            page_scale(max(width, least), height + extra) for least, extra in self.spacing.frames
        ]

    def _along(self, item: int) -> float:
        return self.items[item].height if self.runs_down else self.items[item].width

    def _across(self, item: int) -> float:
        size = self.items[item].width if self.runs_down else self.items[item].height
        return size + self.spacing.beside

    def _across_all(self, levels: Levels) -> float:
        """How much room the chart takes across the way that it runs."""
        rooms = self._rooms(levels)
        if self.are_lanes_whole:
            return sum(rooms.values())
        spans = self._spans(levels)
        return max(
            sum(rooms[lane] for lane, (top, end) in spans.items() if top <= level <= end)
            for level in range(len(levels))
        )

    def _rooms(self, levels: Levels) -> Mapping[int | None, float]:
        """How much room every lane takes."""
        found: dict[int | None, float] = {}
        for level in levels:
            for lane in {self.items[item].lane for item in level}:
                taken = sum(self._across(i) for i in level if self.items[i].lane == lane)
                found[lane] = max(found.get(lane, 0), taken + self.spacing.lane)
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
        lanes = [item.lane for item in self.items]
        if self.are_lanes_whole:
            for most in range(len(self.earliest), len(self.items) + 1):
                limits = {lane: -(-lanes.count(lane) // most) for lane in set(lanes)}
                yield self._fill(limits, None)
            return
        total = sum(self._across(item) for item in range(len(self.items)))
        for step in range(1, _STEPS):
            yield self._fill({}, total * step / _STEPS)

    def _fill(self, limits: Mapping[int | None, int], room: float | None) -> Levels:
        """Fill levels from the last, with so many boxes in a lane or so much room in all."""
        levels: list[tuple[int, ...]] = []
        left = set(range(len(self.items)))
        while left:
            levels.append(self._level(left, limits, room))
            left -= set(levels[-1])
        return tuple(reversed(levels))

    def _level(
        self, left: set[int], limits: Mapping[int | None, int], room: float | None
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
            passing = len(begun - set(lanes) - {lane}) * self._usual_across
            used = sum(self._across(other) for other in (*taken, item)) + passing
            if taken and room is not None and used > room:
                continue
            taken.append(item)
        return tuple(sorted(taken))

    @cached_property
    def _usual_across(self) -> float:
        return sum(self._across(item) for item in range(len(self.items))) / len(self.items)

    def _begun(self, left: set[int]) -> set[int | None]:
        """Lanes that have boxes both before this level and after it."""
        lanes = [item.lane for item in self.items]
        before = {lanes[item] for item in left}
        return before & {lane for item, lane in enumerate(lanes) if item not in left}

    @cached_property
    def _after(self) -> tuple[set[int], ...]:
        found: tuple[set[int], ...] = tuple(set() for _ in self.items)
        for before, after in self.arcs:
            found[before].add(after)
        return found

    @cached_property
    def _depth(self) -> Sequence[int]:
        """How many levels lie before each box at least."""
        depth = [0] * len(self.items)
        for number, level in enumerate(self.earliest):
            for item in level:
                depth[item] = number
        return depth

    @cached_property
    def earliest(self) -> Levels:
        """Every box as early as the arcs allow."""
        left = set(range(len(self.items)))
        levels: list[tuple[int, ...]] = []
        while left:
            covered = set().union(*(self._after[item] for item in left))
            level = tuple(sorted(left - covered))
            levels.append(level)
            left -= set(level)
        return tuple(levels)
