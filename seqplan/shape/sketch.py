"""A shape for a piece that tells none: a sketch, made of the list of its edges alone.

Edges that the trade has at the top of a piece (waist, neck, shoulder, cap, mouth) are laid along
the top of a box, those that it has at the foot (hem, wrist, lower) along its foot, and what lies
between them in the list along its sides. Edges that are always curved are drawn so. A ring that
does not fit into a box in this way is laid round it in its order. The sketch is not to scale, but
keeps the proportions of lengths that are stated.
"""

from collections.abc import Iterable, Sequence
from functools import lru_cache
from itertools import pairwise
from typing import Final, NamedTuple

from seqplan.model.piece import Cut, Layer, Piece
from seqplan.shape.curve import Curve, Path, cut, path_length
from seqplan.shape.outline import Laid, runs_of
from seqplan.shape.pathdata import arc

_AT_TOP: Final = frozenset(
    {"attach", "cap", "crown", "mouth", "neck", "neckline", "shoulder", "top", "upper", "waist"}
)
_AT_FOOT: Final = frozenset({"bottom", "foot", "hem", "lower", "wrist"})
_HOLLOW: Final = frozenset({"armhole", "crotch"})
_ROUND: Final = frozenset({"curve", "round"})
_NECK: Final = frozenset({"neck", "neckline"})
_CENTRE: Final = frozenset({"centre", "center", "edge", "front", "opening"})
"""Edges of a pair that lie in the middle of the garment, so that each copy is a half."""

_LONG: Final = 160.0
_WIDE: Final = 100.0
_HALF: Final = 62.0
"""Millimetres of a strip, of a piece, and of the half of one."""

_STRIP: Final = 0.2
_LOW: Final = 0.3
_SHALLOW: Final = 0.5
_DEEP: Final = 1.3
"""How deep strips, collars, facings and other pieces are, in parts of their width."""


class _Box(NamedTuple):
    """The groups of edges along each side of a box, clockwise from its upper left corner."""

    top: tuple[int, ...]
    right: tuple[int, ...]
    foot: tuple[int, ...]
    left: tuple[int, ...] = ()


@lru_cache(maxsize=512)
def sketch(piece: Piece) -> Laid:
    """Lay a piece out as a sketch of its edges.

    Parameters
    ----------
    piece
        A piece with at least one edge.

    Returns
    -------
    Laid
        The line of each edge; equal lists of edges give equal sketches.
    """
    return _Sketch(piece).laid()


class _Sketch:
    def __init__(self, piece: Piece) -> None:
        self._piece = piece
        self._runs = runs_of(piece.edges)
        self._is_fold = piece.cut is Cut.FOLD
        self._box = self._boxed()
        self._width, self._depth = self._size()

    def laid(self) -> Laid:
        if len(self._runs) == 1 and not self._is_fold:
            return self._round()
        corners = self._corners()
        lines: dict[int, Path] = {}
        order = [*self._box.top, *self._box.right, *self._box.foot, *self._box.left]
        for group, (start, end) in zip(order, pairwise(corners), strict=True):
            path = self._path(group, start, end)
            lines.update(zip(self._runs[group], self._parts(group, path), strict=True))
        edges = range(len(self._piece.edges))
        return Laid(tuple(lines.get(place, ()) for place in edges), self._is_fold)

    def _round(self) -> Laid:
        """A piece with one edge all round: a circle that begins at its top."""
        radius = self._width / 2
        top, foot = complex(radius, 0), complex(radius, 2 * radius)
        path: list[Curve] = []
        for start, end in ((top, foot), (foot, top)):
            for points in arc(start, end, (radius, radius), 0, False, True):
                path.append((path[-1][-1] if path else top, *points))
        lines = dict(zip(self._runs[0], self._parts(0, tuple(path)), strict=True))
        return Laid(tuple(lines.get(place, ()) for place in range(len(self._piece.edges))))

    # -- what lies where -------------------------------------------------------------------

    def _words(self, group: int) -> frozenset[str]:
        """The words in the names of the edges between two corners."""
        names = (self._piece.edges[place].name.casefold() for place in self._runs[group])
        return frozenset(word for name in names for word in name.replace("_", "-").split("-"))

    def _is(self, group: int, words: frozenset[str]) -> bool:
        return bool(self._words(group) & words)

    def _boxed(self) -> _Box:
        groups = range(len(self._runs))
        if not self._piece.is_strip:
            found = self._half_box(groups) if self._is_fold else self._whole_box(groups)
            if found is not None:
                return found
        return self._plain_box(tuple(groups))

    def _half_box(self, groups: Sequence[int]) -> _Box | None:
        """From the top of the fold: what is at the top, at the side, and at the foot."""
        kinds = [self._kind(group) for group in groups]
        top = _run_length(kinds, "top")
        foot = _run_length(kinds[::-1], "foot")
        middle = kinds[top : len(kinds) - foot]
        if not top or not foot or set(middle) - {"side"}:
            return None
        end = len(kinds) - foot
        return _Box(tuple(groups[:top]), tuple(groups[top:end]), tuple(groups[end:]))

    def _whole_box(self, groups: Sequence[int]) -> _Box | None:
        """From the first edge at the top round to the last at the left."""
        kinds = [self._kind(group) for group in groups]
        starts = [g for g in groups if kinds[g] == "top" and kinds[g - 1] != "top"]
        if len(starts) != 1:
            return None
        turned = [*groups[starts[0] :], *groups[: starts[0]]]
        kinds = [kinds[group] for group in turned]
        top = _run_length(kinds, "top")
        right = _run_length(kinds[top:], "side")
        foot = _run_length(kinds[top + right :], "foot")
        if not foot or not right or set(kinds[top + right + foot :]) != {"side"}:
            return None
        ends = (0, top, top + right, top + right + foot, len(turned))
        return _Box(*(tuple(turned[one:other]) for one, other in pairwise(ends)))

    def _plain_box(self, groups: tuple[int, ...]) -> _Box:
        """Round the box in the order of the list, the first edge at the top."""
        if self._is_fold:
            return _Box(groups[:1], groups[1:-1], groups[-1:] if len(groups) > 1 else ())
        if len(groups) == 2:
            return _Box(groups[:1], (), groups[1:])
        right = max(1, (len(groups) - 2) // 2)
        return _Box(
            groups[:1], groups[1 : 1 + right], groups[1 + right : 2 + right], groups[2 + right :]
        )

    def _kind(self, group: int) -> str:
        if self._is(group, _AT_FOOT):
            return "foot"
        return "top" if self._is(group, _AT_TOP) else "side"

    def _size(self) -> tuple[float, float]:
        """Width and depth, from what is stated about the top and a side where that is known."""
        piece = self._piece
        is_half = self._is_fold or (piece.cut is Cut.PAIR and self._has_centre())
        width = _HALF if is_half else _WIDE
        depth = _WIDE * self._proportion()
        if piece.is_strip:
            width = _LONG / 2 if self._is_fold else _LONG
            depth = _LONG * _STRIP
        elif self._are(self._box.right, "long") and self._are(self._box.left, "long"):
            width = depth * _STRIP
        across = self._stated(self._box.top) or self._stated(self._box.foot)
        down = self._stated(self._box.right) or self._stated(self._box.left)
        if across and down and 0.05 < down / across < 20:
            return width, width * down / across
        return width, depth

    def _has_centre(self) -> bool:
        """Whether one of its sides lies in the middle of the garment."""
        return any(self._is(group, _CENTRE) for group in (*self._box.left, *self._box.right))

    def _proportion(self) -> float:
        """How deep it is: a collar or band has ends, a yoke no side, a facing is a facing."""
        piece, right = self._piece, self._box.right
        is_ended = len(self._runs) == 2 and "end" in self._words(0)
        if is_ended or self._are(right, "end"):
            return _LOW if self._is_fold else _SHALLOW
        is_facing = piece.layer is Layer.FACING and piece.like is None
        return _SHALLOW if is_facing or self._are(right, "armhole") else _DEEP

    def _are(self, groups: Sequence[int], word: str) -> bool:
        return bool(groups) and all(word in self._words(group) for group in groups)

    def _stated(self, groups: Iterable[int]) -> float:
        """The length of some edges together; 0 where one of them is not stated."""
        known = dict(self._piece.lengths)
        names = [self._piece.edges[place].name for group in groups for place in self._runs[group]]
        if not names or any(name not in known for name in names):
            return 0.0
        return sum(float(known[name].mm) for name in names)

    # -- corners ---------------------------------------------------------------------------

    def _corners(self) -> list[complex]:
        """The corners in their order, the first of them again at the end unless it is a fold."""
        box, width, depth = self._box, self._width, self._depth
        flare = self._flare()
        top_left, top_right = 0j, complex(width, 0)
        foot_right, foot_left = complex(width + flare, depth), complex(-flare, depth)
        if self._is_fold:
            foot_left = complex(0, depth)
            if not box.foot:
                foot_right = foot_left
        elif not box.left:
            foot_left = top_left
        top_left, top_right = self._lowered(top_left, top_right)
        if not box.right and not self._is_fold:
            foot_right = top_right
        elif not box.right:
            top_right = foot_right
        found = [top_left]
        found += self._along_top(top_left, top_right)
        found += self._along_side(box.right, top_right, foot_right, outwards=1)
        found += _evenly(foot_right, foot_left, len(box.foot))
        found += self._along_side(box.left, foot_left, top_left, outwards=-1)
        return found

    def _flare(self) -> float:
        """How much further out the foot lies: of a skirt or trousers, of a sleeve further in."""
        words = frozenset(word for group in self._box.top for word in self._words(group))
        if "cap" in words:
            return -0.1 * self._width
        is_hemmed = any(self._is(group, frozenset({"hem"})) for group in self._box.foot)
        return 0.1 * self._width if "waist" in words and is_hemmed else 0.0

    def _lowered(self, left: complex, right: complex) -> tuple[complex, complex]:
        """The upper corners: lower at a neck, a cap and a shoulder, further in at an armhole."""
        box, width, depth = self._box, self._width, self._depth
        if any(self._is(group, frozenset({"cap"})) for group in box.top):
            low = 0.32 * depth * 1j
            return (left if self._is_fold else left + low), right + low
        if box.right and self._is(box.right[0], frozenset({"armhole"})):
            right += complex(-0.16 * width, 0.05 * depth)
        if box.left and self._is(box.left[-1], frozenset({"armhole"})):
            left += complex(0.16 * width, 0.05 * depth)
        if len(box.top) > 1 and self._is(box.top[0], _NECK):
            left += 0.12 * depth * 1j
        return left, right

    def _along_top(self, left: complex, right: complex) -> list[complex]:
        """Corners along the top; those beside a shoulder lie highest."""
        groups = self._box.top
        if len(groups) < 2:
            return [right] if groups else []
        found = [complex(point.real, 0) for point in _evenly(left, right, len(groups))[:-1]]
        return [*found, right]

    def _along_side(
        self, groups: Sequence[int], start: complex, end: complex, outwards: int
    ) -> list[complex]:
        """Corners along a side: those of an armhole and a crotch lie where the trade has them."""
        found = _evenly(start, end, len(groups))
        for place in range(len(groups) - 1):
            one, other = groups[place], groups[place + 1]
            width, depth = self._width, self._depth
            if "armhole" in self._words(one) | self._words(other):
                side = complex(width, 0) if outwards > 0 else 0j
                found[place] = side + 0.38 * depth * 1j
            elif "crotch" in self._words(one) | self._words(other):
                side = complex(width, 0) if outwards > 0 else 0j
                found[place] = side + complex(outwards * 0.22 * width, 0.42 * depth)
        return found

    # -- lines -----------------------------------------------------------------------------

    def _path(self, group: int, start: complex, end: complex) -> Path:
        words, box = self._words(group), self._box
        if "cap" in words and group in box.top:
            return self._cap(start, end)
        if len(self._runs) == 2 and self._is_fold and group == 0:
            return ((start, start + self._width, complex(end.real, start.imag), end),)
        is_second = not self._is_fold and len(self._runs) == 2 and group == 1
        if len(self._runs) == 1 or is_second or words & _ROUND:
            return (_bulging(start, end),)
        if words & _HOLLOW:
            return (_hollow(start, end),)
        return (self._neck(group, start, end) if words & _NECK else (start, end),)

    def _neck(self, group: int, start: complex, end: complex) -> Curve:
        """A neck: level at the fold or the centre and steep at the shoulder, or one dip."""
        chord, top = end - start, self._box.top
        if group not in top or len(top) == 1:
            return (start, start + 0.5 * chord + 0.06 * abs(chord) * 1j, end)
        if group == top[0]:
            return (start, start + 0.6 * chord.real, end - 0.5j * chord.imag, end)
        dip = 0.14 * self._depth * 1j
        return (start, start + dip, end + dip, end)

    def _cap(self, start: complex, end: complex) -> Path:
        """A cap: hollow at its ends and round on top."""
        low, middle = max(start.imag, end.imag), (start + end).real / 2
        if self._is_fold:
            return (_s_curve(start, end),)
        top = complex(middle, 0.0)
        left = tuple(reversed(_s_curve(top, complex(start.real, low))))
        return (left, _s_curve(top, complex(end.real, low)))

    def _parts(self, group: int, path: Path) -> list[Path]:
        """The line of each edge between two corners: as long as stated, or all alike."""
        if len(self._runs[group]) == 1:
            return [path]
        known = dict(self._piece.lengths)
        names = [self._piece.edges[place].name for place in self._runs[group]]
        is_stated = all(name in known and known[name].mm > 0 for name in names)
        shares = [float(known[name].mm) if is_stated else 1.0 for name in names]
        total, found = path_length(path), []
        for share in shares[:-1]:
            part, path = cut(path, total * share / sum(shares))
            found.append(part)
        return [*found, path]


def _run_length(kinds: Sequence[str], kind: str) -> int:
    """How many of these stand at the beginning."""
    return next((n for n, other in enumerate(kinds) if other != kind), len(kinds))


def _evenly(start: complex, end: complex, count: int) -> list[complex]:
    """So many points, alike far apart, the last of them at the end."""
    return [start + (end - start) * (n + 1) / count for n in range(count)]


def _hollow(start: complex, end: complex) -> Curve:
    """A curve into the cloth: steep at its narrower end and level at its wider one."""
    narrow, wide = (start, end) if start.imag < end.imag else (end, start)
    steep = complex(narrow.real, narrow.imag + 0.75 * (wide.imag - narrow.imag))
    level = complex(wide.real - 0.75 * (wide.real - narrow.real), wide.imag)
    return (start, steep, level, end) if narrow == start else (start, level, steep, end)


def _s_curve(top: complex, foot: complex) -> Curve:
    """Level at both ends: from the top of a cap down to its end."""
    reach = 0.5 * (foot.real - top.real)
    return (top, top + reach, foot - 0.6 * reach, foot)


def _bulging(start: complex, end: complex) -> Curve:
    """A curve out of the cloth, clockwise round it."""
    outwards = (end - start) * -1j * 0.45
    return (start, start + outwards, end + outwards, end)
