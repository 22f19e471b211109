"""`seqplan handout`: formats, paper, sizes, and what is refused."""

import re
import time

import pytest
from cli.running import GARMENTS, SKIRT, run

from seqplan.cli import progress
from seqplan.paper.handouts import HANDOUTS

SIZED = next(path for path in GARMENTS if path.stem == "gull-skirt")
STARTS = {".html": b"<!DOCTYPE html>", ".pdf": b"%PDF-", ".md": b"Sewing booklet\n\n# Breakwater"}


@pytest.mark.parametrize("suffix", STARTS)
@pytest.mark.parametrize("shout", [False, True])
def test_the_suffix_is_the_format(suffix, shout, tmp_path):
    path = tmp_path / f"skirt{suffix.upper() if shout else suffix}"
    assert run("handout", SKIRT, "-o", path).exit_code == 0
    assert path.read_bytes().startswith(STARTS[suffix])


@pytest.mark.parametrize("name", ["skirt.doc", "skirt", "pdf", "skirt.pdf.txt"])
def test_another_suffix_is_refused_with_those_that_are_known(name, tmp_path):
    result = run("handout", SKIRT, "-o", tmp_path / name)
    assert result.exit_code == 2
    assert "let it end in one of .html, .pdf, .md" in result.output
    assert list(tmp_path.iterdir()) == []


@pytest.mark.parametrize("suffix", STARTS)
@pytest.mark.parametrize("kind", HANDOUTS)
def test_every_kind_of_handout_is_made_in_every_format(kind, suffix, tmp_path):
    result = run("handout", SKIRT, "--for", kind, "-o", tmp_path / f"hand.out{suffix}")
    assert result.exit_code == 0
    names = sorted(path.name for path in tmp_path.iterdir())
    parts = ["-cards", "-learner", "-teacher"] if kind == "class" else [""]
    assert names == [f"hand.out{part}{suffix}" for part in parts]
    assert all(path.read_bytes()[:4] == STARTS[suffix][:4] for path in tmp_path.glob("*.pdf"))
    assert [name for name in names if name in result.output] == (names if len(names) > 1 else [])


def test_a_class_has_as_many_sessions_as_are_asked_for(tmp_path):
    words = ["--for", "class", "--sessions", "3", "--learners", "8"]
    assert run("handout", SKIRT, *words, "-o", tmp_path / "class.md").exit_code == 0
    learner = (tmp_path / "class-learner.md").read_text(encoding="utf-8")
    assert [f"Session {number}" in learner for number in (1, 2, 3, 4)] == [True] * 3 + [False]


def test_a_batch_is_planned_for_ones_own_machines(tmp_path):
    room = tmp_path / "room.yaml"
    room.write_text(
        "workroom: Harbour hall\nmachines:\n  old machine: {station: lockstitch, setup: 2}\n"
    )
    path = tmp_path / "batch.md"
    words = ["--for", "batch", "--workroom", room]
    assert run("handout", SKIRT, *words, "-o", path).exit_code == 0
    assert "old machine" in path.read_text(encoding="utf-8")
    assert run("handout", SKIRT, "--workroom", tmp_path / "gone", "-o", path).exit_code == 3


def test_a_kind_that_nobody_composes_is_refused():
    result = run("handout", SKIRT, "--for", "poster", "-o", "x.html")
    assert result.exit_code == 2
    assert "booklet" in result.output


@pytest.mark.parametrize("paper", ["a4", "letter"])
def test_the_paper_is_that_asked_for(paper, tmp_path):
    for suffix, told in (
        (".html", f"size: {paper};"),
        (".pdf", {"a4": "595.2", "letter": "612 792"}[paper]),
    ):
        path = tmp_path / f"skirt{suffix}"
        assert run("handout", SKIRT, "--paper", paper, "-o", path).exit_code == 0
        assert told in path.read_bytes().decode("latin-1")


def test_large_print_takes_more_pages(tmp_path):
    pages = []
    for words in ([], ["--large"]):
        path = tmp_path / "skirt.pdf"
        assert run("handout", SKIRT, *words, "-o", path).exit_code == 0
        found = re.search(rb"/Type/Pages/Count (\d+)|/Count (\d+)", path.read_bytes())
        pages.append(int(found[1] or found[2]))
    assert pages[1] > 2 * pages[0]


def test_one_size_shows_only_its_own_measures(tmp_path):
    path = tmp_path / "skirt.md"
    assert run("handout", SIZED, "--size", "M", "-o", path).exit_code == 0
    text = path.read_text(encoding="utf-8").replace("\N{NO-BREAK SPACE}", " ")
    assert "Size: M" in text
    assert "72 cm" in text
    assert "64 cm" not in text
    assert "80 cm" not in text


def test_a_size_that_is_not_offered_is_told_with_those_that_are(tmp_path):
    path = tmp_path / "skirt.html"
    result = run("handout", SIZED, "--size", "46", "-o", path)
    assert result.exit_code == 1
    assert "gull-skirt.yaml:10:1: error: the garment does not come in size `46`" in result.output
    assert "Known here: `S`, `M`, `L`." in result.output
    assert run("handout", SKIRT, "--size", "46", "-o", path).exit_code == 1
    assert not path.exists()


def test_what_takes_long_shows_a_bar_on_a_terminal(monkeypatch, capsys):
    monkeypatch.setattr(progress, "_QUIET_FOR", 0.05)
    monkeypatch.setattr(progress, "_EVERY", 0.05)
    monkeypatch.setattr("sys.stderr.isatty", lambda: True)
    with progress.Stages() as stages:
        stages.reach("composing", 0)
        time.sleep(0.3)
        stages.reach("writing", 0.5)
        time.sleep(0.3)
    told = capsys.readouterr().err
    assert f"\r[{20 * '-'}] composing 0 s" in told
    assert f"\r[{10 * '#'}{10 * '-'}] writing" in told
    assert told.endswith(" \r")


def test_what_is_quick_and_what_nobody_watches_shows_none(monkeypatch, capsys):
    for is_terminal, slept in ((True, 0.0), (False, 0.2)):
        monkeypatch.setattr(progress, "_QUIET_FOR", 0.05 if slept else 5)
        monkeypatch.setattr("sys.stderr.isatty", lambda shown=is_terminal: shown)
        with progress.Stages() as stages:
            stages.reach("composing", 0)
            time.sleep(slept)
        assert capsys.readouterr().err == ""


SEAM = """garment: Quay flag
allowance: 1.5
mark: mark.jpg
fabrics:
  cloth: {kind: woven, note: "one \u5e06, two \u5e06\u5e03"}
pieces:
  flag: {of: cloth, cut: 2, edges: [top, side, foot, pole]}
operations:
  sides: {sew: flag.side, to: flag}
"""


def jpeg(*, is_damaged: bool) -> bytes:
    """A grey picture of 8 by 8 dots: its scan names a table of codes that there is, or not."""
    quanta = b"\xff\xdb\0\x43\0" + b"\x01" * 64
    frame = b"\xff\xc0\0\x0b\x08\0\x08\0\x08\x01\x01\x11\0"
    codes = b"".join(
        b"\xff\xc4\0\x14" + bytes([kind]) + b"\x01" + b"\0" * 15 + b"\0" for kind in (0x00, 0x10)
    )
    table = 0x33 if is_damaged else 0x00
    scan = b"\xff\xda\0\x08\x01\x01" + bytes([table]) + b"\0\x3f\0" + b"\x3f"
    return b"\xff\xd8" + quanta + frame + codes + scan + b"\0" * 8 + b"\xff\xd9"


@pytest.mark.parametrize("suffix", [".pdf", ".html", ".md"])
def test_letters_without_a_shape_are_named_with_their_place(suffix, tmp_path):
    (tmp_path / "flag.yaml").write_text(SEAM, "utf-8")
    (tmp_path / "mark.jpg").write_bytes(jpeg(is_damaged=False))
    result = run("handout", tmp_path / "flag.yaml", "-o", tmp_path / f"flag{suffix}")
    assert result.exit_code == 0
    told = "flag.yaml:5:35: warning: in the PDF a box stands for \u5e06 (U+5E06), \u5e03 (U+5E03)"
    assert (told in result.stderr) == (suffix == ".pdf")
    assert (tmp_path / f"flag{suffix}").exists()


def test_a_picture_that_is_damaged_inside_is_a_finding_with_its_place(tmp_path):
    (tmp_path / "flag.yaml").write_text(SEAM, "utf-8")
    (tmp_path / "mark.jpg").write_bytes(jpeg(is_damaged=True))
    result = run("handout", tmp_path / "flag.yaml", "-o", tmp_path / "flag.pdf")
    assert result.exit_code == 1
    assert "flag.yaml:3:1: error: the picture `mark.jpg` is damaged" in result.stderr
    assert not (tmp_path / "flag.pdf").exists()
    made = run("make", tmp_path / "flag.yaml", "-o", tmp_path / "out")
    assert made.exit_code == 1
    assert "flag.yaml:3:1: error: the picture `mark.jpg` is damaged" in made.stderr
    assert (tmp_path / "out" / "booklet.html").exists()
    assert not (tmp_path / "out" / "booklet.pdf").exists()
