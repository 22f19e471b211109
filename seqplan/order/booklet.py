"""The order for a booklet: unit by unit, near the author's own.

1. Start from the author's order with the smallest repair (`repair`).
2. Settle every either-or by an alternative that holds in it, so that only arcs are left.
3. Walk the graph from scratch in a few fixed ways. Each takes, of what is available, what goes on
   with the entry in hand, then what needs no change of unit and begins no unit while a smaller
   part of it can still be worked on, then what the author wrote first. The ways differ in which of
   these counts most.
4. Judge orders by changes of unit, then by entries torn apart, then by the distance from the
   author's order. The best of the repaired order and the walks goes on.
5. Improve it: move a stretch - a single operation, the stretch of one entry, the stretch of one
   unit - to another place that the arcs allow, as long as the judgement gets better.

No order is taken that sews a part when it already hangs on a larger one, where the author sewed
it flat; nor one that goes against a preference to which the author's order keeps. Every order on
the way holds every reason. The author's order stays unless something is
better.
Cost: ``n^2`` for a walk over n operations; a round of moves looks at most at ``3 n^2`` places.
"""

from collections.abc import Callable, Mapping, Sequence
from itertools import pairwise
from typing import NamedTuple, TypeAlias

from seqplan.base.ids import OpId
from seqplan.graph.bits import bits
from seqplan.graph.choices import Problem
from seqplan.graph.closure import Closure
from seqplan.graph.directions import NoOrderError, settle_all
from seqplan.graph.reason import Reason
from seqplan.order.repair import fewest_moves
from seqplan.order.stretches import Sheet, improve

Key: TypeAlias = tuple[int, ...]
"""Compared to choose what comes next; the least wins."""


def booklet_order(
    operations: Sequence[OpId],
    reasons: Sequence[Reason],
    unit_of: Mapping[OpId, frozenset[str]],
    entry_of: Mapping[OpId, str],
    *,
    preferred: Sequence[Reason] = (),
) -> tuple[OpId, ...]:
    """Order operations unit by unit, near the author's order.

    Parameters
    ----------
    operations
        Every operation once, in the author's order.
    reasons
        All that must hold, either-ors included.
    unit_of
        The pieces in hand at every operation.
    entry_of
        The entry of the document that asks for it; operations of one entry stand together
        where that costs no change of unit.
    preferred
        What need not hold. As far as the author's order holds it, with the smallest repair, the
        booklet does not break it either.

    Returns
    -------
    tuple of OpId
        An order that holds every reason.

    Raises
    ------
    NoOrderError
        The reasons admit no order.
    UnknownOperationError
        A reason names an operation that is not among ``operations``.
    """
    index = {operation: node for node, operation in enumerate(operations)}
    repaired = fewest_moves(operations, reasons).order or ()
    first = tuple(index[operation] for operation in repaired)
    position = {operation: place for place, operation in enumerate(repaired)}
    kept = (reason for reason in preferred if repaired and reason.is_held(position))
    closure = _settled(operations, (*reasons, *kept), first)
    if closure is None:
        raise NoOrderError
    sheet = Sheet.of(
        [unit_of[each] for each in operations], [entry_of[each] for each in operations]
    )
    late = sheet.late(first)
    walks = (_Walk(closure, sheet, ranking).run() for ranking in _RANKINGS)
    flat = (order for order in walks if not sheet.late(order) & ~late)
    best = min((first, *flat), key=sheet.judge)
    return tuple(operations[node] for node in improve(best, closure, sheet, late))


def unit_changes(order: Sequence[OpId], unit_of: Mapping[OpId, frozenset[str]]) -> int:
    """Count the neighbours of which neither unit contains the other."""
    return sum(
        not (unit_of[one] <= unit_of[other] or unit_of[one] >= unit_of[other])
        for one, other in pairwise(order)
    )


def _settled(
    operations: Sequence[OpId], reasons: Sequence[Reason], order: Sequence[int]
) -> Closure | None:
    """Settle every either-or by an alternative that holds in the order; None without one."""
    position = [0] * len(operations)
    for place, node in enumerate(order):
        position[node] = place
    start = Problem.of(operations, reasons).start
    settled = None if start is None else settle_all(start, position)
    return None if settled is None else settled.closure


class _Step(NamedTuple):
    """What a walk knows of an operation that it might take next; 0 is better than 1.

    ``tears``: it leaves an entry that could be gone on with. ``changes``: it needs another unit.
    ``hurries``: it begins a unit while a smaller part of it can be worked on. ``place``: where
    the author wrote it.
    """

    tears: int
    changes: int
    hurries: int
    place: int


_RANKINGS: tuple[Callable[[_Step], Key], ...] = (
    lambda step: (step.tears, step.hurries, step.changes, step.place),
    lambda step: (step.tears, step.changes, step.hurries, step.place),
    lambda step: (step.changes, step.tears, step.hurries, step.place),
    lambda step: (step.tears, step.hurries, step.place),
)


class _Walk:
    """One walk over the graph, taking what ranks first."""

    def __init__(self, closure: Closure, sheet: Sheet, ranking: Callable[[_Step], Key]) -> None:
        self.closure = closure
        self.sheet = sheet
        self.ranking = ranking
        self.rest = (1 << len(closure.ancestors)) - 1
        self.last: int | None = None
        self.begun: set[frozenset[str]] = set()

    def run(self) -> tuple[int, ...]:
        order = []
        while self.rest:
            node = min(self.available(), key=lambda each: self.ranking(self.look_at(each)))
            order.append(node)
            self.rest ^= 1 << node
            self.last = node
            self.begun.add(self.sheet.units[node])
        return tuple(order)

    def available(self) -> list[int]:
        return [each for each in bits(self.rest) if not self.closure.ancestors[each] & self.rest]

    def look_at(self, node: int) -> _Step:
        entries, last = self.sheet.entries, self.last
        return _Step(
            tears=int(last is not None and entries[node] != entries[last]),
            changes=int(last is not None and not self.sheet.stays[last][node]),
            hurries=int(self.hurries(node)),
            place=node,
        )

    def hurries(self, node: int) -> bool:
        """Whether smaller parts of a unit not begun yet could be worked on before this."""
        if self.sheet.units[node] in self.begun:
            return False
        return bool(self.sheet.smaller[node] & self.rest & ~self.closure.descendants[node])
