"""Planning with nothing but what the rehearsal teaches: no reason is given, each is found out."""

import random
from functools import cache

import pytest
from garments.shipped import GARMENTS
from tools.random_orders import random_order

from seqplan.base.strength import Strength
from seqplan.pipeline import open_garment
from seqplan.plan import plan as plans
from seqplan.plan.binding import bind
from seqplan.plan.lessons import lesson
from seqplan.plan.plan import GaveUpError, Planner
from seqplan.rehearse.walk import rehearse

BY_NAME = {path.stem: path for path in GARMENTS}


@cache
def taught(name):
    """Plan without any reason: the garment, the plans, and all that was learnt on the way."""
    opened = open_garment(BY_NAME[name])
    c = opened.construction
    learnt = []

    def keep(c, stuck):
        found = lesson(c, stuck)
        learnt.extend([found] if found else [])
        return found

    with pytest.MonkeyPatch.context() as patch:
        patch.setattr(plans, "lesson", keep)
        planner = Planner(c, bind(c.ids, ()))
        found = (planner.booklet(), planner.batch(), planner.repair())
    return opened, found, learnt


@pytest.mark.parametrize("name", BY_NAME)
def test_the_rehearsal_alone_teaches_the_planner_orders_that_can_be_sewn(name):
    opened, found, learnt = taught(name)
    assert learnt
    for plan in found:
        walked = rehearse(opened.construction, plan.order)
        assert (walked.troubles, walked.debts) == ((), ())


@pytest.mark.parametrize("name", BY_NAME)
def test_fewer_reasons_never_cost_more(name):
    opened, (_, batch, _), _ = taught(name)
    assert batch.changes == batch.lower_bound <= opened.planner.batch().changes


@pytest.mark.parametrize("name", BY_NAME)
def test_no_lesson_rules_out_a_sound_order(name):
    opened, _, learnt = taught(name)
    c = opened.construction
    held = [r for r in opened.binding.held if r.strength is not Strength.PREFER]
    chance = random.Random(name)
    drawn = [random_order(c.ids, held, chance) for _ in range(60)]
    for order in filter(None, drawn):
        place = {id_: number for number, id_ in enumerate(order)}
        for reason in learnt:
            assert reason.is_held(place), reason.because


@pytest.mark.parametrize("name", BY_NAME)
def test_no_lesson_rules_out_an_order_that_can_be_sewn_without_the_reasons(name):
    """Orders that break rules and still can be sewn keep every lesson, too."""
    opened, _, learnt = taught(name)
    c = opened.construction
    chance = random.Random(name)
    drawn = [random_order(c.ids, learnt, chance) for _ in range(40)]
    for order in filter(None, drawn):
        walked = rehearse(c, order)
        found = lesson(c, walked)
        if found is not None:
            place = {id_: number for number, id_ in enumerate(order)}
            assert not found.is_held(place), found.because


def test_a_search_that_learns_and_learns_is_given_up(monkeypatch):
    c = open_garment(BY_NAME["breakwater-skirt"]).construction
    monkeypatch.setattr(plans, "_MOST_LESSONS", 2)
    with pytest.raises(GaveUpError, match="2 were tried"):
        Planner(c, bind(c.ids, ())).batch()
