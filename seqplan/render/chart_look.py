"""How a chart of the dependencies looks: sizes in points, lines told apart without colour.

Pens, tones, dashes and letters are those of the pictures, so that one key explains both.
"""

from collections.abc import Sequence
from dataclasses import dataclass, replace
from math import ceil
from typing import Final

from seqplan.base.strength import Strength
from seqplan.draw.figure import DASHES, DOTS, HEAVY
from seqplan.draw.textwidth import FONT_FAMILY, text_width

PAGE_PT: Final = (538.0, 785.0)
"""What may be drawn on upright A4 inside margins of 10 mm, in points."""

_LINE: Final = 1.2
_SLACK: Final = 3
"""Room beside a text, because not every program measures alike."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Lettering:
    """How a text is set: size in points, and face."""

    size: float
    bold: bool = False

    def sized(self, size: float) -> "Lettering":
        """The same face in another size."""
        return replace(self, size=size)

    def wrap_width(self, width: float) -> float:
        """The width at which text is wrapped that goes into a cell of this width."""
        return width - _SLACK

    def width(self, lines: Sequence[str]) -> int:
        """The room that lines of text take, with slack, in whole points."""
        widest = max((text_width(line, self.size, bold=self.bold) for line in lines), default=0)
        return ceil(widest + _SLACK)

    def height(self, lines: Sequence[str]) -> int:
        """The room from the top of the first line to the bottom of the last."""
        return ceil(len(lines) * self.size * _LINE) + 2


@dataclass(frozen=True, slots=True)
class Look:
    """Sizes of a chart in points; all follow from the size of the text.

    The smaller the text, the more of the drawing is lines and gaps, and these cannot shrink.
    """

    text_size: int = 8

    @property
    def text(self) -> Lettering:
        """The words of a row."""
        return Lettering(size=self.text_size)

    @property
    def bold(self) -> Lettering:
        """The headings of boxes and lanes."""
        return Lettering(size=self.text_size, bold=True)

    @property
    def small(self) -> Lettering:
        """Numbers of reasons, and the key."""
        return Lettering(size=self.text_size - 0.5)

    @property
    def badge(self) -> Lettering:
        """The letters of a station, and the headings of the key."""
        return Lettering(size=self.text_size - 0.5, bold=True)

    @property
    def title(self) -> Lettering:
        """The title."""
        return Lettering(size=self.text_size * 1.6, bold=True)

    @property
    def bar_width(self) -> int:
        """The mark of the longest chain at the left of a box."""
        return round(self.text_size / 2)

    @property
    def badge_width(self) -> int:
        """The part of a row that has the station in it."""
        return self.text_size * 2

    @property
    def text_limit(self) -> int:
        """The widest that the words of a row may be before they are wrapped."""
        return round(self.text_size * 8.25)

    @property
    def row_height(self) -> int:
        """A row with one line of text."""
        return round(self.text_size * 1.5)


LOOKS: Final = tuple(Look(size) for size in (8, 9, 10, 11, 12, 14, 16, 18))
"""Sizes that are tried for a chart that does not fit a page."""

FONT: Final = FONT_FAMILY
STYLE: Final[dict[Strength, str]] = {
    Strength.MUST: "solid",
    Strength.SHOULD: "dashed",
    Strength.PREFER: "dotted",
}
"""The line of a reason, by how binding it is."""

DASHED: Final[dict[str, tuple[float, ...]]] = {"5,2": DASHES, "1,5": DOTS}
"""How the pictures dash what a layout program dashes in its own way."""

CHAIN_WIDTH: Final = HEAVY
LINE_WIDTH: Final = 0.9


def page_scale(width: float, height: float) -> float:
    """How much of its size a drawing keeps on A4, upright or lying; it is never enlarged."""
    short, long = PAGE_PT
    return min(1.0, max(min(short / width, long / height), min(long / width, short / height)))
