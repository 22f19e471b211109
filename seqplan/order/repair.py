"""The smallest repair of a written order: the fewest operations to move.

1. Under plain arcs the operations that may stay are a largest antichain (`antichain`); they keep
   their written order among themselves.
2. Every other operation goes into the gap between those that stay that is nearest to its
   written place and lies after all that must precede it and before all that must follow.
   Operations in one gap keep their written order as far as the arcs allow.
3. Either-ors are branched on (`branch`): the moves needed without them are a lower bound.

An order that holds every reason moves nothing and comes back as it is. Cost: a matching per
case.
"""

from bisect import bisect_right
from collections.abc import Sequence
from dataclasses import dataclass

from seqplan.base.ids import OpId
from seqplan.graph.bits import bits, mask_of
from seqplan.graph.choices import Problem
from seqplan.graph.closure import Closure
from seqplan.graph.reason import Reason
from seqplan.order.antichain import fewest_that_move, most_that_stay
from seqplan.order.branch import Inner, branch_and_bound
from seqplan.order.limits import Limit, Meter, no_limit
from seqplan.order.observer import Observer
from seqplan.order.result import Proof


@dataclass(frozen=True, slots=True)
class Repair:
    """A written order made valid.

    Parameters
    ----------
    order
        Every operation once, holding every reason; None when the reasons admit no order.
    moved
        The operations that left their place among the others, in the order they now stand in.
    kept
        All others, in their written order, which is also the order they now stand in.
    proof
        Optimal when no fewer moves would do.
    """

    order: tuple[OpId, ...] | None
    moved: tuple[OpId, ...]
    kept: tuple[OpId, ...]
    proof: Proof


def fewest_moves(
    operations: Sequence[OpId],
    reasons: Sequence[Reason],
    *,
    limit: Limit = no_limit,
    observer: Observer | None = None,
) -> Repair:
    """Keep the most operations in their written order and move the rest so that all holds.

    Of equally small repairs under plain arcs, the one is chosen in which what stays is written
    latest: of two operations that clash the one that stands too early moves down.

    Parameters
    ----------
    operations
        Every operation once, in the author's order.
    reasons
        All that must hold, either-ors included.
    limit
        Says when to stop; the best repair so far is then returned as merely feasible.
    observer
        Told what the search does; its costs count moves.

    Raises
    ------
    UnknownOperationError
        A reason names an operation that is not among ``operations``.
    """
    watcher = Observer() if observer is None else observer
    meter = Meter(limit, watcher)
    outcome = branch_and_bound(
        Problem.of(operations, reasons), MoveSearch(len(operations)), meter, watcher
    )
    if outcome.order is None:
        return Repair(None, (), (), outcome.proof)
    kept = set(_stayers(outcome.order))
    return Repair(
        order=tuple(operations[node] for node in outcome.order),
        moved=tuple(operations[node] for node in outcome.order if node not in kept),
        kept=tuple(operations[node] for node in sorted(kept)),
        proof=outcome.proof,
    )


class MoveSearch:
    """Minimises moves under plain arcs: exact, without search.

    Parameters
    ----------
    size
        How many operations there are; index ``i`` is written at place ``i``.
    """

    def __init__(self, size: int) -> None:
        self.size = size

    def bound(self, closure: Closure) -> int:
        """Count the moves that the arcs need."""
        return fewest_that_move(self._clashes(closure))

    def quick(self, closure: Closure) -> tuple[int, tuple[int, ...]]:
        """Make the smallest repair; it is quick enough."""
        stay = most_that_stay(self._clashes(closure))
        return self.size - len(stay), _rebuilt(closure, stay)

    def thorough(self, closure: Closure) -> tuple[int, tuple[int, ...]]:
        """Make the smallest repair; there is no better one under these arcs."""
        return self.quick(closure)

    def solve(self, closure: Closure, ceiling: int, meter: Meter) -> Inner:
        """Make the smallest repair, unless it takes ``ceiling`` moves or more."""
        lower = self.bound(closure)
        if lower >= ceiling or not meter.take_up():
            return Inner(lower, None)
        return Inner(*self.quick(closure))

    def _clashes(self, closure: Closure) -> list[int]:
        """For every operation, those written later that must come before it."""
        return [above >> node << node for node, above in enumerate(closure.ancestors)]


def _stayers(order: Sequence[int]) -> list[int]:
    """Tell which operations an order leaves in their written order: the most, and the latest."""
    clashes = [0] * len(order)
    seen = 0
    for node in order:
        clashes[node] = seen >> node << node
        seen |= 1 << node
    return most_that_stay(clashes)


def _rebuilt(closure: Closure, stay: Sequence[int]) -> tuple[int, ...]:
    """Put every operation that moves into the gap nearest to its written place.

    Gap g lies before the g-th operation that stays, counting from 0; the last one is at the end.
    """
    staying = mask_of(stay)
    gaps: list[list[int]] = [[] for _ in range(len(stay) + 1)]
    chosen: dict[int, int] = {}
    for node in closure.walk(~staying & ((1 << len(closure.ancestors)) - 1)):
        above, below = closure.ancestors[node] & staying, closure.descendants[node] & staying
        written = (staying & ((1 << node) - 1)).bit_count()
        least = bisect_right(stay, above.bit_length() - 1)
        least = max([least, *(chosen[each] for each in bits(closure.ancestors[node] & ~staying))])
        most = bisect_right(stay, (below & -below).bit_length() - 2) if below else len(stay)
        chosen[node] = min(max(written, least), most)
        gaps[chosen[node]].append(node)
    order = list(gaps[0])
    for node, gap in zip(stay, gaps[1:], strict=True):
        order.extend((node, *gap))
    return tuple(order)
