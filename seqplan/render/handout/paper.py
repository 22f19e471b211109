"""Sheets of paper, what their foot says, and the squares by which a print is checked."""

from enum import Enum
from typing import Final

from seqplan.words.say import say

MARGIN_TOP: Final = 12
MARGIN_SIDE: Final = 15
MARGIN_FOOT: Final = 26.5
"""Margins in millimetres, on any paper."""
CHECK_FOOT: Final = 5.5
"""How far above the edge of the paper the check squares stand, in millimetres."""
CHECK_CM: Final = 20.0
CHECK_INCH: Final = 19.05
"""Their sides: 2 cm and ¾ of an inch, in millimetres."""
LARGE: Final = 1.8
"""How much larger everything is in large print: letters of 18 points instead of 10."""

_MARKS: Final = {"page": "\ue000", "pages": "\ue001"}


class Paper(Enum):
    """A size of paper, as printers name it."""

    A4 = "a4"
    LETTER = "letter"


def page_of_pages() -> tuple[str, ...]:
    """The sentence that numbers the pages, cut at its two places.

    What stands in a place is the name of the counter that fills it, ``page`` or ``pages``; the
    names have odd places in the list, the words even ones.
    """
    told = say("paper-page", **_MARKS)
    for name, mark in _MARKS.items():
        told = told.replace(mark, f"{mark}{name}{mark}")
    return tuple(told.replace(_MARKS["pages"], _MARKS["page"]).split(_MARKS["page"]))
