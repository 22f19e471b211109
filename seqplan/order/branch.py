"""Branch and bound over either-ors, for any cost that can be minimised under plain arcs.

1. Solve with the arcs that are settled. Orders that must hold more cannot cost less, so the
   answer is a lower bound.
2. Does that order happen to hold an alternative of every either-or? Then it is the best there is
   under these arcs.
3. Otherwise split on an either-or that it breaks, one case per alternative, each with everything
   that follows from it; take up the case with the least bound next, of equals the most settled.
4. At every case settle the rest so that an order exists, near the order found and near the
   author's, and solve: a valid order, hence an upper bound. If nothing can be settled, the case
   holds no order at all.
5. A quick valid order stands before all this, so that a search that is stopped has an answer.
6. Stop when no case is left whose bound is below the best order. A search that is stopped earlier
   looks for one better order with bounded effort.

Cost: one inner search per case and per way of settling the rest; the number of cases is
exponential in the either-ors at worst, and small when either-ors are correlated.
"""

from collections.abc import Sequence
from dataclasses import dataclass
from heapq import heappop, heappush
from typing import Protocol

from seqplan.graph.choices import Decision, Problem
from seqplan.graph.closure import Closure
from seqplan.graph.directions import settle_all
from seqplan.order.limits import Meter
from seqplan.order.observer import Observer
from seqplan.order.result import Proof


@dataclass(frozen=True, slots=True)
class Inner:
    """What a search under plain arcs found.

    Parameters
    ----------
    lower
        No order under these arcs costs less.
    order
        The best order as indices, costing ``lower``; None when the search was stopped, or when
        ``lower`` has reached the ceiling it was given.
    """

    lower: int
    order: tuple[int, ...] | None


class InnerSearch(Protocol):
    """Minimises a cost under plain arcs."""

    def bound(self, closure: Closure) -> int:
        """Give a lower bound quickly."""
        ...

    def quick(self, closure: Closure) -> tuple[int, tuple[int, ...]]:
        """Give the cost of a valid order, and the order, without search."""
        ...

    def thorough(self, closure: Closure) -> tuple[int, tuple[int, ...]]:
        """Give a better valid order, with more effort but within bounds, if there is a way."""
        ...

    def solve(self, closure: Closure, ceiling: int, meter: Meter) -> Inner:
        """Find the best order, unless none costs less than ``ceiling``."""
        ...


@dataclass(frozen=True, slots=True)
class Outcome:
    """The best order over all either-ors.

    Parameters
    ----------
    order
        As indices; None when there is none.
    cost
        Of the order; None without one.
    lower
        No valid order costs less.
    proof
        What is known.
    """

    order: tuple[int, ...] | None
    cost: int | None
    lower: int
    proof: Proof


def branch_and_bound(
    problem: Problem, inner: InnerSearch, meter: Meter, observer: Observer
) -> Outcome:
    """Minimise the cost of the inner search over all orders that hold every reason.

    Parameters
    ----------
    problem
        The operations and their reasons.
    inner
        Minimises under plain arcs.
    meter
        Counts states and says when to stop.
    observer
        Told of bounds, orders and cases.
    """
    start = problem.start
    if start is None:
        return Outcome(None, None, 0, Proof.INFEASIBLE)
    return _Search(inner, meter, observer, len(problem.operations)).run(start)


_LOOKED_AT = 8
"""How many either-ors are compared before a case is split on one of them."""

_UNBOUNDED = 1 << 60
"""More than any order costs."""


class _Search:
    """The state of one branch and bound."""

    def __init__(self, inner: InnerSearch, meter: Meter, observer: Observer, size: int) -> None:
        self.inner = inner
        self.meter = meter
        self.observer = observer
        self.written = range(size)
        self.order: tuple[int, ...] = ()
        self.cost = _UNBOUNDED
        self.raised = -1
        self.queue: list[tuple[int, int, int, Decision]] = []
        self.pushed = 0
        self.tried: set[tuple[int, ...]] = set()

    def run(self, start: Decision) -> Outcome:
        settled = settle_all(start, self.written)
        if settled is None:
            return Outcome(None, None, 0, Proof.INFEASIBLE)
        self.accept(*self.inner.quick(settled.closure))
        self.push(start, 0)
        while self.queue:
            bound, _, _, case = heappop(self.queue)
            if bound >= self.cost:
                break
            self.tell(bound)
            answer = self.inner.solve(case.closure, self.cost, self.meter)
            if answer.order is not None:
                self.take_up(case, answer.lower, answer.order)
            if self.meter.is_spent:
                self.push(case, max(bound, answer.lower))
                return self.stopped(settled)
        self.tell(self.cost)
        return Outcome(self.order, self.cost, self.cost, Proof.OPTIMAL)

    def take_up(self, case: Decision, lower: int, order: tuple[int, ...]) -> None:
        """Use the best order under the arcs of a case: accept it, or split the case."""
        position = _positions(order)
        broken = case.broken(position)
        if not broken:
            self.accept(lower, order)
            return
        if not self.settle(case, position) or not self.settle(case, self.written):
            return
        if lower >= self.cost:
            return
        children = self.split(case, broken, position, lower)
        self.observer.branched(len(children))
        for bound, child in children:
            self.push(child, bound)

    def split(
        self, case: Decision, broken: Sequence[int], position: Sequence[int], lower: int
    ) -> list[tuple[int, Decision]]:
        """Split on the broken either-or whose cases promise to cost most; drop hopeless cases."""
        best: list[tuple[int, Decision]] = []
        rank: tuple[int, ...] = ()
        for number in sorted(broken, key=lambda each: (len(case.alive[each]), each))[:_LOOKED_AT]:
            children = [
                (max(lower, self.inner.bound(child.closure)), child)
                for child in case.children(number, position)
            ]
            children = [each for each in children if each[0] < self.cost]
            if len(children) < 2:
                return children
            bounds = sorted(bound for bound, _ in children)
            if not rank or (-len(children), *bounds) > rank:
                best, rank = children, (-len(children), *bounds)
        return best

    def settle(self, case: Decision, position: Sequence[int]) -> bool:
        """Look for a valid order near the one given; False when the case holds none."""
        settled = settle_all(case, position)
        if settled is None:
            return False
        key = tuple(settled.closure.descendants)
        if key not in self.tried:
            self.tried.add(key)
            answer = self.inner.solve(settled.closure, self.cost, self.meter)
            if answer.order is not None:
                self.accept(answer.lower, answer.order)
        return True

    def accept(self, cost: int, order: tuple[int, ...]) -> None:
        """Take a valid order; it is better than the last, which was its ceiling."""
        self.cost, self.order = cost, order
        self.observer.found(order, cost)

    def push(self, case: Decision, bound: int) -> None:
        if bound < self.cost:
            self.pushed += 1
            heappush(self.queue, (bound, len(case.alive), self.pushed, case))

    def tell(self, bound: int) -> None:
        if bound > self.raised:
            self.raised = bound
            self.observer.raised(bound)

    def stopped(self, settled: Decision) -> Outcome:
        """Sum up when the limit has said stop; ``settled`` is a case without open either-ors."""
        cost, order = self.inner.thorough(settled.closure)
        if cost < self.cost:
            self.accept(cost, order)
        lower = min([self.cost, *(bound for bound, _, _, _ in self.queue)])
        proof = Proof.OPTIMAL if lower == self.cost else Proof.FEASIBLE
        return Outcome(self.order, self.cost, lower, proof)


def _positions(order: Sequence[int]) -> list[int]:
    position = [0] * len(order)
    for place, node in enumerate(order):
        position[node] = place
    return position
