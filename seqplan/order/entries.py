"""What one track still costs at least, whatever the order: a sum that falls as work is done.

1. For every operation and state, count how often a chain from the operation on has to enter the
   state at least. Two counts: with the state to be entered first, and with the state there
   already. What is left to do is closed under "comes after", so both counts belong to
   the operations and not to what is done, and the most over all operations left says how often the
   state is still to be entered.
2. A price for leaving and one for entering every state, together never more than the change costs,
   turn these numbers into a bound: what is left is a walk from the present state, and
   every state is left as often as it is entered, but for the first and the last.
3. Where a change costs what it leads to, the price of entering is that cost. Elsewhere the
   prices are those of the cheapest assignment of changes to as many exits and entries as
   there have to be (`assignment`).
4. Where a state serves a single operation, the number of entries is not only a bound, and a
   change that the arcs forbid is left out of the assignment. Where it serves several, more
   entries than counted may be cut out of a walk without making it dearer, if changes are priced
   by their cheapest way; two entries of the same state that meet thereby cost at least the
   cheapest way out of it and back.

Cost: a step per arc and state, and the assignment, which is cubic in the entries.
"""

from collections.abc import Sequence
from dataclasses import dataclass

from seqplan.graph.bits import bits
from seqplan.graph.closure import Closure
from seqplan.order.assignment import assign
from seqplan.order.changes import Costs, shortest

ANY = -1
"""The label of an operation that does not care."""


@dataclass(frozen=True, slots=True)
class Side:
    """A track in numbers.

    Parameters
    ----------
    labels
        For every operation the state it needs, or ``ANY``.
    costs
        From state to state.
    start
        The state before the first operation; ``len(costs)`` where there is none.
    """

    labels: tuple[int, ...]
    costs: Costs
    start: int


@dataclass(frozen=True, slots=True)
class Entries:
    """How often states have to be entered.

    Parameters
    ----------
    afresh
        ``afresh[s][t]``: the operations from which a chain enters state s at least t times, when
        it is not there to begin with.
    again
        The same, when it is there to begin with.
    """

    afresh: list[list[int]]
    again: list[list[int]]


def count_entries(closure: Closure, side: Side) -> Entries:
    """Count entries along chains, from every operation on."""
    size, kinds = len(side.labels), len(side.costs)
    rows: list[tuple[list[int], list[int]]] = [([], [])] * size
    everything = (1 << size) - 1
    entries = Entries([[everything] for _ in range(kinds)], [[everything] for _ in range(kinds)])
    for node in reversed(closure.sorted_indices()):
        afresh, again = [0] * kinds, [0] * kinds
        for after in bits(closure.successors[node]):
            afresh = list(map(max, afresh, rows[after][0]))
            again = list(map(max, again, rows[after][1]))
        own = side.labels[node]
        if own != ANY:
            again = [again[own] if kind == own else count for kind, count in enumerate(afresh)]
            afresh = again.copy()
            afresh[own] += 1
        rows[node] = afresh, again
        _note(entries.afresh, afresh, node)
        _note(entries.again, again, node)
    for levels in (entries.afresh, entries.again):
        for steps in levels:
            for level in range(len(steps) - 2, 0, -1):
                steps[level] |= steps[level + 1]
    return entries


def _note(levels: list[list[int]], counts: list[int], node: int) -> None:
    for steps, count in zip(levels, counts, strict=True):
        steps.extend([0] * (count + 1 - len(steps)))
        if count:
            steps[count] |= 1 << node


@dataclass(frozen=True, slots=True)
class Prices:
    """What leaving and entering a state costs at least.

    Parameters
    ----------
    leaving
        For every state, and for having none yet.
    entering
        For every state.
    last
        What is taken off because the last state is not left: no state's price of leaving is more.
    """

    leaving: list[int]
    entering: list[int]
    last: int


def find_prices(closure: Closure, side: Side, counts: Sequence[int]) -> Prices:
    """Price exits and entries.

    Parameters
    ----------
    closure
        The arcs.
    side
        The track.
    counts
        How often every state has to be entered in all.
    """
    kinds = range(len(side.costs))
    columns = [{side.costs[a][b] for a in kinds if a != b} for b in kinds]
    if all(len(column) <= 1 for column in columns):
        entering = [max(column, default=0) for column in columns]
        return Prices([0 for _ in kinds] + [-max(entering, default=0)], entering, 0)
    holders = [0] * (len(side.costs) + 1)
    for node, label in enumerate(side.labels):
        if label != ANY:
            holders[label] |= 1 << node
    if holders[side.start] or any(mask.bit_count() > 1 for mask in holders):
        return _of_several(side, counts)
    return _of_single(closure, side, holders)


def _of_single(closure: Closure, side: Side, holders: Sequence[int]) -> Prices:
    """Price a track on which no two operations need the same state."""
    kinds = [kind for kind, mask in enumerate(holders) if mask]
    caring = sum(holders)
    above, below = {side.start: 0}, {side.start: caring}
    for kind in kinds:
        node = holders[kind].bit_length() - 1
        above[kind] = closure.ancestors[node] & caring
        below[kind] = closure.descendants[node] & caring

    def cost(one: int, other: int) -> int | None:
        if one == other or above[one] & holders[other] or below[one] & above[other]:
            return None
        return 0 if one == len(side.costs) else side.costs[one][other]

    exits = [*kinds, side.start]
    rows = [[*(cost(one, other) for other in kinds), None if below[one] else 0] for one in exits]
    return _prices(len(side.costs), exits, kinds, rows)


def _of_several(side: Side, counts: Sequence[int]) -> Prices:
    """Price a track on which operations share states."""
    direct = shortest(side.costs)
    none = len(direct)
    kinds = [kind for kind, count in enumerate(counts) for _ in range(count)]

    def cost(one: int, other: int) -> int:
        if one == none:
            return 0
        if one != other:
            return direct[one][other]
        vias = [kind for kind in range(none) if kind != one]
        return min((direct[one][via] + direct[via][one] for via in vias), default=0)

    exits = [*kinds, side.start]
    rows = [
        [*(cost(one, other) for other in kinds), None if one == none and kinds else 0]
        for one in exits
    ]
    return _prices(none, exits, kinds, rows)


def _prices(
    none: int, exits: Sequence[int], kinds: Sequence[int], rows: Sequence[Sequence[int | None]]
) -> Prices:
    """Read the prices off the cheapest assignment; of equal rows the dearest will do for all.

    What cannot be, None in the table, costs more than everything that can taken together.
    """
    never = 1 + sum(max((cost for cost in row if cost is not None), default=0) for row in rows)
    table = [[never if cost is None else cost for cost in row] for row in rows]
    _, row_price, column_price = assign(table)
    leaving: dict[int, int] = {}
    entering: dict[int, int] = {}
    for kind, price in zip(exits, row_price, strict=True):
        leaving[kind] = max(price, leaving.get(kind, price))
    for kind, price in zip(kinds, column_price, strict=False):
        entering[kind] = max(price, entering.get(kind, price))
    return Prices(
        [leaving.get(kind, 0) for kind in range(none + 1)],
        [entering.get(kind, 0) for kind in range(none)],
        -column_price[-1],
    )
