"""Measures that a text gives in both systems: ``1 1/2 in (3.8 cm)``, ``2 cm / ¾ in``.

Two numbers are a pair if nothing but a bracket or a stroke parts them. A pair agrees if the one is
the other as the trade rounds: inches to the eighth, centimetres to the half, and long measures to
a fortieth. What cannot be read as a plain pair (ranges, areas, lists of sizes) is not judged.
"""

import re
import unicodedata
from collections.abc import Iterator
from fractions import Fraction
from functools import lru_cache
from typing import Final, NamedTuple

from seqplan.base.measure import MM_PER_INCH, Length, are_alike, centimetres, inches
from seqplan.explain.reading.wording import plain

_NUMBER = (
    "(?:[0-9]{1,6}[ -][0-9]{1,3}/[0-9]{1,3}"  # 1 1/2
    "|[0-9]{1,3}/[0-9]{1,3}"  # 5/8
    "|[0-9]{0,6} ?[¼½¾⅛⅜⅝⅞⅓⅔]"  # 1½
    "|[0-9]{1,6}(?:[.,][0-9]{1,4})?)"  # 6.25
)
_UNIT = (
    r"(?:[ -]?(?:inch(?:es)?|in|yards?|yds?|feet|ft|centimet(?:re|er)s?|cm"
    r'|millimet(?:re|er)s?|mm|met(?:re|er)s?|m)\b\.?| ?")'
)
_PAIR: Final = (
    "(?<![0-9/.,½¼¾x-])"  # not the rest of a number, a range or an area
    rf"(?P<one>{_NUMBER})(?P<first>{_UNIT})"
    r"\s*(?:(?P<bracket>[(\[])|/|=)\s*"
    r"(?:(?:about|approx\.?|approximately|ca\.?|c\.|≈|~|or)\s*)?"
    rf"(?P<other>{_NUMBER})(?P<second>{_UNIT})"
    r"(?(bracket)\s*[)\]]|(?!\s*[/x-]))"
)
_BEFORE: Final = r"""(?:[0-9½¼¾]|[0-9] ?(?:cm|mm|m|in|"))\s*(?:x|by|to|or|-)\s*$"""
"""What makes the first length the end of a range or the second side of an area."""
_REACH: Final = 16
"""How far back that is looked for."""


class Pair(NamedTuple):
    """A measure given twice.

    Parameters
    ----------
    imperial, metric
        The two lengths.
    imperial_text, metric_text
        The same as they are written.
    is_bought
        Whether they are yards and metres, which shops cut the one for the other.
    """

    imperial: Length
    metric: Length
    imperial_text: str
    metric_text: str
    is_bought: bool = False

    @property
    def agrees(self) -> bool:
        """Whether the one is the other as the trade rounds.

        >>> [pair.agrees for pair in pairs_in("0.75 in (2 cm), 5/8 in (1.5 cm), 16 in (40.5 cm)")]
        [True, True, True]
        >>> [pair.agrees for pair in pairs_in("1 1/2 in (6.25 cm)")]
        [False]
        """
        return are_alike(self.metric.mm, self.imperial.mm, is_bought=self.is_bought)

    @property
    def imperial_in_metric(self) -> str:
        """The first in centimetres, as the trade rounds."""
        return centimetres(self.imperial)

    @property
    def metric_in_imperial(self) -> str:
        """The second in inches, as the trade rounds."""
        return inches(self.metric)


def pairs_in(text: str) -> Iterator[Pair]:
    """Find every measure that stands in both systems.

    >>> [(p.imperial_text, p.metric_text) for p in pairs_in("Sew 2 cm / ¾ in from it.")]
    [('¾ in', '2 cm')]
    >>> list(pairs_in("Cut it 9 x 7.5 in (19 cm), or 1-2 in (5 cm) longer."))
    []
    """
    read = plain(text)
    for match in re.finditer(_PAIR, read):
        if re.search(_BEFORE, read[max(0, match.start() - _REACH) : match.start()]):
            continue
        one = _read(match["one"], match["first"])
        other = _read(match["other"], match["second"])
        if one is None or other is None or _is_metric(one) == _is_metric(other):
            continue
        spans = (
            (match.start("one"), match.end("first")),
            (match.start("other"), match.end("second")),
        )
        texts = [text[start:end] for start, end in spans]
        is_bought = {_shop_unit(match["first"]), _shop_unit(match["second"])} == {"y", "m"}
        (metric, metric_text), (imperial, imperial_text) = sorted(
            zip((one, other), texts, strict=True), key=lambda item: not _is_metric(item[0])
        )
        yield Pair(imperial, metric, imperial_text.strip(), metric_text.strip(), is_bought)


def _is_metric(length: Length) -> bool:
    return length.written_in != "in"


def _shop_unit(unit: str) -> str:
    """``m`` for metres and ``y`` for yards, by which cloth is bought; nothing for the others."""
    unit = unit.strip(" -.")
    return unit[:1] if unit == "m" or unit.startswith(("met", "y")) else ""


@lru_cache(maxsize=1024)
def _read(number: str, unit: str) -> Length | None:
    """Read a number and its unit; ``None`` if a fraction has no denominator."""
    value = _number(number)
    unit = unit.strip(" -.")
    for start, mm in _UNITS.items():
        if unit.startswith(start) and value is not None:
            return Length(value * mm, "cm" if start in _METRIC else "in")
    return None


_METRIC: Final = {"cm": 10, "cent": 10, "mm": 1, "mil": 1, "m": 1000}
_UNITS: Final = {
    **{start: Fraction(mm) for start, mm in _METRIC.items()},
    "in": MM_PER_INCH,
    '"': MM_PER_INCH,
    "y": MM_PER_INCH * 36,
    "f": MM_PER_INCH * 12,
}
"""Millimetres by how the unit begins, the longer beginnings first."""


def _number(text: str) -> Fraction | None:
    """Read ``1 1/2``, ``1-1/2``, ``1½``, ``1.5`` or ``1,5``."""
    total = Fraction(0)
    for part in text.replace("-", " ").replace(",", ".").split():
        digits, vulgar = part.rstrip("¼½¾⅛⅜⅝⅞⅓⅔"), part.lstrip("0123456789./")
        over, _, under = digits.partition("/")
        if under and int(under) == 0:
            return None
        if over:
            total += Fraction(over) / int(under or 1)
        if vulgar:
            total += Fraction(unicodedata.numeric(vulgar)).limit_denominator(8)
    return total
