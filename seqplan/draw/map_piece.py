"""One piece on the map: its outline, the state of its edges, and their names round it."""

from collections.abc import Iterator, Sequence
from functools import lru_cache
from itertools import pairwise
from typing import Final, NamedTuple

from seqplan.draw.cloth import crossing
from seqplan.draw.figure import (
    FAINT,
    FOLD,
    PAPER,
    THIN,
    Area,
    Disc,
    Group,
    Line,
    Mark,
    Spot,
    Strokes,
    Words,
)
from seqplan.draw.map_lines import edge_marks, hatched, length_of, sampled, slit_marks
from seqplan.draw.textwidth import text_width, wrap
from seqplan.rehearse.edges import EdgeState

LABEL: Final = 7.0
TITLE: Final = 8.0
_BOX_PAD: Final = 1.6
_BOX_GAP: Final = 2.4
_LINE: Final = 9.4
_PAD: Final = 1.2
_STATE: Final = 6.6
_RISE: Final = 0.34
_DISTANCES: Final = (4.0, 9.0, 15.0, 22.0, 30.0)
_FAR: Final = 8.0
"""How far from an edge its name may stand without a line to it."""
_PLACES: Final = (0.5, 0.38, 0.62, 0.25, 0.75, 0.12, 0.88)
_FEW: Final = 8
"""More strokes than these fill an area."""
_TITLE_WIDTH: Final = 100.0


class Box(NamedTuple):
    """A box on the canvas."""

    left: float
    top: float
    right: float
    bottom: float

    def meets(self, other: "Box") -> bool:
        """Whether two boxes share any room."""
        return (
            self.left < other.right
            and other.left < self.right
            and self.top < other.bottom
            and other.top < self.bottom
        )


class Shown(NamedTuple):
    """An edge to be drawn.

    Parameters
    ----------
    name
        Its name, as people read it.
    points
        Its line, in points of the canvas, before the piece is mirrored.
    state
        What has become of it.
    is_slit, is_cut
        Whether it is one side of a slit, and whether that is cut open.
    is_twin
        Whether it lies on the mirrored half of a piece cut on the fold.
    letters
        The letters that tell its state, to stand with its name.
    """

    name: str
    points: tuple[complex, ...]
    state: EdgeState
    is_slit: bool = False
    is_cut: bool = False
    is_twin: bool = False
    letters: tuple[str, ...] = ()


class Cell(NamedTuple):
    """A piece drawn round the origin, with the room that it takes."""

    marks: tuple[Mark, ...]
    box: Box


class Sheet(NamedTuple):
    """What is drawn of a piece.

    Parameters
    ----------
    title
        What stands under it.
    edges
        Its edges.
    ring
        Its outline all round, in points of the canvas.
    fold
        The line of its fold, if it is cut on one.
    letter
        The letter of the side that lies up.
    is_wrong
        Whether that is the wrong side.
    is_mirrored
        Whether it is drawn the other way round.
    things
        What lies on its face, drawn on the piece as it is before it is mirrored.
    """

    title: str
    edges: tuple[Shown, ...]
    ring: tuple[complex, ...]
    fold: tuple[complex, ...]
    letter: str
    is_wrong: bool
    is_mirrored: bool
    things: tuple[Mark, ...] = ()


@lru_cache(maxsize=500)
def draw_piece(sheet: Sheet) -> Cell:
    """Draw a piece with the names of its edges so placed that nothing lies on anything.

    From one map to the next most pieces stay as they are.
    """
    return _Drawing(sheet).cell()


class _Drawing:
    def __init__(self, sheet: Sheet) -> None:
        self._sheet = sheet
        self._flip = -1 if sheet.is_mirrored else 1
        self._ring = self._placed(sheet.ring)
        self._taken: list[Box] = []
        self._lines = list(pairwise([*self._ring, self._ring[0]]))
        self._lines += [
            pair for edge in sheet.edges if edge.is_slit for pair in pairwise(self._at(edge))
        ]

    def _placed(self, points: Sequence[complex]) -> list[complex]:
        return [complex(p.real * self._flip, p.imag) for p in points]

    def _at(self, edge: Shown) -> list[complex]:
        return self._placed(edge.points)

    def cell(self) -> Cell:
        sheet = self._sheet
        marks: list[Mark] = [Area(tuple((p.real, p.imag) for p in self._ring), PAPER)]
        if sheet.is_wrong:
            marks.append(hatched(self._ring))
        if sheet.fold:
            line = tuple((p.real, p.imag) for p in self._placed(sheet.fold))
            marks.append(Line(line, THIN, FOLD, ink=FAINT, role="fold"))
        for edge in (*_idle(sheet.edges), *_active(sheet.edges)):
            marks += self._edge(edge)
        things = [mirrored(mark) if self._flip < 0 else mark for mark in sheet.things]
        self._taken += [box for mark in things for box in _room(mark)]
        # Where there is no room beside them the letter lies under the things, which stay whole.
        marks += [*self._letter(), *things]
        labels = [mark for edge in sheet.edges for mark in self._label(edge)]
        marks += labels
        box = _round(self._ring, self._taken)
        marks += self._title(box)
        return Cell(
            (Group(tuple(marks), "piece", sheet.title),), _with_title(box, self._lines_of())
        )

    def _edge(self, edge: Shown) -> list[Mark]:
        points = self._at(edge)
        if edge.is_slit:
            return slit_marks(points, edge.is_cut) + (
                [Line(tuple((p.real, p.imag) for p in points), 2.6, role="active")]
                if edge.state.is_active
                else []
            )
        inwards = -self._flip if edge.is_twin else self._flip
        return edge_marks(points, edge.state, inwards)

    # -- words -------------------------------------------------------------------------------

    def _letter(self) -> list[Mark]:
        """The letter of the side that is up, where the cloth is widest round it."""
        spot = _inside(self._ring, self._taken)
        self._taken.append(Box(spot[0] - 7, spot[1] - 7, spot[0] + 7, spot[1] + 7))
        return [
            Disc(spot, 6.0, PAPER, 0.5),
            Words((spot[0], spot[1] + 3.0), self._sheet.letter, TITLE, "middle", True, "side"),
        ]

    def _label(self, edge: Shown) -> Iterator[Mark]:
        """The name of an edge with the letters of its state, and a line to it if it is far."""
        if not edge.name:
            return
        is_bold = edge.state.is_active
        name_width = text_width(edge.name, LABEL, bold=is_bold)
        width = name_width + sum(_BOX_GAP + letter_box(letter) for letter in edge.letters)
        spot, box = self._free(edge, width)
        self._taken.append(box)
        middle = complex((box.left + box.right) / 2, (box.top + box.bottom) / 2)
        near = _nearest(box, spot)
        if abs(spot - near) > _FAR:
            yield Line(((spot.real, spot.imag), (near.real, near.imag)), 0.4, ink=FAINT)
        left, base = box.left + _PAD, middle.imag + _RISE * LABEL
        yield Words((left, base), edge.name, LABEL, is_bold=is_bold, role="label")
        left += name_width
        for letter in edge.letters:
            left += _BOX_GAP
            yield from letter_marks(letter, left, middle.imag)
            left += letter_box(letter)

    def _free(self, edge: Shown, width: float) -> tuple[complex, Box]:
        """The first place beside an edge where its name lies on nothing; else below the piece."""
        points = self._at(edge)
        total = length_of(points)
        outwards = -self._flip * (-1 if edge.is_twin else 1)
        spots = [next(sampled(points, 1, total * share, total)) for share in _PLACES]
        for side in (outwards, -outwards):
            for distance in _DISTANCES:
                for spot, along in spots:
                    box = _beside(spot, along * 1j * side, distance, width)
                    if self._is_free(box) and self._is_reached(spot, box):
                        return spot, box
        box = _round(self._ring, self._taken)
        middle = spots[0][0]
        top = box.bottom + 1
        left = middle.real - width / 2
        return middle, Box(left - _PAD, top, left + width + _PAD, top + LABEL + 1)

    def _is_free(self, box: Box) -> bool:
        wide = Box(box.left - 1.5, box.top - 0.5, box.right + 1.5, box.bottom + 0.5)
        if any(box.meets(other) for other in self._taken):
            return False
        return not any(_crosses(wide, one, other) for one, other in self._lines)

    def _is_reached(self, spot: complex, box: Box) -> bool:
        """Whether a line from an edge to its name passes over no other name."""
        near = _nearest(box, spot)
        if abs(spot - near) <= _FAR:
            return True
        return not any(_crosses(other, spot, near) for other in self._taken)

    def _lines_of(self) -> tuple[str, ...]:
        return wrap(self._sheet.title, _TITLE_WIDTH, TITLE, bold=True, lines=2)

    def _title(self, box: Box) -> list[Mark]:
        middle = (box.left + box.right) / 2
        return [
            Words(
                (middle, box.bottom + 3 + (n + 0.8) * _LINE), line, TITLE, "middle", True, "title"
            )
            for n, line in enumerate(self._lines_of())
        ]


def letter_box(letter: str) -> float:
    """How wide the box of a letter is."""
    return text_width(letter, _STATE, bold=True) + 2 * _BOX_PAD


def letter_marks(letter: str, left: float, middle: float) -> list[Mark]:
    """A letter in a box: what has become of an edge."""
    right, half = left + letter_box(letter), _STATE / 2 + 0.5
    corners = ((left, middle - half), (right, middle - half), (right, middle + half),
               (left, middle + half))  # fmt: skip
    return [
        Area(corners, PAPER, 0.5),
        Words(
            ((left + right) / 2, middle + _RISE * _STATE), letter, _STATE, "middle", True, "state"
        ),
    ]


def mirrored(mark: Mark) -> Mark:
    """A mark with left and right exchanged; words are not turned round."""
    if isinstance(mark, Words):
        return mark._replace(spot=(-mark.spot[0], mark.spot[1]))
    if isinstance(mark, Disc):
        return mark._replace(centre=(-mark.centre[0], mark.centre[1]))
    if isinstance(mark, Strokes):
        return mark._replace(strokes=tuple(((-a, b), (-c, d)) for (a, b), (c, d) in mark.strokes))
    if isinstance(mark, Group):
        return mark._replace(marks=tuple(map(mirrored, mark.marks)))
    return mark._replace(points=tuple((-x, y) for x, y in mark.points))


def _idle(edges: Sequence[Shown]) -> list[Shown]:
    return [edge for edge in edges if not edge.state.is_active]


def _active(edges: Sequence[Shown]) -> list[Shown]:
    return [edge for edge in edges if edge.state.is_active]


def _beside(spot: complex, way: complex, distance: float, width: float) -> Box:
    """The box of a name at one side of a spot: beside it, or above or below."""
    at = spot + way * distance
    height = LABEL + 1
    if abs(way.real) > abs(way.imag) * 0.6:
        left = at.real if way.real > 0 else at.real - width - 2 * _PAD
        top = at.imag - height / 2 + way.imag * height / 2
    else:
        left = at.real - width / 2 - _PAD
        top = at.imag if way.imag > 0 else at.imag - height
    return Box(left, top, left + width + 2 * _PAD, top + height)


def _nearest(box: Box, spot: complex) -> complex:
    """The place of a box that is nearest to a spot."""
    return complex(
        min(max(spot.real, box.left), box.right), min(max(spot.imag, box.top), box.bottom)
    )


def _crosses(box: Box, one: complex, other: complex) -> bool:
    """Whether a straight line touches a box."""
    for point in (one, other):
        if box.left <= point.real <= box.right and box.top <= point.imag <= box.bottom:
            return True
    line = ((one.real, one.imag), (other.real, other.imag))
    corners = [(box.left, box.top), (box.right, box.top), (box.right, box.bottom),
               (box.left, box.bottom), (box.left, box.top)]  # fmt: skip
    return any(crossing(line, side) is not None for side in pairwise(corners))


def _inside(ring: Sequence[complex], taken: Sequence[Box]) -> Spot:
    """A spot well inside an outline: the middle of the widest stretch on a few levels."""
    top, bottom = min(p.imag for p in ring), max(p.imag for p in ring)
    sides = list(pairwise([*ring, ring[0]]))
    best = (0.0, 0j)
    for share in (0.5, 0.6, 0.4, 0.7, 0.3):
        level = top + (bottom - top) * share + 0.01
        crossed = sorted(
            one.real + (other.real - one.real) * (level - one.imag) / (other.imag - one.imag)
            for one, other in sides
            if (one.imag <= level) != (other.imag <= level)
        )
        for left, right in zip(crossed[::2], crossed[1::2], strict=False):
            for at in (0.5, 0.7, 0.3):
                spot = complex(left + (right - left) * at, level)
                room = Box(spot.real - 8, spot.imag - 8, spot.real + 8, spot.imag + 8)
                width = (right - left) * (1.0 if at == 0.5 else 0.6)
                width *= 0.2 if any(room.meets(box) for box in taken) else 1.0
                if width > best[0] * 1.3:
                    best = (width, spot)
    return best[1].real, best[1].imag


def _room(mark: Mark) -> list[Box]:
    """The room that a thing on the face takes; none where it covers all of the piece."""
    if isinstance(mark, Disc):
        (x, y), r = mark.centre, mark.radius
        return [Box(x - r, y - r, x + r, y + r)]
    if isinstance(mark, Strokes):
        spots = [spot for stroke in mark.strokes for spot in stroke]
        if len(mark.strokes) > _FEW:
            return []
    elif isinstance(mark, Area | Line):
        spots = list(mark.points)
    else:
        return []
    xs, ys = zip(*spots, strict=True)
    return [Box(min(xs), min(ys), max(xs), max(ys))]


def _round(ring: Sequence[complex], boxes: Sequence[Box]) -> Box:
    """The room that an outline and some boxes take."""
    return Box(
        min([p.real - 2 for p in ring] + [box.left for box in boxes]),
        min([p.imag - 2 for p in ring] + [box.top for box in boxes]),
        max([p.real + 2 for p in ring] + [box.right for box in boxes]),
        max([p.imag + 2 for p in ring] + [box.bottom for box in boxes]),
    )


def _with_title(box: Box, lines: Sequence[str]) -> Box:
    wide = max(text_width(line, TITLE, bold=True) for line in lines)
    middle = (box.left + box.right) / 2
    return Box(
        min(box.left, middle - wide / 2),
        box.top,
        max(box.right, middle + wide / 2),
        box.bottom + 3 + (len(lines) + 0.3) * _LINE,
    )
