"""Lay what is sewn together in the plane: pieces side by side at their seams, tubes folded flat.

1. One face stays where it is; it shows its outside, as the layer in front.
2. Of the others that hang on what lies already, the one with the longest seams comes next, large
   ones first. It is
   moved so that its edges meet theirs as well as they can (least squares, without stretching):
   once flat beside them, on the same layer; once turned over, on the other layer.
3. Beside is taken where the edges meet and no cloth of that layer lies there already, else turned
   over: so a tube lies folded, its front over its back.
4. If that leaves no place for what comes later, all is laid again, and large pieces are turned
   over first.
5. Strips, pockets and inner layers that find no place are left out, unless the step works on them.
   If anything else finds none, nothing is shown: a picture that could be misread is worse than
   none.
"""

from collections.abc import Container, Sequence
from typing import Final, NamedTuple

from seqplan.draw.map_lines import length_of
from seqplan.draw.pattern import Pattern
from seqplan.draw.unit_faces import (
    CannotLieFlatError,
    Face,
    Move,
    area_of,
    faces_of,
    is_narrow,
    size_of,
    spread,
)
from seqplan.model.piece import Layer, Segment, Worn
from seqplan.recipes.construction import Construction
from seqplan.surface.glued import Disc, Glue

_APART: Final = 0.24
"""How far edges may lie apart that are sewn together, in parts of the size of the piece."""
_NEAR: Final = 0.08
_TWINS: Final = 0.3
"""How much better the edges have to meet when a piece is turned over; the other copy of a piece."""
_HANGS: Final = 0.5
"""How much it counts that a sleeve hangs down, against how well its edges meet."""
_NOTHING: Final = 1e-9
_SQUARE: Final = (1 + 0j, 1j, -1 + 0j, -1j)
_SMALL: Final = 0.45
"""What is smaller than this, in parts of what lies first, may be left out."""
_GRID: Final = 5
_COVERED: Final = 0.3
"""How much of a piece may lie on others of its layer."""


class Placed(NamedTuple):
    """A face in its place.

    Parameters
    ----------
    face
        The face, moved there.
    is_behind
        Whether it lies on the far layer.
    is_over
        Whether it was turned over to lie there, so that its right side is away from who looks.
    """

    face: Face
    is_behind: bool = False
    is_over: bool = False

    def turned_over(self) -> "Placed":
        """The same seen from the other side; it still has to be mirrored."""
        edges = {
            segment: edge._replace(is_behind=not edge.is_behind)
            for segment, edge in self.face.edges.items()
        }
        return Placed(self.face._replace(edges=edges), not self.is_behind, not self.is_over)

    def lies_behind(self, segment: Segment) -> bool:
        """Whether an edge of it lies on the far layer."""
        edge = self.face.edges[segment]
        return edge.is_behind if self.face.is_folded else self.is_behind

    @property
    def is_far(self) -> bool:
        """Whether all of it lies on the far layer."""
        return self.is_behind and not self.face.is_folded


class _Pair(NamedTuple):
    """A place where an edge of a new face has to get to."""

    here: complex
    there: complex
    weight: float
    is_behind: bool
    """Whether it lies on the far layer."""
    is_over: bool
    """Whether the new face has to be turned over so that the cloth goes on flat there."""
    is_twin: bool
    """Whether it is another copy of the same piece."""
    is_lined: bool
    """Whether one side of the seam goes to the inside, and the other does not."""

    def layer(self, *, is_over: bool) -> float:
        """Which layer it speaks for, the far one above 0, if the new face is turned over or not."""
        is_far = self.is_behind != (is_over != self.is_over and not self.is_lined)
        return self.weight if is_far else -self.weight


class Placer:
    """Lays cut copies that are sewn together in the plane; what it has laid before it knows.

    Parameters
    ----------
    c
        The garment.
    pattern
        The pieces laid flat.
    """

    def __init__(self, c: Construction, pattern: Pattern) -> None:
        self.pattern = pattern
        self._c = c
        self._known: dict[object, tuple[Placed, ...] | None] = {}

    def place(
        self, discs: frozenset[Disc], glues: Sequence[Glue], wanted: frozenset[Disc] = frozenset()
    ) -> tuple[Placed, ...]:
        """Lay cut copies in the plane.

        Parameters
        ----------
        discs
            The cut copies, which hang together.
        glues
            The seams between them.
        wanted
            Those that must not be left out.

        Raises
        ------
        CannotLieFlatError
            When that cannot be done without being misread.
        """
        key = (discs, tuple(glues), wanted)
        if key not in self._known:
            try:
                self._known[key] = self._place(discs, glues, wanted)
            except CannotLieFlatError:
                self._known[key] = None
        found = self._known[key]
        if found is None:
            raise CannotLieFlatError
        return found

    def _place(
        self, discs: frozenset[Disc], glues: Sequence[Glue], wanted: frozenset[Disc]
    ) -> tuple[Placed, ...]:
        c, pattern = self._c, self.pattern
        faces: list[Face] = []
        for disc in sorted(discs, key=lambda disc: _rank(c, pattern, disc)):
            if disc[0] in pattern.pieces:
                own = [g for g in glues if disc in (c.rings.disc(g.first), c.rings.disc(g.second))]
                faces += faces_of(c, pattern, disc, own)
        if not faces:
            return ()
        large = area_of(faces[0].outline)
        small = {
            face.disc
            for face in faces[1:]
            if (area_of(face.outline) < _SMALL * large or face.is_inner) and face.disc not in wanted
        }
        try:
            return _laid(faces, glues, small, is_folded_first=False)
        except CannotLieFlatError:
            return _laid(faces, glues, small, is_folded_first=True)


def _laid(
    faces: Sequence[Face], glues: Sequence[Glue], small: Container[Disc], *, is_folded_first: bool
) -> tuple[Placed, ...]:
    waiting = list(faces)
    placed = [Placed(waiting.pop(0))]
    while waiting:
        pairs = [_pairs(face, placed, glues) for face in waiting]
        best = max(
            range(len(waiting)),
            key=lambda n: (
                bool(pairs[n]) and waiting[n].disc not in small,
                sum(pair.weight for pair in pairs[n]),
            ),
        )
        if not pairs[best]:
            # What hangs only on something that has been left out.
            break
        face = waiting.pop(best)
        try:
            is_small = face.disc in small
            way = _Way(is_folded_first and not is_small, is_small and is_narrow(face.outline))
            placed.append(_put(face, pairs[best], placed, way))
        except CannotLieFlatError:
            if face.disc not in small:
                raise
            waiting = [other for other in waiting if other.disc != face.disc]
            placed = [other for other in placed if other.face.disc != face.disc]
    if any(face.disc not in small for face in waiting):
        raise CannotLieFlatError
    return tuple(placed)


def _rank(c: Construction, pattern: Pattern, disc: Disc) -> tuple[bool, bool, float, Disc]:
    """What stays where it is: a front of the outer fabric, else the largest piece of it."""
    piece = c.garment.piece[disc[0]]
    size = size_of(pattern.pieces[disc[0]].ring) if disc[0] in pattern.pieces else 0.0
    return (piece.layer is not Layer.SHELL, piece.worn is not Worn.FRONT, -size, disc)


def _pairs(face: Face, placed: Sequence[Placed], glues: Sequence[Glue]) -> list[_Pair]:
    found = []
    for glue in glues:
        for mine, other in ((glue.first, glue.second), (glue.second, glue.first)):
            if mine not in face.edges:
                continue
            for there in placed:
                if other not in there.face.edges or there.face is face:
                    continue
                found += _met(face, mine, there, other, is_aligned=glue.aligned)
    return found


def _met(
    face: Face, mine: Segment, there: Placed, other: Segment, *, is_aligned: bool
) -> list[_Pair]:
    """Places on an edge of a new face, each with where it has to get to."""
    edge, line = face.edges[mine], there.face.edges[other].line
    is_far = there.face.edges[other].is_behind
    return [
        _Pair(
            here=a,
            there=b,
            weight=length_of(edge.line),
            is_behind=there.lies_behind(other) != edge.is_behind,
            is_over=(there.is_over != is_far) != edge.is_behind,
            is_twin=there.face.piece == face.piece,
            is_lined=there.face.is_inner != face.is_inner,
        )
        for a, b in zip(spread(edge.line), spread(line if is_aligned else line[::-1]), strict=True)
    ]


class _Way(NamedTuple):
    """How a face is put: turned over first, or, as a band may, on what lies there already."""

    is_over_first: bool
    may_cover: bool


def _put(face: Face, pairs: Sequence[_Pair], placed: Sequence[Placed], way: _Way) -> Placed:
    size = size_of(face.outline)
    is_twin = any(pair.is_twin for pair in pairs)
    flat = sum(pair.weight if pair.is_over else -pair.weight for pair in pairs) > 0
    for is_square in (False, True) if face.is_folded else (True, False):
        tried: list[tuple[float, Placed]] = []
        for is_over in (flat, not flat):
            move = _move(pairs, is_over=is_over, is_square=is_square)
            off = _off(move, pairs) / size
            is_far = sum(pair.layer(is_over=is_over) for pair in pairs) > 0
            found = Placed(face.moved(move), is_far and not face.is_folded, is_over)
            if off > (_TWINS if is_twin else _APART):
                continue
            # A band may lie on what it meets at the other side, as fronts that overlap do.
            is_free = way.may_cover and is_over == flat and off <= _NEAR
            is_free = is_free or _covered(found, placed) <= _COVERED
            if is_free:
                # Beside is taken unless turned over is much better.
                worse = (_TWINS if is_twin else _NEAR) * (is_over != flat)
                if way.is_over_first and not is_twin:
                    worse = 2 * _NEAR * (is_over == flat)
                if face.is_folded:
                    # A sleeve hangs down.
                    worse -= _centre(found.face.outline).imag / size * _HANGS
                tried.append((off + worse, found))
        if tried:
            return min(tried, key=lambda item: item[0])[1]
    raise CannotLieFlatError


def _move(pairs: Sequence[_Pair], *, is_over: bool, is_square: bool) -> Move:
    """The movement that brings edges together best.

    If ``is_square``, the piece is turned by nothing, half or a quarter, and at an upright seam it
    meets what it hangs on at the upper end.
    """
    here = [pair.here.conjugate() if is_over else pair.here for pair in pairs]
    there = [pair.there for pair in pairs]
    weights = [pair.weight for pair in pairs]
    middle, goal = _mean(here, weights), _mean(there, weights)
    turn = sum(
        w * (q - goal) * (p - middle).conjugate()
        for w, p, q in zip(weights, here, there, strict=True)
    )
    turn = turn / abs(turn) if abs(turn) > _NOTHING else 1 + 0j
    if is_square:
        turn = max(_SQUARE, key=lambda way: (way * turn.conjugate()).real)
        xs, ys = [p.real for p in there], [p.imag for p in there]
        if max(ys) - min(ys) > max(xs) - min(xs):
            top = min(range(len(there)), key=lambda n: (round(there[n].imag, 3), n))
            return Move(turn, there[top] - here[top] * turn, is_over)
    return Move(turn, goal - middle * turn, is_over)


def _centre(points: Sequence[complex]) -> complex:
    return sum(points) / len(points)


def _mean(points: Sequence[complex], weights: Sequence[float]) -> complex:
    return sum(w * p for w, p in zip(weights, points, strict=True)) / sum(weights)


def _off(move: Move, pairs: Sequence[_Pair]) -> float:
    """How far edges lie apart that should meet, on the average."""
    moved = move.points(pair.here for pair in pairs)
    total = sum(pair.weight for pair in pairs)
    square = sum(
        pair.weight * abs(at - pair.there) ** 2 for at, pair in zip(moved, pairs, strict=True)
    )
    return float((square / total) ** 0.5)


def _covered(found: Placed, placed: Sequence[Placed]) -> float:
    """How much of a face lies on others of its layer, or they on it; the worst of them."""
    spots = within(found.face.outline)
    box = _box(found.face.outline)
    worst = 0.0
    for other in placed:
        is_both = found.face.is_folded or other.face.is_folded
        is_same = is_both or other.is_behind == found.is_behind
        if not is_same or not spots or other.face.is_inner != found.face.is_inner:
            continue
        there = _box(other.face.outline)
        if box[0] < there[2] and there[0] < box[2] and box[1] < there[3] and there[1] < box[3]:
            theirs = within(other.face.outline)
            inside = sum(is_inside(spot, other.face.outline) for spot in spots)
            back = sum(is_inside(spot, found.face.outline) for spot in theirs)
            worst = max(worst, inside / len(spots), back / max(1, len(theirs)))
    return worst


def _box(outline: Sequence[complex]) -> tuple[float, float, float, float]:
    xs, ys = [p.real for p in outline], [p.imag for p in outline]
    return min(xs), min(ys), max(xs), max(ys)


def within(outline: Sequence[complex]) -> list[complex]:
    """Some spots inside an outline, spread over it."""
    left, top, right, bottom = _box(outline)
    width, height = right - left, bottom - top
    grid = (
        complex(left + width * (a + 0.5) / _GRID, top + height * (b + 0.5) / _GRID)
        for a in range(_GRID)
        for b in range(_GRID)
    )
    return [spot for spot in grid if is_inside(spot, outline)]


def is_inside(spot: complex, outline: Sequence[complex]) -> bool:
    """Whether a spot lies inside an outline: a ray from it crosses that an odd number of times."""
    is_in = False
    level = spot.imag
    before = outline[-1]
    was_below = before.imag > level
    for point in outline:
        is_below = point.imag > level
        if is_below != was_below:
            share = (level - point.imag) / (before.imag - point.imag)
            if spot.real < point.real + share * (before.real - point.real):
                is_in = not is_in
        before, was_below = point, is_below
    return is_in
