"""Parts of a garment that a text speaks of, and that the file does not know.

Only what the trade's words for parts name, after ``the`` or its like, counts as a part. It is known
if any name of the file is like it, if what the garment is called has such a part (a dress has a
skirt), or if some text brings it in ("cut a yoke").
"""

import re
from collections.abc import Iterator, Mapping
from functools import cached_property
from typing import Final

from seqplan.explain.reading.text import Text
from seqplan.model.garment import Garment

PARTS: Final[Mapping[str, tuple[str, ...]]] = {
    "skirt": (
        *("dress", "coat", "gown", "pinafore", "tunic", "apron", "robe", "frock", "jacket"),
        *("petticoat", "slip", "kilt", "tier"),
    ),
    "bodice": ("dress", "gown", "pinafore", "frock", "leotard", "tunic"),
    "sleeve": ("kimono", "raglan", "dolman", "batwing", "arm"),
    "cuff": ("trouser", "leg", "sleeve"),
    "collar": ("lapel", "rever", "stand", "neck"),
    "yoke": (),
    "waistband": ("waist", "band"),
    "neckband": ("neck", "band"),
    "hood": (),
    "bib": (),
    "frill": ("ruffle", "flounce", "tier"),
    "flounce": ("ruffle", "frill", "tier"),
    "ruffle": ("flounce", "frill", "tier"),
    "gusset": (),
    "peplum": (),
    "placket": ("fly", "slit", "opening"),
    "facing": ("faced",),
    "lining": ("lined", "enclosed", "inner"),
    "pocket": ("bag", "welt"),
    "strap": ("tie", "handle", "band"),
}
"""The trade's words for parts of a garment, each with the words that stand for it or contain it."""

_NOUN: Final = "|".join(PARTS)
_SPOKEN_OF: Final = (
    r"(?i)\b(?P<the>the|each|both|every)\s+"
    r"(?:(?:left|right|front|back|upper|under|inner|outer|top|bottom)\s+)*"
    rf"(?P<part>{_NOUN})s?\b"
    # A sleeve board is no sleeve, and what lies facing up is no facing.
    r"(?!-|\s+(?:board|roll|marker|stay|stud|links|knife|template|former|paper|hanger|weight"
    r"|up|down|you|in|out|inwards?|outwards?|away|towards?|the|each|it)\b)"
)
_SHORTEST = 4


class Parts:
    """Which parts the file knows.

    Parameters
    ----------
    garment
        The garment with all that its choices offer.
    texts
        All that its author wrote.
    """

    def __init__(self, garment: Garment, texts: tuple[Text, ...]) -> None:
        self._garment = garment
        self._texts = texts

    def missing_in(self, text: str) -> Iterator[str]:
        """Find every part that a text speaks of and nothing in the file is."""
        if not self._garment.pieces:
            return
        for match in re.finditer(_SPOKEN_OF, text):
            if match["part"].casefold() not in self._known:
                yield match[0]

    @cached_property
    def _known(self) -> frozenset[str]:
        return self._brought_in | {part for part in PARTS if self._is_named(part)}

    def _is_named(self, part: str) -> bool:
        wanted = (part, *PARTS[part])
        return any(
            word in name or (len(name) >= _SHORTEST and name in part)
            for name in self._names
            for word in wanted
        )

    @cached_property
    def _brought_in(self) -> frozenset[str]:
        """The parts of which a text speaks without ``the``: it tells how to make them."""
        found = set()
        for text in self._texts:
            rest = re.sub(_SPOKEN_OF, " ", text.words)
            found |= {part.casefold() for part in re.findall(rf"(?i)\b({_NOUN})", rest)}
        return frozenset(found)

    @cached_property
    def _names(self) -> frozenset[str]:
        return frozenset(re.findall(r"[^\W\d_]+", " ".join(_named(self._garment)).casefold()))


def _named(garment: Garment) -> Iterator[str]:
    yield from (garment.name, garment.about or "")
    for piece in garment.pieces:
        yield from (piece.id, piece.layer.value, *piece.edge_names, *piece.lines)
        yield from (spot.name for spot in piece.spots)
    for fabric in garment.fabrics:
        yield from (fabric.id, fabric.kind)
    for notion in garment.notions:
        yield from (notion.id, notion.kind)
    for entry in garment.entries:
        yield from (entry.id, entry.verb.value, entry.seam.value, *entry.makes)
    for choice in garment.choices:
        yield from (choice.id, *choice.options)
