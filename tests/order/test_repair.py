import oracles
from hypothesis import given, settings
from hypothesis import strategies as st
from strategies import problems, reason

from seqplan.graph.precedence import Precedence, arcs_of
from seqplan.order.limits import StateLimit
from seqplan.order.repair import fewest_moves
from seqplan.order.result import Proof


def agrees(problem):
    names, given_reasons = problem
    expected = oracles.fewest_moves(names, given_reasons)
    repair = fewest_moves(names, given_reasons)
    if expected is None:
        assert (repair.order, repair.moved, repair.kept) == (None, (), ())
        assert repair.proof is Proof.INFEASIBLE
        return
    assert repair.proof is Proof.OPTIMAL
    assert len(repair.moved) == expected
    assert oracles.holds(repair.order, given_reasons)
    assert sorted(repair.order) == sorted(names)
    assert sorted(repair.moved + repair.kept) == sorted(names)
    assert repair.moved == tuple(each for each in repair.order if each in repair.moved)
    for order in (repair.order, names):
        assert tuple(each for each in order if each in repair.kept) == repair.kept


@given(problems(most=6, most_arcs=9, most_choices=0, acyclic=True))
@settings(max_examples=100)
def test_plain_arcs_need_as_few_moves_as_trying_every_order_says(problem):
    agrees(problem)


@given(problems(most=6, most_choices=5, acyclic=True))
@settings(max_examples=100)
def test_either_ors_need_as_few_moves_as_trying_every_order_says(problem):
    agrees(problem)


@given(problems(most=5, most_choices=6))
@settings(max_examples=60)
def test_what_cannot_be_repaired_is_called_infeasible(problem):
    agrees(problem)


@given(problems(most=8, acyclic=True), st.randoms(use_true_random=False))
@settings(max_examples=60)
def test_shuffled_reasons_give_the_same_repair(problem, shuffler):
    names, given_reasons = problem
    shuffled = list(given_reasons)
    shuffler.shuffle(shuffled)
    assert fewest_moves(names, shuffled) == fewest_moves(names, given_reasons)


@given(problems(most=12, most_arcs=14, most_choices=0, acyclic=True))
@settings(max_examples=60)
def test_a_valid_text_comes_back_unchanged(problem):
    names, given_reasons = problem
    order = Precedence.of(names, arcs_of(given_reasons)).topological_order()
    repair = fewest_moves(order, given_reasons)
    assert repair.order == repair.kept == order
    assert repair.moved == ()


@given(problems(most=6, acyclic=True), st.integers(0, 2))
@settings(max_examples=60)
def test_a_repair_that_is_stopped_is_valid_and_owns_up(problem, most):
    names, given_reasons = problem
    expected = oracles.fewest_moves(names, given_reasons)
    repair = fewest_moves(names, given_reasons, limit=StateLimit(most))
    if expected is None:
        assert repair.order is None
        return
    assert oracles.holds(repair.order, given_reasons)
    assert len(repair.moved) >= expected
    assert repair.proof is not Proof.OPTIMAL or len(repair.moved) == expected


def test_of_two_that_clash_the_one_written_too_early_moves_just_below():
    repair = fewest_moves("abcde", [reason("db")])
    assert repair.order == ("a", "c", "d", "b", "e")
    assert repair.moved == ("b",)


def test_one_that_many_wait_for_moves_up_instead():
    repair = fewest_moves("abcde", [reason("ea"), reason("eb"), reason("ec")])
    assert repair.order == ("e", "a", "b", "c", "d")
    assert repair.moved == ("e",)


def test_operations_that_move_to_one_place_keep_their_written_order():
    repair = fewest_moves("abcde", [reason("da"), reason("db"), reason("ea"), reason("eb")])
    assert repair.order == ("c", "d", "e", "a", "b")
    assert repair.moved == ("a", "b")


def test_an_operation_moves_no_further_than_it_must():
    repair = fewest_moves("abcdef", [reason("ca"), reason("ae")])
    assert repair.order == ("b", "c", "a", "d", "e", "f")


def test_an_either_or_that_the_text_holds_moves_nothing():
    assert fewest_moves("abc", [reason("cb", "ab")]).order == ("a", "b", "c")


def test_the_alternative_with_fewer_moves_is_taken():
    repair = fewest_moves("abcd", [reason("ba dc", "da db dc")])
    assert repair.moved == ("d",)
