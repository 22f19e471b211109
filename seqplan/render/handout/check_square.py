"""Two sides of a square in the lower left corner of every page, to check a print with a ruler."""

from typing import Final

from seqplan.render.handout.paper import CHECK_CM, CHECK_CORNER, CHECK_INCH

SIDE: Final = 70
"""The picture is so wide and high, in millimetres, from the corner of the page."""
TICK: Final = 2.5


def strokes() -> tuple[tuple[float, float, float, float], ...]:
    """The strokes in millimetres from the lower left corner of the page: from x, y to x, y.

    One line goes across and one up, both 2 inches long. A mark on their outer side stands at 5 cm,
    one on the inner side at 2 inches; in the corner there are both.
    """
    c, out, into = CHECK_CORNER, CHECK_CORNER - TICK, CHECK_CORNER + TICK
    across = [
        (c - TICK, c, c + CHECK_INCH, c),
        (c + CHECK_CM, c, c + CHECK_CM, out),
        (c + CHECK_INCH, c, c + CHECK_INCH, into),
    ]
    return (*across, *((y, x, v, u) for x, y, u, v in across))


def check_square_svg() -> str:
    """The strokes as a picture whose lower left corner is that of the page."""
    ways = "".join(f"M{x:g} {SIDE - y:g}L{u:g} {SIDE - v:g}" for x, y, u, v in strokes())
    return (
        f'<svg xmlns="http://www.w3.org/2000/svg" width="{SIDE}mm" height="{SIDE}mm"'
        f' viewBox="0 0 {SIDE} {SIDE}"><path d="{ways}" fill="none" stroke="#52606a"'
        ' stroke-width=".18"/></svg>'
    )
