"""What holds of every order that the program gives, for any garment."""

from hypothesis import given, settings
from plan.found import plans
from plan.garments import garments

from seqplan.base.strength import Strength
from seqplan.graph.conflict import conflicts
from seqplan.graph.directions import is_feasible
from seqplan.order.result import Proof
from seqplan.plan.binding import bind
from seqplan.plan.plan import Plan, Planner
from seqplan.recipes.expand import construct
from seqplan.rehearse.walk import rehearse
from seqplan.rules.derive import derive


def _positions(plan: Plan) -> dict:
    return {id_: place for place, id_ in enumerate(plan.order)}


def _binding(reasons) -> list:
    return [reason for reason in reasons if reason.strength is not Strength.PREFER]


@given(garments())
@settings(max_examples=60)
def test_every_order_holds_every_must_and_every_should_but_those_given_up_and_named(garment):
    c, _ = construct(garment)
    reasons = derive(c)
    binding = bind(c.ids, reasons)
    musts = [r for r in reasons if r.strength is Strength.MUST]
    assert bool(binding.conflicts) == (not is_feasible(c.ids, musts))
    if binding.conflicts:
        return
    for plan in plans(c, binding):
        position = _positions(plan)
        assert sorted(plan.order) == sorted(c.ids)
        assert all(r.is_held(position) for r in musts)
        broken = {r for r in _binding(reasons) if not r.is_held(position)}
        assert broken <= set(plan.given_up)


@given(garments())
@settings(max_examples=60)
def test_nothing_is_given_up_where_everything_can_be_had(garment):
    c, _ = construct(garment)
    reasons = derive(c)
    binding = bind(c.ids, reasons)
    if is_feasible(c.ids, _binding(reasons)):
        assert binding.given_up == ()
    elif not binding.conflicts:
        for reason in binding.given_up:
            assert not is_feasible(c.ids, (*binding.held, reason))


@given(garments())
@settings(max_examples=60)
def test_preferences_bind_nothing_and_are_told_to_nobody(garment):
    c, _ = construct(garment)
    reasons = derive(c)
    binding, without = bind(c.ids, reasons), bind(c.ids, _binding(reasons))
    assert binding._replace(preferred=()) == without
    if not binding.conflicts and plans(c, binding):
        assert Planner(c, binding).batch() == Planner(c, without).batch()
        assert Planner(c, binding).repair() == Planner(c, without).repair()


@given(garments())
@settings(max_examples=60)
def test_no_other_order_of_the_program_has_fewer_changes_than_the_batch(garment):
    c, _ = construct(garment)
    binding = bind(c.ids, derive(c))
    if binding.conflicts:
        return
    found = plans(c, binding)
    if found:
        booklet, batch, repair = found
        assert batch.proof is Proof.OPTIMAL
        assert batch.changes == batch.lower_bound
        assert batch.changes <= min(booklet.changes, repair.changes)


@given(garments())
@settings(max_examples=60)
def test_each_line_of_a_conflict_is_needed_for_it(garment):
    c, _ = construct(garment)
    musts = [r for r in derive(c) if r.strength is Strength.MUST]
    for conflict in conflicts(c.ids, musts):
        assert not is_feasible(c.ids, conflict.reasons)
        for reason in conflict.reasons:
            rest = [other for other in conflict.reasons if other is not reason]
            assert is_feasible(c.ids, rest)


@given(garments())
@settings(max_examples=60)
def test_an_order_that_holds_is_left_alone_by_the_repair(garment):
    c, _ = construct(garment)
    binding = bind(c.ids, derive(c))
    if binding.conflicts:
        return
    position = {id_: place for place, id_ in enumerate(c.ids)}
    found = plans(c, binding)
    if not found:
        return
    plan = found[2]
    is_sound = rehearse(c, c.ids).is_clean and not rehearse(c, c.ids).debts
    if is_sound and all(reason.is_held(position) for reason in binding.held):
        assert plan.order == c.ids
        assert plan.moved == ()
    else:
        assert plan.moved
