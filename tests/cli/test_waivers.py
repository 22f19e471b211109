"""Rules that the author sets aside: what the check, the steps and the handout make of them."""

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
    assert file["waived"] == [
        {"rule": "hang-before-hem", "at": ["hem"], "because": REASON, "findings": []}
    ]


def test_a_rule_that_does_not_exist_is_named_with_the_nearest(dress):
    result = run("check", dress("rule: hang-befor-hem, at: hem"))
    assert result.exit_code == 1
    assert "no rule is called `hang-befor-hem` (unknown-rule)" in result.output
    assert "Did you mean `hang-before-hem`" in result.output


def test_what_is_set_aside_everywhere_says_so(dress):
    result = run("check", dress("rule: hang-before-hem"))
    assert f"You set `hang-before-hem` aside everywhere: {REASON}." in result.output


SKIRT = """
garment: Quay skirt
units: cm
fabrics: {shell: {kind: woven}}
pieces:
  front: {of: shell, cut: fold, edges: [waist, side, hem]}
  back: {of: shell, cut: fold, edges: [waist, side, hem]}
operations:
  sides: {sew: front.side, to: back.side}
  hem: {hem: [front.hem, back.hem], depth: 2}
  neaten: {finish: [front.side, back.side]}
  press-sides: {press: front.side}
  waist: {finish: [front.waist, back.waist]}
"""
BROKEN = ("finish-before-crossing", "press-before-crossing")
REASON_FLAT = "the seam is bound and pressed with its hem"


@pytest.fixture
def skirt(tmp_path):
    """A skirt that is hemmed before its sides are finished and pressed, with these rules waived."""

    def write(*rules, at="at: hem"):
        path = tmp_path / "skirt.yaml"
        parts = ", ".join(filter(None, [at, f"because: {REASON_FLAT}"]))
        lines = [f"  - {{rule: {rule}, {parts}}}" for rule in rules]
        path.write_text("\n".join([SKIRT, *(["waive:", *lines] if rules else [])]) + "\n")
        return path

    return write


def test_what_is_set_aside_is_no_error_and_no_warning(skirt):
    assert run("check", skirt(), "--strict").exit_code == 1
    result = run("check", skirt(*BROKEN), "--strict")
    assert result.exit_code == 0, result.output
    assert "nothing to mend" in result.output


def test_what_is_not_set_aside_is_still_told(skirt):
    result = run("check", skirt(BROKEN[0]))
    assert result.exit_code == 0
    assert "warning: `hem` comes before `press-sides` (press-before-crossing)" in result.output
    assert "(finish-before-crossing)" not in result.output


def test_orders_are_no_longer_bound_by_what_is_set_aside(skirt):
    assert run("steps", skirt(), "--repair").output.count("Moved: ") == 1
    result = run("steps", skirt(*BROKEN), "--repair")
    assert "The written order holds as it stands." in result.output


def test_a_single_operation_may_be_named(skirt):
    # The seam is crossed where the hem is turned up; when it is pressed itself does not matter.
    result = run("check", skirt(*BROKEN, at="at: hem/turn-up"))
    assert "nothing to mend" in result.output
    result = run("check", skirt(*BROKEN, at="at: hem/press"))
    assert "(unused-waiver)" in result.output
    assert "(press-before-crossing)" in result.output


def test_a_part_that_no_recipe_has_is_a_fault_with_its_place(skirt):
    result = run("check", skirt(BROKEN[0], at="at: hem/trm"))
    assert result.exit_code == 1
    assert "skirt.yaml:16:40: error: `hem` has no part called `trm` (unknown-part)" in result.output


def test_a_waiver_that_sets_nothing_aside_is_a_warning_with_its_place(skirt):
    result = run("check", skirt(BROKEN[0], at="at: waist"))
    assert "skirt.yaml:16:12: warning: nothing to set aside" in result.output
    assert "asks nothing of `waist` (unused-waiver)" in result.output
    assert "`finish-before-crossing` speaks of `hem`, `neaten`" in result.output
    assert run("check", skirt(*BROKEN, "buttonholes-before-buttons"), "--strict").exit_code == 1


def test_a_waiver_that_the_written_order_does_without_is_a_hint(dress):
    result = run("check", dress("rule: hang-before-hem, at: hem"), "--strict")
    assert result.exit_code == 0
    assert "hint: the written order keeps `hang-before-hem`" in result.output


@pytest.mark.parametrize(
    "rule",
    ["seam-before-its-tidying", "made-before-used", "hem-in-order", "crossing-seams-before-hem"],
)
def test_a_must_is_never_set_aside(skirt, rule):
    result = run("check", skirt(rule, at=""))
    assert result.exit_code == 1
    assert f"error: `{rule}` cannot be set aside: it is a must (cannot-be-waived)" in result.output
    assert f"You set `{rule}` aside" not in result.output


def test_a_waiver_without_a_reason_is_an_error(tmp_path):
    path = tmp_path / "skirt.yaml"
    path.write_text(SKIRT + "waive: [{rule: press-before-crossing, at: hem}]\n")
    result = run("check", path)
    assert result.exit_code == 1
    assert "(missing-key)" in result.output


def test_programs_read_what_is_not_reported_for_a_waiver(skirt):
    path = skirt(*BROKEN)
    (file,) = json.loads(run("check", path, "--format", "json").output)["files"]
    assert file["findings"] == []
    assert [
        (aside["rule"], [finding["slug"] for finding in aside["findings"]])
        for aside in file["waived"]
    ] == [(rule, [rule]) for rule in BROKEN]
    plan = json.loads(run("steps", path, "--format", "json").output)
    assert {reason["rule"] for reason in plan["waived"]} == set(BROKEN)


def test_the_handout_gives_the_reason_as_the_designers_note_at_its_step(skirt, tmp_path):
    page = tmp_path / "skirt.html"
    assert run("handout", skirt(BROKEN[0], "buttonholes-before-buttons"), "-o", page).exit_code == 0
    steps = page.read_text(encoding="utf-8").split("<article")[1:]
    noted = [step for step in steps if REASON_FLAT in step]
    assert len(noted) == 1
    assert ">Hem<" in noted[0].replace("</span> Hem</h4>", ">Hem<")
    assert "Raw edges are finished before the seam is pressed open" in noted[0]
    assert "button" not in page.read_text(encoding="utf-8")


def test_what_is_set_aside_everywhere_stands_before_the_steps(skirt, tmp_path):
    page = tmp_path / "skirt.html"
    run("handout", skirt(BROKEN[0], at=""), "-o", page)
    before, *steps = page.read_text(encoding="utf-8").split("<article")
    assert "For this garment a usual rule is set aside on purpose" in before
    assert not any(REASON_FLAT in step for step in steps)
