"""Words of the trade: which of them a text uses, and what they mean."""

import re
from collections.abc import Iterable
from functools import cache
from typing import Final

from seqplan.model.garment import Garment
from seqplan.tell.names import as_sentence
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


def terms_in(texts: Iterable[str], own: Iterable[Term] = ()) -> tuple[Term, ...]:
    """The words of the trade that occur, in the order of their names.

    Parameters
    ----------
    texts
        What is read.
    own
        The author's own words; one that is called like a word of the trade takes its place.
    """
    text = " ".join(texts).lower()
    mine = {term.name.casefold(): term for term in own}
    usual = (_term(key) for key in _KEYS if _occurs(say(f"term-{key}-forms"), text))
    found = [term for term in usual if term.name.casefold() not in mine]
    found += [term for name, term in mine.items() if _stands(name, text)]
    return tuple(sorted(found, key=lambda term: term.name.casefold()))


def own_terms(garment: Garment) -> tuple[Term, ...]:
    """The author's own words, each with what it means as a sentence."""
    return tuple(Term(word, as_sentence(meaning)) for word, meaning in garment.glossary)


def _stands(word: str, text: str) -> bool:
    """Whether an author's own word stands in a text of small letters, alone or as several."""
    return bool(re.search(rf"\b{re.escape(word)}(?:e?[sn])?(?!\w)", text))


def _occurs(written: str, text: str) -> bool:
    """Whether a form of a word stands in a text of small letters; most do not even in parts."""
    return any(form in text for form in _forms(written)) and bool(_pattern(written).search(text))


@cache
def _forms(written: str) -> tuple[str, ...]:
    return tuple(form.lower() for form in written.split("|"))


@cache
def _pattern(written: str) -> re.Pattern[str]:
    """All forms of a word, whole words only."""
    return re.compile(rf"\b(?:{'|'.join(map(re.escape, _forms(written)))})\b")


def _term(key: str) -> Term:
    return Term(say(f"term-{key}-name"), say(f"term-{key}"))
