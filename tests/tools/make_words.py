"""Keep the translations in step with the English, and compile them.

``python -m tests.tools.make_words`` brings each ``seqplan.po`` up to date and compiles it to the
``seqplan.mo`` beside it: new sentences stand there without a translation, those whose English has
changed are marked ``fuzzy`` and left out of the ``.mo``, those that are gone are taken out. With
``--check`` it writes nothing and names every sentence that wants a translator. `make_docs` does
both, too.
"""

import ast
import string
import sys
from collections.abc import Iterator
from pathlib import Path
from typing import NamedTuple

import polib

from seqplan.base.language import ENGLISH, LANGUAGES
from seqplan.base.strength import Strength
from seqplan.model.operation import Action
from seqplan.model.piece import Layer
from seqplan.model.station import DEFAULT_STATIONS
from seqplan.render.chart_boxes import plain_words
from seqplan.rules.book import RULES
from seqplan.words.say import CATALOGUES, ONE, catalogue, has, has_forms, sentence

PACKAGE = Path(__file__).parents[2] / "seqplan"
LOCALE = PACKAGE / "words" / "locale"

AUTHORS = frozenset(
    {
        "checks",
        "prints",
        "faults",
        "shapes",
        "outlines",
        "material",
        "audits",
        "rehearsal",
        "leeway",
        "rescue",
        "editor",
        "starter",
        "findings",
        "reading",
    }
)
"""Catalogues that speak to who writes a file, not to who sews by a handout: they may stay English.
A translation of any of their sentences is used, too."""
_READ_TOO = (
    *("steps-", "list-", "whole-garment", "no-piece", "arc-", "and-between", "or-between"),
    *("rehearse-", "rescue-done-already"),
)
"""Of these catalogues, what `seqplan steps` prints, and reasons that were learnt by rehearsing."""

_WORDS: dict[str, tuple[str, ...]] = {
    "foot": ("standard", "zip", "invisible zip", "buttonhole", "blind hem", "piping", "walking"),
    "fabric": ("woven", "knit", "interfacing"),
    "weight": ("light", "medium", "heavy"),
    "thread": ("buttonhole", "contrast", "embroidery", "silk", "stretch"),
    "needle": ("ball point", "jeans", "leather", "stretch", "twin", "universal"),
    "where": (
        "front",
        "back",
        "centre",
        "facing",
        "lining",
        "body",
        "band",
        "zip",
        "outside",
        "inside",
    ),
    "notion": (
        "zip",
        "invisible zip",
        "open-ended zip",
        "button",
        "decorative button",
        "snap",
        "press stud",
        "hook and eye",
        "elastic",
        "clear elastic tape",
        "cord",
        "bias tape",
        "piping",
        "lace",
        "ribbon",
        "tape",
        "braid",
        "fringe",
        "rickrack",
        "label",
        "size label",
        "care label",
        "loop",
        "buckle",
        "ring",
        "eyelet",
        "rivet",
        "hook and loop tape",
    ),
}
"""Usual words of garment files that are shown in the reader's language, by their context."""


class Source(NamedTuple):
    """What there is to translate: under which context, its English, that for several or none."""

    context: str
    text: str
    many: str | None = None
    is_key: bool = True
    """Whether the context names this sentence alone."""


def sources() -> list[Source]:
    """All that readers read, in the order of the catalogues."""
    sentences = [
        _source(key) for name in CATALOGUES for key in catalogue(name) if _is_read(name, key)
    ]
    words = (Source(context, word, is_key=False) for context, word in vocabulary())
    return [found for found in sentences if found is not None] + list(words)


def vocabulary() -> Iterator[tuple[str, str]]:
    """Words that the program knows, each with its context."""
    yield from (("station", station.title) for station in DEFAULT_STATIONS)
    yield from (("layer", layer.value) for layer in Layer if layer is not Layer.SHELL)
    yield from (("action", action.value) for action in Action)
    yield from (("part", part) for part in _parts())
    yield from (("reason", plain_words(rule.slug)) for rule in RULES)
    yield from (("rule", rule.headline) for rule in RULES if rule.strength is not Strength.MUST)
    yield from ((context, word) for context, words in _WORDS.items() for word in words)


def _is_read(name: str, key: str) -> bool:
    return name not in AUTHORS or key.startswith(_READ_TOO)


def _source(key: str) -> Source | None:
    """One sentence; none for the form of a single one, which belongs to that of several."""
    if not sentence(key):
        return None
    if key.endswith(ONE) and has(key.removesuffix(ONE)):
        return None
    text = sentence(key)
    if not has_forms(key):
        return Source(key, text)
    return Source(key, sentence(key + ONE) if has(key + ONE) else text, text)


def _parts() -> list[str]:
    """The parts of recipes, as people read them."""
    found: dict[str, None] = {}
    for path in sorted((PACKAGE / "recipes").glob("*.py")):
        for node in ast.walk(ast.parse(path.read_text(encoding="utf-8"))):
            if isinstance(node, ast.Call) and getattr(node.func, "id", "") == "Ingredient":
                first = node.args[0]
                if isinstance(first, ast.Constant):
                    found[plain_words(first.value)] = None
    return list(found)


def languages() -> list[str]:
    """The languages that there are translations into."""
    return [language for language in LANGUAGES if language != ENGLISH]


def po_file(language: str) -> Path:
    """Where the translation into a language is written."""
    return LOCALE / language / "LC_MESSAGES" / "seqplan.po"


def brought_up_to_date(language: str) -> polib.POFile:
    """The translation with every sentence that there is now, and no other."""
    written = polib.pofile(str(po_file(language)), wrapwidth=100)
    by_context: dict[str, list[polib.POEntry]] = {}
    for entry in written:
        by_context.setdefault(entry.msgctxt, []).append(entry)
    made = polib.POFile(wrapwidth=100)
    made.header = written.header
    made.metadata = written.metadata
    for source in sources():
        held = by_context.get(source.context, [])
        same = [entry for entry in held if entry.msgid == source.text]
        made.append(_entry(source, (same or (held if source.is_key else []) or [None])[0]))
    if language in LANGUAGES:
        optional = {key for name in AUTHORS for key in catalogue(name)}
        taken = {entry.msgctxt for entry in made}
        for entry in written:
            source = _source(entry.msgctxt) if entry.msgctxt in optional - taken else None
            if source is not None:
                made.append(_entry(source, entry))
    return made


def _entry(source: Source, before: polib.POEntry | None) -> polib.POEntry:
    """The entry of a sentence, with what is known of its translation."""
    entry = polib.POEntry(msgctxt=source.context, msgid=source.text)
    if source.many is not None:
        entry.msgid_plural = source.many
    if before is None:
        forms = {0: "", 1: ""}
    else:
        forms = before.msgstr_plural or {0: before.msgstr, 1: before.msgstr}
        entry.flags = list(before.flags)
        entry.tcomment = before.tcomment
        entry.previous_msgid = before.previous_msgid
        is_same = (before.msgid, before.msgid_plural) == (source.text, source.many or "")
        if not is_same and any(forms.values()):
            entry.flags = ["fuzzy"]
            entry.previous_msgid = before.msgid
    if source.many is None:
        entry.msgstr = forms[0]
    else:
        entry.msgstr_plural = dict(forms)
    return entry


def problems(language: str) -> Iterator[str]:
    """What a translator, or this tool, has to do, a line each."""
    path = po_file(language)
    written = polib.pofile(str(path), wrapwidth=100)
    wanted = brought_up_to_date(language)
    for entry in wanted:
        yield from (f"{language}: {entry.msgctxt}: {what}" for what in _lacks(entry))
    if str(written) != str(wanted):
        yield f"{path.name} ({language}) is out of date: python -m tests.tools.make_words"
    compiled = path.with_suffix(".mo")
    if not compiled.exists() or compiled.read_bytes() != wanted.to_binary():
        yield f"{compiled.name} ({language}) is out of date: python -m tests.tools.make_words"


def _lacks(entry: polib.POEntry) -> Iterator[str]:
    """What is wrong with one translation."""
    forms = list(entry.msgstr_plural.values()) or [entry.msgstr]
    if not all(forms):
        yield f"not translated yet: {entry.msgid}"
    elif entry.fuzzy:
        yield f"the English has changed, was: {entry.previous_msgid}"
    else:
        yield from _differing(entry, forms)


def _differing(entry: polib.POEntry, forms: list[str]) -> Iterator[str]:
    """Places that are not those of the English; that for one may lack some of that for several."""
    all_places = places(entry.msgid_plural or entry.msgid)
    for number, form in enumerate(forms):
        least = places(entry.msgid) if number == 0 else all_places
        wrong = (least - places(form)) | (places(form) - all_places)
        if wrong:
            yield f"other places than in the English: {', '.join(sorted(wrong))}"


def places(text: str) -> set[str]:
    """The named places of a sentence."""
    return {name for _, name, _, _ in string.Formatter().parse(text) if name is not None}


def write(language: str) -> None:
    """Bring a translation up to date, and compile it."""
    made = brought_up_to_date(language)
    path = po_file(language)
    made.save(str(path))
    made.save_as_mofile(str(path.with_suffix(".mo")))


def main() -> int:
    """Write the translations, or check them."""
    if "--check" not in sys.argv:
        for language in languages():
            write(language)
    found = [line for language in languages() for line in problems(language)]
    sys.stderr.writelines(f"{line}\n" for line in found)
    return 1 if found else 0


if __name__ == "__main__":
    sys.exit(main())
