"""Moving stretches of a booklet order, and judging it.

1. A judgement is three numbers, compared one after the other: changes of unit, entries torn
   apart, and the sum of all distances from the written places.
2. A stretch is a single operation, a longest run of one entry, or a longest run without a change
   of unit. It is slid down, one place after the other, as long as nothing that it passes must
   come before something in it; and up likewise.
3. The first two numbers change only at the seams of the move, so they are known at once; the
   distance is counted only where they are not worse.
4. An operation is late when something was done before on a larger unit that contains its own:
   the small part then hangs on the large one and no longer lies flat. A move that makes an
   operation late that was not late to begin with is not made.
5. The best move of a round is made; rounds end when none betters the judgement.

Cost: a round looks at most at three stretches per operation and n places for each.
"""

from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from itertools import pairwise
from typing import NamedTuple, TypeAlias

from seqplan.graph.bits import mask_of
from seqplan.graph.closure import Closure

Order: TypeAlias = tuple[int, ...]
Judgement: TypeAlias = tuple[int, int, int]
"""Changes of unit, entries torn apart, distance from the written places."""


@dataclass(frozen=True, slots=True)
class Sheet:
    """What a booklet order is judged by, per index.

    Parameters
    ----------
    units
        The pieces in hand.
    entries
        The entry of the document.
    stays
        ``stays[a][b]``: going on from a to b is no change of unit.
    smaller, larger
        For every operation the set of those whose unit is a proper part of its own, and of those
        of whose unit its own is a proper part.
    """

    units: tuple[frozenset[str], ...]
    entries: tuple[str, ...]
    stays: tuple[tuple[bool, ...], ...]
    smaller: tuple[int, ...]
    larger: tuple[int, ...]

    @classmethod
    def of(cls, units: Sequence[frozenset[str]], entries: Sequence[str]) -> "Sheet":
        """Compare all units once."""
        return cls(
            units=tuple(units),
            entries=tuple(entries),
            stays=tuple(tuple(one <= other or other <= one for other in units) for one in units),
            smaller=tuple(
                mask_of(node for node, other in enumerate(units) if other < one) for one in units
            ),
            larger=tuple(
                mask_of(node for node, other in enumerate(units) if one < other) for one in units
            ),
        )

    def late(self, order: Sequence[int]) -> int:
        """Give the set of operations that come after something on a larger unit."""
        done = late = 0
        for node in order:
            if self.larger[node] & done:
                late |= 1 << node
            done |= 1 << node
        return late

    def joint(self, one: int | None, other: int | None) -> tuple[int, int]:
        """Judge two neighbours: a change of unit, a change of entry; nothing at the ends."""
        if one is None or other is None:
            return 0, 0
        return not self.stays[one][other], self.entries[one] != self.entries[other]

    def judge(self, order: Sequence[int]) -> Judgement:
        """Judge an order; an entry in k runs is torn k - 1 times."""
        joints = [self.joint(one, other) for one, other in pairwise(order)]
        torn = sum(entry for _, entry in joints) + bool(order) - len(set(self.entries))
        return sum(unit for unit, _ in joints), torn, distance(order)


def distance(order: Sequence[int]) -> int:
    """Add up how many places every operation stands from where it was written."""
    return sum(abs(place - node) for place, node in enumerate(order))


def improve(order: Order, closure: Closure, sheet: Sheet, late: int) -> Order:
    """Move stretches as long as the judgement gets better.

    Parameters
    ----------
    order
        An order that holds all arcs.
    closure
        The arcs.
    sheet
        What to judge by.
    late
        The operations that may be late.
    """
    while True:
        before = sheet.judge(order)
        best, least = order, before
        for move in _moves(order, closure, sheet):
            units, torn = move.change(order, sheet)
            change = (before[0] + units, before[1] + torn)
            if change > least[:2]:
                continue
            moved = move.apply(order)
            outcome = (*change, distance(moved))
            if outcome < least and not sheet.late(moved) & ~late:
                best, least = moved, outcome
        if best == order:
            return order
        order = best


class _Move(NamedTuple):
    """The stretch ``order[start:stop]`` goes before the operation now at ``target``."""

    start: int
    stop: int
    target: int

    def apply(self, order: Order) -> Order:
        start, stop, target = self.start, self.stop, self.target
        stretch = order[start:stop]
        if target > stop:
            return order[:start] + order[stop:target] + stretch + order[target:]
        return order[:target] + stretch + order[target:start] + order[stop:]

    def change(self, order: Order, sheet: Sheet) -> tuple[int, int]:
        """Tell by how much the changes of unit, and of entry, would rise."""
        first, last = order[self.start], order[self.stop - 1]
        behind, ahead = _at(order, self.start - 1), _at(order, self.stop)
        left, right = _at(order, self.target - 1), _at(order, self.target)
        joint = sheet.joint
        a, b, c = joint(behind, ahead), joint(left, first), joint(last, right)
        d, e, f = joint(behind, first), joint(last, ahead), joint(left, right)
        return a[0] + b[0] + c[0] - d[0] - e[0] - f[0], a[1] + b[1] + c[1] - d[1] - e[1] - f[1]


def _at(order: Order, place: int) -> int | None:
    return order[place] if 0 <= place < len(order) else None


def _moves(order: Order, closure: Closure, sheet: Sheet) -> Iterator[_Move]:
    """List the moves that break no arc."""
    for start, stop in _stretches(order, sheet):
        above = below = 0
        for node in order[start:stop]:
            above |= closure.ancestors[node]
            below |= closure.descendants[node]
        for target in range(stop, len(order)):
            if below >> order[target] & 1:
                break
            yield _Move(start, stop, target + 1)
        for target in range(start - 1, -1, -1):
            if above >> order[target] & 1:
                break
            yield _Move(start, stop, target)


def _stretches(order: Order, sheet: Sheet) -> list[tuple[int, int]]:
    """List single operations, runs of one entry and runs without a change of unit."""
    found = {(place, place + 1) for place in range(len(order))}
    for part in (0, 1):
        start = 0
        for place in range(1, len(order) + 1):
            if place == len(order) or sheet.joint(order[place - 1], order[place])[part]:
                found.add((start, place))
                start = place
    return sorted(found)
