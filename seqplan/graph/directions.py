"""Whether either-ors can be settled so that an order exists, and how.

1. Settle what follows from the fixed arcs alone (`choices`).
2. Take an open choice: one that has failed often and has few alternatives left comes first, so
   that trouble is met near the top of the search.
3. Try its alternatives, those that hold in the preferred order first; settle what follows.
4. When an alternative leads nowhere, take the next; when none is left, go back one choice.

The search is complete: it ends with a way to settle everything, or with the proof that there is
none. Cost: exponential in the choices at worst, one settling per choice where nothing clashes.
"""

from collections.abc import Iterator, Mapping, Sequence

from seqplan.base.ids import OpId
from seqplan.graph.choices import Decision, Problem
from seqplan.graph.reason import Reason


class NoOrderError(ValueError):
    """An order was asked for where the reasons admit none."""

    def __init__(self) -> None:
        super().__init__("the reasons admit no order")


def find_directions(
    operations: Sequence[OpId],
    reasons: Sequence[Reason],
    *,
    preferred: Mapping[OpId, int] | None = None,
) -> tuple[int, ...] | None:
    """Choose an alternative of every reason so that all their arcs admit an order.

    Parameters
    ----------
    operations
        Every operation once, in the author's order.
    reasons
        All that must hold.
    preferred
        The place of every operation in an order to stay near; alternatives that hold in it are
        tried first. The author's order without it.

    Returns
    -------
    tuple of int, or None
        For every reason, in the order given, the index of an alternative; 0 where there is
        no choice. None when the reasons admit no order.

    Raises
    ------
    UnknownOperationError
        A reason names an operation that is not among ``operations``.
    """
    problem = Problem.of(operations, reasons)
    position = list(range(len(operations)))
    if preferred is not None:
        position = [preferred[operation] for operation in operations]
    decision = None if problem.start is None else settle_all(problem.start, position)
    if decision is None:
        return None
    chosen = [0] * len(reasons)
    for number, alternative in decision.chosen.items():
        for place in problem.choices[number].places:
            chosen[place] = alternative
    return tuple(chosen)


def is_feasible(operations: Sequence[OpId], reasons: Sequence[Reason]) -> bool:
    """Whether any order holds all the reasons."""
    return find_directions(operations, reasons) is not None


def settle_all(start: Decision, position: Sequence[int]) -> Decision | None:
    """Decide every open choice, or show that it cannot be done.

    Parameters
    ----------
    start
        What is settled already.
    position
        The place of every index in the order to stay near.

    Returns
    -------
    Decision or None
        A decision without open choices; None when there is none.
    """
    if not start.alive:
        return start
    failures = [1] * len(start.problem.choices)
    stack = [_branch(start, position, failures)]
    while stack:
        number, children = stack[-1]
        child = next(children, None)
        if child is None:
            failures[number] += 1
            stack.pop()
        elif not child.alive:
            return child
        else:
            stack.append(_branch(child, position, failures))
    return None


def _branch(
    decision: Decision, position: Sequence[int], failures: Sequence[int]
) -> tuple[int, Iterator[Decision]]:
    """Pick the choice to decide next, and the ways to decide it."""
    number = min(
        decision.alive, key=lambda each: (len(decision.alive[each]) / failures[each], each)
    )
    return number, decision.children(number, position)
