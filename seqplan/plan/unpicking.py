"""The least to undo of what is done, so that some order begins with what stays.

1. An operation stays when all that must come before it was done before it and stays, too, and so
   does all that it goes through or over. One walk through what is done finds them.
2. Under plain arcs that leaves no choice. Either-ors are branched on (`branch`): of all ways of
   settling them, one counts in which what is undone weighs least.

Cost: one walk for every case; the cases are exponential in the either-ors at worst.
"""

from collections.abc import Iterable, Sequence
from dataclasses import dataclass

from seqplan.base.ids import OpId
from seqplan.graph.choices import Problem
from seqplan.graph.closure import Closure, close
from seqplan.graph.directions import NoOrderError
from seqplan.graph.reason import Arc, Reason
from seqplan.order.branch import branch_and_bound
from seqplan.order.limits import Limit, Meter, no_limit
from seqplan.order.observer import Observer
from seqplan.order.result import Proof
from seqplan.plan.exact import ExactCost


@dataclass(frozen=True, slots=True)
class Unpicking:
    """What stays of what is done, and what is undone.

    Parameters
    ----------
    kept, undone
        Operations in the order in which they were done.
    chosen
        For every reason the alternative that makes it so.
    proof
        Whether it is proven that no less can be undone.
    """

    kept: tuple[OpId, ...]
    undone: tuple[OpId, ...]
    chosen: tuple[int, ...]
    proof: Proof


def least_to_undo(
    operations: Sequence[OpId],
    reasons: Sequence[Reason],
    sequence: Sequence[OpId],
    weights: Sequence[int],
    *,
    built_on: Iterable[Arc] = (),
    limit: Limit = no_limit,
) -> Unpicking:
    """Find the least to undo of what is done, so that some order begins with what stays.

    Parameters
    ----------
    operations
        Every operation once; ties go by their order.
    reasons
        All that must hold.
    sequence
        What is done, in the order in which it was done.
    weights
        What it costs to undo each operation of ``sequence``; 0 for what is undone in any case.
    built_on
        Arcs that need not hold, but where the later operation was done after the earlier one, it
        is undone with it.
    limit
        When to break off the search.

    Raises
    ------
    NoOrderError
        The reasons admit no order.
    """
    index = {operation: node for node, operation in enumerate(operations)}
    below = [0] * len(operations)
    for before, after in built_on:
        below[index[after]] |= 1 << index[before]
    search = _Undoing([index[each] for each in sequence], weights, below)
    watcher = Observer()
    outcome = branch_and_bound(
        Problem.of(operations, reasons), search, Meter(limit, watcher), watcher
    )
    if outcome.order is None:
        raise NoOrderError
    position = {operations[node]: place for place, node in enumerate(outcome.order)}
    chosen = tuple(reason.held_alternatives(position)[0] for reason in reasons)
    arcs = (
        a for reason, which in zip(reasons, chosen, strict=True) for a in reason.alternatives[which]
    )
    closure = close(len(operations), [(index[arc.before], index[arc.after]) for arc in arcs])
    if closure is None:
        raise NoOrderError
    stays = set(search.kept(closure))
    return Unpicking(
        kept=tuple(each for each in sequence if index[each] in stays),
        undone=tuple(each for each in sequence if index[each] not in stays),
        chosen=chosen,
        proof=outcome.proof,
    )


class _Undoing(ExactCost):
    """Minimises the weight of what is undone: exact under plain arcs, without search."""

    def __init__(
        self, sequence: Sequence[int], weights: Sequence[int], below: Sequence[int]
    ) -> None:
        self.sequence = sequence
        self.weights = weights
        self.below = below

    def kept(self, closure: Closure) -> list[int]:
        """Those that stay: what must come before them, or lies below them, was done and stays."""
        stays = undone = 0
        kept = []
        for node, weight in zip(self.sequence, self.weights, strict=True):
            is_built_on = closure.ancestors[node] & ~stays or self.below[node] & undone
            if is_built_on or not weight:
                undone |= 1 << node
            else:
                stays |= 1 << node
                kept.append(node)
        return kept

    def bound(self, closure: Closure) -> int:
        """Add up what is undone."""
        kept = set(self.kept(closure))
        return sum(
            weight
            for node, weight in zip(self.sequence, self.weights, strict=True)
            if node not in kept
        )

    def quick(self, closure: Closure) -> tuple[int, tuple[int, ...]]:
        """Put what stays first, and everything else behind it."""
        kept = self.kept(closure)
        others = (1 << len(closure.ancestors)) - 1
        for node in kept:
            others ^= 1 << node
        return self.bound(closure), (*kept, *closure.walk(others))
