"""`seqplan schema`, seen from outside: an editor that reads it lets through what the check does."""

import json
import re
from functools import cache

import pytest
import yaml
from cli.running import GARMENTS, ROOT, run
from hypothesis import given, settings
from jsonschema import Draft202012Validator
from load.strategies_garment import garments

from seqplan.load.document import load_file, load_text
from seqplan.load.dump import dump
from seqplan.load.starter import MEASURES, starter

_LOADER = getattr(yaml, "CSafeLoader", yaml.SafeLoader)
_YAML = re.compile(r"```yaml\n(.*?)```", re.DOTALL)
_PAGES = [(ROOT / page).read_text(encoding="utf-8") for page in ("README.md", "docs/language.md")]
SHOWN = [
    text
    for page in _PAGES
    for text in _YAML.findall(page)
    if text.startswith("garment:") and "\noperations:" in text
]
STARTERS = [starter("Quay skirt", units) for units in MEASURES]
WHOLE = [*(path.read_text(encoding="utf-8") for path in GARMENTS), *SHOWN, *STARTERS]

# What plain text is taken for by readers of the format's version 1.2 (its core schema).
_TYPES = (
    (re.compile(r"~|null|Null|NULL|"), lambda text: None),
    (re.compile(r"true|True|TRUE"), lambda text: True),
    (re.compile(r"false|False|FALSE"), lambda text: False),
    (re.compile(r"[-+]?[0-9]+"), int),
    (re.compile(r"0o[0-7]+|0x[0-9a-fA-F]+"), lambda text: int(text, 0)),
    (re.compile(r"[-+]?(\.[0-9]+|[0-9]+(\.[0-9]*)?)([eE][-+]?[0-9]+)?"), float),
)

BROKEN = {
    "no name": "operations: {a: {do: x}}",
    "no operations": "garment: x",
    "empty operations": "garment: x\noperations: {}",
    "operations in a list": "garment: x\noperations: [{do: x}]",
    "an unknown key at the top": "garment: x\noperatons: {}\noperations: {a: {do: x}}",
    "an unknown key of a piece": (
        "garment: x\npieces: {front: {egdes: [a]}}\noperations: {a: {do: x}}"
    ),
    "an unknown key of an operation": "garment: x\noperations: {a: {do: x, statoin: iron}}",
    "the key of another verb": "garment: x\noperations: {a: {do: x, depth: 2}}",
    "two verbs": "garment: x\noperations: {a: {do: x, fit: all}}",
    "no verb": "garment: x\noperations: {a: {note: x}}",
    "a key of some verb and no verb": "garment: x\noperations: {a: {depth: 2}}",
    "an empty operation": "garment: x\noperations: {a: {}}",
    "nothing for an operation": "garment: x\noperations: {a: }",
    "text for an operation": "garment: x\noperations: {a: sew it}",
    "a notion without a kind": "garment: x\nnotions: {z: {length: 2}}\noperations: {a: {do: x}}",
    "a zip without edges": "garment: x\nnotions: {z: zip}\noperations: {a: {insert: z}}",
    "a list for a text": "garment: [x]\noperations: {a: {do: x}}",
    "keys for a length": "garment: x\nallowance: {cm: 2}\noperations: {a: {do: x}}",
    "no length": "garment: x\nallowance: a bit\noperations: {a: {do: x}}",
    "a length below nothing": "garment: x\nallowance: -1\noperations: {a: {do: x}}",
    "an unknown unit": "garment: x\nunits: ell\noperations: {a: {do: x}}",
    "an unknown seam": (
        "garment: x\npieces: {p: {cut: pair, edges: [s]}}\noperations: {a: {sew: p.s, as: nice}}"
    ),
    "no pieces by that cut": "garment: x\npieces: {p: {cut: 0}}\noperations: {a: {do: x}}",
    "an edge without its piece": (
        "garment: x\npieces: {p: {cut: pair, edges: [s]}}\noperations: {a: {sew: s}}"
    ),
    "an unknown side": (
        "garment: x\npieces: {p: {cut: pair, worn: back, edges: [s]}}\n"
        "operations: {a: {finish: p.s@up}}"
    ),
    "a name with a space": "garment: x\noperations: {side seam: {do: x}}",
    "a long name": f"garment: x\noperations: {{{'a' * 65}: {{do: x}}}}",
    "no minutes": "garment: x\noperations: {a: {do: x, minutes: soon}}",
    "far too many minutes": "garment: x\noperations: {a: {do: x, minutes: 20000}}",
    "neither yes nor no": (
        "garment: x\npieces: {p: {cut: pair, edges: [s]}}\n"
        "operations: {a: {hem: p.s, flat: perhaps}}"
    ),
    "an empty value": "garment: x\nabout:\noperations: {a: {do: x}}",
    "a list": "[garment, x]",
    "text": "garment",
}


@cache
def _validator() -> Draft202012Validator:
    result = run("schema")
    assert result.exit_code == 0
    return Draft202012Validator(json.loads(result.stdout))


def faults(garment: object) -> list[str]:
    """What an editor would mark."""
    return [error.message for error in _validator().iter_errors(garment)]


def as_text(text: str) -> object:
    """Read as the program reads: every value is the text that was written."""
    return _value(yaml.compose(text, Loader=_LOADER), is_typed=False)


def as_types(text: str) -> object:
    """Read as most editors read: plain text is a number or a truth where it looks like one."""
    return _value(yaml.compose(text, Loader=_LOADER), is_typed=True)


def _value(node: yaml.Node, *, is_typed: bool) -> object:
    if isinstance(node, yaml.MappingNode):
        return {key.value: _value(value, is_typed=is_typed) for key, value in node.value}
    if isinstance(node, yaml.SequenceNode):
        return [_value(item, is_typed=is_typed) for item in node.value]
    if is_typed and node.style is None:
        for pattern, make in _TYPES:
            if pattern.fullmatch(node.value):
                return make(node.value)
    return node.value


READINGS = pytest.mark.parametrize("read", [as_text, as_types])


@READINGS
@pytest.mark.parametrize("text", WHOLE, ids=lambda text: text.partition("garment: ")[2][:20])
def test_every_garment_that_comes_along_is_accepted_however_it_is_read(text, read):
    assert faults(read(text)) == []


def test_there_are_garments_in_the_documents_and_in_the_folder():
    assert len(SHOWN) >= 2
    assert len(GARMENTS) >= 4


@pytest.mark.parametrize("path", GARMENTS, ids=lambda path: path.stem)
def test_so_is_every_garment_that_the_program_writes_anew(path):
    garment = load_file(path).garment
    assert garment is not None
    for read in (as_text, as_types):
        assert faults(read(dump(garment))) == []


@settings(max_examples=40)
@given(garment=garments())
def test_whatever_the_program_writes_is_accepted_however_it_is_read(garment):
    text = dump(garment)
    for read in (as_text, as_types):
        assert faults(read(text)) == []


@READINGS
@pytest.mark.parametrize("text", BROKEN.values(), ids=BROKEN.keys())
def test_a_garment_that_is_broken_in_its_form_is_refused_here_as_by_the_loader(text, read):
    assert load_text(text).garment is None
    assert faults(read(text))


@pytest.mark.parametrize(
    "entry",
    [
        "{press: front.side}",
        "{sew: front.side, press: to back}",
        "{sew: front.side, open: a}",
        "{baste: front.side, press: open, open: a}",
    ],
)
def test_a_verb_that_is_a_plain_key_beside_another_is_taken_for_the_key(entry):
    assert faults(as_text(f"garment: x\noperations: {{a: {entry}}}")) == []


@pytest.mark.parametrize("kind", ["fabrics", "notions"])
def test_plain_text_may_stand_for_the_kind_of_a_thing(kind):
    text = f"garment: x\n{kind}: {{a: woven cotton}}\noperations: {{b: {{do: x}}}}"
    assert faults(as_text(text)) == []


def test_written_to_a_file_it_is_what_is_printed(tmp_path):
    path = tmp_path / "garment.schema.json"
    result = run("schema", "-o", path)
    assert result.exit_code == 0
    assert path.read_text(encoding="utf-8") == run("schema").stdout


def test_where_it_cannot_be_written_it_says_so(tmp_path):
    result = run("schema", "-o", tmp_path)
    assert result.exit_code == 3
    assert "it is a folder" in result.output


def test_it_is_printed_the_same_every_time():
    assert run("schema").stdout == run("schema").stdout


def test_the_line_that_editors_read_is_a_comment_to_the_program():
    line = "# yaml-language-server: $schema=garment.schema.json\n"
    assert load_text(line + STARTERS[0]).diagnostics == ()
