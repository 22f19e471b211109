"""Safe stops: what keeps the work from being put down, and how sessions are spread over them."""

from fractions import Fraction
from itertools import combinations, pairwise

import pytest
from hypothesis import given
from hypothesis import strategies as st
from rules.reasoning import construction
from tell.sampler import SHIPPED, built, planned

from seqplan.plan.binding import bind
from seqplan.plan.plan import Planner
from seqplan.plan.stops import (
    WAITING,
    Hindrance,
    Pause,
    _spread,
    change_places,
    find_pauses,
    find_sessions,
    find_stretches,
    gathered_late,
    steps_of,
    weigh_steps,
)
from seqplan.rules.derive import derive

TOP = """
garment: Quay bag
units: cm
allowance: 1
fabrics: {shell: {kind: woven}}
pieces:
  outer: {of: shell, cut: 2, edges: [top, side, foot, side]}
  lining: {of: shell, cut: 2, layer: lining, edges: [top, side, foot, side]}
"""


def pauses_of(text, *operations):
    c = construction(text + "operations:\n" + "\n".join(f"  {line}" for line in operations))
    planner = Planner(c, bind(c.ids, derive(c)))
    plan = planner.booklet()
    found = find_pauses(c, plan, planner.binding.held)
    by_entry = {step.number: step.entry for step in steps_of(plan)}
    return {by_entry[pause.step]: pause for pause in found}, plan


def kinds(pause):
    return {hindrance for hindrance, _ in pause.hindrances}


def test_gathers_are_not_left_on_their_threads():
    pauses, _ = pauses_of(
        TOP,
        "sides: {sew: outer.side, to: outer.side}",
        "gathers: {gather: outer.top}",
        "foot: {sew: outer.foot, to: lining.foot}",
        "top: {sew: outer.top, to: lining.top}",
    )
    assert kinds(pauses["gathers"]) == {Hindrance.DRAWN_UP}
    assert pauses["sides"].is_safe


def test_basting_that_has_to_come_out_is_not_left_in():
    pauses, _ = pauses_of(
        TOP,
        "hold: {baste: outer.side, to: outer.side}",
        "sides: {sew: outer.side, to: outer.side}",
        "out: {remove basting: outer.side}",
        "foot: {sew: outer.foot, to: outer.foot}",
    )
    assert kinds(pauses["hold"]) == kinds(pauses["sides"]) == {Hindrance.BASTED}
    assert pauses["out"].is_safe


def test_what_is_turned_is_not_put_down_before_nor_while_its_gap_is_open():
    pauses, _ = pauses_of(
        TOP,
        "outer-seams: {sew: [outer.side, outer.foot], to: [outer.side, outer.foot]}",
        "lining-sides: {sew: lining.side, to: lining.side}",
        "lining-foot: {sew: lining.foot, to: lining.foot, gap: 10}",
        "top: {sew: outer.top, to: lining.top, as: enclosed, without: turn}",
        "turn: {turn: [outer, lining], through: the gap}",
        "close: {close: lining-foot}",
        "edge: {topstitch: outer.top}",
    )
    assert Hindrance.UNTURNED in kinds(pauses["top"])
    assert kinds(pauses["turn"]) == {Hindrance.GAP}
    assert pauses["close"].is_safe
    assert pauses["outer-seams"].is_safe


def test_a_recipe_is_not_torn_apart():
    pauses, plan = pauses_of(
        TOP,
        "sides: {sew: outer.side, to: outer.side, as: pressed open}",
        "foot: {sew: outer.foot, to: outer.foot, as: pressed open, after: sides/press}",
    )
    assert pauses["sides"].is_safe
    assert {len(step.operations) > 1 for step in steps_of(plan)} == {True}


def test_a_session_ends_where_the_work_has_to_wait_and_cloth_is_washed_before():
    c, planner = built("lantern-dress"), planned("lantern-dress")
    plan = planner.booklet()
    pauses = find_pauses(c, plan, planner.binding.held)
    for count in (1, 2, 3, 5):
        sessions = find_sessions(plan, pauses, count)
        assert [op.id for op in sessions[0].operations] == ["wash"]
        assert sessions[0].number == 0
        ends = [session.operations[-1].id for session in sessions[1:]]
        assert "hang" in ends[:-1]
        assert len(sessions) - 1 == max(count, 2)


@pytest.mark.parametrize("name", SHIPPED)
@pytest.mark.parametrize("count", [None, 1, 3, 40])
def test_sessions_hold_every_step_once_and_end_safely(name, count):
    c, planner = built(name), planned(name)
    plan = planner.booklet()
    pauses = find_pauses(c, plan, planner.binding.held)
    sessions = find_sessions(plan, pauses, count)
    steps = [step for session in sessions for step in session.steps]
    assert steps == list(steps_of(plan))
    safe = {pause.step for pause in pauses if pause.is_safe}
    assert all(session.steps[-1].number in safe for session in sessions[:-1])
    assert sessions[-1].pause is None
    for session in sessions:
        waits = [op for op in session.operations[:-1] if op.action in WAITING]
        assert not [op for op in waits if session.number], session.number


def test_gathering_waits_for_its_seam_so_that_one_can_stop_before():
    c, planner = built("slipway-pinafore"), planned("slipway-pinafore")
    usual, held = planner.booklet(), planner.binding.held
    plan = planner.regrouped(gathered_late(c, usual.order, held))
    assert sorted(plan.order) == sorted(usual.order)
    entries = [step.entry for step in steps_of(plan)]
    assert entries.index("waist") == entries.index("gathers") + 1
    unsafe = [[not p.is_safe for p in find_pauses(c, each, held)] for each in (usual, plan)]
    assert [sum(each) for each in unsafe] == [6, 1]


@pytest.mark.parametrize("name", SHIPPED)
def test_gathered_late_an_order_still_keeps_every_reason(name):
    c, planner = built(name), planned(name)
    held = planner.binding.held
    order = gathered_late(c, planner.booklet().order, held)
    position = {id_: at for at, id_ in enumerate(order)}
    assert all(reason.is_held(position) for reason in held)


@pytest.mark.parametrize("name", SHIPPED)
def test_stretches_that_change_places_keep_every_reason(name):
    c, planner = built(name), planned(name)
    plan, held = planner.booklet(), planner.binding.held
    stretches = find_stretches(plan, find_pauses(c, plan, held))
    assert [step for part in stretches for step in part] == list(steps_of(plan))
    for place in change_places(c, plan, held, stretches):
        parts = [*stretches[:place], stretches[place + 1], stretches[place]]
        parts += stretches[place + 2 :]
        order = [op.id for part in parts for step in part for op in step.operations]
        position = {id_: at for at, id_ in enumerate(order)}
        assert all(reason.is_held(position) for reason in held)


@given(
    st.lists(st.integers(1, 9), min_size=2, max_size=7),
    st.data(),
)
def test_no_other_choice_of_stops_is_more_even(minutes, data):
    """Against all choices there are: first the longest session, then the squares of all."""
    weights = {number: Fraction(each) for number, each in enumerate(minutes, 1)}
    numbers = data.draw(st.sets(st.sampled_from(range(1, len(minutes))), min_size=1))
    waits = data.draw(st.sets(st.sampled_from(sorted(numbers)), max_size=2))
    safe = [Pause(n, waits="w" if n in waits else None) for n in sorted(numbers)]
    count = data.draw(st.integers(len(waits) + 1, len(safe) + 1))

    def cost(ends):
        bounds = (0, *ends, len(minutes))
        parts = [sum(minutes[a:b]) for a, b in pairwise(bounds)]
        return max(parts), sum(part * part for part in parts)

    chosen = [pause.step for pause in _spread(weights, safe, count)]
    choices = [c for c in combinations(sorted(numbers), count - 1) if waits <= set(c)]
    assert waits <= set(chosen)
    assert cost(chosen) == min(map(cost, choices))


def test_minutes_count_where_the_author_says_them():
    _, plan = pauses_of(
        TOP,
        "sides: {sew: outer.side, to: outer.side, minutes: 30}",
        "foot: {sew: outer.foot, to: outer.foot, minutes: 10}",
        "top: {sew: outer.top, to: lining.top}",
    )
    weights = weigh_steps(steps_of(plan))
    assert sorted(weights.values()) == [10, 20, 30]
