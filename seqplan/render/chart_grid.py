"""In which row and column of a chart each box stands.

Levels become rows. Within its row a box goes below what leads to it and below its own lane; then
boxes move and change places for as long as that makes lines shorter, lanes whole, or rows lower.
The same boxes always end up in the same places.
"""

from collections.abc import Collection, Iterator, Mapping, Sequence
from dataclasses import dataclass, field
from itertools import pairwise

from seqplan.render.chart_levels import Levels

_ASIDE = 1.0
"""What a line costs for every column that it goes to the side,"""
_LONG = 0.5
"""for every row that it passes,"""
_BLOCKED = 1.2
"""and where a box stands between its ends in their column."""
_BAND = 7.0
"""What it costs to begin a lane, or to go on with it in another place,"""
_HOLE = 0.6
"""to leave a cell empty within a lane,"""
_HEIGHT = 0.06
"""and what a point of height costs."""
_ROUNDS = 12
_EPSILON = 1e-9

Cell = tuple[int, int]
"""Row and column, from 0."""


@dataclass(frozen=True, slots=True)
class Band:
    """Boxes of one lane that stand in one column with no other between, from the top down."""

    lane: int
    column: int
    items: tuple[int, ...]


@dataclass(frozen=True)
class Grid:
    """Where boxes stand.

    Parameters
    ----------
    lanes, heights
        The lane and the height of every box, in points.
    cells
        Row and column of every box.
    columns
        How many columns there are.
    """

    lanes: tuple[int, ...]
    heights: tuple[int, ...]
    cells: tuple[Cell, ...]
    columns: int

    @property
    def rows(self) -> int:
        """How many rows there are."""
        return 1 + max((row for row, _ in self.cells), default=-1)

    def bands(self) -> Iterator[Band]:
        """The bands, column by column."""
        for column in range(self.columns):
            held = sorted((row, i) for i, (row, at) in enumerate(self.cells) if at == column)
            band: list[int] = []
            for _, item in held:
                if band and self.lanes[item] != self.lanes[band[0]]:
                    yield Band(self.lanes[band[0]], column, tuple(band))
                    band = []
                band.append(item)
            if band:
                yield Band(self.lanes[band[0]], column, tuple(band))


@dataclass
class Placing:
    """Finds a grid for boxes on levels.

    Parameters
    ----------
    lanes, heights
        The lane and the height of every box, in points.
    head_heights
        What the heading of each lane takes above the first box of a band.
    arcs
        Pairs of indices, the first before the second, and how much each counts.
    lane_columns
        Where lanes are whole: the columns of each lane. Otherwise boxes stand anywhere.
    columns
        How many columns there are.
    """

    lanes: tuple[int, ...]
    heights: tuple[int, ...]
    head_heights: Sequence[int]
    arcs: Mapping[tuple[int, int], float]
    lane_columns: Mapping[int, range] | None
    columns: int
    _cells: list[Cell] = field(default_factory=list, init=False)
    _held: dict[Cell, int] = field(default_factory=dict, init=False)
    _rows: int = field(default=0, init=False)

    def __post_init__(self) -> None:
        self._before: list[list[int]] = [[] for _ in self.lanes]
        self._after: list[list[int]] = [[] for _ in self.lanes]
        for before, after in self.arcs:
            self._before[after].append(before)
            self._after[before].append(after)

    def place(self, levels: Levels) -> Grid:
        """Put the boxes of every level into a row, and improve on it."""
        self._cells, self._held = [(0, 0)] * len(self.lanes), {}
        self._rows = len(levels)
        for row, level in enumerate(levels):
            self._fill(row, level)
        for _ in range(_ROUNDS):
            if not self._improve():
                break
        used = sorted({row for row, _ in self._cells})
        cells = tuple((used.index(row), column) for row, column in self._cells)
        return Grid(self.lanes, self.heights, cells, self.columns)

    # -- the first try ---------------------------------------------------------------------

    def _fill(self, row: int, level: Collection[int]) -> None:
        wishes = sorted(
            (self._wish(item, column, row), item, column)
            for item in level
            for column in self._allowed(item)
        )
        placed: set[int] = set()
        for _, item, column in wishes:
            if item not in placed and (row, column) not in self._held:
                placed.add(item)
                self._put(item, (row, column))

    def _wish(self, item: int, column: int, row: int) -> float:
        """How little a box wants to stand in a column."""
        before = [self._cells[other][1] for other in self._before[item] if self._is_in(other)]
        middle = sum(before) / len(before) if before else (self.columns - 1) / 2
        above = self._above(row, column)
        cost = abs(column - middle) * _ASIDE
        if self.lane_columns is None and above is not None:
            if self.lanes[above] == self.lanes[item]:
                cost -= _BAND
            elif self._goes_on(self.lanes[above]):
                cost += _BAND
        return cost

    def _is_in(self, item: int) -> bool:
        return self._held.get(self._cells[item]) == item

    def _goes_on(self, lane: int) -> bool:
        return any(held == lane and not self._is_in(item) for item, held in enumerate(self.lanes))

    def _above(self, row: int, column: int) -> int | None:
        for higher in range(row - 1, -1, -1):
            if (higher, column) in self._held:
                return self._held[higher, column]
        return None

    def _allowed(self, item: int) -> range:
        if self.lane_columns is None:
            return range(self.columns)
        return self.lane_columns[self.lanes[item]]

    def _put(self, item: int, cell: Cell) -> None:
        self._cells[item] = cell
        self._held[cell] = item

    # -- improving -------------------------------------------------------------------------

    def _improve(self) -> bool:
        """Try every box in every cell where it may stand, changing places with what is there."""
        is_better = False
        for item in range(len(self.lanes)):
            cost, best = -_EPSILON, None
            for row in self._window(item):
                for column in self._allowed(item):
                    gain = self._gain(item, (row, column))
                    if gain is not None and gain < cost:
                        cost, best = gain, (row, column)
            if best is not None:
                self._swap(item, best)
                is_better = True
        return is_better

    def _window(self, item: int) -> range:
        """The rows below all that leads to a box and above all that it leads to."""
        before = (self._cells[other][0] for other in self._before[item])
        after = (self._cells[other][0] for other in self._after[item])
        return range(max(before, default=-1) + 1, min(after, default=self._rows))

    def _gain(self, item: int, cell: Cell) -> float | None:
        """What a move changes in cost; ``None`` where it is not possible."""
        here, other = self._cells[item], self._held.get(cell)
        if cell == here or (other is not None and here[1] not in self._allowed(other)):
            return None
        rows, columns = {here[0], cell[0]}, {here[1], cell[1]}
        moved = {item} if other is None else {item, other}
        self._swap(item, cell)
        if not self._is_sound(moved):
            self._swap(item, here)
            return None
        cost = self._cost(moved, rows, columns)
        self._swap(item, here)
        return cost - self._cost(moved, rows, columns)

    def _swap(self, item: int, cell: Cell) -> None:
        here, other = self._cells[item], self._held.get(cell)
        del self._held[here]
        if other is not None:
            self._put(other, here)
        self._put(item, cell)

    def _is_sound(self, moved: Collection[int]) -> bool:
        """Whether all that leads to boxes stands above them."""
        return all(
            all(self._cells[other][0] < self._cells[item][0] for other in self._before[item])
            and all(self._cells[other][0] > self._cells[item][0] for other in self._after[item])
            for item in moved
        )

    def _cost(
        self, moved: Collection[int], rows: Collection[int], columns: Collection[int]
    ) -> float:
        arcs = {
            arc
            for item in moved
            for arc in (
                *((other, item) for other in self._before[item]),
                *((item, other) for other in self._after[item]),
            )
        }
        cost = sum(self._arc_cost(*arc) for arc in sorted(arcs))
        if self.lane_columns is None:
            cost += sum(self._column_cost(column) for column in sorted(columns))
        return cost + _HEIGHT * sum(self._row_height(row) for row in sorted(rows))

    def _arc_cost(self, before: int, after: int) -> float:
        (top, one), (end, other) = self._cells[before], self._cells[after]
        cost = abs(one - other) * _ASIDE + (end - top - 1) * _LONG
        if one == other and any((row, one) in self._held for row in range(top + 1, end)):
            cost += _BLOCKED
        return cost * self.arcs[before, after]

    def _column_cost(self, column: int) -> float:
        """What the bands of a column cost."""
        rows = [row for row in range(self._rows) if (row, column) in self._held]
        cost = _BAND if rows else 0.0
        for upper, lower in pairwise(rows):
            one, other = (self._held[row, column] for row in (upper, lower))
            if self.lanes[one] == self.lanes[other]:
                cost += (lower - upper - 1) * _HOLE
            else:
                cost += _BAND
        return cost

    def _row_height(self, row: int) -> int:
        return max(
            (self._height(row, column) for column in range(self.columns)),
            default=0,
        )

    def _height(self, row: int, column: int) -> int:
        item = self._held.get((row, column))
        if item is None:
            return 0
        height = self.heights[item]
        if self.lane_columns is None:
            above = self._above(row, column)
            if above is None or self.lanes[above] != self.lanes[item]:
                height += self.head_heights[self.lanes[item]]
        return height
