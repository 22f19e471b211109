"""Whatever is handed to the program, it answers in a sentence and never with a traceback."""

import os
import subprocess
import sys
from pathlib import Path

import pytest
from cli.running import SKIRT, run

from seqplan.cli.output import write_file

CONTENTS = {
    "empty": b"",
    "only a comment": b"# nothing\n",
    "a list": b"- garment\n- pieces\n",
    "a scalar": b"skirt\n",
    "a tab": b"garment: x\noperations:\n\ta: {do: sew}\n",
    "a duplicate key": b"garment: x\ngarment: y\noperations: {a: {do: sew}}\n",
    "an unknown key": b"garment: x\noperatons: {a: {do: sew}}\n",
    "a wrong type": b"garment: x\noperations: [a, b]\n",
    "an unknown edge": (
        b"garment: x\npieces: {front: {cut: pair, edges: [side, hem]}}\n"
        b"operations: {a: {hem: front.hen}}\n"
    ),
    "a self-reference": b"garment: x\noperations: {a: {do: sew, after: a}}\n",
    "not UTF-8": b"garment: caf\xe9\noperations: {a: {do: sew}}\n",
    "unclosed": b"garment: {\n",
    "nothing but a byte order mark": b"\xef\xbb\xbf",
    "binary": bytes(range(256)) * 4,
    "an alias": b"garment: &x y\nabout: *x\noperations: {a: {do: sew}}\n",
    "two seams on one edge": (
        b"garment: x\npieces: {front: {cut: pair, edges: [side, hem]}}\n"
        b"operations: {a: {sew: front.side}, b: {sew: front.side}}\n"
    ),
    "nothing to join": (
        b"garment: x\npieces: {front: {cut: 1, edges: [side, hem]}}\n"
        b"operations: {a: {sew: front.side}}\n"
    ),
    "an unknown part": b"garment: x\noperations: {a: {do: sew}, b: {do: sew, after: a/press}}\n",
}


@pytest.mark.parametrize("command", ["check", "make", "steps"])
@pytest.mark.parametrize("content", CONTENTS.values(), ids=CONTENTS.keys())
def test_a_bad_file_gives_a_message_with_place_and_exit_code_1(command, content, tmp_path):
    path = tmp_path / "bad.yaml"
    path.write_bytes(content)
    words = ("-o", tmp_path / "out") if command == "make" else ()
    result = run(command, path, *words)
    assert result.exit_code == 1
    assert f"{path}:" in result.output
    assert "error" in result.output
    assert result.exception is None or isinstance(result.exception, SystemExit)


@pytest.mark.parametrize(
    "command", ["check", "make", "steps", "why", "graph", "handout", "pictures"]
)
@pytest.mark.parametrize("kind", ["missing", "folder"])
def test_a_file_that_cannot_be_read_ends_with_3(command, kind, tmp_path):
    path = tmp_path / "gone.yaml" if kind == "missing" else tmp_path
    out = tmp_path / "out"
    words = {"why": ["a"], "check": [], "steps": [], "handout": ["-o", out / "page.html"]}
    words["graph"] = ["-o", out / "graph.png"]
    result = run(command, path, *words.get(command, ["-o", out]))
    assert result.exit_code == 3
    assert "cannot read" in result.output
    assert not out.exists()


@pytest.mark.parametrize(("command", "name"), [("graph", "x.svg"), ("handout", "x.pdf")])
def test_an_output_that_cannot_be_written_ends_with_3(command, name, tmp_path):
    (tmp_path / name).mkdir()
    for target in (tmp_path / name, tmp_path / "no" / "such" / name):
        result = run(command, SKIRT, "-o", target)
        assert result.exit_code == 3
        assert "cannot write" in result.output
    assert list(tmp_path.iterdir()) == [tmp_path / name]


def test_make_refuses_a_folder_that_is_a_file(tmp_path):
    target = tmp_path / "taken"
    target.write_text("mine")
    assert run("make", SKIRT, "-o", target).exit_code == 3
    assert target.read_text() == "mine"


@pytest.mark.skipif(os.name == "nt", reason="permissions work otherwise there")
def test_a_file_that_cannot_be_replaced_is_left_as_it_was(tmp_path, monkeypatch):
    target = tmp_path / "page.html"
    target.write_text("before")

    def fail(self: Path, _target: object) -> None:
        raise OSError(28, "No space left on device")

    monkeypatch.setattr(Path, "replace", fail)
    with pytest.raises(Exception, match="no space left"):
        write_file(target, "after")
    assert target.read_text() == "before"
    assert [p.name for p in tmp_path.iterdir()] == ["page.html"]


def test_a_wrong_command_line_ends_with_2():
    assert run("check").exit_code == 2
    assert run("stitch").exit_code == 2
    assert run("steps", SKIRT, "--for", "party").exit_code == 2


def test_a_fault_of_the_program_shows_one_line_and_no_traceback(tmp_path):
    code = (
        "import sys; sys.argv = ['seqplan', 'check', 'x']\n"
        "import seqplan.cli.check as c\n"
        "def broken(path, picks): raise ZeroDivisionError('boom')\n"
        "c.open_garment = broken\n"
        "from seqplan.cli.app import main\n"
        "main()\n"
    )
    done = subprocess.run(
        [sys.executable, "-c", code], capture_output=True, text=True, cwd=tmp_path, check=False
    )
    assert done.returncode == 3
    assert "Traceback" not in done.stderr
    assert "boom" in done.stderr


def test_a_closed_pipe_is_no_traceback():
    done = subprocess.run(
        f"{sys.executable} -m seqplan rules | head -n 1",
        shell=True,
        capture_output=True,
        text=True,
        check=False,
    )
    assert "Traceback" not in done.stderr
