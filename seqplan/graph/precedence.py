"""A directed graph over operations: what is bound to come before what.

1. Every operation has an index, its place in the sequence given. A set of operations is one int.
2. A topological walk by smallest priority first either covers all operations or shows a cycle.
3. Along that walk the sets of ancestors and descendants are united, one ``or`` per arc.
4. An arc is redundant when its end is also reached through another successor of its start.

Cost: the walk takes ``(n + m) log n`` for n operations and m arcs; closure and reduction take
m set operations on n-bit ints.
"""

from collections.abc import Iterable, Iterator, Mapping, Sequence
from dataclasses import dataclass
from functools import cached_property
from heapq import heapify, heappop, heappush

from seqplan.base.ids import OpId
from seqplan.graph.bits import bits
from seqplan.graph.reason import Arc, Reason


class UnknownOperationError(ValueError):
    """An arc or a reason names an ``operation`` that is not in the sequence."""

    def __init__(self, operation: OpId) -> None:
        super().__init__(f"`{operation}` is not among the operations")
        self.operation = operation


class CyclicError(ValueError):
    """The arcs run in a circle where an order was asked for."""

    def __init__(self) -> None:
        super().__init__("the arcs run in a circle")


def index_operations(operations: Iterable[OpId]) -> dict[OpId, int]:
    """Give every operation its index, counting from 0.

    Raises
    ------
    ValueError
        An operation stands twice in the sequence.
    """
    index: dict[OpId, int] = {}
    for operation in operations:
        if operation in index:
            msg = f"`{operation}` stands twice among the operations"
            raise ValueError(msg)
        index[operation] = len(index)
    return index


def arcs_of(reasons: Iterable[Reason]) -> Iterator[Arc]:
    """List the arcs of the reasons that leave no choice."""
    for reason in reasons:
        if not reason.is_either_or:
            yield from reason.alternatives[0]


@dataclass(frozen=True)
class Precedence:
    """Operations and the arcs between them.

    Parameters
    ----------
    operations
        Every operation once; their order is the author's and breaks ties.
    arcs
        What comes before what. Cycles are allowed; most questions then raise `CyclicError`.

    Raises
    ------
    UnknownOperationError
        An arc names an operation that is not in ``operations``.
    ValueError
        An operation stands twice.
    """

    operations: tuple[OpId, ...]
    arcs: frozenset[Arc]

    def __post_init__(self) -> None:
        index = self.index
        for arc in sorted(self.arcs):
            for operation in (arc.before, arc.after):
                if operation not in index:
                    raise UnknownOperationError(operation)

    @classmethod
    def of(cls, operations: Iterable[OpId], arcs: Iterable[Arc]) -> "Precedence":
        """Build the graph from any sequence of operations and any collection of arcs."""
        return cls(tuple(operations), frozenset(arcs))

    @cached_property
    def index(self) -> Mapping[OpId, int]:
        """The place of every operation in ``operations``, from 0: its bit in every set."""
        return index_operations(self.operations)

    @cached_property
    def predecessor_masks(self) -> tuple[int, ...]:
        """For every index, the set of direct predecessors."""
        masks = [0] * len(self.operations)
        for arc in self.arcs:
            masks[self.index[arc.after]] |= 1 << self.index[arc.before]
        return tuple(masks)

    @cached_property
    def successor_masks(self) -> tuple[int, ...]:
        """For every index, the set of direct successors."""
        masks = [0] * len(self.operations)
        for arc in self.arcs:
            masks[self.index[arc.before]] |= 1 << self.index[arc.after]
        return tuple(masks)

    @cached_property
    def ancestor_masks(self) -> tuple[int, ...]:
        """For every index, the set of all operations that must come before it.

        Raises
        ------
        CyclicError
            The arcs run in a circle.
        """
        masks = [0] * len(self.operations)
        for node in self._sorted_indices:
            for before in bits(self.predecessor_masks[node]):
                masks[node] |= masks[before] | 1 << before
        return tuple(masks)

    @cached_property
    def descendant_masks(self) -> tuple[int, ...]:
        """For every index, the set of all operations that must come after it.

        Raises
        ------
        CyclicError
            The arcs run in a circle.
        """
        masks = [0] * len(self.operations)
        for node in reversed(self._sorted_indices):
            for after in bits(self.successor_masks[node]):
                masks[node] |= masks[after] | 1 << after
        return tuple(masks)

    def predecessors(self, operation: OpId) -> frozenset[OpId]:
        """Tell which operations have an arc to this one."""
        return self._names(self.predecessor_masks[self.index[operation]])

    def ancestors(self, operation: OpId) -> frozenset[OpId]:
        """Tell which operations must come before this one, directly or not."""
        return self._names(self.ancestor_masks[self.index[operation]])

    def descendants(self, operation: OpId) -> frozenset[OpId]:
        """Tell which operations must come after this one, directly or not."""
        return self._names(self.descendant_masks[self.index[operation]])

    def reaches(self, before: OpId, after: OpId) -> bool:
        """Whether a chain of arcs leads from ``before`` to ``after``; never to itself."""
        return bool(self.descendant_masks[self.index[before]] >> self.index[after] & 1)

    def grants(self, reason: Reason) -> bool:
        """Whether one alternative of a reason holds in every order that these arcs admit."""
        return any(
            all(self.reaches(arc.before, arc.after) for arc in bundle)
            for bundle in reason.alternatives
        )

    @cached_property
    def is_acyclic(self) -> bool:
        """Whether the arcs admit an order."""
        return len(self._walk(range(len(self.operations)))) == len(self.operations)

    def topological_order(self, priority: Mapping[OpId, int] | None = None) -> tuple[OpId, ...]:
        """Walk the graph so that every arc holds, taking the least priority that is free.

        Parameters
        ----------
        priority
            A number for every operation; the author's order without it. Equal numbers fall
            back on the author's order.

        Raises
        ------
        CyclicError
            The arcs run in a circle.
        """
        if priority is None:
            return tuple(self.operations[node] for node in self._sorted_indices)
        walk = self._walk([priority[operation] for operation in self.operations])
        if len(walk) < len(self.operations):
            raise CyclicError
        return tuple(self.operations[node] for node in walk)

    def transitive_reduction(self) -> frozenset[Arc]:
        """Leave out every arc that a longer chain already says.

        Raises
        ------
        CyclicError
            The arcs run in a circle.
        """
        below = self.descendant_masks
        kept = []
        for node, successors in enumerate(self.successor_masks):
            told = 0
            for after in bits(successors):
                told |= below[after]
            for after in bits(successors & ~told):
                kept.append(Arc(self.operations[node], self.operations[after]))
        return frozenset(kept)

    def longest_chain(self) -> tuple[OpId, ...]:
        """Find the most operations that stand one behind the other; of equals, the earliest.

        Raises
        ------
        CyclicError
            The arcs run in a circle.
        """
        length = [1] * len(self.operations)
        for node in reversed(self._sorted_indices):
            for after in bits(self.successor_masks[node]):
                length[node] = max(length[node], 1 + length[after])
        chain: list[OpId] = []
        candidates = list(range(len(self.operations)))
        while candidates:
            node = max(candidates, key=lambda each: (length[each], -each))
            chain.append(self.operations[node])
            candidates = bits(self.successor_masks[node])
        return tuple(chain)

    @cached_property
    def _sorted_indices(self) -> tuple[int, ...]:
        walk = self._walk(range(len(self.operations)))
        if len(walk) < len(self.operations):
            raise CyclicError
        return walk

    def _walk(self, priority: Sequence[int]) -> tuple[int, ...]:
        """Walk as far as the arcs allow; shorter than the sequence when there is a cycle."""
        waiting = [mask.bit_count() for mask in self.predecessor_masks]
        ready = [(priority[node], node) for node, count in enumerate(waiting) if not count]
        heapify(ready)
        walk = []
        while ready:
            _, node = heappop(ready)
            walk.append(node)
            for after in bits(self.successor_masks[node]):
                waiting[after] -= 1
                if not waiting[after]:
                    heappush(ready, (priority[after], after))
        return tuple(walk)

    def _names(self, mask: int) -> frozenset[OpId]:
        return frozenset(self.operations[node] for node in bits(mask))
