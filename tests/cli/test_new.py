"""`seqplan new`: the starter is clean, teaches, and takes whatever name it is given."""

import re
from pathlib import Path

import pytest
from cli.running import run
from hypothesis import given
from hypothesis import strategies as st

from seqplan.load.document import load_text
from seqplan.load.starter import MEASURES, file_stem, garment_name, starter
from seqplan.load.text import first_unseen

_TRY = re.compile(r"^  # (?=[\w-]+: \{)", re.MULTILINE)

NAMES = [
    "Quay skirt",
    "Skirt: long",
    'The "good" coat',
    "Mate's coat",
    "# not a comment",
    "null",
    "yes",
    "10",
    "1:30",
    "2024-05-01",
    "- dash",
    "{braces}",
    "[brackets]",
    "&anchor *alias !tag %x @y `z`",
    "back\\slash",
    "Øljehyre på kajen",
    "縫う",
    "नाव का कोट",
    "🧵",
    "?",
    "x" * 5000,
    "../escape",
]


@pytest.fixture(autouse=True)
def _in_a_folder_of_its_own(tmp_path, monkeypatch):
    monkeypatch.chdir(tmp_path)


@pytest.mark.parametrize("units", MEASURES)
def test_the_starter_checks_without_a_word(units):
    assert run("new", "Quay skirt", "--units", units).exit_code == 0
    result = run("check", "quay-skirt.yaml")
    assert result.exit_code == 0
    assert "nothing to mend" in result.output


@pytest.mark.parametrize("units", MEASURES)
def test_every_line_to_try_checks_without_a_word_alone_and_with_the_others(units):
    text = starter("Quay skirt", units)
    tries = [found.span() for found in _TRY.finditer(text)]
    assert len(tries) >= 2
    tried = [text[:start] + "  " + text[end:] for start, end in tries]
    for number, each in enumerate([*tried, _TRY.sub("  ", text)]):
        Path(f"{number}.yaml").write_text(each, encoding="utf-8")
        result = run("check", f"{number}.yaml")
        assert result.exit_code == 0
        assert "nothing to mend" in result.output


@pytest.mark.parametrize("units", MEASURES)
def test_the_move_that_the_starter_proposes_is_refused_with_a_reason(units):
    lines = starter("Quay skirt", units).splitlines()
    hem = next(line for line in lines if line.startswith("  hem:"))
    lines.remove(hem)
    seams = next(place for place, line in enumerate(lines) if line.startswith("  side-seams:"))
    lines.insert(seams, hem)
    Path("moved.yaml").write_text("\n".join(lines) + "\n", encoding="utf-8")
    result = run("check", "moved.yaml")
    assert result.exit_code == 1
    assert "`hem` comes before `side-seams`" in result.output


@pytest.mark.parametrize("units", MEASURES)
def test_the_starter_fits_on_one_screen(units):
    lines = starter("Quay skirt", units).splitlines()
    assert len(lines) <= 36
    assert max(map(len, lines)) <= 100


def test_the_starter_can_be_made_into_everything():
    run("new", "Quay skirt")
    result = run("make", "quay-skirt.yaml", "-o", "out")
    assert result.exit_code == 0
    assert Path("out/booklet.html").exists()


@pytest.mark.parametrize("name", NAMES, ids=lambda name: name[:20])
def test_whatever_a_garment_is_called_its_file_is_in_this_folder_and_reads_back(name, tmp_path):
    result = run("new", "--", name)
    assert result.exit_code == 0, result.output
    (path,) = tmp_path.iterdir()
    garment = load_text(path.read_bytes()).garment
    assert garment is not None
    assert garment.name == name
    assert run("check", path).exit_code == 0


@given(st.text().filter(lambda text: text.strip() and first_unseen(garment_name(text)) is None))
def test_any_text_that_can_be_read_can_be_a_name(text):
    name = garment_name(text)
    loaded = load_text(starter(name, "cm"))
    assert loaded.diagnostics == ()
    assert loaded.garment is not None
    assert loaded.garment.name == name


@given(st.text())
def test_any_name_gives_a_file_name_that_every_system_takes(name):
    stem = file_stem(name)
    assert stem
    assert len(stem.encode()) <= 200
    assert not set(stem) & set('/\\:*?"<>|. \0')
    assert not stem.startswith("-")


def test_a_plain_name_is_written_without_quotes():
    assert "\ngarment: Quay skirt\n" in starter("Quay skirt", "cm")


def test_words_of_a_name_need_no_quotes_on_the_command_line():
    assert run("new", "Quay", "skirt").exit_code == 0
    assert Path("quay-skirt.yaml").exists()


@pytest.mark.parametrize("words", [[], [""], ["  "]])
def test_a_garment_without_a_name_is_refused_with_an_example(words, tmp_path):
    result = run("new", *words)
    assert result.exit_code == 2
    assert 'seqplan new "Quay skirt"' in result.output
    assert not list(tmp_path.iterdir())


@pytest.mark.parametrize("letter", ["\a", "\x7f", "\ufeff"])
def test_a_name_with_a_character_that_nobody_sees_is_refused(letter, tmp_path):
    result = run("new", f"Quay{letter}skirt")
    assert result.exit_code == 2
    assert f"U+{ord(letter):04X}" in result.output
    assert not list(tmp_path.iterdir())


def test_a_file_that_is_there_is_not_written_over():
    Path("quay-skirt.yaml").write_text("mine")
    result = run("new", "Quay skirt")
    assert result.exit_code == 3
    assert "quay-skirt.yaml" in result.output
    assert "--force" in result.output
    assert Path("quay-skirt.yaml").read_text() == "mine"


def test_a_link_that_leads_nowhere_is_not_written_over(tmp_path):
    (tmp_path / "quay-skirt.yaml").symlink_to("gone.yaml")
    assert run("new", "Quay skirt").exit_code == 3
    assert Path("quay-skirt.yaml").is_symlink()


def test_with_force_it_is():
    Path("quay-skirt.yaml").write_text("mine")
    assert run("new", "Quay skirt", "--force").exit_code == 0
    assert Path("quay-skirt.yaml").read_text().startswith("# A garment")


def test_it_goes_where_it_is_told_and_says_what_to_do_next():
    result = run("new", "Quay skirt", "-o", "my skirt.yaml")
    assert result.exit_code == 0
    assert "seqplan check 'my skirt.yaml'" in result.output
    assert Path("my skirt.yaml").exists()


@pytest.mark.parametrize("output", ["missing/skirt.yaml", "folder"])
def test_where_it_cannot_be_written_it_says_so_and_leaves_nothing(output, tmp_path):
    (tmp_path / "folder").mkdir()
    result = run("new", "Quay skirt", "-o", output, "--force")
    assert result.exit_code == 3
    assert "cannot write" in result.output
    assert [path.name for path in tmp_path.rglob("*")] == ["folder"]
