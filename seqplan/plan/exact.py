"""Costs that plain arcs settle without search, made ready for the search over either-ors."""

from abc import ABC, abstractmethod

from seqplan.graph.closure import Closure
from seqplan.order.branch import Inner
from seqplan.order.limits import Meter


class ExactCost(ABC):
    """Minimises a cost under plain arcs, exactly and at once (`seqplan.order.branch`)."""

    @abstractmethod
    def bound(self, closure: Closure) -> int:
        """Give the least cost."""

    @abstractmethod
    def quick(self, closure: Closure) -> tuple[int, tuple[int, ...]]:
        """Give the least cost, and an order that has it."""

    def thorough(self, closure: Closure) -> tuple[int, tuple[int, ...]]:
        """Give the same: no effort finds a better one."""
        return self.quick(closure)

    def solve(self, closure: Closure, ceiling: int, meter: Meter) -> Inner:
        """Give the same, unless it costs ``ceiling`` or more."""
        lower = self.bound(closure)
        if lower >= ceiling or not meter.take_up():
            return Inner(lower, None)
        return Inner(*self.quick(closure))
