import oracles
import pytest
from garments.shipped import GARMENTS, opened
from hypothesis import given, settings
from hypothesis import strategies as st
from strategies import problems

from seqplan.model.workroom import Machine, Needs, NoMachineError, Workroom
from seqplan.order.fewest import cheapest_order
from seqplan.order.workroom import changes_in
from seqplan.plan.setups import change_minutes, needs_of

ROOM = Workroom(
    (
        Machine(
            "window",
            "lockstitch",
            setup_minutes=2,
            foot_minutes=1,
            colour_minutes=3,
            mounted=Needs("lockstitch", foot="standard"),
        ),
        Machine("old black", "lockstitch", setup_minutes=4, needle_minutes=5),
        Machine("board", "iron", count=2, setup_minutes=3),
    )
)


def cost(*needs):
    named = {str(place): each for place, each in enumerate(needs)}
    return changes_in(ROOM, named).cost(list(named))


def test_going_to_a_machine_costs_its_minutes_and_the_first_is_free():
    assert cost(Needs("iron"), Needs("lockstitch"), Needs("iron")) == 2 + 3


def test_a_foot_stays_on_its_machine():
    zip_foot = Needs("lockstitch", foot="zip")
    assert cost(zip_foot) == 1
    assert cost(zip_foot, Needs("iron"), zip_foot) == 1 + 3 + 2
    assert cost(zip_foot, Needs("lockstitch"), zip_foot) == 1
    assert cost(zip_foot, Needs("lockstitch", foot="standard"), zip_foot) == 1 + 1 + 1


def test_the_first_colour_is_free_where_nobody_said_what_is_threaded():
    navy, white = Needs("lockstitch", colour="navy"), Needs("lockstitch", colour="white")
    assert cost(navy, navy, white) == 3


def test_a_machine_that_is_asked_for_by_name_keeps_its_own_needle():
    fine = Needs("lockstitch", needle="70")
    old = [Needs("old black", needle=needle) for needle in ("70", "100", "70")]
    assert cost(*old) == 5 + 5
    assert cost(old[0], fine, old[0]) == 2 + 4


def test_a_way_costs_its_minutes_and_may_lead_past_another_machine():
    machines = [Machine(name, name, setup_minutes=1) for name in ("iron", "table", "hand")]
    ways = {("iron", "hand"): 9, ("iron", "table"): 2, ("table", "hand"): 3}
    room = Workroom(tuple(machines), ways)

    def minutes(*stations):
        needs = {str(place): Needs(each) for place, each in enumerate(stations)}
        return changes_in(room, needs).cost(list(needs))

    assert minutes("iron", "table") == 1 + 2
    assert minutes("iron", "hand") == 1 + 2 + 3
    assert minutes("iron", "table", "hand") == 2 + 2 + 3
    assert minutes("hand", "iron") == 1


def test_a_way_from_or_to_no_machine_is_refused():
    with pytest.raises(ValueError, match="way"):
        Workroom((Machine("a", "iron"),), {("a", "b"): 1})


def test_a_station_without_a_machine_is_named():
    with pytest.raises(NoMachineError, match="coverstitch") as told:
        cost(Needs("coverstitch"))
    assert told.value.station == "coverstitch"


@pytest.mark.parametrize(
    "machines",
    [
        (Machine("a", "iron"), Machine("a", "table")),
        (Machine("a", "iron", count=0),),
        (Machine("a", "iron", setup_minutes=-1),),
        (Machine("a", "iron", needle_minutes=-1),),
    ],
    ids=["one name twice", "none of it", "less than no time", "less than no needle time"],
)
def test_a_workroom_that_cannot_be_is_refused(machines):
    with pytest.raises(ValueError, match=r"name of its own|cannot be"):
        Workroom(machines)


@given(problems(least=1, most=6, most_choices=2, acyclic=True), st.data())
@settings(max_examples=60)
def test_the_cheapest_order_in_a_workroom_is_that_of_trying_every_order(problem, data):
    names, given_reasons = problem
    need = st.builds(
        Needs,
        st.sampled_from(("lockstitch", "old black", "iron")),
        foot=st.sampled_from(("", "standard", "zip")),
        colour=st.sampled_from(("", "navy", "white")),
        needle=st.sampled_from(("", "70", "100")),
    )
    changes = changes_in(ROOM, {name: data.draw(need) for name in names})
    result = cheapest_order(names, given_reasons, changes)
    assert result.cost == oracles.least_price(names, given_reasons, changes.tracks)


@pytest.mark.parametrize("path", GARMENTS, ids=lambda path: path.stem)
def test_the_usual_stations_cost_what_plans_say_they_cost(path):
    """Two ways to count the same minutes, for the written order and for the cheapest."""
    garment = opened(path.stem)
    c = garment.construction
    room = Workroom.of_stations(c.garment.station.values())
    changes = changes_in(room, {op.id: needs_of(c, op) for op in c.operations})
    assert changes.cost(c.ids) == change_minutes(c, c.operations)
    best = cheapest_order(c.ids, garment.binding.held, changes)
    assert best.cost == change_minutes(c, [c.op[id_] for id_ in best.order])
    assert best.gap == 0
