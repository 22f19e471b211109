"""What an instruction takes for done, and what only a later entry does.

A result is known by a name that cannot mean anything else: what ``makes:`` calls it, where no piece
is called so; an entry's heading or name, quoted or of several words; a boxed corner or a casing,
where none is made before. A sentence that looks ahead ("leave the casing open until ...") is right.
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
    pattern: str
    name: str
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
        entries = self._garment.entries
        for sentence in sentences(text.words):
            if re.search(_AHEAD, sentence):
                continue
            for result in self._results:
                maker = entries[result.place]
                if result.place <= text.place or _is_asked_for(entries[text.place], maker, result):
                    continue
                if match := re.search(result.pattern, plain(sentence), re.IGNORECASE):
                    yield Told(sentence[slice(*match.span())].strip(_QUOTES), maker.id)

    @cached_property
    def _results(self) -> tuple[_Result, ...]:
        """Each result once, by the first entry that brings it about."""
        first: dict[str, _Result] = {}
        for place, entry in enumerate(self._garment.entries):
            for name, pattern in self._names(entry):
                first.setdefault(name, _Result(pattern, name, place))
        return tuple(first.values())

    def _names(self, entry: Entry) -> Iterator[tuple[str, str]]:
        for made in entry.makes:
            if not self._is_cloth(made):
                yield made, rf"\bthe {_spaced(made)}\b"
        if entry.verb in _MADE:
            yield _MADE[entry.verb], rf"\b{_MADE[entry.verb]}s?\b"
        names = {re.escape(entry.id), re.escape(plain(entry.title or entry.id))}
        quoted = rf"[\"'](?:{'|'.join(sorted(names))})[\"']"
        yield f"`{entry.id}`", quoted
        if entry.title and len(entry.title.split()) > 1:
            yield entry.title.casefold(), rf"\b{re.escape(plain(entry.title).rstrip('.'))}\b"
        if "-" in entry.id:
            yield entry.id, rf"(?<![\w-]){re.escape(entry.id)}(?![\w-])"

    def _is_cloth(self, name: str) -> bool:
        """Whether something that is there from the beginning is called so."""
        there = {*self._garment.piece, *self._garment.notion, *self._garment.fabric}
        there |= {edge for piece in self._garment.pieces for edge in piece.edge_names}
        return any(_singular(name) == _singular(other) for other in there)


def _is_asked_for(entry: Entry, maker: Entry, result: _Result) -> bool:
    """Whether the entry asks for the other one already, so that the order tells."""
    after = {name.split("/")[0] for name in entry.after}
    return maker.id in {*after, entry.into, entry.open} or result.name in entry.uses


def _singular(name: str) -> str:
    return name.casefold().removesuffix("s")


def _spaced(name: str) -> str:
    """A name as people write it, with spaces or hyphens."""
    return r"[\s-]".join(map(re.escape, re.split(r"[-_ ]", name)))
