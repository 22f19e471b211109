"""Where rehearsals get stuck, whom they blame, and what they offer; a case file for each kind."""

import pytest
from rehearse.walking import cases, walked

from seqplan.explain.rehearsed import check_rehearsed, tell_repair
from seqplan.rehearse.repair import gap_places, repairs
from seqplan.rehearse.walk import rehearse

ALL = [pytest.param(case, id=f"{file}: {case['name']}") for file, case in cases()]


@pytest.mark.parametrize("case", ALL)
def test_the_walk_gets_as_far_as_it_would_at_the_table(case):
    c, order = walked(case)
    found = rehearse(c, order)
    if "stuck" not in case:
        assert found.troubles == ()
        assert [debt.why for debt in found.debts] == case.get("undone", [])
        return
    trouble = found.troubles[0]
    wanted = (case["stuck"], case["why"], case.get("blame"), case.get("missing"))
    assert (trouble.op, trouble.why, trouble.blame, trouble.missing) == wanted
    if "repairs" in case:
        assert [tell_repair(repair) for repair in repairs(c, found)] == case["repairs"]
    assert gap_places(c, found)[:1] == ((case["gap in"],) if "gap in" in case else ())


@pytest.mark.parametrize("case", [case for case in ALL if "stuck" in case.values[0]])
def test_every_case_is_told_in_whole_sentences(case):
    c, order = walked(case)
    (finding, *_) = check_rehearsed(c, rehearse(c, order))
    assert case["stuck"] in finding.message
    for text in (*(note.message for note in finding.notes), finding.fix or "It is so."):
        assert "None" not in text
        assert text.endswith(".")


@pytest.mark.parametrize("case", [case for case in ALL if "stuck" in case.values[0]])
def test_every_repair_that_is_offered_lets_the_walk_through(case):
    c, order = walked(case)
    found = rehearse(c, order)
    for repair in repairs(c, found):
        entries = [op for op in order if c.op[op].entry in repair.moved or op in repair.moved]
        rest = [op for op in order if op not in entries]
        at = [i for i, op in enumerate(rest) if repair.anchor in {op, c.op[op].entry}]
        cut = at[0] if repair.is_above else at[-1] + 1
        again = rehearse(c, (*rest[:cut], *entries, *rest[cut:]))
        assert again.is_clean
        assert not again.debts
