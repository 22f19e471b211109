"""What an instruction takes for done, and what only a later entry does.

A result is known by a name that can hardly mean anything else: what ``makes:`` calls it, where no
piece is called so; an entry's heading or name, of several words or in quotes; a boxed corner or a
casing, where none is made before. A sentence that looks ahead ("leave the casing open until ...")
is right.
"""

import re
from collections.abc import Iterator
from functools import cached_property
from typing import Final, NamedTuple

from seqplan.base.ids import EntryId
from seqplan.explain.reading.text import Text
from seqplan.explain.reading.wording import plain, sentences
from seqplan.model.entry import Entry, Verb
from seqplan.model.garment import Garment

_MADE: Final = {Verb.BOX_CORNER: "boxed corner", Verb.CASING: "casing"}
"""What the trade calls the result of a verb."""

_AHEAD: Final = (
    r"(?i)\b(?:will|later|until|till|before|for|next|leave|leaving|left|keep|mark|marks|marked"
    r"|allow|so that|to be|then|going to|ready|not yet|afterwards|when|where|cut|make|makes)\b"
)


_QUOTES: Final = "\"'`\u2018\u2019\u201c\u201d\u201e\u00ab\u00bb"


class _Result(NamedTuple):
    """What an entry brings about.

    Parameters
    ----------
    word
        A text that names it holds this, in small letters: looked for first, because it is quick.
    pattern
        How a text names it.
    name
        What it is called; the first entry that brings it about counts.
    maker
        The entry.
    place
        Where the entry stands.
    """

    word: str
    pattern: str
    name: str
    maker: Entry
    place: int


class Told(NamedTuple):
    """A result that is named too early: as the text names it, and the entry that makes it."""

    words: str
    entry: EntryId


class Results:
    """The results that the entries of a garment have.

    Parameters
    ----------
    garment
        The garment, its choices made.
    """

    def __init__(self, garment: Garment) -> None:
        self._garment = garment

    def later_than(self, text: Text) -> Iterator[Told]:
        """Find the results that a text names, and that only a later entry brings about."""
        if text.place is None or not text.is_instruction:
            return
        entry = self._garment.entries[text.place]
        words = plain(text.words).lower()
        later = [
            result
            for result in self._results
            if result.word in words
            and result.place > text.place
            and not _is_asked_for(entry, result)
        ]
        for sentence in sentences(text.words) if later else ():
            if re.search(_AHEAD, sentence):
                continue
            for result in later:
                if match := re.search(result.pattern, plain(sentence), re.IGNORECASE):
                    yield Told(sentence[slice(*match.span())].strip(_QUOTES), result.maker.id)

    @cached_property
    def _results(self) -> tuple[_Result, ...]:
        """Each result once, by the first entry that brings it about."""
        first: dict[str, _Result] = {}
        for place, entry in enumerate(self._garment.entries):
            for name, word, pattern in self._names(entry):
                first.setdefault(name, _Result(word.lower(), pattern, name, entry, place))
        return tuple(first.values())

    def _names(self, entry: Entry) -> Iterator[tuple[str, str, str]]:
        """What the results of an entry are called, a word of it, and how a text names them."""
        for made in entry.makes:
            if not self._is_cloth(made):
                words = re.split(r"[-_ ]", made)
                yield made, words[0], rf"\bthe {r'[ -]'.join(map(re.escape, words))}\b"
        if entry.verb in _MADE:
            name = _MADE[entry.verb]
            yield name, name, rf"\b{name}s?\b"
        for name in dict.fromkeys((entry.id, plain(entry.title or entry.id).rstrip("."))):
            if re.search(r"\w[- ]+\w", name):
                yield f"{entry.id}: {name}", name, rf"(?<![\w-]){re.escape(name)}(?![\w-])"
            else:
                yield f"{entry.id}: {name}", name, rf"[\"']{re.escape(name)}[\"']"

    def _is_cloth(self, name: str) -> bool:
        """Whether something that is there from the beginning is called so."""
        return _singular(name) in self._cloth

    @cached_property
    def _cloth(self) -> frozenset[str]:
        there = {*self._garment.piece, *self._garment.notion, *self._garment.fabric}
        there |= {edge for piece in self._garment.pieces for edge in piece.edge_names}
        return frozenset(map(_singular, there))


def _is_asked_for(entry: Entry, result: _Result) -> bool:
    """Whether the entry asks for the other one already, so that the order tells."""
    after = {name.split("/")[0] for name in entry.after}
    return result.maker.id in {*after, entry.into, entry.open} or result.name in entry.uses


def _singular(name: str) -> str:
    return name.casefold().removesuffix("s")
