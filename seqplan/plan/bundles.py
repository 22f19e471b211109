"""What hangs together after so many operations, and on its way through the visits of a batch.

A bundle is a set of pieces that are carried as one: cut copies of one piece stay together, and so
does whatever has been sewn, held or laid on to one another.
"""

from collections.abc import Iterable, Sequence
from typing import Final, NamedTuple

from seqplan.base.ids import OpId
from seqplan.graph.precedence import Precedence, arcs_of
from seqplan.graph.reason import Reason
from seqplan.model.operation import Action, Operation
from seqplan.plan.plan import Group, Plan
from seqplan.plan.unit import Unit
from seqplan.recipes.construction import Construction

_JOINING: Final = frozenset(
    {
        Action.SEW,
        Action.BASTE,
        Action.HOLD,
        Action.SET_ON,
        Action.STITCH_ON,
        Action.SET_ZIP,
        Action.ATTACH,
        Action.TACK,
        Action.NEST,
    }
)
"""What makes one bundle of all pieces that it acts on."""


class Taken(NamedTuple):
    """A bundle that is taken to a visit; ``came`` is the visit it was last at, if any."""

    unit: Unit
    came: int | None


class Passed(NamedTuple):
    """A bundle after a visit; ``goes`` is the visit it is wanted at next, if any."""

    unit: Unit
    goes: int | None


class Visit(NamedTuple):
    """One visit to a station in one set-up.

    Parameters
    ----------
    number
        Its place among the visits, from 1.
    group
        What is done there.
    takes
        The bundles that are worked on, as they come.
    wants
        What must be done before, at another visit: only what nothing else in the list implies.
    passes
        The bundles as they leave.
    """

    number: int
    group: Group
    takes: tuple[Taken, ...]
    wants: tuple[OpId, ...]
    passes: tuple[Passed, ...]

    @property
    def operations(self) -> tuple[Operation, ...]:
        """All that is done there."""
        return tuple(op for step in self.group.steps for op in step.operations)


def bundles(c: Construction, done: Iterable[OpId]) -> tuple[Unit, ...]:
    """Part the pieces into what hangs together, in the order of the file.

    Parameters
    ----------
    c
        The garment.
    done
        The operations that are done.
    """
    found: list[Unit] = [Unit({piece.id}) for piece in c.garment.pieces]
    for id_ in done:
        op = c.op[id_]
        if op.action in _JOINING:
            found = _joined(found, op.pieces)
    return tuple(found)


def _joined(units: Sequence[Unit], pieces: Unit) -> list[Unit]:
    """Make one of all units that these pieces lie in; it takes the place of the first."""
    touched = [unit for unit in units if unit & pieces]
    if len(touched) < 2:
        return list(units)
    whole = Unit().union(*touched)
    return [whole if unit is touched[0] else unit for unit in units if unit not in touched[1:]]


def find_visits(c: Construction, plan: Plan, reasons: Iterable[Reason]) -> tuple[Visit, ...]:
    """Follow the bundles of a batch from visit to visit.

    Parameters
    ----------
    c
        The garment.
    plan
        A plan for a batch.
    reasons
        The reasons that bind; only those without a choice tell what must be done before.
    """
    precedence = Precedence.of(c.ids, arcs_of(reasons))
    visits = []
    done: list[OpId] = []
    for number, group in enumerate(plan.groups, 1):
        ops = tuple(op for step in group.steps for op in step.operations)
        touched = pieces_in_hand(c, ops)
        takes = tuple(
            Taken(unit, _last_at(c, plan, number - 1, unit))
            for unit in bundles(c, done)
            if unit & touched
        )
        wants = direct_needs(precedence, [op.id for op in ops])
        done += [op.id for op in ops]
        passes = tuple(
            Passed(unit, _next_at(c, plan, number, unit))
            for unit in bundles(c, done)
            if unit & touched
        )
        visits.append(Visit(number, group, takes, wants, passes))
    return tuple(visits)


def pieces_in_hand(c: Construction, ops: Iterable[Operation]) -> Unit:
    """The pieces that operations act on; of a notion alone, those that it is sewn to."""
    return Unit().union(*(op.pieces or _bearing(c, op) for op in ops))


def _bearing(c: Construction, op: Operation) -> Unit:
    sharing = (other for other in c.operations if set(other.notions) & set(op.notions))
    return Unit().union(*(other.pieces for other in sharing))


def _last_at(c: Construction, plan: Plan, before: int, unit: Unit) -> int | None:
    """The last visit, up to a number, at which something was done to a bundle."""
    numbers = (n for n in range(before, 0, -1) if _is_at(c, plan.groups[n - 1], unit))
    return next(numbers, None)


def _next_at(c: Construction, plan: Plan, after: int, unit: Unit) -> int | None:
    """The first visit, after a number, at which something is done to a bundle."""
    numbers = (n for n in range(after + 1, len(plan.groups) + 1))
    return next((n for n in numbers if _is_at(c, plan.groups[n - 1], unit)), None)


def _is_at(c: Construction, group: Group, unit: Unit) -> bool:
    ops = (op for step in group.steps for op in step.operations)
    return bool(pieces_in_hand(c, ops) & unit)


def direct_needs(precedence: Precedence, ids: Sequence[OpId]) -> tuple[OpId, ...]:
    """What must come before some operations, without them and without what the rest implies.

    Parameters
    ----------
    precedence
        What comes before what.
    ids
        The operations.
    """
    before = {a for id_ in ids for a in precedence.ancestors(id_)} - set(ids)
    implied = {a for id_ in before for a in precedence.ancestors(id_)}
    return tuple(id_ for id_ in precedence.operations if id_ in before and id_ not in implied)
