"""Words that a reader may take in two ways, and numbers of steps."""

import re
from collections.abc import Iterator
from typing import Final

_INSIDE_OUT: Final = r"(?i)(?<!from the )\binside[ -]out\b"
_CARE: Final = r"(?i)\b(?:wash|wear|worn|wore|dry|dried|dries|launder|stor|reversibl)\w*"
"""Who is told to wash or wear it so has it finished, and right side out, in the hand."""

_STEP: Final = (
    r"(?i)\bsteps?\s+(?:no\.?\s*|number\s+)?"
    r"(?P<list>[0-9]{1,4}(?:\s*(?:,|and|or|to|-)\s*[0-9]{1,4})*)"
)
_AFTER_STEP: Final = r"\s*(?:[./][0-9]|(?:cm|mm|m|in|inch(?:es)?|times|paces|of)\b|[\"½¼¾])"

_PLAIN: Final = {
    ord(mark): plain
    for plain, marks in {
        "-": "\u2010\u2011\u2012\u2013\u2014\u2212",
        '"': "\u2033\u201c\u201d\u201e\u00ab\u00bb",
        "'": "\u2018\u2019\u2032`",
        "/": "\u2044\u2215",
        "x": "\u00d7",
        " ": "\u00a0\u2009\u202f",
    }.items()
    for mark in marks
}


def plain(text: str) -> str:
    """Write dashes, quotes, strokes and spaces with the plain marks, each for one.

    >>> plain("9 \u00d7 7\u2033 \u2013 \u201cboxed\u201d")
    '9 x 7" - "boxed"'
    """
    return text.translate(_PLAIN)


def inside_out_in(text: str) -> Iterator[str]:
    """Find ``inside out`` where it tells how the work is to lie.

    >>> list(inside_out_in("Turn the bag inside out. Wash it inside out."))
    ['inside out']
    """
    for sentence in sentences(text):
        if not re.search(_CARE, sentence):
            yield from re.findall(_INSIDE_OUT, sentence)


def steps_in(text: str) -> Iterator[int]:
    """Find every step that a text points to by its number.

    >>> list(steps_in("Go to step 29, or back to steps 2 and 3."))
    [29, 2, 3]
    >>> list(steps_in("Step 2 cm to the left; see step 4 of the leaflet."))
    []
    """
    text = plain(text)
    for match in re.finditer(_STEP, text):
        if not re.match(_AFTER_STEP, text[match.end() :]):
            yield from map(int, re.findall("[0-9]+", match["list"]))


def sentences(text: str) -> list[str]:
    """Split a text into its sentences."""
    return re.split(r"(?<=[.;!?])\s+", text)
