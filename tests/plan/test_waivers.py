"""Waivers: which reasons they set aside, and what holds whatever they are."""

from dataclasses import replace

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from plan.found import plans
from plan.garments import garments
from strategies import reason

from seqplan.base.ids import OpId, RuleSlug
from seqplan.base.strength import Strength
from seqplan.graph.directions import is_feasible
from seqplan.graph.reason import Arc, ReasonKind
from seqplan.model.garment import Waiver
from seqplan.plan.binding import bind
from seqplan.plan.waivers import is_named, is_waivable, set_aside
from seqplan.recipes.expand import construct
from seqplan.rules.book import RULES
from seqplan.rules.derive import derive


@st.composite
def waived_garments(draw):
    """Draw a garment laid out, its reasons, and waivers of rules that give it reasons."""
    c, _ = construct(draw(garments()))
    reasons = derive(c)
    slugs = sorted({r.rule for r in reasons}) or ["hem-in-order"]
    places = [*c.garment.entry, *c.ids]
    waivers = tuple(
        Waiver(RuleSlug(rule), tuple(map(OpId, at)), "So it is.")
        for rule, at in draw(
            st.lists(
                st.tuples(
                    st.sampled_from(slugs),
                    st.lists(st.sampled_from(places), max_size=2) if places else st.just([]),
                ),
                max_size=4,
            )
        )
    )
    return c, reasons, waivers


@given(waived_garments())
@settings(max_examples=60)
def test_what_is_set_aside_is_never_among_what_is_broken_or_given_up(drawn):
    c, reasons, waivers = drawn
    waived = set_aside(waivers, reasons)
    binding = bind(c.ids, reasons, waived)
    assert not set(waived) & {*binding.held, *binding.given_up}
    assert binding.waived == waived
    for conflict in binding.conflicts:
        assert not set(waived) & set(conflict.reasons)


@given(waived_garments())
@settings(max_examples=100)
def test_a_waiver_never_adds_to_what_is_found_of_the_order(drawn):
    c, reasons, waivers = drawn
    before = bind(c.ids, reasons)
    after = bind(c.ids, reasons, set_aside(waivers, reasons))
    if before.conflicts:
        return
    assert not after.conflicts
    assert _complaints(c, after) <= _complaints(c, before)


def _complaints(c, binding):
    position = {id_: place for place, id_ in enumerate(c.ids)}
    broken = {r for r in binding.held if not r.is_held(position)}
    return broken | set(binding.given_up)


@given(waived_garments())
@settings(max_examples=60)
def test_no_waiver_makes_an_impossible_order_possible(drawn):
    c, reasons, waivers = drawn
    binding = bind(c.ids, reasons, set_aside(waivers, reasons))
    musts = [r for r in reasons if r.strength is Strength.MUST]
    assert set(musts) <= set(binding.held)
    assert binding.conflicts == bind(c.ids, reasons).conflicts
    assert bool(binding.conflicts) == (not is_feasible(c.ids, musts))
    for plan in () if binding.conflicts else plans(c, binding):
        position = {id_: place for place, id_ in enumerate(plan.order)}
        assert all(r.is_held(position) for r in musts)


@given(waived_garments())
@settings(max_examples=60)
def test_nothing_is_given_up_that_could_be_had(drawn):
    c, reasons, waivers = drawn
    binding = bind(c.ids, reasons, set_aside(waivers, reasons))
    if not binding.conflicts:
        for given_up in binding.given_up:
            assert not is_feasible(c.ids, (*binding.held, given_up))


def _of(rule, **changes):
    return replace(reason("ab"), rule=RuleSlug(rule), **changes)


@pytest.mark.parametrize("rule", RULES, ids=lambda rule: rule.slug)
def test_only_good_practice_can_be_set_aside(rule):
    stated = _of(rule.slug, strength=rule.strength, kind=rule.kind)
    assert is_waivable(stated) == (rule.strength is not Strength.MUST)
    # What operations need is a must, so it is never set aside.
    assert not (is_waivable(stated) and rule.kind is ReasonKind.NEEDS)


@pytest.mark.parametrize(
    ("at", "is_meant"),
    [((), True), (("a",), True), (("b/press",), True), (("b",), True), (("b/x", "c"), False)],
)
def test_a_waiver_names_entries_and_single_operations(at, is_meant):
    arcs = ((Arc(OpId("a/trim"), OpId("b/press")),),)
    stated = _of("press-before-crossing", alternatives=arcs)
    waiver = Waiver(RuleSlug("press-before-crossing"), tuple(map(OpId, at)), "so")
    assert is_named(waiver, stated) == is_meant
    assert not is_named(waiver._replace(rule=RuleSlug("hem-in-order")), stated)


def test_what_is_given_up_for_a_conflict_is_had_again_once_the_other_is_set_aside():
    ab, ba = (
        replace(reason(arc, strength=Strength.SHOULD), rule=RuleSlug(rule))
        for arc, rule in (("ab", "press-before-crossing"), ("ba", "hang-before-hem"))
    )
    (dropped,) = bind("ab", [ab, ba]).given_up
    kept = ba if dropped is ab else ab
    binding = bind("ab", [ab, ba], [kept])
    assert binding.given_up == ()
    assert binding.held == (dropped,)
