"""How wide a text is in the shipped font, so that boxes fit before anything is drawn.

Kerning is left out; it only ever makes a text a little narrower.
"""

import json
from collections.abc import Iterator, Mapping
from dataclasses import dataclass
from functools import cache, lru_cache
from importlib.resources import files
from typing import Final
from unicodedata import category, east_asian_width

FONT_FAMILY: Final = "Arimo"
ELLIPSIS: Final = "…"
MISSING: Final = "\N{WHITE SQUARE}"

_ROUNDING: Final = 1e-6


@dataclass(frozen=True, slots=True)
class _Advances:
    """What each letter takes, in parts of the font size."""

    regular: Mapping[str, float]
    bold: Mapping[str, float]


def text_width(text: str, size: float, *, bold: bool = False) -> float:
    """Measure one line of text.

    Parameters
    ----------
    text
        Without line breaks.
    size
        The font size; the width comes in the same unit, usually points.
    bold
        Whether the bold face is meant.

    >>> round(text_width("side seams", 10), 1)
    50.6
    """
    return size * _width(text, bold)


@lru_cache(maxsize=10_000)
def _width(text: str, bold: bool) -> float:
    """The width at a size of 1; many texts are measured again and again."""
    advances = _advances().bold if bold else _advances().regular
    return sum([_letter_width(letter, advances) for letter in text])


def letters_of_the_font() -> frozenset[str]:
    """Every letter that the shipped font has a shape for."""
    return frozenset(_advances().regular)


def only_known_letters(text: str) -> str:
    """Show a box for every letter that the shipped font lacks.

    >>> only_known_letters("naïve 縫う")
    'naïve □□'
    """
    known = letters_of_the_font()
    return "".join(letter if letter in known or letter == "\n" else MISSING for letter in text)


def wrap(
    text: str, width: float, size: float, *, bold: bool = False, lines: int = 3
) -> tuple[str, ...]:
    """Break a text at its spaces into lines that fit a width.

    Parameters
    ----------
    text
        Any text; spaces and line breaks in it count as one space.
    width
        What a line may take, in the unit of ``size``.
    size
        The font size.
    bold
        Whether the bold face is meant.
    lines
        The most lines; what does not fit ends in an ellipsis.

    Returns
    -------
    tuple of str
        At least one line, none wider than ``width`` unless a single letter is.
    """
    found = list(_lines(text.split(), width, size, bold=bold)) or [""]
    if len(found) <= lines:
        return tuple(found)
    kept = found[:lines]
    last = kept[-1]
    while last and text_width(last + ELLIPSIS, size, bold=bold) > width:
        last = last[:-1]
    return (*kept[:-1], last.rstrip() + ELLIPSIS)


def _lines(words: list[str], width: float, size: float, *, bold: bool) -> Iterator[str]:
    line = ""
    for word in words:
        longer = f"{line} {word}" if line else word
        if _fits(longer, width, size, bold=bold):
            line = longer
            continue
        if line:
            yield line
        line = word
        while not _fits(line, width, size, bold=bold) and len(line) > 1:
            cut = _longest_start(line, width, size, bold=bold)
            yield line[:cut]
            line = line[cut:]
    if line:
        yield line


def _fits(text: str, width: float, size: float, *, bold: bool) -> bool:
    return text_width(text, size, bold=bold) <= width + _ROUNDING


def _longest_start(word: str, width: float, size: float, *, bold: bool) -> int:
    """How many letters of a word fit, at least one."""
    cut = 1
    while cut < len(word) - 1 and _fits(word[: cut + 1], width, size, bold=bold):
        cut += 1
    return cut


def _letter_width(letter: str, advances: Mapping[str, float]) -> float:
    """What a letter takes; one that the font lacks counts as wide as it could well be."""
    known = advances.get(letter)
    if known is not None:
        return known
    if category(letter) in {"Mn", "Me", "Cf"}:
        return 0.0
    return 1.0 if east_asian_width(letter) in {"W", "F"} else advances["W"]


@cache
def _advances() -> _Advances:
    text = files("seqplan.draw").joinpath("fonts", "widths.json").read_text(encoding="ascii")
    table = json.loads(text)
    units = table["units"]
    regular, bold = (
        {letter: advance / units for letter, advance in table[face].items()}
        for face in ("regular", "bold")
    )
    return _Advances(regular, bold)
