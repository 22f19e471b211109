"""`seqplan leeway` as a maker types it."""

import json

import pytest
from cli.running import GARMENTS, SKIRT, broken_skirt, impossible, run, stuck


def test_the_table_has_a_line_for_every_operation_with_its_places():
    result = run("leeway", SKIRT)
    assert result.exit_code == 0
    lines = [" ".join(line.split()) for line in result.output.splitlines()[3:15]]
    assert "zip 4 3 to 7 4 2 to 11 facing-ends (centre-back, waist)" in lines
    assert "interface 6 1 to 7 6 1 to 11 waist (facing)" in lines
    assert "closure 12 10 to 12 2 1 to 12" in lines
    assert len(lines) == 12


def test_parts_are_looked_at_one_by_one():
    output = run("leeway", SKIRT, "--parts").output
    assert "of 24 places" in output
    assert any(line.startswith("waist/clip ") for line in output.splitlines())


def test_one_operation_is_told_with_its_reasons():
    output = run("leeway", SKIRT, "zip").output
    assert "place 4 of 12" in output
    assert "3 to 7" in output
    too_late = output.index("Too late once one of these has been begun:")
    assert output.index("`facing-ends` (there-before-fastened)") > too_late
    assert "(invisible-zip-before-seam-below)" in output


def test_a_part_is_looked_at_among_parts():
    output = run("leeway", SKIRT, "waist/clip").output
    assert "place 16 of 24" in output
    assert "`waist/turn` (enclosed-seam-in-order)" in output


def test_what_nothing_binds_is_told_so(tmp_path):
    path = tmp_path / "free.yaml"
    path.write_text("garment: Free\noperations:\n  a: {do: fold}\n  b: {do: press}\n")
    output = run("leeway", path, "a").output
    assert "1 to 2" in output
    assert "Nothing has to be done before it." in output
    assert "It is never too late for it." in output


def test_what_has_one_place_only_is_told_so(tmp_path):
    path = tmp_path / "chain.yaml"
    path.write_text("garment: Chain\noperations:\n  a: {do: fold}\n  b: {do: press, after: a}\n")
    assert "2 is the only one it can have" in run("leeway", path, "b").output
    assert "all a matter of musts" in run("leeway", path, "b").output


def test_a_choice_that_leaves_nothing_to_do_leaves_no_table(tmp_path):
    path = tmp_path / "bare.yaml"
    path.write_text(
        "garment: Bare\n"
        "pieces:\n"
        "  front: {cut: 1, edges: [top, foot]}\n"
        "choices:\n"
        "  hemmed: [yes, no]\n"
        "operations:\n"
        '  hem: {hem: front.foot, depth: 1, when: {hemmed: "yes"}}\n'
    )
    result = run("leeway", path, "--pick", "hemmed=no")
    assert (result.exit_code, result.output.strip()) == (0, "Bare: no operations.")


def test_operations_that_no_order_keeps_together_are_shown_in_parts_and_why_is_told(tmp_path):
    path = tmp_path / "torn.yaml"
    path.write_text(
        "garment: Torn\n"
        "pieces:\n"
        "  front: {cut: fold, edges: [neck, side, hem], spots: [pocket]}\n"
        "  pocket: {cut: 1, edges: [mouth, side, foot, side]}\n"
        "operations:\n"
        "  pocket: {patch pocket: pocket, at: front.pocket, open: mouth}\n"
        "  hole: {buttonhole: pocket}\n"
    )
    output = run("leeway", path).output
    assert "No order keeps all operations together" in output
    assert "hole " in output
    assert "No order keeps" not in run("leeway", path, "--parts").output
    # The buttonhole goes through the hem of the mouth, before the pocket is stitched on.
    one = run("leeway", path, "hole").output
    assert "`pocket` (buttonholes-after-layers)" in one


@pytest.mark.parametrize("path", GARMENTS[::4], ids=lambda path: path.stem)
def test_data_and_table_tell_the_same(path):
    data = json.loads(run("leeway", path, "--format", "json").stdout)
    output = run("leeway", path).output
    assert len(data["leeway"]) == data["places"]
    for row in data["leeway"]:
        assert row["proven"]
        assert row["slack"] == row["latest"] - row["earliest"]
        musts = [each["name"] for each in row["after"] if each["strength"] == "must"]
        assert row["too_late_after"] == musts
        assert any(line.startswith(row["name"]) for line in output.splitlines())


def test_an_unknown_name_is_a_usage_error_that_offers_the_nearest_once():
    result = run("leeway", SKIRT, "sideseams")
    assert result.exit_code == 2
    assert result.output.count("`side-seams`") == 1


def test_a_garment_without_any_order_ends_with_1_and_an_unreadable_file_with_3(tmp_path):
    assert run("leeway", impossible(tmp_path)).exit_code == 1
    assert run("leeway", tmp_path / "nowhere.yaml").exit_code == 3


def test_of_a_written_order_that_does_not_hold_the_places_are_told_all_the_same(tmp_path):
    result = run("leeway", broken_skirt(tmp_path))
    assert result.exit_code == 0
    assert "does not hold" in result.stderr


def test_places_at_which_nobody_can_work_are_marked_as_bounds(tmp_path):
    output = run("leeway", stuck(tmp_path)).output
    assert "~1" in output
    assert "A `~` marks places that are only bounds" in output
