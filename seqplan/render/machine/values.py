r"""What stands after a key, as JSON Schema: one table, a line for each member of ``Takes``.

Two kinds of reader hand values to a schema: one keeps every scalar as the text that was written,
the other turns ``10`` into a number and ``true`` into a yes. Both readings are accepted. What the
loader reads is never refused here; what it refuses is refused as far as its form shows it.

The patterns keep to what every dialect of regular expressions has: no classes of letters of all
scripts, so a letter is what is no sign, and digits are ``[0-9]``, as ``\d`` differs.
"""

from collections.abc import Callable, Iterable, Mapping
from typing import Final, TypeAlias

from seqplan.load.choices import SEAM_PARTS
from seqplan.load.keys import Key, Section, Takes
from seqplan.load.names import ALL, LONGEST_NAME
from seqplan.load.pieces import EDGE_LIMIT
from seqplan.model.station import DEFAULT_STATIONS
from seqplan.render.machine.document import Data
from seqplan.words.say import say

Maker: TypeAlias = Callable[[Key], Data]
"""Makes the schema where it differs from key to key."""

ANYTHING: Final[Data] = {}

GROWING: Final = "as"
GROWN_BY: Final = "recipes"
"""The words of the one key, to which names in the other table of the same file are added."""

_LETTER = r"[^\u0000-/:-@\[-`{-\u007f\s]"
_NAME = rf"{_LETTER}[^\u0000-,./:-@\[-^`{{-\u007f\s]*"
_SIDE = r"(\s*@\s*(left|right))?"
_EDGE = rf"{_NAME}\s*\.\s*{_NAME}{_SIDE}"
_FRACTION = r"[0-9]{1,3}/(?!0+(?![0-9]))[0-9]{1,3}"
_NUMBER = rf"([0-9]{{1,6}}\s+{_FRACTION}|{_FRACTION}|[0-9]{{1,6}}(\.[0-9]{{1,4}})?)"
_LENGTH = rf'{_NUMBER}\s*(mm|cm|m|in|yd|")?'

_NOTCH = (
    rf"((single|double|triple)(\s+middle)?|middle"
    rf"|((single|double|triple)\s+)?{_LENGTH}\s+from\s+\S+)"
)


def section_reference(section: Section) -> Data:
    """A thing with keys of its own, described once under ``$defs``."""
    return reference(section_name(section))


def section_name(section: Section) -> str:
    """What a section is called under ``$defs``."""
    return section.value.replace(" ", "-")


def reference(name: str) -> Data:
    """What is described once, under ``$defs``, by its name there."""
    return {"$ref": f"#/$defs/{name}"}


def _table(key: Key) -> Data:
    """Names with what they are, at least one."""
    schema = _named(TABLES.get(key.name, ANYTHING)) | {"minProperties": 1}
    return schema if key.name not in _FREELY_NAMED else schema | {"propertyNames": {}}


def _named(thing: Data) -> Data:
    """Names with what each of them is."""
    names = {
        "pattern": _whole(_NAME),
        "errorMessage": say("editor-expected-name"),
        "maxLength": LONGEST_NAME,
    }
    return {"type": "object", "propertyNames": names, "additionalProperties": thing}


def _whole(body: str) -> str:
    return rf"^\s*{body}\s*$"


def _written(body: str, expected: str, *numbers: str) -> Data:
    """Text of a form; what it looks like as a number is of the type ``numbers`` and not negative.

    The keywords for numbers leave text alone, and the other way round.
    """
    text: Data = {
        "type": ["string", *numbers] if numbers else "string",
        "pattern": _whole(body),
        "errorMessage": say(f"editor-expected-{expected}"),
    }
    return text | {"minimum": 0} if numbers else text


def _one_or_more(item: Data, **limits: object) -> Data:
    """One, or a list of them that is not empty."""
    return _list_or(item, item, **limits)


def _list_or(alone: Data, item: Data, **limits: object) -> Data:
    """A list of items, or something else that stands alone.

    A condition and not a choice of two, so that what is wrong is told of the one that was meant.
    """
    many = {"items": item, "minItems": 1, **limits}
    return {"if": {"type": "array"}, "then": many, "else": alone}


def _object_or(keys: Data, other: Data) -> Data:
    """Keys with values, or something else, told apart in the same way."""
    return {"if": {"type": "object"}, "then": keys, "else": other}


def _unless_boolean(schema: Data) -> Data:
    """What stands there, or what other readers have taken for a yes or no; nobody is offered it."""
    return {"if": {"type": "boolean"}, "else": schema}


def _any_case(words: Iterable[str]) -> str:
    """A pattern for words in whatever capitals, as the loader reads them."""
    return "|".join(
        "".join(
            rf"[{letter.upper()}{letter.lower()}]"
            if letter.isalpha()
            else r"\s+"
            if letter == " "
            else letter
            for letter in word
        )
        for word in words
    )


def _words(expected: str, *words: str, also: Iterable[str] = (), **values: object) -> Data:
    """Words that editors offer, or the same in other capitals, or others that are understood."""
    other = {
        "type": "string",
        "pattern": _whole(f"({_any_case((*words, *also))})"),
        "errorMessage": say(f"editor-expected-{expected}", **values),
    }
    return {"anyOf": [{"enum": list(words)}, other]}


def choice(key: Key) -> Data:
    """The words of a key, and no others."""
    listed = ", ".join(f"`{choice}`" for choice in key.choices)
    return _words("choice", *key.choices, choices=listed)


def _choice(key: Key) -> Data:
    """The words of a key; where a file may add to them, any words at all."""
    schema = choice(key)
    return {"anyOf": [*schema["anyOf"], _TEXT]} if key.name == GROWING else schema


def _choices(key: Key) -> Data:
    return _one_or_more(choice(key)) | {"examples": list(key.choices)}


def _number(key: Key) -> Data:
    least, most = key.bounds
    return {
        "type": ["integer", "string"],
        "minimum": least,
        "maximum": most,
        "pattern": _whole(_digits(key)),
        "errorMessage": say("editor-expected-number", least=least, most=most),
    }


def _digits(key: Key) -> str:
    """Digits that may be a number within bounds; which of them are, only a number shows."""
    least, most = key.bounds
    not_nothing = r"(?!0+\s*$)" if least else ""
    return rf"{not_nothing}0*[0-9]{{1,{len(str(most))}}}"


def _cut(key: Key) -> Data:
    least, most = key.bounds
    number = {"type": "integer", "minimum": least, "maximum": most}
    words = _written(f"({_any_case(('fold', 'pair'))}|{_digits(key)})", "cut")
    return {"anyOf": [{"enum": ["fold", "pair"]}, number, words]}


_TEXT: Data = _unless_boolean(
    {
        "type": ["string", "number"],
        "pattern": r"\S",
        "errorMessage": say("editor-expected-text"),
    }
)
_NAME_ALONE = _written(_NAME, "name", "integer")
_EDGE_REF = _written(_EDGE, "edge", "number")
_EDGE_OR_NAME = _written(rf"({_EDGE}|{_NAME})", "run-or-name", "number")
_EDGE_LIST = _written(rf"{_NAME}(\s*\|\s*{_NAME})*", "marks", "integer")
_ENTRY_OR_PART = _written(rf"{_NAME}(\s*/\s*\S.*)?", "operation", "integer")
_PLACE = _written(rf"{_NAME}(\s*\.\s*{_NAME})?{_SIDE}", "place", "number")
_PIECE = rf"{_NAME}(\s+half)?"
_PIECES = _list_or(
    _written(rf"{_PIECE}(\s*\+\s*{_PIECE})*", "pieces", "integer"),
    _written(_PIECE, "pieces", "integer"),
)
_ONE_MEASURE = _written(_LENGTH, "length", "number")
_PAIR: Data = {
    "properties": {unit: _written(_NUMBER, "length", "number") for unit in ("mm", "cm", "m", "in")},
    "additionalProperties": False,
    "required": ["in"],
    "minProperties": 2,
    "maxProperties": 2,
}
_MEASURE = _object_or(_PAIR, _ONE_MEASURE)
_ONE_AMOUNT = _written(rf'{_NUMBER}\s*(mm|cm|m|in|yd|")', "amount")
_AMOUNT = _object_or(_PAIR, _ONE_AMOUNT)
_AMOUNT_OF_SIZES: Data = {"anyOf": [_PAIR, {"additionalProperties": _AMOUNT}]}
_POINT: Data = {
    "type": "array",
    "items": _written(rf"-?{_LENGTH}", "coordinate", "number") | {"minimum": -1e6},
    "minItems": 2,
    "maxItems": 2,
}
_POINTS: Data = {
    "type": "array",
    "if": {"items": {"type": "array"}},
    "then": {"items": _POINT, "minItems": 1},
    "else": _POINT,
}
_CORNERS: Data = {"items": _object_or(section_reference(Section.SHAPE), _POINT), "minItems": 1}
_RUN_OR_NAME = _list_or(_EDGE_OR_NAME, _EDGE_REF, uniqueItems=True)

TABLES: Final[Mapping[str, Data]] = {
    "fabrics": section_reference(Section.FABRIC),
    "pieces": section_reference(Section.PIECE),
    "notions": section_reference(Section.NOTION),
    "stations": section_reference(Section.STATION),
    "operations": section_reference(Section.OPERATION),
    "choices": _one_or_more(_TEXT),
    "recipes": _one_or_more({"enum": list(SEAM_PARTS)}),
}
"""What the names under a key stand for."""

_FREELY_NAMED = ("recipes",)
"""Tables whose names are words that people read, and may hold spaces."""

VALUES: Final[Mapping[Takes, Data | Maker]] = {
    Takes.TEXT: _TEXT,
    Takes.NOTE: _TEXT,
    Takes.LENGTH: _MEASURE,
    Takes.LENGTH_BY_SIZE: _object_or({"additionalProperties": _MEASURE}, _MEASURE),
    Takes.NUMBER: _number,
    Takes.HOURS: _written(r"[0-9]{1,4}(\s*(h|hours?|days?))?", "hours", "integer"),
    Takes.YES_NO: {
        "anyOf": [_words("yes-no", "yes", "no", also=("true", "false")), {"type": "boolean"}]
    },
    Takes.CHOICE: _choice,
    Takes.CHOICES: _choices,
    Takes.CUT: _cut,
    Takes.MARK: _written(rf"{_LETTER}{{1,2}}", "mark", "integer"),
    Takes.TABLE: _table,
    Takes.EDGE_LIST: _one_or_more(_EDGE_LIST, maxItems=EDGE_LIMIT),
    Takes.EDGE_NAMES: _one_or_more(_NAME_ALONE),
    Takes.RUN: _one_or_more(_EDGE_REF, uniqueItems=True),
    Takes.RUN_OR_PIECE: _RUN_OR_NAME,
    Takes.RUN_OR_CASING: _RUN_OR_NAME,
    Takes.PLACES: _one_or_more(_PLACE),
    Takes.EDGES_OR_PLACES: _one_or_more(_PLACE),
    Takes.CAUGHT: _object_or(
        {
            "propertyNames": _written(rf"({_EDGE}|{_NAME})", "run-or-name"),
            "additionalProperties": _EDGE_REF,
        },
        _one_or_more(_EDGE_OR_NAME),
    ),
    Takes.PIECE: _NAME_ALONE,
    Takes.PIECES: _PIECES | {"examples": [ALL]},
    Takes.PIECES_OR_NOTION: _PIECES,
    Takes.FABRIC: _NAME_ALONE,
    Takes.FABRICS: _one_or_more(_NAME_ALONE) | {"examples": [ALL]},
    Takes.NOTION: _NAME_ALONE,
    Takes.NOTION_OR_PIECE: _EDGE_OR_NAME,
    Takes.NOTION_OR_ENTRY: _NAME_ALONE,
    Takes.STATION: _NAME_ALONE | {"examples": [station.id for station in DEFAULT_STATIONS]},
    Takes.ENTRY: _NAME_ALONE,
    Takes.ENTRIES: _one_or_more(_ENTRY_OR_PART),
    Takes.NAMES: _one_or_more(_NAME_ALONE),
    Takes.TEXTS: _one_or_more(_TEXT),
    Takes.PORTION: _written(rf"{_LENGTH}\s+(from|before)\s+\S+", "portion"),
    Takes.DIRECTION: _written(r"[^.,:/@|]+", "direction"),
    Takes.TOPSTITCH: _TEXT | {"examples": ["yes"]},
    Takes.FULLNESS: _one_or_more(_object_or(section_reference(Section.FULLNESS), _NAME_ALONE)),
    Takes.SPOTS: _one_or_more(_written(rf"{_NAME}{_SIDE}", "spot", "integer")),
    Takes.SLITS: _named(section_reference(Section.SLIT)),
    Takes.SHAPE: {
        "if": {"type": "array"},
        "then": _CORNERS,
        "else": _written(r"\S.*\.[sS][vV][gG]\s*#\s*\S+", "shape"),
    },
    Takes.POINTS: _POINTS,
    Takes.LENGTHS: _named(_MEASURE) | {"minProperties": 1},
    Takes.AMOUNTS: {
        "type": "object",
        "propertyNames": _written(_LENGTH, "width"),
        "additionalProperties": _object_or(_AMOUNT_OF_SIZES, _ONE_AMOUNT),
        "minProperties": 1,
    },
    Takes.PARAGRAPHS: _one_or_more(_TEXT),
    Takes.PICTURE: _written(r"\S.*", "picture"),
    Takes.PLANS: _one_or_more(section_reference(Section.PLAN)),
    Takes.BEGINNINGS: _named(_written(rf"{_LENGTH}\s+from\s+\S+", "portion"))
    | {"minProperties": 1},
    Takes.GLOSSARY: {"type": "object", "additionalProperties": _TEXT, "minProperties": 1},
    Takes.NOTCHES: _named(_one_or_more(_written(_NOTCH, "notch"))) | {"minProperties": 1},
    Takes.WHEN: {"type": "object", "additionalProperties": _one_or_more(_TEXT)},
    Takes.WAIVERS: _one_or_more(section_reference(Section.WAIVER)),
}
