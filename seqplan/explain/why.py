"""Why an operation stands where it stands, and what lies between two operations."""

from collections import deque
from collections.abc import Callable, Iterable, Mapping
from dataclasses import dataclass

from seqplan.base.ids import OpId
from seqplan.graph.precedence import Precedence
from seqplan.graph.reason import Arc, Reason, by_arc
from seqplan.recipes.construction import Construction


@dataclass(frozen=True, slots=True)
class Grounds:
    """One operation before another, with every reason that says so, the strongest first."""

    arc: Arc
    reasons: tuple[Reason, ...]


@dataclass(frozen=True, slots=True)
class Place:
    """What lies before and after an operation or entry.

    Parameters
    ----------
    name
        What was asked for.
    before, after
        What comes directly before and after it, with reasons.
    long_before, long_after
        What else comes before and after it, by way of those.
    choices
        Either-ors that it takes part in and that plain reasons leave open.
    """

    name: str
    before: tuple[Grounds, ...]
    after: tuple[Grounds, ...]
    long_before: tuple[OpId, ...]
    long_after: tuple[OpId, ...]
    choices: tuple[Reason, ...]


@dataclass(frozen=True, slots=True)
class Between:
    """What binds two operations or entries.

    Parameters
    ----------
    first, second
        In the order in which they have to stand; as asked for where they are free.
    chain
        The shortest chain of reasons from the first to the second; empty where they are free.
    choices
        Either-ors that speak of both: they are free only within these.
    """

    first: str
    second: str
    chain: tuple[Grounds, ...]
    choices: tuple[Reason, ...]

    @property
    def is_free(self) -> bool:
        """Whether no chain of reasons binds the two."""
        return not self.chain


class Explainer:
    """Answers about one garment.

    Parameters
    ----------
    c
        The garment.
    reasons
        The reasons that bind; they must admit an order.
    """

    def __init__(self, c: Construction, reasons: Iterable[Reason]) -> None:
        self._c = c
        held = tuple(reasons)
        self._grounds = by_arc(reason for reason in held if not reason.is_either_or)
        self._precedence = Precedence.of(c.ids, self._grounds)
        self._choices = tuple(
            reason for reason in held if reason.is_either_or and not self._precedence.grants(reason)
        )
        self._reduced = self._precedence.transitive_reduction()
        self._leaving: dict[OpId, list[Arc]] = {}
        for arc in self._grounds:
            self._leaving.setdefault(arc.before, []).append(arc)

    def place(self, name: str) -> Place:
        """Tell what comes before and after an operation, or a whole entry.

        Raises
        ------
        KeyError
            When the garment has no such operation or entry.
        """
        ops = self._ops(name)
        before = [arc for arc in self._reduced if arc.after in ops and arc.before not in ops]
        after = [arc for arc in self._reduced if arc.before in ops and arc.after not in ops]
        near = ops | {arc.before for arc in before} | {arc.after for arc in after}
        return Place(
            name=name,
            before=self._in_order(before),
            after=self._in_order(after),
            long_before=self._far(ops, near, self._precedence.ancestors),
            long_after=self._far(ops, near, self._precedence.descendants),
            choices=tuple(r for r in self._choices if r.operations & ops),
        )

    def between(self, one: str, other: str) -> Between:
        """Tell the chain of reasons between two operations or entries.

        Raises
        ------
        KeyError
            When the garment has no such operation or entry.
        """
        a, b = self._ops(one), self._ops(other)
        choices = tuple(r for r in self._choices if r.operations & a and r.operations & b)
        forward, backward = self._chain(a, b), self._chain(b, a)
        if backward and not forward:
            return Between(other, one, backward, choices)
        return Between(one, other, forward, choices)

    def names(self) -> tuple[str, ...]:
        """Every name that can be asked for."""
        return tuple(dict.fromkeys((*self._c.garment.entry, *self._c.ids)))

    def _ops(self, name: str) -> frozenset[OpId]:
        ops = {op.id for op in self._c.operations if op.entry == name}
        if not ops and OpId(name) in self._c.op:
            ops = {OpId(name)}
        if not ops:
            raise KeyError(name)
        return frozenset(ops)

    def _in_order(self, arcs: Iterable[Arc]) -> tuple[Grounds, ...]:
        place = {id_: i for i, id_ in enumerate(self._c.ids)}
        ordered = sorted(arcs, key=lambda arc: (place[arc.before], place[arc.after]))
        return tuple(Grounds(arc, self._grounds[arc]) for arc in ordered)

    def _far(
        self,
        ops: frozenset[OpId],
        near: frozenset[OpId],
        reach: Callable[[OpId], frozenset[OpId]],
    ) -> tuple[OpId, ...]:
        found = frozenset[OpId]().union(*(reach(op) for op in ops)) - near
        return tuple(id_ for id_ in self._c.ids if id_ in found)

    def _chain(self, start: frozenset[OpId], goal: frozenset[OpId]) -> tuple[Grounds, ...]:
        """Find the shortest chain by breadth-first search over all plain reasons."""
        if start & goal:
            return ()
        came: dict[OpId, Arc | None] = dict.fromkeys(sorted(start))
        waiting = deque(sorted(start))
        while waiting:
            here = waiting.popleft()
            if here in goal:
                return self._trace(came, here)
            for arc in self._leaving.get(here, ()):
                if arc.after not in came:
                    came[arc.after] = arc
                    waiting.append(arc.after)
        return ()

    def _trace(self, came: Mapping[OpId, Arc | None], end: OpId) -> tuple[Grounds, ...]:
        links: list[Grounds] = []
        while (arc := came[end]) is not None:
            links.append(Grounds(arc, self._grounds[arc]))
            end = arc.before
        return tuple(reversed(links))
