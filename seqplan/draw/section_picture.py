"""Draw a section: plies as bands with teeth on the right side, rows as lines that cross them."""

from collections.abc import Iterable, Iterator
from itertools import pairwise
from math import ceil, hypot
from typing import Final

from seqplan.base.ids import OpId
from seqplan.draw.cloth import Cloth, End, Ply, Point, Row, Section, Stitch
from seqplan.draw.figure import (
    INK,
    PAPER,
    TONE,
    Area,
    Disc,
    Figure,
    Group,
    Line,
    Mark,
    Spot,
    Strokes,
    Words,
    moved_by,
)
from seqplan.draw.leaders import LEADING, SIZE, Columns, Named, name_things, widest
from seqplan.draw.textwidth import text_width
from seqplan.words.say import say

_X: Final = 2.6
_LEVEL: Final = 11.0
"""Points to a millimetre of a section, and to a level."""
_THICK: Final = 5.0
_RADIUS: Final = 3.4
_TOOTH: Final = 2.1
_PITCH: Final = 7.0
_MARGIN: Final = 5.0
_COLUMN: Final = 44.0
_NARROWEST: Final = 130.0
_NUMBER: Final = 5.2
_BELOW: Final = 11.0

_PEN: Final[dict[Stitch, tuple[float, tuple[float, ...]]]] = {
    Stitch.SEAM: (1.5, ()),
    Stitch.OVERLOCK: (1.5, (6, 1.2)),
    Stitch.BASTING: (1.2, (5, 3)),
    Stitch.STAYSTITCHING: (1.2, (1.6, 1.6)),
    Stitch.UNDERSTITCHING: (1.4, (4, 1.4, 1, 1.4)),
    Stitch.TOPSTITCHING: (1.5, (3, 1.5)),
    Stitch.HEM: (1.5, ()),
    Stitch.HAND: (1.2, (1.2, 1.4)),
    Stitch.GATHERING: (1.2, (5, 3)),
}
_CORE: Final[dict[Cloth, tuple[float, tuple[float, ...]] | None]] = {
    Cloth.SHELL: None,
    Cloth.FACING: (1.2, (4, 2.4)),
    Cloth.LINING: (1.3, (0.01, 3.2)),
    Cloth.INTERLINING: (1.2, (0.8, 1.2)),
    Cloth.NOTION: (_THICK - 1.4, ()),
}
"""What runs along the middle of a ply, by what it is cut from."""


def draw_section(section: Section, op: OpId, title: str, words: str) -> Figure:
    """Draw a section.

    Parameters
    ----------
    section
        What is drawn.
    op
        The operation that the picture is for; its rows are heavier.
    title, words
        Title and text for who cannot see it.
    """
    return _Drawing(section, op).figure(title, words)


class _Drawing:
    def __init__(self, section: Section, op: OpId) -> None:
        self.section = section
        self.op = op
        points = [point for ply in section.plies for point in ply.points]
        points += [p for row in section.rows for p in (row.start, row.end)]
        xs, ys = zip(*points, strict=True)
        self.left, self.right = min(xs), max(xs)
        self.top, self.bottom = max(ys), min(ys)
        names = [ply.material.title for ply in section.plies]
        column = widest(names, _COLUMN)
        room = (self.right - self.left) * _X
        self.x0 = _MARGIN + column + 9
        self.columns_width = column
        self.width = self.x0 + room + 9 + column + _MARGIN
        self.y0 = _MARGIN + (LEADING + 4 if section.is_outside_up else 4)

    def at(self, point: Point) -> Spot:
        """A place of the section on the canvas."""
        x = self.x0 + (point[0] - self.left) * _X
        return x, self.y0 + (self.top - point[1]) * _LEVEL + _THICK / 2

    def figure(self, title: str, words: str) -> Figure:
        low = self.at((0, self.bottom))[1] + _THICK / 2 + 4
        columns = Columns(
            self.x0 - 9,
            self.width - _MARGIN - self.columns_width,
            self.columns_width,
            self.columns_width,
            self.y0 - 2,
            max(low, self.y0 + 3 * LEADING),
        )
        placed, down = name_things(self._names(), columns, self._obstacles())
        named = self._without_spare_room(placed)
        marks: list[Mark] = [self._ply(ply) for ply in self._from_below()]
        marks += self._rows()
        low = max(low, down) if not self.section.rows else low
        numbers, low = self._numbers(low)
        low = max(low, down) + 3
        marks += numbers
        marks += named
        marks += self._ways_up(low)
        low += LEADING + 1
        key, low = self._key(low)
        return Figure(ceil(self.width), ceil(low + _MARGIN), title, words, (*marks, *key))

    def _without_spare_room(self, named: Iterable[Mark]) -> list[Mark]:
        """Names in columns no wider than they need: the narrower a picture, the larger its print.

        The drawing moves to the left with its names.
        """
        words = [mark for mark in named if isinstance(mark, Words)]
        left, right = (
            max((text_width(w.text, SIZE) for w in words if w.anchor == anchor), default=-7.0)
            for anchor in ("end", "start")
        )
        spare = self.columns_width - left
        self.x0 -= spare
        width = self.width - spare - (self.columns_width - right)
        wider = max(0.0, _NARROWEST - width)
        self.width = width + wider
        return [moved_by(mark, -spare, 0) for mark in named]

    # -- plies ---------------------------------------------------------------------------

    def _from_below(self) -> list[Ply]:
        return sorted(
            self.section.plies, key=lambda ply: sum(y for _, y in ply.points) / len(ply.points)
        )

    def _ply(self, ply: Ply) -> Group:
        way = tuple(self.at(p) for p in ply.points)
        inner = _shortened(way, [0.7 if end is not End.GOES_ON else 0 for end in ply.ends])
        ground = TONE if ply.material.cloth is Cloth.NOTION else PAPER
        marks: list[Mark] = [
            Line(way, _THICK, radius=_RADIUS),
            Line(inner, _THICK - 1.4, ink=ground, radius=_RADIUS),
        ]
        core = _CORE[ply.material.cloth]
        if core and ply.material.cloth is not Cloth.NOTION:
            marks.append(Line(inner, core[0], core[1], radius=_RADIUS, is_round=core[1][0] < 0.1))
        if ply.right_at_left is not None:
            marks += _teeth_along(way, at_left=ply.right_at_left)
        for place, end in enumerate(ply.ends):
            tip, before = (way[0], way[1]) if place == 0 else (way[-1], way[-2])
            marks += _END[end](tip, before)
        side = "" if ply.right_at_left is None else "R"
        return Group(tuple(marks), "ply", ply.material.key, side)

    def _names(self) -> list[Named]:
        found: dict[str, Named] = {}
        for ply in self.section.plies:
            way = [self.at(point) for point in ply.points]
            spots = [way[0]] if ply.ends[0] is End.GOES_ON else []
            if not spots:
                spots = [way[0], way[-1]]
                spots += [((a[0] + b[0]) / 2, (a[1] + b[1]) / 2) for a, b in pairwise(way)]
            known = found.get(ply.material.key)
            spots = [*(known.spots if known else ()), *spots]
            found[ply.material.key] = Named(ply.material.title, tuple(spots))
        return list(found.values())

    def _obstacles(self) -> list[tuple[Spot, Spot]]:
        return [
            (self.at(one), self.at(other))
            for ply in self.section.plies
            for one, other in pairwise(ply.points)
        ]

    # -- rows ----------------------------------------------------------------------------

    def _numbered(self) -> dict[OpId, int]:
        ops = dict.fromkeys(row.op for row in self.section.rows)
        return {op: place + 1 for place, op in enumerate(ops)}

    def _rows(self) -> list[Mark]:
        marks: list[Mark] = []
        for row in self.section.rows:
            way = (self.at(row.start), self.at(row.end))
            width, dashes = _PEN[row.stitch]
            is_new = row.op == self.op
            if row.around is not None:
                marks.append(self._around(way, row.around))
            marks.append(Line(way, width + 2.2, ink=PAPER, is_round=True))
            role = "stitch now" if is_new else "stitch"
            marks.append(Line(way, width + (0.9 if is_new else 0), dashes, role=role))
        return marks

    def _around(self, way: tuple[Spot, Spot], edge: float) -> Line:
        """The thread of an overlocker, round the raw edges."""
        hand = 1 if self.at((edge, 0))[0] > way[0][0] else -1
        x = self.at((edge, 0))[0] + 2.4 * hand
        (ax, ay), (bx, by) = way
        over = 2.0 if ay < by else -2.0
        corners = ((ax, ay + over), (x, ay + over), (x, by - over), (bx, by - over))
        return Line(corners, 0.9, radius=3, role="finish")

    def _numbers(self, low: float) -> tuple[list[Mark], float]:
        """The numbers of the rows below the drawing, each at the end of a thin line."""
        if not self.section.rows:
            return [], low
        numbered = self._numbered()
        below = low + _BELOW - 4
        ends = sorted(
            ((self._lower_end(row), row) for row in self.section.rows), key=lambda x: x[0]
        )
        marks: list[Mark] = []
        taken = -1e9
        for (x, y), row in ends:
            at = max(x, taken + 2 * _NUMBER + 1)
            taken = at
            marks.append(
                Line(
                    ((x, y + 1), (x, below - _NUMBER - 5), (at, below - _NUMBER)),
                    0.5,
                    (1, 1.2),
                    role="row-line",
                )
            )
            marks.append(Disc((at, below), _NUMBER, PAPER, 0.7))
            marks.append(
                Words((at, below + 2.8), str(numbered[row.op]), SIZE, "middle", role="number")
            )
        return marks, below + _NUMBER + 2

    def _lower_end(self, row: Row) -> Spot:
        one, other = self.at(row.start), self.at(row.end)
        if abs(one[1] - other[1]) < 4:
            return ((one[0] + other[0]) / 2, one[1])
        return max(one, other, key=lambda spot: spot[1])

    # -- key -----------------------------------------------------------------------------

    def _ways_up(self, low: float) -> Iterable[Mark]:
        middle = self.x0 + (self.right - self.left) * _X / 2
        if not self.section.is_outside_up:
            ends = (self.x0, low + 1), (self.x0 + (self.right - self.left) * _X, low + 1)
            yield Line(ends, 1.4)
            yield Words((middle, low + LEADING), say("picture-table"), SIZE, "middle", role="label")
            return
        yield Words(
            (middle, _MARGIN + SIZE * 0.8), say("picture-outside"), SIZE, "middle", role="label"
        )
        yield Words(
            (middle, low + LEADING - 2), say("picture-inside"), SIZE, "middle", role="label"
        )

    def _key(self, low: float) -> tuple[list[Mark], float]:
        """What teeth, rows and the middle of the plies mean, in lines below the drawing."""
        items: list[tuple[str, list[Mark], float]] = []
        seen: dict[OpId, Stitch] = {}
        for row in self.section.rows:
            seen.setdefault(row.op, row.stitch)
        for op, stitch in seen.items():
            words = say(
                "picture-row",
                number=self._numbered()[op],
                row=say(f"picture-stitch-{stitch.value}"),
            )
            width, dashes = _PEN[stitch]
            extra = 0.9 if op == self.op else 0
            items.append((words, [Line(((0, 0), (14, 0)), width + extra, dashes)], 14))
        if any(ply.right_at_left is not None for ply in self.section.plies):
            way = ((0.0, 1.0), (14.0, 1.0))
            teeth = [*_teeth_along(way, at_left=True)]
            items.append((say("picture-right-side"), teeth, 14))
        kinds = dict.fromkeys(ply.material.cloth for ply in self._in_order())
        if set(kinds) - {Cloth.SHELL}:
            for kind in kinds:
                items.append((say(f"picture-cloth-{kind.value}"), [*swatch(kind)], 14))
        return lay_key(items, _MARGIN, low + 4, self.width - 2 * _MARGIN)

    def _in_order(self) -> list[Ply]:
        order = list(Cloth)
        return sorted(self.section.plies, key=lambda ply: order.index(ply.material.cloth))


def _teeth_along(way: tuple[Spot, ...], *, at_left: bool) -> Iterator[Mark]:
    """A heavy line with teeth along the right side."""
    hand = 1 if at_left else -1
    edge = _beside(way, hand * (_THICK / 2 - 0.4))
    yield Line(edge, 1.6, radius=_RADIUS, role="right-side")
    teeth = []
    for one, other in pairwise(edge):
        length = hypot(other[0] - one[0], other[1] - one[1])
        count = int((length - 3) // _PITCH) if length > 9 else 0
        if count <= 0:
            continue
        ux, uy = (other[0] - one[0]) / length, (other[1] - one[1]) / length
        nx, ny = uy * hand, -ux * hand
        for step in range(count):
            along = length * (step + 0.5) / count
            x, y = one[0] + along * ux, one[1] + along * uy
            teeth.append(((x, y), (x + nx * (_TOOTH + 0.8), y + ny * (_TOOTH + 0.8))))
    if teeth:
        yield Strokes(tuple(teeth), 0.9)


def lay_key(
    items: Iterable[tuple[str, list[Mark], float]], left: float, top: float, width: float
) -> tuple[list[Mark], float]:
    """Lay the items of a key out in lines, each a sample (drawn at 0, 0) and its words."""
    marks: list[Mark] = []
    x, y = left, top + LEADING / 2
    for words, sample, sample_width in items:
        room = sample_width + 3 + text_width(words, SIZE)
        if x > left and x + room > left + width:
            x, y = left, y + LEADING + 1.5
        marks += [moved_by(mark, x, y) for mark in sample]
        marks.append(Words((x + sample_width + 3, y + 0.34 * SIZE), words, SIZE, role="label"))
        x += room + 9
    return marks, y + LEADING / 2


def pen_of(stitch: Stitch) -> tuple[float, tuple[float, ...]]:
    """How wide and how dashed a row is drawn, by what it is for."""
    return _PEN[stitch]


def right_side_sample() -> Iterator[Mark]:
    """Teeth along the right side, for the key."""
    yield from _teeth_along(((0.0, 1.0), (14.0, 1.0)), at_left=True)


def end_sample(name: str) -> Iterator[Mark]:
    """How a ply ends, for the key."""
    yield from swatch(Cloth.SHELL)
    yield from _END[End(name)]((14.0, 0.0), (0.0, 0.0))


def swatch(kind: Cloth) -> Iterator[Mark]:
    """A ply of a kind of cloth, for a key."""
    way = ((0.0, 0.0), (14.0, 0.0))
    yield Line(way, _THICK)
    ground = TONE if kind is Cloth.NOTION else PAPER
    yield Line(((0.7, 0.0), (13.3, 0.0)), _THICK - 1.4, ink=ground)
    core = _CORE[kind]
    if core and kind is not Cloth.NOTION:
        yield Line(((1.5, 0.0), (12.5, 0.0)), core[0], core[1], is_round=core[1][0] < 0.1)


def _shortened(way: tuple[Spot, ...], by: list[float]) -> tuple[Spot, ...]:
    return (_towards(way[0], way[1], by[0]), *way[1:-1], _towards(way[-1], way[-2], by[1]))


def _towards(start: Spot, goal: Spot, by: float) -> Spot:
    length = hypot(goal[0] - start[0], goal[1] - start[1])
    return start[0] + by * (goal[0] - start[0]) / length, start[1] + by * (
        goal[1] - start[1]
    ) / length


def _beside(way: tuple[Spot, ...], by: float) -> tuple[Spot, ...]:
    """The way that runs beside a way, at its left hand on the canvas as people see it."""
    normals = []
    for one, other in pairwise(way):
        length = hypot(other[0] - one[0], other[1] - one[1])
        normals.append(((other[1] - one[1]) / length, -(other[0] - one[0]) / length))
    found = [(way[0][0] + by * normals[0][0], way[0][1] + by * normals[0][1])]
    for corner, one, other in zip(way[1:-1], normals, normals[1:], strict=False):
        scale = by / (1 + one[0] * other[0] + one[1] * other[1])
        found.append(
            (corner[0] + scale * (one[0] + other[0]), corner[1] + scale * (one[1] + other[1]))
        )
    last = normals[-1]
    return (*found, (way[-1][0] + by * last[0], way[-1][1] + by * last[1]))


def _goes_on(tip: Spot, before: Spot) -> Iterator[Mark]:
    """A break: the cloth goes on."""
    hand = 1 if tip[0] > before[0] else -1
    half, x, y = _THICK / 2 + 1.6, tip[0], tip[1]
    wave = (
        (x, y - half),
        (x + 1.4 * hand, y - half / 3),
        (x - 1.4 * hand, y + half / 3),
        (x, y + half),
    )
    beyond = ((x + 2.4 * hand, y + half), (x + 2.4 * hand, y - half))
    yield Area((*wave, *beyond), PAPER)
    yield Line(wave, 0.7, radius=2)


def _raw(_tip: Spot, _before: Spot) -> Iterator[Mark]:
    return iter(())


def _finished(tip: Spot, before: Spot) -> Iterator[Mark]:
    """Stitches over the edge."""
    half, reach = _THICK / 2 + 1.2, 9.0
    length = hypot(before[0] - tip[0], before[1] - tip[1])
    ux, uy = (before[0] - tip[0]) / length, (before[1] - tip[1]) / length
    reach = min(reach, length)
    spots = []
    for step in range(5):
        along, hand = -1 + step * (reach + 1) / 4, half if step % 2 else -half
        spots.append((tip[0] + ux * along - uy * hand, tip[1] + uy * along + ux * hand))
    yield Line(tuple(spots), 0.8, ink=INK, role="finish")


def _teeth(tip: Spot, _before: Spot) -> Iterator[Mark]:
    """The teeth of a zip, cut across."""
    yield Disc(tip, 3.4, INK)


_END: Final = {
    End.GOES_ON: _goes_on,
    End.RAW: _raw,
    End.FINISHED: _finished,
    End.TEETH: _teeth,
}
