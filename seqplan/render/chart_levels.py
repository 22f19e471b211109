"""On which level of a chart each box may stand, in several ways from narrow to wide.

Layout programs put a box as early as its reasons allow, and so make a chart of a garment far wider
than a page. We fill levels from the last to the first instead: a box may stand on a level when all
that come after it stand on later ones. Of these, the boxes with the longest way before them come
first, then those whose lane has been begun. A level takes only so many boxes, in all or of a lane.

So everything stands close before what it is made for, as small parts are made when they are wanted.
"""

from collections.abc import Collection, Iterator, Mapping, Sequence
from dataclasses import dataclass
from functools import cached_property

Levels = tuple[tuple[int, ...], ...]
"""The boxes of every level, by their index, the first level first."""

_FEWEST = 2
_MOST = 9
"""How many boxes a level takes; more than nine never fit a page."""


@dataclass(frozen=True)
class Leveling:
    """Boxes with what comes before what, to be put on levels.

    Parameters
    ----------
    lanes
        The lane of every box.
    arcs
        Pairs of indices: the first stands before the second. They form no circle.
    are_lanes_whole
        Whether every lane reaches from the first level to the last; a level then takes so many
        boxes of each lane, in proportion to what the lane holds.
    """

    lanes: tuple[int, ...]
    arcs: Collection[tuple[int, int]]
    are_lanes_whole: bool

    def ways(self) -> tuple[Levels, ...]:
        """The ways to fill levels, each once."""
        return tuple(dict.fromkeys(self._fill(limits, most) for limits, most in self._limits()))

    def _limits(self) -> Iterator[tuple[Mapping[int, int], int]]:
        if self.are_lanes_whole:
            for most in range(len(self._earliest), len(self.lanes) + 1):
                yield {lane: -(-self.lanes.count(lane) // most) for lane in self.lanes}, _MOST
        else:
            for most in range(_FEWEST, _MOST + 1):
                yield {}, most

    def _fill(self, limits: Mapping[int, int], most: int) -> Levels:
        """Fill levels from the last, with so many boxes of a lane and in all."""
        levels: list[tuple[int, ...]] = []
        left = set(range(len(self.lanes)))
        while left:
            levels.append(self._level(left, limits, most))
            left -= set(levels[-1])
        return tuple(reversed(levels))

    def _level(self, left: set[int], limits: Mapping[int, int], most: int) -> tuple[int, ...]:
        begun = self._begun(left)
        ready = [item for item in left if not self._after[item] & left]
        ready.sort(key=lambda item: (-self._depth[item], self.lanes[item] not in begun, -item))
        taken: list[int] = []
        for item in ready:
            held = [self.lanes[other] for other in taken]
            if len(taken) < most and held.count(self.lanes[item]) < limits.get(
                self.lanes[item], most
            ):
                taken.append(item)
        return tuple(sorted(taken))

    def _begun(self, left: set[int]) -> set[int]:
        """Lanes that have boxes both before this level and after it."""
        before = {self.lanes[item] for item in left}
        return before & {lane for item, lane in enumerate(self.lanes) if item not in left}

    @cached_property
    def _after(self) -> tuple[set[int], ...]:
        found: tuple[set[int], ...] = tuple(set() for _ in self.lanes)
        for before, after in self.arcs:
            found[before].add(after)
        return found

    @cached_property
    def _depth(self) -> Sequence[int]:
        """How many levels lie before each box at least."""
        depth = [0] * len(self.lanes)
        for number, level in enumerate(self._earliest):
            for item in level:
                depth[item] = number
        return depth

    @cached_property
    def _earliest(self) -> Levels:
        """Every box as early as the arcs allow."""
        left = set(range(len(self.lanes)))
        levels: list[tuple[int, ...]] = []
        while left:
            covered = set().union(*(self._after[item] for item in left))
            level = tuple(sorted(left - covered))
            levels.append(level)
            left -= set(level)
        return tuple(levels)


def leads_to(arcs: Collection[tuple[int, int]], start: int, end: int) -> bool:
    """Whether arcs lead from one box to another.

    Parameters
    ----------
    arcs
        Pairs of indices: the first stands before the second.
    start, end
        The boxes.
    """
    after: dict[int, list[int]] = {}
    for one, other in arcs:
        after.setdefault(one, []).append(other)
    seen, waiting = {start}, [start]
    while waiting:
        found = set(after.get(waiting.pop(), ())) - seen
        seen |= found
        waiting.extend(found)
    return end in seen
