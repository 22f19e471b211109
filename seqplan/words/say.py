"""Look a sentence up and put the names into it.

A sentence is kept whole, with named places for what varies, so that it can be translated as a
whole later. Each catalogue is a plain table in a module of its own.
"""

from seqplan.words import checks, faults, labels, prints, reasons, shapes, steps

_CATALOGUES = (
    faults.SENTENCES,
    checks.SENTENCES,
    shapes.SENTENCES,
    reasons.SENTENCES,
    steps.SENTENCES,
    prints.SENTENCES,
    labels.SENTENCES,
)


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
    for catalogue in _CATALOGUES:
        if key in catalogue:
            return catalogue[key]
    raise KeyError(key)


def has(key: str) -> bool:
    """Whether there is a sentence called ``key``."""
    return any(key in catalogue for catalogue in _CATALOGUES)
