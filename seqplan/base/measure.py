"""Lengths, exact to the fraction, in the two systems that the trade prints side by side.

A length is kept in millimetres as a fraction, so that 5/8 in stays 5/8 in and adding up never
drifts. Nobody reads millimetre fractions; the two printers below round as the trade rounds:
inches to the eighth, centimetres to the half, small measures to the millimetre.
"""

import re
from fractions import Fraction
from typing import NamedTuple

MM_PER_INCH: Fraction = Fraction(254, 10)

_UNITS: dict[str, Fraction] = {
    "mm": Fraction(1),
    "cm": Fraction(10),
    "m": Fraction(1000),
    "in": MM_PER_INCH,
    '"': MM_PER_INCH,
    "yd": MM_PER_INCH * 36,
}

_PATTERN = re.compile(
    r"""^\s*
    (?:(?P<whole>\d{1,6})\s+(?P<num>\d{1,3})/(?P<den>\d{1,3})   # 1 5/8
      |(?P<num2>\d{1,3})/(?P<den2>\d{1,3})                      # 5/8
      |(?P<decimal>\d{1,6}(?:\.\d{1,4})?))                      # 1.5
    \s*(?P<unit>mm|cm|m|in|yd|")?\s*$""",
    re.VERBOSE,
)

_EIGHTHS = {1: "⅛", 2: "¼", 3: "⅜", 4: "½", 5: "⅝", 6: "¾", 7: "⅞"}


class Length(NamedTuple):
    """A length in millimetres, never negative; ``written_in`` is the unit its author used."""

    mm: Fraction
    written_in: str = "cm"


def parse_length(text: str, *, default_unit: str = "cm") -> Length | None:
    """Read ``1.5``, ``1.5 cm``, ``5/8 in``, ``1 5/8 in`` or ``3/8"``.

    Parameters
    ----------
    text
        The text as written.
    default_unit
        The unit of a bare number, ``cm``, ``mm`` or ``in``.

    Returns
    -------
    Length or None
        ``None`` where the text is no length.

    >>> parse_length("5/8 in").mm == Fraction(127, 8)
    True
    >>> parse_length("1 5/8", default_unit="in").mm == Fraction(13, 8) * MM_PER_INCH
    True
    >>> parse_length("a bit") is None
    True
    """
    match = _PATTERN.match(text)
    if match is None:
        return None
    denominator = match["den"] or match["den2"]
    if denominator is not None and int(denominator) == 0:
        return None
    if match["decimal"] is not None:
        number = Fraction(match["decimal"])
    else:
        number = Fraction(int(match["num"] or match["num2"]), int(denominator))
        number += int(match["whole"] or 0)
    unit = match["unit"] or default_unit
    return Length(number * _UNITS[unit], "in" if unit in ('"', "in", "yd") else unit)


def format_written(length: Length) -> str:
    """Write a length so that ``parse_length`` reads the same length back.

    >>> format_written(Length(Fraction(15)))
    '1.5 cm'
    >>> format_written(Length(Fraction(127, 8), "in"))
    '5/8 in'
    """
    unit = length.written_in
    number = length.mm / _UNITS[unit]
    whole, rest = divmod(number, 1)
    if rest == 0:
        return f"{whole} {unit}"
    decimal = number * 10000
    if decimal.denominator == 1 and (unit != "in" or rest.denominator > 999):
        return f"{decimal.numerator / 10000:.4f}".rstrip("0") + f" {unit}"
    fraction = f"{rest.numerator}/{rest.denominator}"
    return f"{whole} {fraction} {unit}" if whole else f"{fraction} {unit}"


def inches(length: Length) -> str:
    """Print in inches to the nearest eighth, at least an eighth.

    >>> inches(Length(Fraction(15))), inches(Length(Fraction(30))), inches(Length(Fraction(60)))
    ('⅝ in', '1⅛ in', '2⅜ in')
    >>> inches(Length(Fraction(1)))
    '⅛ in'
    """
    if length.mm == 0:
        return "0 in"
    eighths = max(1, round(length.mm / MM_PER_INCH * 8))
    whole, rest = divmod(eighths, 8)
    return f"{whole or ''}{_EIGHTHS.get(rest, '')} in"


def centimetres(length: Length) -> str:
    """Print in centimetres: as written if metric, else as the trade rounds.

    An inch measure goes to the half centimetre where that is less than a millimetre off, as in the
    usual pairs (5/8 in, 1.5 cm), or where it is 10 cm and more; else to the millimetre.

    >>> centimetres(Length(Fraction(15)))
    '1.5 cm'
    >>> [centimetres(parse_length(text)) for text in ("5/8 in", "3/4 in", "1 in", "16 in")]
    ['1.5 cm', '2 cm', '2.5 cm', '40.5 cm']
    >>> [centimetres(parse_length(text)) for text in ("1/4 in", "1/2 in", "1 1/2 in")]
    ['6 mm', '1.3 cm', '3.8 cm']
    >>> centimetres(Length(Fraction(3), "mm"))
    '3 mm'
    """
    mm = length.mm
    if length.written_in == "in":
        half = Fraction(round(mm / 5) * 5)
        is_near = mm > 8 and (abs(half - mm) < 1 or mm >= 100)
        mm = half if is_near else Fraction(round(mm))
    if mm < 10:
        return f"{_trim(mm)} mm"
    return f"{_trim(mm / 10)} cm"


def both(length: Length) -> str:
    """Print both systems, the author's first.

    >>> both(Length(Fraction(15)))
    '1.5 cm (⅝ in)'
    >>> both(Length(Fraction(127, 8), "in"))
    '⅝ in (1.5 cm)'
    """
    if length.written_in == "in":
        return f"{inches(length)} ({centimetres(length)})"
    return f"{centimetres(length)} ({inches(length)})"


def both_whole_inches(length: Length) -> str:
    """Print both systems where the trade sells by the whole inch, as it does zips.

    >>> both_whole_inches(Length(Fraction(230)))
    '23 cm (9 in)'
    """
    whole = round(length.mm / MM_PER_INCH)
    metric = centimetres(length)
    return f"{whole} in ({metric})" if length.written_in == "in" else f"{metric} ({whole} in)"


def _trim(number: Fraction) -> str:
    """Print with at most two decimals and no trailing zeros."""
    return f"{float(number):.2f}".rstrip("0").rstrip(".")
