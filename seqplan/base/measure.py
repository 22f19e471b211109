"""Lengths, exact to the fraction, in the two systems that the trade prints side by side.

A length is kept in millimetres as a fraction, so that 5/8 in stays 5/8 in and adding up never
drifts. Nobody reads millimetre fractions; the two printers below round as the trade rounds:
inches to the eighth, centimetres to the half, small measures to the millimetre. They write numbers
as the reader's language does.
"""

import re
from fractions import Fraction
from math import ceil
from typing import Final, NamedTuple

from seqplan.base.language import LANGUAGES, spoken

MM_PER_INCH: Fraction = Fraction(254, 10)

_LEAST: Final = MM_PER_INCH / 8
"""No less is printed in inches, so that 1 mm stands beside an eighth."""
_SIXTEENTH: Final = MM_PER_INCH / 16
_HALF_CENTIMETRE: Final = Fraction(5)
_MOST: Final = Fraction(1, 5)
_LONG: Final = Fraction(1, 40)
_YARD_FOR_METRE: Final = Fraction(1, 10)

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
    """A length in millimetres, never negative.

    Parameters
    ----------
    mm
        How long it is.
    written_in
        The unit that its author used: ``mm``, ``cm``, ``m`` or ``in``.
    pair
        What its author gives for it in the other system, in millimetres too, and the unit; the two
        are then printed as they are given. ``None`` where the program rounds.
    """

    mm: Fraction
    written_in: str = "cm"
    pair: tuple[Fraction, str] | None = None


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
    return f"{_number_in(length.mm, length.written_in)} {length.written_in}"


def format_pair(length: Length) -> dict[str, str]:
    """Write both measures of a pair, each by its unit, the one that counts first.

    >>> format_pair(Length(Fraction(15), "cm", (Fraction(127, 8), "in")))
    {'cm': '1.5', 'in': '5/8'}
    """
    sides = [(length.mm, length.written_in), *([length.pair] if length.pair else [])]
    return {unit: _number_in(mm, unit) for mm, unit in sides}


def _number_in(mm: Fraction, unit: str) -> str:
    """Write a number of units exactly, as a fraction of inches or as a decimal."""
    whole, rest = divmod(mm / _UNITS[unit], 1)
    if rest == 0:
        return str(whole)
    decimal = (whole + rest) * 10000
    if decimal.denominator == 1 and (unit != "in" or rest.denominator > 999):
        return f"{decimal.numerator / 10000:.4f}".rstrip("0")
    fraction = f"{rest.numerator}/{rest.denominator}"
    return f"{whole} {fraction}" if whole else fraction


def are_alike(metric: Fraction, imperial: Fraction, *, is_bought: bool = False) -> bool:
    """Whether one measure is the other as the trade rounds; both in millimetres.

    Parameters
    ----------
    metric, imperial
        The two measures.
    is_bought
        Whether they are yards and metres, which shops cut the one for the other.

    >>> are_alike(Fraction(15), Fraction(127, 8)), are_alike(Fraction(25), Fraction(127, 8))
    (True, False)
    """
    off = abs(imperial - metric)
    longer = max(imperial, metric)
    is_half = metric % _HALF_CENTIMETRE == 0
    return (
        off <= _SIXTEENTH
        or off <= longer * (_YARD_FOR_METRE if is_bought else _LONG)
        or (is_half and off <= min(_HALF_CENTIMETRE / 2, longer * _MOST))
        or longer <= _LEAST
    )


def inches(length: Length) -> str:
    """Print in inches to the nearest eighth, at least an eighth.

    >>> inches(Length(Fraction(15))), inches(Length(Fraction(30))), inches(Length(Fraction(60)))
    ('⅝ in', '1⅛ in', '2⅜ in')
    >>> inches(Length(Fraction(1)))
    '⅛ in'
    """
    unit = LANGUAGES[spoken()].inch
    if length.mm == 0:
        return f"0 {unit}"
    if length.pair is not None:
        return _given_inches(_side(length, is_metric=False)[0])
    eighths = max(1, round(length.mm / MM_PER_INCH * 8))
    whole, rest = divmod(eighths, 8)
    return f"{whole or ''}{_EIGHTHS.get(rest, '')} {unit}"


def _side(length: Length, *, is_metric: bool) -> tuple[Fraction, str]:
    """One measure of a pair, in millimetres, and its unit."""
    sides = [(length.mm, length.written_in), *([length.pair] if length.pair else [])]
    return next(side for side in sides if (side[1] != "in") == is_metric)


def _given_inches(mm: Fraction) -> str:
    """Print inches exactly: eighths by their signs, other fractions as they are written."""
    language = LANGUAGES[spoken()]
    whole, rest = divmod(mm / MM_PER_INCH * 8, 8)
    if rest.denominator == 1:
        return f"{whole or ('' if rest else 0)}{_EIGHTHS.get(int(rest), '')} {language.inch}"
    return f"{_number_in(mm, 'in').replace('.', language.decimal)} {language.inch}"


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
    if length.pair is not None:
        mm, unit = _side(length, is_metric=True)
        return f"{decimal(mm)} mm" if unit == "mm" else _decimal_cm(mm)
    if length.written_in == "in":
        half = Fraction(round(mm / 5) * 5)
        is_near = mm > 8 and (abs(half - mm) < 1 or mm >= 100)
        mm = half if is_near else Fraction(round(mm))
    return f"{decimal(mm)} mm" if mm < 10 else _decimal_cm(mm)


def both(length: Length) -> str:
    """Print both systems, the author's first.

    >>> both(Length(Fraction(15)))
    '1.5 cm (⅝ in)'
    >>> both(Length(Fraction(127, 8), "in"))
    '⅝ in (1.5 cm)'
    >>> both(Length(Fraction(12), "cm", (Fraction(127, 10), "in")))
    '1.2 cm (½ in)'
    """
    if length.written_in == "in":
        return f"{inches(length)} ({centimetres(length)})"
    return f"{centimetres(length)} ({inches(length)})"


def both_whole_inches(length: Length) -> str:
    """Print both systems where the trade sells by the whole inch, as it does zips.

    >>> both_whole_inches(Length(Fraction(230)))
    '23 cm (9 in)'
    """
    if length.pair is not None:
        return both(length)
    whole = f"{round(length.mm / MM_PER_INCH)} {LANGUAGES[spoken()].inch}"
    metric = centimetres(length)
    return f"{whole} ({metric})" if length.written_in == "in" else f"{metric} ({whole})"


def _decimal_cm(mm: Fraction) -> str:
    return f"{decimal(mm / 10)} cm"


_BOLTS: dict[int, int] = {90: 36, 115: 45, 127: 50, 140: 54, 150: 60}
"""Widths that cloth usually has, in cm and as the trade calls them in inches: common practice."""


def cloth_width(length: Length) -> str:
    """Print how wide cloth is, in the pairs of the trade where it has one.

    >>> cloth_width(Length(Fraction(1500))), cloth_width(parse_length("45 in"))
    ('150 cm (60 in)', '45 in (115 cm)')
    >>> cloth_width(Length(Fraction(1100))), cloth_width(parse_length("30 in"))
    ('110 cm (43 in)', '30 in (76 cm)')
    """
    if length.pair is not None:
        return both(length)
    inch = LANGUAGES[spoken()].inch
    if length.written_in == "in":
        usual = {inches: cm for cm, inches in _BOLTS.items()}
        number = length.mm / MM_PER_INCH
        metric = usual.get(int(number)) if number.denominator == 1 else None
        return f"{decimal(number)} {inch} ({metric or round(length.mm / 10)} cm)"
    number = length.mm / 10
    named = _BOLTS.get(int(number)) if number.denominator == 1 else None
    return f"{decimal(number)} cm ({named or round(length.mm / MM_PER_INCH)} {inch})"


def cloth_amount(length: Length) -> str:
    """Print how much cloth to buy, never less than asked for.

    Rounded up as shops cut it: metres to the next 5 cm, yards to the next eighth. Of a pair each
    system has its own measure.

    >>> cloth_amount(Length(Fraction(1200))), cloth_amount(Length(Fraction(430)))
    ('1.2 m (1⅜ yd)', '45 cm (½ yd)')
    >>> cloth_amount(parse_length("1 3/8 yd"))
    '1⅜ yd (1.3 m)'
    >>> cloth_amount(Length(Fraction(1300), "m", (MM_PER_INCH * 54, "in")))
    '1.3 m (1½ yd)'
    """
    sides = [length.mm, length.mm]
    if length.pair is not None:
        sides = [_side(length, is_metric=is_metric)[0] for is_metric in (True, False)]
    steps = ceil(sides[0] / 50)
    metric = f"{decimal(Fraction(steps, 20))} m" if steps >= 20 else f"{steps * 5} cm"
    whole, rest = divmod(ceil(sides[1] / (MM_PER_INCH * 36) * 8), 8)
    imperial = f"{whole or ''}{_EIGHTHS.get(rest, '')} {LANGUAGES[spoken()].yard}"
    one, other = (imperial, metric) if length.written_in == "in" else (metric, imperial)
    return f"{one} ({other})"


def decimal(number: Fraction) -> str:
    """Print with at most two decimals and no trailing zeros, as the reader's language does.

    >>> decimal(Fraction(5, 2)), decimal(Fraction(3))
    ('2.5', '3')
    """
    told = f"{float(number):.2f}".rstrip("0").rstrip(".")
    return told.replace(".", LANGUAGES[spoken()].decimal)
