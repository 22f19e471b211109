from strategies import reason

from seqplan.order.fewest import fewest_changes
from seqplan.order.observer import Observer
from seqplan.order.repair import fewest_moves
from seqplan.order.result import Proof


class Diary(Observer):
    def __init__(self):
        self.bounds, self.costs, self.states, self.cases = [], [], [], []

    def took_up(self, states):
        self.states.append(states)

    def raised(self, lower_bound):
        self.bounds.append(lower_bound)

    def found(self, order, cost):
        self.costs.append(cost)

    def branched(self, alternatives):
        self.cases.append(alternatives)


def test_a_case_without_any_order_is_dropped():
    """Each alternative fits by itself; which of them fit together shows only in the search."""
    given_reasons = [reason("da", "dc"), reason("ca", "ba"), reason("ad bc", "de ed")]
    setup_of = {"a": 2, "b": 3, "c": 3, "d": 3, "e": 2}
    result = fewest_changes("abcde", given_reasons, setup_of)
    assert result.proof is Proof.OPTIMAL


def test_an_observer_hears_states_bounds_orders_and_cases():
    """None of the three either-ors holds as written; two moves are enough for all."""
    given_reasons = [reason("ba", "dc fe"), reason("dc", "fe ba"), reason("fe", "hg ji")]
    diary = Diary()
    repair = fewest_moves("abcdefghij", given_reasons, observer=diary)
    assert len(repair.moved) == 2
    assert diary.costs == sorted(set(diary.costs), reverse=True)
    assert diary.costs[-1] == diary.bounds[-1] == 2
    assert diary.bounds == sorted(set(diary.bounds))
    assert diary.states == list(range(1, len(diary.states) + 1))
