"""Where a session may end: safe stops between the steps of an order, and sessions made of them.

1. After each step the work is looked at: a stop is safe when nothing is half done. Half done is an
   entry of which a part is still to follow, threads that are drawn up, basting that has to come
   out, layers laid into one another or rolled up, a gap that the work was turned through.
2. What has to lie or hang, or is out of the house, falls between two sessions, so a session ends
   right after it, whatever else is half done.
3. Sessions are as even as the safe stops allow: the longest is made as short as it can be, then
   all are made as even as they can be. Of equal ones the iron is not the last thing used, since
   it has to cool.

Cost: a table of sessions times stops, each entry the least over all earlier stops.
"""

from collections.abc import Callable, Iterable, Iterator, Mapping, Sequence
from enum import Enum
from fractions import Fraction
from itertools import islice, pairwise, takewhile
from math import ceil
from typing import Final, NamedTuple

from seqplan.base.ids import OpId
from seqplan.graph.precedence import arcs_of
from seqplan.graph.reason import Arc, Reason
from seqplan.model.entry import Verb
from seqplan.model.operation import Action, Operation
from seqplan.model.station import IRON
from seqplan.plan.plan import Plan, Step
from seqplan.plan.unit import Unit
from seqplan.recipes.construction import Construction
from seqplan.rehearse.walk import rehearse

WAITING: Final = frozenset({Action.WAIT, Action.SEND_OUT, Action.PRETREAT})
"""After these, time goes by in which nothing can be done."""

OPERATIONS_IN_A_SESSION: Final = 16
"""What a learner does in a session of about two hours where no file says minutes: our estimate."""

_LAID: Final = frozenset({Action.NEST, Action.ROLL})
_STITCHING: Final = frozenset(
    {Action.SEW, Action.SET_ON, Action.ENCLOSE, Action.CLOSE_BAND, Action.CLOSE_GAP}
)


class Hindrance(Enum):
    """Why the work cannot be put down."""

    HALF_DONE = "half-done"
    """A part of what was begun is still to follow."""
    DRAWN_UP = "drawn-up"
    """Gathers hang on threads until the seam holds them."""
    BASTED = "basted"
    """Basting has still to come out."""
    LAID = "laid"
    """Layers are nested, or rolled up and pinned, for a seam that is still to come."""
    UNTURNED = "unturned"
    """All is ready to be turned, and that comes next."""
    GAP = "gap"
    """The gap that it was turned through is still open."""


class Pause(NamedTuple):
    """The place after a step.

    Parameters
    ----------
    step
        The number of the step, from 1.
    hindrances
        Why the work cannot be put down, each with the operation that is still to come; none at a
        safe stop.
    waits
        The operation after which time has to go by, if the step ends with one.
    ends_hot
        Whether the step ends at the iron.
    """

    step: int
    hindrances: tuple[tuple[Hindrance, OpId], ...] = ()
    waits: OpId | None = None
    ends_hot: bool = False

    @property
    def is_safe(self) -> bool:
        """Whether a session may end here."""
        return self.waits is not None or not self.hindrances


class Session(NamedTuple):
    """Steps for one sitting.

    Parameters
    ----------
    number
        From 1; 0 for what is done at home before the first.
    steps
        Its steps.
    pause
        Where it ends; ``None`` for the last one.
    """

    number: int
    steps: tuple[Step, ...]
    pause: Pause | None

    @property
    def operations(self) -> tuple[Operation, ...]:
        """All that is done in it."""
        return tuple(op for step in self.steps for op in step.operations)


def steps_of(plan: Plan) -> tuple[Step, ...]:
    """All steps of a plan, in their order."""
    return tuple(step for group in plan.groups for step in group.steps)


def find_pauses(c: Construction, plan: Plan, reasons: Iterable[Reason]) -> tuple[Pause, ...]:
    """Look at the place after each step but the last.

    Parameters
    ----------
    c
        The garment.
    plan
        The order.
    reasons
        The reasons that bind: of one entry only what they tie together is torn apart by a stop.
    """
    steps = steps_of(plan)
    tied = [arc for arc in arcs_of(reasons) if c.op[arc.before].entry == c.op[arc.after].entry]
    done: list[Operation] = []
    found = []
    for step, following in pairwise(steps):
        done += step.operations
        last = step.operations[-1]
        found.append(
            Pause(
                step=step.number,
                hindrances=tuple(_hindrances(c, tied, done, following)),
                waits=last.id if last.action in WAITING else None,
                ends_hot=last.setup.station == IRON,
            )
        )
    return tuple(found)


def _hindrances(
    c: Construction, tied: Iterable[Arc], done: Sequence[Operation], following: Step
) -> Iterator[tuple[Hindrance, OpId]]:
    """Why the work cannot be put down after what is done, the step that follows being known."""
    ids = {op.id for op in done}
    begun = dict.fromkeys(a.after for a in tied if a.before in ids and a.after not in ids)
    yield from ((Hindrance.HALF_DONE, after) for after in begun)
    left = [op for op in c.operations if op.id not in ids]
    for op in done:
        yield from _left_by(op, done, left)
    yield from _gaps(c, done, left)
    first = following.operations[0]
    if first.action is Action.TURN and c.entry(first).verb is Verb.TURN:
        yield Hindrance.UNTURNED, first.id


def _left_by(
    op: Operation, done: Sequence[Operation], left: Sequence[Operation]
) -> Iterator[tuple[Hindrance, OpId]]:
    """What an operation has left for a later one, so that it must not be put down before."""
    on_edges = [o for o in left if set(o.segments) & set(op.segments)]
    if op.action is Action.GATHER:
        sewing = (o for o in on_edges if o.action in _STITCHING)
        yield from ((Hindrance.DRAWN_UP, o.id) for o in islice(sewing, 1))
    if op.action is Action.BASTE:
        removing = (o for o in on_edges if o.action is Action.REMOVE_BASTING)
        yield from ((Hindrance.BASTED, o.id) for o in islice(removing, 1))
    if op.action in _LAID and not _is_sewn_since(op, done):
        sewing = (o for o in left if o.action in _STITCHING and o.pieces & op.pieces)
        yield from ((Hindrance.LAID, o.id) for o in islice(sewing, 1))


def _is_sewn_since(op: Operation, done: Sequence[Operation]) -> bool:
    since = done[done.index(op) :]
    return any(o.action in _STITCHING and o.pieces & op.pieces for o in since)


def _gaps(
    c: Construction, done: Sequence[Operation], left: Iterable[Operation]
) -> Iterator[tuple[Hindrance, OpId]]:
    """Gaps that are to be closed and through which something has been turned."""
    turned = Unit().union(*(op.pieces for op in done if c.entry(op).verb is Verb.TURN))
    for op in left:
        is_turned_through = bool(op.pieces & turned) and c.entry(op).closes is not None
        if op.action is Action.CLOSE_GAP and is_turned_through:
            yield Hindrance.GAP, op.id


def find_stretches(plan: Plan, pauses: Iterable[Pause]) -> tuple[tuple[Step, ...], ...]:
    """Part an order at all of its safe stops."""
    return _parted(steps_of(plan), [pause.step for pause in pauses if pause.is_safe])


def find_sessions(
    plan: Plan, pauses: Sequence[Pause], count: int | None = None
) -> tuple[Session, ...]:
    """Part an order into sessions that are as even as its safe stops allow.

    Parameters
    ----------
    plan
        The order.
    pauses
        The places after its steps.
    count
        How many sessions; without it as many as `OPERATIONS_IN_A_SESSION` makes of it. There are
        fewer where there are not so many safe stops, and more where more has to wait.
    """
    steps = steps_of(plan)
    ahead = _steps_ahead(steps)
    in_class = [step for step in steps if step.number > ahead]
    weights = weigh_steps(in_class)
    safe = [pause for pause in pauses if pause.is_safe and pause.step > ahead]
    forced = [pause for pause in safe if pause.waits is not None]
    if count is None:
        operations = sum(len(step.operations) for step in in_class)
        count = ceil(operations / OPERATIONS_IN_A_SESSION)
    count = max(len(forced) + 1, min(count, len(safe) + 1))
    chosen = _spread(weights, safe, count)
    pause_at = {pause.step: pause for pause in pauses}
    found = [Session(0, steps[:ahead], pause_at.get(ahead))] if ahead else []
    parts = _parted(in_class, [pause.step for pause in chosen])
    found += [
        Session(number, part, pause_at.get(part[-1].number)) for number, part in enumerate(parts, 1)
    ]
    return tuple(found)


def weigh_steps(steps: Sequence[Step]) -> Mapping[int, Fraction]:
    """How much work each step is, by its number.

    In minutes where the author says them. What nobody says counts as the mean of what is said, or
    as one.
    """
    said = [op.minutes for step in steps for op in step.operations if op.minutes is not None]
    usual = Fraction(sum(said), len(said)) if any(said) else Fraction(1)
    return {
        step.number: sum(
            (usual if op.minutes is None else Fraction(op.minutes) for op in step.operations),
            Fraction(0),
        )
        for step in steps
    }


def _steps_ahead(steps: Iterable[Step]) -> int:
    """How many steps at the beginning are done at home: cloth is washed there."""
    ahead = takewhile(
        lambda step: all(op.action is Action.PRETREAT for op in step.operations), steps
    )
    return len(tuple(ahead))


def _parted(steps: Sequence[Step], after: Iterable[int]) -> tuple[tuple[Step, ...], ...]:
    ends = set(after)
    parts: list[list[Step]] = [[]]
    for step in steps:
        parts[-1].append(step)
        if step.number in ends:
            parts.append([])
    return tuple(tuple(part) for part in parts if part)


def _spread(
    weights: Mapping[int, Fraction], safe: Sequence[Pause], count: int
) -> tuple[Pause, ...]:
    """Choose the stops that part the steps into so many sessions, as evenly as can be."""
    longest, _ = _least(weights, safe, count, max, at_most=sum(weights.values(), Fraction(0)))
    _, chosen = _least(weights, safe, count, lambda so_far, own: so_far + own * own, longest)
    return chosen


def _least(
    weights: Mapping[int, Fraction],
    safe: Sequence[Pause],
    count: int,
    add: Callable[[Fraction, Fraction], Fraction],
    at_most: Fraction,
) -> tuple[Fraction, tuple[Pause, ...]]:
    """The least that so many sessions add up to, none of them longer than ``at_most``.

    Of equal ones it is the one whose sessions end at the iron least often.
    """
    ends = [0, *(pause.step for pause in safe), max(weights, default=0)]
    until = [sum((w for n, w in weights.items() if n <= end), Fraction(0)) for end in ends]
    forced = [place for place, pause in enumerate(safe, 1) if pause.waits is not None]
    best: dict[int, tuple[Fraction, int, tuple[int, ...]]] = {0: (Fraction(0), 0, ())}
    for _ in range(count):
        following = {}
        for place in range(1, len(ends)):
            hot = int(place <= len(safe) and safe[place - 1].ends_hot)
            ways = [
                (add(cost, until[place] - until[start]), hots + hot, (*chosen, place))
                for start, (cost, hots, chosen) in best.items()
                if start < place
                and until[place] - until[start] <= at_most
                and not any(start < each < place for each in forced)
            ]
            if ways:
                following[place] = min(ways)
        best = following
    cost, _, chosen = best[len(ends) - 1]
    return cost, tuple(safe[place - 1] for place in chosen[:-1])


def gathered_late(
    c: Construction, order: Sequence[OpId], reasons: Iterable[Reason]
) -> tuple[OpId, ...]:
    """Put gathering off until right before the seam that takes it up, where that can be sewn.

    Nobody can stop while gathers hang on their threads; a booklet may have them long before.

    Parameters
    ----------
    c
        The garment.
    order
        An order that can be sewn.
    reasons
        The reasons that bind it.
    """
    held = tuple(reasons)
    found = tuple(order)
    for gather in c.acting(Action.GATHER):
        own = [op.id for op in c.of_entry[gather.entry]]
        taker = next(
            (
                id_
                for id_ in found[found.index(gather.id) :]
                if c.op[id_].action in _STITCHING and set(c.op[id_].segments) & set(gather.segments)
            ),
            None,
        )
        if taker is None:
            continue
        rest = [id_ for id_ in found if id_ not in own]
        place = min(rest.index(op.id) for op in c.of_entry[c.op[taker].entry])
        later = (*rest[:place], *own, *rest[place:])
        found = later if _can_be_sewn(c, later, held) else found
    return found


def _can_be_sewn(c: Construction, order: Sequence[OpId], reasons: Iterable[Reason]) -> bool:
    """Whether an order keeps all reasons, and can be walked to its end."""
    position = {id_: place for place, id_ in enumerate(order)}
    if not all(reason.is_held(position) for reason in reasons):
        return False
    walk = rehearse(c, order)
    return walk.is_clean and not walk.debts


def change_places(
    c: Construction, plan: Plan, reasons: Iterable[Reason], stretches: Sequence[Sequence[Step]]
) -> frozenset[int]:
    """Which stretches may just as well be done after the one that follows, by their index from 0.

    Some learners may then begin with the later one, so that not everybody wants the same machine.

    Parameters
    ----------
    c
        The garment.
    plan
        The order that was parted.
    reasons
        The reasons that bind.
    stretches
        The order, parted.
    """
    held = tuple(reasons)
    parts = [[op.id for step in part for op in step.operations] for part in stretches]
    found = set()
    for index in range(len(parts) - 1):
        swapped = [*parts[:index], parts[index + 1], parts[index], *parts[index + 2 :]]
        if _can_be_sewn(c, [id_ for part in swapped for id_ in part], held):
            found.add(index)
    return frozenset(found)
