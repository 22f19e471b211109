"""When something was forgotten or went wrong: the least to undo, and the order from there on.

1. What is done stands in the order that the work followed. Of it the least is undone
   (`unpicking`): first the fewest operations that cannot be undone, then the fewest operations.
2. Musts alone cost an unpicked seam. Good practice is held as far as what stays allows, and the
   least of it is given up.
3. The order from there to the end does what was forgotten as soon as it can be done, then goes on
   in the order that the work followed.
4. The whole is rehearsed: what stays, then the rest. Where it gets stuck, what that teaches
   (`lessons`) binds as well, and the search starts again. The least is the least under all these
   reasons.

Cost: a search as in `unpicking` for every turn of step 4, and the give-up of good practice.
"""

from collections.abc import Collection, Iterator, Mapping, Sequence
from dataclasses import dataclass
from itertools import pairwise
from typing import Final

from seqplan.base.ids import OpId, RuleSlug
from seqplan.base.strength import Strength
from seqplan.graph.bits import bits, mask_of
from seqplan.graph.choices import Problem
from seqplan.graph.closure import Closure
from seqplan.graph.conflict import give_up
from seqplan.graph.directions import NoOrderError, find_directions, is_feasible
from seqplan.graph.precedence import Precedence
from seqplan.graph.reason import Arc, Reason, ReasonKind
from seqplan.order.limits import Limit, no_limit
from seqplan.order.result import Proof
from seqplan.plan.binding import Binding
from seqplan.plan.lessons import lesson
from seqplan.plan.undoing import GOING_THROUGH, UNDOING, Undoing
from seqplan.plan.unpicking import Unpicking, least_to_undo
from seqplan.recipes.construction import Construction
from seqplan.rehearse.walk import Rehearsal, rehearse
from seqplan.words.say import say

DONE: Final = RuleSlug("done-already")
"""The slug of the reason that what stays comes first."""
WRONG: Final = RuleSlug("done-wrong")
"""The slug of the reason that what was not done right is done again."""


@dataclass(frozen=True, slots=True)
class Undone:
    """An operation that is undone.

    Parameters
    ----------
    op
        The operation.
    how
        What it takes.
    reason
        Why it cannot stay.
    """

    op: OpId
    how: Undoing
    reason: Reason


@dataclass(frozen=True, slots=True, kw_only=True)
class Rescue:
    """What to undo, and how to go on.

    Parameters
    ----------
    missed
        What was forgotten, in the order that the work followed.
    wrong
        What was done, and not right, in that order.
    done
        What had been done, in that order.
    implied
        What of it nobody named, but has to come before what was named.
    undone
        What is undone, the last first.
    kept
        What stays.
    rest
        What is done from there on, the undone included, to the end.
    given_up
        The good practice that cannot be kept without undoing more.
    proof
        Whether it is proven that no less can be undone.
    rehearsal
        How far ``kept`` and ``rest`` go with the work in hand.
    """

    missed: tuple[OpId, ...]
    wrong: tuple[OpId, ...]
    done: tuple[OpId, ...]
    implied: tuple[OpId, ...]
    undone: tuple[Undone, ...]
    kept: tuple[OpId, ...]
    rest: tuple[OpId, ...]
    given_up: tuple[Reason, ...]
    proof: Proof
    rehearsal: Rehearsal


@dataclass(frozen=True, slots=True)
class Standing:
    """How far the work has come.

    Parameters
    ----------
    order
        The order that it followed: every operation once.
    done
        What is done. What must come before it is taken as done, too, unless it was forgotten.
    missed
        What was forgotten; what stands in both counts as forgotten.
    wrong
        What of it was not done right, and has to be done again.
    """

    order: Sequence[OpId]
    done: Collection[OpId]
    missed: Collection[OpId] = ()
    wrong: Collection[OpId] = ()

    @property
    def wanting(self) -> frozenset[OpId]:
        """What has still to be done right."""
        return frozenset(self.missed) | frozenset(self.wrong)


def find_rescue(
    c: Construction,
    binding: Binding,
    at: Standing,
    *,
    by_the_book: bool = False,
    limit: Limit = no_limit,
) -> Rescue:
    """Find the least to undo so that all can be done, and done right, and the order from there on.

    Parameters
    ----------
    c
        The garment.
    binding
        The reasons that bind; they must admit an order.
    at
        How far the work has come.
    by_the_book
        Whether good practice is a reason to undo something, too.
    limit
        When to break off the search for the least; the least so far is then given.

    Raises
    ------
    NoOrderError
        The reasons admit no order.
    """
    binds = [r for r in binding.held if by_the_book or r.strength is Strength.MUST]
    through = [r for r in binding.held if r.rule in GOING_THROUGH and not r.is_either_or]
    built_on = [arc for reason in through for arc in reason.alternatives[0]]
    implied = _implied(at, binding.held)
    sequence = [
        id_ for id_ in at.order if (id_ in at.done or id_ in implied) and id_ not in at.missed
    ]
    weights = weigh(c, sequence, at.wrong)
    shoulds = [r for r in binding.held if not by_the_book and r.strength is not Strength.MUST]
    while True:
        unpicking = least_to_undo(
            at.order, binds, sequence, weights, built_on=built_on, limit=limit
        )
        rest, given_up = _order_from(unpicking.kept, at, binds, shoulds)
        walk = rehearse(c, (*unpicking.kept, *rest))
        learnt = lesson(c, walk)
        if learnt is None or learnt in binds or not is_feasible(at.order, [*binds, learnt]):
            break
        binds.append(learnt)
    return Rescue(
        missed=tuple(id_ for id_ in at.order if id_ in at.missed),
        wrong=tuple(id_ for id_ in sequence if id_ in at.wrong),
        done=tuple(sequence),
        implied=tuple(id_ for id_ in sequence if id_ in implied),
        undone=tuple(_undone(c, binds, through, unpicking, at)),
        kept=unpicking.kept,
        rest=rest,
        given_up=given_up,
        proof=unpicking.proof,
        rehearsal=walk,
    )


def _implied(at: Standing, reasons: Sequence[Reason]) -> frozenset[OpId]:
    """What must come before what is done, and was neither named nor forgotten."""
    closure = _closure(at.order, reasons)
    index = {id_: node for node, id_ in enumerate(at.order)}
    before = 0
    for id_ in set(at.done) - set(at.missed):
        before |= closure.ancestors[index[id_]]
    return frozenset(at.order[node] for node in bits(before)) - set(at.done) - set(at.missed)


def _closure(order: Sequence[OpId], reasons: Sequence[Reason]) -> Closure:
    """What follows from the reasons before anything is chosen."""
    start = Problem.of(order, reasons).start
    if start is None:
        raise NoOrderError
    return start.closure


def weigh(c: Construction, sequence: Sequence[OpId], wrong: Collection[OpId] = ()) -> list[int]:
    """What it costs to undo each operation: what cannot be undone outweighs all that can.

    What is wrong comes off in any case, so that it weighs nothing.
    """
    lost = len(sequence) + 1
    weights = (lost if UNDOING[c.op[id_].action] is Undoing.LOST else 1 for id_ in sequence)
    return [0 if id_ in wrong else weight for id_, weight in zip(sequence, weights, strict=True)]


def _order_from(
    kept: Sequence[OpId],
    at: Standing,
    binds: Sequence[Reason],
    shoulds: Sequence[Reason],
) -> tuple[tuple[OpId, ...], tuple[Reason, ...]]:
    """Order what is not kept, what was forgotten first, and tell the good practice given up."""
    order, stays = at.order, frozenset(kept)
    others = [id_ for id_ in order if id_ not in stays]
    held = [*binds, *_kept_first(kept, others)]
    still, given_up = _had_with(order, held, shoulds)
    held += still
    closure = _closure(order, held)
    index = {id_: node for node, id_ in enumerate(order)}
    before = mask_of(index[id_] for id_ in at.wanting)
    for id_ in at.wanting:
        before |= closure.ancestors[index[id_]]
    first = [id_ for id_ in others if before >> index[id_] & 1]
    later = [id_ for id_ in others if not before >> index[id_] & 1]
    wanted = {id_: place for place, id_ in enumerate((*kept, *first, *later))}
    chosen = find_directions(order, held, preferred=wanted)
    if chosen is None:
        raise NoOrderError
    arcs = (arc for r, which in zip(held, chosen, strict=True) for arc in r.alternatives[which])
    whole = Precedence.of(order, arcs).topological_order(wanted)
    return whole[len(kept) :], given_up


def _had_with(
    order: Sequence[OpId], held: Sequence[Reason], shoulds: Sequence[Reason]
) -> tuple[tuple[Reason, ...], tuple[Reason, ...]]:
    """Part good practice into what can still be had, and the least that cannot."""
    closure = _closure(order, held)
    index = {id_: node for node, id_ in enumerate(order)}
    lost = {reason for reason in shoulds if _is_ruled_out(reason, closure, index)}
    still = [reason for reason in shoulds if reason not in lost]
    if not is_feasible(order, (*held, *still)):
        lost |= set(give_up(order, held, still))
    return (
        tuple(reason for reason in shoulds if reason not in lost),
        tuple(reason for reason in shoulds if reason in lost),
    )


def _kept_first(kept: Sequence[OpId], others: Sequence[OpId]) -> tuple[Reason, ...]:
    """What stays comes first, as it was done."""
    arcs = [Arc(one, other) for one, other in pairwise(kept)]
    arcs += [Arc(kept[-1], other) for other in others] if kept else []
    return tuple(
        Reason(
            alternatives=((arc,),),
            kind=ReasonKind.SAID,
            strength=Strength.MUST,
            rule=DONE,
            because=say("rescue-done-already", before=arc.before),
        )
        for arc in arcs
    )


def _is_ruled_out(reason: Reason, closure: Closure, index: Mapping[OpId, int]) -> bool:
    """Whether no alternative can be had any more."""
    return all(
        closure.refuses([(index[arc.before], index[arc.after]) for arc in bundle])
        for bundle in reason.alternatives
    )


def _undone(
    c: Construction,
    binds: Sequence[Reason],
    through: Sequence[Reason],
    unpicking: Unpicking,
    at: Standing,
) -> Iterator[Undone]:
    """Say of each operation that is undone, the last first, how and why.

    A reason that names what was forgotten tells more than one that names another that is undone,
    and one within an entry tells least.
    """
    place = {id_: number for number, id_ in enumerate(at.order)}
    kept, undone = set(unpicking.kept), set(unpicking.undone)
    asks: dict[OpId, list[tuple[tuple[bool, bool, int, str], Reason]]] = {}

    def ask(reason: Reason, arc: Arc) -> None:
        is_inner = c.op[arc.before].entry == c.op[arc.after].entry
        rank = (arc.before not in at.wanting, is_inner, -reason.strength.weight, reason.rule)
        asks.setdefault(arc.after, []).append((rank, reason))

    for reason, which in zip(binds, unpicking.chosen, strict=True):
        for arc in reason.alternatives[which]:
            if not (arc.before in kept and place[arc.before] < place[arc.after]):
                ask(reason, arc)
    for reason in through:
        for arc in reason.alternatives[0]:
            if arc.before in undone and place[arc.before] < place[arc.after]:
                ask(reason, arc)
    for id_ in reversed(unpicking.undone):
        if id_ in at.wrong:
            reason = _is_wrong(id_)
        else:
            _, reason = min(asks[id_], key=lambda each: each[0])
        yield Undone(id_, UNDOING[c.op[id_].action], reason)


def _is_wrong(op: OpId) -> Reason:
    """The reason to undo what was not done right: it comes before everything else, once more."""
    return Reason(
        alternatives=((Arc(op, op),),),
        kind=ReasonKind.SAID,
        strength=Strength.MUST,
        rule=WRONG,
        because=say("rescue-done-wrong", op=op),
    )
