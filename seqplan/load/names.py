"""Names of things: what may stand in one, and which are too much alike."""

import re
from collections.abc import Container, Iterable, Mapping
from dataclasses import dataclass, field
from unicodedata import category, normalize

from seqplan.base.diagnostic import Note
from seqplan.load.nearest import folded
from seqplan.load.nodes import MappingNode, Pair, Placed
from seqplan.load.sink import Sink, quoted
from seqplan.words.say import say

LONGEST_NAME = 64
NAMES_LIMIT = 1000
"""Names in one section; a lined and tailored coat has some three hundred operations."""

ALL = "all"
_BETWEEN = r"\s*[,;&]\s*|\s+and\s+|\s+"
"""What people put between names where a list was meant."""


@dataclass(frozen=True, slots=True)
class Names:
    """Names that a file defines, good and bad, with what to say where there are none.

    ``is_known`` is false where the section that defines them could not be read, so that nothing
    is said about names that may well be there.
    """

    names: Mapping[str, object] = field(default_factory=dict)
    none_words: str = ""
    is_known: bool = True

    def __contains__(self, name: str) -> bool:
        return not self.is_known or name in self.names


def names_in(pair: Pair | None, none_words: str) -> Names:
    """The names that a section of the file defines, whether or not they are good ones."""
    if pair is None:
        return Names(none_words=none_words)
    if not isinstance(pair.value, MappingNode):
        return Names(none_words=none_words, is_known=False)
    return Names({item.key: item for item in pair.value.pairs}, none_words)


def clean(text: str) -> str:
    """Give a name as it is kept: accents put together with their letters."""
    return normalize("NFC", " ".join(text.split()))


def check_name(name: str, at: Placed, sink: Sink) -> bool:
    """Report a name that cannot be one."""
    if not check_title(name, at, sink):
        return False
    if name[0].isalnum() and all(_is_allowed(letter) for letter in name):
        return True
    _report_bad(name, at, sink)
    return False


def check_title(name: str, at: Placed, sink: Sink) -> bool:
    """Report a name that cannot be one, though it may have spaces and marks: an option, a size."""
    if any(_turns_text(letter) for letter in name):
        sink.error("hidden-direction", at)
    elif len(name) > LONGEST_NAME:
        sink.error("long-name", at, name=quoted(name), limit=LONGEST_NAME)
    elif not name:
        _report_bad(name, at, sink)
    else:
        return True
    return False


def _report_bad(name: str, at: Placed, sink: Sink) -> None:
    better = "".join(letter if _is_allowed(letter) else " " for letter in name)
    better = "-".join(better.split()).strip("-_")
    parts = [part for part in re.split(_BETWEEN, name) if part]
    is_item = bool(at.path) and isinstance(at.path[-1], int)
    fix = None
    if len(parts) > 1 and ("," in name or is_item):
        offer = ", ".join(parts) if is_item else f"[{', '.join(parts)}]"
        words = "fix-name-or-list" if is_item else "fix-write"
        fix = say(words, text=quoted(offer), better=quoted(better))
    sink.error("bad-name", at, name=quoted(name), better=quoted(better or "side-seam"), fix=fix)


def warn_of_likeness(names: Iterable[tuple[str, Placed]], sink: Sink) -> None:
    """Warn of names that differ only by case or accents."""
    first: dict[str, tuple[str, Placed]] = {}
    for name, at in names:
        other, place = first.setdefault(folded(name), (name, at))
        if other != name:
            note = Note(say("note-first-here", name=quoted(other)), place.path, place.span)
            sink.warning(
                "look-alike-names", at, notes=(note,), name=quoted(name), other=quoted(other)
            )


def read_names(table: MappingNode, sink: Sink) -> list[Pair]:
    """Give the pairs of a table of named things whose names are good, and report the others.

    Of a table that is longer than any garment needs, only the beginning is read.
    """
    if len(table.pairs) > NAMES_LIMIT:
        section = quoted(str(table.path[-1]) if table.path else "")
        first_too_many = table.pairs[NAMES_LIMIT]
        count = len(table.pairs)
        sink.error(
            "too-many-names", first_too_many, limit=NAMES_LIMIT, section=section, count=count
        )
    good = [pair for pair in table.pairs[:NAMES_LIMIT] if check_name(pair.key, pair, sink)]
    warn_of_likeness(((pair.key, pair) for pair in good), sink)
    return good


def report_unknown(slug: str, name: str, at: Placed, known: Names, sink: Sink) -> None:
    """Report a name that nothing is called by, and offer those that come close."""
    fix = as_list(name, known.names) or sink.suggest(name, known.names, known.none_words)
    sink.error_once(slug, name, at, fix=fix)


def as_list(text: str, known: Container[str]) -> str | None:
    """Offer a list where several known names stand in a row: ``sides, neck``."""
    parts = [part for part in re.split(_BETWEEN, text) if part]
    if len(parts) < 2 or not all(part in known for part in parts):
        return None
    return say("fix-write", text=quoted(f"[{', '.join(parts)}]"))


def report_twice(name: str, at: Placed, sink: Sink) -> None:
    """Warn of a name that stands twice in a list."""
    sink.warning("listed-twice", at, name=quoted(name))


def _turns_text(letter: str) -> bool:
    return "\u202a" <= letter <= "\u202e" or "\u2066" <= letter <= "\u2069"


def _is_allowed(letter: str) -> bool:
    """Letters of any script with their marks, digits, and the two dashes."""
    return letter in "-_" or letter.isalnum() or category(letter).startswith("M")
