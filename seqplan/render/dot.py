"""A chart of the dependencies in the graph language: lanes, boxes, reasons, and a key to it all.

1. Operations of one entry that simply follow one another become rows of one box.
2. Every text is measured in the shipped font and every box gets its size here, so that a layout
   program only has to place boxes and draw lines.
3. Boxes are put on levels so that the whole fits a page.
4. The kinds of reason are numbered; the number stands beside the arc, the words in the key.

Nothing rests on colour: strength is the style of a line, the longest chain its weight and a bar
beside the operation, a station its letter.
"""

import itertools
from collections.abc import Iterable, Iterator

from seqplan.base.ids import OpId
from seqplan.explain.chart import Chart, ChartLink, Lane, Lanes
from seqplan.graph.reason import Reason, ReasonKind
from seqplan.plan.unit import Unit
from seqplan.recipes.construction import Construction
from seqplan.render.chart_boxes import Box, Row, make_boxes, operation_words
from seqplan.render.chart_choices import Choice, find_choices
from seqplan.render.chart_key import make_keys
from seqplan.render.chart_layers import Arrangement, Item, Spacing
from seqplan.render.chart_look import (
    CHAIN_WIDTH,
    FAINT,
    FONT,
    GROUND,
    INK,
    LINE_WIDTH,
    LOOKS,
    STYLE,
    Lettering,
    Look,
)
from seqplan.render.chart_node import BoxWriter
from seqplan.render.chart_table import gap_cell, table, table_cell, text_cell
from seqplan.render.quoting import name, quote
from seqplan.render.textwidth import wrap
from seqplan.words.say import say

_LANE_MARGIN = 6
_AROUND = 4
_SIDE_GAP = 9
_LEVEL_GAP = 35
_LANE_ROOM = 24
_KNOT = 10
_LEVEL_SEP = 0.1
_TITLE_WIDTH = 460
_TITLE_HEIGHT = 50
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
        The same text for the same chart, byte by byte.
    """
    best: _Page | None = None
    for look in LOOKS:
        page = _Page(chart, c, title=title, lanes=lanes, look=look)
        if best is None or page.printed_size > best.printed_size:
            best = page
        if best.printed_size >= _EASY_SIZE:
            break
    assert best is not None
    return "\n".join(best.lines()) + "\n"


class _Page:
    """Writes one chart."""

    def __init__(
        self, chart: Chart, c: Construction, *, title: str, lanes: Lanes, look: Look
    ) -> None:
        self._chart = chart
        self._c = c
        self._title = title
        self._lanes = lanes
        self._look = look
        self._boxes = make_boxes(chart, c)
        self._box_of = {
            row.operation.id: number for number, box in enumerate(self._boxes) for row in box.rows
        }
        self._writer = BoxWriter.fitting(self._boxes, chart, c.garment, look)
        self._numbers = self._writer.numbers
        self._alone = frozenset(self._boxes_alone())
        self._keys = make_keys(chart, c, self._numbers, self._boxes, look=look)
        self._choices = find_choices(c, chart.choices, self._box_of)

        self._arrangement = self._arrange()
        self._key = self._keys[self._arrangement.frame]

    @property
    def printed_size(self) -> float:
        """How large the words of the rows are on A4, about, in points."""
        return self._look.text_size * self._arrangement.scale(self._arrangement.levels)

    def lines(self) -> Iterator[str]:
        """The text, line by line."""
        yield f"digraph {quote(self._title)} {{"
        yield from self._settings()
        yield "subgraph cluster_page {"
        yield f"label=<{self._head()}>; labelloc=t; labeljust=l; pencolor=none; margin=4;"
        for number, lane in enumerate(self._chart.lanes):
            yield from self._lane(number, lane)
        for number, choice in enumerate(self._choices):
            if not choice.ends:
                yield self._knot(number, choice)
        yield "}"
        yield from self._links()
        yield from self._choice_lines()
        yield from self._levels()
        yield "}"

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
        yield (
            f"graph [rankdir={'TB' if self._arrangement.runs_down else 'LR'}, newrank=true,"
            " labelloc=b, labeljust=l, pad=0.06,"
            f" nodesep={_SIDE_GAP / 72:.3f}, ranksep={_LEVEL_SEP}, {font}];"
        )
        yield f"node [shape=none, margin=0, fixedsize=true, {font}];"
        yield (
            f'edge [color="{INK}", arrowhead=vee, arrowsize=0.55, penwidth={LINE_WIDTH},'
            f" {font}, fontsize={self._look.small.size:g}];"
        )
        yield f"label=<{self._key.table}>; tooltip={quote(description)};"

    def _head(self) -> str:
        look = self._look
        title = wrap(self._title, _TITLE_WIDTH, look.title.size, bold=True)
        below = wrap(say(f"chart-lanes-{self._lanes.value}"), _TITLE_WIDTH, look.small.size)
        width = max(look.title.width(title), look.small.width(below), self._key.width)
        return table(
            [text_cell(lines, width, lettering.height(lines), lettering=lettering)]
            for lines, lettering in ((title, look.title), (below, look.small))
        )

    # -- lanes and boxes -------------------------------------------------------------------

    def _boxes_alone(self) -> Iterator[int]:
        """Boxes that are alone in their lane; the lane is then drawn as a part of the box."""
        lanes = [box.lane for box in self._boxes]
        if self._lanes is Lanes.UNIT and len(set(lanes)) > 1:
            yield from (number for number, lane in enumerate(lanes) if lanes.count(lane) == 1)

    def _lane(self, number: int, lane: Lane) -> Iterator[str]:
        words = self._lane_words(lane)
        held = [index for index, box in enumerate(self._boxes) if box.lane == number]
        if self._alone.issuperset(held):
            yield from (self._node(index) for index in held)
            return
        yield f"subgraph cluster_lane_{number} {{"
        yield (
            f"label=<{_words_table(words, self._writer.width, self._look.bold)}>;"
            " labelloc=t; labeljust=l;"
            f' margin={_LANE_MARGIN}; style=rounded; bgcolor="{GROUND}";'
            f' pencolor="{FAINT}"; penwidth=0.5; tooltip={quote(words)};'
        )
        yield from (self._node(index) for index in held)
        yield "}"

    def _lane_words(self, lane: Lane) -> str:
        if self._lanes is Lanes.STATION:
            return self._c.garment.station[lane.station].title
        return unit_words(self._c, lane.unit)

    def _node(self, index: int) -> str:
        box = self._boxes[index]
        label = self._writer.table(box)
        if index in self._alone:
            label = self._lane_around(box)
        tooltip = "\n".join(line for row in box.rows for line in self._row_told(row))
        width, height = self._size(index)
        return (
            f"{name(box.first)} [id={name(f'chart-{box.first}')}, label=<{label}>,"
            f" width={width / 72:.4f}, height={height / 72:.4f}, tooltip={quote(tooltip)}];"
        )

    def _size(self, index: int) -> tuple[int, int]:
        """Width and height of a box, with the lane around it if it is alone there."""
        box = self._boxes[index]
        width, height = self._writer.width, self._writer.height(box)
        if index not in self._alone:
            return width, height
        lines = self._lane_lines(box.lane)
        return width + 2 * _AROUND + 2, height + self._look.bold.height(lines) + _AROUND + 2

    def _lane_lines(self, lane: int) -> tuple[str, ...]:
        words = self._lane_words(self._chart.lanes[lane])
        width = self._look.bold.wrap_width(self._writer.width)
        return wrap(words, width, self._look.bold.size, bold=True)

    def _lane_around(self, box: Box) -> str:
        """A box with its lane drawn round it."""
        lines = self._lane_lines(box.lane)
        width, height = self._writer.width, self._writer.height(box)
        head = text_cell(lines, width, self._look.bold.height(lines), lettering=self._look.bold)
        beside = gap_cell(_AROUND, height)
        rows = [
            [gap_cell(_AROUND, self._look.bold.height(lines)), head, gap_cell(_AROUND, 1)],
            [beside, table_cell(self._writer.table(box), width, height), beside],
            [gap_cell(width, _AROUND, extra=' COLSPAN="3"')],
        ]
        return table(rows, border=1, extra=f' STYLE="ROUNDED" BGCOLOR="{GROUND}" COLOR="{FAINT}"')

    def _knot(self, number: int, choice: Choice) -> str:
        return (
            f'"knot {number}" [label="", shape=diamond, style=filled, fillcolor=white,'
            f' color="{INK}", penwidth={LINE_WIDTH}, width={_KNOT / 72:.3f},'
            f" height={_KNOT / 72:.3f}, tooltip={quote(self._told(choice.reasons))}];"
        )

    # -- what tooltips say -----------------------------------------------------------------

    def _row_told(self, row: Row) -> Iterator[str]:
        station = self._c.garment.station[row.operation.setup.station].title
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

    # -- lines -----------------------------------------------------------------------------

    def _links(self) -> Iterator[str]:
        for link in self._chart.links:
            before, after = self._ends(link)
            if before != after:
                yield f"{self._at(before)} -> {self._at(after)} [{', '.join(self._looks(link))}];"

    def _ends(self, link: ChartLink) -> tuple[int, int]:
        return self._box_of[link.arc.before], self._box_of[link.arc.after]

    def _at(self, box: int) -> str:
        return name(self._boxes[box].first)

    def _looks(self, link: ChartLink) -> Iterator[str]:
        yield f"style={STYLE[link.reasons[0].strength]}"
        if link.on_longest_chain:
            yield f"penwidth={CHAIN_WIDTH}, arrowhead=normal, weight=4"
        if any(reason.kind is ReasonKind.SAID for reason in link.reasons):
            yield "dir=both, arrowtail=odot"
        if link.arc.after not in self._writer.led_to:
            yield self._label(link.reasons)
        words = say(
            "chart-before",
            before=self._words_of(link.arc.before),
            after=self._words_of(link.arc.after),
        )
        yield f"tooltip={quote(words + chr(10) + self._told(link.reasons))}"

    def _label(self, reasons: Iterable[Reason]) -> str:
        return f'label=" {self._numbers.of(reasons)}"'

    def _choice_lines(self) -> Iterator[str]:
        for number, choice in enumerate(self._choices):
            if choice.ends:
                one, other = (self._at(end) for end in choice.ends)
                looks = "style=dashed, dir=both, arrowhead=odiamond, arrowtail=odiamond"
                label = self._label(choice.reasons)
                told = quote(self._told(choice.reasons))
                yield f"{one} -> {other} [{looks}, {label}, tooltip={told}];"
                continue
            for box in choice.before:
                yield f'{self._at(box)} -> "knot {number}" [style=dashed, dir=none];'
            for box in choice.after:
                label = self._label(choice.reasons)
                yield f'"knot {number}" -> {self._at(box)} [style=dashed, {label}];'

    # -- levels ----------------------------------------------------------------------------

    def _levels(self) -> Iterator[str]:
        levels = self._arrangement.levels
        names = [self._at(box) for box in range(len(self._boxes))]
        names.extend(f'"knot {n}"' for n, choice in enumerate(self._choices) if not choice.ends)
        for level in levels:
            yield "{rank=same; " + "; ".join(names[item] for item in level) + "}"
        for upper, lower in itertools.pairwise(levels):
            yield f"{names[upper[0]]} -> {names[lower[0]]} [style=invis, weight=0];"

    def _arrange(self) -> Arrangement:
        """Put the boxes on levels, running down the page or across, whichever prints larger."""
        sizes = (self._size(index) for index in range(len(self._boxes)))
        boxes = [Item(box.lane, *size) for box, size in zip(self._boxes, sizes, strict=True)]
        knots = [choice for choice in self._choices if not choice.ends]
        arcs = {self._ends(link) for link in self._chart.links}
        arcs = {(before, after) for before, after in arcs if before != after}
        wished: list[tuple[int, ...]] = []
        for number, choice in enumerate(knots, len(boxes)):
            wished.extend((box, number) for box in choice.before)
            wished.extend((number, box) for box in choice.after)
        wished.extend(choice.ends for choice in self._choices if choice.ends)
        for one, other in wished:
            if not _leads(arcs, other, one):
                arcs.add((one, other))
        items = (*boxes, *(Item(None, _KNOT, _KNOT) for _ in knots))
        spacing = Spacing(
            beside=_SIDE_GAP,
            lane=_LANE_ROOM,
            gap=_LEVEL_GAP,
            frames=tuple((key.width, _TITLE_HEIGHT + key.height) for key in self._keys),
        )
        is_station = self._lanes is Lanes.STATION
        ways = (True,) if is_station else (False, True)
        tried = [Arrangement(items, frozenset(arcs), down, is_station, spacing) for down in ways]
        return max(tried, key=lambda arrangement: arrangement.scale(arrangement.levels))


def _leads(arcs: Iterable[tuple[int, int]], start: int, end: int) -> bool:
    """Whether arcs lead from one box to another."""
    held = tuple(arcs)
    seen, waiting = {start}, [start]
    while waiting:
        here = waiting.pop()
        found = {after for before, after in held if before == here} - seen
        seen |= found
        waiting.extend(found)
    return end in seen


def _words_table(text: str, width: int, lettering: Lettering) -> str:
    lines = wrap(text, width, lettering.size, bold=lettering.bold)
    cell = text_cell(lines, lettering.width(lines), lettering.height(lines), lettering=lettering)
    return table([[cell]])


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
    if len(pieces) <= _MOST_PIECES:
        return ", ".join(pieces)
    # The biggest pieces stand first in a file; the others are in the steps.
    shown = ", ".join(pieces[: _MOST_PIECES - 1])
    return say("chart-pieces-and-more", pieces=shown, count=len(pieces) - _MOST_PIECES + 1)
