"""Cloth seen from its cut end: plies as lines, stitches as lines that cross them.

A place is (x, y): x runs along the cloth in millimetres that are not to scale, y counts levels from
the table up. A ply is walked from one of its ends to the other, and its right side lies at the left
hand or at the right hand of the way; so folds and turns keep the side by themselves, and which side
is up at any place is read off, never written down.
"""

from enum import Enum
from itertools import pairwise
from typing import NamedTuple

from seqplan.base.ids import OpId

Point = tuple[float, float]


class Cloth(Enum):
    """What a ply is cut from, for the key."""

    SHELL = "shell"
    FACING = "facing"
    LINING = "lining"
    INTERLINING = "interlining"
    NOTION = "notion"
    """Tape, elastic, piping: bought, with no side that matters here."""


class End(Enum):
    """How a ply ends in the picture."""

    GOES_ON = "goes on"
    RAW = "raw"
    FINISHED = "finished"
    TEETH = "teeth"
    """The teeth of a zip."""


class Stitch(Enum):
    """What a row of stitches is for."""

    SEAM = "seam"
    OVERLOCK = "overlock"
    BASTING = "basting"
    STAYSTITCHING = "staystitching"
    UNDERSTITCHING = "understitching"
    TOPSTITCHING = "topstitching"
    HEM = "hem"
    HAND = "hand"
    GATHERING = "gathering"


class Material(NamedTuple):
    """What a ply is: its name as people read it, and what it is cut from.

    ``key`` tells plies of one name apart, as the two copies of a pair.
    """

    key: str
    title: str
    cloth: Cloth = Cloth.SHELL


class Ply(NamedTuple):
    """One ply from end to end.

    Parameters
    ----------
    material
        What it is.
    points
        The way from one end to the other.
    right_at_left
        Whether its right side lies at the left hand of that way; ``None`` where it has no sides.
    ends
        How it begins and how it ends.
    """

    material: Material
    points: tuple[Point, ...]
    right_at_left: bool | None
    ends: tuple[End, End] = (End.GOES_ON, End.RAW)


class Row(NamedTuple):
    """A row of stitches, from where the needle goes in to where it comes out.

    ``op`` is the operation that sews it. ``around`` is where the raw edges lie which the thread
    goes round as well, as an overlocker's does.
    """

    stitch: Stitch
    start: Point
    end: Point
    op: OpId
    around: float | None = None


class Pierced(NamedTuple):
    """A ply that a needle goes through; ``on_right``: it meets the right side first."""

    material: Material
    on_right: bool | None


class Section(NamedTuple):
    """A seam or an edge in cross-section.

    Parameters
    ----------
    plies
        In no order that matters: their levels tell which lies on which.
    rows
        In the order in which they are sewn.
    is_outside_up
        Whether it lies as in the finished garment, with the outside up; otherwise layers lie on the
        table as they are sewn.
    """

    plies: tuple[Ply, ...]
    rows: tuple[Row, ...] = ()
    is_outside_up: bool = False

    def through(self, row: Row) -> tuple[Pierced, ...]:
        """The plies that a row goes through, from where the needle goes in."""
        found = [
            (where, Pierced(ply.material, _meets_right(ply, way, row)))
            for ply in self.plies
            for way in pairwise(ply.points)
            for where in (crossing((row.start, row.end), way),)
            if where is not None
        ]
        return tuple(pierced for _, pierced in sorted(found, key=lambda pair: pair[0]))

    def lying_at(self, x: float) -> tuple[Pierced, ...]:
        """The plies at a place from the top down; ``on_right`` where the right side is up."""
        levels = [y for ply in self.plies for _, y in ply.points]
        probe = Row(Stitch.SEAM, (x, max(levels) + 1), (x, min(levels) - 1), OpId(""))
        return self.through(probe)

    def upside_down(self) -> "Section":
        """The same with what was at the bottom at the top."""
        return self._mirrored(1, -1)

    def the_other_way(self) -> "Section":
        """The same with left and right exchanged."""
        return self._mirrored(-1, 1)

    def _mirrored(self, by_x: int, by_y: int) -> "Section":
        def mirror(point: Point) -> Point:
            return point[0] * by_x, point[1] * by_y

        plies = tuple(
            ply._replace(
                points=tuple(map(mirror, ply.points)),
                right_at_left=None if ply.right_at_left is None else not ply.right_at_left,
            )
            for ply in self.plies
        )
        rows = tuple(
            row._replace(
                start=mirror(row.start),
                end=mirror(row.end),
                around=None if row.around is None else row.around * by_x,
            )
            for row in self.rows
        )
        return self._replace(plies=plies, rows=rows)


def crossing(one: tuple[Point, Point], other: tuple[Point, Point]) -> float | None:
    """Where one straight line crosses another, as a share of its length; ``None`` if nowhere.

    >>> crossing(((0, 2), (0, 0)), ((-1, 1), (1, 1)))
    0.5
    """
    (ax, ay), (bx, by) = one
    (cx, cy), (dx, dy) = other
    rx, ry, sx, sy = bx - ax, by - ay, dx - cx, dy - cy
    turn = rx * sy - ry * sx
    if turn == 0:
        return None
    along = ((cx - ax) * sy - (cy - ay) * sx) / turn
    across = ((cx - ax) * ry - (cy - ay) * rx) / turn
    return along if 0 <= along <= 1 and 0 <= across <= 1 else None


def _meets_right(ply: Ply, way: tuple[Point, Point], row: Row) -> bool | None:
    if ply.right_at_left is None:
        return None
    (ax, ay), (bx, by) = way
    dx, dy = row.end[0] - row.start[0], row.end[1] - row.start[1]
    comes_from_left = (bx - ax) * dy - (by - ay) * dx < 0
    return comes_from_left == ply.right_at_left
