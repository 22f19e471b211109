from hypothesis import given, settings
from oracles import has_order
from strategies import problems, reason

from seqplan.graph.irreducible import irreducible


@given(problems(least=2, most=4, most_arcs=5, most_choices=7))
@settings(max_examples=100)
def test_what_is_left_clashes_and_less_does_not(problem):
    names, given_reasons = problem
    if has_order(names, given_reasons):
        given_reasons = (*given_reasons, reason("ab", "ac"), reason("ba"), reason("ca"))
        names = (*names, *(name for name in "abc" if name not in names))
    core = irreducible(names, given_reasons)
    assert not has_order(names, core)
    for place in range(len(core)):
        assert has_order(names, core[:place] + core[place + 1 :])
    assert core == [each for each in given_reasons if each in core]


def test_a_short_chain_is_kept_rather_than_a_long_one():
    either = reason("da", "db ba")
    chain = [reason("ab"), reason("bc"), reason("cd")]
    assert irreducible("abcd", [*chain, either, reason("ad")]) == [either, reason("ad")]


def test_plain_arcs_that_clash_alone_need_no_either_or():
    circle = [reason("ab"), reason("ba")]
    assert irreducible("abc", [reason("ac", "ca"), *circle]) == circle
