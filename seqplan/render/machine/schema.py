"""The language as a JSON Schema (draft 2020-12), for editors that complete and check while typing.

Made from the table of keys, so it says what the loader and the help say. An operation is described
by the verb that it has: as long as it has none, the verbs are offered; from then on, what goes with
that verb. A key such as ``press`` is a verb alone, and a plain key beside ``sew``.

Keys that are planned are let through with a description that says so. They are not called
deprecated: that would say that they are on their way out.
"""

from collections.abc import Iterable
from typing import Final

from seqplan.load.keys import Key, Section, Takes, keys_of, keys_with, verb_keys
from seqplan.model.entry import Verb
from seqplan.render.machine.document import Data
from seqplan.render.machine.values import (
    ANYTHING,
    GROWING,
    GROWN_BY,
    VALUES,
    choice,
    reference,
    section_name,
)
from seqplan.words.say import say

_DIALECT: Final = "https://json-schema.org/draft/2020-12/schema"
_MAY_BE_KIND: Final = (Section.FABRIC, Section.NOTION)
"""Things that plain text may stand for: it is their kind."""


def garment_schema() -> Data:
    """The schema of a garment file, ready to be written as JSON."""
    return {
        "$schema": _DIALECT,
        "title": say("editor-title"),
        "description": say("editor-about"),
        **_thing(keys_of(Section.GARMENT).values()),
        "if": {"required": [GROWN_BY]},
        "else": _with_usual_words(),
        "$defs": _sections() | _verbs() | _values(),
    }


def _with_usual_words() -> Data:
    """A garment that adds nothing to the words of a key: those of the table are all there are.

    The section is named by a pattern, so that editors do not offer it twice.
    """
    usual = choice(keys_with(Verb.SEW)[GROWING])
    operation = {"properties": {GROWING: usual}}
    return {"patternProperties": {"^operations$": {"additionalProperties": operation}}}


def _sections() -> Data:
    """The things that have keys of their own; those of an operation are told verb by verb."""
    sections: Data = {}
    for section in Section:
        if section is Section.OPERATION:
            sections[section_name(section)] = _operation()
        elif section is not Section.GARMENT:
            thing = _thing(keys_of(section).values())
            is_kind = section in _MAY_BE_KIND
            sections[section_name(section)] = (
                {"anyOf": [_value(Takes.TEXT), thing]} if is_kind else thing
            )
    return sections


def _verbs() -> Data:
    return {_verb_name(verb.value): _with_verb(verb) for verb in Verb}


def _values() -> Data:
    """What stands after keys, where it is the same for every key."""
    return {
        _value_name(takes): {"title": takes.value, **schema}
        for takes, schema in VALUES.items()
        if not callable(schema)
    }


def _thing(keys: Iterable[Key]) -> Data:
    """An object with these keys and no others."""
    keys = tuple(keys)
    required = [key.name for key in keys if key.is_required]
    return {
        "type": "object",
        "properties": {key.name: _property(key) for key in keys},
        **({"required": required} if required else {}),
        "additionalProperties": False,
    }


def _property(key: Key) -> Data:
    """What stands after one key, with what the key is for."""
    described: Data = {"description": key.help}
    maker = VALUES.get(key.takes, ANYTHING)
    if callable(maker):
        return described | {"title": key.takes.value} | maker(key)
    return described | (_value(key.takes) if key.takes in VALUES else ANYTHING)


def _with_verb(verb: Verb) -> Data:
    help_of_verb = verb_keys()[verb.value].help
    keys = keys_with(verb).values()
    return {"title": verb.value, "description": help_of_verb} | _thing(keys)


def _operation() -> Data:
    """One operation: by its verb, or before it has one."""
    chosen = [
        {"if": _has_verb(key.name), "then": reference(_verb_name(key.name))}
        for key in verb_keys().values()
    ]
    begun = {"if": {"not": _any_has(verb_keys())}, "then": _without_verb()}
    by_verb: Data = {"allOf": [*chosen, begun]}
    return {"description": say("editor-operation"), "type": "object", **by_verb}


def _has_verb(name: str) -> Data:
    """Whether this is the verb: it is there, and beside no verb that has it as a plain key."""
    hosts = [
        verb.value for verb in Verb if name in keys_with(verb) and not keys_with(verb)[name].is_verb
    ]
    return {"required": [name]} | ({"not": _any_has(hosts)} if hosts else {})


def _any_has(names: Iterable[str]) -> Data:
    return {"anyOf": [{"required": [name]} for name in names]}


def _everywhere() -> tuple[Key, ...]:
    """The keys that go with every verb."""
    return tuple(key for key in keys_with(Verb.DO).values() if not key.verbs)


def _without_verb() -> Data:
    """An operation that does not say what it does: all verbs are offered.

    It is refused, in any case for want of a verb that would let words of one's own stand.
    """
    verbs = verb_keys().values()
    properties = {key.name: _property(key) for key in (*verbs, *_everywhere())}
    return {
        "title": say("editor-operation-title"),
        "description": say("editor-operation"),
        "properties": properties,
        "required": [Verb.DO.value],
        "errorMessage": say("editor-verb"),
    }


def _value(takes: Takes) -> Data:
    return reference(_value_name(takes))


def _value_name(takes: Takes) -> str:
    return f"value-{takes.name.lower().replace('_', '-')}"


def _verb_name(verb: str) -> str:
    return f"operation-{verb.replace(' ', '-')}"
