"""The shortest cycle among arcs.

1. Operations that no cycle can pass, having no predecessor or no successor left, are peeled off.
2. A length is given to every arc: one step, and a little less where the arc is weak. The little
   is so small that a cycle of fewer arcs always wins; among cycles of equal length the one with
   most of the weakest arcs wins, then the one with most of the next weakest.
3. Every cycle is looked for from the member that stands first in the author's order: distances
   *to* that start, over later operations only, cut off at the best cycle known.
4. From the start the walk follows the arcs that keep to the distances, the earliest operation
   first, so that equal cycles are told apart by the author's order.

Cost: n times ``m log n`` at worst for n operations and m arcs; the cut makes it far less. In a
tangle so large that more than `MOST_STEPS` are taken, the shortest cycle met by then is given.
"""

from collections.abc import Mapping, Sequence
from heapq import heappop, heappush
from typing import Final, TypeAlias

from seqplan.base.ids import OpId
from seqplan.graph.precedence import index_operations
from seqplan.graph.reason import Arc

MOST_STEPS: Final = 60_000
"""Operations that distances are measured to, in all, before what is found is good enough."""

Lengths: TypeAlias = dict[int, dict[int, int]]
"""For every index the arcs into it, or out of it, each with its length."""


def shortest_cycle(
    operations: Sequence[OpId], weights: Mapping[Arc, int]
) -> tuple[Arc, ...] | None:
    """Find a shortest cycle, of several the one with the weakest arcs.

    Parameters
    ----------
    operations
        Every operation once, in the author's order; the cycle starts at the member that
        stands first in it.
    weights
        Every arc with its strength; a smaller number is weaker.

    Returns
    -------
    tuple of Arc, or None
        Each arc's ``after`` is the next one's ``before``, the last one's is the first one's.
        None when there is no cycle.
    """
    index = index_operations(operations)
    outward = _peeled(_lengths(index, weights))
    inward = _turned(outward)
    best: list[int] = []
    cut: int | None = None
    steps = 0
    for start in sorted(outward):
        if best and steps > MOST_STEPS:
            break
        distance = _distances_to(start, inward, cut)
        steps += len(distance)
        if start in distance:
            cut = distance[start]
            best = _walk(start, outward, distance)
    if not best:
        return None
    ends = [*best[1:], best[0]]
    return tuple(
        Arc(operations[node], operations[after]) for node, after in zip(best, ends, strict=True)
    )


def _lengths(index: Mapping[OpId, int], weights: Mapping[Arc, int]) -> Lengths:
    """Turn strengths into lengths that rank cycles by arcs first, by weakness second."""
    levels = sorted(set(weights.values()))
    base = len(index) + 1
    step = base ** len(levels)
    length = {level: step - base ** (len(levels) - 1 - place) for place, level in enumerate(levels)}
    outward: Lengths = {}
    for arc, weight in weights.items():
        outward.setdefault(index[arc.before], {})[index[arc.after]] = length[weight]
    return outward


def _turned(lengths: Lengths) -> Lengths:
    turned: Lengths = {}
    for node, ends in lengths.items():
        for after, length in ends.items():
            turned.setdefault(after, {})[node] = length
    return turned


def _peeled(outward: Lengths) -> Lengths:
    """Keep only operations with arcs in and out, again and again until none goes."""
    while True:
        inner = set(outward) & {after for ends in outward.values() for after in ends}
        kept = {
            node: {after: length for after, length in outward[node].items() if after in inner}
            for node in inner
        }
        kept = {node: ends for node, ends in kept.items() if ends}
        if kept == outward:
            return kept
        outward = kept


def _distances_to(start: int, inward: Lengths, cut: int | None) -> dict[int, int]:
    """Measure the way from later operations to the start; from the start, the way round.

    Only a way round shorter than ``cut`` is found.
    """
    distance: dict[int, int] = {}
    queue = [(0, start)]
    while queue:
        length, node = heappop(queue)
        if node in distance:
            continue
        if length:
            distance[node] = length
        if node == start and length:
            break
        for before, step in inward.get(node, {}).items():
            reached = length + step
            if before >= start and before not in distance and (cut is None or reached < cut):
                heappush(queue, (reached, before))
    return distance


def _walk(start: int, outward: Lengths, distance: Mapping[int, int]) -> list[int]:
    """Follow the shortest way round from the start, the earliest operation first."""
    left = {**distance, start: 0}
    walk = [start]
    rest = distance[start]
    while rest:
        steps = outward[walk[-1]]
        after = next(each for each in sorted(steps) if left.get(each) == rest - steps[each])
        walk.append(after)
        rest = left[after]
    return walk[:-1]
