"""Broken twins of the shipped garments: a small slip, and the exact diagnosis of it.

What was expected was written down by trade knowledge before the program was asked. A slip is made
by moving an entry or by changing a text that stands in the garment exactly once, so that a twin
whose garment has changed says so.
"""

import re

import pytest
from garments.shipped import FOLDER, GARMENTS, changed, expected, line_of, moved, put

from seqplan.pipeline import open_garment

TWINS = expected("twins")


def each_twin():
    for garment, twins in TWINS.items():
        for twin in twins:
            why = twin.get("not yet")
            marks = [pytest.mark.xfail(reason=why, strict=False)] if why else []
            yield pytest.param(garment, twin, id=f"{garment}: {twin['twin']}", marks=marks)


def broken(garment, twin):
    text = (FOLDER / f"{garment}.yaml").read_text(encoding="utf-8")
    text = changed(text, twin.get("change", {}))
    return moved(text, twin["move"]) if "move" in twin else text


def wanted(text, find):
    severity, slug = next(iter(find.items()))
    return severity, slug, line_of(text, find["at"]), find.get("fix")


def told(finding, find):
    fix = finding.fix if find is None or "fix" in find else None
    return finding.severity.value, finding.slug, finding.span.line, fix


@pytest.mark.parametrize(("garment", "twin"), list(each_twin()))
def test_a_slip_is_told_where_it_is_with_its_rule_and_its_repair(garment, twin, tmp_path):
    text = broken(garment, twin)
    path = put(tmp_path, text)
    findings = open_garment(path, twin.get("picks")).findings
    finds = sorted(twin["finds"], key=lambda find: line_of(text, find["at"]))
    pairs = zip(findings, [*finds, *[None] * len(findings)], strict=False)
    assert [told(*pair) for pair in pairs] == [wanted(text, find) for find in finds]


MOVE = re.compile(r"Move `(\S+)` (above|below) `(\S+)`\.")


def each_moved():
    for garment, twins in TWINS.items():
        for twin in twins:
            if all(MOVE.fullmatch(find.get("fix", "")) for find in twin["finds"]):
                yield pytest.param(garment, twin, id=f"{garment}: {twin['twin']}")


@pytest.mark.parametrize(("garment", "twin"), list(each_moved()))
def test_who_moves_entries_as_told_has_a_clean_garment(garment, twin, tmp_path):
    text = broken(garment, twin)
    for _ in range(len(twin["finds"]) + 1):
        findings = open_garment(put(tmp_path, text), twin.get("picks")).findings
        if not findings:
            return
        text = moved(text, " ".join(MOVE.fullmatch(findings[0].fix).groups()))
    pytest.fail(f"still there: {findings[0].message}")


def test_every_shipped_garment_has_three_twins_or_more():
    assert set(TWINS) == {path.stem for path in GARMENTS}
    assert all(len(twins) >= 3 for twins in TWINS.values())
