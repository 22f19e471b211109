"""A box of a chart, made to measure: a heading, and a row for every operation.

A row has a bar where the longest chain runs, the mark of the station in a frame, what is done, and
the number of the reason that puts it after the row above or after what leads to the box.
"""

from collections.abc import Collection, Iterable, Iterator, Mapping
from dataclasses import dataclass

from seqplan.base.ids import OpId
from seqplan.draw.figure import FAINT, INK
from seqplan.draw.textwidth import text_width, wrap
from seqplan.explain.chart import Chart, ChartLink
from seqplan.model.garment import Garment
from seqplan.render.chart_boxes import Box, Row
from seqplan.render.chart_look import STYLE, Lettering, Look
from seqplan.render.chart_reasons import Numbers, number_reasons
from seqplan.render.chart_table import gap_cell, table, table_cell, text_cell

_PAD = 3
_FRAME = 2
"""What the frame of a box adds to its width and to its height."""


@dataclass(frozen=True, slots=True)
class BoxWriter:
    """Writes boxes of one width as tables in the graph language.

    Parameters
    ----------
    look
        The sizes.
    garment
        For the stations.
    numbers
        The numbers of the reasons.
    chain
        The operations of the longest chain.
    led_to
        What stands in the first row of a box for all lines that lead to it, by the first operation.
    text_width
        The room for words in a row.
    number_width
        The room for the numbers of the reasons.
    """

    look: Look
    garment: Garment
    numbers: Numbers
    chain: Collection[OpId]
    led_to: Mapping[OpId, str]
    text_width: int
    number_width: int

    @classmethod
    def fitting(
        cls, boxes: Iterable[Box], chart: Chart, garment: Garment, look: Look
    ) -> "BoxWriter":
        """Find the width that takes all rows, the longest of them wrapped."""
        held = tuple(boxes)
        rows = [row for box in held for row in box.rows]
        text, bold, limit = look.text, look.bold, look.text_limit
        words = [line for row in rows for line in wrap(row.words, limit, text.size)]
        heads = [line for box in held for line in wrap(box.heading, limit, bold.size, bold=True)]
        numbers = number_reasons(chart)
        led_to = _led_to(chart, numbers)
        figures = [numbers.of(row.link.reasons) for row in rows if row.link]
        number_width = look.small.width([*figures, *led_to.values()])
        beside = look.badge_width + number_width
        text_width = max(text.width(words), bold.width(heads) - beside)
        chain = frozenset(chart.longest_chain)
        return cls(look, garment, numbers, chain, led_to, text_width, number_width)

    @property
    def width(self) -> int:
        """The width of every box."""
        return self.look.bar_width + _PAD + self._inner_width + _FRAME

    @property
    def _inner_width(self) -> int:
        return self.look.badge_width + self.text_width + self.number_width

    def height(self, box: Box) -> int:
        """The height of a box."""
        rows = sum(self._row_height(row) + bool(row.link) for row in box.rows)
        return _FRAME + self._heading_height(box) + rows

    def table(self, box: Box) -> str:
        """The box as a table."""
        height = self.height(box) - _FRAME
        on_chain = box.first in self.chain
        count = sum(1 + bool(row.link) for row in box.rows) + bool(box.heading)
        span = f' ROWSPAN="{count}"'
        made: list[list[str]] = []
        if box.heading:
            made.append([self._heading(box)])
        for row in box.rows:
            if row.link:
                made.append([self._rule(row.link)])
            made.append(list(self._row(row)))
        made[0] = [
            gap_cell(self.look.bar_width, height, extra=span + (_BLACK if on_chain else "")),
            gap_cell(_PAD, height, extra=span),
            *made[0],
        ]
        return table(made, border=1, extra=f' BGCOLOR="white" COLOR="{INK}"')

    def _heading(self, box: Box) -> str:
        lines, height = self._heading_lines(box), self._heading_height(box)
        return text_cell(
            lines, self._inner_width, height, lettering=self.look.bold, extra=_OVER_ALL
        )

    def _heading_lines(self, box: Box) -> tuple[str, ...]:
        return self._wrapped(box.heading, self._inner_width, self.look.bold)

    def _heading_height(self, box: Box) -> int:
        if not box.heading:
            return 0
        return max(self.look.row_height, self.look.bold.height(self._heading_lines(box)))

    def _rule(self, link: ChartLink) -> str:
        """A line above a row, in the style of the reason that puts it there."""
        style = STYLE[link.reasons[0].strength].upper()
        looks = f'{_OVER_ALL} BORDER="1" SIDES="T" COLOR="{FAINT}" STYLE="{style}"'
        return gap_cell(self._inner_width, 1, extra=looks)

    def _row(self, row: Row) -> Iterator[str]:
        height = self._row_height(row)
        mark = self.garment.station[row.operation.setup.station].mark
        yield table_cell(badge(mark, self.look), self.look.badge_width, height)
        yield text_cell(self._lines(row), self.text_width, height, lettering=self.look.text)
        if row.link:
            number = self.numbers.of(row.link.reasons)
        else:
            number = self.led_to.get(row.operation.id, "")
        yield text_cell(
            [number], self.number_width, height, lettering=self.look.small, align="RIGHT"
        )

    def _lines(self, row: Row) -> tuple[str, ...]:
        return self._wrapped(row.words, self.text_width, self.look.text)

    def _row_height(self, row: Row) -> int:
        return max(self.look.row_height, self.look.text.height(self._lines(row)))

    def _wrapped(self, text: str, width: int, lettering: Lettering) -> tuple[str, ...]:
        return wrap(text, lettering.wrap_width(width), lettering.size, bold=lettering.bold)


_ABOVE = 2
"""Points above a letter in a frame: a line is centred with the room below it for other letters."""
_OVER_ALL = ' COLSPAN="3"'
_BLACK = f' BGCOLOR="{INK}"'


def _led_to(chart: Chart, numbers: Numbers) -> Mapping[OpId, str]:
    """The numbers that all lines to an operation have in common, where they do."""
    found: dict[OpId, set[str]] = {}
    for link in chart.links:
        found.setdefault(link.arc.after, set()).add(numbers.of(link.reasons))
    return {id_: next(iter(held)) for id_, held in found.items() if len(held) == 1}


def badge(mark: str, look: Look) -> str:
    """The letters of a station in a small frame, smaller if they are wide."""
    room = look.badge_width - 4
    lettering = look.badge
    while text_width(mark, lettering.size, bold=True) > room - 1 and lettering.size > 4:
        lettering = lettering.sized(lettering.size - 0.5)
    height = look.row_height - 4 - _ABOVE
    cell = text_cell([mark], room, height, lettering=lettering, align="CENTER")
    frame = f' FIXEDSIZE="TRUE" WIDTH="{room + 1}" HEIGHT="{look.row_height - 2}" COLOR="{INK}"'
    return table([[gap_cell(room, _ABOVE)], [cell]], border=1, extra=frame)
