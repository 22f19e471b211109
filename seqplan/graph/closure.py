"""What must come before what, kept up to date while arcs are added one by one.

1. For every operation two sets are kept: all that must come before it, all that must come after.
2. A new arc a to b joins everything up to a with everything from b on: each of the first gets
   the descendants of b, each of the second the ancestors of a.
3. An arc whose end already comes before its start would close a cycle and is refused.

Cost: a new arc takes at most one set operation per operation, an arc already implied none.
"""

from collections.abc import Iterable, Sequence
from heapq import heapify, heappop, heappush
from typing import TypeAlias

from seqplan.graph.bits import bits

Pair: TypeAlias = tuple[int, int]
"""An arc as two indices, before and after."""


class Closure:
    """An acyclic relation over the indices ``0 .. n-1`` that grows by arcs.

    Parameters
    ----------
    size
        How many operations there are.

    Attributes
    ----------
    ancestors, descendants
        For every index the set of all that come before, or after, it.
    successors
        For every index the set of direct successors, as far as an arc was not implied when
        it was added. Their closure is ``descendants``.
    """

    __slots__ = ("ancestors", "descendants", "successors")

    def __init__(self, size: int) -> None:
        self.ancestors = [0] * size
        self.descendants = [0] * size
        self.successors = [0] * size

    def copy(self) -> "Closure":
        """Make a copy that grows on its own."""
        twin = Closure.__new__(Closure)
        twin.ancestors = self.ancestors.copy()
        twin.descendants = self.descendants.copy()
        twin.successors = self.successors.copy()
        return twin

    def add(self, before: int, after: int) -> bool:
        """Add one arc.

        Returns
        -------
        bool
            False, and nothing changed, when the arc would close a cycle.
        """
        if before == after or self.descendants[after] >> before & 1:
            return False
        if self.descendants[before] >> after & 1:
            return True
        self.successors[before] |= 1 << after
        above = self.ancestors[before] | 1 << before
        below = self.descendants[after] | 1 << after
        for node in bits(above):
            self.descendants[node] |= below
        for node in bits(below):
            self.ancestors[node] |= above
        return True

    def add_all(self, pairs: Iterable[Pair]) -> bool:
        """Add arcs until one would close a cycle; False if one did."""
        return all(self.add(before, after) for before, after in pairs)

    def has(self, before: int, after: int) -> bool:
        """Whether it is settled that ``before`` comes before ``after``."""
        return bool(self.descendants[before] >> after & 1)

    def has_all(self, pairs: Iterable[Pair]) -> bool:
        """Whether all these arcs are settled."""
        return all(self.descendants[before] >> after & 1 for before, after in pairs)

    def refuses(self, pairs: Iterable[Pair]) -> bool:
        """Whether one of these arcs, taken alone, would close a cycle."""
        return any(
            before == after or self.descendants[after] >> before & 1 for before, after in pairs
        )

    def sorted_indices(self) -> list[int]:
        """List all indices so that every arc points forwards; of equals the least first."""
        above = self.ancestors
        return sorted(range(len(above)), key=lambda node: above[node].bit_count())

    def walk(self, chosen: int) -> list[int]:
        """Sort the operations of a set by index as far as the arcs among them allow."""
        waiting = {node: (self.ancestors[node] & chosen).bit_count() for node in bits(chosen)}
        ready = [node for node, count in waiting.items() if not count]
        heapify(ready)
        walk = []
        while ready:
            node = heappop(ready)
            walk.append(node)
            for after in bits(self.descendants[node] & chosen):
                waiting[after] -= 1
                if not waiting[after]:
                    heappush(ready, after)
        return walk


def close(size: int, pairs: Sequence[Pair]) -> Closure | None:
    """Build the closure of many arcs at once.

    Returns
    -------
    Closure or None
        None when the arcs run in a circle.
    """
    closure = Closure(size)
    successors, waiting = closure.successors, [0] * size
    for before, after in pairs:
        if not successors[before] >> after & 1:
            successors[before] |= 1 << after
            waiting[after] += 1
    walk = [node for node in range(size) if not waiting[node]]
    for node in walk:
        above = closure.ancestors[node] | 1 << node
        for after in bits(successors[node]):
            closure.ancestors[after] |= above
            waiting[after] -= 1
            if not waiting[after]:
                walk.append(after)
    if len(walk) < size:
        return None
    for node in reversed(walk):
        for after in bits(successors[node]):
            closure.descendants[node] |= closure.descendants[after] | 1 << after
    return closure
