from itertools import combinations

from hypothesis import given, settings
from hypothesis import strategies as st

from seqplan.graph.bits import bits
from seqplan.graph.closure import Closure
from seqplan.order.antichain import fewest_that_move, most_that_stay

SIZE = 7
PAIRS = st.lists(
    st.tuples(st.integers(0, SIZE - 1), st.integers(0, SIZE - 1)).filter(lambda p: p[0] < p[1]),
    max_size=16,
)


@given(PAIRS)
@settings(max_examples=100)
def test_the_largest_set_without_a_clash_is_found_and_of_those_the_latest(pairs):
    closure = Closure(SIZE)
    assert closure.add_all(pairs)
    clashes = closure.descendants
    largest = next(
        fitting
        for size in range(SIZE, -1, -1)
        if (fitting := [each for each in combinations(range(SIZE), size) if _fits(each, clashes)])
    )
    found = most_that_stay(clashes)
    assert tuple(found) in largest
    assert fewest_that_move(clashes) == SIZE - len(found)
    for other in largest:
        assert all(node in found or set(bits(clashes[node])) & set(found) for node in other)


def _fits(chosen, clashes):
    return not any(clashes[one] >> other & 1 for one, other in combinations(chosen, 2))


def test_nothing_clashes_where_there_is_nothing():
    assert most_that_stay([]) == []
