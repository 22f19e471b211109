"""What really went wrong, or right, at sewing tables: the check and the rehearsal must say so."""

import pytest
from cases.told import FOLDER, cases, opened, told, walked

from seqplan.base.diagnostic import Severity
from seqplan.plan.rescue import Standing, find_rescue
from seqplan.plan.undoing import UNDOING, Undoing

ALL = [
    pytest.param(case, id=f"{path.relative_to(FOLDER).with_suffix('')}: {case['case']}")
    for path in sorted(FOLDER.rglob("*.yaml"))
    for case in cases(path)
]


@pytest.mark.parametrize("case", ALL)
def test_the_check_says_what_somebody_with_experience_would(case, tmp_path):
    everything = opened(case, tmp_path).findings
    # What is small, or hangs on a cord, on children's wear is told besides.
    findings = [found for found in everything if found.severity is not Severity.CAUTION]
    wanted = case["finds"]
    found = [told(finding) for finding in findings]
    asked = [
        {**one, "fix": one.get("fix", it["fix"])} for one, it in zip(wanted, found, strict=False)
    ]
    bare = [{key: value for key, value in one.items() if key != "blame"} for one in asked]
    assert found == bare
    for finding, one in zip(findings, wanted, strict=True):
        text = " ".join((finding.message, *(note.message for note in finding.notes)))
        assert "blame" not in one or f"`{one['blame']}`" in text


@pytest.mark.parametrize("case", ALL)
def test_the_rehearsal_gets_as_far_as_one_would_at_the_table(case, tmp_path):
    c = opened(case, tmp_path).garment
    assert walked(c) == case.get("rehearsal", {})


@pytest.mark.parametrize("case", [case for case in ALL if "rescue" in case.values[0]])
def test_the_least_that_comes_off_is_what_one_would_unpick(case, tmp_path):
    wanted, found = case["rescue"], opened(case, tmp_path)
    c = found.garment
    wrong = {op.id for op in c.operations if {op.id, op.entry} & set(wanted["wrong"])}
    first = next(at for at, op in enumerate(c.operations) if wanted["up to"] in {op.id, op.entry})
    done = c.ids[:first]
    rescue = find_rescue(c, found.binding, Standing(c.ids, done, wrong=wrong & set(done)))
    off = [each.op for each in rescue.undone]
    assert [op for op in off if op not in rescue.wrong] == wanted["undo"]
    assert [op for op in off if op in rescue.wrong] == wanted["taken off"]
    assert [op for op in off if UNDOING[c.op[op].action] is Undoing.LOST] == wanted["lost"]
    assert rescue.rehearsal.is_clean


@pytest.mark.parametrize("case", [case for case in ALL if "never at" in case.values[0]])
def test_no_step_goes_to_a_station_that_would_spoil_the_cloth(case, tmp_path):
    found = opened(case, tmp_path)
    for plan in (found.planner.booklet(), found.planner.batch()):
        stations = {found.garment.op[op].setup.station for op in plan.order}
        assert case["never at"] not in stations
