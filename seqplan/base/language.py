"""The language of whoever reads: which there are, and which is spoken just now.

A sentence is asked for in a hundred places, far below the command that knows who reads. Passing
the language down to each of them would put it into every signature between, for a value that never
changes while one text is made. So it is a context variable: set once, where a text is asked for,
and reset when it is finished; each thread and each task has its own.
"""

from collections.abc import Iterator
from contextlib import contextmanager
from contextvars import ContextVar
from typing import Final, NamedTuple


class Language(NamedTuple):
    """How a language writes measures.

    Parameters
    ----------
    decimal
        What stands between a whole number and its decimals.
    inch, yard
        What stands behind a number of inches, and of yards.
    """

    decimal: str = "."
    inch: str = "in"
    yard: str = "yd"


ENGLISH: Final = "en"
LANGUAGES: Final[dict[str, Language]] = {
    ENGLISH: Language(),
    "de": Language(decimal=",", inch="Zoll", yard="Yard"),
}
"""The languages that handouts come in, as BCP 47 names them; the sentences are written in the first
and translated into the others."""

_SPOKEN: ContextVar[str] = ContextVar("spoken", default=ENGLISH)


def spoken() -> str:
    """The language that is spoken now; English unless something else is asked for."""
    return _SPOKEN.get()


@contextmanager
def speaking(language: str) -> Iterator[None]:
    """Speak a language in all that is said inside.

    Raises
    ------
    KeyError
        When there is no such language: a fault of the program.

    >>> with speaking("de"):
    ...     spoken()
    'de'
    """
    if language not in LANGUAGES:
        raise KeyError(language)
    before = _SPOKEN.set(language)
    try:
        yield
    finally:
        _SPOKEN.reset(before)
