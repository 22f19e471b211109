"""The sheets for a batch, a class and filming: which files they are, and what they take."""

import pytest
from cli.running import GARMENTS, run

APRON = next(path for path in GARMENTS if path.stem == "galley-apron")

ROOM = """
workroom: Harbour hall
machines:
  old machine: {station: lockstitch, count: 2, setup: 2, foot: 3}
"""


@pytest.fixture
def room(tmp_path):
    path = tmp_path / "room.yaml"
    path.write_text(ROOM, encoding="utf-8")
    return path


@pytest.mark.parametrize("kind", ["batch", "filming"])
def test_one_sheet_is_one_file(kind, tmp_path):
    out = tmp_path / "sheet.md"
    assert run("handout", APRON, "--for", kind, "-o", out).exit_code == 0
    assert [path.name for path in tmp_path.iterdir()] == ["sheet.md"]
    assert "Galley apron" in out.read_text("utf-8")


def test_a_class_has_three_files(tmp_path):
    out = tmp_path / "apron.md"
    assert run("handout", APRON, "--for", "class", "--sessions", "2", "-o", out).exit_code == 0
    names = sorted(path.name for path in tmp_path.iterdir())
    assert names == ["apron-cards.md", "apron-learner.md", "apron-teacher.md"]
    learner = (tmp_path / "apron-learner.md").read_text("utf-8")
    assert "Session 2 of 2" in learner
    assert "Session 3" not in learner


def test_the_machines_of_the_workroom_stand_on_the_sheets(tmp_path, room):
    out = tmp_path / "apron.md"
    assert run("handout", APRON, "--for", "batch", "--workroom", room, "-o", out).exit_code == 0
    assert "**Machine**: old machine" in out.read_text("utf-8")
    asked = ("--for", "class", "--learners", "6", "--workroom", room)
    assert run("handout", APRON, *asked, "-o", out).exit_code == 0
    teacher = (tmp_path / "apron-teacher.md").read_text("utf-8")
    assert "| Machines in the room | 2 |" in teacher


def test_a_workroom_with_a_fault_is_told_and_nothing_is_written(tmp_path, room):
    room.write_text(ROOM.replace("lockstitch", "lockstich"), encoding="utf-8")
    out = tmp_path / "apron.md"
    told = run("handout", APRON, "--for", "batch", "--workroom", room, "-o", out)
    assert told.exit_code == 1
    assert "lockstich" in told.stderr
    assert not out.exists()


@pytest.mark.parametrize("option", [("--sessions", "0"), ("--learners", "some"), ("--for", "all")])
def test_what_cannot_be_asked_for_is_refused(option, tmp_path):
    told = run("handout", APRON, *option, "-o", tmp_path / "apron.md")
    assert told.exit_code == 2
