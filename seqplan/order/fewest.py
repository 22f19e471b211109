"""The order with the cheapest, or the fewest, changes of set-up, with proof.

What a change costs is said in `changes`. The search under plain arcs is in `cheapest`, or in
`visits` where changes are only counted; the one over either-ors in `branch`.
"""

from collections.abc import Hashable, Mapping, Sequence

from seqplan.base.ids import OpId
from seqplan.graph.choices import Problem
from seqplan.graph.reason import Reason
from seqplan.order.branch import InnerSearch, branch_and_bound
from seqplan.order.changes import Changes
from seqplan.order.cheapest import CheapestSearch
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
    return cheapest_order(
        operations, reasons, Changes.counted(setup_of), limit=limit, observer=observer
    )


def cheapest_order(
    operations: Sequence[OpId],
    reasons: Sequence[Reason],
    changes: Changes,
    *,
    limit: Limit = no_limit,
    observer: Observer | None = None,
) -> SearchResult:
    """Find an order whose changes of set-up cost least.

    Parameters
    ----------
    operations
        Every operation once, in the author's order; it breaks ties, and what is done between two
        changes keeps it as far as the arcs allow.
    reasons
        All that must hold, either-ors included.
    changes
        What changes cost.
    limit
        Says when to stop; the best order so far is then returned with its gap.
    observer
        Told what the search does.

    Returns
    -------
    SearchResult
        Its cost is in the unit of the changes.

    Raises
    ------
    UnknownOperationError
        A reason names an operation that is not among ``operations``.
    """
    watcher = Observer() if observer is None else observer
    meter = Meter(limit, watcher)
    outcome = branch_and_bound(
        Problem.of(operations, reasons), _search(operations, changes), meter, watcher
    )
    order = outcome.order
    return SearchResult(
        order=None if order is None else tuple(operations[node] for node in order),
        cost=outcome.cost,
        lower_bound=outcome.lower,
        proof=outcome.proof,
        states=meter.states,
    )


def _search(operations: Sequence[OpId], changes: Changes) -> InnerSearch:
    """Choose the search: counting visits is the quicker one, where it will do."""
    if changes.are_counted:
        track = changes.tracks[0]
        needs = [track.needs.get(each) for each in operations]
        if None not in needs:
            return VisitSearch([track.number[need] for need in needs])
    return CheapestSearch(operations, changes)
