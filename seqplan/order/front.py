"""The states a search has entered, and whether one of them beats another.

1. States are filed by what they cost, in a fixed number of drawers, and in every drawer by
   blocks. A block keeps, for every operation, which of its states have done it: one bit a state.
2. What is done is closed under "comes before". So a state has done all that another has if it has
   done the last of it: the operations nothing done comes after. Taking their bits
   together asks a whole block at once.

Cost: a step per block and last operation, and one for every operation done to enter a state.
"""

from typing import NamedTuple

from seqplan.graph.bits import bits
from seqplan.order.rooms import Rooms

_BLOCK = 512
"""States in a block: enough to make one step of many, not so many that steps get slow."""

_DRAWERS = 64


class State(NamedTuple):
    """The first part of an order.

    Parameters
    ----------
    done
        The operations done.
    last
        Those of them that nothing done comes after.
    available
        Those that can be done next.
    room
        How the room stands.
    spent
        What changes have cost.
    needs
        For every state of every track, how often a chain has still to enter it afresh.
    bound
        What all changes cost at least, these included.
    """

    done: int
    last: int
    available: int
    room: int
    spent: int
    needs: tuple[int, ...]
    bound: int


class _Block:
    """Some states, and by operation who has done it."""

    def __init__(self, size: int) -> None:
        self.states: list[State] = []
        self.has = [0] * size

    def add(self, state: State) -> None:
        bit = 1 << len(self.states)
        for node in bits(state.done):
            self.has[node] |= bit
        self.states.append(state)

    def containing(self, last: list[int]) -> int:
        """Give the states that have done these operations."""
        found = (1 << len(self.states)) - 1
        for node in last:
            found &= self.has[node]
            if not found:
                break
        return found


class Front:
    """The states entered.

    Parameters
    ----------
    size
        How many operations there are.
    rooms
        How rooms compare.
    ceiling
        No state costs more.
    compares_sets
        Whether having done more is never worse; without it, only states that have done the same,
        in the same room, are compared.
    """

    def __init__(self, size: int, rooms: Rooms, ceiling: int, *, compares_sets: bool) -> None:
        self._size = size
        self._rooms = rooms
        self._width = ceiling // _DRAWERS + 1
        self._compares_sets = compares_sets
        self._spent: dict[tuple[int, int], int] = {}
        self._came: dict[tuple[int, int], State | None] = {}
        self._drawers: dict[int, list[_Block]] = {}

    def add(self, state: State, before: State | None) -> bool:
        """Enter a state and the one it came from; False if another beats it."""
        key = state.done, state.room
        known = self._spent.get(key)
        if known is not None and known <= state.spent:
            return False
        if self._compares_sets:
            if self._is_beaten_by_more(state):
                return False
            blocks = self._drawers.setdefault(state.spent // self._width, [_Block(self._size)])
            if len(blocks[-1].states) == _BLOCK:
                blocks.append(_Block(self._size))
            blocks[-1].add(state)
        self._spent[key] = state.spent
        self._came[key] = before
        return True

    def is_beaten(self, state: State) -> bool:
        """Whether a state that beats this one was entered since."""
        if self._spent[state.done, state.room] < state.spent:
            return True
        return self._compares_sets and self._is_beaten_by_more(state)

    def trace(self, state: State) -> list[State]:
        """List the states on the way to this one, which is the last."""
        walk = []
        here: State | None = state
        while here is not None:
            walk.append(here)
            here = self._came[here.done, here.room]
        return walk[::-1]

    def _is_beaten_by_more(self, state: State) -> bool:
        """Whether a state that has done as much and more beats this one."""
        last = bits(state.last)
        most, extra = state.spent, self._rooms.extra
        for drawer, blocks in self._drawers.items():
            if drawer > most // self._width:
                continue
            for block in blocks:
                for place in bits(block.containing(last)):
                    other = block.states[place]
                    if other.spent + extra(other.room, state.room) <= most and other is not state:
                        return True
        return False
