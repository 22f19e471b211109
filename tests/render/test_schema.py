"""The schema and the loader agree, each key from both sides."""

import re
from itertools import chain

import pytest
from hypothesis import given
from hypothesis import strategies as st
from jsonschema import Draft202012Validator
from load.strategies_garment import names

from seqplan.base.measure import parse_length
from seqplan.load.keys import KEYS, Key, Section, Takes, keys_of, keys_with, verb_keys
from seqplan.model.entry import Verb
from seqplan.render.machine.schema import garment_schema
from seqplan.render.machine.values import TABLES, VALUES

SCHEMA = garment_schema()
VALIDATOR = Draft202012Validator(SCHEMA)
ABSURD = {"strange": {"thing": "x"}}

GOOD = {
    Takes.TEXT: ["Look it over.", "10", 10, 1.5, True],
    Takes.NOTE: ["One line.\nAnother.", 10],
    Takes.LENGTH: [
        "1.5",
        "1.5 cm",
        "5/8 in",
        "1 5/8 in",
        "6 mm",
        '3/8"',
        1.5,
        2,
        0,
        {"cm": 1.5, "in": "5/8"},
    ],
    Takes.NUMBER: ["1", 1],
    Takes.YES_NO: ["yes", "no", "Yes", "true", True, False],
    Takes.CUT: ["fold", "pair", "Fold", "2", 2],
    Takes.MARK: ["B", "Bh", "Ä", 7],
    Takes.EDGE_LIST: ["hem", ["waist", "side", "centre | slot|opening"], [1, 2]],
    Takes.EDGE_NAMES: ["side", ["side", "hem"]],
    Takes.RUN: ["front.side", "front.side@left", ["front.side", "back.side@right"], "1.2", 1.2],
    Takes.RUN_OR_PIECE: ["front.side", "back-lining", ["front.side", "back.side"]],
    Takes.RUN_OR_CASING: ["front.side", "channel", ["front.side", "back.side"]],
    Takes.PIECE: ["back-facing", "Ärmel", "縫う", 1],
    Takes.PIECES: ["all", "front", ["front", "back half"], "stand + stand-inner", "cuff half"],
    Takes.FABRIC: ["shell"],
    Takes.NOTION: ["zip"],
    Takes.NOTION_OR_ENTRY: ["zip"],
    Takes.STATION: ["iron", "buttonholer"],
    Takes.ENTRY: ["side-seams"],
    Takes.ENTRIES: ["side-seams", "side-seams/press", ["hem", "waist/trim"]],
    Takes.NAMES: ["straps", ["straps", "loops"]],
    Takes.TEXTS: ["clip", ["clip", "press"]],
    Takes.LENGTH_BY_SIZE: ["20 cm", 20, {"S": 20, "M": "8 in", "40": 22}],
    Takes.HOURS: ["24", 24, "24 hours", "1h"],
    Takes.PLACES: ["cuff", "front.pocket@left", "band@left", ["cuff", "front.pocket"]],
    Takes.EDGES_OR_PLACES: ["cuff", "front.side", ["band@left", "front.side"]],
    Takes.CAUGHT: ["back.top", "tape", ["back.top", "loop"], {"collar.neck": "stand.top"}],
    Takes.PIECES_OR_NOTION: ["tape", "strip", ["strip", "strip-inner"], "strip + strip-inner"],
    Takes.FABRICS: ["all", "shell", ["shell", "lining"]],
    Takes.NOTION_OR_PIECE: ["buttons", "strap"],
    Takes.TOPSTITCH: ["yes", True, "0.5", 0.5, "yoke"],
    Takes.FULLNESS: ["waist", ["waist", {"on": "wrist", "number": 2}], {"on": "wrist"}],
    Takes.SPOTS: ["pocket", "pocket@left", ["pocket@left", "label"]],
    Takes.SLITS: [{"slit": {"at": "wrist-back | wrist-front", "length": 12}}],
    Takes.SHAPE: [[[0, 0], {"curve": [9, -1]}, ["18 cm", "-1"]], "skirt.svg#front"],
    Takes.POINTS: [[9, 0], ["9 cm", "-1 in"], [[9, 0], [14, -1]]],
    Takes.LENGTHS: [{"waist": 36, "side": "60 cm"}],
    Takes.NOTCHES: [
        {"side": "2 from hem", "cap": ["single", "double"], "neck": ["triple middle", "middle"]},
        {"side": ["double 1 1/2 in from hem"]},
    ],
    Takes.GLOSSARY: [{"moon tuck": "A tuck.", "ease": "Room to move."}],
    Takes.BEGINNINGS: [{"frill-line": "2 from neck", "place": "1 1/2 in from side"}],
    Takes.AMOUNTS: [
        {"150": "1.2 m", "60 in": "1 3/8 yd"},
        {"115": {"S": "1.2 m", "M": "130 cm"}},
        {"150": {"m": 1.2, "in": 48}, "115": {"S": {"m": "1.3", "in": "54"}}},
    ],
    Takes.PARAGRAPHS: ["For yourself.", ["For yourself.", "Not for sale."]],
    Takes.PICTURE: ["mark.svg", "pictures/lay 150.PNG"],
    Takes.PLANS: [[{"picture": "a.svg", "fabric": "shell", "width": 150, "alt": "Two pieces."}]],
    Takes.WHEN: [{"way": "legs first"}, {"pockets": "yes"}, {"pockets": True}],
    Takes.WAIVERS: [[{"rule": "press-before-crossing", "at": "hem", "because": "It is felt."}]],
    Takes.PORTION: ["10 from waist", "1 5/8 in before hem"],
    Takes.DIRECTION: ["to back", "open", "one side"],
}
"""Values as they are written, and as readers that turn text into numbers give them."""

BAD = {
    Takes.TEXT: ["", " ", ["a"]],
    Takes.LENGTH: [
        "a bit",
        "-1",
        -1,
        "1,5",
        "5/8in 2",
        "1/0",
        "1.5 ell",
        {"cm": 1.5},
        {"cm": 1.5, "mm": 15},
        {"cm": 1.5, "in": "a bit"},
        {"cm": 1.5, "in": "5/8", "mm": 15},
        {"cm": "1.5 cm", "in": "5/8"},
    ],
    Takes.NUMBER: ["some", -1, 100_000, 1.5, True],
    Takes.YES_NO: ["maybe", 1],
    Takes.CHOICE: ["nonsense", 1],
    Takes.CHOICES: ["nonsense", [], ["nonsense"]],
    Takes.CUT: ["bias", 0, "-1"],
    Takes.MARK: ["long", "?"],
    Takes.EDGE_LIST: ["a b", "centre |", "| a", [], [["a"]]],
    Takes.EDGE_NAMES: ["front.side", []],
    Takes.RUN: ["front", "front side", "front.side@up", "a.b.c", [], ["front.a", "front.a"], True],
    Takes.RUN_OR_PIECE: ["front side", ["front"], "front.side@up"],
    Takes.PIECE: ["front.side", "a b", ""],
    Takes.PIECES: ["front.side", [], "front +", "front quarter", ["front + back"]],
    Takes.LENGTH_BY_SIZE: ["a bit", {"S": "a bit"}, [20]],
    Takes.HOURS: ["a day", -1, "24 weeks"],
    Takes.PLACES: ["a b", [], "front.", "@left", "front@up"],
    Takes.CAUGHT: ["a b", [], {"collar.neck": "stand"}, {"a b": "stand.top"}],
    Takes.FABRICS: ["a b", []],
    Takes.FULLNESS: ["front.waist", [], {"number": 2}, {"on": "wrist", "number": 0}],
    Takes.SPOTS: ["front.pocket", "pocket@up", []],
    Takes.SLITS: [{"a b": {"at": "c | d"}}, {"slit": {"length": 12}}, {"slit": "c | d"}, ["slit"]],
    Takes.SHAPE: ["skirt", [], [[0]], [{"bend": [1, 2]}], [[0, "a bit"]], "skirt.png#front"],
    Takes.POINTS: [9, [9], [[9]], [["a", "b"]]],
    Takes.LENGTHS: [{}, {"waist": "a bit"}, ["waist"]],
    Takes.NOTCHES: [{}, "single", {"side": []}, {"side": "2"}, {"side": "twofold"}, {"side": [2]}],
    Takes.GLOSSARY: [{}, "ease", {"ease": ["room"]}],
    Takes.BEGINNINGS: [{}, {"frill-line": "2"}, {"frill-line": "a bit from neck"}, "frill-line"],
    Takes.AMOUNTS: [{}, "1.2 m", {"150": "1.2"}, {"150": 1.2}, {"S": "1.2 m"}, ["1.2 m"]],
    Takes.PARAGRAPHS: ["", [], {"a": "b"}],
    Takes.PICTURE: ["", ["mark.svg"]],
    Takes.PLANS: [[], "lay.svg", [{"picture": "a.svg"}], [{"fabric": "shell"}]],
    Takes.WHEN: ["way", {"way": []}],
    Takes.WAIVERS: [[{"rule": "a"}], "press-before-crossing"],
    Takes.STATION: ["a b"],
    Takes.ENTRIES: ["hem/", "/press", "a b", []],
    Takes.NAMES: ["a b", []],
    Takes.PORTION: ["10", "from waist", "10 of waist"],
    Takes.DIRECTION: ["to front.side", ["back"]],
}


SECTIONS = {
    "fabrics": Section.FABRIC,
    "pieces": Section.PIECE,
    "notions": Section.NOTION,
    "stations": Section.STATION,
    "operations": Section.OPERATION,
}


def good(key: Key) -> list[object]:
    """Values that a key takes; those of words and tables depend on the key."""
    if key.takes is Takes.CHOICE:
        return [*key.choices, *(word.upper() for word in key.choices)]
    if key.takes is Takes.CHOICES:
        return [*key.choices, list(key.choices)]
    if key.takes is Takes.TABLE:
        return [{"strange": thing} for thing in _things(key.name)]
    return GOOD[key.takes]


def _things(table: str) -> list[object]:
    """What the names in a table may stand for."""
    others = {"choices": [["legs first", "crotch first"]], "recipes": [["sew", "trim", "press"]]}
    return others[table] if table in others else [_thing(SECTIONS[table])]


def _required(keys) -> dict[str, object]:
    return {key.name: good(key)[0] for key in keys if key.is_required}


def _thing(section: Section) -> dict[str, object]:
    if section is Section.OPERATION:
        return {"do": "Look it over."}
    return _required(keys_of(section).values())


def _entry(verb: Verb) -> dict[str, object]:
    return _required(keys_with(verb).values())


def _garment(section: Section, thing: object) -> dict[str, object]:
    """A garment with a thing in the section where it belongs."""
    garment: dict[str, object] = _thing(Section.GARMENT)
    if section in HOLDERS:
        section, thing = Section.PIECE, HOLDERS[section](thing)
    if section in LISTS:
        return garment | {LISTS[section]: [thing]}
    table = next(name for name, owner in SECTIONS.items() if owner is section)
    return garment | {table: {"strange": thing}}


def _with(key: Key, value: object) -> list[dict[str, object]]:
    """Garments in which the key has this value; of an operation, one for each of its verbs."""
    if key.section is Section.GARMENT:
        return [_thing(Section.GARMENT) | {key.name: value}]
    if key.section is not Section.OPERATION:
        return [_garment(key.section, _thing(key.section) | {key.name: value})]
    return [
        _garment(Section.OPERATION, _entry(verb) | {key.name: value}) for verb in key.verbs or Verb
    ]


LISTS = {Section.PLAN: "plans", Section.WAIVER: "waive"}
"""Things that stand in a list at the top."""

HOLDERS = {
    Section.FULLNESS: lambda thing: {"pleats": [thing]},
    Section.SHAPE: lambda thing: {"shape": [[0, 0], thing, [9, 9]]},
    Section.SLIT: lambda thing: {"slits": {"slit": thing}},
}
"""Things that stand within a piece."""


def accepts(garment: object) -> bool:
    return VALIDATOR.is_valid(garment)


def test_it_is_a_schema_of_the_draft_that_it_names():
    Draft202012Validator.check_schema(SCHEMA)
    assert SCHEMA["$schema"] == Draft202012Validator.META_SCHEMA["$id"]


def test_everything_that_can_stand_after_a_key_is_described():
    assert set(VALUES) == set(Takes)


def test_every_table_of_the_language_says_what_its_names_stand_for():
    assert {key.name for key in KEYS if key.takes is Takes.TABLE} == set(TABLES)


def test_what_is_described_once_is_used_and_there_is_nothing_else_to_look_up():
    used = set(re.findall(r"'#/\$defs/([^']+)'", str(SCHEMA)))
    assert used == set(SCHEMA["$defs"])


@pytest.mark.parametrize("key", KEYS, ids=lambda key: f"{key.section.value}-{key.name}")
def test_a_key_takes_what_it_is_said_to_take(key):
    for value in good(key):
        for garment in _with(key, value):
            assert accepts(garment), garment


@pytest.mark.parametrize("key", KEYS, ids=lambda key: f"{key.section.value}-{key.name}")
def test_a_key_takes_nothing_absurd(key):
    for value in (ABSURD, None, [ABSURD], *BAD.get(key.takes, ())):
        for garment in _with(key, value):
            assert not accepts(garment), garment


@pytest.mark.parametrize("verb", Verb)
def test_an_operation_has_the_keys_of_its_verb_and_no_others(verb):
    names = {key.name for key in KEYS if key.section is Section.OPERATION}
    ours = {key.name for key in keys_with(verb).values()}
    hosts = {name for name in verb_keys() if verb.value in _plain_keys(name)}
    for name in names - ours - hosts:
        entry = _entry(verb) | {name: "front"}
        assert not accepts(_garment(Section.OPERATION, entry)), entry


def _plain_keys(verb: str) -> set[str]:
    """The keys beside a verb, which may be verbs elsewhere."""
    return {name for name, key in keys_with(Verb(verb)).items() if not key.is_verb}


@pytest.mark.parametrize("key", KEYS, ids=lambda key: f"{key.section.value}-{key.name}")
def test_what_a_key_is_for_is_told_where_it_may_stand(key):
    described = [
        each["properties"][key.name].get("description")
        for each in _objects(SCHEMA)
        if isinstance(each["properties"].get(key.name), dict)
    ]
    assert key.help in described


def _objects(part: object) -> list[dict]:
    if isinstance(part, list):
        return list(chain.from_iterable(map(_objects, part)))
    if not isinstance(part, dict):
        return []
    own = [part] if isinstance(part.get("properties"), dict) else []
    return own + list(chain.from_iterable(map(_objects, part.values())))


def test_a_file_with_seams_of_its_own_may_name_them_and_no_other_may():
    entry = {"sew": "front.side", "as": "harbour seam"}
    garment = _garment(Section.OPERATION, entry)
    assert not accepts(garment)
    assert accepts(garment | {"recipes": {"harbour seam": ["sew", "trim", "topstitch"]}})


@given(st.text(alphabet='0123456789/. "mcinyd-', max_size=12))
def test_a_length_is_what_the_loader_takes_for_one(text):
    garment = _thing(Section.GARMENT) | {"allowance": text}
    assert accepts(garment) == (parse_length(text) is not None)


@given(st.integers(0, 2000), st.integers(0, 2000), st.sampled_from(["", " in", "in", '"', " m"]))
def test_so_is_a_fraction(above, below, unit):
    for text in (f"{above}/{below}{unit}", f"1 {above}/0{below}{unit}"):
        garment = _thing(Section.GARMENT) | {"allowance": text}
        assert accepts(garment) == (parse_length(text) is not None)


@given(names(), names(), st.sampled_from(["", " "]))
def test_whatever_is_a_name_for_the_loader_is_one_here(piece, edge, space):
    edges = [f"{piece}{space}.{space}{edge}{space}@{space}left", f"{piece}.{edge}@right"]
    entry = {"sew": edges, "to": f"{space}{piece}{space}", "unit": [piece]}
    others = {"after": [f"{piece}{space}/{space}press", edge], "makes": [piece, edge], "do": "x"}
    assert accepts(_garment(Section.OPERATION, entry))
    assert accepts(_garment(Section.OPERATION, others))
    assert accepts(_garment(Section.PIECE, {"edges": [f"{piece}{space}|{space}{edge}"]}))
