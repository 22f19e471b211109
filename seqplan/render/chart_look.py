"""How a chart of the dependencies looks: sizes in points, lines told apart without colour."""

from collections.abc import Sequence
from dataclasses import dataclass, replace
from math import ceil
from typing import Final

from seqplan.base.strength import Strength
from seqplan.render.textwidth import FONT_FAMILY, text_width


@dataclass(frozen=True, slots=True, kw_only=True)
class Look:
    """Sizes and greys of a chart.

    Parameters
    ----------
    font
        The font, one name only.
    text, small, heading, title
        Font sizes: rows; numbers and key; headings of lanes; the title.
    line
        From one line of text to the next, as a multiple of the font size.
    slack
        Room beside a text, because not every program measures alike.
    bar, pad, badge
        Widths of the parts of a row: mark of the longest chain, a gap, station.
    text_limit
        A wider text in a row is wrapped.
    row
        Height of a row with one line of text.
    ink, faint, lane
        Lines and text; lines between rows; the ground of lanes.
    """

    font: str = FONT_FAMILY
    text: float = 8
    small: float = 7.5
    heading: float = 8
    title: float = 13
    line: float = 1.2
    slack: float = 3
    bar: int = 4
    pad: int = 3
    badge: int = 16
    text_limit: int = 84
    row: int = 13
    ink: str = "#1a1a1a"
    faint: str = "#8c8c8c"
    lane: str = "#f2f2f2"


LOOK: Final = Look()


@dataclass(frozen=True, slots=True, kw_only=True)
class Lettering:
    """How a text is set: size in points, and face."""

    size: float = LOOK.text
    bold: bool = False

    def sized(self, size: float) -> "Lettering":
        """The same face in another size."""
        return replace(self, size=size)

    def width(self, lines: Sequence[str]) -> int:
        """The room that lines of text take, with slack, in whole points."""
        widest = max((text_width(line, self.size, bold=self.bold) for line in lines), default=0)
        return ceil(widest + LOOK.slack)

    def height(self, lines: Sequence[str]) -> int:
        """The room from the top of the first line to the bottom of the last."""
        return ceil(len(lines) * self.size * LOOK.line) + 3


TEXT: Final = Lettering()
BOLD: Final = Lettering(bold=True)
SMALL: Final = Lettering(size=LOOK.small)
BADGE: Final = Lettering(size=LOOK.small, bold=True)
HEADING: Final = Lettering(size=LOOK.heading, bold=True)
TITLE: Final = Lettering(size=LOOK.title, bold=True)

STYLE: Final[dict[Strength, str]] = {
    Strength.MUST: "solid",
    Strength.SHOULD: "dashed",
    Strength.PREFER: "dotted",
}
"""The line of a reason, by how binding it is."""

CHAIN_WIDTH: Final = 2.4
LINE_WIDTH: Final = 0.9

PAGE_PT: Final = (538.0, 785.0)
"""What may be drawn on upright A4 inside margins of 10 mm, in points."""
