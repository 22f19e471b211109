"""The latest point at which a mistake in a step is caught, and what it costs after that.

1. The first later step of the order by which something has to be undone before the step can be
   done over again (`rescue`) makes it too late. Once it is too late it stays so, so the step is
   found by halving. It is asked first at the step that must come after, and at the one before.
2. Good practice comes earlier: it is broken once the first step is done that should come after.
3. What it costs is asked twice: when the step that makes it too late is done, and at the end.

Cost: three rescues for most entries, a handful for some.
"""

from bisect import bisect_left
from collections.abc import Sequence
from dataclasses import dataclass
from typing import Final, NamedTuple

from seqplan.base.ids import EntryId, OpId
from seqplan.base.strength import Strength
from seqplan.graph.bits import bits
from seqplan.graph.choices import Problem
from seqplan.graph.closure import Closure
from seqplan.graph.directions import NoOrderError
from seqplan.graph.reason import Reason
from seqplan.plan.binding import Binding
from seqplan.plan.plan import Plan, Step
from seqplan.plan.rescue import Standing, Undone, find_rescue
from seqplan.plan.stops import steps_of
from seqplan.plan.undoing import Undoing
from seqplan.recipes.construction import Construction


class Cost(NamedTuple):
    """What has to be undone so that a step can be done again.

    Parameters
    ----------
    undone
        What is undone, the last first.
    lost
        What of it cannot be undone: cloth is cut or glued.
    """

    undone: tuple[OpId, ...] = ()
    lost: tuple[OpId, ...] = ()


NO_COST: Final = Cost()


@dataclass(frozen=True, slots=True)
class Catch:
    """Until when a mistake in an entry is mended with nothing else undone.

    Parameters
    ----------
    entry
        The entry.
    better
        The number of the first step that good practice puts after it; ``None`` without one.
    too_late
        The number of the step with which it becomes too late; ``None`` where it never does.
    reason
        Why, where it becomes too late.
    then
        What it costs once that step is done.
    at_end
        What it costs when all is done.
    """

    entry: EntryId
    better: int | None = None
    too_late: int | None = None
    reason: Reason | None = None
    then: Cost = NO_COST
    at_end: Cost = NO_COST


def find_catches(c: Construction, binding: Binding, plan: Plan) -> dict[EntryId, Catch]:
    """Find the latest point for every entry of an order.

    Parameters
    ----------
    c
        The garment.
    binding
        The reasons that bind.
    plan
        The order.

    Raises
    ------
    NoOrderError
        The reasons admit no order.
    """
    finder = _Finder(c, binding, plan)
    return {entry: finder.catch(entry) for entry in dict.fromkeys(s.entry for s in finder.steps)}


class _Finder:
    def __init__(self, c: Construction, binding: Binding, plan: Plan) -> None:
        self._c = c
        self._binding = binding
        self._order = plan.order
        self._index = {id_: place for place, id_ in enumerate(c.ids)}
        self._closure = _closure(c, binding.held)
        musts = [reason for reason in binding.held if reason.strength is Strength.MUST]
        self._musts = _closure(c, musts)
        self.steps = steps_of(plan)

    def catch(self, entry: EntryId) -> Catch:
        """Find the latest point of one entry."""
        own = [op.id for op in self._c.of_entry[entry]]
        last = max(step.number for step in self.steps if step.entry == entry)
        later = [step for step in self.steps if step.number > last]
        better = self._first_after(own, later, self._closure)
        at_end = self._undone(own, len(self._order)) if later else ()
        if not at_end:
            return Catch(entry, better)
        found: dict[int, tuple[Undone, ...]] = {}

        def is_too_late(step: Step) -> bool:
            found[step.number] = self._at(own, step)
            return bool(found[step.number])

        # What is too late at the last step is too late at the end, which was asked already.
        low, high = 0, len(later) - 1
        # Mostly it is the first step that must come after, but work in hand may hinder earlier.
        guess = self._first_after(own, later, self._musts)
        numbers = [step.number for step in later]
        at = numbers.index(guess) if guess is not None else high
        for place in (at, at - 1):
            if low <= place < high:
                low, high = (low, place) if is_too_late(later[place]) else (place + 1, high)
        place = bisect_left(later, True, low, high, key=is_too_late)
        undone = found[later[place].number] if place < len(later) - 1 else at_end
        return Catch(
            entry,
            better,
            later[place].number,
            _why(undone, own),
            _cost(undone),
            _cost(at_end),
        )

    def _first_after(
        self, own: Sequence[OpId], later: Sequence[Step], closure: Closure
    ) -> int | None:
        """The first step of which a part comes after an entry."""
        below = (bits(closure.descendants[self._index[id_]]) for id_ in own)
        after = {self._c.ids[node] for nodes in below for node in nodes}
        found = (step.number for step in later if any(op.id in after for op in step.operations))
        return next(found, None)

    def _at(self, own: Sequence[OpId], step: Step) -> tuple[Undone, ...]:
        """What is undone for an entry's sake once a step is done."""
        return self._undone(own, self._order.index(step.operations[-1].id) + 1)

    def _undone(self, own: Sequence[OpId], until: int) -> tuple[Undone, ...]:
        """What else is undone: what was done wrong comes off in any case."""
        at = Standing(order=self._order, done=self._order[:until], wrong=own)
        undone = find_rescue(self._c, self._binding, at).undone
        return tuple(each for each in undone if each.op not in own)


def _closure(c: Construction, reasons: Sequence[Reason]) -> Closure:
    start = Problem.of(c.ids, reasons).start
    if start is None:
        raise NoOrderError
    return start.closure


def _why(undone: Sequence[Undone], own: Sequence[OpId]) -> Reason:
    """The reason that names the entry itself, where one does."""
    naming = (each.reason for each in undone if each.reason.operations & set(own))
    return next(naming, undone[-1].reason)


def _cost(undone: Sequence[Undone]) -> Cost:
    return Cost(
        tuple(each.op for each in undone),
        tuple(each.op for each in undone if each.how is Undoing.LOST),
    )
