"""A chart of the dependencies in the graph language: lanes, boxes, reasons, and a key to it all.

1. Operations of one entry that simply follow one another become rows of one box.
2. Every text is measured in the shipped font and every box gets its size here.
3. Boxes are put into rows and columns and lines into the gaps between, in several ways; the way
   that prints largest on A4 is kept. A layout program only draws what stands where.
4. The kinds of reason are numbered; the number stands beside the arc, the words in the key.

Nothing rests on colour: strength is the style of a line, the longest chain its weight and a bar
beside the operation, a station its letter.
"""

from collections.abc import Iterable, Iterator, Sequence
from dataclasses import dataclass

from seqplan.base.ids import OpId
from seqplan.draw.figure import FAINT, INK, PAPER, THIN
from seqplan.draw.textwidth import wrap
from seqplan.explain.chart import Chart, Lanes
from seqplan.graph.reason import Reason
from seqplan.plan.unit import Unit
from seqplan.recipes.construction import Construction
from seqplan.render.chart_boxes import Row, make_boxes, operation_words
from seqplan.render.chart_grid import Band
from seqplan.render.chart_key import make_keys
from seqplan.render.chart_layout import Grids, Layout, Layouter
from seqplan.render.chart_lines import Line, find_lines
from seqplan.render.chart_look import (
    FONT,
    LINE_WIDTH,
    LOOKS,
    Lettering,
    Look,
    page_scale,
)
from seqplan.render.chart_node import BoxWriter
from seqplan.render.chart_table import table, text_cell
from seqplan.render.chart_wires import Path, Point
from seqplan.render.quoting import name, quote
from seqplan.tell.names import station_title
from seqplan.words.say import say

_TITLE_WIDTH = 460
_MARGIN = 4
_CORNER = 3.5
"""How far from a corner a line begins to bend, in points."""
_INDENT = 5
"""From the left edge of a lane to its heading."""
_MOST_PIECES = 4
"""How many pieces a lane is named after; the headings of lanes are narrow."""

_EASY_SIZE = 7.9
"""Text printed at this size, in points, need not be larger."""


def chart_to_dot(chart: Chart, c: Construction, *, title: str, lanes: Lanes) -> str:
    """Write a chart in the graph language.

    Parameters
    ----------
    chart
        The chart.
    c
        The garment that it is of.
    title
        What stands above it, such as the name of the garment.
    lanes
        What the lanes of the chart stand for.

    Returns
    -------
    str
        The same text for the same chart, byte by byte. Everything in it has its place, so a
        layout program must keep places as they are.
    """
    best: _Page | None = None
    grids: Grids = {}
    for look in LOOKS:
        page = _Page(chart, c, title=title, lanes=lanes, look=look, grids=grids)
        if best is None or page.printed_size > best.printed_size:
            best = page
        if best.printed_size >= _EASY_SIZE:
            break
    assert best is not None
    return "\n".join(best.lines()) + "\n"


@dataclass(frozen=True, slots=True)
class _Part:
    """A table that stands somewhere on the page."""

    table: str
    width: float
    height: float


class _Page:
    """Writes one chart."""

    def __init__(
        self, chart: Chart, c: Construction, *, title: str, lanes: Lanes, look: Look, grids: Grids
    ) -> None:
        self._chart = chart
        self._c = c
        self._title = title
        self._lanes = lanes
        self._look = look
        self._grids = grids
        self._boxes = make_boxes(chart, c)
        self._writer = BoxWriter.fitting(self._boxes, chart, c.garment, look)
        self._numbers = self._writer.numbers
        self._words = [self._lane_words(number) for number in range(len(chart.lanes))]
        self._words_on = [say("chart-lane-goes-on", lane=words) for words in self._words]
        self._lines_drawn = find_lines(chart, c, self._boxes, self._writer)
        self._head = self._make_head()
        keys = make_keys(chart, c, self._numbers, self._boxes, self._lines_drawn, look=look)
        self._gap = look.text_size
        frames = [
            (max(self._head.width, key.width), self._head.height + key.height + 2 * self._gap)
            for key in keys
        ]
        self._layout = self._lay_out(frames)
        self._key = keys[self._layout.frame]
        least, extra = frames[self._layout.frame]
        self._width = max(self._layout.width, least) + 2 * _MARGIN
        self._height = self._layout.height + extra + 2 * _MARGIN

    @property
    def printed_size(self) -> float:
        """How large the words of the rows are on A4, in points."""
        return self._look.text_size * page_scale(self._width, self._height)

    def lines(self) -> Iterator[str]:
        """The text, line by line."""
        yield f"digraph {quote(self._title)} {{"
        yield from self._settings()
        head, top = self._head, self._height - _MARGIN
        yield "subgraph cluster_page {"
        yield (
            f"label=<{head.table}>; lp={_at(_MARGIN + head.width / 2, top - head.height / 2)};"
            f" bb={_numbers(0, 0, self._width, self._height)}; pencolor=none;"
        )
        for number, band in enumerate(self._layout.bands):
            yield from self._lane(number, band)
        yield "}"
        paths = self._layout.paths
        for line in self._lines_drawn:
            yield self._line(line, paths[line.wire])
        yield "}"

    def _lay_out(self, frames: Iterable[tuple[float, float]]) -> Layout:
        return Layouter(
            lanes=tuple(box.lane for box in self._boxes),
            heights=tuple(self._writer.height(box) for box in self._boxes),
            wires=tuple(line.wire for line in self._lines_drawn),
            chain=frozenset(line.wire for line in self._lines_drawn if line.is_chain),
            width=self._writer.width,
            heads=self._heights(self._words),
            heads_on=self._heights(self._words_on),
            label_height=self._look.small.height([""]),
            are_lanes_whole=self._lanes is Lanes.STATION,
            frames=tuple(frames),
            grids=self._grids,
        ).best()

    # -- page ------------------------------------------------------------------------------

    def _settings(self) -> Iterator[str]:
        chain = (operation_words(self._c, self._c.op[id_]) for id_ in self._chart.longest_chain)
        description = say(
            "chart-description",
            operations=len(self._c.operations),
            lanes=len(self._chart.lanes),
            links=len(self._chart.links),
            chain=say("chart-then").join(chain),
        )
        font = f'fontname="{FONT}", fontcolor="{INK}"'
        box = _numbers(0, 0, self._width, self._height)
        yield f"graph [layout=neato, bb={box}, pad=0.06, {font}];"
        yield f"node [shape=none, margin=0, fixedsize=true, {font}];"
        yield (
            f'edge [color="{INK}", arrowhead=vee, arrowsize=0.55, penwidth={LINE_WIDTH},'
            f" {font}, fontsize={self._look.small.size:g}];"
        )
        key = self._key
        yield (
            f"label=<{key.table}>; tooltip={quote(description)};"
            f" lp={_at(_MARGIN + key.width / 2, _MARGIN + key.height / 2)};"
        )

    def _make_head(self) -> _Part:
        look = self._look
        title = wrap(self._title, _TITLE_WIDTH, look.title.size, bold=True)
        below = wrap(say(f"chart-lanes-{self._lanes.value}"), _TITLE_WIDTH, look.small.size)
        width = max(look.title.width(title), look.small.width(below))
        both = ((title, look.title), (below, look.small))
        rows = (
            [text_cell(lines, width, lettering.height(lines), lettering=lettering)]
            for lines, lettering in both
        )
        height = sum(lettering.height(lines) for lines, lettering in both)
        return _Part(table(rows), width, height)

    def _y(self, down: float) -> float:
        """From the distance below the head to what the graph language counts, upwards."""
        return self._height - _MARGIN - self._head.height - self._gap - down

    # -- lanes and boxes -------------------------------------------------------------------

    def _lane(self, number: int, band: Band) -> Iterator[str]:
        is_first = all(other.lane != band.lane for other in self._layout.bands[:number])
        words = self._words[band.lane] if is_first else self._words_on[band.lane]
        left, top, right, bottom = self._layout.frame_of(band)
        lines = self._lane_lines(words)
        label = _words_part(lines, self._look.bold)
        x = _MARGIN + left + _INDENT + label.width / 2
        yield f"subgraph cluster_lane_{number} {{"
        yield (
            f"label=<{label.table}>; lp={_at(x, self._y(top) - label.height / 2)};"
            f" bb={_numbers(_MARGIN + left, self._y(bottom), _MARGIN + right, self._y(top))};"
            f' style=rounded; bgcolor="{PAPER}"; pencolor="{FAINT}"; penwidth={THIN};'
            f" tooltip={quote(self._words[band.lane])};"
        )
        for index in band.items:
            yield self._node(index)
        yield "}"

    def _heights(self, words: Iterable[str]) -> tuple[int, ...]:
        return tuple(self._look.bold.height(self._lane_lines(held)) for held in words)

    def _lane_words(self, number: int) -> str:
        lane = self._chart.lanes[number]
        if self._lanes is Lanes.STATION:
            return station_title(self._c.garment.station[lane.station])
        return unit_words(self._c, lane.unit)

    def _lane_lines(self, words: str) -> tuple[str, ...]:
        width = self._look.bold.wrap_width(self._writer.width)
        return wrap(words, width, self._look.bold.size, bold=True)

    def _node(self, index: int) -> str:
        box = self._boxes[index]
        tooltip = "\n".join(line for row in box.rows for line in self._row_told(row))
        width, height = self._writer.width, self._writer.height(box)
        left, top = self._layout.corner_of(index)
        return (
            f"{name(box.first)} [id={name(f'chart-{box.first}')},"
            f" label=<{self._writer.table(box)}>,"
            f" pos={_at(_MARGIN + left + width / 2, self._y(top) - height / 2)},"
            f" width={width / 72:.4f}, height={height / 72:.4f}, tooltip={quote(tooltip)}];"
        )

    # -- what tooltips say -----------------------------------------------------------------

    def _row_told(self, row: Row) -> Iterator[str]:
        station = station_title(self._c.garment.station[row.operation.setup.station])
        words = operation_words(self._c, row.operation)
        yield say("chart-done-at", operation=words, station=station)
        if row.link:
            yield self._told(row.link.reasons)

    def _told(self, reasons: Iterable[Reason]) -> str:
        return "\n".join(
            say("chart-numbered", number=self._numbers.of([reason]), because=reason.because)
            for reason in reasons
        )

    def _words_of(self, id_: OpId) -> str:
        return operation_words(self._c, self._c.op[id_])

    def _line_told(self, line: Line) -> Iterator[str]:
        for link in line.links:
            yield say(
                "chart-before",
                before=self._words_of(link.arc.before),
                after=self._words_of(link.arc.after),
            )
            yield self._told(link.reasons)
        if line.choices:
            yield self._told(line.choices)

    # -- lines -----------------------------------------------------------------------------

    def _line(self, line: Line, path: Path) -> str:
        before, after = self._boxes[line.wire.before], self._boxes[line.wire.after]
        looks = {"style": line.style, "penwidth": f"{line.weight:g}"}
        if line.tail:
            looks |= {"dir": "both", "arrowtail": line.tail}
        looks["arrowhead"] = line.head if path.reaches else "none"
        if line.is_chain:
            looks["arrowsize"] = "0.8"
        points = [(x + _MARGIN, self._y(y)) for x, y in path.points]
        head = line.head_length if path.reaches else 0
        looks["pos"] = quote(_spline(points, tail=line.tail_length, head=head))
        if path.reaches and line.label:
            x, y = points[-1]
            x += (line.beside + line.wire.label_width) / 2
            looks["label"] = quote(line.label)
            looks["lp"] = _at(x, y + 1 + self._look.small.height([""]) / 2)
        looks["tooltip"] = quote("\n".join(self._line_told(line)))
        told = ", ".join(f"{key}={value}" for key, value in looks.items())
        return f"{name(before.first)} -> {name(after.first)} [{told}];"


def _numbers(*numbers: float) -> str:
    return quote(",".join(f"{number:.2f}" for number in numbers))


def _at(x: float, y: float) -> str:
    return _numbers(x, y)


def _toward(start: Point, end: Point, length: float) -> Point:
    """The point so far from the start on the way to the end."""
    way = abs(end[0] - start[0]) + abs(end[1] - start[1])
    share = length / way if way else 0.0
    return start[0] + (end[0] - start[0]) * share, start[1] + (end[1] - start[1]) * share


def _spline(points: Sequence[Point], *, tail: float, head: float) -> str:
    """A line with rounded corners, as the graph language writes curves.

    ``tail`` and ``head`` are what the signs at its ends take of it, in points.
    """
    held = list(points)
    ends = []
    if tail:
        ends.append(f"s,{held[0][0]:.2f},{held[0][1]:.2f}")
        held[0] = _toward(held[0], held[1], tail)
    if head:
        ends.append(f"e,{held[-1][0]:.2f},{held[-1][1]:.2f}")
        held[-1] = _toward(held[-1], held[-2], head)
    curve = [held[0]]
    for before, corner, after in zip(held, held[1:], held[2:], strict=False):
        reach = min(
            _CORNER,
            *(max(abs(p[0] - corner[0]), abs(p[1] - corner[1])) / 2 for p in (before, after)),
        )
        start, end = _toward(corner, before, reach), _toward(corner, after, reach)
        curve.extend((curve[-1], start, start, corner, corner, end))
    curve.extend((curve[-1], held[-1], held[-1]))
    return " ".join((*ends, *(f"{x:.2f},{y:.2f}" for x, y in curve)))


def _words_part(lines: Sequence[str], lettering: Lettering) -> _Part:
    width, height = lettering.width(lines), lettering.height(lines)
    cell = text_cell(lines, width, height, lettering=lettering)
    return _Part(table([[cell]]), width, height)


def unit_words(c: Construction, unit: Unit) -> str:
    """The part in hand, in words: its pieces, or that it is all of them.

    Parameters
    ----------
    c
        The garment.
    unit
        The pieces in hand.
    """
    pieces = [piece.title for piece in c.garment.pieces if piece.id in unit]
    if len(pieces) == len(c.garment.pieces):
        return say("chart-whole-garment")
    if not pieces:
        return say("chart-no-piece")
    if len(pieces) <= _MOST_PIECES:
        return ", ".join(pieces)
    # The biggest pieces stand first in a file; the others are in the steps.
    shown = ", ".join(pieces[: _MOST_PIECES - 1])
    return say("chart-pieces-and-more", pieces=shown, count=len(pieces) - _MOST_PIECES + 1)
