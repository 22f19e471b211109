"""The key of a chart: every line, every station and every reason that occurs in it."""

from collections.abc import Callable, Iterator, Sequence
from dataclasses import dataclass
from math import ceil

from seqplan.base.strength import Strength
from seqplan.explain.chart import Chart
from seqplan.graph.reason import ReasonKind
from seqplan.recipes.construction import Construction
from seqplan.render.chart_boxes import Box
from seqplan.render.chart_look import BADGE, LOOK, SMALL, STYLE
from seqplan.render.chart_node import badge
from seqplan.render.chart_reasons import Numbers
from seqplan.render.chart_table import gap_cell, table, table_cell, text_cell
from seqplan.render.textwidth import wrap
from seqplan.words.say import say

_ROW = 12
_SAMPLE = 34
_WIDEST = 150
_GAP = 14
_LEAST_ROWS = 6


@dataclass(frozen=True, slots=True)
class Entry:
    """One line of the key: a sample, made for the height it is given, and its words."""

    sample: Callable[[int], str]
    words: str


@dataclass(frozen=True, slots=True)
class Block:
    """A column of the key: rows of cells, without the filling at its foot."""

    rows: tuple[tuple[str, ...], ...]
    width: int
    height: int

    def filled(self, height: int) -> str:
        """The block as a cell of this height."""
        rows = [*self.rows]
        if height > self.height:
            rows.append((gap_cell(self.width, height - self.height, extra=' COLSPAN="2"'),))
        return table_cell(table(rows), self.width, height)


@dataclass(frozen=True, slots=True)
class Key:
    """The key as a table, and its size in points."""

    table: str
    width: int
    height: int


def make_key(chart: Chart, c: Construction, numbers: Numbers, boxes: Sequence[Box]) -> Key:
    """Make the key of a chart.

    Parameters
    ----------
    chart
        The chart.
    c
        The garment.
    numbers
        The numbers of the reasons.
    boxes
        The boxes of the chart.
    """
    reasons = list(_reasons(numbers))
    each = max(_LEAST_ROWS, ceil(len(reasons) / 2))
    blocks = [
        _block(say("chart-key-lines"), list(_lines(chart, boxes))),
        _block(say("chart-key-stations"), list(_stations(chart, c))),
    ]
    for start in range(0, len(reasons), each):
        head = say("chart-key-reasons") if start == 0 else ""
        blocks.append(_block(head, reasons[start : start + each]))
    height = max(block.height for block in blocks)
    cells = [cell for block in blocks for cell in (block.filled(height), gap_cell(_GAP, height))]
    width = sum(block.width + _GAP for block in blocks) - _GAP
    return Key(table([cells[:-1]]), width, height)


def _block(head: str, entries: Sequence[Entry]) -> Block:
    """A column of the key."""
    made = [(entry.sample, wrap(entry.words, _WIDEST, SMALL.size)) for entry in entries]
    widest = max((SMALL.width(lines) for _, lines in made), default=0)
    widest = max(widest, BADGE.width([head]) - _SAMPLE)
    rows: list[tuple[str, ...]] = [
        (text_cell([head], _SAMPLE + widest, _ROW + 2, lettering=BADGE, extra=' COLSPAN="2"'),)
    ]
    total = _ROW + 2
    for sample, lines in made:
        height = max(_ROW, SMALL.height(lines) - 2)
        total += height
        rows.append((sample(height), text_cell(lines, widest, height, lettering=SMALL)))
    return Block(tuple(rows), _SAMPLE + widest, total)


# -- lines -------------------------------------------------------------------------------------


def _lines(chart: Chart, boxes: Sequence[Box]) -> Iterator[Entry]:
    strengths = {reason.strength for link in chart.links for reason in link.reasons[:1]}
    for strength in Strength:
        if strength in strengths:
            yield Entry(_arrow(STYLE[strength]), say(f"chart-key-{strength.value}"))
    if any(r.kind is ReasonKind.SAID for link in chart.links for r in link.reasons):
        yield Entry(_arrow("solid", tail="○"), say("chart-key-said"))
    if chart.longest_chain:
        yield Entry(_arrow("solid", weight=2, head="►", bar=True), say("chart-key-chain"))
    if chart.choices:
        yield Entry(_arrow("dashed", tail="◊", head="◊"), say("chart-key-choice"))
    if any(row.link for box in boxes for row in box.rows):
        yield Entry(_framed(_two_rows()), say("chart-key-rows"))


def _arrow(
    style: str, *, weight: int = 1, tail: str = "", head: str = "›", bar: bool = False
) -> Callable[[int], str]:
    """A small arrow, made of the borders of cells and of signs."""
    looks = f' BORDER="{weight}" SIDES="B" COLOR="{LOOK.ink}" STYLE="{style.upper()}"'
    line = table([[gap_cell(18, 5, extra=looks)], [gap_cell(18, 5)]])
    start = gap_cell(4, 10, extra=f' BGCOLOR="{LOOK.ink}"') if bar else _sign(tail)
    return _framed(table([[start, table_cell(line, 18, 10), _sign(head)]]))


def _sign(sign: str) -> str:
    return text_cell([sign], 6, 10, lettering=SMALL, align="CENTER")


def _two_rows() -> str:
    """Two rows of a box."""
    looks = f' BORDER="1" SIDES="T" COLOR="{LOOK.faint}"'
    inner = [[gap_cell(20, 4)], [gap_cell(20, 4, extra=looks)]]
    frame = f' COLOR="{LOOK.ink}" FIXEDSIZE="TRUE" WIDTH="22" HEIGHT="10"'
    return table(inner, border=1, extra=frame)


def _framed(sample: str) -> Callable[[int], str]:
    return lambda height: table_cell(sample, _SAMPLE, height)


# -- stations and reasons ----------------------------------------------------------------------


def _stations(chart: Chart, c: Construction) -> Iterator[Entry]:
    used = {op.setup.station for lane in chart.lanes for op in lane.operations}
    for station in c.garment.stations:
        if station.id in used:
            yield Entry(_framed(badge(station.mark)), station.title)


def _reasons(numbers: Numbers) -> Iterator[Entry]:
    for kind in numbers.kinds:
        words = say("chart-key-either", words=kind.words) if kind.is_either_or else kind.words
        yield Entry(_figure(kind.number), words)


def _figure(number: int) -> Callable[[int], str]:
    return lambda height: text_cell([str(number)], _SAMPLE, height, lettering=SMALL, align="CENTER")
