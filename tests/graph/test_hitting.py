from itertools import combinations

from hypothesis import given
from hypothesis import strategies as st

from seqplan.graph.hitting import least_hitting_set

SETS = st.lists(st.frozensets(st.integers(0, 6), min_size=1, max_size=4), max_size=7)
WEIGHTS = st.lists(st.integers(1, 3), min_size=7, max_size=7)


@given(SETS, WEIGHTS)
def test_the_least_hitting_set_is_the_least_of_all(sets, weights):
    hitting = [
        (size, sum(weights[each] for each in members), members)
        for size in range(8)
        for members in combinations(range(7), size)
        if all(target & set(members) for target in sets)
    ]
    assert least_hitting_set(sets, weights) == min(hitting)[2]


def test_nothing_hits_no_sets():
    assert least_hitting_set([], []) == ()


def test_three_sets_that_overlap_in_pairs_take_two_members():
    pairs = [frozenset({0, 1}), frozenset({1, 2}), frozenset({0, 2})]
    assert least_hitting_set(pairs, [3, 1, 2]) == (1, 2)
