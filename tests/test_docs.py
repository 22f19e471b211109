"""What the documents show works as they show it."""

import re
import shlex
from pathlib import Path

import pytest
from cli.running import ROOT, run
from tools.make_docs import audits_page, language_page, rules_page
from tools.published_page import published_page
from tools.trade_table import trade_table

from seqplan.load.document import load_file
from seqplan.load.keys import KEYS

PAGES = ["README.md", "docs/language.md"]
_YAML = re.compile(r"```yaml\n(.*?)```", re.DOTALL)


def _garments() -> list[tuple[str, str]]:
    return [
        (page, block)
        for page in PAGES
        for block in _YAML.findall((ROOT / page).read_text(encoding="utf-8"))
        if block.startswith("garment:")
    ]


@pytest.mark.parametrize(("page", "text"), _garments(), ids=[page for page, _ in _garments()])
def test_every_whole_garment_in_the_documents_checks_without_error_or_warning(page, text, tmp_path):
    path = tmp_path / "shown.yaml"
    path.write_text(text)
    result = run("check", path)
    assert result.exit_code == 0, result.output
    assert "warning" not in result.output.replace("warnings 0", "")


def test_the_commands_that_the_readme_shows_run(monkeypatch, tmp_path):
    """In a folder of their own, for they write files."""
    (tmp_path / "garments").symlink_to(ROOT / "garments")
    monkeypatch.chdir(tmp_path)
    text = (ROOT / "README.md").read_text(encoding="utf-8")
    shown = re.findall(r"^\$ seqplan ([^#\n]*)", text, re.MULTILINE)
    assert len(shown) >= 4
    for line in shown:
        words = shlex.split(line)
        files = [str(p) for word in words if "*" in word for p in Path().glob(word)]
        words = [word for word in words if "*" not in word] + files
        assert run(*words).exit_code == 0, line


def test_pages_made_from_the_code_are_up_to_date():
    language = (ROOT / "docs" / "language.md").read_text(encoding="utf-8")
    published = (ROOT / "docs" / "published-orders.md").read_text(encoding="utf-8")
    assert (ROOT / "docs" / "rules.md").read_text(encoding="utf-8") == rules_page()
    assert (ROOT / "docs" / "audits.md").read_text(encoding="utf-8") == audits_page()
    assert (ROOT / "docs" / "rule-table.md").read_text(encoding="utf-8") == trade_table()
    assert published == published_page()
    assert language == language_page(language)


def test_every_key_that_is_built_has_a_worked_example():
    """In the language page, the garments or the README, as a key and not only by its name."""
    pages = [(ROOT / page).read_text(encoding="utf-8") for page in PAGES]
    blocks = [block for page in pages for block in _YAML.findall(page)]
    blocks += [path.read_text(encoding="utf-8") for path in (ROOT / "garments").glob("*.yaml")]
    shown = "\n".join(re.sub(r"#.*", "", block) for block in blocks)
    missing = [key.name for key in KEYS if not re.search(rf"(?:^|[\s{{,]){key.name}:", shown)]
    assert not missing


def test_the_language_page_speaks_of_every_key():
    text = (ROOT / "docs" / "language.md").read_text(encoding="utf-8")
    for key in KEYS:
        assert f"`{key.name}`" in text


@pytest.mark.parametrize("path", sorted((ROOT / "garments").glob("*.yaml")), ids=lambda p: p.stem)
def test_every_shipped_garment_opens_with_a_comment_on_what_it_shows(path):
    text = path.read_text(encoding="utf-8")
    assert text.startswith("# ")
    assert len(text.split("garment:")[0].split()) >= 20


def test_the_shipped_garments_hold_at_most_two_after():
    for path in (ROOT / "garments").glob("*.yaml"):
        garment = load_file(path).garment
        assert garment is not None
        count = sum(len(entry.after) for entry in garment.entries)
        assert count <= 2
