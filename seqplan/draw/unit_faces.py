"""Cut copies as flat shapes to be laid beside and behind one another.

A copy that is sewn to itself, such as a sleeve with its underarm closed, is folded along the line
that brings the two edges together. A strip, and whatever is as narrow, goes round corners: it is
cut across where its seams change from one neighbour to the next, and each part follows its own.
"""

from collections.abc import Iterable, Iterator, Mapping, Sequence
from itertools import pairwise
from typing import Final, NamedTuple

from seqplan.base.ids import PieceId
from seqplan.draw.map_lines import length_of, sampled
from seqplan.draw.pattern import Pattern, Sized
from seqplan.model.piece import Cut, Layer, Segment
from seqplan.recipes.construction import Construction
from seqplan.surface.glued import Disc, Glue

Points = tuple[complex, ...]

_NARROW: Final = 2.4
"""So many times longer than wide is narrow."""
_ASKEW: Final = 0.12
"""How far two edges may lie apart when a piece is folded, in parts of its size."""


class Edge(NamedTuple):
    """An edge of a face: its line from start to end, and whether it lies on the far layer."""

    line: Points
    is_behind: bool = False


class Face(NamedTuple):
    """A piece of cloth in the plane, right side up.

    Parameters
    ----------
    disc
        The cut copy that it is, or is a part of.
    outline
        All round.
    edges
        Its cut edges.
    is_folded
        Whether it is folded, so that it is both in front and behind.
    is_inner
        Whether it goes to the inside, as a lining does.
    """

    disc: Disc
    outline: Points
    edges: Mapping[Segment, Edge]
    is_folded: bool = False
    is_inner: bool = False

    @property
    def piece(self) -> PieceId:
        """What it is cut from."""
        return self.disc[0]

    def moved(self, move: "Move") -> "Face":
        """The same somewhere else."""
        edges = {
            segment: Edge(move.points(edge.line), edge.is_behind)
            for segment, edge in self.edges.items()
        }
        return self._replace(outline=move.points(self.outline), edges=edges)


class Move(NamedTuple):
    """A movement in the plane: turned over first if ``is_over``, then turned, then shifted."""

    turn: complex
    shift: complex
    is_over: bool = False

    def points(self, points: Iterable[complex]) -> Points:
        """Where points get to."""
        if self.is_over:
            return tuple(point.conjugate() * self.turn + self.shift for point in points)
        return tuple(point * self.turn + self.shift for point in points)


class CannotLieFlatError(ValueError):
    """What is sewn together cannot be shown in the plane without being misread."""


def faces_of(
    c: Construction, pattern: Pattern, disc: Disc, glues: Sequence[Glue]
) -> tuple[Face, ...]:
    """Lay a cut copy flat by itself: whole, folded, or cut across.

    Parameters
    ----------
    c
        The garment.
    pattern
        The pieces laid flat.
    disc
        The cut copy.
    glues
        The seams on it.

    Raises
    ------
    CannotLieFlatError
        When it is sewn to itself so that no fold brings the edges together.
    """
    piece = c.garment.piece[disc[0]]
    sized = pattern.pieces[disc[0]]
    edges = {
        segment: Edge(_line(sized, segment, piece.cut))
        for segment in c.rings.on(disc)
        if segment.place in sized.edges
    }
    outline = sized.ring
    if piece.cut is Cut.PAIR and any(segment.is_mirrored for segment in edges):
        outline = tuple(complex(-p.real, p.imag) for p in reversed(outline))
    face = Face(disc, outline, edges, is_inner=piece.layer is not Layer.SHELL)
    at_others = [g for g in glues if c.rings.disc(g.first) != c.rings.disc(g.second)]
    itself = [g for g in glues if c.rings.disc(g.first) == c.rings.disc(g.second)]
    if is_narrow(outline) and len(at_others) > 1:
        return tuple(_slices(face, at_others))
    return (_folded(face, itself),) if itself else (face,)


def _line(sized: Sized, segment: Segment, cut: Cut) -> Points:
    line = sized.edges[segment.place]
    if not segment.is_mirrored or cut is Cut.ALIKE:
        return line
    axis = 2 * sized.axis if cut is Cut.FOLD else 0.0
    return tuple(complex(axis - p.real, p.imag) for p in line)


def is_narrow(outline: Sequence[complex]) -> bool:
    """Whether it is a strip by its shape."""
    xs, ys = [p.real for p in outline], [p.imag for p in outline]
    sides = (max(xs) - min(xs), max(ys) - min(ys))
    return max(sides) > _NARROW * min(sides)


# -- folded --------------------------------------------------------------------------------


def _folded(face: Face, glues: Sequence[Glue]) -> Face:
    """Fold a face so that the edges which are sewn together lie on one another."""
    one, other = _ends(face, glues[0])
    middle = (_centre(one) + _centre(other)) / 2
    normal = _centre(other) - _centre(one)
    if abs(normal) < 1e-6:
        raise CannotLieFlatError
    normal /= abs(normal)
    for glue in glues:
        first, second = _ends(face, glue)
        away = [abs(_over(a, middle, normal) - b) for a, b in zip(first, second, strict=True)]
        if max(away) > _ASKEW * size_of(face.outline):
            raise CannotLieFlatError
    outline = _half(face.outline, middle, normal)
    edges: dict[Segment, Edge] = {}
    for segment, edge in face.edges.items():
        is_far = _beyond(_centre(edge.line), middle, normal) > 0
        edges[segment] = Edge(_folded_line(edge.line, middle, normal), is_far)
    return face._replace(outline=outline, edges=edges, is_folded=True)


def _folded_line(line: Points, middle: complex, normal: complex) -> Points:
    """A line with what lies beyond a fold folded back."""
    found = [line[0]]
    for one, other in pairwise(line):
        a, b = _beyond(one, middle, normal), _beyond(other, middle, normal)
        if a * b < 0:
            found.append(one + (other - one) * a / (a - b))
        found.append(other)
    return tuple(_over(p, middle, normal) if _beyond(p, middle, normal) > 0 else p for p in found)


def _ends(face: Face, glue: Glue) -> tuple[Points, Points]:
    """Some points of both edges of a seam, in the order in which they meet."""
    first, second = face.edges[glue.first].line, face.edges[glue.second].line
    return spread(first), spread(second if glue.aligned else second[::-1])


def spread(line: Sequence[complex]) -> Points:
    """The start, the middle and the end of a line."""
    total = length_of(line)
    middle = next(sampled(line, 1, total / 2, total))[0] if total else line[0]
    return (line[0], middle, line[-1])


def _centre(points: Sequence[complex]) -> complex:
    found = spread(points)
    return sum(found) / len(found)


def _beyond(point: complex, middle: complex, normal: complex) -> float:
    return ((point - middle) * normal.conjugate()).real


def _over(point: complex, middle: complex, normal: complex) -> complex:
    return point - 2 * _beyond(point, middle, normal) * normal


def _half(outline: Points, middle: complex, normal: complex) -> Points:
    """What of an outline lies on the near side of a line."""
    found: list[complex] = []
    for one, other in pairwise((*outline, outline[0])):
        a, b = _beyond(one, middle, normal), _beyond(other, middle, normal)
        if a <= 0:
            found.append(one)
        if a * b < 0:
            found.append(one + (other - one) * a / (a - b))
    return tuple(found)


# -- cut across ----------------------------------------------------------------------------


def _slices(face: Face, glues: Sequence[Glue]) -> Iterator[Face]:
    """Cut a narrow face across, at the ends of the edges that are sewn to others."""
    sewn = [s for s in face.edges if any(s in (g.first, g.second) for g in glues)]
    xs, ys = [p.real for p in face.outline], [p.imag for p in face.outline]
    along = 1 + 0j if max(xs) - min(xs) > max(ys) - min(ys) else 1j
    ends = [_beyond(p, 0j, along) for s in sewn for p in _tips(face.edges[s].line)]
    reach = [_beyond(p, 0j, along) for p in face.outline]
    marks = sorted({round(at, 3) for at in ends if min(reach) + 1 < at < max(reach) - 1})
    bounds = [min(reach) - 1, *marks, max(reach) + 1]
    for low, high in pairwise(bounds):
        outline = _half(_half(face.outline, along * high, along), along * low, -along)
        edges = {
            segment: edge
            for segment, edge in face.edges.items()
            if low < _beyond(_centre(edge.line), 0j, along) < high
            and all(low - 1 < _beyond(p, 0j, along) < high + 1 for p in _tips(edge.line))
        }
        if len(outline) > 2:
            yield face._replace(outline=outline, edges=edges)


def _tips(line: Points) -> Points:
    return (line[0], line[-1])


def area_of(points: Sequence[complex]) -> float:
    """How much an outline goes round."""
    ways = pairwise((*points, points[0]))
    return abs(sum(a.real * b.imag - a.imag * b.real for a, b in ways)) / 2


def size_of(points: Sequence[complex]) -> float:
    """The longer side of the box round some points."""
    xs, ys = [p.real for p in points], [p.imag for p in points]
    return max(max(xs) - min(xs), max(ys) - min(ys))
