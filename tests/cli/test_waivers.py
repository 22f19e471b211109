"""Rules that the author sets aside: the check lists them, and names a rule that does not exist."""

import json

import pytest
from cli.running import GARMENTS, run

DRESS = next(path for path in GARMENTS if path.stem == "lantern-dress")
REASON = "the cloth is cut straight and does not drop"


@pytest.fixture
def dress(tmp_path):
    """The dress with a rule set aside, written as the test wants it."""

    def write(waiver):
        path = tmp_path / "dress.yaml"
        text = DRESS.read_text(encoding="utf-8")
        path.write_text(f"{text}waive:\n  - {{{waiver}, because: {REASON}}}\n", encoding="utf-8")
        return path

    return write


def test_the_check_lists_what_is_set_aside_with_the_authors_reason(dress):
    result = run("check", dress("rule: hang-before-hem, at: hem"))
    assert result.exit_code == 0
    assert f"You set `hang-before-hem` aside at `hem`: {REASON}." in result.output


def test_programs_read_what_is_set_aside_too(dress):
    path = dress("rule: hang-before-hem, at: hem")
    (file,) = json.loads(run("check", path, "--format", "json").output)["files"]
    assert file["waived"] == [{"rule": "hang-before-hem", "at": ["hem"], "because": REASON}]


def test_a_rule_that_does_not_exist_is_named_with_the_nearest(dress):
    result = run("check", dress("rule: hang-befor-hem, at: hem"))
    assert result.exit_code == 1
    assert "no rule is called `hang-befor-hem` (unknown-rule)" in result.output
    assert "Did you mean `hang-before-hem`" in result.output


def test_what_is_set_aside_everywhere_says_so(dress):
    result = run("check", dress("rule: hang-before-hem"))
    assert f"You set `hang-before-hem` aside everywhere: {REASON}." in result.output
