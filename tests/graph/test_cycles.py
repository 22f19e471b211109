from itertools import pairwise

import networkx as nx
from hypothesis import given, settings
from hypothesis import strategies as st
from strategies import LETTERS, arcs

from seqplan.graph.cycles import shortest_cycle
from seqplan.graph.reason import Arc


def weigh(**weights):
    return {Arc(*name): weight for name, weight in weights.items()}


def words(cycle):
    return [arc.before + arc.after for arc in cycle]


def test_no_cycle_is_reported_where_there_is_none():
    assert shortest_cycle("abc", weigh(ab=3, bc=3, ac=3)) is None


def test_the_shorter_of_two_cycles_is_reported():
    weights = weigh(ab=1, bc=1, ca=1, de=3, ed=3)
    assert words(shortest_cycle("abcde", weights)) == ["de", "ed"]


def test_a_cycle_starts_at_the_operation_written_first():
    assert words(shortest_cycle("cab", weigh(ab=3, bc=3, ca=3))) == ["ca", "ab", "bc"]


def test_of_equally_short_cycles_the_one_with_the_weakest_arc_is_reported():
    weights = weigh(ab=3, ba=3, cd=3, dc=2)
    assert words(shortest_cycle("abcd", weights)) == ["cd", "dc"]


def test_one_weakest_arc_counts_more_than_several_of_the_next():
    weights = weigh(ab=2, bc=2, ca=2, de=3, ef=3, fd=1)
    assert words(shortest_cycle("abcdef", weights)) == ["de", "ef", "fd"]


def test_of_equal_cycles_the_one_written_first_is_reported():
    weights = weigh(ab=3, bd=3, da=3, ac=3, cd=3)
    assert words(shortest_cycle("acbd", weights)) == ["ac", "cd", "da"]


def test_an_operation_before_itself_is_a_cycle_of_one_arc():
    assert words(shortest_cycle("ab", weigh(ab=3, bb=3))) == ["bb"]


@given(
    st.dictionaries(arcs(LETTERS[:6]), st.integers(1, 3), max_size=14), st.permutations(LETTERS[:6])
)
@settings(max_examples=90)
def test_the_cycle_is_the_best_of_all_cycles(weights, names):
    graph = nx.DiGraph([(arc.before, arc.after) for arc in weights])
    every = [
        [Arc(*pair) for pair in pairwise([*nodes, nodes[0]])] for nodes in nx.simple_cycles(graph)
    ]
    found = shortest_cycle(names, weights)
    if not every:
        assert found is None
        return
    assert all(one.after == other.before for one, other in pairwise([*found, found[0]]))

    def rank(cycle):
        return len(cycle), sorted(weights[arc] for arc in cycle)

    assert rank(found) == min(map(rank, every))
