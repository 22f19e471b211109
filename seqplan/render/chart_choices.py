"""Either-ors that are left open, as they are drawn in a chart.

Two boxes of which one waits for the other, whichever is first, get one line between them. Anything
else becomes a fork: lines from what may come before to what may wait, one of which must hold.
"""

from collections.abc import Iterable, Mapping
from dataclasses import dataclass

from seqplan.base.ids import OpId
from seqplan.graph.reason import Reason
from seqplan.recipes.construction import Construction


@dataclass(frozen=True, slots=True)
class Choice:
    """Either-ors that speak of the same boxes; boxes are given by their index.

    Parameters
    ----------
    ends
        The two boxes of which one waits for the other, in the written order; empty for a fork.
    before, after
        For a fork: the boxes that may come first, and those that may wait.
    reasons
        Why.
    """

    ends: tuple[int, ...]
    before: tuple[int, ...]
    after: tuple[int, ...]
    reasons: tuple[Reason, ...]


def find_choices(
    c: Construction, reasons: Iterable[Reason], box_of: Mapping[OpId, int]
) -> tuple[Choice, ...]:
    """Gather either-ors by the boxes that they speak of.

    Parameters
    ----------
    c
        The garment.
    reasons
        The either-ors.
    box_of
        In which box every operation stands.
    """
    place = {id_: number for number, id_ in enumerate(c.ids)}
    found: dict[tuple[tuple[int, ...], ...], list[Reason]] = {}
    for reason in reasons:
        waiting = _waiting(c, reason)
        ends = tuple(box_of[id_] for id_ in sorted(waiting, key=place.__getitem__))
        if len(set(ends)) == 2:
            key: tuple[tuple[int, ...], ...] = (ends, (), ())
        else:
            arcs = [arc for bundle in reason.alternatives for arc in bundle]
            before, after = ({box_of[a.before] for a in arcs}, {box_of[a.after] for a in arcs})
            key = ((), tuple(sorted(before)), tuple(sorted(after - before)))
        found.setdefault(key, []).append(reason)
    return tuple(
        Choice(ends, before, after, tuple(held))
        for (ends, before, after), held in sorted(found.items())
    )


def _waiting(c: Construction, reason: Reason) -> tuple[OpId, ...]:
    """The two operations of which one waits for the other; nothing if it is not so simple."""
    after = [tuple({arc.after for arc in bundle}) for bundle in reason.alternatives]
    if len(after) != 2 or any(len(ids) != 1 for ids in after):
        return ()
    (one,), (other,) = after
    first, second = ({c.op[arc.before].entry for arc in bundle} for bundle in reason.alternatives)
    if c.op[other].entry in first and c.op[one].entry in second:
        return one, other
    return ()
