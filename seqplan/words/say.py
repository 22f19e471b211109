"""Look a sentence up, in the language of whoever reads, and put the names into it.

A sentence is kept whole, with named places for what varies, so that it is translated as a whole.
Each catalogue of English is a plain table in a module of its own, imported when a sentence is
first looked for in it; those that every run needs come first. The translations are gettext
catalogues in `words/locale`; they, and `gettext` itself, are loaded when a language other than
English is spoken. What a language lacks is said in English.

A sentence with a number called ``count`` has as many forms as the language wants. Its English is
called as the sentence where there are several, and with ``-one`` behind for a single one.
"""

from collections.abc import Mapping
from functools import cache
from importlib import import_module
from typing import TYPE_CHECKING, Final

from seqplan.base.language import ENGLISH, spoken

if TYPE_CHECKING:
    from gettext import GNUTranslations

CATALOGUES = (
    "reasons",
    "checks",
    "prints",
    "faults",
    "shapes",
    "outlines",
    "material",
    "maps",
    "audits",
    "labels",
    "rehearsal",
    "leeway",
    "rescue",
    "steps",
    "editor",
    "starter",
    "findings",
    "reading",
    "pictures",
    "paper",
    "deeds",
    "batch",
    "classes",
    "skills",
    "filming",
)
"""The modules that hold sentences, in the order in which they are searched."""

ONE: Final = "-one"
"""What the English for a single one is called, behind the name of the sentence for several."""


def say(key: str, **values: object) -> str:
    """Give the sentence called ``key``.

    Parameters
    ----------
    key
        Its name in one of the catalogues.
    values
        What goes into its named places, written as text; ``count`` also decides the form.

    Raises
    ------
    KeyError
        When no catalogue has it, or a place is not filled: a fault of the program.

    >>> say("fault-empty-file")
    'the file is empty'
    >>> say("step-wait", count=1) == say("step-wait-one")
    True
    """
    is_counted = "count" in values and has_forms(key)
    told = _for_number(key, int(str(values["count"]))) if is_counted else _told(key)
    return told.format_map({name: str(value) for name, value in values.items()})


def sentence(key: str) -> str:
    """Give the English of the sentence called ``key``, with its places unfilled."""
    return _home(key)[key]


def has(key: str) -> bool:
    """Whether there is a sentence called ``key``."""
    return any(key in catalogue(name) for name in CATALOGUES)


def has_forms(key: str) -> bool:
    """Whether a sentence changes with a number that is told in it, or that it is about."""
    home = _home(key)
    return "{count}" in home[key] or key + ONE in home


def translated(context: str, word: str) -> str:
    """Give a word that the program knows in the reader's language, any other as it stands.

    Parameters
    ----------
    context
        What kind of word it is, such as ``foot``: in another one it may mean something else.
    word
        The word in English, or whatever the author has put in its place.
    """
    language = spoken()
    return word if language == ENGLISH else translations(language).pgettext(context, word)


@cache
def catalogue(name: str) -> Mapping[str, str]:
    """The sentences of one catalogue by their keys."""
    sentences: Mapping[str, str] = import_module(f"seqplan.words.{name}").SENTENCES
    return sentences


@cache
def translations(language: str) -> "GNUTranslations":
    """The sentences of a language other than English, each under its key and its English."""
    from gettext import GNUTranslations
    from importlib.resources import files

    where = files(__package__).joinpath("locale", language, "LC_MESSAGES", "seqplan.mo")
    with where.open("rb") as file:
        return GNUTranslations(file)


@cache
def _home(key: str) -> Mapping[str, str]:
    """The catalogue that has a sentence."""
    for name in CATALOGUES:
        if key in catalogue(name):
            return catalogue(name)
    raise KeyError(key)


def _told(key: str) -> str:
    """A sentence in the reader's language."""
    if spoken() == ENGLISH:
        return sentence(key)
    several = key.removesuffix(ONE)
    if several != key and several in _home(key):
        return _for_number(several, 1)
    if has_forms(key):
        msg = f"{key}: count"
        raise KeyError(msg)
    return translated(key, sentence(key))


def _for_number(key: str, count: int) -> str:
    """A sentence in the reader's language, in its form for a number."""
    many = sentence(key)
    one = sentence(key + ONE) if key + ONE in _home(key) else many
    if spoken() == ENGLISH:
        return one if count == 1 else many
    return translations(spoken()).npgettext(key, one, many, count)
