"""Which reasons bind an order: every must, and every should that can be had with the others.

What the author sets aside binds nothing. It never costs another reason: what is given up is chosen
as if nothing were set aside, and then whatever has become possible is kept after all.
"""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from typing import TYPE_CHECKING, NamedTuple

from seqplan.base.ids import OpId
from seqplan.base.strength import Strength
from seqplan.graph.reason import Reason

if TYPE_CHECKING:
    from seqplan.graph.conflict import Conflict


class Binding(NamedTuple):
    """What an order has to hold.

    Parameters
    ----------
    held
        The musts, and the shoulds that are not given up.
    given_up
        The least set of shoulds that cannot be had together with the rest.
    conflicts
        Why no order exists at all, each an irreducible set of musts; empty when one does.
    waived
        The reasons that the author sets aside.
    is_written_order_valid
        Whether the written order holds every one of these reasons, so that nothing was given up.
    preferred
        What is only preferred: it binds nothing, and a booklet keeps what the author keeps of it.
    """

    held: tuple[Reason, ...]
    given_up: tuple[Reason, ...] = ()
    conflicts: tuple[Conflict, ...] = ()
    waived: tuple[Reason, ...] = ()
    is_written_order_valid: bool = False
    preferred: tuple[Reason, ...] = ()


def bind(
    operations: Sequence[OpId], reasons: Sequence[Reason], waived: Sequence[Reason] = ()
) -> Binding:
    """Decide which reasons bind.

    Parameters
    ----------
    operations
        Every operation once.
    reasons
        All reasons; those that only prefer bind nothing.
    waived
        Those of them that the author sets aside; none is a must.
    """
    position = {id_: place for place, id_ in enumerate(operations)}
    aside = frozenset(waived)
    left = tuple(reason for reason in reasons if reason not in aside)
    preferred = _of(Strength.PREFER, left)
    binding = tuple(reason for reason in left if reason.strength is not Strength.PREFER)
    if all(reason.is_held(position) for reason in binding):
        # The written order shows that all can be had; nothing need be searched, nor imported.
        found = Binding(binding, is_written_order_valid=True)
    else:
        found = _search(operations, binding, waived)
    return found._replace(preferred=preferred, waived=tuple(waived))


def _search(
    operations: Sequence[OpId], reasons: Sequence[Reason], waived: Sequence[Reason]
) -> Binding:
    from seqplan.graph.conflict import conflicts
    from seqplan.graph.directions import is_feasible

    musts, shoulds = _of(Strength.MUST, reasons), _of(Strength.SHOULD, reasons)
    if is_feasible(operations, (*musts, *shoulds)):
        return Binding((*musts, *shoulds))
    found = conflicts(operations, musts)
    if found:
        return Binding(musts, shoulds, found)
    dropped = _given_up(operations, musts, shoulds, waived)
    held = (*musts, *(r for r in shoulds if r not in dropped))
    return Binding(held, dropped)


def _given_up(
    operations: Sequence[OpId],
    musts: tuple[Reason, ...],
    shoulds: tuple[Reason, ...],
    waived: Sequence[Reason],
) -> tuple[Reason, ...]:
    """The shoulds to give up; with something set aside never one that could be had without."""
    from seqplan.graph.conflict import give_up
    from seqplan.graph.directions import is_feasible

    if not waived:
        return give_up(operations, musts, shoulds)
    dropped = give_up(operations, musts, (*shoulds, *_of(Strength.SHOULD, waived)))
    candidates = [reason for reason in dropped if reason not in set(waived)]
    held = [*musts, *(reason for reason in shoulds if reason not in candidates)]
    left = []
    for reason in candidates:
        if is_feasible(operations, (*held, reason)):
            held.append(reason)
        else:
            left.append(reason)
    return tuple(left)


def _of(strength: Strength, reasons: Iterable[Reason]) -> tuple[Reason, ...]:
    return tuple(reason for reason in reasons if reason.strength is strength)
