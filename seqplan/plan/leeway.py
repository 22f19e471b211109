"""The leeway of an operation: the earliest and the latest place that it can have in a sound order.

1. Under plain arcs an operation can stand right behind all that must come before it, and right
   before all that must come after it; nothing else counts.
2. Either-ors are branched on (`branch`): the least number of operations before it, over all ways
   of settling them, gives the earliest place, the least number after it the latest.
3. The order found is rehearsed. Where it gets stuck, what that teaches (`lessons`) binds as well,
   for this and all later searches, and the search starts again.
4. The same with the musts alone tells how much of the leeway good practice takes.

Each operation is looked at by itself: places of two operations need not go together. Where an
either-or is open, a place between the earliest and the latest may be one that no order reaches.
Cost: two searches per operation and strength. A search is exponential in the either-ors at worst;
past `MOST_STATES` it is broken off, and its place is only a bound that no order goes beyond. So it
is where a rehearsal gets stuck and teaches nothing new.
"""

from collections.abc import Callable, Iterable, Sequence
from dataclasses import dataclass
from typing import Final, NamedTuple, TypeAlias

from seqplan.base.ids import EntryId, OpId
from seqplan.base.strength import Strength
from seqplan.graph.bits import bits
from seqplan.graph.choices import Problem
from seqplan.graph.closure import Closure
from seqplan.graph.directions import NoOrderError, is_feasible
from seqplan.graph.reason import Arc, Reason
from seqplan.order.branch import branch_and_bound
from seqplan.order.limits import Limit, Meter, StateLimit
from seqplan.order.observer import Observer
from seqplan.order.result import Proof
from seqplan.plan.binding import Binding, bind
from seqplan.plan.exact import ExactCost
from seqplan.plan.lessons import lesson
from seqplan.plan.whole_entries import between_entries
from seqplan.recipes.construction import Construction
from seqplan.rehearse.walk import rehearse

MOST_STATES: Final = 500
"""States that one search takes up before it is broken off."""


class Span(NamedTuple):
    """Places in an order, counted from 1.

    ``is_proven`` is false where a search was broken off, or nobody can work in the order found:
    then no order goes beyond these places, but they may not be reached either.
    """

    earliest: int
    latest: int
    is_proven: bool = True

    @property
    def slack(self) -> int:
        """By how many places it can be moved; 0 where it is fixed."""
        return self.latest - self.earliest


class Neighbour(NamedTuple):
    """What comes directly before or after, how strongly, and for which reasons.

    ``reasons`` is empty where only several reasons together say so.
    """

    name: OpId
    strength: Strength
    reasons: tuple[Reason, ...]


@dataclass(frozen=True, slots=True, kw_only=True)
class Leeway:
    """Where one operation can stand.

    Parameters
    ----------
    name
        The operation, or the entry.
    written
        The place that it has as written, from 1.
    span
        The places that it can have when all that binds is held.
    must
        The places that it can have when only the musts are held.
    before, after
        What comes directly before and after it. When one of ``after`` that must come after has
        been begun, it is too late for this one.
    choices
        Open either-ors that it takes part in.
    """

    name: OpId
    written: int
    span: Span
    must: Span
    before: tuple[Neighbour, ...]
    after: tuple[Neighbour, ...]
    choices: tuple[Reason, ...]

    @property
    def too_late(self) -> tuple[OpId, ...]:
        """What directly must come after it."""
        return tuple(each.name for each in self.after if each.strength is Strength.MUST)


@dataclass(frozen=True, slots=True, kw_only=True)
class Leeways:
    """The leeway of operations.

    Parameters
    ----------
    rows
        In the written order.
    places
        How many places there are.
    is_of_entries
        Whether they are entries, each kept together; else single operations.
    has_choices
        Whether either-ors are open.
    """

    rows: tuple[Leeway, ...]
    places: int
    is_of_entries: bool
    has_choices: bool


def find_leeways(
    c: Construction, binding: Binding, *, parts: bool = False, only: str | None = None
) -> Leeways:
    """Find where the entries of a garment can stand, each kept together, or its operations.

    Parameters
    ----------
    c
        The garment.
    binding
        The reasons that bind; they must admit an order.
    parts
        Whether to look at single operations. They are looked at, too, where no order keeps the
        entries together.
    only
        The only one to look at.

    Raises
    ------
    NoOrderError
        The reasons admit no order.
    """
    entries = tuple(OpId(id_) for id_ in c.garment.entry)
    whole = None if parts else between_entries(c, binding.held)
    if whole is not None and is_feasible(entries, whole):
        teach = _taught_of_entries(c)
        return leeways(entries, whole, is_of_entries=True, only=only, teach=teach)
    return leeways(c.ids, binding.held, only=only, teach=_taught(c))


Teach: TypeAlias = Callable[[Sequence[OpId]], tuple[bool, Reason | None]]
"""Whether an order can be worked in, and where not, what that teaches."""


def _taught(c: Construction) -> Teach:
    def teach(order: Sequence[OpId]) -> tuple[bool, Reason | None]:
        walk = rehearse(c, order)
        return walk.is_clean and not walk.debts, lesson(c, walk)

    return teach


def _taught_of_entries(c: Construction) -> Teach:
    """The same for entries kept together; a lesson within one entry teaches nothing."""
    single = _taught(c)

    def teach(order: Sequence[OpId]) -> tuple[bool, Reason | None]:
        parts = [op.id for entry in order for op in c.of_entry[EntryId(entry)]]
        is_clean, learnt = single(parts)
        restated = between_entries(c, [learnt]) if learnt else None
        return is_clean, restated[0] if restated else None

    return teach


def _nothing_to_teach(order: Sequence[OpId]) -> tuple[bool, Reason | None]:
    return True, None


def leeways(
    operations: Sequence[OpId],
    reasons: Sequence[Reason],
    *,
    is_of_entries: bool = False,
    only: str | None = None,
    limit: Limit | None = None,
    teach: Teach = _nothing_to_teach,
) -> Leeways:
    """Find where operations can stand.

    Parameters
    ----------
    operations
        Every operation once, in the written order.
    reasons
        All that binds: musts, and shoulds that can be had with them.
    is_of_entries
        Whether the operations are entries.
    only
        The only one to look at.
    limit
        When to break off one search; `MOST_STATES` without it.
    teach
        Tries the orders found; every order can be worked in without it.

    Raises
    ------
    NoOrderError
        The reasons admit no order.
    """
    musts = [reason for reason in reasons if reason.strength is Strength.MUST]
    stop = StateLimit(MOST_STATES) if limit is None else limit
    nodes = [node for node, name in enumerate(operations) if only in {None, name}]
    must = _Places(operations, musts, stop, teach)
    must_spans = [must.span(node) for node in nodes]
    held = _Places(operations, bind(operations, (*reasons, *must.learnt)).held, stop, teach)
    spans = [held.span(node) for node in nodes]
    for each in held.learnt:
        must.learn(each)
    open_ = tuple(r for r in held.reasons if r.is_either_or and not held.grants(r))
    saying = _by_any_arc(held.reasons)
    rows = (
        Leeway(
            name=operations[node],
            written=node + 1,
            span=span,
            must=must_span,
            before=_neighbours(node, held, must, saying, is_after=False),
            after=_neighbours(node, held, must, saying, is_after=True),
            choices=tuple(reason for reason in open_ if operations[node] in reason.operations),
        )
        for node, span, must_span in zip(nodes, spans, must_spans, strict=True)
    )
    return Leeways(
        rows=tuple(rows),
        places=len(operations),
        is_of_entries=is_of_entries,
        has_choices=bool(open_),
    )


class _Places:
    """What some reasons leave open, and what rehearsals teach on top of them."""

    def __init__(
        self, operations: Sequence[OpId], reasons: Sequence[Reason], limit: Limit, teach: Teach
    ) -> None:
        self.operations = operations
        self.limit = limit
        self.teach = teach
        self.learnt: list[Reason] = []
        self.clean: list[tuple[int, ...]] = []
        self._take(tuple(reasons))

    def _take(self, reasons: tuple[Reason, ...]) -> None:
        self.reasons = reasons
        self.problem = Problem.of(self.operations, reasons)
        if self.problem.start is None:
            raise NoOrderError
        self.closure = self.problem.start.closure

    def learn(self, reason: Reason) -> bool:
        """Bind one more reason; False where that is nothing new, or would admit no order."""
        more = (*self.reasons, reason)
        if reason in self.reasons or not is_feasible(self.operations, more):
            return False
        self.learnt.append(reason)
        self._take(more)
        return True

    def span(self, node: int) -> Span:
        before, is_first_proven = self._fewest(node, is_after=False)
        after, is_last_proven = self._fewest(node, is_after=True)
        size = len(self.operations)
        return Span(before + 1, size - after, is_first_proven and is_last_proven)

    def grants(self, reason: Reason) -> bool:
        index = {name: node for node, name in enumerate(self.operations)}
        return any(
            self.closure.has_all([(index[arc.before], index[arc.after]) for arc in bundle])
            for bundle in reason.alternatives
        )

    def direct(self, node: int, *, is_after: bool) -> list[int]:
        """What comes directly before or after, nothing else being between them."""
        far = self.closure.descendants if is_after else self.closure.ancestors
        beyond = 0
        for other in bits(far[node]):
            beyond |= far[other]
        return bits(far[node] & ~beyond)

    def _fewest(self, node: int, *, is_after: bool) -> tuple[int, bool]:
        search = _Fewest(node, is_after)
        while True:
            least = search.bound(self.closure)
            if any(search.cost(order) == least for order in self.clean):
                return least, True
            meter, watcher = Meter(self.limit, Observer()), Observer()
            outcome = branch_and_bound(self.problem, search, meter, watcher)
            if outcome.order is None:
                raise NoOrderError
            is_clean, taught = self.teach([self.operations[each] for each in outcome.order])
            if is_clean:
                self.clean.append(outcome.order)
            if is_clean or taught is None or not self.learn(taught):
                return outcome.lower, is_clean and outcome.proof is Proof.OPTIMAL


class _Fewest(ExactCost):
    """Minimises how many come before an operation, or after it: exact under plain arcs."""

    def __init__(self, node: int, is_after: bool) -> None:
        self.node = node
        self.is_after = is_after

    def cost(self, order: Sequence[int]) -> int:
        """Count them in an order."""
        place = order.index(self.node)
        return len(order) - 1 - place if self.is_after else place

    def bound(self, closure: Closure) -> int:
        """Count those that must."""
        return self._side(closure).bit_count()

    def quick(self, closure: Closure) -> tuple[int, tuple[int, ...]]:
        """Put it right behind them, or right before them."""
        side = self._side(closure)
        others = ((1 << len(closure.ancestors)) - 1) & ~side & ~(1 << self.node)
        first, last = (others, side) if self.is_after else (side, others)
        order = (*closure.walk(first), self.node, *closure.walk(last))
        return side.bit_count(), order

    def _side(self, closure: Closure) -> int:
        return (closure.descendants if self.is_after else closure.ancestors)[self.node]


def _neighbours(
    node: int,
    held: _Places,
    must: _Places,
    saying: dict[Arc, tuple[Reason, ...]],
    *,
    is_after: bool,
) -> tuple[Neighbour, ...]:
    """What directly must stand there, and what only should."""
    names = held.operations
    musts = must.direct(node, is_after=is_after)
    shoulds = held.direct(node, is_after=is_after)
    found = []
    for other in sorted({*musts, *shoulds}):
        before, after = (node, other) if is_after else (other, node)
        strength = Strength.MUST if other in musts else Strength.SHOULD
        reasons = saying.get(Arc(names[before], names[after]), ())
        found.append(Neighbour(names[other], strength, reasons))
    return tuple(found)


def _by_any_arc(reasons: Iterable[Reason]) -> dict[Arc, tuple[Reason, ...]]:
    """Gather reasons by their arcs, either-ors too: plain ones first, of these the strongest."""
    found: dict[Arc, list[Reason]] = {}
    for reason in reasons:
        for arc in dict.fromkeys(arc for bundle in reason.alternatives for arc in bundle):
            found.setdefault(arc, []).append(reason)
    return {
        arc: tuple(
            sorted(
                given, key=lambda r: (len(r.alternatives), -r.strength.weight, r.rule, r.because)
            )
        )
        for arc, given in found.items()
    }
