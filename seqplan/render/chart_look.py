"""How a chart of the dependencies looks: sizes in points, lines told apart without colour."""

from dataclasses import dataclass
from typing import Final

from seqplan.base.strength import Strength
from seqplan.render.textwidth import FONT_FAMILY


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
    bar, badge, number
        Widths of the parts of a row: mark of the longest chain, station, number of the reason.
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
    slack: float = 4
    bar: int = 4
    badge: int = 18
    number: int = 12
    text_limit: int = 96
    row: int = 13
    ink: str = "#1a1a1a"
    faint: str = "#8c8c8c"
    lane: str = "#f2f2f2"


LOOK: Final = Look()

STYLE: Final[dict[Strength, str]] = {
    Strength.MUST: "solid",
    Strength.SHOULD: "dashed",
    Strength.PREFER: "dotted",
}
"""The line of a reason, by how binding it is."""

CHAIN_WIDTH: Final = 2.4
LINE_WIDTH: Final = 0.9
