"""The places of all boxes, lanes and lines of a chart, in the way that prints largest on A4."""

from collections.abc import Mapping, Sequence
from dataclasses import dataclass, replace
from functools import cached_property
from itertools import permutations

from seqplan.render.chart_grid import Band, Grid, Placing
from seqplan.render.chart_levels import Leveling, Levels, leads_to
from seqplan.render.chart_look import page_scale
from seqplan.render.chart_wires import Path, Wire, Wiring

_MARGIN = 4
"""What a lane takes around its boxes, in points."""
_CHAIN = 2.0
"""How much more the lines of the longest chain count."""
_ABOUT_GAP = 22
_MOST_ORDERS = 6
"""With more lanes than this they keep the order in which they are given."""

Grids = dict[Levels, Grid]
"""Where boxes stand, by their levels, kept from one size of text to the next."""
_MOST_TRIED = 6
_TRIED_BOXES = 240
"""How many ways are worked out in full, those that look best first, and of how many boxes in all:
the time that a way takes grows with the square of its boxes."""
_LITTLE_LESS = 0.95
"""A layout that prints so much smaller may still win, if it leaves more lanes in one piece."""
_NO_SMALLER = 0.005


@dataclass(frozen=True)
class Layout:
    """Where everything stands, from the left and from the top, in points.

    Parameters
    ----------
    wiring
        The boxes in their places, and the lines.
    bands
        The lanes, or the parts into which they are cut, from the top down.
    lane_tops
        What the headings of whole lanes take above all boxes; 0 where lanes are not whole.
    box_width
        The width of every box.
    frames
        Width and height of what stands above and below, in all the ways that it can be made.
    """

    wiring: Wiring
    bands: tuple[Band, ...]
    lane_tops: int
    box_width: int
    frames: tuple[tuple[float, float], ...]

    @cached_property
    def width(self) -> float:
        """The width of the whole."""
        return self.wiring.size[0]

    @cached_property
    def height(self) -> float:
        """The height of the whole."""
        return self.wiring.size[1] + self.lane_tops

    @cached_property
    def scale(self) -> float:
        """How much of its size it keeps on A4."""
        return max(self._scales)

    @cached_property
    def frame(self) -> int:
        """Which way to make what stands above and below: of the best the smallest."""
        most = max(self._scales) - _NO_SMALLER
        good = [n for n, scale in enumerate(self._scales) if scale >= most]
        return min(good, key=self._area)

    def _area(self, number: int) -> float:
        least, extra = self.frames[number]
        return max(self.width, least) * (self.height + extra)

    @cached_property
    def _scales(self) -> Sequence[float]:
        return [
            page_scale(max(self.width, least), self.height + extra) for least, extra in self.frames
        ]

    @cached_property
    def paths(self) -> Mapping[Wire, Path]:
        """Where the lines run."""
        return {
            wire: Path(tuple((x, y + self.lane_tops) for x, y in path.points), path.reaches)
            for wire, path in self.wiring.paths().items()
        }

    def corner_of(self, item: int) -> tuple[float, float]:
        """The upper left corner of a box."""
        column = self.wiring.grid.cells[item][1]
        return self.wiring.lefts[column], self.wiring.box_top(item) + self.lane_tops

    def frame_of(self, band: Band) -> tuple[float, float, float, float]:
        """The left, upper, right and lower edge of a lane."""
        boxes = [self.corner_of(item) for item in band.items]
        heights = self.wiring.grid.heights
        left = min(x for x, _ in boxes) - _MARGIN
        right = max(x for x, _ in boxes) + self.box_width + _MARGIN
        if self.lane_tops:
            return left, 0, right, self.height
        top = self.wiring.tops[self.wiring.grid.cells[band.items[0]][0]]
        return left, top, right, boxes[-1][1] + heights[band.items[-1]] + _MARGIN


@dataclass(frozen=True, kw_only=True)
class Layouter:
    """Lays a chart out.

    Parameters
    ----------
    lanes, heights
        The lane and the height of every box.
    wires
        The lines between boxes.
    chain
        The lines along which the longest chain runs.
    width
        The width of every box.
    heads, heads_on
        The height of the heading of every lane, where it begins and where it goes on.
    label_height
        The height of a number beside a line.
    are_lanes_whole
        Whether a lane reaches from the top to the bottom; if not, it is a frame around boxes that
        stand one below the other, or several such frames.
    frames
        Width and height of what stands above and below, in all the ways that it can be made.
    grids
        What earlier runs with the same boxes and lines have found; what this one finds is added.
    """

    lanes: tuple[int, ...]
    heights: tuple[int, ...]
    wires: tuple[Wire, ...]
    chain: frozenset[Wire]
    width: int
    heads: tuple[int, ...]
    heads_on: tuple[int, ...]
    label_height: int
    are_lanes_whole: bool
    frames: tuple[tuple[float, float], ...]
    grids: Grids

    def best(self) -> Layout:
        """The layout with the fewest parts of lanes, of those that print largest or nearly so."""
        ways = Leveling(self.lanes, self._arcs.keys(), self.are_lanes_whole).ways()
        count = max(1, min(_MOST_TRIED, _TRIED_BOXES // max(1, len(self.lanes))))
        tried = sorted(ways, key=lambda levels: -self._about(levels))[:count]
        made = [self._layout(levels) for levels in tried]
        most = max(layout.scale for layout in made)
        good = [layout for layout in made if layout.scale >= most * _LITTLE_LESS]
        return min(good, key=lambda layout: (len(layout.bands), -layout.scale))

    @cached_property
    def _arcs(self) -> Mapping[tuple[int, int], float]:
        """What stands before what, without circles, and how much each line counts."""
        found: dict[tuple[int, int], float] = {}
        for wire in self.wires:
            pair = wire.before, wire.after
            if pair not in found and not leads_to(found, wire.after, wire.before):
                found[pair] = 1.0
            if wire in self.chain and pair in found:
                found[pair] = _CHAIN
        return found

    def _columns(self, levels: Levels) -> tuple[Mapping[int, range] | None, int]:
        if not self.are_lanes_whole:
            return None, max(len(level) for level in levels)
        found: dict[int, range] = {}
        start = 0
        for lane in self._lane_order:
            most = max(sum(self.lanes[item] == lane for item in level) for level in levels)
            found[lane] = range(start, start + most)
            start += most
        return found, start

    @cached_property
    def _lane_order(self) -> tuple[int, ...]:
        """Whole lanes from left to right, so that lines between them are short."""
        lanes = tuple(sorted(set(self.lanes)))
        if len(lanes) > _MOST_ORDERS:
            return lanes
        between: dict[tuple[int, int], float] = {}
        for (before, after), count in self._arcs.items():
            pair = self.lanes[before], self.lanes[after]
            between[pair] = between.get(pair, 0) + count
        return min(
            permutations(lanes),
            key=lambda order: sum(
                abs(order.index(one) - order.index(other)) * count
                for (one, other), count in between.items()
            ),
        )

    def _about(self, levels: Levels) -> float:
        """About how large it prints."""
        columns = self._columns(levels)[1]
        height = sum(
            max(
                self.heights[item] + (0 if self.are_lanes_whole else self.heads[self.lanes[item]])
                for item in level
            )
            + _ABOUT_GAP
            for level in levels
        )
        width = columns * (self.width + _ABOUT_GAP)
        return max(page_scale(max(width, least), height + extra) for least, extra in self.frames)

    def _layout(self, levels: Levels) -> Layout:
        if levels not in self.grids:
            lane_columns, columns = self._columns(levels)
            placing = Placing(
                self.lanes, self.heights, self.heads, self._arcs, lane_columns, columns
            )
            self.grids[levels] = placing.place(levels)
        grid = replace(self.grids[levels], heights=self.heights)
        bands = self._bands(grid)
        heads = [0] * len(self.lanes)
        if not self.are_lanes_whole:
            begun: set[int] = set()
            for band in bands:
                held = self.heads_on if band.lane in begun else self.heads
                heads[band.items[0]] = held[band.lane]
                begun.add(band.lane)
        wiring = Wiring(
            grid,
            self.width,
            heads,
            feet=0 if self.are_lanes_whole else _MARGIN,
            margin=_MARGIN,
            label_height=self.label_height,
            wires=self.wires,
        )
        tops = max(self.heads) + _MARGIN if self.are_lanes_whole else 0
        return Layout(wiring, bands, tops, self.width, self.frames)

    def _bands(self, grid: Grid) -> tuple[Band, ...]:
        bands = tuple(grid.bands())
        if self.are_lanes_whole:
            lanes = dict.fromkeys(band.lane for band in bands)
            return tuple(
                Band(lane, -1, tuple(i for i, held in enumerate(self.lanes) if held == lane))
                for lane in lanes
            )
        return tuple(sorted(bands, key=lambda band: (grid.cells[band.items[0]], band.lane)))
