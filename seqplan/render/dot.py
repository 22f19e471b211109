"""A chart of the dependencies in the graph language: lanes, boxes, reasons, and a key to it all.

1. Operations of one entry that simply follow one another become rows of one box (`make_boxes`).
2. Every text is measured in the shipped font and every box gets its size here, so that a layout
   program only has to place boxes and draw lines.
3. The kinds of reason are numbered; the number stands beside the arc, the words in the key.

Nothing rests on colour: strength is the style of a line, the longest chain its weight and a bar
beside the operation, a station a letter.
"""

from collections.abc import Iterator, Sequence

from seqplan.base.ids import OpId
from seqplan.explain.chart import Chart, ChartLink, Lane, Lanes
from seqplan.graph.reason import Reason, ReasonKind
from seqplan.plan.unit import Unit
from seqplan.recipes.construction import Construction
from seqplan.render.chart_boxes import Box, Row, make_boxes, operation_words
from seqplan.render.chart_key import key_table
from seqplan.render.chart_look import CHAIN_WIDTH, LINE_WIDTH, LOOK, STYLE
from seqplan.render.chart_reasons import Numbers, number_reasons
from seqplan.render.chart_table import Lettering, gap_cell, table, table_cell, text_cell
from seqplan.render.quoting import name, quote
from seqplan.render.textwidth import wrap
from seqplan.words.say import say

_TEXT = Lettering()
_BOLD = Lettering(bold=True)
_SMALL = Lettering(size=LOOK.small)
_BADGE = Lettering(size=LOOK.small, bold=True)
_HEADING = Lettering(size=LOOK.heading, bold=True)
_TITLE = Lettering(size=LOOK.title, bold=True)


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
    return "\n".join(_Writer(chart, c, title, lanes).lines()) + "\n"


class _Writer:
    """Writes one chart."""

    def __init__(self, chart: Chart, c: Construction, title: str, lanes: Lanes) -> None:
        self._chart = chart
        self._c = c
        self._title = title
        self._lanes = lanes
        self._boxes = make_boxes(chart, c)
        self._box_of = {
            row.operation.id: number for number, box in enumerate(self._boxes) for row in box.rows
        }
        self._chain = frozenset(chart.longest_chain)
        self._numbers: Numbers = number_reasons(chart)
        self._text_width = self._widest_text()

    def lines(self) -> Iterator[str]:
        """The text, line by line."""
        yield f"digraph {quote(self._title)} {{"
        yield from self._settings()
        yield "subgraph cluster_page {"
        yield f"label=<{self._heading(self._title, 400, _TITLE)}>; labelloc=t; labeljust=l;"
        yield 'pencolor=none; bgcolor="none"; margin=4;'
        for number, lane in enumerate(self._chart.lanes):
            yield from self._lane(number, lane)
        yield "}"
        yield from self._links()
        yield from self._choices()
        yield "}"

    # -- settings --------------------------------------------------------------------------

    def _settings(self) -> Iterator[str]:
        description = say(
            "chart-description",
            operations=len(self._c.operations),
            lanes=len(self._chart.lanes),
            links=len(self._chart.links),
            chain=" → ".join(operation_words(self._c, self._c.op[i]) for i in self._chart.longest_chain),
        )
        yield f"label=<{key_table(self._chart, self._c, self._numbers)}>;"
        yield f"tooltip={quote(description)};"
        yield (
            f'graph [rankdir=TB, newrank=true, labelloc=b, labeljust=l, nodesep=0.14, ranksep=0.2,'
            f' fontname="{LOOK.font}", fontsize={LOOK.text:g}, fontcolor="{LOOK.ink}", pad=0.06];'
        )
        yield f'node [shape=none, margin=0, fixedsize=true, fontname="{LOOK.font}", fontcolor="{LOOK.ink}"];'
        yield (
            f'edge [color="{LOOK.ink}", arrowhead=vee, arrowsize=0.55, penwidth={LINE_WIDTH},'
            f' fontname="{LOOK.font}", fontsize={LOOK.small:g}, fontcolor="{LOOK.ink}"];'
        )

    # -- lanes and boxes -------------------------------------------------------------------

    def _lane(self, number: int, lane: Lane) -> Iterator[str]:
        heading = self._heading(self._lane_words(lane), self._box_width() + 8, _HEADING)
        yield f"subgraph cluster_lane_{number} {{"
        yield f'label=<{heading}>; labelloc=t; labeljust=l; margin=7; pencolor="{LOOK.faint}";'
        yield f'penwidth=0.5; bgcolor="{LOOK.lane}"; style=rounded; tooltip={quote(self._lane_words(lane))};'
        for box in self._boxes:
            if box.lane == number:
                yield self._node(box)
        yield "}"

    def _lane_words(self, lane: Lane) -> str:
        if self._lanes is Lanes.STATION:
            return self._c.garment.station[lane.station].title
        return unit_words(self._c, lane.unit)

    def _heading(self, text: str, width: int, lettering: Lettering) -> str:
        lines = wrap(text, width, lettering.size, bold=lettering.bold)
        cell = text_cell(lines, lettering.width(lines), lettering.height(lines), lettering=lettering)
        return table([[cell]])

    def _node(self, box: Box) -> str:
        rows = [self._row(row) for row in box.rows]
        height = 2 + sum(self._row_height(row) for row in box.rows)
        if box.heading:
            lines = wrap(box.heading, self._heading_width(), _BOLD.size, bold=True)
            tall = _BOLD.height(lines)
            cell = text_cell(
                lines, self._heading_width(), tall, lettering=_BOLD, extra=' COLSPAN="3"'
            )
            rows.insert(0, [gap_cell(LOOK.bar, tall), cell])
            height += tall
        made = table(rows, extra=f' BGCOLOR="white" COLOR="{LOOK.ink}"').replace(
            'BORDER="0"', 'BORDER="1"', 1
        )
        width = self._box_width()
        tooltip = "\n".join(line for row in box.rows for line in self._told(row))
        return (
            f"{name(box.first)} [id={name('chart-' + box.first)}, label=<{made}>,"
            f" width={width / 72:.4f}, height={height / 72:.4f}, tooltip={quote(tooltip)}];"
        )

    def _told(self, row: Row) -> Iterator[str]:
        station = self._c.garment.station[row.operation.setup.station].title
        yield say("chart-done-at", operation=operation_words(self._c, row.operation), station=station)
        for reason in row.link.reasons if row.link else ():
            yield f"({self._numbers.of([reason])}) {reason.because}"

    def _row(self, row: Row) -> Sequence[str]:
        height = self._row_height(row)
        on_chain = row.operation.id in self._chain
        rule = ""
        if row.link:
            style = STYLE[row.link.reasons[0].strength].upper()
            rule = f' BORDER="1" SIDES="T" COLOR="{LOOK.faint}" STYLE="{style}"'
        badge = self._c.garment.station[row.operation.setup.station].mark
        number = self._numbers.of(row.link.reasons) if row.link else ""
        return (
            gap_cell(LOOK.bar, height, extra=f' BGCOLOR="{LOOK.ink}"' if on_chain else ""),
            table_cell(badge_table(badge), LOOK.badge, height, extra=rule),
            text_cell(
                wrap(row.words, self._text_width - LOOK.slack, _TEXT.size),
                self._text_width,
                height,
                lettering=_TEXT,
                extra=rule,
            ),
            text_cell([number], LOOK.number, height, lettering=_SMALL, align="RIGHT", extra=rule),
        )

    def _row_height(self, row: Row) -> int:
        lines = wrap(row.words, self._text_width - LOOK.slack, _TEXT.size)
        return max(LOOK.row, _TEXT.height(lines))

    def _widest_text(self) -> int:
        rows = [row for box in self._boxes for row in box.rows]
        limit = LOOK.text_limit
        return max((_TEXT.width(wrap(row.words, limit, _TEXT.size)) for row in rows), default=limit)

    def _heading_width(self) -> int:
        return LOOK.badge + self._text_width + LOOK.number

    def _box_width(self) -> int:
        return LOOK.bar + self._heading_width() + 2

    # -- links -----------------------------------------------------------------------------

    def _links(self) -> Iterator[str]:
        for link in self._chart.links:
            before, after = (self._box_of[id_] for id_ in (link.arc.before, link.arc.after))
            if before != after:
                yield f"{self._point(before)} -> {self._point(after)} [{self._looks(link)}];"

    def _point(self, box: int) -> str:
        return name(self._boxes[box].first)

    def _looks(self, link: ChartLink) -> str:
        reasons = link.reasons
        looks = [f"style={STYLE[reasons[0].strength]}"]
        if link.on_longest_chain:
            looks.append(f"penwidth={CHAIN_WIDTH}, arrowhead=normal, weight=8")
        if any(reason.kind is ReasonKind.SAID for reason in reasons):
            looks.append("dir=both, arrowtail=odot")
        looks.append(f'label=" {self._numbers.of(reasons)}"')
        told = [self._arc_words(link.arc.before, link.arc.after)]
        told.extend(f"({self._numbers.of([reason])}) {reason.because}" for reason in reasons)
        looks.append(f"tooltip={quote(chr(10).join(told))}")
        return ", ".join(looks)

    def _arc_words(self, before: OpId, after: OpId) -> str:
        return say(
            "chart-before",
            before=operation_words(self._c, self._c.op[before]),
            after=operation_words(self._c, self._c.op[after]),
        )

    def _choices(self) -> Iterator[str]:
        pairs: dict[tuple[int, int], list[Reason]] = {}
        for reason in self._chart.choices:
            ends = sorted({self._box_of[b[0].after] for b in reason.alternatives})
            pairs.setdefault((ends[0], ends[-1]), []).append(reason)
        for (one, other), reasons in pairs.items():
            yield (
                f"{self._point(one)} -> {self._point(other)} [dir=both, arrowhead=odiamond,"
                f' arrowtail=odiamond, style=dashed, constraint=false, label=" {self._numbers.of(reasons)}",'
                f" tooltip={quote(chr(10).join(reason.because for reason in reasons))}];"
            )


def badge_table(mark: str) -> str:
    """The letters of a station in a small frame."""
    cell = text_cell([mark], 11, 9, lettering=_BADGE, align="CENTER")
    return table([[cell]], extra=f' COLOR="{LOOK.ink}"').replace('BORDER="0"', 'BORDER="1"', 1)


def unit_words(c: Construction, unit: Unit) -> str:
    """The part in hand, in words: its pieces, or that it is all of them."""
    pieces = [piece.title for piece in c.garment.pieces if piece.id in unit]
    if len(pieces) == len(c.garment.pieces):
        return say("chart-whole-garment")
    return ", ".join(pieces)
