"""Why there is no order: sets of reasons that clash, and what to give up.

A conflict is irreducible: its reasons admit no order, and without any one of them they do.

1. Where plain arcs clash, the conflict is a shortest cycle. Of several reasons for one arc the
   strongest is taken, since dropping a weaker one would not help.
2. Where it takes either-ors to clash, all reasons are cut down to what is needed
   (`irreducible`).
3. Conflicts that share no reason are found first: one is taken and all its reasons are set
   aside, until the rest admits an order. Then the others: only the weakest reason of every
   conflict known is set aside.
4. What to give up is a least set of reasons that hits every conflict. Conflicts are found as
   they are needed: give up the least set that hits those known; where a clash remains, it is a
   conflict not known yet.

Cost: a cycle costs little; a conflict of k out of m reasons takes about ``2 k log(m / k)``
tests whether an order exists. Giving up is exponential in the number given up.
"""

from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from typing import Final

from seqplan.base.ids import OpId
from seqplan.graph.cycles import shortest_cycle
from seqplan.graph.directions import NoOrderError, is_feasible
from seqplan.graph.hitting import least_hitting_set
from seqplan.graph.irreducible import irreducible, irreducible_circle
from seqplan.graph.reason import Arc, Reason, ReasonKind

MOST_CONFLICTS: Final = 12
"""Conflicts that are looked for; a file that has more is a tangle, or made to hurt."""

_SURENESS = {ReasonKind.SAID: 0, ReasonKind.RULE: 1, ReasonKind.NEEDS: 2}
"""Of equally strong reasons for one arc, what is used binds most and what is said least."""


@dataclass(frozen=True, slots=True)
class Conflict:
    """Reasons that admit no order together; without any one of them they do.

    Parameters
    ----------
    reasons
        At least one.
    chain
        Where the conflict is a cycle: the arc that each of ``reasons`` puts in, each arc's
        ``after`` being the next one's ``before``, round to the first. Empty otherwise.
    """

    reasons: tuple[Reason, ...]
    chain: tuple[Arc, ...] = ()

    @property
    def weakest(self) -> Reason:
        """The reason to give up first: the least strength, of equals what is said."""
        return max(
            self.reasons,
            key=lambda reason: (
                -reason.strength.weight,
                reason.kind is ReasonKind.SAID,
                reason_key(reason),
            ),
        )


def reason_key(reason: Reason) -> tuple[object, ...]:
    """Sort reasons by what they ask for, and by everything else that they say."""
    return (
        reason.alternatives,
        -reason.strength.weight,
        -_SURENESS[reason.kind],
        reason.rule,
        reason.because,
        tuple(str(part) for part in reason.source),
    )


def conflicts(operations: Sequence[OpId], reasons: Iterable[Reason]) -> tuple[Conflict, ...]:
    """Find what keeps the reasons from admitting an order.

    Parameters
    ----------
    operations
        Every operation once, in the author's order.
    reasons
        All that should hold together; repeats count once.

    Returns
    -------
    tuple of Conflict
        Conflicts that share no reason come first, then others; giving up the weakest reason of
        each is enough for an order, unless there are `MOST_CONFLICTS`. Empty when there is an
        order.

    Raises
    ------
    UnknownOperationError
        A reason names an operation that is not among ``operations``.
    """
    everything = _sorted(reasons)
    found: list[Conflict] = []
    rest = everything
    while len(found) < MOST_CONFLICTS and (conflict := _find(operations, rest)) is not None:
        found.append(conflict)
        gone = set(conflict.reasons)
        rest = [reason for reason in rest if reason not in gone]
    while len(found) < MOST_CONFLICTS:
        aside = {conflict.weakest for conflict in found}
        rest = [reason for reason in everything if reason not in aside]
        conflict = _find(operations, rest)
        if conflict is None:
            break
        found.append(conflict)
    return tuple(found)


def find_conflict(operations: Sequence[OpId], reasons: Iterable[Reason]) -> Conflict | None:
    """Find one conflict: a shortest cycle of plain arcs, else one with either-ors.

    Returns
    -------
    Conflict or None
        None when the reasons admit an order.
    """
    return _find(operations, _sorted(reasons))


def _find(operations: Sequence[OpId], everything: Sequence[Reason]) -> Conflict | None:
    """Find one conflict among reasons that are sorted and stand once."""
    bearer = _strongest(everything)
    weights = {arc: reason.strength.weight for arc, reason in bearer.items()}
    cycle = shortest_cycle(operations, weights)
    if cycle is not None:
        core = irreducible_circle(list(dict.fromkeys(bearer[arc] for arc in cycle)))
        if len(core) == len(cycle):
            return Conflict(tuple(bearer[arc] for arc in cycle), cycle)
        return Conflict(tuple(core))
    if is_feasible(operations, everything):
        return None
    return Conflict(tuple(irreducible(operations, everything)))


def give_up(
    operations: Sequence[OpId], musts: Sequence[Reason], shoulds: Sequence[Reason]
) -> tuple[Reason, ...]:
    """Find the fewest reasons to drop so that the rest admits an order.

    Parameters
    ----------
    operations
        Every operation once, in the author's order.
    musts
        Reasons that are kept.
    shoulds
        Reasons that may be dropped; repeats count once.

    Returns
    -------
    tuple of Reason
        Some of ``shoulds``, sorted by what they ask for. Of sets of equal size the one with
        the least strength in all, then the first in sorting. Empty when nothing need go.

    Raises
    ------
    NoOrderError
        The musts alone admit no order.
    """
    kept = set(musts)
    candidates = [reason for reason in _sorted(shoulds) if reason not in kept]
    place = {reason: index for index, reason in enumerate(candidates)}
    weights = [reason.strength.weight for reason in candidates]
    known: list[frozenset[int]] = []
    while True:
        dropped = set(least_hitting_set(known, weights))
        rest = [*musts, *(each for each in candidates if place[each] not in dropped)]
        news = _disjoint_conflicts(operations, rest, place)
        if not news:
            return tuple(candidates[index] for index in sorted(dropped))
        known.extend(news)


def _disjoint_conflicts(
    operations: Sequence[OpId], reasons: Sequence[Reason], place: dict[Reason, int]
) -> list[frozenset[int]]:
    """Find conflicts that share none of the reasons that may be dropped."""
    found: list[frozenset[int]] = []
    rest = _sorted(reasons)
    while (conflict := _find(operations, rest)) is not None:
        soft = frozenset(place[reason] for reason in conflict.reasons if reason in place)
        if not soft:
            raise NoOrderError
        found.append(soft)
        rest = [reason for reason in rest if reason not in place or place[reason] not in soft]
    return found


def _sorted(reasons: Iterable[Reason]) -> list[Reason]:
    return sorted(set(reasons), key=reason_key)


def _strongest(reasons: Iterable[Reason]) -> dict[Arc, Reason]:
    """Name for every arc that leaves no choice the reason that binds it most."""
    bearer: dict[Arc, Reason] = {}
    for reason in reasons:
        if reason.is_either_or:
            continue
        for arc in reason.alternatives[0]:
            other = bearer.get(arc)
            if other is None or _binding(other) < _binding(reason):
                bearer[arc] = reason
    return bearer


def _binding(reason: Reason) -> tuple[int, int]:
    return reason.strength.weight, _SURENESS[reason.kind]
