"""Look a sentence up and put the names into it.

A sentence is kept whole, with named places for what varies, so that it can be translated as a
whole later. Each catalogue is a plain table in a module of its own, imported when a sentence is
first looked for in it; those that every run needs come first.
"""

from collections.abc import Mapping
from functools import cache
from importlib import import_module

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


def say(key: str, **values: object) -> str:
    """Give the sentence called ``key``.

    Parameters
    ----------
    key
        Its name in one of the catalogues.
    values
        What goes into its named places, written as text.

    Raises
    ------
    KeyError
        When no catalogue has it, or a place is not filled: a fault of the program.

    >>> say("fault-empty-file")
    'the file is empty'
    """
    return sentence(key).format_map({name: str(value) for name, value in values.items()})


def sentence(key: str) -> str:
    """Give the sentence called ``key`` with its places unfilled."""
    for name in CATALOGUES:
        if key in catalogue(name):
            return catalogue(name)[key]
    raise KeyError(key)


def has(key: str) -> bool:
    """Whether there is a sentence called ``key``."""
    return any(key in catalogue(name) for name in CATALOGUES)


@cache
def catalogue(name: str) -> Mapping[str, str]:
    """The sentences of one catalogue by their keys."""
    sentences: Mapping[str, str] = import_module(f"seqplan.words.{name}").SENTENCES
    return sentences
