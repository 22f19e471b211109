"""Workroom files: one's own machines, and every fault in one run."""

import pytest

from seqplan.base.errors import UnreadableFileError
from seqplan.load.workroom import load_workroom
from seqplan.model.station import DEFAULT_STATIONS


def written(tmp_path, text):
    path = tmp_path / "room.yaml"
    path.write_text(text, encoding="utf-8")
    return load_workroom(path)


def test_what_is_not_named_keeps_its_usual_minutes(tmp_path):
    loaded = written(
        tmp_path,
        "workroom: Hall\nmachines:\n  old: {station: lockstitch, setup: 7, mounted: zip}\n",
    )
    room = loaded.workroom
    assert loaded.diagnostics == ()
    old = room.machine_for("lockstitch")
    assert (old.name, old.setup_minutes, old.foot_minutes) == ("old", 7, 1)
    assert old.mounted.foot == "zip"
    assert room.filled(DEFAULT_STATIONS).machine_for("overlocker").setup_minutes == 2


def test_ways_lead_both_ways_unless_the_way_back_has_its_own_minutes(tmp_path):
    machines = "machines:\n  old: {station: lockstitch}\n  board: {station: iron}\n"
    ways = "ways:\n  old: {board: 2}\n"
    room = written(tmp_path, f"workroom: Hall\n{machines}{ways}").workroom
    assert room.ways == {("old", "board"): 2, ("board", "old"): 2}
    room = written(tmp_path, f"workroom: Hall\n{machines}{ways}  board: {{old: 5}}\n").workroom
    assert room.ways == {("old", "board"): 2, ("board", "old"): 5}


def test_ways_to_nowhere_are_told_at_once(tmp_path):
    loaded = written(
        tmp_path,
        "workroom: Hall\n"
        "machines: {old: {station: lockstitch}, board: {station: iron}}\n"
        "ways:\n"
        "  old: {bord: 2, board: two}\n"
        "  older: {old: 1}\n"
        "  board: 3\n",
    )
    found = [(d.slug, d.span.line) for d in loaded.diagnostics]
    assert found == [
        ("unknown-machine", 4),
        ("unreadable-number", 4),
        ("unknown-machine", 5),
        ("wrong-type", 6),
    ]


def test_every_fault_is_told_at_once(tmp_path):
    loaded = written(
        tmp_path,
        "workroom: Hall\n"
        "machines:\n"
        "  old: {station: lockstich, setup: two, feet: 3}\n"
        "  other: table\n"
        "  third: {setup: 2}\n",
    )
    assert loaded.workroom is None
    found = [(d.slug, d.span.line) for d in loaded.diagnostics]
    assert sorted(found) == [
        ("missing-key", 5),
        ("unknown-key", 3),
        ("unknown-station", 3),
        ("unreadable-number", 3),
        ("wrong-type", 4),
    ]


@pytest.mark.parametrize("text", ["[a]", "a", "workroom: Hall\n", "machines: {}\n"])
def test_what_is_no_workroom_is_refused_with_a_place(tmp_path, text):
    loaded = written(tmp_path, text)
    assert loaded.workroom is None
    assert all(d.span is not None for d in loaded.diagnostics)
    assert loaded.diagnostics


def test_an_empty_file_and_none_at_all_are_refused(tmp_path):
    with pytest.raises(UnreadableFileError):
        written(tmp_path, "")
    with pytest.raises(UnreadableFileError):
        load_workroom(tmp_path / "nowhere.yaml")


def test_a_workroom_may_have_several_of_the_same(tmp_path):
    text = "workroom: Hall\nmachines:\n  old: {station: lockstitch, count: 4}\n"
    assert written(tmp_path, text).workroom.machine_for("old").count == 4
    (fault,) = written(tmp_path, text.replace("4", "0")).diagnostics
    assert (fault.slug, fault.span.line) == ("unreadable-number", 3)
