"""A picture before it is written: marks at their places, in points, x to the right and y down.

Nothing here knows a file format; `svg` does.
"""

from typing import NamedTuple

Spot = tuple[float, float]

INK = "#000"
PAPER = "#fff"
TONE = "#dcdcdc"
FAINT = "#555"

HEAVY = 2.6
THIN = 0.7
"""Pens of what matters now, and of the rest."""

FOLD = (7.0, 2.0, 1.5, 2.0)
DASHES = (3.0, 2.0)
DOTS = (0.6, 2.2)
"""Lengths of strokes and gaps; dots have round ends."""


class Line(NamedTuple):
    """A line through some points.

    Parameters
    ----------
    points
        At least two.
    width
        Of the pen.
    dashes
        Lengths of dashes and gaps; none for a solid line.
    ink
        Its tone.
    radius
        How far its corners are rounded.
    is_round
        Whether its ends are round.
    role
        What it stands for, such as ``stitch``; for programs that read the picture.
    """

    points: tuple[Spot, ...]
    width: float = 0.8
    dashes: tuple[float, ...] = ()
    ink: str = INK
    radius: float = 0.0
    is_round: bool = False
    role: str = ""


class Strokes(NamedTuple):
    """Many straight strokes of one pen, such as hatching."""

    strokes: tuple[tuple[Spot, Spot], ...]
    width: float = 0.5
    dashes: tuple[float, ...] = ()
    ink: str = INK
    is_round: bool = False


class Area(NamedTuple):
    """A filled area with an outline; ``outline`` is the width of the pen, 0 for none."""

    points: tuple[Spot, ...]
    fill: str = PAPER
    outline: float = 0.0
    role: str = ""


class Disc(NamedTuple):
    """A filled circle."""

    centre: Spot
    radius: float
    fill: str = INK
    outline: float = 0.0


class Words(NamedTuple):
    """One line of text: its ``anchor`` (start, middle, end) is at ``spot``, on the base line."""

    spot: Spot
    text: str
    size: float
    anchor: str = "start"
    is_bold: bool = False
    role: str = ""


class Group(NamedTuple):
    """Marks that belong together: what they stand for, and which one of its kind it is."""

    marks: tuple["Mark", ...]
    role: str
    name: str = ""
    side: str = ""


Mark = Line | Strokes | Area | Disc | Words | Group


class Figure(NamedTuple):
    """A picture.

    Parameters
    ----------
    width, height
        Of the canvas.
    title, words
        What it is called, and what it is told with to whoever cannot see it.
    marks
        What is drawn, from the back to the front.
    """

    width: float
    height: float
    title: str
    words: str
    marks: tuple[Mark, ...]


def moved_by(mark: Mark, by_x: float, by_y: float) -> Mark:
    """A mark somewhere else."""

    def move(spot: Spot) -> Spot:
        return spot[0] + by_x, spot[1] + by_y

    if isinstance(mark, Group):
        return mark._replace(marks=tuple(moved_by(inner, by_x, by_y) for inner in mark.marks))
    if isinstance(mark, Strokes):
        return mark._replace(strokes=tuple((move(a), move(b)) for a, b in mark.strokes))
    if isinstance(mark, Words):
        return mark._replace(spot=move(mark.spot))
    if isinstance(mark, Disc):
        return mark._replace(centre=move(mark.centre))
    return mark._replace(points=tuple(map(move, mark.points)))
