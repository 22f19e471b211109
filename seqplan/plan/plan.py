"""Orders for a purpose, grouped into what a person reads: visits or units, and steps."""

from collections.abc import Callable, Hashable, Mapping, Sequence
from dataclasses import dataclass
from enum import Enum
from itertools import groupby

from seqplan.base.errors import SeqplanError
from seqplan.base.ids import EntryId, OpId, PieceId
from seqplan.graph.reason import Reason
from seqplan.model.operation import Operation, Setup
from seqplan.model.workroom import Workroom
from seqplan.order.booklet import booklet_order, unit_changes
from seqplan.order.changes import count_changes
from seqplan.order.limits import Limit, no_limit
from seqplan.order.observer import Observer
from seqplan.order.repair import fewest_moves
from seqplan.order.result import Proof
from seqplan.plan.binding import Binding, bind
from seqplan.plan.lessons import lesson
from seqplan.plan.setups import change_minutes, needs_of
from seqplan.plan.unit import Unit, find_units
from seqplan.plan.whole_entries import between_entries
from seqplan.recipes.construction import Construction
from seqplan.rehearse.walk import rehearse
from seqplan.words.say import say


class Purpose(Enum):
    """What an order is for."""

    BOOKLET = "booklet"
    BATCH = "batch"
    REPAIR = "repair"


@dataclass(frozen=True, slots=True)
class Step:
    """A numbered place in an order: operations of one entry that stand together.

    ``number`` counts from 1.
    """

    number: int
    entry: EntryId
    operations: tuple[Operation, ...]


@dataclass(frozen=True, slots=True)
class Group:
    """Steps under one heading: one visit to a set-up, or one unit in hand.

    ``setup`` is set in a batch order, ``unit`` in the others.
    """

    steps: tuple[Step, ...]
    unit: Unit = frozenset()
    setup: Setup | None = None


@dataclass(frozen=True, slots=True, kw_only=True)
class Plan:
    """An order for a purpose.

    Parameters
    ----------
    purpose
        What it is for.
    order
        Every operation once.
    groups
        The same, grouped and numbered.
    changes
        How often the set-up changes.
    change_minutes
        What these changes take, by the minutes of the stations.
    unit_changes
        How often another part is taken in hand.
    lower_bound
        No valid order has fewer changes of set-up; ``None`` where nobody asked.
    proof
        For a batch: whether the changes are proven fewest. For a repair: the moves.
    moved
        The entries that a repair moved; operations where an entry had to be torn apart.
    price
        Minutes of getting ready in the workroom that it was made for; ``None`` without one. The
        lower bound is then in minutes, too.
    given_up
        The shoulds that could not be had.
    waived
        The reasons that the author sets aside.
    """

    purpose: Purpose
    order: tuple[OpId, ...]
    groups: tuple[Group, ...]
    changes: int
    change_minutes: int
    unit_changes: int
    lower_bound: int | None = None
    proof: Proof = Proof.FEASIBLE
    moved: tuple[str, ...] = ()
    price: int | None = None
    given_up: tuple[Reason, ...] = ()
    waived: tuple[Reason, ...] = ()


_MOST_LESSONS = 500
"""Orders that may get stuck before the search is given up.

With no reason but these lessons the garments that come with the program take up to 45."""


class NoPlanError(SeqplanError):
    """The reasons, or the cloth itself, admit no order; ``binding`` says why."""

    is_finding = True

    def __init__(self, binding: Binding) -> None:
        super().__init__(binding)
        self.binding = binding

    def __str__(self) -> str:
        because = (
            reason.because for conflict in self.binding.conflicts[:1] for reason in conflict.reasons
        )
        return " ".join((say("plan-none"), *dict.fromkeys(because)))


class GaveUpError(NoPlanError):
    """So many orders got stuck, each in another way, that the search was given up."""

    def __init__(self, binding: Binding, because: str) -> None:
        super().__init__(binding)
        self.because = because

    def __str__(self) -> str:
        return " ".join((say("plan-gave-up", count=_MOST_LESSONS), self.because))


class Planner:
    """Finds orders for one garment.

    Parameters
    ----------
    c
        The garment.
    binding
        The reasons that bind.

    Raises
    ------
    NoPlanError
        When the reasons admit no order.
    """

    def __init__(self, c: Construction, binding: Binding) -> None:
        if binding.conflicts:
            raise NoPlanError(binding)
        self._c = c
        self._binding = binding
        self._held = binding.held
        self._given_up = binding.given_up
        self._units = find_units(c, binding.held)
        self._setups: Mapping[OpId, Hashable] = {op.id: op.setup for op in c.operations}

    @property
    def binding(self) -> Binding:
        """The reasons that its orders hold: those that bind, and what rehearsals have taught."""
        return self._binding._replace(held=self._held, given_up=self._given_up)

    def booklet(self) -> Plan:
        """Unit by unit, near the author's order."""
        entries = {op.id: op.entry for op in self._c.operations}
        units = {id_: frozenset[str](unit) for id_, unit in self._units.items()}

        def find() -> Plan:
            order = booklet_order(
                self._c.ids, self._held, units, entries, preferred=self._binding.preferred
            )
            return self._plan(Purpose.BOOKLET, order)

        return self._rehearsed(find)

    def regrouped(self, order: Sequence[OpId]) -> Plan:
        """Group another order as a booklet is; it is taken as it is."""
        return self._plan(Purpose.BOOKLET, order)

    def batch(
        self,
        limit: Limit = no_limit,
        observer: Observer | None = None,
        workroom: Workroom | None = None,
    ) -> Plan:
        """The fewest changes of set-up, proven unless the limit stops the search.

        With a workroom: the fewest minutes of getting its machines ready.

        Raises
        ------
        NoMachineError
            An operation needs a station that the workroom does not have.
        """
        if workroom is not None:
            return self._rehearsed(lambda: self._cheapest(workroom, limit, observer))

        # The searches for a batch are imported here: most orders are for a booklet.
        from seqplan.order.fewest import fewest_changes

        def find() -> Plan:
            result = fewest_changes(
                self._c.ids, self._held, self._setups, limit=limit, observer=observer
            )
            order = result.order
            if order is None:
                order = self.repair().order
            return self._plan(
                Purpose.BATCH, order, lower_bound=result.lower_bound, proof=result.proof
            )

        return self._rehearsed(find)

    def _cheapest(self, workroom: Workroom, limit: Limit, observer: Observer | None) -> Plan:
        from seqplan.order.fewest import cheapest_order
        from seqplan.order.workroom import changes_in

        room = workroom.filled(self._c.garment.stations)
        changes = changes_in(room, {op.id: needs_of(self._c, op) for op in self._c.operations})
        result = cheapest_order(self._c.ids, self._held, changes, limit=limit, observer=observer)
        order = self.repair().order if result.order is None else result.order
        return self._plan(
            Purpose.BATCH,
            order,
            lower_bound=result.lower_bound,
            proof=result.proof,
            price=changes.cost(order),
        )

    def repair(self, limit: Limit = no_limit) -> Plan:
        """The author's order with the fewest entries moved.

        Entries are kept whole, as their author would move them. Where no order keeps them whole,
        the fewest single operations are moved.
        """
        return self._rehearsed(lambda: self._repair(limit))

    def _rehearsed(self, find: Callable[[], Plan]) -> Plan:
        """Find an order, walk it, and learn from where it gets stuck, until it does not.

        What is learnt holds for later orders too.

        Raises
        ------
        NoPlanError
            When what is learnt leaves no order, or is still not enough after very many orders.
        """
        because = ""
        for _ in range(_MOST_LESSONS):
            plan = find()
            learnt = lesson(self._c, rehearse(self._c, plan.order))
            if learnt is None or learnt in self._held:
                return plan
            self._hold((*self._held, learnt))
            because = learnt.because
        raise GaveUpError(self._binding, because)

    def _hold(self, reasons: tuple[Reason, ...]) -> None:
        """Hold further reasons; good practice that cannot be had with them is given up."""
        binding = bind(self._c.ids, reasons)
        if binding.conflicts:
            raise NoPlanError(binding)
        self._held = binding.held
        self._given_up = (*self._given_up, *binding.given_up)

    def _repair(self, limit: Limit) -> Plan:
        entries = tuple(OpId(id_) for id_ in self._c.garment.entry)
        whole = between_entries(self._c, self._held)
        repair = None if whole is None else fewest_moves(entries, whole, limit=limit)
        if repair is not None and repair.order is not None:
            parts = self._c.of_entry
            order = tuple(op.id for id_ in repair.order for op in parts[EntryId(id_)])
        else:
            repair = fewest_moves(self._c.ids, self._held, limit=limit)
            if repair.order is None:
                raise NoPlanError(self._binding)
            order = repair.order
        return self._plan(Purpose.REPAIR, order, proof=repair.proof, moved=repair.moved)

    def _plan(
        self,
        purpose: Purpose,
        order: Sequence[OpId],
        *,
        lower_bound: int | None = None,
        proof: Proof = Proof.FEASIBLE,
        moved: tuple[str, ...] = (),
        price: int | None = None,
    ) -> Plan:
        ops = [self._c.op[id_] for id_ in order]
        steps = _steps(ops, split_visits=purpose is Purpose.BATCH)
        units = {id_: frozenset[str](unit) for id_, unit in self._units.items()}
        return Plan(
            purpose=purpose,
            order=tuple(order),
            groups=_visits(steps) if purpose is Purpose.BATCH else self._unit_groups(steps),
            changes=count_changes(order, self._setups),
            change_minutes=change_minutes(self._c, ops),
            unit_changes=unit_changes(order, units),
            lower_bound=lower_bound,
            proof=proof,
            moved=moved,
            price=price,
            given_up=self._given_up,
            waived=self._binding.waived,
        )

    def _unit_groups(self, steps: list[Step]) -> tuple[Group, ...]:
        """Group steps by the unit in hand; work on a part of it stays under its heading."""
        groups: list[tuple[Unit, list[Step]]] = []
        for step in steps:
            unit = frozenset[PieceId]().union(*(self._units[op.id] for op in step.operations))
            if groups and unit <= groups[-1][0]:
                groups[-1][1].append(step)
            else:
                groups.append((unit, [step]))
        return tuple(Group(tuple(held), unit) for unit, held in groups)


def _steps(ops: Sequence[Operation], *, split_visits: bool) -> list[Step]:
    """Number the operations, those of one entry that stand together as one step."""

    def key(op: Operation) -> tuple[EntryId, Setup | None]:
        return op.entry, op.setup if split_visits else None

    stretches = [tuple(stretch) for _, stretch in groupby(ops, key)]
    return [Step(number, stretch[0].entry, stretch) for number, stretch in enumerate(stretches, 1)]


def _visits(steps: list[Step]) -> tuple[Group, ...]:
    """Group steps that are done at one set-up without leaving it."""
    visits = groupby(steps, lambda step: step.operations[0].setup)
    return tuple(Group(tuple(held), setup=setup) for setup, held in visits)
