"""Which reasons an author's waivers set aside: never one that tells what is impossible."""

from collections.abc import Iterable

from seqplan.base.strength import Strength
from seqplan.graph.reason import Reason
from seqplan.model.garment import Waiver


def is_named(waiver: Waiver, reason: Reason) -> bool:
    """Whether a waiver names the rule of a reason, and an operation of which it speaks."""
    if waiver.rule != reason.rule:
        return False
    return not waiver.at or any(
        name in {op, op.partition("/")[0]} for name in waiver.at for op in reason.operations
    )


def is_waivable(reason: Reason) -> bool:
    """Whether an author may set a reason aside.

    A must may not: the other way is impossible or ruins the cloth, whatever reason is given. What
    operations need and what the author said are musts, too.
    """
    return reason.strength is not Strength.MUST


def set_aside(waivers: Iterable[Waiver], reasons: Iterable[Reason]) -> tuple[Reason, ...]:
    """Give the reasons that one of the waivers sets aside, in the order of ``reasons``."""
    stated = tuple(waivers)
    if not stated:
        return ()
    return tuple(
        reason
        for reason in reasons
        if is_waivable(reason) and any(is_named(waiver, reason) for waiver in stated)
    )
