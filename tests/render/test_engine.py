"""Running the layout program: which one, and what happens when it is not there."""

import stat
from pathlib import Path

import pytest

from seqplan.base.errors import MissingToolError
from seqplan.render.engine import VARIABLE, find_program, render_svg, tidy_svg

DOT = 'digraph "Quay" { tooltip="a picture"; a [pos="0,90"]; b [pos="0,0"]; a -> b }'


def _program(folder: Path, script: str) -> str:
    path = folder / "layout"
    path.write_text(f"#!/bin/sh\n{script}\n")
    path.chmod(path.stat().st_mode | stat.S_IXUSR)
    return str(path)


def test_the_bundled_program_draws_without_anything_installed(monkeypatch):
    monkeypatch.setenv("PATH", "")
    monkeypatch.delenv(VARIABLE, raising=False)
    assert render_svg(DOT).startswith("<svg")


def test_an_argument_goes_before_the_environment(monkeypatch, tmp_path):
    monkeypatch.setenv(VARIABLE, "no-such-program-at-all")
    with pytest.raises(MissingToolError, match="no-such-program-at-all"):
        find_program()
    mine = _program(tmp_path, "exit 0")
    assert find_program(mine) == mine


def test_a_program_that_is_not_there_is_named_with_a_hint():
    with pytest.raises(MissingToolError, match="gone: there is no such program; leave `--dot`"):
        render_svg(DOT, program="gone")


def test_a_program_that_fails_is_quoted(tmp_path):
    with pytest.raises(MissingToolError, match="syntax error near line 1"):
        render_svg(DOT, program=_program(tmp_path, "echo 'syntax error near line 1' >&2; exit 1"))


def test_a_program_that_draws_nothing_has_failed(tmp_path):
    with pytest.raises(MissingToolError, match="drew no picture"):
        render_svg(DOT, program=_program(tmp_path, "echo hello"))


def test_a_program_that_never_ends_is_stopped(tmp_path, monkeypatch):
    monkeypatch.setattr("seqplan.render.engine.TIMEOUT_S", 0.2)
    with pytest.raises(MissingToolError, match="took longer"):
        render_svg(DOT, program=_program(tmp_path, "exec sleep 20"))


def test_a_picture_that_is_no_xml_is_a_failure_and_no_traceback():
    with pytest.raises(MissingToolError, match="drew no picture"):
        tidy_svg("<svg><g></svg>")


def test_the_picture_says_what_it_is_and_refers_to_nothing_outside():
    svg = render_svg(DOT)
    assert 'role="img"' in svg
    assert "<title>Quay</title>" in svg
    assert "href" not in svg
    assert "DOCTYPE" not in svg
