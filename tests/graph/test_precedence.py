from itertools import pairwise

import networkx as nx
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from strategies import LETTERS, arcs, reason

from seqplan.graph.precedence import CyclicError, Precedence, UnknownOperationError, arcs_of
from seqplan.graph.reason import Arc


def arc(text):
    return Arc(text[0], text[1])


def graph(names, *texts):
    return Precedence.of(names, map(arc, texts))


@st.composite
def acyclic(draw, most=12):
    names = LETTERS[: draw(st.integers(2, most))]
    drawn = draw(st.lists(arcs(names), max_size=30))
    return Precedence.of(
        draw(st.permutations(names)),
        [Arc(min(each.before, each.after), max(each.before, each.after)) for each in drawn],
    )


def judge(precedence):
    other = nx.DiGraph()
    other.add_nodes_from(precedence.operations)
    other.add_edges_from((each.before, each.after) for each in precedence.arcs)
    return other


@given(acyclic())
def test_the_reduction_is_the_one_networkx_finds(precedence):
    expected = nx.transitive_reduction(judge(precedence)).edges
    assert {(each.before, each.after) for each in precedence.transitive_reduction()} == set(
        expected
    )


@given(acyclic())
def test_ancestors_and_descendants_are_those_networkx_finds(precedence):
    other = judge(precedence)
    for name in precedence.operations:
        assert precedence.descendants(name) == nx.descendants(other, name)
        assert precedence.ancestors(name) == nx.ancestors(other, name)
        for after in precedence.operations:
            assert precedence.reaches(name, after) == (after in nx.descendants(other, name))


@given(acyclic())
def test_the_longest_chain_is_a_chain_and_as_long_as_networkx_says(precedence):
    chain = precedence.longest_chain()
    assert len(chain) == nx.dag_longest_path_length(judge(precedence)) + 1
    assert all(Arc(*pair) in precedence.arcs for pair in pairwise(chain))


@given(acyclic())
def test_a_topological_order_holds_every_arc(precedence):
    order = precedence.topological_order()
    place = {name: number for number, name in enumerate(order)}
    assert sorted(order) == sorted(precedence.operations)
    assert all(place[each.before] < place[each.after] for each in precedence.arcs)


@given(st.lists(arcs(LETTERS[:6]), max_size=12))
@settings(max_examples=100)
def test_a_graph_is_acyclic_exactly_when_networkx_says_so(drawn):
    precedence = Precedence.of(LETTERS[:6], drawn)
    assert precedence.is_acyclic == nx.is_directed_acyclic_graph(judge(precedence))


def test_the_written_order_is_kept_where_no_arc_speaks_against_it():
    assert graph("dbca", "ad").topological_order() == ("b", "c", "a", "d")


def test_a_priority_replaces_the_written_order():
    priority = {"a": 1, "b": 3, "c": 2}
    assert graph("abc").topological_order(priority) == ("a", "c", "b")


def test_of_two_longest_chains_the_earlier_in_the_text_is_named():
    assert graph("abcd", "ac", "bd").longest_chain() == ("a", "c")


def test_nothing_has_an_order_and_no_chain():
    assert graph("").topological_order() == ()
    assert graph("").longest_chain() == ()


def test_predecessors_are_the_direct_ones():
    assert graph("abc", "ab", "bc").predecessors("c") == {"b"}


def test_only_reasons_without_a_choice_give_arcs():
    assert list(arcs_of([reason("ab cb"), reason("bc", "ca")])) == [arc("ab"), arc("cb")]


@pytest.mark.parametrize(
    "ask",
    [
        lambda circle: circle.topological_order(),
        lambda circle: circle.topological_order({"a": 2, "b": 1}),
        lambda circle: circle.ancestors("a"),
        lambda circle: circle.descendants("a"),
        lambda circle: circle.transitive_reduction(),
        lambda circle: circle.longest_chain(),
    ],
)
def test_a_circle_has_neither_order_nor_closure(ask):
    with pytest.raises(CyclicError, match="run in a circle"):
        ask(graph("ab", "ab", "ba"))


def test_an_arc_to_an_unknown_operation_is_refused():
    with pytest.raises(UnknownOperationError, match="`x` is not among the operations"):
        graph("ab", "ax")


def test_an_operation_that_stands_twice_is_refused():
    with pytest.raises(ValueError, match="`a` stands twice"):
        graph("aba")
