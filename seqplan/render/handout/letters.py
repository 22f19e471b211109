"""Texts made fit for paper, whatever the file format."""

import re
from typing import Final

from seqplan.base.language import LANGUAGES
from seqplan.base.visible import straightened

_UNITS: Final = "|".join(["mm", "cm", *(language.inch for language in LANGUAGES.values())])
_MEASURE: Final = re.compile(rf"([\d\u00bc-\u00be\u215b-\u215e]) ({_UNITS})\b")


def printed(text: str) -> str:
    r"""Make any text fit for the page, and keep the unit of a measure on the line of its number.

    >>> printed("1.5 cm (\u215d in)")
    '1.5\xa0cm (\u215d\xa0in)'
    """
    return _MEASURE.sub("\\1\N{NO-BREAK SPACE}\\2", straightened(text))
