"""The least set that has a member in common with every one of several sets.

1. The size of the answer is tried from below: first the number of sets that share nothing, as
   each of those needs a member of its own, then one more, and so on.
2. For a size, take the first smallest set not hit yet and try each of its members; members
   tried before are not taken again further down, so no answer is met twice.
3. A branch ends when the sets still to hit that share nothing outnumber the members left.
4. All answers of the least size are compared: least weight wins, then the least members.

Cost: exponential in the answer's size, with the size of the sets as base.
"""

from collections.abc import Iterable, Sequence


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
    targets = [frozenset(each) for each in wanted]
    size = _disjoint(targets)
    while True:
        answers = list(_answers(targets, size, frozenset()))
        if answers:
            return min(answers, key=lambda each: (sum(weights[index] for index in each), each))
        size += 1


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
    targets: Sequence[frozenset[int]], size: int, barred: frozenset[int]
) -> Iterable[tuple[int, ...]]:
    """List the hitting sets of at most this size without barred members, each sorted."""
    if not targets:
        yield ()
        return
    if _disjoint(targets) > size:
        return
    for member in sorted(targets[0] - barred):
        rest = [target for target in targets if member not in target]
        for answer in _answers(rest, size - 1, barred):
            yield tuple(sorted((*answer, member)))
        barred |= {member}
