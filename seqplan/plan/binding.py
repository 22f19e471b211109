"""Which reasons bind an order: every must, and every should that can be had with the others."""

from __future__ import annotations

from collections.abc import Sequence
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
    is_written_order_valid
        Whether the written order holds every one of these reasons, so that nothing was given up.
    preferred
        What is only preferred: it binds nothing, and a booklet keeps what the author keeps of it.
    """

    held: tuple[Reason, ...]
    given_up: tuple[Reason, ...] = ()
    conflicts: tuple[Conflict, ...] = ()
    is_written_order_valid: bool = False
    preferred: tuple[Reason, ...] = ()


def bind(operations: Sequence[OpId], reasons: Sequence[Reason]) -> Binding:
    """Decide which reasons bind.

    Parameters
    ----------
    operations
        Every operation once.
    reasons
        All reasons; those that only prefer bind nothing.
    """
    position = {id_: place for place, id_ in enumerate(operations)}
    binding = tuple(r for r in reasons if r.strength is not Strength.PREFER)
    preferred = tuple(r for r in reasons if r.strength is Strength.PREFER)
    if all(reason.is_held(position) for reason in binding):
        # The written order shows that all can be had; nothing need be searched, nor imported.
        return Binding(binding, is_written_order_valid=True, preferred=preferred)
    return _search(operations, binding)._replace(preferred=preferred)


def _search(operations: Sequence[OpId], reasons: Sequence[Reason]) -> Binding:
    from seqplan.graph.conflict import conflicts, give_up
    from seqplan.graph.directions import is_feasible

    musts = tuple(r for r in reasons if r.strength is Strength.MUST)
    shoulds = tuple(r for r in reasons if r.strength is Strength.SHOULD)
    if is_feasible(operations, (*musts, *shoulds)):
        return Binding((*musts, *shoulds))
    found = conflicts(operations, musts)
    if found:
        return Binding(musts, shoulds, found)
    dropped = give_up(operations, musts, shoulds)
    return Binding((*musts, *(r for r in shoulds if r not in set(dropped))), dropped)
