"""Two small squares at the foot of every page, to check the size of a print with a ruler."""

from html import escape
from textwrap import wrap
from typing import Final, NamedTuple

from seqplan.render.handout.paper import CHECK_CM, CHECK_FOOT, CHECK_INCH, MARGIN_SIDE
from seqplan.words.say import say

_GAP: Final = 3.0
_CAPTION: Final = 38.0
_LINE_LETTERS: Final = 32
"""How wide the caption beside the squares is, in millimetres, and in letters."""
LINE: Final = 0.18
"""How wide the lines of the squares are, in millimetres; sides are measured at their middle."""


class Square(NamedTuple):
    """A square with what its sides measure written in it; millimetres from the lower left corner.

    ``x`` counts from the left edge of the page, ``y`` up from its foot.
    """

    x: float
    y: float
    side: float
    label: str


def squares() -> tuple[Square, Square]:
    """One square in centimetres and one in inches, side by side in the margin."""
    right = MARGIN_SIDE + CHECK_CM + _GAP
    return (
        Square(MARGIN_SIDE, CHECK_FOOT, CHECK_CM, say("paper-check-cm")),
        Square(right, CHECK_FOOT, CHECK_INCH, say("paper-check-inch")),
    )


def width() -> float:
    """How far the squares reach from the left margin, in millimetres, with a gap behind them."""
    last = squares()[-1]
    return last.x + last.side - MARGIN_SIDE + _GAP


def check_square_svg() -> str:
    """The squares and what they are for, as a picture: its foot is the edge of the paper.

    A picture is printed by every browser, a background only by some.
    """
    high = CHECK_FOOT + CHECK_CM + 1
    lines = wrap(say("paper-check-square"), _LINE_LETTERS)
    parts = []
    for x, y, side, label in squares():
        left, top = x - MARGIN_SIDE + LINE / 2, high - y - side
        parts.append(f'<rect x="{left:g}" y="{top:g}" width="{side:g}" height="{side:g}"/>')
        parts.append(_text(left + side / 2, top + side / 2 + 1, label, ' text-anchor="middle"'))
    middle = high - CHECK_FOOT - CHECK_CM / 2 + 1
    for place, line in enumerate(lines):
        parts.append(_text(width(), middle + 3.2 * (place - (len(lines) - 1) / 2), line))
    wide = width() + _CAPTION
    return (
        f'<svg xmlns="http://www.w3.org/2000/svg" width="{wide:g}mm" height="{high:g}mm"'
        f' viewBox="0 0 {wide:g} {high:g}"><style>rect{{fill:none;stroke:#52606a;stroke-width:'
        f"{LINE}}}text{{font:2.5px Arimo,Liberation Sans,Arial,sans-serif;fill:#52606a}}</style>"
        f"{''.join(parts)}</svg>"
    )


def _text(x: float, y: float, text: str, more: str = "") -> str:
    return f'<text x="{x:g}" y="{y:g}"{more}>{escape(text)}</text>'
