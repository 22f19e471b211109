"""`seqplan rescue` as a maker types it."""

import json

import pytest
from cli.running import GARMENTS, ROOT, SKIRT, broken_skirt, impossible, run, stuck

WAISTCOAT = ROOT / "garments" / "ferry-waistcoat.yaml"
SHIRT = ROOT / "garments" / "net-loft-shirt.yaml"


def _data(*words):
    return json.loads(run("rescue", *words, "--format", "json").stdout)


def test_it_says_what_to_undo_why_and_how_to_go_on():
    result = run("rescue", SKIRT, "--missed", "zip", "--up-to", "hem")
    assert result.exit_code == 0
    lines = [line.strip() for line in result.output.splitlines()]
    assert lines.index("facing-ends: tack (unpick)") < lines.index("Then go on, to the end:")
    assert "`facing-ends` fastens to `zip`, which `zip` puts in place." in lines
    assert "1  forgotten  zip: coils I, set zip M" in lines
    assert "2  again      facing-ends: tack H" in lines
    assert "seam ripper is sharp" in result.output
    assert lines[-1] == "Walked through with the work in hand: all of it can be done."


def test_what_came_out_wrong_comes_off_after_what_lies_over_it():
    result = run("rescue", SHIRT, "--wrong", "armholes", "--up-to", "hem")
    assert result.exit_code == 0
    text = result.output
    assert "wrong `armholes`, with" in text
    assert text.index("Undo, the last first") < text.index("is not right, so it is done again")
    data = _data(SHIRT, "--wrong", "armholes", "--missed", "pocket", "--up-to", "hem")
    assert "armholes" in data["wrong"]
    assert "pocket" in data["missed"]
    both = run("rescue", SHIRT, "--wrong", "armholes", "--missed", "pocket", "--up-to", "hem")
    assert "forgotten `pocket`, wrong `armholes`" in both.output


def test_neither_forgotten_nor_wrong_is_refused():
    result = run("rescue", SKIRT, "--up-to", "hem")
    assert result.exit_code == 2
    assert "--wrong" in result.stderr


def test_good_practice_that_is_not_kept_is_named_and_what_it_would_take():
    output = run("rescue", SKIRT, "--missed", "zip", "--up-to", "hem").output
    assert "(invisible-zip-before-seam-below)" in output
    assert "it takes 9 to undo instead of 1" in " ".join(output.split())
    strict = run("rescue", SKIRT, "--missed", "zip", "--up-to", "hem", "--by-the-book").output
    assert "centre-back: " in strict
    assert "--by-the-book" not in strict


def test_what_is_lost_is_named_with_the_pieces():
    output = run("rescue", WAISTCOAT, "--missed", "darts", "--up-to", "sides").output
    assert "clip (cannot be undone), trim (cannot be undone)" in output
    assert "`edge/trim`: the allowance is gone." in output
    assert "`back-lining`" in output


def test_nothing_to_undo_is_said_and_the_order_still_given():
    output = run("rescue", SKIRT, "--missed", "hem", "--up-to", "closure").output
    assert "Nothing has to be undone" in output
    assert "1  forgotten  hem: " in output
    assert "seam ripper" not in output


def test_done_may_name_operations_and_single_parts_several_times():
    data = _data(SKIRT, "--missed", "waist/clip", "--done", "waist, facing-ends", "--done", "hem")
    assert data["missed"] == ["waist/clip"]
    assert "waist/turn" in data["done"]
    assert "waist/clip" not in data["done"]
    assert "side-seams" in data["taken_as_done"]
    assert {each["operation"] for each in data["undo"]} == {"waist/turn", "facing-ends"}


def test_the_order_that_was_followed_may_be_that_of_a_booklet_or_a_batch():
    orders = {
        which: json.loads(run("steps", SHIRT, "--for", which, "--format", "json").stdout)["order"]
        for which in ("booklet", "batch")
    }
    for which, order in orders.items():
        data = _data(SHIRT, "--missed", "plackets", "--up-to", "buttons", "--order", which)
        before = order[: order.index("buttons")]
        assert data["done"] == [op for op in before if not op.startswith("plackets")]


@pytest.mark.parametrize("path", GARMENTS, ids=lambda path: path.stem)
def test_every_operation_is_done_once_in_the_end(path):
    ids = json.loads(run("rehearse", path, "--format", "json").stdout)["order"]
    entries = list(dict.fromkeys(op.split("/")[0] for op in ids))
    missed, last = entries[len(entries) // 3], entries[-1]
    result = run("rescue", path, "--missed", missed, "--up-to", last)
    assert result.exit_code == 0, result.output
    data = _data(path, "--missed", missed, "--up-to", last)
    assert sorted((*data["kept"], *data["rest"])) == sorted(ids)
    assert data["troubles"] == []
    for each in data["undo"]:
        assert each["lost"] == (each["how"] == "lost")
        assert each["reason"]["because"]


def test_all_unknown_names_are_told_at_once_with_the_nearest():
    result = run("rescue", SKIRT, "--missed", "zipp", "--done", "hemm,waist", "--up-to", "closur")
    assert result.exit_code == 2
    for near in ("zip", "hem", "closure"):
        assert f"Did you mean `{near}`" in result.output


@pytest.mark.parametrize(
    ("words", "said"),
    [
        (("--done", "waist"), "--missed"),
        (("--missed", "zip"), "say what is done"),
        (("--missed", "zip", "--done", "zip"), "done and forgotten at once"),
        (("--missed", "zip", "--done", "zip/coils"), "done and forgotten at once"),
        (("--missed", "zip", "--up-to", "hem", "--order", "best"), "'best' is not one of"),
    ],
)
def test_what_is_asked_wrongly_is_a_usage_error(words, said):
    result = run("rescue", SKIRT, *words)
    assert result.exit_code == 2
    assert said in result.output


def test_a_garment_without_any_order_ends_with_1_and_an_unreadable_file_with_3(tmp_path):
    words = ("--missed", "a", "--up-to", "b")
    assert run("rescue", impossible(tmp_path), *words).exit_code == 1
    assert run("rescue", tmp_path / "nowhere.yaml", *words).exit_code == 3


def test_a_written_order_that_does_not_hold_is_followed_as_repaired(tmp_path):
    path = broken_skirt(tmp_path)
    result = run("rescue", path, "--missed", "zip", "--up-to", "hem")
    assert result.exit_code == 0
    assert "does not hold" in result.stderr
    order = json.loads(run("steps", path, "--repair", "--format", "json").stdout)["order"]
    data = _data(path, "--missed", "zip", "--up-to", "hem")
    before = order[: order.index("hem/turn-up")]
    assert data["done"] == [op for op in before if op not in {"zip", "zip/coils"}]


def test_what_nobody_can_work_in_the_end_is_told_and_ends_with_1(tmp_path):
    result = run("rescue", stuck(tmp_path), "--missed", "seams", "--done", "channel")
    assert result.exit_code == 1
    assert "gets stuck at `cord`" in result.output
    assert "all of it can be done" not in result.output
