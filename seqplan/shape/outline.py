"""The outline of a piece, edge by edge: its lengths, its area, its cutting line."""

from collections.abc import Callable, Iterator, Sequence
from functools import lru_cache
from itertools import accumulate
from typing import NamedTuple

from seqplan.model.piece import Cut, Edge, Piece, Side
from seqplan.shape.curve import (
    Curve,
    Path,
    area,
    cut,
    elevated,
    flattened,
    is_smooth,
    path_length,
)
from seqplan.shape.offset import FLATNESS, offset


class OutlineFaultError(ValueError):
    """An outline that does not fit the edges of its piece.

    Parameters
    ----------
    kind
        ``corners``: as many sides as neither edges nor corners. ``mark``: a mark on a side of which
        nobody knows where it lies. ``beyond``: a mark that would lie beyond the end of its side.
        ``direction``: not clockwise. ``fold``: the fold is not upright at the left.
    edge
        The edge that it is about, if it is about one.
    """

    def __init__(self, kind: str, edge: str = "") -> None:
        super().__init__(f"{kind} {edge}".strip())
        self.kind = kind
        self.edge = edge


class Laid(NamedTuple):
    """A piece laid flat, right side up.

    Parameters
    ----------
    edges
        The line of each edge, in the order of the list; those of a slit lie inside and have none.
    is_fold
        Whether this is the half at the right of a fold.
    """

    edges: tuple[Path, ...]
    is_fold: bool = False

    @property
    def length(self) -> tuple[float, ...]:
        """The length of each edge in millimetres."""
        return tuple(map(path_length, self.edges))

    @property
    def area(self) -> float:
        """The area of all of it, in square millimetres; of a fold, of both halves."""
        return area(self._round()) * (2 if self.is_fold else 1)

    def _round(self) -> tuple[Curve, ...]:
        """All curves of what is described, closed along the fold."""
        curves = tuple(curve for path in self.edges for curve in path)
        return (*curves, (curves[-1][-1], curves[0][0])) if self.is_fold else curves

    def whole(self) -> tuple[complex, ...]:
        """The corners of straight lines that stand for the outline, of a fold for both halves."""
        points = flattened(curve for path in self.edges for curve in path)
        if not self.is_fold:
            return points[:-1]
        axis = points[0].real
        mirrored = (complex(2 * axis - point.real, point.imag) for point in reversed(points))
        return (*points, *list(mirrored)[1:-1])

    def cutting_line(self, allowance: Callable[[int], float]) -> tuple[complex, ...]:
        """Where it is cut: outside the outline by the allowance of each edge.

        Parameters
        ----------
        allowance
            The allowance of an edge in millimetres, by its place in the list. At a fold there is
            none.

        Returns
        -------
        tuple of complex
            The corners of the line; of a fold, of the half that is described.
        """
        points: list[complex] = []
        distances: list[float] = []
        for place, path in enumerate(self.edges):
            corners = flattened(path, FLATNESS)
            points += corners[:-1]
            distances += [allowance(place)] * len(corners[:-1])
        if self.is_fold:
            points.append(self.edges[-1][-1][-1])
            distances.append(0.0)
        return offset(points, distances)


@lru_cache(maxsize=512)
def lay(piece: Piece) -> Laid | None:
    """Lay a piece out in its shape; ``None`` where it has none.

    Raises
    ------
    OutlineFaultError
        When the shape does not fit the edges.
    """
    if piece.shape is None or not piece.edges:
        return None
    runs = runs_of(piece.edges)
    paths = tuple(map(path_of, piece.shape.sides))
    lines: dict[int, Path] = {}
    if len(paths) == sum(map(len, runs)):
        places = (place for run in runs for place in run)
        lines = dict(zip(places, paths, strict=True))
    elif len(paths) == len(runs):
        for run, path in zip(runs, paths, strict=True):
            lines.update(zip(run, _at_marks(piece, run, path), strict=True))
    else:
        raise OutlineFaultError("corners")
    laid = Laid(
        tuple(lines.get(place, ()) for place in range(len(piece.edges))), piece.cut is Cut.FOLD
    )
    _check(laid)
    return laid


def runs_of(edges: Sequence[Edge]) -> tuple[tuple[int, ...], ...]:
    """The places of the edges from corner to corner; a slit goes in at a mark."""
    runs: list[list[int]] = []
    is_after_slit = False
    for place, edge in enumerate(edges):
        if edge.is_slit:
            is_after_slit = True
            continue
        if runs and (edge.at_mark or is_after_slit):
            runs[-1].append(place)
        else:
            runs.append([place])
        is_after_slit = False
    return tuple(map(tuple, runs))


def path_of(side: Side) -> Path:
    """The curves of a side."""
    if len(side) <= 3:
        return (side,)
    return tuple(side[place : place + 4] for place in range(0, len(side) - 1, 3))


def side_of(path: Path) -> Side:
    """The side that some curves are."""
    if len(path) == 1:
        return path[0]
    return (path[0][0], *(point for curve in path for point in elevated(curve)[1:]))


def sides_between(path: Path, counts: Sequence[int]) -> tuple[Side, ...] | None:
    """Make sides of a path that somebody drew, one for each edge or one from corner to corner.

    Parameters
    ----------
    path
        The curves, clockwise from where the first edge begins.
    counts
        How many sides there may be, the likeliest first.

    Returns
    -------
    tuple of Side or None
        As many sides as there are curves if that is one of the counts, else one from corner to
        corner; ``None`` where neither is one of them.
    """
    if len(path) in counts:
        return tuple(path)
    between: list[list[Curve]] = []
    for place, curve in enumerate(path):
        if between and is_smooth(path[place - 1], curve):
            between[-1].append(curve)
        else:
            between.append([curve])
    return tuple(side_of(tuple(curves)) for curves in between) if len(between) in counts else None


def _at_marks(piece: Piece, run: Sequence[int], path: Path) -> Iterator[Path]:
    """Cut a side at the marks of the edges that share it."""
    known = dict(piece.lengths)
    names = [piece.edges[place].name for place in run]
    unknown = [name for name in names if name not in known]
    if len(run) > 1 and len(unknown) > 1:
        raise OutlineFaultError("mark", unknown[0])
    total = path_length(path)
    given = [float(known[name].mm) if name in known else 0.0 for name in names]
    if unknown:
        given[names.index(unknown[0])] = total - sum(given)
    marks = list(accumulate(given))[:-1]
    if len(run) > 1 and (min(given) <= 0 or max(marks) >= total):
        raise OutlineFaultError("beyond", next(name for name in names if name in known))
    done = 0.0
    for mark in marks:
        part, path = cut(path, mark - done)
        done = mark
        yield part
    yield path


def _check(laid: Laid) -> None:
    """Whether it goes round the right way, and has its fold where a fold is."""
    curves = [curve for path in laid.edges for curve in path]
    if laid.is_fold:
        top, foot = curves[0][0], curves[-1][-1]
        points = [point for curve in curves for point in (curve[0], curve[-1])]
        is_upright = abs(top.real - foot.real) < _ASKEW and top.imag < foot.imag
        if not is_upright or min(point.real for point in points) < top.real - _ASKEW:
            raise OutlineFaultError("fold")
    if laid.area <= 0:
        raise OutlineFaultError("direction")


_ASKEW = 0.5
"""Millimetres by which a fold may be askew: a drawing is no better."""


def edge_length(piece: Piece, name: str) -> float | None:
    """The length of the edges of this name together, in millimetres, as far as it is known.

    From the shape, else as the author states it.

    Raises
    ------
    OutlineFaultError
        When the shape does not fit the edges.
    """
    laid = lay(piece)
    places = [place for place, edge in enumerate(piece.edges) if edge.name == name]
    if laid is not None and all(laid.edges[place] for place in places):
        return sum(laid.length[place] for place in places)
    stated = dict(piece.lengths).get(name)
    return float(stated.mm) * len(places) if stated is not None else None
