"""The cheapest order, against trying every order."""

import random
from itertools import combinations

import oracles
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from strategies import LETTERS, problems, reason, reasons

from seqplan.graph.choices import Problem
from seqplan.order.changes import Changes, Track
from seqplan.order.cheapest import CheapestSearch
from seqplan.order.fewest import cheapest_order
from seqplan.order.limits import Meter, StateLimit, no_limit
from seqplan.order.observer import Observer
from seqplan.order.result import Proof


class Drawn:
    """Tracks and reasons from a seed."""

    def __init__(self, seed):
        self.random = random.Random(seed)

    def price(self):
        return self.random.randint(0, 9)

    def table(self, size, kind):
        rows = [[0 if a == b else self.price() for b in range(size)] for a in range(size)]
        if kind == "symmetric":
            rows = [[rows[min(a, b)][max(a, b)] for b in range(size)] for a in range(size)]
        return tuple(map(tuple, rows))

    def track(self, names, kind):
        """Draw one track; what it is like is said by its kind."""
        states = tuple(range(len(names) if kind == "one state each" else 4))
        start = self.random.choice((None, *states)) if states else None
        if kind == "one state each":
            return Track(dict(zip(names, states, strict=True)), states, self.table(len(states), ""))
        if kind in ("attribute", "entering"):
            needs = {name: self.random.choice(states) for name in names if self.price() < 7}
            if kind == "attribute":
                return Track.even(needs, self.price(), start)
            return Track.entering(needs, {state: self.price() for state in states}, start)
        needs = {name: self.random.choice(states) for name in names}
        track = Track(needs, states, self.table(4, kind), start)
        return track.through() if kind == "through others" else track

    def arcs(self, names):
        """Draw arcs that follow a hidden order."""
        hidden = self.random.sample(names, len(names))
        share = self.random.choice((0.1, 0.3, 0.6))
        pairs = combinations(hidden, 2)
        return [reason(a + b) for a, b in pairs if self.random.random() < share]

    def either_ors(self, names):
        def bundle():
            count = self.random.randint(1, 2)
            return " ".join("".join(self.random.sample(names, 2)) for _ in range(count))

        return [reason(bundle(), bundle()) for _ in range(self.random.randint(1, 3))]


KINDS = {
    "one attribute": ["attribute"],
    "several attributes": ["attribute", "attribute", "entering"],
    "a symmetric table": ["symmetric"],
    "any table": ["any"],
    "a table of cheapest ways": ["through others"],
    "a table with a state for each": ["one state each"],
    "all together": ["through others", "attribute", "one state each"],
}


def agrees(names, given_reasons, tracks):
    """Search and compare; the answer."""
    best = oracles.least_price(names, given_reasons, tracks)
    result = cheapest_order(names, given_reasons, Changes(tuple(tracks)))
    if best is None:
        assert result.proof is Proof.INFEASIBLE
        return
    assert (result.proof, result.cost, result.lower_bound) == (Proof.OPTIMAL, best, best)
    assert sorted(result.order) == sorted(names)
    assert oracles.holds(result.order, given_reasons)
    assert oracles.price(result.order, tracks) == best


@pytest.mark.parametrize("kind", KINDS)
@pytest.mark.parametrize("either_ors", [False, True], ids=["arcs", "either-ors"])
def test_hundreds_of_small_graphs_cost_what_trying_every_order_says(kind, either_ors):
    for seed in range(300):
        drawn = Drawn(seed)
        names = "abcdef"[: drawn.random.randint(2, 6)]
        given_reasons = drawn.arcs(names)
        if either_ors:
            given_reasons += drawn.either_ors(names)
        agrees(names, given_reasons, [drawn.track(names, each) for each in KINDS[kind]])


@pytest.mark.parametrize("kind", KINDS)
def test_larger_graphs_cost_what_going_step_by_step_says(kind):
    for seed in range(12):
        drawn = Drawn(seed)
        names = LETTERS[: drawn.random.randint(9, 13)]
        hidden = drawn.random.sample(names, len(names))
        pairs = combinations(hidden, 2)
        given_reasons = [reason(a + b) for a, b in pairs if drawn.random.random() < 0.25]
        tracks = [drawn.track(names, each) for each in KINDS[kind]]
        arcs = [each.alternatives[0][0] for each in given_reasons]
        best = oracles.least_price_stepwise(names, arcs, tracks)
        result = cheapest_order(names, given_reasons, Changes(tuple(tracks)))
        assert result.cost == oracles.price(result.order, tracks) == best


@st.composite
def tracks_for(draw, names):
    kinds = draw(
        st.lists(
            st.sampled_from(
                KINDS["all together"] + KINDS["a symmetric table"] + KINDS["any table"]
            ),
            max_size=3,
        )
    )
    seed = draw(st.integers(0, 10**6))
    return [Drawn(seed + place).track(names, kind) for place, kind in enumerate(kinds)]


@given(problems(most=6, most_choices=3, acyclic=True), st.data())
@settings(max_examples=100)
def test_any_reasons_cost_what_trying_every_order_says(problem, data):
    names, given_reasons = problem
    agrees(names, given_reasons, data.draw(tracks_for(names)))


@given(problems(least=2, most=8, acyclic=True), st.data())
@settings(max_examples=60)
def test_one_reason_more_never_lowers_the_cost(problem, data):
    names, given_reasons = problem
    changes = Changes(tuple(data.draw(tracks_for(names))))
    more = [*given_reasons, *data.draw(reasons(names, most_arcs=1, most_choices=1))]
    before, after = (cheapest_order(names, each, changes) for each in (given_reasons, more))
    assert after.proof is Proof.INFEASIBLE or before.cost <= after.cost


@given(problems(most=6, acyclic=True), st.integers(0, 4), st.data())
@settings(max_examples=100)
def test_a_search_that_is_stopped_says_what_is_known(problem, most, data):
    names, given_reasons = problem
    tracks = data.draw(tracks_for(names))
    best = oracles.least_price(names, given_reasons, tracks)
    result = cheapest_order(names, given_reasons, Changes(tuple(tracks)), limit=StateLimit(most))
    assert result.states <= most
    if best is None:
        assert result.proof is Proof.INFEASIBLE
        return
    assert result.lower_bound <= best <= result.cost
    assert (result.gap == 0) == (result.proof is Proof.OPTIMAL)
    assert oracles.holds(result.order, given_reasons)
    assert oracles.price(result.order, tracks) == result.cost


@given(problems(most=6, acyclic=True), st.randoms(use_true_random=False), st.data())
@settings(max_examples=60)
def test_shuffled_reasons_give_the_same_order(problem, shuffler, data):
    names, given_reasons = problem
    changes = Changes(tuple(data.draw(tracks_for(names))))
    shuffled = list(given_reasons)
    shuffler.shuffle(shuffled)
    assert cheapest_order(names, shuffled, changes) == cheapest_order(names, given_reasons, changes)


@given(problems(least=1, most=6, most_choices=0, acyclic=True), st.data())
@settings(max_examples=100)
def test_bound_and_quick_orders_enclose_the_optimum(problem, data):
    names, given_reasons = problem
    tracks = data.draw(tracks_for(names))
    search = CheapestSearch(names, Changes(tuple(tracks)))
    closure = Problem.of(names, given_reasons).start.closure
    best = oracles.least_price(names, given_reasons, tracks)
    assert search.bound(closure) <= best
    for cost, order in (search.quick(closure), search.thorough(closure)):
        assert best <= cost == oracles.price([names[node] for node in order], tracks)
    for ceiling in (best, best + 1):
        answer = search.solve(closure, ceiling, Meter(no_limit, Observer()))
        assert answer.lower == best
        assert (answer.order is None) == (ceiling == best)


def test_a_stop_on_the_way_pays_where_the_table_says_so():
    """Going from a to b by way of c is cheaper than straight on; that only an order can say."""
    rows = ((0, 9, 1), (9, 0, 9), (9, 1, 0))
    track = Track({"a": 0, "b": 1, "c": 2}, (0, 1, 2), rows)
    assert cheapest_order("abc", [reason("ab")], Changes((track,))).order == ("a", "c", "b")


def test_work_that_is_ready_waits_where_that_is_cheaper():
    """From a the way to d leads by b or c; both are ready at the first visit, one has to wait."""
    rows = ((0, 1, 9), (1, 0, 1), (9, 1, 0))
    needs = dict(zip("abcde", (0, 1, 1, 2, 0), strict=True))
    track = Track(needs, (0, 1, 2), rows)
    given_reasons = [reason("ab"), reason("ac"), reason("bd"), reason("de")]
    result = cheapest_order("abcde", given_reasons, Changes((track,)))
    assert result.order == ("a", "b", "d", "c", "e")
    assert result.cost == 4
