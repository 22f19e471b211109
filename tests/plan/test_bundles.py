"""What hangs together, what a batch takes where, and the shots of a film."""

from itertools import pairwise

import pytest
from tell.sampler import SHIPPED, built, planned

from seqplan.plan.bundles import bundles, find_visits, pieces_in_hand
from seqplan.plan.shots import find_shots
from seqplan.plan.undoing import UNDOING, Undoing


def visits_of(name):
    c, planner = built(name), planned(name)
    return c, find_visits(c, planner.batch(), planner.binding.held)


@pytest.mark.parametrize("name", SHIPPED)
def test_bundles_part_the_pieces_and_only_grow_together(name):
    c = built(name)
    order = planned(name).booklet().order
    whole = {piece.id for piece in c.garment.pieces}
    states = [bundles(c, order[:count]) for count in range(len(order) + 1)]
    for earlier, later in pairwise(states):
        assert sorted(p for unit in later for p in unit) == sorted(whole)
        assert all(any(unit <= other for other in later) for unit in earlier)
    assert len(states[0]) == len(whole)


@pytest.mark.parametrize("name", SHIPPED)
def test_what_leaves_for_a_visit_comes_from_there(name):
    c, visits = visits_of(name)
    for visit in visits:
        assert visit.takes or not pieces_in_hand(c, visit.operations)
        for unit, goes in visit.passes:
            if goes is None:
                later = (op for v in visits[visit.number :] for op in v.operations)
                assert not pieces_in_hand(c, later) & unit
            else:
                taken = visits[goes - 1].takes
                assert any(unit <= other or other <= unit for other, _ in taken)
                assert visit.number < goes


@pytest.mark.parametrize("name", SHIPPED)
def test_what_must_be_done_before_a_visit_is_done_at_an_earlier_one(name):
    _, visits = visits_of(name)
    at = {op.id: visit.number for visit in visits for op in visit.operations}
    for visit in visits:
        assert all(at[id_] < visit.number for id_ in visit.wants)


def test_the_skirt_goes_its_way():
    c, visits = visits_of("breakwater-skirt")
    third = visits[2]
    assert third.group.setup.station == "overlocker"
    assert [(sorted(unit), came) for unit, came in third.takes] == [(["back", "front"], 2)]
    assert third.wants == ("side-seams",)
    assert [goes for _, goes in third.passes] == [4]
    assert visits[-1].passes == ((frozenset(c.garment.piece), None),)


@pytest.mark.parametrize("name", SHIPPED)
def test_shots_hold_every_operation_once_and_can_be_cut_together(name):
    c, planner = built(name), planned(name)
    batch, booklet = planner.batch(), planner.booklet()
    shots = find_shots(c, planner, batch, booklet)
    assert [op.id for shot in shots for op in shot.operations] == list(batch.order)
    place = {id_: at for at, id_ in enumerate(booklet.order)}
    number = {op.id: shot.number for shot in shots for op in shot.operations}
    for shot in shots:
        seen = [place[op.id] for op in shot.operations]
        assert seen == list(range(seen[0], seen[0] + len(seen)))
        assert len({op.setup for op in shot.operations}) == 1
        assert all(number[id_] < shot.number for id_ in shot.ready)
        assert all(number[id_] > shot.number for id_ in shot.left)
        lost = [op for op in shot.operations if UNDOING[op.action] is Undoing.LOST]
        assert shot.is_once == bool(lost)
