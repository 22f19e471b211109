"""What a search found, and what is known about it."""

from dataclasses import dataclass
from enum import Enum

from seqplan.base.ids import OpId


class Proof(Enum):
    """What is known about an answer."""

    OPTIMAL = "optimal"
    """No valid order costs less."""
    FEASIBLE = "feasible"
    """The order is valid; whether a better one exists was not settled."""
    INFEASIBLE = "infeasible"
    """The reasons admit no order."""
    UNKNOWN = "unknown"
    """The search was stopped before it had an order."""


@dataclass(frozen=True, slots=True, kw_only=True)
class SearchResult:
    """The best order found, with what is known about its cost.

    Parameters
    ----------
    order
        Every operation once, holding every reason; None when there is none or none was found.
    cost
        What the order costs, in the unit of the search; None without an order.
    lower_bound
        No valid order costs less than this; 0 where nothing is known or no order exists.
    proof
        Whether the order is the best, merely valid, impossible, or not found.
    states
        How many states the search took up: its effort, the same on every machine.
    """

    order: tuple[OpId, ...] | None
    cost: int | None
    lower_bound: int
    proof: Proof
    states: int

    @property
    def gap(self) -> int | None:
        """How much a better order could save at most; 0 when proven, None without an order."""
        return None if self.cost is None else self.cost - self.lower_bound
