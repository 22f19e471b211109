"""The commands as a user types them: what they print, and their exit codes."""

import json
from itertools import pairwise

import pytest
from cli.running import GARMENTS, ROOT, SKIRT, broken_skirt, impossible, run


def test_every_shipped_garment_checks_clean_in_one_run():
    result = run("check", *GARMENTS)
    assert result.exit_code == 0
    assert result.output.count("nothing to mend") == len(GARMENTS)


def test_a_hem_above_the_seam_that_it_crosses_is_an_error_with_place_reason_and_repair(tmp_path):
    path = broken_skirt(tmp_path)
    result = run("check", path)
    assert result.exit_code == 1
    line = next(
        n for n, text in enumerate(path.read_text().splitlines(), 1) if text.startswith("  hem:")
    )
    assert f"{path}:{line}:3: error: `hem` comes before `centre-back`" in result.output
    assert "(crossing-seams-before-hem)" in result.output
    assert "Move `hem` below `centre-back`." in result.output
    assert "flat: yes" in result.output


def test_one_mistake_is_told_once(tmp_path):
    result = run("check", broken_skirt(tmp_path))
    assert result.output.count("error:") == 1
    assert "The same two also break `press-before-crossing`" in result.output


def test_a_cycle_is_told_as_a_chain_with_the_line_of_each_reason(tmp_path):
    result = run("check", impossible(tmp_path))
    assert result.exit_code == 1
    lines = result.output.splitlines()
    first, second, third = (line for line in lines if line.lstrip().startswith("Line "))
    assert "Line 4: `a` before `b`" in first
    assert "Line 5: `b` before `c`" in second
    assert "Line 3: `c` before `a`" in third


@pytest.mark.parametrize(
    "words", [("steps",), ("why", "a"), ("graph", "-o"), ("handout", "-o"), ("pictures", "-o")]
)
def test_commands_that_need_an_order_say_why_there_is_none_and_end_with_1(words, tmp_path):
    command, *rest = words
    out = tmp_path / ("out.svg" if command == "graph" else "out.html")
    arguments = [out if word == "-o" else word for word in rest]
    if "-o" in rest:
        arguments = ["-o", out]
    result = run(command, impossible(tmp_path), *arguments)
    assert result.exit_code == 1
    assert "no order can hold" in result.output
    assert not out.exists()


def test_the_repair_moves_one_entry(tmp_path):
    result = run("steps", broken_skirt(tmp_path), "--repair", "--format", "json")
    data = json.loads(result.stdout)
    assert data["moved"] == ["hem"]
    assert data["proof"] == "optimal"


def test_steps_of_a_broken_file_come_from_the_nearest_order_and_say_so(tmp_path):
    result = run("steps", broken_skirt(tmp_path))
    assert result.exit_code == 0
    assert "does not hold" in result.stderr


def test_a_batch_names_its_proof():
    result = run("steps", SKIRT, "--for", "batch")
    assert "(proven)" in result.output
    data = json.loads(run("steps", SKIRT, "--for", "batch", "--format", "json").stdout)
    assert data["changes"] == data["lower_bound"]


def test_steps_are_numbered_from_one_without_a_gap():
    for purpose in ("booklet", "batch"):
        data = json.loads(run("steps", SKIRT, "--for", purpose, "--format", "json").stdout)
        numbers = [step["number"] for group in data["groups"] for step in group["steps"]]
        assert numbers == list(range(1, len(numbers) + 1))


def test_why_gives_a_chain_whose_links_join():
    data = json.loads(run("why", SKIRT, "hem", "zip", "--format", "json").stdout)
    assert (data["first"], data["second"]) == ("zip", "hem")
    ends = [(link["before"], link["after"]) for link in data["chain"]]
    assert all(one[1] == other[0] for one, other in pairwise(ends))


def test_why_says_free_of_what_nothing_binds():
    assert "are free" in run("why", SKIRT, "hem", "interface").output


def test_an_unknown_operation_is_a_usage_error_that_offers_the_nearest():
    result = run("why", SKIRT, "sideseams")
    assert result.exit_code == 2
    assert "Did you mean `side-seams`" in result.output


def test_rules_lists_every_rule_and_shows_one():
    assert "press-before-crossing" in run("rules").output
    assert "Oregon" in run("rules", "press-before-crossing").output
    assert run("rules", "press-befor-crossing").exit_code == 2


@pytest.mark.parametrize(
    "command", ["make", "check", "steps", "why", "graph", "handout", "pictures", "rules"]
)
def test_every_help_teaches_with_an_example_and_names_the_exit_codes(command):
    text = run(command, "--help").output
    assert f"seqplan {command}" in text
    assert "Exit codes" in text


def test_make_leaves_everything_in_the_folder(tmp_path):
    result = run("make", SKIRT, "-o", tmp_path / "out")
    assert result.exit_code == 0
    assert sorted(p.name for p in (tmp_path / "out").iterdir()) == [
        "batch-steps.txt",
        "booklet-steps.txt",
        "booklet.html",
        "booklet.pdf",
        "check.txt",
        "graph.svg",
    ]


def test_each_picture_is_a_file_of_its_own(tmp_path):
    result = run("pictures", SKIRT, "-o", tmp_path / "out")
    assert result.exit_code == 0
    names = sorted(p.name for p in (tmp_path / "out").iterdir())
    assert any(name.endswith("-side-seams-stack.svg") for name in names)
    assert any(name.endswith("-waist-understitch-section.svg") for name in names)
    for path in (tmp_path / "out").iterdir():
        assert path.read_text("utf-8").startswith("<svg ")
    kinds = {name.removesuffix(".svg").rpartition("-")[2] for name in names}
    assert kinds == {"stack", "piece", "section", "unit", "map", "key"}


def test_only_some_kinds_of_pictures_as_png(tmp_path):
    out = tmp_path / "out"
    result = run("pictures", SKIRT, "-o", out, "--format", "png", "--kind", "unit")
    assert result.exit_code == 0
    names = sorted(path.name for path in out.iterdir())
    assert names[-1] == "key.png"
    assert names[:-1]
    assert all(name.endswith("-unit.png") for name in names[:-1])
    assert all(path.read_bytes().startswith(b"\x89PNG") for path in out.iterdir())


def test_an_unknown_kind_of_picture_is_a_wrong_command_line(tmp_path):
    result = run("pictures", SKIRT, "-o", tmp_path / "out", "--kind", "photograph")
    assert result.exit_code == 2
    assert "stack" in result.stderr


def test_make_of_a_broken_order_still_makes_everything_and_ends_with_1(tmp_path):
    result = run("make", broken_skirt(tmp_path), "-o", tmp_path / "out")
    assert result.exit_code == 1
    assert (tmp_path / "out" / "booklet.html").exists()
    assert "crossing-seams-before-hem" in (tmp_path / "out" / "check.txt").read_text()


def test_make_of_an_impossible_garment_writes_only_the_check(tmp_path):
    result = run("make", impossible(tmp_path), "-o", tmp_path / "out")
    assert result.exit_code == 1
    assert [p.name for p in (tmp_path / "out").iterdir()] == ["check.txt"]


def test_json_of_the_check_holds_every_finding_with_its_place(tmp_path):
    result = run("check", broken_skirt(tmp_path), "--format", "json")
    assert result.exit_code == 1
    (file,) = json.loads(result.stdout)["files"]
    (finding,) = file["findings"]
    assert finding["slug"] == "crossing-seams-before-hem"
    assert finding["place"]["line"] > 1
    assert finding["path"] == "operations.hem"


def test_an_after_that_a_reason_gives_is_pointed_out(tmp_path):
    path = tmp_path / "said.yaml"
    path.write_text(
        SKIRT.read_text().replace("depth: 3, turned", "after: centre-back, depth: 3, turned")
    )
    result = run("check", path)
    assert result.exit_code == 0
    assert "`after: centre-back` is not needed" in result.output


def test_what_is_left_over_is_told(tmp_path):
    path = tmp_path / "left.yaml"
    text = SKIRT.read_text()
    text = text.replace(
        "  hook: {kind: hook and eye}", "  hook: {kind: hook and eye}\n  lace: lace"
    )
    text = text.replace("  facing-edge: {finish: [back-facing.lower, front-facing.lower]}\n", "")
    path.write_text(text)
    result = run("check", path)
    assert result.exit_code == 0
    assert "no operation uses the notion `lace`" in result.output
    assert "the edge `back-facing.lower` is left raw" in result.output
    assert "the edge `front-facing.lower` is left raw" in result.output


@pytest.mark.parametrize("slug", ["raw-edge", "cannot-be-done", "press-before-crossing"])
def test_whatever_stands_behind_a_finding_can_be_asked_about(slug):
    result = run("rules", slug)
    assert result.exit_code == 0
    assert result.stdout.startswith(f"{slug}\n")
    data = json.loads(run("rules", slug, "--format", "json").stdout)
    assert data["slug"] == slug
    assert data["headline"] in " ".join(result.stdout.split())


def test_the_list_of_rules_ends_with_what_else_a_check_finds():
    listed = run("rules").stdout
    everything = json.loads(run("rules", "--format", "json").stdout)
    for each in (*everything["rules"], *everything["findings"]):
        assert each["slug"] in listed


def test_a_rehearsal_is_told_step_by_step_and_ends_with_its_outcome(tmp_path):
    path = ROOT / "garments" / "ferry-waistcoat.yaml"
    told = run("rehearse", path)
    assert told.exit_code == 0
    assert "All 32 operations can be done in this order." in told.stdout
    data = json.loads(run("rehearse", path, "--format", "json", "--order", "batch").stdout)
    assert data["reached"] == len(data["order"]) == 32
    assert data["troubles"] == data["left_undone"] == []
    stuck = tmp_path / "pouch.yaml"
    text = (ROOT / "garments" / "tide-table-pouch.yaml").read_text(encoding="utf-8")
    stuck.write_text(text.replace("  open-zip:     {open: zip}\n", ""), encoding="utf-8")
    result = run("rehearse", stuck)
    assert result.exit_code == 1
    assert "Stuck after" in result.stdout
    assert "{open: zip}" in result.stdout


def test_a_batch_for_a_workroom_counts_its_minutes(tmp_path):
    room = tmp_path / "room.yaml"
    room.write_text("workroom: Hall\nmachines:\n  old: {station: lockstitch, setup: 9}\n")
    path = ROOT / "garments" / "gull-skirt.yaml"
    result = run("steps", path, "--for", "batch", "--workroom", room)
    assert result.exit_code == 0
    assert "No valid order takes fewer of these minutes (proven)." in result.stdout
    room.write_text("workroom: Hall\nmachines:\n  old: {station: lockstich}\n")
    result = run("steps", path, "--for", "batch", "--workroom", room)
    assert result.exit_code == 1
    assert "Did you mean `lockstitch`?" in result.stderr
    assert run("steps", path, "--for", "batch", "--workroom", tmp_path / "no").exit_code == 3
