"""What changes of set-up cost.

A set-up has sides that are changed one by one: the station one works at, the foot on a machine, the
thread in it. Each side is a **track**: the operations that care about it say which state they
need, and going from one state to another has a price. What does not care leaves the state as it
is. So an order costs, on each track, the changes between the operations that care, one after the
other, and in all the sum over the tracks.

- Fewest changes: one track, every operation has a need, every change costs 1.
- Any table of prices between whole set-ups, symmetric or not: one track with that table.
- Own machines: a track for the station and, for each machine, one for its foot, one for its
  thread and so on; what is mounted stays mounted while one works elsewhere (`workroom`).
"""

from collections.abc import Hashable, Iterable, Mapping, Sequence
from dataclasses import dataclass, replace
from functools import cached_property
from itertools import pairwise
from typing import TypeAlias, TypeVar

from seqplan.base.ids import OpId

Key = TypeVar("Key", bound=Hashable)

Costs: TypeAlias = tuple[tuple[int, ...], ...]
"""``costs[a][b]``: from state a to state b, as numbers of states."""


@dataclass(frozen=True)
class Track:
    """One side of the set-up.

    Parameters
    ----------
    needs
        The state that each operation needs; operations that are not named do not care.
    states
        Every state there is.
    costs
        What a change costs, from the state of the row to that of the column, in the order of
        ``states``: whole numbers of any unit, not negative, 0 on the diagonal.
    start
        The state before the first operation. Without one, whatever is needed first is there.

    Raises
    ------
    ValueError
        The table is not square or a price is out of place; a need or the start is no state.
    """

    needs: Mapping[OpId, Hashable]
    states: tuple[Hashable, ...]
    costs: Costs
    start: Hashable | None = None

    def __post_init__(self) -> None:
        size = len(self.states)
        if len(self.number) != size:
            raise ValueError("a state stands twice")
        if len(self.costs) != size or any(len(row) != size for row in self.costs):
            raise ValueError("the table has a row and a column for every state")
        if any(price < 0 for row in self.costs for price in row):
            raise ValueError("a change costs nothing or something")
        if any(self.costs[state][state] for state in range(size)):
            raise ValueError("what stays as it is costs nothing")
        wanted = {*self.needs.values()} | ({self.start} - {None})
        if not wanted <= self.number.keys():
            raise ValueError("a need or the start is no state")

    @classmethod
    def even(cls, needs: Mapping[OpId, Key], cost: int = 1, start: Key | None = None) -> "Track":
        """Let every change cost the same."""
        states = _states(needs.values(), start)
        return cls.entering(needs, dict.fromkeys(states, cost), start)

    @classmethod
    def entering(
        cls,
        needs: Mapping[OpId, Key],
        costs: Mapping[Key, int],
        start: Key | None = None,
    ) -> "Track":
        """Let the price of a change be that of the state it leads to.

        Raises
        ------
        KeyError
            A state has no price.
        """
        states = _states(needs.values(), start)
        rows = tuple(tuple(0 if a == b else costs[b] for b in states) for a in states)
        return cls(needs, states, rows, start)

    def through(self) -> "Track":
        """Let a change go through other states when that is cheaper.

        To be used where one may set up for something without doing any work there. Where that is
        not so, or the prices already include it, the table is right as it is: the search
        is exact either way, only slower where going through another state would be cheaper.
        """
        return replace(self, costs=shortest(self.costs))

    @cached_property
    def number(self) -> dict[Hashable, int]:
        """The number of every state."""
        return {state: number for number, state in enumerate(self.states)}

    @cached_property
    def is_direct(self) -> bool:
        """Whether no change is cheaper through another state: the triangle inequality."""
        return shortest(self.costs) == self.costs

    def cost(self, order: Iterable[OpId]) -> int:
        """Add up what an order costs on this track."""
        states = [self.needs[operation] for operation in order if operation in self.needs]
        if self.start is not None:
            states = [self.start, *states]
        numbers = [self.number[state] for state in states]
        return sum(self.costs[one][other] for one, other in pairwise(numbers))


@dataclass(frozen=True)
class Changes:
    """The price of all changes of set-up: the sum over tracks.

    Parameters
    ----------
    tracks
        All prices in the same unit.
    """

    tracks: tuple[Track, ...]

    @classmethod
    def counted(cls, setup_of: Mapping[OpId, Hashable]) -> "Changes":
        """Count changes between whole set-ups, whatever they are."""
        return cls((Track.even(setup_of),))

    @property
    def are_counted(self) -> bool:
        """Whether every change between whole set-ups costs 1 and nothing is set up at first."""
        if len(self.tracks) != 1 or self.tracks[0].start is not None:
            return False
        rows = enumerate(self.tracks[0].costs)
        return all(price == (a != b) for a, row in rows for b, price in enumerate(row))

    def cost(self, order: Sequence[OpId]) -> int:
        """Add up what an order costs."""
        return sum(track.cost(order) for track in self.tracks)


def shortest(costs: Costs) -> Costs:
    """Find the cheapest way from every state to every other through any states.

    After Floyd, "Algorithm 97: Shortest path", Communications of the ACM 5 (1962), and Warshall,
    "A theorem on Boolean matrices", Journal of the ACM 9 (1962).
    """
    rows = [list(row) for row in costs]
    for middle, row in enumerate(rows):
        for other in rows:
            first = other[middle]
            other[:] = [min(price, first + more) for price, more in zip(other, row, strict=True)]
    return tuple(map(tuple, rows))


def _states(needs: Iterable[Key], start: Key | None) -> tuple[Key, ...]:
    states = dict.fromkeys(needs)
    if start is not None:
        states[start] = None
    return tuple(states)


def count_changes(order: Sequence[OpId], setup_of: Mapping[OpId, Hashable]) -> int:
    """Count the neighbours in an order that need different set-ups."""
    return sum(setup_of[one] != setup_of[other] for one, other in pairwise(order))
