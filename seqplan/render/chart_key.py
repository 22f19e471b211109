"""The key of a chart: every line, every station and every reason that occurs in it."""

from collections.abc import Callable, Iterator, Sequence
from dataclasses import dataclass
from math import ceil

from seqplan.base.strength import Strength
from seqplan.draw.figure import FAINT, INK
from seqplan.draw.textwidth import wrap
from seqplan.explain.chart import Chart
from seqplan.graph.reason import ReasonKind
from seqplan.recipes.construction import Construction
from seqplan.render.chart_boxes import Box
from seqplan.render.chart_lines import Line
from seqplan.render.chart_look import STYLE, Lettering, Look
from seqplan.render.chart_node import badge
from seqplan.render.chart_reasons import Numbers
from seqplan.render.chart_table import gap_cell, table, table_cell, text_cell
from seqplan.tell.names import station_title
from seqplan.words.say import say

_WIDEST = 14
"""The widest words, in multiples of the size of the text."""
_GAP = 12
_SIGNS = Lettering(size=7.5)
_MOST_COLUMNS = 5


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


def make_keys(
    chart: Chart,
    c: Construction,
    numbers: Numbers,
    boxes: Sequence[Box],
    lines: Sequence[Line],
    *,
    look: Look,
) -> tuple[Key, ...]:
    """Make the key of a chart in several widths, the narrowest first.

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
    lines
        The lines of the chart.
    look
        The sizes.
    """
    reasons = list(_reasons(numbers, look))
    blocks = [
        _block(look, say("chart-key-lines"), list(_lines(boxes, lines, look))),
        _block(look, say("sheet-stations"), list(_stations(chart, c, look))),
    ]
    most = max(1, min(_MOST_COLUMNS, len(reasons)))
    return tuple(_key([*blocks, *_columns(look, reasons, count)]) for count in range(1, most + 1))


def _columns(look: Look, reasons: Sequence[Entry], count: int) -> Iterator[Block]:
    each = ceil(len(reasons) / count)
    for start in range(0, len(reasons), max(each, 1)):
        head = say("chart-key-reasons") if start == 0 else ""
        yield _block(look, head, reasons[start : start + each])


def _key(blocks: Sequence[Block]) -> Key:
    height = max(block.height for block in blocks)
    cells = [cell for block in blocks for cell in (block.filled(height), gap_cell(_GAP, height))]
    width = sum(block.width + _GAP for block in blocks) - _GAP
    return Key(table([cells[:-1]]), width, height)


def _block(look: Look, head: str, entries: Sequence[Entry]) -> Block:
    """A column of the key."""
    row = max(look.small.height([""]), look.row_height)
    sample_width = _sample_width(look)
    made = [
        (entry.sample, wrap(entry.words, look.text_size * _WIDEST, look.small.size))
        for entry in entries
    ]
    widest = max((look.small.width(lines) for _, lines in made), default=0)
    widest = max(widest, look.badge.width([head]) - sample_width)
    width = sample_width + widest
    rows: list[tuple[str, ...]] = [
        (text_cell([head], width, row + 2, lettering=look.badge, extra=' COLSPAN="2"'),)
    ]
    total = row + 2
    for sample, lines in made:
        height = max(row, look.small.height(lines))
        total += height
        rows.append((sample(height), text_cell(lines, widest, height, lettering=look.small)))
    return Block(tuple(rows), width, total)


# -- lines -------------------------------------------------------------------------------------


def _lines(boxes: Sequence[Box], lines: Sequence[Line], look: Look) -> Iterator[Entry]:
    styles = {line.style for line in lines}
    inner = [row.link for box in boxes for row in box.rows if row.link]
    styles.update(STYLE[link.reasons[0].strength] for link in inner)
    for strength in Strength:
        if STYLE[strength] in styles:
            yield Entry(_arrow(look, STYLE[strength]), say(f"chart-key-{strength.value}"))
    links = [*inner, *(link for line in lines for link in line.links)]
    if any(reason.kind is ReasonKind.SAID for link in links for reason in link.reasons):
        yield Entry(_arrow(look, "solid", tail="○"), say("chart-key-said"))
    if any(link.on_longest_chain for link in links):
        yield Entry(_arrow(look, "solid", weight=2, head="►", bar=True), say("chart-key-chain"))
    if any(line.is_either for line in lines):
        yield Entry(_arrow(look, "dashed", tail="◊", head="◊"), say("chart-key-choice"))
    if any(line.is_fork for line in lines):
        yield Entry(_arrow(look, "dashed", tail="◊"), say("chart-key-fork"))
    if inner:
        yield Entry(_framed(look, _two_rows()), say("chart-key-rows"))


def _arrow(
    look: Look,
    style: str,
    *,
    weight: int = 1,
    tail: str = "",
    head: str = "\u203a",
    bar: bool = False,
) -> Callable[[int], str]:
    """A small arrow, made of the borders of cells and of signs."""
    looks = f' BORDER="{weight}" SIDES="B" COLOR="{INK}" STYLE="{style.upper()}"'
    line = table([[gap_cell(18, 5, extra=looks)], [gap_cell(18, 5)]])
    start = gap_cell(4, 10, extra=f' BGCOLOR="{INK}"') if bar else _sign(tail)
    return _framed(look, table([[start, table_cell(line, 18, 10), _sign(head)]]))


def _sign(sign: str) -> str:
    return text_cell([sign], 6, 10, lettering=_SIGNS, align="CENTER")


def _two_rows() -> str:
    """Two rows of a box."""
    looks = f' BORDER="1" SIDES="T" COLOR="{FAINT}"'
    inner = [[gap_cell(20, 4)], [gap_cell(20, 4, extra=looks)]]
    frame = f' COLOR="{INK}" FIXEDSIZE="TRUE" WIDTH="22" HEIGHT="10"'
    return table(inner, border=1, extra=frame)


def _framed(look: Look, sample: str) -> Callable[[int], str]:
    return lambda height: table_cell(sample, _sample_width(look), height)


def _sample_width(look: Look) -> int:
    """The room for a sample."""
    return max(32, look.badge_width + 6)


# -- stations and reasons ----------------------------------------------------------------------


def _stations(chart: Chart, c: Construction, look: Look) -> Iterator[Entry]:
    used = {op.setup.station for lane in chart.lanes for op in lane.operations}
    for station in c.garment.stations:
        if station.id in used:
            yield Entry(_framed(look, badge(station.mark, look)), station_title(station))


def _reasons(numbers: Numbers, look: Look) -> Iterator[Entry]:
    for number, words in enumerate(numbers.kinds, 1):
        yield Entry(_figure(number, look), words)


def _figure(number: int, look: Look) -> Callable[[int], str]:
    return lambda height: text_cell(
        [str(number)], _sample_width(look), height, lettering=look.small, align="CENTER"
    )
