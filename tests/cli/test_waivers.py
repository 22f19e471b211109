"""Rules that the author sets aside: the check lists them, and names a rule that does not exist."""

import json

from cli.running import GARMENTS, run

DRESS = next(path for path in GARMENTS if path.stem == "lantern-dress")
REASON = "the sleeves are cut straight and do not drop"


def test_the_check_lists_what_is_set_aside_with_the_authors_reason():
    result = run("check", DRESS)
    assert result.exit_code == 0
    assert f"You set `hang-before-hem` aside at `sleeve-hems`: {REASON}." in result.output


def test_programs_read_what_is_set_aside_too():
    (file,) = json.loads(run("check", DRESS, "--format", "json").output)["files"]
    assert file["waived"] == [{"rule": "hang-before-hem", "at": ["sleeve-hems"], "because": REASON}]


def test_a_rule_that_does_not_exist_is_named_with_the_nearest(tmp_path):
    path = tmp_path / "dress.yaml"
    text = DRESS.read_text(encoding="utf-8")
    path.write_text(text.replace("hang-before-hem", "hang-befor-hem"), encoding="utf-8")
    result = run("check", path)
    assert result.exit_code == 1
    assert "no rule is called `hang-befor-hem` (unknown-rule)" in result.output
    assert "Did you mean `hang-before-hem`" in result.output


def test_what_is_set_aside_everywhere_says_so(tmp_path):
    path = tmp_path / "dress.yaml"
    text = DRESS.read_text(encoding="utf-8")
    path.write_text(text.replace(" at: sleeve-hems,", ""), encoding="utf-8")
    assert "You set `hang-before-hem` aside everywhere" in run("check", path).output
