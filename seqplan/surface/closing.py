"""What further seams close: how many points fall together, and how many ways round there are then.

A surface that can be laid flat has no way round; a tube has one, trousers have two. Seen from what
is sewn already, a further seam that merely joins two parts adds none. The count is the first Betti
number: what cuts from edge to edge can lower before the parts fall apart.
"""

from collections.abc import Hashable, Iterable
from typing import TypeVar

from seqplan.surface.glued import Glue, Surface

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


def merged_points(surface: Surface, glues: Iterable[Glue]) -> int:
    """How many points of a garment fall together when these seams are sewn too."""
    return count_merged(
        (surface.point(one), surface.point(other)) for glue in glues for one, other in glue.ends
    )


class WaysRound:
    """Counts what further seams close, seen from what is sewn already.

    Parameters
    ----------
    surface
        What is sewn already.
    """

    def __init__(self, surface: Surface) -> None:
        self._surface = surface

    def added_by(self, glues: Iterable[Glue]) -> int:
        """How many ways round there are more with these seams; each edge stands in one only.

        By Euler: a seam makes one edge of two and lets points and parts fall together.
        """
        sewn = list(glues)
        parts = count_merged(
            (self._surface.cloth_of(glue.first), self._surface.cloth_of(glue.second))
            for glue in sewn
        )
        return merged_points(self._surface, sewn) - len(sewn) - parts
