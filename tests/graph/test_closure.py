import networkx as nx
from hypothesis import given, settings
from hypothesis import strategies as st

from seqplan.graph.bits import bits, mask_of
from seqplan.graph.closure import Closure, close

PAIRS = st.lists(st.tuples(st.integers(0, 6), st.integers(0, 6)), max_size=15)


@given(PAIRS)
@settings(max_examples=100)
def test_arcs_added_one_by_one_give_what_networkx_finds_or_are_refused(pairs):
    closure = Closure(7)
    graph = nx.empty_graph(7, create_using=nx.DiGraph)
    for before, after in pairs:
        closes = before == after or nx.has_path(graph, after, before)
        assert closure.refuses([(before, after)]) == closes
        assert closure.add(before, after) == (not closes)
        if not closes:
            graph.add_edge(before, after)
            assert closure.has(before, after)
    for node in range(7):
        assert set(bits(closure.descendants[node])) == nx.descendants(graph, node)
        assert set(bits(closure.ancestors[node])) == nx.ancestors(graph, node)


@given(PAIRS)
@settings(max_examples=100)
def test_arcs_closed_at_once_give_the_same(pairs):
    one_by_one = Closure(7)
    fits = one_by_one.add_all(pairs)
    at_once = close(7, pairs)
    assert (at_once is not None) == fits
    if at_once is not None:
        assert at_once.ancestors == one_by_one.ancestors
        assert at_once.descendants == one_by_one.descendants


def test_a_copy_grows_on_its_own():
    first = close(3, [(0, 1)])
    second = first.copy()
    assert second.add(1, 2)
    assert second.has_all([(0, 1), (0, 2)])
    assert not first.has(0, 2)


def test_a_walk_follows_the_indices_as_far_as_the_arcs_allow():
    closure = close(5, [(4, 0), (3, 2), (2, 1)])
    assert closure.walk(0b11111) == [3, 2, 1, 4, 0]
    assert closure.walk(0b01010) == [3, 1]


def test_sorted_indices_point_forwards():
    order = close(5, [(4, 0), (3, 2), (2, 1)]).sorted_indices()
    assert order == [3, 4, 0, 2, 1]


def test_bits_and_masks_are_inverse():
    assert bits(mask_of([5, 0, 3])) == [0, 3, 5]
