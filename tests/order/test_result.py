from seqplan.order.limits import Meter, StateLimit, no_limit
from seqplan.order.observer import Observer
from seqplan.order.result import Proof, SearchResult


def test_the_gap_is_what_a_better_order_could_save():
    result = SearchResult(order=("a",), cost=7, lower_bound=5, proof=Proof.FEASIBLE, states=3)
    assert result.gap == 2


def test_there_is_no_gap_without_an_order():
    result = SearchResult(order=None, cost=None, lower_bound=0, proof=Proof.UNKNOWN, states=0)
    assert result.gap is None


def test_a_meter_stops_at_its_limit_and_stays_stopped():
    meter = Meter(StateLimit(2), Observer())
    assert [meter.take_up() for _ in range(4)] == [True, True, False, False]
    assert meter.states == 2
    assert meter.is_spent


def test_a_meter_without_limit_goes_on():
    meter = Meter(no_limit, Observer())
    assert all(meter.take_up() for _ in range(100))
    assert not meter.is_spent
