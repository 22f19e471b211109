"""The author's own words: what is found in them, and what is left alone."""

import subprocess
import sys
from pathlib import Path

import pytest
import yaml
from cli.running import ROOT, run
from garments.shipped import GARMENTS
from test_docs import _garments

from seqplan.base.path import format_path
from seqplan.explain.leftover import check_leftovers
from seqplan.explain.reading.check import check_texts
from seqplan.explain.reading.parts import PARTS
from seqplan.explain.reading.text import texts_of
from seqplan.explain.selection import FINDINGS
from seqplan.load.document import load_text
from seqplan.model.variant import choose
from seqplan.recipes.expand import construct
from seqplan.words.say import catalogue

HERE = Path(__file__).parent
CASES = yaml.safe_load((HERE / "cases.yaml").read_text(encoding="utf-8"))
SAMPLE = (HERE / "sample.yaml").read_text(encoding="utf-8")
SLUGS = {"measures-disagree", "step-not-there", "inside-out", "part-not-there", "told-later"}


def _read(text, folder=None):
    """Load a whole file and read its texts; whatever else is lacking in it is left out."""
    loaded = load_text(text, folder=folder)
    assert loaded.garment is not None, loaded.diagnostics
    c, problems = construct(choose(loaded.garment, {}))
    assert not problems
    return [item for item in check_leftovers(c, loaded.garment) if item.slug in SLUGS]


def _path_of(case):
    key = case.get("key", "do")
    return (key,) if key == "about" else ("operations", case.get("at", "fold"), key)


def _sample_with(case, words):
    data = yaml.load(SAMPLE, yaml.BaseLoader)
    *way, key = _path_of(case)
    inner = data
    for part in way:
        inner = inner[part]
    inner[key] = words
    return yaml.safe_dump(data, sort_keys=False, allow_unicode=True)


@pytest.mark.parametrize("case", CASES, ids=lambda case: case["text"])
def test_a_text_is_read_as_its_case_says(case):
    findings = _read(_sample_with(case, case["text"]))
    wanted = case.get("finds", [])
    assert [item.slug for item in findings] == [slug for slug, _ in wanted]
    for item, (_, quoted) in zip(findings, wanted, strict=True):
        assert quoted in item.message
        assert item.path == _path_of(case)
        assert item.severity is FINDINGS[item.slug]
        assert item.fix


@pytest.mark.parametrize("case", [c for c in CASES if "mended" in c], ids=lambda case: case["text"])
def test_the_mended_text_is_told_nothing_more(case):
    assert _read(_sample_with(case, case["mended"])) == []


def test_every_fault_has_a_case_and_its_sentences():
    assert {slug for case in CASES for slug, _ in case.get("finds", [])} == SLUGS
    assert {key for key in catalogue("reading") if not key.endswith(("-fix", "-one"))} == {
        f"check-{slug}" for slug in SLUGS
    }


@pytest.mark.parametrize("path", GARMENTS, ids=lambda path: path.stem)
def test_the_shipped_garments_are_told_nothing(path):
    assert _read(path.read_text(encoding="utf-8"), path.parent) == []


@pytest.mark.parametrize(("page", "text"), _garments())
def test_the_documents_are_told_nothing(page, text):
    assert _read(text) == [], page


def test_all_faults_are_told_in_one_run_with_their_places(tmp_path):
    path = tmp_path / "trousers.yaml"
    text = SAMPLE.replace(
        "Fold the band.", '"Turn the skirt inside out by 1 1/2 in (6.25 cm), then go to step 29."'
    )
    path.write_text(text, encoding="utf-8")
    result = run("check", path)
    line = text[: text.index("fold:")].count("\n") + 1
    for slug in ("measures-disagree", "step-not-there", "inside-out", "part-not-there"):
        assert f"({slug})" in result.output
    assert result.output.count(f"trousers.yaml:{line}:") >= 4
    assert "Traceback" not in result.output


def test_a_part_that_another_choice_brings_is_a_part():
    text = """
garment: Quay top
choices: {view: [plain, long]}
pieces:
  body: {edges: [top, side, hem, side]}
  sleeve: {edges: [head, under, wrist, under], when: {view: long}}
operations:
  look: {do: Look at the sleeve%s., on: body}
"""
    loaded = load_text(text % " and the yoke")
    plain = choose(loaded.garment, {})
    found = check_texts(plain, texts_of(plain), loaded.garment)
    assert [item.message for item in found if "`the sleeve`" in item.message] == []
    assert ["`the yoke`" in item.message for item in found] == [True]


def test_without_pieces_no_part_is_asked_for():
    assert _read("garment: Cover\noperations:\n  a: {do: Pin the collar to the yoke.}\n") == []


@pytest.mark.parametrize("part", PARTS)
def test_a_part_is_known_by_the_name_of_a_piece(part):
    text = (
        "garment: Thing\npieces: {{{}: {{edges: [a, b, c]}}}}\n"
        "operations: {{look: {{do: Fold the {}s.}}}}\n"
    )
    assert _read(text.format(f"left-{part}", part)) == []
    found = _read(text.format("scrap", part))
    assert [(item.slug, format_path(item.path)) for item in found] == [
        ("part-not-there", "operations.look.do")
    ]


def test_who_asks_for_the_later_entry_is_told_by_the_order():
    text = SAMPLE.replace("do: Fold the band.", "do: Stitch the hanging loops down.")
    assert [item.slug for item in _read(text)] == ["told-later"]
    assert _read(text.replace("down., on", "down., uses: hanging-loops, on")) == []
    assert _read(text.replace("down., on", "down., after: loops, on")) == []


def test_notes_of_fabrics_pieces_and_notions_are_read():
    text = """
garment: Quay cover
fabrics: {felt: {kind: felt, note: 1 in (6 cm) thick}}
pieces: {cover: {of: felt, edges: [a, b, c], note: 1 in (6 cm) more}}
notions: {cord: {kind: cord, note: 1 in (6 cm) longer}}
operations: {look: {do: Look at it., on: cover}}
"""
    assert [format_path(item.path) for item in _read(text)] == [
        "fabrics.felt.note",
        "pieces.cover.note",
        "notions.cord.note",
    ]


def test_a_file_without_texts_pays_for_no_import(tmp_path):
    script = (
        "import sys; from seqplan.pipeline import open_garment; open_garment(sys.argv[1]).findings;"
        "print([m for m in sys.modules if m.endswith('reading.check')])"
    )
    path = tmp_path / "cloth.yaml"
    path.write_text(
        "garment: Cloth\npieces: {cloth: {edges: [round]}}\n"
        "operations: {hem: {hem: cloth.round, depth: 1}}\n",
        encoding="utf-8",
    )
    done = subprocess.run(
        [sys.executable, "-c", script, path], cwd=ROOT, capture_output=True, text=True, check=True
    )
    assert done.stdout.strip() == "[]"
