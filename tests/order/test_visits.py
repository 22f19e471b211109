import oracles
from hypothesis import given, settings
from hypothesis import strategies as st
from strategies import problems, reason, setups

from seqplan.graph.choices import Problem
from seqplan.order.limits import Meter, no_limit
from seqplan.order.observer import Observer
from seqplan.order.visits import VisitSearch, chain_levels, changes


@given(problems(least=1, most=6, most_arcs=9, most_choices=0, acyclic=True), st.data())
@settings(max_examples=100)
def test_bound_and_quick_order_enclose_the_optimum(problem, data):
    names, given_reasons = problem
    setup_of = data.draw(setups(names))
    numbers = sorted(set(setup_of.values()))
    search = VisitSearch([numbers.index(setup_of[name]) for name in names])
    closure = Problem.of(names, given_reasons).start.closure
    best = oracles.fewest_changes(names, given_reasons, setup_of)
    cost, order = search.quick(closure)
    assert search.bound(closure) <= best <= cost
    assert oracles.changes([names[node] for node in order], setup_of) == cost
    for ceiling in (best, best + 1):
        answer = search.solve(closure, ceiling, Meter(no_limit, Observer()))
        assert answer.lower == best
        assert (answer.order is None) == (ceiling == best)


def test_visits_on_a_chain_are_counted_from_every_operation_on():
    """a1 b2 c1 d1: set-up 0 is visited twice from a on, once from b on."""
    closure = Problem.of("abcd", [reason("ab"), reason("bc"), reason("cd")]).start.closure
    assert chain_levels(closure, [0, 1, 0, 0]) == [[0b1111, 0b1111, 0b0001], [0b1111, 0b0011]]


def test_the_first_set_up_is_free():
    assert [changes(visits) for visits in range(3)] == [0, 0, 1]
