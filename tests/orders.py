"""Random orders that hold all of some reasons."""

import random
from collections.abc import Iterator, Sequence

from seqplan.base.ids import OpId
from seqplan.graph.reason import Reason


def sound_orders(
    operations: Sequence[OpId], reasons: Sequence[Reason], count: int, seed: int = 0
) -> Iterator[tuple[OpId, ...]]:
    """Draw orders in which every reason holds, either-ors by one of their alternatives.

    An operation may come next when no reason loses its last alternative by it; where that leads
    into a corner, the draw begins anew.
    """
    draw = random.Random(seed)
    made = 0
    while made < count:
        order = _draw(operations, reasons, draw)
        if order is not None:
            made += 1
            yield order


def _draw(
    operations: Sequence[OpId], reasons: Sequence[Reason], draw: random.Random
) -> tuple[OpId, ...] | None:
    alive = [list(reason.alternatives) for reason in reasons]
    asking: dict[OpId, list[int]] = {}
    for number, reason in enumerate(reasons):
        for bundle in reason.alternatives:
            for arc in bundle:
                asking.setdefault(arc.after, []).append(number)
    left, placed = list(operations), set()
    order = []
    while left:
        ready = []
        for op in left:
            if all(
                any(_survives(bundle, op, placed) for bundle in alive[number])
                for number in asking.get(op, ())
            ):
                ready.append(op)
        if not ready:
            return None
        op = draw.choice(ready)
        for number in asking.get(op, ()):
            alive[number] = [b for b in alive[number] if _survives(b, op, placed)]
        left.remove(op)
        placed.add(op)
        order.append(op)
    return tuple(order)


def _survives(bundle, op, placed):
    return all(arc.after != op or arc.before in placed for arc in bundle)
