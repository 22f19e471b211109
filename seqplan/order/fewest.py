"""The order with the fewest changes of set-up, with proof.

The search under plain arcs is in `visits`, the one over either-ors in `branch`.
"""

from collections.abc import Hashable, Mapping, Sequence
from itertools import pairwise

from seqplan.base.ids import OpId
from seqplan.graph.choices import Problem
from seqplan.graph.reason import Reason
from seqplan.order.branch import branch_and_bound
from seqplan.order.limits import Limit, Meter, no_limit
from seqplan.order.observer import Observer
from seqplan.order.result import SearchResult
from seqplan.order.visits import VisitSearch


def fewest_changes(
    operations: Sequence[OpId],
    reasons: Sequence[Reason],
    setup_of: Mapping[OpId, Hashable],
    *,
    limit: Limit = no_limit,
    observer: Observer | None = None,
) -> SearchResult:
    """Find an order that changes set-up as seldom as possible.

    Parameters
    ----------
    operations
        Every operation once, in the author's order; it breaks ties, and within one visit to a
        set-up it is kept as far as the arcs allow.
    reasons
        All that must hold, either-ors included.
    setup_of
        The set-up of every operation; equal values are one set-up.
    limit
        Says when to stop; the best order so far is then returned with its gap.
    observer
        Told what the search does.

    Returns
    -------
    SearchResult
        Its cost counts changes; the first set-up is free.

    Raises
    ------
    UnknownOperationError
        A reason names an operation that is not among ``operations``.
    """
    watcher = Observer() if observer is None else observer
    meter = Meter(limit, watcher)
    numbers: dict[Hashable, int] = {}
    setups = [numbers.setdefault(setup_of[each], len(numbers)) for each in operations]
    outcome = branch_and_bound(Problem.of(operations, reasons), VisitSearch(setups), meter, watcher)
    order = outcome.order
    return SearchResult(
        order=None if order is None else tuple(operations[node] for node in order),
        cost=outcome.cost,
        lower_bound=outcome.lower,
        proof=outcome.proof,
        states=meter.states,
    )


def count_changes(order: Sequence[OpId], setup_of: Mapping[OpId, Hashable]) -> int:
    """Count the neighbours in an order that need different set-ups."""
    return sum(setup_of[one] != setup_of[other] for one, other in pairwise(order))
