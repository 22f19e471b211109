"""Cases of every audit.

A case names a garment and the places at which one audit speaks up: ``fires`` are the paths in the
document, ``quiet: yes`` says nowhere. ``mended`` changes the text as the hint says, and then the
audit says nothing more.
"""

from pathlib import Path

import pytest
import yaml
from garments.shipped import changed
from rules.reasoning import construction, garment

from seqplan.base.diagnostic import Severity
from seqplan.base.ids import RuleSlug
from seqplan.base.path import format_path
from seqplan.explain.audit.book import AUDIT, AUDITS
from seqplan.explain.audit.ledger import Ledger
from seqplan.model.size import in_size
from seqplan.recipes.expand import construct
from seqplan.rules.book import RULE

CASES = Path(__file__).parent / "cases"


def cases_of(slug):
    path = CASES / f"{slug.replace('-', '_')}.yaml"
    return yaml.safe_load(path.read_text(encoding="utf-8")) if path.exists() else []


def each(*keys):
    for audit in AUDITS:
        for case in cases_of(audit.slug):
            if any(key in case for key in keys):
                yield pytest.param(audit, case, id=f"{audit.slug}: {case['name']}")


def found(audit, text):
    return list(audit.find(Ledger(construction(text))))


@pytest.mark.parametrize(("audit", "case"), list(each("fires", "quiet")))
def test_an_audit_speaks_up_where_its_case_says(audit, case):
    findings = found(audit, case["garment"])
    assert [format_path(item.path) for item in findings] == case.get("fires", [])
    assert case.get("quiet", False) == (not findings)
    assert {item.slug for item in findings} <= {audit.slug}
    wanted = Severity(case.get("severity", audit.severity.value))
    assert {item.severity for item in findings} <= {wanted}
    assert all(item.fix for item in findings)
    for text in case.get("says", []):
        assert any(text in f"{item.message} {item.fix}" for item in findings), text


def test_cloth_is_enough_for_the_shapes_in_the_size_that_they_are_of():
    text = """
sizes: [M, S]
fabrics: {a: {kind: woven, amounts: {100: {M: %s, S: 40 cm}}}}
pieces: {body: {of: a, edges: [a, b, c, d], shape: [[0, 0], [100, 0], [100, 90], [0, 90]]}}
operations: {sides: {hem: body.a}}
"""
    audit = AUDIT[RuleSlug("too-little-cloth")]
    for amount, count in (("1 m", 0), ("80 cm", 1)):
        whole = garment(text % amount)
        small, problems = construct(in_size(whole, "S"))
        assert not problems
        assert len(list(audit.find(Ledger(small, whole)))) == count


@pytest.mark.parametrize(("audit", "case"), list(each("fires")))
def test_who_does_as_the_hint_says_is_told_nothing_more(audit, case):
    assert found(audit, changed(case["garment"], case["mended"])) == []


@pytest.mark.parametrize("audit", AUDITS, ids=lambda audit: audit.slug)
def test_every_audit_has_cases_and_says_what_it_wants(audit):
    cases = cases_of(audit.slug)
    assert any("fires" in case for case in cases)
    assert any("quiet" in case for case in cases)
    assert audit.headline.endswith(".")


def test_every_file_of_cases_belongs_to_an_audit():
    assert {path.stem.replace("_", "-") for path in CASES.glob("*.yaml")} == set(AUDIT)


def test_an_audit_and_a_rule_never_share_a_name():
    assert not set(AUDIT) & set(RULE)
    assert RuleSlug("raw-edge") in AUDIT
