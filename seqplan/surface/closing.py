"""What further seams close: how many points fall together, and how many ways round there are then.

A surface that can be laid flat has no way round; a tube has one, trousers have two. Seen from what
is sewn already, a further seam that merely joins two parts adds none. The count is the first Betti
number: what cuts from edge to edge can lower before the parts fall apart.
"""

from collections.abc import Hashable, Iterable, Mapping
from typing import TypeVar

from seqplan.base.ids import PieceId
from seqplan.surface.glued import Glue, Surface
from seqplan.surface.ring import EdgeEnd

T = TypeVar("T", bound=Hashable)


def count_merged(pairs: Iterable[tuple[T, T]]) -> int:
    """How many classes fall together when both of each pair become one.

    >>> count_merged([(1, 2), (2, 3), (3, 1)])
    2
    """
    root: dict[T, T] = {}

    def find(item: T) -> T:
        while root.setdefault(item, item) != item:
            item = root[item]
        return item

    merged = 0
    for one, other in pairs:
        first, second = find(one), find(other)
        if first != second:
            root[first] = second
            merged += 1
    return merged


def merged_points(points: Mapping[EdgeEnd, int], glues: Iterable[Glue]) -> int:
    """How many points of a garment fall together when these seams are sewn too."""
    return count_merged(
        (points[EdgeEnd(glue.first, at_end)], points[EdgeEnd(glue.second, at_end == glue.aligned)])
        for glue in glues
        for at_end in (False, True)
    )


class WaysRound:
    """Counts what further seams close, seen from what is sewn already.

    Parameters
    ----------
    surface
        What is sewn already.
    """

    def __init__(self, surface: Surface) -> None:
        self._rings = surface.rings
        self._points = surface.points
        self._part: dict[tuple[PieceId, int], int] = {
            disc: number for number, part in enumerate(surface.parts) for disc in part.discs
        }

    def added_by(self, glues: Iterable[Glue]) -> int:
        """How many ways round there are more with these seams; each edge stands in one only.

        By Euler: a seam makes one edge of two and lets points and parts fall together.
        """
        sewn = list(glues)
        parts = count_merged(
            (self._part[self._rings.disc(glue.first)], self._part[self._rings.disc(glue.second)])
            for glue in sewn
        )
        return merged_points(self._points, sewn) - len(sewn) - parts
