from strategies import reason

from seqplan.graph.choices import Problem
from seqplan.order.entries import ANY, Side, count_entries, find_prices

CHAIN = Problem.of("abcd", [reason("ab"), reason("bc"), reason("cd")]).start.closure
FREE = Problem.of("ab", []).start.closure


def side(labels, costs, start=None):
    return Side(tuple(labels), costs, len(costs) if start is None else start)


def test_what_does_not_care_does_not_part_two_entries():
    """The chain 0, any, 1, 0 enters 0 twice, or once if it is there already, and 1 once.

    From the second operation on, it need not enter 1 if it is there.
    """
    entries = count_entries(CHAIN, side((0, ANY, 1, 0), ((0, 1), (1, 0))))
    assert entries.afresh == [[0b1111, 0b1111, 0b0001], [0b1111, 0b0111]]
    assert entries.again == [[0b1111, 0b0111], [0b1111, 0b0001]]


def test_where_a_change_costs_what_it_leads_to_that_is_the_price():
    prices = find_prices(CHAIN, side((0, 1, 2, 0), ((0, 5, 2), (3, 0, 2), (3, 5, 0))), (2, 1, 1))
    assert prices.entering == [3, 5, 2]
    assert prices.leaving == [0, 0, 0, -5]


def least(prices):
    """Add up what the walk costs at least: every state is entered once and left once."""
    return sum(prices.leaving) + sum(prices.entering) - prices.last


def test_a_change_that_the_arcs_forbid_is_not_reckoned_with():
    """Of 0 to 1, at 9, and 1 to 0, at 1, a free pair takes the latter; on a chain it cannot."""
    costs = ((0, 9, 9), (1, 0, 9), (2, 2, 0))
    chain = Problem.of("ab", [reason("ab")]).start.closure
    assert least(find_prices(FREE, side((0, 1), costs), (1, 1, 0))) == 1
    assert least(find_prices(chain, side((0, 1), costs), (1, 1, 0))) == 9


def test_prices_of_leaving_and_entering_together_are_never_more_than_the_change():
    costs = ((0, 7, 3), (2, 0, 6), (4, 1, 0))
    prices = find_prices(CHAIN, side((0, 1, 2, 0), costs), (2, 1, 1))
    for one in range(3):
        assert prices.leaving[one] <= prices.last
        for other in range(3):
            if one != other:
                assert prices.leaving[one] + prices.entering[other] <= costs[one][other]
