"""`--select`, `--ignore` and `--strict`: what is shown, and what counts for the exit code."""

import json

import pytest
from cli.running import GARMENTS, broken_skirt, run

CROSSING = "crossing-seams-before-hem"


@pytest.fixture
def broken(tmp_path):
    return broken_skirt(tmp_path)


def slugs(result):
    return [item["slug"] for item in json.loads(result.output)["files"][0]["findings"]]


def check(*words):
    return run("check", *words, "--format", "json")


def test_the_broken_skirt_breaks_more_than_one_rule(broken):
    text = run("check", broken).output
    assert f"({CROSSING})" in text
    assert "The same two also break `press-before-crossing`" in text


def test_only_what_is_selected_is_shown_and_counts(broken):
    result = check(broken, "--select", "raw-edge")
    assert (slugs(result), result.exit_code) == ([], 0)
    result = check(broken, "--select", CROSSING)
    assert (slugs(result), result.exit_code) == ([CROSSING], 1)


def test_a_weaker_rule_that_the_same_two_break_is_shown_once_the_stronger_is_left_out(broken):
    result = check(broken, "--ignore", CROSSING)
    assert result.exit_code == 0
    assert slugs(result) == ["press-before-crossing"]


def test_names_may_be_parted_by_commas_or_given_one_by_one(broken):
    names = (CROSSING, "press-before-crossing")
    once = check(broken, "--ignore", ",".join(names))
    words = [word for name in names for word in ("--ignore", name)]
    assert once.output == check(broken, *words).output
    assert slugs(once) == []


def test_what_is_left_out_wins_over_what_is_selected(broken):
    assert slugs(check(broken, "--select", CROSSING, "--ignore", CROSSING)) == []


def test_warnings_count_where_they_are_to(broken):
    words = [broken, "--ignore", CROSSING]
    assert run("check", *words).exit_code == 0
    assert run("check", *words, "--strict").exit_code == 1
    ignored = f"{CROSSING},press-before-crossing"
    assert run("check", broken, "--strict", "--ignore", ignored).exit_code == 0


def test_hints_and_cautions_never_count(tmp_path):
    path = tmp_path / "small.yaml"
    path.write_text(
        "garment: Small\nwearer: child\nnotions: {b: {kind: button}}\n"
        "operations: {a: {do: sew on the b}}\n"
    )
    result = run("check", path, "--strict")
    assert result.exit_code == 0
    assert "errors 0, warnings 0, cautions 1, hints 1" in result.output


@pytest.mark.parametrize("option", ["--select", "--ignore"])
@pytest.mark.parametrize("command", ["check", "make"])
def test_a_name_that_does_not_exist_is_refused_with_the_nearest(broken, option, command):
    result = run(command, broken, option, "raw-edge,crossing-seams-before-hm,zzz")
    assert result.exit_code == 2
    text = " ".join(result.output.split())
    assert "no rule or finding is called `crossing-seams-before-hm`" in text
    assert f"`{CROSSING}`" in text
    assert "no rule or finding is called `zzz`. `seqplan rules` lists" in text


def test_what_keeps_a_file_from_being_read_is_always_shown(tmp_path):
    path = tmp_path / "bad.yaml"
    path.write_text("garment: Bad\noperations: {a: {do: x, zzz: b}}\n")
    result = check(path, "--select", "raw-edge")
    assert result.exit_code == 1
    assert slugs(result) == ["unknown-key"]


def test_the_orders_stay_as_they_are(broken, tmp_path):
    plain, chosen = tmp_path / "plain", tmp_path / "chosen"
    assert run("make", broken, "-o", plain).exit_code == 1
    words = ["--ignore", f"{CROSSING},press-before-crossing"]
    assert run("make", broken, "-o", chosen, *words).exit_code == 0
    for name in ("booklet-steps.txt", "batch-steps.txt", "graph.svg", "booklet.html"):
        assert (plain / name).read_bytes() == (chosen / name).read_bytes()
    assert CROSSING in (plain / "check.txt").read_text()
    assert CROSSING not in (chosen / "check.txt").read_text()


def test_shipped_garments_have_no_warnings():
    assert run("check", *GARMENTS, "--strict").exit_code == 0


def test_an_error_of_reading_stays_even_where_warnings_bear_its_name(tmp_path):
    path = tmp_path / "bad.yaml"
    path.write_text(
        "garment: Bad\npieces: {bag: {edges: [top, side]}}\noperations: {a: {finish: bag}}\n"
    )
    result = check(path, "--ignore", "edge-wanted")
    assert slugs(result) == ["edge-wanted"]
    assert result.exit_code == 1
