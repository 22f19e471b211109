"""The latest point at which a mistake is caught: checked against rescues at every step."""

import pytest
from tell.sampler import built, planned

from seqplan.plan.catching import find_catches
from seqplan.plan.rescue import Standing, find_rescue
from seqplan.plan.stops import steps_of


@pytest.mark.parametrize("name", ["breakwater-skirt", "tide-table-pouch", "galley-apron"])
def test_up_to_the_latest_point_nothing_is_undone_and_from_there_on_something_is(name):
    c, planner = built(name), planned(name)
    plan, binding = planner.booklet(), planner.binding
    catches = find_catches(c, binding, plan)
    assert set(catches) == set(c.garment.entry)
    for entry, catch in catches.items():
        own = [op.id for op in c.of_entry[entry]]
        last = max(step.number for step in steps_of(plan) if step.entry == entry)
        for step in steps_of(plan)[last:]:
            until = plan.order.index(step.operations[-1].id) + 1
            at = Standing(plan.order, plan.order[:until], wrong=own)
            undone = [each for each in find_rescue(c, binding, at).undone if each.op not in own]
            is_late = catch.too_late is not None and step.number >= catch.too_late
            assert bool(undone) == is_late, (entry, step.number)
            if step.number == catch.too_late:
                assert catch.then.undone == tuple(each.op for each in undone)


def test_the_cost_names_what_cannot_be_undone():
    c, planner = built("breakwater-skirt"), planned("breakwater-skirt")
    catches = find_catches(c, planner.binding, planner.booklet())
    assert catches["side-seams"].too_late == 9
    assert set(catches["side-seams"].then.lost) == {"waist/trim", "waist/clip"}
    assert catches["interface"].better == 7
    assert catches["interface"].too_late == 9
    assert catches["hem"].too_late is None
