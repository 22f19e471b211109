"""All pieces flat, at one scale: what the map and the unit in hand are drawn from.

A piece with a shape has its own size. Sketches know no size, so each is drawn so large that the
edges which are sewn together are alike long, as far as that can be. It is found by going round all
seams a few times, and each time letting every piece meet its neighbours half way:

1. Each entry that glues edges, or lets some ride on others, gives an equation: the edges on one
   side are as long together as those on the other.
2. Pieces with a shape keep their size; a sketch takes the mean of what its equations ask for, in
   which long edges count for more.
3. What is only laid on the face of another piece is given a share of its size.
4. A strip that has to be longer does not grow as much wider.

Cost: a few rounds over the seams.
"""

from collections.abc import Iterable, Iterator, Mapping
from functools import cached_property
from itertools import pairwise
from math import exp, log
from typing import Final, NamedTuple

from seqplan.base.ids import PieceId
from seqplan.draw.map_edges import laid_out, ring_of, split_edges, whole_edges
from seqplan.model.entry import Verb
from seqplan.model.piece import Segment
from seqplan.recipes.construction import Construction
from seqplan.recipes.shape import Shape
from seqplan.shape.outline import lay
from seqplan.surface.glued import Glue

_ROUNDS: Final = 16
_STEP: Final = 0.7
"""How many rounds there are, and how far a piece goes to meet its neighbours in each."""
_FURTHEST: Final = log(4.0)
"""A sketch is drawn at most so many times larger or smaller than sketches are."""
_ON_A_FACE: Final[Mapping[Verb, float]] = {
    Verb.PATCH_POCKET: 0.34,
    Verb.IN_SEAM_POCKET: 0.34,
    Verb.WELT_POCKET: 0.3,
    Verb.ATTACH: 0.4,
    Verb.INSERT: 0.45,
}
"""How large what is laid on a piece is, in parts of the size of that piece."""


class Sized(NamedTuple):
    """A piece laid flat, right side up, the half or copy that is described.

    Parameters
    ----------
    edges
        The line of each edge, by its place among the edges as the operations split them.
    ring
        Its outline all round; of a fold, of both halves.
    axis
        Where its fold is, or its left end.
    fold
        The line of its fold, if it is cut on one.
    names
        The name of each edge, by its place.
    """

    edges: Mapping[int, tuple[complex, ...]]
    ring: tuple[complex, ...]
    axis: float
    fold: tuple[complex, ...]
    names: tuple[str, ...] = ()

    @property
    def size(self) -> tuple[float, float]:
        """How wide and how tall it is."""
        xs, ys = [p.real for p in self.ring], [p.imag for p in self.ring]
        return max(xs) - min(xs), max(ys) - min(ys)

    def times(self, across: float, down: float | None = None) -> "Sized":
        """The same so many times as wide, and as tall."""
        by = complex(across, across if down is None else down)
        return Sized(
            {place: _times(points, by) for place, points in self.edges.items()},
            _times(self.ring, by),
            self.axis * across,
            _times(self.fold, by),
            self.names,
        )


class Pattern:
    """The pieces of a garment, flat and at one scale.

    Parameters
    ----------
    c
        The garment. Pieces without edges are left out.
    """

    def __init__(self, c: Construction) -> None:
        self._c = c

    @cached_property
    def pieces(self) -> Mapping[PieceId, Sized]:
        """Every piece with edges, in millimetres where shapes are given, else in sketch units."""
        usual, factors = self._factors()
        found = {}
        for id_, piece in self._plain.items():
            more = exp(factors[id_] - usual)
            is_long = self._c.garment.piece[id_].is_strip and more > 1
            found[id_] = piece.times(
                exp(factors[id_]), exp(usual) * (more**0.5 if is_long else more)
            )
        return found

    @cached_property
    def _plain(self) -> Mapping[PieceId, Sized]:
        found = {}
        for piece in self._c.garment.pieces:
            if not piece.edges:
                continue
            laid = laid_out(piece)
            lines = whole_edges(laid)
            drawn = [line for line in lines if line]
            start, end = drawn[0][0], drawn[-1][-1]
            found[piece.id] = Sized(
                split_edges(self._c, piece, lines, is_fold=laid.is_fold),
                ring_of(lines, is_fold=laid.is_fold),
                start.real,
                (start, end) if laid.is_fold else (),
                tuple(edge.name for edge in self._c.rings.pieces[piece.id].edges),
            )
        return found

    def _factors(self) -> tuple[float, dict[PieceId, float]]:
        """How many times larger pieces are than sketches, usually and each: their logarithms."""
        fixed = {id_ for id_ in self._plain if lay(self._c.garment.piece[id_]) is not None}
        usual = self._usual(fixed) if fixed else 0.0
        found = {id_: 0.0 if id_ in fixed else usual for id_ in self._plain}
        equations = list(self._equations())
        weights = _weights(equations)
        for _ in range(_ROUNDS):
            for one, other in equations:
                apart = log(_total(one, found) / _total(other, found))
                for side, sign in ((one, -1), (other, 1)):
                    for id_ in side.keys() - fixed:
                        found[id_] += sign * apart * _STEP * side[id_] / weights[id_]
        if not fixed:
            middle = sum(found.values()) / len(found) if found else 0.0
            found = {id_: factor - middle for id_, factor in found.items()}
        for id_ in found.keys() - fixed:
            found[id_] = min(max(found[id_], usual - _FURTHEST), usual + _FURTHEST)
        settled = fixed | {id_ for one, other in equations for id_ in (*one, *other)}
        for id_, ground, share in self._on_faces():
            if id_ not in settled:
                wanted = share * max(self._plain[ground].size) * exp(found[ground])
                found[id_] = log(wanted / max(self._plain[id_].size))
        return usual, found

    def _usual(self, fixed: Iterable[PieceId]) -> float:
        """How many times larger than sketches the pieces with shapes are."""
        sizes = sorted(max(self._plain[id_].size) for id_ in fixed)
        return log(sizes[len(sizes) // 2] / _SKETCHED)

    def _equations(self) -> Iterator[tuple[dict[PieceId, float], dict[PieceId, float]]]:
        """The lengths on both sides of every seam, by the pieces that they belong to."""
        for shape in self._c.shapes.values():
            for glues in _sides(shape):
                one: dict[PieceId, float] = {}
                other: dict[PieceId, float] = {}
                for first, second in glues:
                    for side, segment in ((one, first), (other, second)):
                        side[segment.piece] = side.get(segment.piece, 0.0) + self._length(segment)
                if one and other and not one.keys() & other.keys():
                    yield one, other

    def _length(self, segment: Segment) -> float:
        points = self._plain[segment.piece].edges.get(segment.place, (0j, 1 + 0j))
        return sum(abs(b - a) for a, b in pairwise(points))

    def _on_faces(self) -> Iterator[tuple[PieceId, PieceId, float]]:
        """What is laid on the face or along the edge of another piece, and its share."""
        for entry in self._c.garment.entries:
            share = _ON_A_FACE.get(entry.verb)
            grounds = [*(p.piece for p in entry.places), *(ref.piece for ref in entry.run)]
            ground = next((id_ for id_ in grounds if id_ in self._plain), None)
            if share is None or ground is None:
                continue
            for id_ in (*entry.pieces, *entry.partners):
                if id_ in self._plain and id_ != ground:
                    yield id_, ground, share


_SKETCHED: Final = 130.0
"""How large a sketch of a piece of the usual size is."""


def _sides(shape: Shape) -> Iterator[list[tuple[Segment, Segment]]]:
    """The pairs of edges that an entry joins, those of one side first; riders by themselves."""
    glues = (glue for glue in shape.glues if glue.first.piece != glue.second.piece)
    yield [_first_side(glue, shape.to) for glue in glues]
    for rider in shape.riders:
        yield [(rider.first, rider.second)]


def _first_side(glue: Glue, to: frozenset[Segment]) -> tuple[Segment, Segment]:
    if glue.first in to and glue.second not in to:
        return glue.second, glue.first
    return glue.first, glue.second


def _weights(equations: Iterable[tuple[dict[PieceId, float], ...]]) -> dict[PieceId, float]:
    """How long the edges of each piece are together that are sewn to others."""
    found: dict[PieceId, float] = {}
    for equation in equations:
        for side in equation:
            for id_, length in side.items():
                found[id_] = found.get(id_, 0.0) + length
    return found


def _total(side: Mapping[PieceId, float], factors: Mapping[PieceId, float]) -> float:
    return sum(length * exp(factors[id_]) for id_, length in side.items())


def _times(points: tuple[complex, ...], by: complex) -> tuple[complex, ...]:
    return tuple(complex(point.real * by.real, point.imag * by.imag) for point in points)
