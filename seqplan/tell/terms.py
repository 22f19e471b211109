"""Words of the trade: which of them a text uses, and what they mean."""

import re
from collections.abc import Iterable
from functools import cache
from typing import Final

from seqplan.tell.sentence import Term
from seqplan.words.say import say

_KEYS: Final = (
    "allowance",
    "backstitch",
    "bag",
    "band",
    "baste",
    "binding",
    "casing",
    "clip",
    "crease",
    "dart",
    "ease",
    "facing",
    "felled",
    "finish",
    "fly",
    "french",
    "fuse",
    "gather",
    "grade",
    "grain",
    "groove",
    "interfacing",
    "lining",
    "mark",
    "notch",
    "placket",
    "pleat",
    "quarter",
    "raw-edge",
    "right-sides",
    "seam-line",
    "seam-ripper",
    "slip-stitch",
    "slit",
    "staystitch",
    "topstitch",
    "underlap",
    "understitch",
    "welt",
    "wrong-sides",
    "zip",
)


def terms_in(texts: Iterable[str]) -> tuple[Term, ...]:
    """The words of the trade that occur, in the order of their names."""
    text = " ".join(texts)
    found = [key for key in _KEYS if _forms(say(f"term-{key}-forms")).search(text)]
    return tuple(sorted((_term(key) for key in found), key=lambda term: term.name.casefold()))


@cache
def _forms(written: str) -> re.Pattern[str]:
    """All forms of a word, whole words only, in whatever case."""
    forms = "|".join(re.escape(form) for form in written.split("|"))
    return re.compile(rf"\b(?:{forms})\b", re.IGNORECASE)


def _term(key: str) -> Term:
    return Term(say(f"term-{key}-name"), say(f"term-{key}"))
