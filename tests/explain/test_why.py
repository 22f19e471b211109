"""Why an operation stands where it stands."""

from itertools import pairwise

import networkx as nx
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from plan.garments import shipped

from seqplan.explain.why import Explainer
from seqplan.plan.binding import bind
from seqplan.recipes.expand import construct
from seqplan.rules.derive import derive


def _explained(garment):
    c, _ = construct(garment)
    binding = bind(c.ids, derive(c))
    graph = nx.DiGraph()
    graph.add_nodes_from(c.ids)
    for reason in binding.held:
        if not reason.is_either_or:
            graph.add_edges_from(
                (arc.before, arc.after) for bundle in reason.alternatives for arc in bundle
            )
    return c, Explainer(c, binding.held), graph


@given(st.data())
@settings(max_examples=40)
def test_two_operations_are_free_exactly_when_no_path_joins_them_and_chains_are_shortest(data):
    c, explainer, graph = _explained(data.draw(st.sampled_from(shipped())))
    parts = [op.id for op in c.operations if op.part or len(c.of_entry[op.entry]) == 1]
    one, other = data.draw(st.permutations(parts))[:2]
    between = explainer.between(one, other)
    forward, backward = nx.has_path(graph, one, other), nx.has_path(graph, other, one)
    assert between.is_free == (not forward and not backward)
    if not between.is_free:
        chain = between.chain
        assert chain[0].arc.before == between.first
        assert chain[-1].arc.after == between.second
        assert all(a.arc.after == b.arc.before for a, b in pairwise(chain))
        assert len(chain) == nx.shortest_path_length(graph, between.first, between.second)


@given(st.data())
@settings(max_examples=40)
def test_near_and_far_together_are_all_that_comes_before_and_after(data):
    c, explainer, graph = _explained(data.draw(st.sampled_from(shipped())))
    entry = data.draw(st.sampled_from(list(c.garment.entry)))
    place = explainer.place(entry)
    own = {op.id for op in c.of_entry[entry]}
    before = {ground.arc.before for ground in place.before} | set(place.long_before)
    after = {ground.arc.after for ground in place.after} | set(place.long_after)
    assert before >= set().union(*(nx.ancestors(graph, op) for op in own)) - own - after
    assert after >= set().union(*(nx.descendants(graph, op) for op in own)) - own - before


def test_a_name_that_the_garment_lacks_is_a_key_error():
    _, explainer, _ = _explained(shipped()[0])
    with pytest.raises(KeyError, match="lapel"):
        explainer.place("lapel")
