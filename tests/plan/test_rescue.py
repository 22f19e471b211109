"""Rescues: the least to undo, judged by every order that there is; and shipped garments rescued."""

import pytest
from garments.shipped import GARMENTS, opened
from hypothesis import assume, given, settings
from hypothesis import strategies as st
from oracles import positions, valid_orders
from plan.garments import garments
from strategies import arcs, problems, reason

from seqplan.base.strength import Strength
from seqplan.graph.directions import NoOrderError
from seqplan.model.operation import Action
from seqplan.order.limits import StateLimit
from seqplan.order.repair import fewest_moves
from seqplan.order.result import Proof
from seqplan.plan.binding import bind
from seqplan.plan.lessons import LESSON
from seqplan.plan.rescue import Standing, find_rescue, weigh
from seqplan.plan.undoing import GOING_THROUGH, UNDOING, Undoing
from seqplan.plan.unpicking import least_to_undo
from seqplan.recipes.expand import construct
from seqplan.rules.book import RULES
from seqplan.rules.derive import derive
from seqplan.words.say import has


@st.composite
def standings(draw):
    """Draw a problem, what is done in which order, what it costs to undo it, what lies on what."""
    names, reasons = draw(problems(most=5, acyclic=True))
    sequence = draw(st.permutations(names))[: draw(st.integers(0, len(names)))]
    weights = [draw(st.integers(1, 9)) for _ in sequence]
    built_on = draw(st.lists(arcs(names), max_size=3)) if len(names) > 1 else []
    return names, reasons, sequence, weights, built_on


def _is_beginning(begun, sequence, built_on):
    """Whether this much may stay: as it was done, and nothing that lies on what is undone."""
    if [each for each in sequence if each in begun] != list(begun):
        return False
    done = positions(sequence)
    return not any(
        arc.after in begun and arc.before in done and arc.before not in begun
        for arc in built_on
        if done.get(arc.before, 9) < done.get(arc.after, -1)
    )


def _least(orders, sequence, weights, built_on):
    cost = dict(zip(sequence, weights, strict=True))
    return min(
        sum(cost[each] for each in sequence if each not in order[:count])
        for order in orders
        for count in range(len(order) + 1)
        if _is_beginning(order[:count], sequence, built_on)
    )


@given(standings())
@settings(max_examples=200, deadline=None)
def test_no_order_that_begins_with_what_is_done_undoes_less(standing):
    names, reasons, sequence, weights, built_on = standing
    orders = valid_orders(names, reasons)
    assume(orders)
    found = least_to_undo(names, reasons, sequence, weights, built_on=built_on)
    cost = dict(zip(sequence, weights, strict=True))
    assert sum(cost[each] for each in found.undone) == _least(orders, sequence, weights, built_on)
    assert [*sorted(found.kept), *sorted(found.undone)] == [
        *sorted(each for each in sequence if each in found.kept),
        *sorted(each for each in sequence if each not in found.kept),
    ]
    assert _is_beginning(found.kept, sequence, built_on)
    assert any(order[: len(found.kept)] == tuple(found.kept) for order in orders)
    assert found.proof is Proof.OPTIMAL


@given(standings())
@settings(max_examples=60, deadline=None)
def test_a_search_that_is_broken_off_still_gives_what_can_be_gone_on_with(standing):
    names, reasons, sequence, weights, built_on = standing
    orders = valid_orders(names, reasons)
    assume(orders)
    stop = StateLimit(0)
    found = least_to_undo(names, reasons, sequence, weights, built_on=built_on, limit=stop)
    assert _is_beginning(found.kept, sequence, built_on)
    assert any(order[: len(found.kept)] == tuple(found.kept) for order in orders)


def test_of_two_ways_the_one_that_costs_less_is_taken():
    # x comes before a or before b, and both are done.
    ways = [reason("xa", "xb")]
    assert least_to_undo("abx", ways, "ab", [1, 5]).undone == ("a",)
    assert least_to_undo("abx", ways, "ab", [5, 1]).undone == ("b",)


def test_reasons_that_admit_no_order_are_refused():
    with pytest.raises(NoOrderError):
        least_to_undo("ab", [reason("ab"), reason("ba")], "a", [1])


# -- garments ----------------------------------------------------------------------------------


def _rescue(name, missed, up_to=None, *, by_the_book=False, done=(), is_wrong=False):
    garment = opened(name)
    c = garment.garment
    forgotten = {op.id for op in c.of_entry[missed]} if missed in c.of_entry else {missed}
    begun = c.ids if up_to is None else c.ids[: c.ids.index(c.of_entry[up_to][0].id)]
    named = {op.id for entry in done for op in c.of_entry[entry]} if done else set(begun)
    wanting = {"wrong": forgotten & named} if is_wrong else {"missed": forgotten}
    at = Standing(c.ids, named, **wanting)
    return c, find_rescue(c, garment.binding, at, by_the_book=by_the_book)


def _assert_sound(c, binding, found):
    whole = (*found.kept, *found.rest)
    assert sorted(whole) == sorted(c.ids)
    assert sorted((*found.kept, *(each.op for each in found.undone))) == sorted(found.done)
    assert set(found.kept).isdisjoint(found.missed)
    place = positions(whole)
    broken = {each for each in binding.held if not each.is_held(place)}
    assert broken <= set(found.given_up)
    assert all(each.strength is Strength.SHOULD for each in found.given_up)
    kept = set(found.kept)
    for each in found.undone:
        if each.op in found.wrong:
            continue
        arcs_ = [arc for bundle in each.reason.alternatives for arc in bundle]
        assert any(arc.after == each.op for arc in arcs_)
        assert any(arc.before not in kept for arc in arcs_)


@pytest.mark.parametrize("path", GARMENTS, ids=lambda path: path.stem)
def test_whatever_is_forgotten_till_the_end_of_a_shipped_garment_can_be_rescued(path):
    garment = opened(path.stem)
    c = garment.garment
    for entry in c.of_entry:
        _, least = _rescue(path.stem, entry)
        _, strict = _rescue(path.stem, entry, by_the_book=True)
        for found in (least, strict):
            _assert_sound(c, garment.binding, found)
            assert found.proof is Proof.OPTIMAL
            assert found.rehearsal.is_clean, (entry, found.rehearsal.troubles)
            assert not found.rehearsal.debts
        assert strict.given_up == ()


@given(garments(), st.data())
@settings(max_examples=40, deadline=None)
def test_a_rescue_of_any_garment_holds_what_binds_it(garment, data):
    c, _ = construct(garment)
    binding = bind(c.ids, derive(c))
    assume(not binding.conflicts and c.ids)
    missed = data.draw(st.sampled_from(c.ids))
    done = data.draw(st.sets(st.sampled_from(c.ids)))
    at = Standing(fewest_moves(c.ids, binding.held).order, done, {missed})
    found = find_rescue(c, binding, at, by_the_book=data.draw(st.booleans()))
    _assert_sound(c, binding, found)
    assert set(found.done) >= done - {missed}


@pytest.mark.parametrize("path", GARMENTS, ids=lambda path: path.stem)
def test_whatever_went_wrong_is_undone_with_what_lies_over_it(path):
    """At least as much as if it had been forgotten, and it is done again."""
    garment = opened(path.stem)
    c = garment.garment
    for entry in c.of_entry:
        _, found = _rescue(path.stem, entry, is_wrong=True)
        _assert_sound(c, garment.binding, found)
        assert found.rehearsal.is_clean, (entry, found.rehearsal.troubles)
        undone = {each.op for each in found.undone}
        assert undone >= set(found.wrong) == {op.id for op in c.of_entry[entry]}
        _, forgotten = _rescue(path.stem, entry)
        assert undone - set(found.wrong) >= {each.op for each in forgotten.undone}
        assert set(found.rest) >= undone


def test_a_fly_that_went_wrong_takes_the_waistband_off_but_no_leg_seam():
    _, found = _rescue("pilot-boat-trousers", "fly", "hems", is_wrong=True)
    entries = {each.op.partition("/")[0] for each in found.undone}
    assert entries >= {"fly", "waistband"}
    assert entries.isdisjoint({"sides", "inseam", "back-crotch", "darts", "mouths"})


def test_nothing_is_undone_for_what_can_be_done_still():
    _, found = _rescue("breakwater-skirt", "closure", "hem")
    assert found.undone == ()
    assert found.rest[0] == "closure"


def test_what_was_forgotten_is_done_as_soon_as_it_can_be():
    _, found = _rescue("breakwater-skirt", "zip", "hem")
    assert [each.op for each in found.undone] == ["facing-ends"]
    assert found.rest[:2] == ("zip/coils", "zip")
    assert {each.rule for each in found.given_up} >= {"invisible-zip-before-seam-below"}


def test_good_practice_is_a_reason_to_undo_only_by_the_book():
    _, found = _rescue("breakwater-skirt", "zip", "hem", by_the_book=True)
    assert {"centre-back", "waist"} <= {each.op for each in found.undone}
    assert found.given_up == ()


def test_what_is_cut_or_glued_is_undone_only_where_nothing_else_helps_and_is_told():
    _, found = _rescue("ferry-waistcoat", "darts", "sides")
    lost = {each.op for each in found.undone if each.how is Undoing.LOST}
    assert lost == {"edge/trim", "edge/clip"}


def test_what_cannot_be_undone_outweighs_everything_that_can():
    c = opened("ferry-waistcoat").garment
    weights = dict(zip(c.ids, weigh(c, c.ids), strict=True))
    lost = {id_ for id_ in c.ids if UNDOING[c.op[id_].action] is Undoing.LOST}
    assert lost
    assert min(weights[id_] for id_ in lost) > sum(weights[id_] for id_ in set(c.ids) - lost)


def test_a_buttonhole_goes_with_the_layers_that_it_goes_through():
    _, found = _rescue("net-loft-shirt", "plackets", "buttons")
    undone = {each.op: each for each in found.undone}
    assert undone["cuff-holes"].how is Undoing.LOST
    assert undone["cuff-holes"].reason.rule == "buttonholes-after-layers"


def test_what_only_the_work_in_the_hand_shows_is_a_reason_to_undo():
    _, found = _rescue("breakwater-skirt", "interface", "hem")
    (turned,) = (each for each in found.undone if each.op == "waist/turn")
    assert turned.reason.rule == LESSON
    assert turned.reason.because.endswith(".")


def test_what_comes_before_what_is_named_is_taken_as_done():
    c, found = _rescue("breakwater-skirt", "zip", done=("hem",))
    assert "side-seams" in found.implied
    assert "zip" not in found.done
    assert {op.id for op in c.of_entry["hem"]} <= set(found.done) - set(found.implied)


# -- how to undo -------------------------------------------------------------------------------


def test_for_every_action_it_is_known_how_it_is_undone():
    assert set(UNDOING) == set(Action)


def test_everything_that_is_said_of_undoing_has_its_sentence():
    for how in Undoing:
        assert has(f"rescue-how-{how.value.replace(' ', '-')}")
    for action, how in UNDOING.items():
        slug = action.value.replace(" ", "-")
        assert has(f"rescue-lost-{slug}") == (how is Undoing.LOST)


def test_the_rules_that_hold_down_what_lies_below_are_in_the_book_and_only_should():
    strengths = {rule.slug: rule.strength for rule in RULES}
    assert {strengths[slug] for slug in GOING_THROUGH} == {Strength.SHOULD}
