"""The table of keys and the readers say the same."""

import pytest
from load.files import file_with

from seqplan.load.document import load_text
from seqplan.load.keys import KEYS, Key, Section, keys_of, keys_with, verb_keys, verbs_with
from seqplan.model.entry import Verb

_MAIN = {
    Verb.FUSE: "front",
    Verb.INSERT: "tape",
    Verb.ATTACH: "zip",
    Verb.TURN: "front",
    Verb.FIT: "front",
    Verb.INSPECT: "front",
    Verb.DO: "Look",
    Verb.SEW: "back.centre",
    Verb.BASTE: "back.centre",
    Verb.PRETREAT: "canvas",
    Verb.CUT: "front",
    Verb.MARK: "front",
    Verb.STRAP: "strap",
    Verb.SLASH: "sleeve.vent",
    Verb.TOWER_PLACKET: "sleeve.vent",
    Verb.PATCH_POCKET: "pocket",
    Verb.WELT_POCKET: "pocket",
    Verb.IN_SEAM_POCKET: "pocket",
    Verb.NEST: "lining",
    Verb.ROLL: "front",
    Verb.OPEN: "zip",
    Verb.SHORTEN: "zip",
    Verb.CLOSE: "bag",
    Verb.WAIT: "24 hours",
    Verb.SEND_OUT: "front",
}
_NEEDED = {
    Verb.INSERT: ", in: channel",
    Verb.ATTACH: ", at: front.hem",
    Verb.TACK: ", to: zip",
    Verb.BAND: ", with: cuff",
    Verb.BIND: ", with: tape",
    Verb.TOWER_PLACKET: ", with: [cuff, strap]",
    Verb.CONTINUOUS_PLACKET: ", with: cuff",
    Verb.PATCH_POCKET: ", at: front",
    Verb.WELT_POCKET: ", at: front",
    Verb.IN_SEAM_POCKET: ", in: front.side",
}


def _line(verb: Verb, without: str = "") -> str:
    needed = "" if without and f" {without}:" in _NEEDED.get(verb, "") else _NEEDED.get(verb, "")
    main = "¤" if without == verb.value else _MAIN.get(verb, "front.hem")
    return f"{verb.value}: {main}{needed}"


def _built(section: Section) -> list[Key]:
    return [key for key in KEYS if key.section is section]


_OF_VERBS = [(verb, name) for verb in Verb for name, key in keys_with(verb).items()]


@pytest.mark.parametrize(("verb", "name"), _OF_VERBS)
def test_every_built_key_of_an_operation_is_read(verb: Verb, name: str) -> None:
    wrong = "{strange: {thing: x}}"
    line = _line(verb, name)
    line = line.replace("¤", wrong) if name == verb.value else f"{line}, {name}: {wrong}"
    loaded = load_text(file_with(operation=f"x: {{{line}}}"))
    paths = {item.path[:3] for item in loaded.diagnostics}
    assert ("operations", "x", name) in paths
    assert loaded.garment is None


@pytest.mark.parametrize("verb", Verb)
def test_every_verb_is_read_without_a_word(verb: Verb) -> None:
    loaded = load_text(file_with(operation=f"x: {{{_line(verb)}}}"))
    assert loaded.diagnostics == ()
    assert loaded.garment is not None
    assert loaded.garment.entries[-1].verb is verb


@pytest.mark.parametrize("name", [key.name for key in _built(Section.GARMENT)])
def test_every_built_key_at_the_top_is_read(name: str) -> None:
    loaded = load_text(f"{name}: [[strange]]\n")
    assert (name,) in {item.path[:1] for item in loaded.diagnostics}


@pytest.mark.parametrize(
    ("section", "argument"),
    [
        (Section.FABRIC, "fabric"),
        (Section.PIECE, "piece"),
        (Section.NOTION, "notion"),
        (Section.STATION, "station"),
    ],
)
def test_every_built_key_of_a_thing_is_read(section: Section, argument: str) -> None:
    for key in _built(section):
        line = f"thing: {{{key.name}: {{strange: {{thing: x}}}}}}"
        loaded = load_text(file_with(**{argument: line}))
        assert (f"{argument}s", "thing", key.name) in {item.path[:3] for item in loaded.diagnostics}


@pytest.mark.parametrize(
    ("section", "line", "path"),
    [
        (
            Section.FULLNESS,
            "thing: {{edges: [a, b], darts: {{{key}}}}}",
            ("pieces", "thing", "darts"),
        ),
        (
            Section.SHAPE,
            "thing: {{edges: [a, b], shape: [[0, 0], {{{key}}}, [9, 9]]}}",
            ("pieces", "thing", "shape", 1),
        ),
        (
            Section.SLIT,
            "thing: {{edges: [a, b], slits: {{vent: {{{key}}}}}}}",
            ("pieces", "thing", "slits", "vent"),
        ),
    ],
)
def test_every_built_key_inside_a_piece_is_read(
    section: Section, line: str, path: tuple[str, ...]
) -> None:
    for key in _built(section):
        text = file_with(piece=line.format(key=f"{key.name}: {{strange: x}}"))
        paths = {item.path[: len(path) + 1] for item in load_text(text).diagnostics}
        assert (*path, key.name) in paths


def test_every_built_key_of_a_waiver_is_read() -> None:
    for key in _built(Section.WAIVER):
        text = file_with(top=f"waive: [{{{key.name}: {{strange: x}}}}]")
        assert ("waive", 0, key.name) in {item.path[:3] for item in load_text(text).diagnostics}


def test_every_built_key_of_a_lay_plan_is_read() -> None:
    for key in _built(Section.PLAN):
        text = file_with(top=f"plans: [{{{key.name}: {{strange: x}}}}]")
        assert ("plans", 0, key.name) in {item.path[:3] for item in load_text(text).diagnostics}


def test_keys_that_are_verbs_elsewhere_do_not_hide_the_verb() -> None:
    operation = "x: {press: to back, open: look, sew: back.centre}"
    garment = load_text(file_with(operation=operation)).garment
    assert garment is not None
    entry = garment.entries[-1]
    assert (entry.verb, entry.press_to, entry.open) == (Verb.SEW, "back", "look")


def test_every_key_has_one_line_of_help() -> None:
    for key in KEYS:
        assert key.help.endswith("."), key.name
        assert "\n" not in key.help


def test_no_key_stands_in_the_table_twice() -> None:
    for verb in Verb:
        seen = [
            key.name
            for key in KEYS
            if key.section is Section.OPERATION
            and (verb in key.verbs or (not key.verbs and not key.is_verb))
        ]
        assert len(seen) == len(set(seen))
    for section in Section:
        if section is not Section.OPERATION:
            names = [key.name for key in KEYS if key.section is section]
            assert len(names) == len(set(names)) == len(keys_of(section))


def test_every_verb_of_the_model_is_in_the_table() -> None:
    assert set(verb_keys()) == {verb.value for verb in Verb}


def test_a_key_names_the_verbs_that_it_goes_with() -> None:
    assert verbs_with("overlap") == (Verb.INSERT,)
    assert verbs_with("gap") == (Verb.SEW, Verb.CASING)
    assert verbs_with("nonsense") == ()
