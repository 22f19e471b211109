"""The least set that has a member in common with every one of several sets.

1. Sets that share members, directly or through others, make a cluster; clusters do not touch one
   another, so each has an answer of its own.
2. The size of the answer is tried from below: first the number of sets that share nothing, as
   each of those needs a member of its own, then one more, and so on.
3. For a size, take the first smallest set not hit yet and try each of its members; members
   tried before are not taken again further down, so no answer is met twice.
4. A branch ends when the sets still to hit that share nothing outnumber the members left.
5. All answers of the least size are compared: least weight wins, then the least members.

Cost: exponential in the answer's size, with the size of the sets as base. No real garment comes
near `MOST_TRIES`; past it, the member that hits most is taken again and again, which may take a
few members more than are needed.
"""

from collections.abc import Iterable, Iterator, Sequence
from typing import Final

MOST_TRIES: Final = 100_000
"""Members tried for one cluster before the search for its least answer is broken off."""


class _TooManyTriesError(Exception):
    """The search for a least answer takes too long."""


class _Tries:
    """Counts members tried."""

    def __init__(self) -> None:
        self._left = MOST_TRIES

    def take(self) -> None:
        """Count one."""
        self._left -= 1
        if self._left < 0:
            raise _TooManyTriesError


def least_hitting_set(sets: Iterable[frozenset[int]], weights: Sequence[int]) -> tuple[int, ...]:
    """Find the fewest members that hit every set.

    Parameters
    ----------
    sets
        Sets of indices into ``weights``, none of them empty.
    weights
        What it costs to take a member; decides only between answers of equal size.

    Returns
    -------
    tuple of int
        Sorted; of equal size and weight the one that comes first in sorting.
    """
    wanted = sorted({tuple(sorted(each)) for each in sets}, key=lambda each: (len(each), each))
    hit: list[int] = []
    for cluster in _clusters([frozenset(each) for each in wanted]):
        try:
            hit.extend(_least(cluster, weights))
        except _TooManyTriesError:
            hit.extend(_greedy(cluster, weights))
    return tuple(sorted(hit))


def _clusters(targets: Sequence[frozenset[int]]) -> list[list[frozenset[int]]]:
    """Part sets into clusters that share no member; sets keep their order."""
    holding: dict[int, list[int]] = {}
    for place, target in enumerate(targets):
        for member in target:
            holding.setdefault(member, []).append(place)
    seen: set[int] = set()
    clusters = []
    for start in range(len(targets)):
        if start in seen:
            continue
        seen.add(start)
        walk = [start]
        for place in walk:
            news = {other for member in targets[place] for other in holding[member]} - seen
            seen |= news
            walk.extend(news)
        clusters.append([targets[place] for place in sorted(walk)])
    return clusters


def _least(targets: Sequence[frozenset[int]], weights: Sequence[int]) -> tuple[int, ...]:
    size = _disjoint(targets)
    tries = _Tries()
    while True:
        answers = list(_answers(targets, size, frozenset(), tries))
        if answers:
            return min(answers, key=lambda each: (sum(weights[index] for index in each), each))
        size += 1


def _greedy(targets: Sequence[frozenset[int]], weights: Sequence[int]) -> Iterator[int]:
    """Take the member that hits most, of equals the lightest, until all are hit."""
    rest = list(targets)
    while rest:
        counts: dict[int, int] = {}
        for target in rest:
            for member in target:
                counts[member] = counts.get(member, 0) + 1
        best = min(counts, key=lambda member: (-counts[member], weights[member], member))
        rest = [target for target in rest if best not in target]
        yield best


def _disjoint(targets: Sequence[frozenset[int]]) -> int:
    """Count sets, smallest first, that share no member with one counted before."""
    used: set[int] = set()
    count = 0
    for target in targets:
        if used.isdisjoint(target):
            used |= target
            count += 1
    return count


def _answers(
    targets: Sequence[frozenset[int]], size: int, barred: frozenset[int], tries: _Tries
) -> Iterable[tuple[int, ...]]:
    """List the hitting sets of at most this size without barred members, each sorted."""
    if not targets:
        yield ()
        return
    if _disjoint(targets) > size:
        return
    for member in sorted(targets[0] - barred):
        tries.take()
        rest = [target for target in targets if member not in target]
        for answer in _answers(rest, size - 1, barred, tries):
            yield tuple(sorted((*answer, member)))
        barred |= {member}
