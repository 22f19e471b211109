"""Cutting a set of reasons that admits no order down to what is needed for that.

1. Reasons are ranked: either-ors are cut first, while all plain arcs stay; then the plain arcs.
   So as few either-ors as possible remain, and the arcs that explain them.
2. Plain arcs are ranked by how far their operations are from those the remaining either-ors
   speak of, so that short chains are kept rather than long ones.
3. Cutting goes by halves: what is needed of the lower-ranked half is found while the other half
   stays as it is, then the other half is cut with that alone (the known scheme of quick
   explanation).

Cost: about ``2 k log(m / k)`` tests whether an order exists, for k reasons left of m. The reasons
of a cycle are mostly all needed, so they are left out one by one, the last first, which comes to
the same: m tests, each a walk along their arcs.
"""

from collections.abc import Iterable, Sequence

from seqplan.base.ids import OpId
from seqplan.graph.directions import is_feasible
from seqplan.graph.reason import Reason


def irreducible(operations: Sequence[OpId], reasons: Sequence[Reason]) -> list[Reason]:
    """Leave out reasons as long as the rest still admits no order.

    Parameters
    ----------
    operations
        Every operation once.
    reasons
        Reasons that admit no order together, without repeats.

    Returns
    -------
    list of Reason
        Without any one of these, the others admit an order. They keep their order.
    """
    plain = [reason for reason in reasons if not reason.is_either_or]
    choices = [reason for reason in reasons if reason.is_either_or]
    choices = _needed(operations, plain, choices)
    far = _distances(plain, {each for reason in choices for each in reason.operations})
    plain.sort(key=lambda reason: sum(far.get(each, len(far)) for each in reason.operations))
    core = {*choices, *_needed(operations, choices, plain)}
    return [reason for reason in reasons if reason in core]


def irreducible_circle(reasons: Sequence[Reason]) -> list[Reason]:
    """Leave out reasons of a shortest cycle as long as the rest still runs in a circle.

    Parameters
    ----------
    reasons
        Plain reasons without repeats; each gives one arc of a shortest cycle, and maybe others.

    Returns
    -------
    list of Reason
        What `irreducible` gives for them.
    """
    kept = list(reasons)
    if all(len(reason.alternatives[0]) == 1 for reason in kept):
        return kept
    for reason in reversed(reasons):
        rest = [other for other in kept if other is not reason]
        if _runs_in_a_circle(rest):
            kept = rest
    return kept


def _runs_in_a_circle(reasons: Iterable[Reason]) -> bool:
    """Whether some operations are left when those with nothing before them go, again and again."""
    arcs = {arc for reason in reasons for arc in reason.alternatives[0]}
    waiting: dict[OpId, int] = {}
    afters: dict[OpId, list[OpId]] = {}
    for before, after in arcs:
        afters.setdefault(before, []).append(after)
        waiting[after] = waiting.get(after, 0) + 1
    ready = [operation for operation in afters if operation not in waiting]
    for operation in ready:
        for after in afters.get(operation, ()):
            waiting[after] -= 1
            if not waiting[after]:
                ready.append(after)
    return any(waiting.values())


def _needed(
    operations: Sequence[OpId], ground: Sequence[Reason], doubtful: Sequence[Reason]
) -> list[Reason]:
    """Find an irreducible part of the doubtful reasons that clashes with the ground."""

    def cut(ground: list[Reason], grown: bool, doubtful: list[Reason]) -> list[Reason]:
        if grown and not is_feasible(operations, ground):
            return []
        if len(doubtful) == 1:
            return doubtful
        middle = len(doubtful) // 2
        first, second = doubtful[:middle], doubtful[middle:]
        late = cut(ground + first, True, second)
        early = cut(ground + late, bool(late), first)
        return early + late

    return cut(list(ground), True, list(doubtful)) if doubtful else []


def _distances(plain: Sequence[Reason], start: set[OpId]) -> dict[OpId, int]:
    """Count for every operation the plain reasons that lie between it and the start."""
    touching: dict[OpId, list[Reason]] = {}
    for reason in plain:
        for operation in reason.operations:
            touching.setdefault(operation, []).append(reason)
    far = dict.fromkeys(sorted(start), 0)
    walk = list(far)
    for operation in walk:
        for reason in touching.get(operation, ()):
            for other in sorted(reason.operations):
                if other not in far:
                    far[other] = far[operation] + 1
                    walk.append(other)
    return far
