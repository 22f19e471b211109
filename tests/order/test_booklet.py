import oracles
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from strategies import problems, reason

from seqplan.graph.directions import NoOrderError
from seqplan.order.booklet import booklet_order, unit_changes
from seqplan.order.repair import fewest_moves


def units(**letters):
    return {name: frozenset(pieces) for name, pieces in letters.items()}


def alone(names):
    return {name: name for name in names}


@st.composite
def booklets(draw, most=7):
    names, given_reasons = draw(problems(most=most, most_choices=3, acyclic=True))
    pieces = st.frozensets(st.sampled_from("FBS"), min_size=1)
    return (
        names,
        given_reasons,
        draw(st.fixed_dictionaries(dict.fromkeys(names, pieces))),
        draw(st.fixed_dictionaries(dict.fromkeys(names, st.sampled_from("123")))),
    )


@given(booklets())
@settings(max_examples=90)
def test_every_booklet_order_holds_every_reason(booklet):
    names, given_reasons, unit_of, entry_of = booklet
    if not oracles.has_order(names, given_reasons):
        with pytest.raises(NoOrderError, match="admit no order"):
            booklet_order(names, given_reasons, unit_of, entry_of)
        return
    order = booklet_order(names, given_reasons, unit_of, entry_of)
    assert sorted(order) == sorted(names)
    assert oracles.holds(order, given_reasons)


@given(booklets())
@settings(max_examples=100)
def test_a_booklet_never_changes_unit_more_often_than_the_repaired_text(booklet):
    names, given_reasons, unit_of, entry_of = booklet
    repaired = fewest_moves(names, given_reasons).order
    if repaired is not None:
        order = booklet_order(names, given_reasons, unit_of, entry_of)
        assert unit_changes(order, unit_of) <= unit_changes(repaired, unit_of)


@given(booklets(), st.randoms(use_true_random=False))
@settings(max_examples=60)
def test_shuffled_reasons_give_the_same_booklet(booklet, shuffler):
    names, given_reasons, unit_of, entry_of = booklet
    shuffled = list(given_reasons)
    shuffler.shuffle(shuffled)
    if fewest_moves(names, given_reasons).order is not None:
        assert booklet_order(names, shuffled, unit_of, entry_of) == booklet_order(
            names, given_reasons, unit_of, entry_of
        )


@st.composite
def booklets_with_preferences(draw):
    names, given_reasons, unit_of, entry_of = draw(booklets())
    pair = st.permutations(names).map(lambda order: reason(order[0] + order[1]))
    preferred = draw(st.lists(pair, max_size=4)) if len(names) > 1 else []
    return names, given_reasons, unit_of, entry_of, preferred


@given(booklets_with_preferences())
@settings(max_examples=100)
def test_preferences_never_change_whether_there_is_a_booklet_nor_what_it_must_hold(booklet):
    names, given_reasons, unit_of, entry_of, preferred = booklet
    if not oracles.has_order(names, given_reasons):
        with pytest.raises(NoOrderError, match="admit no order"):
            booklet_order(names, given_reasons, unit_of, entry_of, preferred=preferred)
        return
    order = booklet_order(names, given_reasons, unit_of, entry_of, preferred=preferred)
    assert sorted(order) == sorted(names)
    assert oracles.holds(order, given_reasons)


@given(booklets_with_preferences())
@settings(max_examples=100)
def test_a_booklet_keeps_the_preferences_that_the_repaired_text_keeps(booklet):
    names, given_reasons, unit_of, entry_of, preferred = booklet
    repaired = fewest_moves(names, given_reasons).order
    if repaired is not None:
        kept = [each for each in preferred if oracles.holds(repaired, [each])]
        order = booklet_order(names, given_reasons, unit_of, entry_of, preferred=preferred)
        assert oracles.holds(order, kept)
        assert unit_changes(order, unit_of) <= unit_changes(repaired, unit_of)


def test_a_preference_is_kept_where_the_author_keeps_it_and_given_up_where_not():
    unit_of = units(a="F", b="B", c="F")
    plain = booklet_order("abc", [], unit_of, alone("abc"))
    assert plain == tuple("acb")
    kept = booklet_order("abc", [], unit_of, alone("abc"), preferred=[reason("bc")])
    assert kept == tuple("bac")
    against = booklet_order("abc", [], unit_of, alone("abc"), preferred=[reason("ca")])
    assert against == plain


def test_going_to_a_larger_or_smaller_unit_is_no_change():
    unit_of = units(a="F", b="FB", c="B", d="S")
    assert unit_changes("abcd", unit_of) == 1
    assert unit_changes("acbd", unit_of) == 2
    assert unit_changes("", unit_of) == 0


def test_what_belongs_to_one_unit_is_brought_together():
    unit_of = units(a="F", b="B", c="F", d="B", e="FB")
    given_reasons = [reason("ae"), reason("be"), reason("ce"), reason("de")]
    assert booklet_order("abcde", given_reasons, unit_of, alone("abcde")) == tuple("acbde")


def test_the_operations_of_one_entry_stand_together_where_they_can():
    unit_of = units(a="F", b="F", c="F", d="F")
    entry_of = {"a": "1", "b": "2", "c": "1", "d": "2"}
    assert booklet_order("abcd", [reason("ac"), reason("bd")], unit_of, entry_of) == tuple("acbd")


def test_the_author_s_order_stays_where_nothing_is_better():
    unit_of = units(a="F", b="F", c="B", d="B", e="FB")
    given_reasons = [reason("ae"), reason("ce")]
    assert booklet_order("abcde", given_reasons, unit_of, alone("abcde")) == tuple("abcde")


def test_small_parts_are_finished_before_they_go_onto_the_large_one():
    """The strap (S) is sewn into the front (F, S); both its operations come first."""
    unit_of = units(f="F", s="S", j="FS", t="S")
    given_reasons = [reason("fj"), reason("sj"), reason("tj")]
    order = booklet_order("fsjt", given_reasons, unit_of, alone("fsjt"))
    assert order == tuple("fstj")


def test_a_booklet_of_nothing_is_empty():
    assert booklet_order((), (), {}, {}) == ()


def _late(order, unit_of):
    return {
        name
        for place, name in enumerate(order)
        if any(unit_of[name] < unit_of[earlier] for earlier in order[:place])
    }


@given(booklets())
@settings(max_examples=100)
def test_nothing_is_sewn_on_a_large_part_that_the_author_sewed_flat(booklet):
    names, given_reasons, unit_of, entry_of = booklet
    repaired = fewest_moves(names, given_reasons).order
    if repaired is not None:
        order = booklet_order(names, given_reasons, unit_of, entry_of)
        assert _late(order, unit_of) <= _late(repaired, unit_of)


def test_a_change_of_unit_is_not_saved_by_joining_the_parts_too_early():
    """Front, back, both: joining first saves a change, but the back no longer lies flat then."""
    unit_of = units(a="F", b="B", c="FB")
    given_reasons = [reason("ac")]
    assert booklet_order("abc", given_reasons, unit_of, alone("abc")) == tuple("abc")
