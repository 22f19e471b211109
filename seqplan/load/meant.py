"""What a value was probably meant to be: lengths, numbers and cuts that are written otherwise.

Each gives the text as the language wants it, or ``None`` where nothing plausible comes out; what it
gives is always read without a word.
"""

import re

from seqplan.base.measure import parse_length
from seqplan.load.sink import quoted
from seqplan.words.say import say

UNITS: dict[str, str] = {
    "mm": "mm", "mms": "mm", "millimetre": "mm", "millimetres": "mm", "millimeter": "mm",
    "millimeters": "mm",
    "cm": "cm", "cms": "cm", "centimetre": "cm", "centimetres": "cm", "centimeter": "cm",
    "centimeters": "cm",
    "m": "m", "metre": "m", "metres": "m", "meter": "m", "meters": "m",
    "in": "in", "ins": "in", "inch": "in", "inches": "in", "″": "in", "”": "in", "“": "in",
    "''": "in", '"': "in",
    "yd": "yd", "yds": "yd", "yard": "yd", "yards": "yd",
}  # fmt: skip
"""What people call the units."""

_FRACTIONS = {
    "½": "1/2", "¼": "1/4", "¾": "3/4", "⅛": "1/8", "⅜": "3/8", "⅝": "5/8", "⅞": "7/8",
    "⅓": "1/3", "⅔": "2/3",
}  # fmt: skip
_NUMBER_AND_UNIT = r"^(?P<number>[\d\s./,½¼¾⅛⅜⅝⅞⅓⅔-]+?)\s*(?P<unit>[^\W\d]+\.?|″|”|“|''|\"|)$"
_WORDS = ("one", "two", "three", "four", "five", "six", "seven", "eight", "nine", "ten")
_PAIR = ("pair", "mirror", "left and right")


def length_meant(text: str) -> str | None:
    """A length as it is written here.

    >>> length_meant("1/2 inch"), length_meant("1,5 cm"), length_meant("1½ in")
    ('1/2 in', '1.5 cm', '1 1/2 in')
    >>> length_meant("1-1/2 in"), length_meant(".5"), length_meant("2 CM"), length_meant("a bit")
    ('1 1/2 in', '0.5', '2 cm', None)
    """
    match = re.match(_NUMBER_AND_UNIT, text.partition("#")[0].strip())
    if match is None:
        return None
    written, unit = match["number"].strip(), match["unit"].rstrip(".").casefold()
    for sign, plain in _FRACTIONS.items():
        written = written.replace(sign, f" {plain}")
    written = re.sub(r"^(\d+)\s*-\s*(\d+/\d+)$", r"\1 \2", written.strip())
    written = re.sub(r"^(\d*),(\d+)$", r"\1.\2", written)
    written = re.sub(r"^\.", "0.", written)
    meant = f"{written} {UNITS.get(unit, unit)}".strip()
    return meant if parse_length(meant) is not None else None


def has_decimal_comma(text: str) -> bool:
    """Whether a text is a number with a comma, with or without a unit.

    >>> has_decimal_comma("2,5 cm"), has_decimal_comma("2, 5")
    (True, False)
    """
    return re.match(r"^\d*,\d+(\s*[^\W\d]+)?$", text.strip()) is not None


def number_meant(text: str) -> str | None:
    """A whole number without the words around it.

    >>> number_meant("5 min"), number_meant("two"), number_meant("1.5")
    ('5', '2', None)
    """
    word = text.strip().casefold()
    if word in _WORDS:
        return str(_WORDS.index(word) + 1)
    match = re.match(r"^(\d{1,4})\s*[^\W\d#].*$|^x\s*(\d{1,4})$|^(\d{1,4})\s*#", word)
    return next((number for number in match.groups() if number), None) if match else None


def cut_meant(text: str) -> str | None:
    """How a piece is cut, where the words for it say so.

    >>> cut_meant("on the fold"), cut_meant("mirrored"), cut_meant("two"), cut_meant("x")
    ('fold', 'pair', '2', None)
    """
    word = " ".join(text.split()).casefold()
    if "fold" in word:
        return "fold"
    if any(part in word for part in _PAIR):
        return "pair"
    return number_meant(word)


def comment_meant(text: str) -> str | None:
    """A repair for a comment that has no space before its `#`, or begins with slashes."""
    before, sign, after = text.partition("#")
    if not sign:
        before, sign, after = text.partition("//")
    if not sign or not before.strip():
        return None
    return say("fix-write", text=quoted(f"{before.strip()}  # {after.strip()}"))
