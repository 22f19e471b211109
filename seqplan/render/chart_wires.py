"""The lines of a chart: straight pieces in the gaps between rows and columns, never over a box.

A line leaves its box at the bottom, goes to the side in the gap below, down in a gap between
columns or through empty cells, to the side in the gap above the box that it leads to, and comes in
at the top. Lines that lead to one box, look alike and bear the same number run together.

Where lines run is found in four steps: places on the edges of boxes, a way for every bundle that
passes rows, tracks beside each other in each gap, and from these the points.
"""

from collections.abc import Collection, Iterator, Mapping, Sequence
from dataclasses import dataclass, field
from itertools import pairwise

from seqplan.render.chart_grid import Grid

TRACK: int = 5
"""From one line to the next in a gap, in points."""

_EDGE = 7
_STEP = 3
_NEAR = 4.5
_APART = (7, 5, 3, 1)
"""What is left free between lines and numbers that come in at a box, if there is room."""
_HEAD_ROOM = 10
_FOOT_ROOM = 5
_CORNER = 8.0
"""What a corner costs, in points of way."""
_OTHER_LANE = 60.0


@dataclass(frozen=True, slots=True)
class Wire:
    """A line from one box to another.

    Parameters
    ----------
    before, after
        The boxes by their index.
    leaves
        Lines from one box with the same word leave it at one place.
    enters
        Lines to one box with the same word come in as one.
    label_width
        The room that the number takes to the right of its end; 0 without one.
    """

    before: int
    after: int
    leaves: str
    enters: str
    label_width: int = 0


Point = tuple[float, float]
"""From the left and from the top, in points."""


@dataclass(frozen=True, slots=True)
class Path:
    """Where a line runs; ``reaches`` is false where it joins one that leads to the same box."""

    points: tuple[Point, ...]
    reaches: bool


@dataclass
class _Bundle:
    """Lines that come in as one."""

    target: int
    wires: list[Wire]
    entry: float = 0.0
    way: "_Way | None" = None

    @property
    def label_width(self) -> int:
        return max(wire.label_width for wire in self.wires)


@dataclass
class _Way:
    """A way past rows: in the gap left of a column, or ``aside`` from the left of its boxes."""

    column: int
    aside: float | None
    top: int
    end: int
    track: int = 0


@dataclass(frozen=True, slots=True)
class _Upright:
    """An upright piece within a column, from one gap to another."""

    aside: float
    top: int
    end: int
    owner: object


@dataclass
class Wiring:
    """Finds where lines run.

    Parameters
    ----------
    grid
        Where boxes stand.
    width
        The width of every box, in points.
    heads
        What stands above each box in its cell, such as the heading of a lane, in points.
    feet
        What each box leaves empty below, in points.
    margin
        What a lane takes beside its boxes, in points.
    label_height
        The height of a number beside the end of a line, in points.
    wires
        The lines.
    """

    grid: Grid
    width: int
    heads: Sequence[int]
    feet: int
    margin: int
    label_height: int
    wires: Sequence[Wire]
    _uprights: dict[int, list[_Upright]] = field(default_factory=dict, init=False)
    _entries: dict[int, list[tuple[float, int]]] = field(default_factory=dict, init=False)

    def __post_init__(self) -> None:
        self._held = {cell: item for item, cell in enumerate(self.grid.cells)}
        self._band_of = self._find_bands()
        self._exits = self._find_exits()
        self._bundles = self._gather()
        self._ways_of: dict[int, list[_Way]] = {}
        for bundle in self._bundles:
            self._find_entry(bundle)
        for bundle in sorted(self._bundles, key=self._span):
            self._find_way(bundle)
        self._share_gaps()
        self.lefts = self._find_lefts()
        self._tracks, self._depths = self._find_tracks()
        self.tops, self.bottoms = self._find_rows()

    @property
    def size(self) -> tuple[float, float]:
        """Width and height of it all."""
        width = self.lefts[-1] + self.width + self._gap_width(self.grid.columns)
        return width, self.bottoms[-1] + self._gap_height(self.grid.rows)

    def box_top(self, item: int) -> float:
        """The upper edge of a box."""
        return self.tops[self.grid.cells[item][0]] + self.heads[item]

    def paths(self) -> Mapping[Wire, Path]:
        """Where every line runs."""
        found: dict[Wire, Path] = {}
        for bundle in self._bundles:
            drawn: list[tuple[Point, Point]] = []
            for wire in bundle.wires:
                points, reaches = _until(_straight(list(self._points(bundle, wire))), drawn)
                drawn.extend(pairwise(points))
                found[wire] = Path(tuple(points), reaches)
        return found

    # -- places on the edges of boxes ------------------------------------------------------

    def _find_bands(self) -> Mapping[tuple[int, int], int]:
        """Which lane runs through each cell, empty ones between its boxes too."""
        found: dict[tuple[int, int], int] = {}
        for band in self.grid.bands():
            rows = [self.grid.cells[item][0] for item in band.items]
            for row in range(min(rows), max(rows) + 1):
                found[row, band.column] = band.lane
        return found

    def _find_exits(self) -> Mapping[tuple[int, str], float]:
        found: dict[tuple[int, str], float] = {}
        for item, (row, column) in enumerate(self.grid.cells):
            kinds = list(dict.fromkeys(w.leaves for w in self.wires if w.before == item))
            for number, kind in enumerate(kinds, 1):
                aside = round(self.width * number / (len(kinds) + 1))
                found[item, kind] = aside
                self._stand(column, _Upright(aside, row + 1, row + 1, (item, kind)))
        return found

    def _gather(self) -> Sequence[_Bundle]:
        found: dict[tuple[int, str], _Bundle] = {}
        for wire in self.wires:
            key = wire.after, wire.enters
            found.setdefault(key, _Bundle(wire.after, [])).wires.append(wire)
        for bundle in found.values():
            bundle.wires.sort(key=lambda wire: (-self.grid.cells[wire.before][0], wire.before))
        return sorted(
            found.values(),
            key=lambda b: (self.grid.cells[b.target], self._straight_from(b) is None),
        )

    def _straight_from(self, bundle: _Bundle) -> Wire | None:
        """The line of a bundle that can run straight down."""
        row, column = self.grid.cells[bundle.target]
        for wire in bundle.wires:
            top, at = self.grid.cells[wire.before]
            if at == column and top < row and self._is_empty(column, top + 1, row):
                return wire
        return None

    def _is_empty(self, column: int, top: int, end: int) -> bool:
        return not any((row, column) in self._held for row in range(top, end))

    def _find_entry(self, bundle: _Bundle) -> None:
        """Choose where a bundle comes in."""
        row, column = self.grid.cells[bundle.target]
        straight = self._straight_from(bundle)
        label = bundle.label_width
        owners: set[object] = {id(bundle)}
        wish = self._side_wish(bundle)
        top = row
        if straight is not None:
            wish = self._exits[straight.before, straight.leaves]
            owners.add((straight.before, straight.leaves))
            top = self.grid.cells[straight.before][0] + 1
        places = [*range(_EDGE, round(self.width) - max(_EDGE, label + 2), _STEP), wish]
        places.sort(key=lambda place: (abs(place - wish), place))
        found = next(
            (
                place
                for apart in _APART
                for place in places
                if self._is_free_entry(bundle, place, apart, owners)
            ),
            places[0],
        )
        is_straight = straight is not None and found == wish
        bundle.entry = found
        owner: object = (straight.before, straight.leaves) if is_straight and straight else None
        self._stand(column, _Upright(found, top if is_straight else row, row, owner or id(bundle)))
        self._entries.setdefault(bundle.target, []).append((found, label))

    def _is_free_entry(
        self, bundle: _Bundle, place: float, apart: int, owners: Collection[object]
    ) -> bool:
        row, column = self.grid.cells[bundle.target]
        for other, room in self._entries.get(bundle.target, ()):
            taken = room if other < place else bundle.label_width
            if abs(other - place) < max(taken, _NEAR) + apart:
                return False
        return self._is_clear(column, place, row, row, owners)

    def _side_wish(self, bundle: _Bundle) -> float:
        column = self.grid.cells[bundle.target][1]
        mean = sum(self.grid.cells[w.before][1] for w in bundle.wires) / len(bundle.wires)
        share = 0.5 if mean == column else 0.25 if mean < column else 0.7
        return round(self.width * share)

    def _stand(self, column: int, upright: _Upright) -> None:
        self._uprights.setdefault(column, []).append(upright)

    def _is_clear(
        self, column: int, aside: float, top: int, end: int, owners: Collection[object]
    ) -> bool:
        return not any(
            abs(other.aside - aside) < _NEAR
            and other.top <= end
            and top <= other.end
            and other.owner not in owners
            for other in self._uprights.get(column, ())
        )

    # -- ways past rows --------------------------------------------------------------------

    def _gap_of(self, wire: Wire) -> int:
        """The gap into which a line leaves; gap 0 is above the first row."""
        return self.grid.cells[wire.before][0] + 1

    def _span(self, bundle: _Bundle) -> tuple[int, int]:
        gaps = [self._gap_of(wire) for wire in bundle.wires]
        row = self.grid.cells[bundle.target][0]
        return max(abs(row - gap) for gap in gaps), bundle.target

    def _far(self, bundle: _Bundle) -> list[Wire]:
        row = self.grid.cells[bundle.target][0]
        return [wire for wire in bundle.wires if self._gap_of(wire) != row]

    def _find_way(self, bundle: _Bundle) -> None:
        far = self._far(bundle)
        if not far:
            return
        row = self.grid.cells[bundle.target][0]
        gaps = [*(self._gap_of(wire) for wire in far), row]
        top, end = min(gaps), max(gaps)
        ways = list(self._ways(bundle, far, top, end))
        bundle.way = min(ways, key=lambda way: self._way_cost(bundle, far, way))
        if bundle.way.aside is None:
            self._ways_of.setdefault(bundle.way.column, []).append(bundle.way)
        else:
            self._stand(bundle.way.column, _Upright(bundle.way.aside, top, end, id(bundle)))

    def _ways(self, bundle: _Bundle, far: list[Wire], top: int, end: int) -> Iterator[_Way]:
        for column in range(self.grid.columns + 1):
            yield _Way(column, None, top, end)
        owners: set[object] = {id(bundle)}
        if len(far) == 1:
            owners.add((far[0].before, far[0].leaves))
        for column in range(self.grid.columns):
            if not self._is_empty(column, top, end):
                continue
            wishes = [self.width / 2]
            if column == self.grid.cells[bundle.target][1]:
                wishes = [bundle.entry]
            elif len(far) == 1 and column == self.grid.cells[far[0].before][1]:
                wishes = [self._exits[far[0].before, far[0].leaves]]
            for number in range(1, 9):
                wishes.extend(self.width / 2 + sign * number * _NEAR for sign in (-1, 1))
            for aside in wishes:
                if self._is_clear(column, aside, top, end, owners | self._straight_owner(bundle)):
                    yield _Way(column, aside, top, end)
                    break

    def _straight_owner(self, bundle: _Bundle) -> set[object]:
        straight = self._straight_from(bundle)
        return {(straight.before, straight.leaves)} if straight else set()

    def _way_cost(self, bundle: _Bundle, far: list[Wire], way: _Way) -> tuple[float, int, bool]:
        pitch = self.width + 3 * TRACK
        x = way.column * pitch + (-TRACK if way.aside is None else way.aside)
        ends = [self.grid.cells[w.before][1] * pitch + self._exits[w.before, w.leaves] for w in far]
        ends.append(self.grid.cells[bundle.target][1] * pitch + bundle.entry)
        cost = sum(abs(x - end) + (_CORNER if x != end else 0) for end in ends)
        if way.aside is None:
            others = self._ways_of.get(way.column, ())
            cost += 4 * sum(o.top <= way.end and way.top <= o.end for o in others)
        else:
            lane = self.grid.lanes[bundle.target]
            crossed = (self._band_of.get((row, way.column)) for row in range(way.top, way.end))
            if any(other not in (None, lane) for other in crossed):
                cost += _OTHER_LANE
        return cost, way.column, way.aside is None

    def _share_gaps(self) -> None:
        """Give ways in one gap between columns a track each."""
        for ways in self._ways_of.values():
            ways.sort(key=lambda way: (way.top, way.end))
            for number, way in enumerate(ways):
                taken = {
                    other.track
                    for other in ways[:number]
                    if other.top <= way.end and way.top <= other.end
                }
                way.track = next(n for n in range(len(ways)) if n not in taken)

    def _gap_width(self, column: int) -> int:
        """The gap left of a column."""
        tracks = 1 + max((way.track for way in self._ways_of.get(column, ())), default=-1)
        is_outside = column in (0, self.grid.columns)
        return (1 if is_outside else 2) * self.margin + (tracks + 1 if tracks else 1) * TRACK

    def _find_lefts(self) -> Sequence[float]:
        """The left edge of the boxes of every column."""
        found: list[float] = []
        x = 0.0
        for column in range(self.grid.columns):
            x += self._gap_width(column)
            found.append(x)
            x += self.width
        return found

    def _way_x(self, way: _Way) -> float:
        if way.aside is not None:
            return self.lefts[way.column] + way.aside
        before = self.lefts[way.column - 1] + self.width + self.margin if way.column else 0.0
        return before + (way.track + 1) * TRACK

    # -- tracks between rows ---------------------------------------------------------------

    def _exit_x(self, wire: Wire) -> float:
        column = self.grid.cells[wire.before][1]
        return self.lefts[column] + self._exits[wire.before, wire.leaves]

    def _entry_x(self, bundle: _Bundle) -> float:
        return self.lefts[self.grid.cells[bundle.target][1]] + bundle.entry

    def _touches(self, bundle: _Bundle) -> Iterator[tuple[int, float, bool]]:
        """Where a bundle comes into a gap: which, at which place, and whether from above."""
        row = self.grid.cells[bundle.target][0]
        yield row, self._entry_x(bundle), False
        for wire in bundle.wires:
            yield self._gap_of(wire), self._exit_x(wire), True
        if bundle.way:
            x = self._way_x(bundle.way)
            gaps = {self._gap_of(wire) for wire in self._far(bundle)} | {row}
            for gap in sorted(gaps):
                if gap > bundle.way.top:
                    yield gap, x, True
                if gap < bundle.way.end:
                    yield gap, x, False

    def _find_tracks(self) -> tuple[Mapping[tuple[int, int], int], Mapping[int, int]]:
        """The track of every bundle in every gap, and how many tracks each gap has."""
        held: dict[int, list[_Level]] = {}
        for number, bundle in enumerate(self._bundles):
            touched: dict[int, _Level] = {}
            for gap, x, is_above in self._touches(bundle):
                level = touched.setdefault(gap, _Level(number))
                (level.above if is_above else level.below).append(x)
            for gap, level in touched.items():
                if level.left < level.right:
                    held.setdefault(gap, []).append(level)
        tracks: dict[tuple[int, int], int] = {}
        depths: dict[int, int] = {}
        for gap, levels in held.items():
            placed: list[tuple[_Level, int]] = []
            for level in _ordered(levels):
                track = 1 + max((n for other, n in placed if other.meets(level)), default=-1)
                placed.append((level, track))
                tracks[gap, level.bundle] = track
            depths[gap] = 1 + max(track for _, track in placed)
        return tracks, depths

    def _gap_height(self, gap: int) -> int:
        tracks = self._depths.get(gap, 0)
        height = _FOOT_ROOM + max(tracks - 1, 0) * TRACK
        entering = [b for b in self._bundles if self.grid.cells[b.target][0] == gap]
        if any(wire.label_width for bundle in entering for wire in bundle.wires):
            return height + self.label_height + 1
        return height + (_HEAD_ROOM if entering else _FOOT_ROOM)

    def _find_rows(self) -> tuple[Sequence[float], Sequence[float]]:
        """The upper and the lower edge of every row."""
        tops: list[float] = []
        bottoms: list[float] = []
        y = 0.0
        for row in range(self.grid.rows):
            y += self._gap_height(row) if row or row in self._depths else 0
            tops.append(y)
            y += max(
                self.heads[item] + self.grid.heights[item] + self.feet
                for item, (at, _) in enumerate(self.grid.cells)
                if at == row
            )
            bottoms.append(y)
        return tops, bottoms

    # -- points ----------------------------------------------------------------------------

    def _track_y(self, number: int, gap: int) -> float:
        above = self.bottoms[gap - 1] if gap else 0.0
        return above + _FOOT_ROOM + self._tracks.get((gap, number), 0) * TRACK

    def _points(self, bundle: _Bundle, wire: Wire) -> Iterator[Point]:
        number = self._bundles.index(bundle)
        row = self.grid.cells[bundle.target][0]
        start, gap = self._exit_x(wire), self._gap_of(wire)
        yield start, self.box_top(wire.before) + self.grid.heights[wire.before]
        yield start, self._track_y(number, gap)
        if gap != row and bundle.way:
            x = self._way_x(bundle.way)
            yield x, self._track_y(number, gap)
            yield x, self._track_y(number, row)
        end = self._entry_x(bundle)
        yield end, self._track_y(number, row)
        yield end, self.tops[row] if self.heads[bundle.target] else self.box_top(bundle.target)


@dataclass
class _Level:
    """The level piece of a bundle in a gap: what runs into it from above and from below."""

    bundle: int
    above: list[float] = field(default_factory=list)
    below: list[float] = field(default_factory=list)

    @property
    def left(self) -> float:
        return min(*self.above, *self.below)

    @property
    def right(self) -> float:
        return max(*self.above, *self.below)

    def meets(self, other: "_Level") -> bool:
        """Whether both need a track of their own."""
        return self.left < other.right + _NEAR and other.left < self.right + _NEAR

    def crossings_below(self, other: "_Level") -> int:
        """How many lines cross if this one runs below another."""
        return sum(other.left <= x <= other.right for x in self.above) + sum(
            self.left <= x <= self.right for x in other.below
        )


def _ordered(levels: Sequence[_Level]) -> Iterator[_Level]:
    """Level pieces of a gap from the top down, with few crossings."""
    left = sorted(levels, key=lambda level: (level.left, level.right))
    while left:
        best = min(
            left,
            key=lambda level: sum(
                other.crossings_below(level) - level.crossings_below(other) for other in left
            ),
        )
        # A piece goes on top when the others lose least by running below it.
        left.remove(best)
        yield best


def _straight(points: Sequence[Point]) -> list[Point]:
    """Points without those that change nothing."""
    found: list[Point] = []
    for point in points:
        if found and point == found[-1]:
            continue
        while len(found) > 1 and any(
            found[-2][axis] == found[-1][axis] == point[axis] for axis in (0, 1)
        ):
            found.pop()
        found.append(point)
    return found


def _until(
    points: Sequence[Point], drawn: Sequence[tuple[Point, Point]]
) -> tuple[list[Point], bool]:
    """The part of a line up to where it first touches what is drawn; and whether it is all."""
    found = [points[0]]
    for start, end in pairwise(points):
        met = [point for piece in drawn for point in _meeting(start, end, *piece)]
        if met:
            found.append(min(met, key=lambda p: abs(p[0] - start[0]) + abs(p[1] - start[1])))
            return _straight(found), False
        found.append(end)
    return found, True


def _meeting(a: Point, b: Point, c: Point, d: Point) -> Iterator[Point]:
    """Where one level or upright piece first touches another."""
    left, right = max(min(a[0], b[0]), min(c[0], d[0])), min(max(a[0], b[0]), max(c[0], d[0]))
    top, end = max(min(a[1], b[1]), min(c[1], d[1])), min(max(a[1], b[1]), max(c[1], d[1]))
    if left <= right and top <= end:
        yield left, top
        yield right, end
