"""The catalogue of sentences: whole, found once, and used."""

import ast
import string
from pathlib import Path

import pytest

from seqplan.words.say import CATALOGUES, catalogue, say, sentence

PACKAGE = Path(__file__).parents[2] / "seqplan"


def _keys() -> list[str]:
    return [key for name in CATALOGUES for key in catalogue(name)]


def test_every_module_of_sentences_is_searched():
    modules = {path.stem for path in (PACKAGE / "words").glob("*.py")} - {"__init__", "say"}
    parts = {name for name in modules if name.partition("_")[0] in modules and "_" in name}
    assert modules - parts == set(CATALOGUES)
    for name in parts:
        assert set(catalogue(name)) <= set(catalogue(name.partition("_")[0]))


def test_no_key_stands_twice():
    keys = _keys()
    assert len(keys) == len(set(keys))


def test_every_sentence_that_the_code_names_exists():
    missing = []
    for path in PACKAGE.rglob("*.py"):
        for node in ast.walk(ast.parse(path.read_text(encoding="utf-8"))):
            if (
                isinstance(node, ast.Call)
                and isinstance(node.func, ast.Name)
                and node.func.id in {"say", "sentence"}
                and node.args
                and isinstance(node.args[0], ast.Constant)
                and node.args[0].value not in _keys()
            ):
                missing.append(f"{path.name}:{node.lineno} {node.args[0].value}")
    assert missing == []


def test_every_place_in_a_sentence_is_named():
    for key in _keys():
        fields = [
            name for _, name, _, _ in string.Formatter().parse(sentence(key)) if name is not None
        ]
        assert all(name.isidentifier() for name in fields), key


def test_a_name_with_braces_is_put_in_as_it_is():
    assert say("check-raw-edge", name="a{b}") == "the edge `a{b}` is left raw"


def test_a_sentence_that_nobody_wrote_is_a_key_error():
    with pytest.raises(KeyError, match="no-such-sentence"):
        say("no-such-sentence")
