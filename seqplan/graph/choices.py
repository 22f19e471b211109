"""Reasons made ready for search: the arcs that bind, and the choices that are left.

1. Reasons with one alternative give fixed arcs; the others become choices, each a list of
   alternatives, each a tuple of index pairs. Choices that offer the same are merged.
2. A `Decision` is a closure plus the alternatives of every open choice that are still alive.
3. Settling repeats until nothing changes: an alternative that would close a cycle is dead; a
   choice with none left fails; with one left it is forced; arcs that all alternatives left have
   in common are added; a choice with an alternative already implied is satisfied.
4. Choices are sorted, so the order in which reasons are given does not matter.

Cost: one round of settling looks at every arc of every open choice once.
"""

from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass
from functools import cached_property
from typing import TypeAlias

from seqplan.base.ids import OpId
from seqplan.graph.closure import Closure, Pair, close
from seqplan.graph.precedence import UnknownOperationError, index_operations
from seqplan.graph.reason import Arc, Reason

Bundle: TypeAlias = tuple[Pair, ...]
"""One alternative: arcs that hold together."""


@dataclass(frozen=True, slots=True)
class Choice:
    """Alternatives of which one must hold.

    Parameters
    ----------
    alternatives
        At least two bundles of index pairs, in the order of the reason.
    places
        Which of the reasons given say so; several when they say the same.
    """

    alternatives: tuple[Bundle, ...]
    places: tuple[int, ...]

    def held(self, position: Sequence[int]) -> list[int]:
        """Tell which alternatives hold when operation ``i`` stands at ``position[i]``."""
        return [
            index
            for index, bundle in enumerate(self.alternatives)
            if all(position[before] < position[after] for before, after in bundle)
        ]


@dataclass(frozen=True)
class Problem:
    """Operations and all reasons, as indices.

    Parameters
    ----------
    operations
        Every operation once, in the author's order.
    fixed
        The arcs of the reasons that leave no choice, sorted.
    choices
        The either-ors, sorted by what they offer.
    """

    operations: tuple[OpId, ...]
    fixed: tuple[Pair, ...]
    choices: tuple[Choice, ...]

    @classmethod
    def of(cls, operations: Sequence[OpId], reasons: Sequence[Reason]) -> "Problem":
        """Translate reasons into indices.

        Raises
        ------
        UnknownOperationError
            A reason names an operation that is not among ``operations``.
        ValueError
            An operation stands twice.
        """
        index = index_operations(operations)
        fixed: set[Pair] = set()
        offers: dict[tuple[Bundle, ...], list[int]] = {}
        for place, reason in enumerate(reasons):
            bundles = tuple(_pairs(bundle, index) for bundle in reason.alternatives)
            if reason.is_either_or:
                offers.setdefault(bundles, []).append(place)
            else:
                fixed.update(bundles[0])
        choices = tuple(Choice(bundles, tuple(offers[bundles])) for bundles in sorted(offers))
        return cls(tuple(operations), tuple(sorted(fixed)), choices)

    @cached_property
    def start(self) -> "Decision | None":
        """What holds before anything is decided; None when that is already impossible."""
        closure = close(len(self.operations), self.fixed)
        if closure is None:
            return None
        alive = {
            number: tuple(range(len(choice.alternatives)))
            for number, choice in enumerate(self.choices)
        }
        decision = Decision(self, closure, alive, {})
        return decision if decision.settle() else None


class Decision:
    """Some choices decided, the others open with what is left of them.

    Attributes
    ----------
    problem
        The reasons.
    closure
        Every arc settled so far.
    alive
        For every open choice, by its number, the alternatives that are not dead: at least two.
    chosen
        For every other choice the alternative that holds.
    """

    __slots__ = ("alive", "chosen", "closure", "problem")

    def __init__(
        self,
        problem: Problem,
        closure: Closure,
        alive: dict[int, tuple[int, ...]],
        chosen: dict[int, int],
    ) -> None:
        self.problem = problem
        self.closure = closure
        self.alive = alive
        self.chosen = chosen

    def decide(self, number: int, alternative: int) -> "Decision | None":
        """Decide one choice and settle what follows; None when that is impossible.

        Alternatives of a single arc that stand before this one in the list of those alive are
        taken to be broken: their arc is turned round. So the decisions for one choice share no
        order.
        """
        alternatives = self.problem.choices[number].alternatives
        closure = self.closure.copy()
        if not closure.add_all(alternatives[alternative]):
            return None
        for other in self.alive[number][: self.alive[number].index(alternative)]:
            if len(alternatives[other]) == 1:
                before, after = alternatives[other][0]
                if not closure.add(after, before):
                    return None
        child = Decision(self.problem, closure, self.alive.copy(), self.chosen.copy())
        del child.alive[number]
        child.chosen[number] = alternative
        return child if child.settle() else None

    def children(self, number: int, position: Sequence[int]) -> Iterator["Decision"]:
        """Decide one choice in every way, what holds in these positions first."""
        held = set(self.problem.choices[number].held(position))
        for alternative in sorted(self.alive[number], key=lambda each: (each not in held, each)):
            child = self.decide(number, alternative)
            if child is not None:
                yield child

    def broken(self, position: Sequence[int]) -> list[int]:
        """List the open choices of which no alternative holds in these positions."""
        choices = self.problem.choices
        return [number for number in self.alive if not choices[number].held(position)]

    def settle(self) -> bool:
        """Follow up every consequence; False when a choice has no alternative left."""
        moved = True
        while moved:
            moved = False
            for number in list(self.alive):
                outcome = self._settle_choice(number)
                if outcome is None:
                    return False
                moved |= outcome
        return True

    def _settle_choice(self, number: int) -> bool | None:
        """Settle one choice: whether an arc was added, None on failure."""
        alternatives = self.problem.choices[number].alternatives
        left = []
        for each in self.alive[number]:
            if self.closure.has_all(alternatives[each]):
                self._close(number, each)
                return False
            if not self.closure.refuses(alternatives[each]):
                left.append(each)
        if not left:
            return None
        if len(left) == 1:
            self._close(number, left[0])
            return True if self.closure.add_all(alternatives[left[0]]) else None
        self.alive[number] = tuple(left)
        shared = set(alternatives[left[0]]).intersection(*(alternatives[each] for each in left))
        news = sorted(pair for pair in shared if not self.closure.has(*pair))
        if not news:
            return False
        return True if self.closure.add_all(news) else None

    def _close(self, number: int, alternative: int) -> None:
        del self.alive[number]
        self.chosen[number] = alternative


def _pairs(bundle: tuple[Arc, ...], index: Mapping[OpId, int]) -> Bundle:
    """Translate a bundle, sorted and without repeats."""
    for arc in bundle:
        for operation in (arc.before, arc.after):
            if operation not in index:
                raise UnknownOperationError(operation)
    return tuple(sorted({(index[arc.before], index[arc.after]) for arc in bundle}))
