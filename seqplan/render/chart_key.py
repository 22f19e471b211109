"""The key of a chart: every line, every station and every reason that occurs in it."""

from collections.abc import Iterator, Sequence
from itertools import islice
from math import ceil

from seqplan.base.strength import Strength
from seqplan.explain.chart import Chart
from seqplan.graph.reason import ReasonKind
from seqplan.recipes.construction import Construction
from seqplan.render.chart_boxes import Box
from seqplan.render.chart_look import LOOK, SMALL, STYLE, Lettering
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
_HEAD = Lettering(size=LOOK.small, bold=True)

Entry = tuple[str, str]
"""A sample, as a cell, and the words for it."""


def key_rows(numbers: Numbers) -> int:
    """How many rows the key has below its headings, about."""
    return max(_LEAST_ROWS, ceil(len(numbers.kinds) / 3)) + 1


def key_table(
    chart: Chart, c: Construction, numbers: Numbers, boxes: Sequence[Box]
) -> str:
    """The key as a table in the graph language.

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
        blocks.append(_block(head, list(islice(reasons, start, start + each))))
    cells = [cell for block in blocks for cell in (block, gap_cell(_GAP, _ROW))]
    return table([cells[:-1]])


def _block(head: str, entries: Sequence[Entry]) -> str:
    """A column of the key."""
    limit = _WIDEST - LOOK.slack
    made = [(sample, wrap(words, limit, SMALL.size)) for sample, words in entries]
    width = max((SMALL.width(lines) for _, lines in made), default=0)
    over = max(width, _HEAD.width([head]) - _SAMPLE)
    head_cell = text_cell(
        [head], _SAMPLE + over, _ROW + 2, lettering=_HEAD, extra=' COLSPAN="2"'
    )
    rows = [[head_cell]]
    for sample, lines in made:
        height = max(_ROW, SMALL.height(lines) - 2)
        rows.append([
            table_cell(sample, _SAMPLE, height),
            text_cell(lines, over, height, lettering=SMALL),
        ])
    return f'<TD VALIGN="TOP">{table(rows)}</TD>'


# -- lines -------------------------------------------------------------------------------------


def _lines(chart: Chart, boxes: Sequence[Box]) -> Iterator[Entry]:
    reasons = [link.reasons[0] for link in chart.links]
    for strength in Strength:
        if any(reason.strength is strength for reason in reasons):
            yield _arrow(STYLE[strength]), say(f"chart-key-{strength.value}")
    if any(r.kind is ReasonKind.SAID for link in chart.links for r in link.reasons):
        yield _arrow("solid", tail="○"), say("chart-key-said")
    if chart.longest_chain:
        yield _arrow("solid", weight=2, head="►", bar=True), say("chart-key-chain")
    if chart.choices:
        yield _arrow("dashed", tail="◊", head="◊"), say("chart-key-choice")
    if any(row.link for box in boxes for row in box.rows):
        yield _rows_sample(), say("chart-key-rows")


def _arrow(
    style: str, *, weight: int = 1, tail: str = "", head: str = "›", bar: bool = False
) -> str:
    """A small arrow, made of the borders of cells and of signs."""
    looks = f' BORDER="{weight}" SIDES="B" COLOR="{LOOK.ink}" STYLE="{style.upper()}"'
    line = table([[gap_cell(18, 5, extra=looks)], [gap_cell(18, 5)]])
    start = gap_cell(4, 10, extra=f' BGCOLOR="{LOOK.ink}"') if bar else _sign(tail)
    return table([[start, table_cell(line, 18, 10), _sign(head)]])


def _sign(sign: str) -> str:
    return text_cell([sign], 6, 10, lettering=SMALL, align="CENTER")


def _rows_sample() -> str:
    """Two rows of a box."""
    looks = f' BORDER="1" SIDES="T" COLOR="{LOOK.faint}"'
    inner = [[gap_cell(20, 4)], [gap_cell(20, 4, extra=looks)]]
    frame = f' COLOR="{LOOK.ink}" FIXEDSIZE="TRUE" WIDTH="22" HEIGHT="10"'
    return table(inner, border=1, extra=frame)


# -- stations and reasons ----------------------------------------------------------------------


def _stations(chart: Chart, c: Construction) -> Iterator[Entry]:
    used = {op.setup.station for lane in chart.lanes for op in lane.operations}
    for station in c.garment.stations:
        if station.id in used:
            yield badge(station.mark), station.title


def _reasons(numbers: Numbers) -> Iterator[Entry]:
    for kind in numbers.kinds:
        cell = text_cell(
            [str(kind.number)], _SAMPLE - 8, 10, lettering=SMALL, align="RIGHT"
        )
        words = say("chart-key-either", words=kind.words) if kind.is_either_or else kind.words
        yield table([[cell]]), words
