"""A garment file to start from, for somebody who has never seen one."""

import json
import re
from collections.abc import Mapping
from typing import Final
from unicodedata import category, normalize

from seqplan.words.say import say

MEASURES: Final[Mapping[str, Mapping[str, str]]] = {
    "cm": {
        "allowance": "1.5",
        "measure": "5/8 in",
        "elastic": "70",
        "casing": "3",
        "gap": "4",
        "hem": "3",
    },
    "in": {
        "allowance": "5/8",
        "measure": "1.5 cm",
        "elastic": "28",
        "casing": "1 1/4",
        "gap": "1 1/2",
        "hem": "1 1/4",
    },
}
"""What the starter measures, in each unit that it can be written in."""

_LONGEST_STEM = 40
_STEM_OF_THE_NAMELESS = "garment"

# Words that mean the same to every reader of the format. A single one may be a yes or a nothing.
_PLAIN = re.compile(r"[^\W\d_]+( [^\W\d_]+)+")


def starter(name: str, units: str) -> str:
    """Write a garment file that checks clean and explains itself.

    Parameters
    ----------
    name
        What the garment is called, cleaned by `garment_name`.
    units
        One of `MEASURES`.
    """
    return say("starter", name=_quoted(name), units=units, **MEASURES[units])


def garment_name(written: str) -> str:
    """The name as it is kept: runs of spaces and line breaks become one space."""
    return " ".join(written.split())


def file_stem(name: str) -> str:
    """What a file is called after a name: letters and digits of any script, and dashes.

    >>> file_stem("Quay skirt, no. 2")
    'quay-skirt-no-2'
    >>> file_stem("../..")
    'garment'
    """
    letters = "".join(
        letter if letter.isalnum() or category(letter).startswith("M") else " "
        for letter in normalize("NFC", name.casefold())
    )
    stem = "-".join(letters.split())[:_LONGEST_STEM].strip("-")
    return stem or _STEM_OF_THE_NAMELESS


def _quoted(name: str) -> str:
    """Write a name so that every reader of the format takes it as text."""
    return name if _PLAIN.fullmatch(name) else json.dumps(name, ensure_ascii=False)
