"""What a chart puts into one box: operations of one entry that simply follow one another.

Links between such operations say nothing that the rows of a box do not say, so they are drawn as
rows. Nothing from outside comes between: a link comes in at the first row or leaves at the last.
"""

from collections.abc import Mapping
from dataclasses import dataclass

from seqplan.base.ids import EntryId, OpId
from seqplan.explain.chart import Chart, ChartLink
from seqplan.model.operation import Operation
from seqplan.recipes.construction import Construction
from seqplan.words.say import say, translated


@dataclass(frozen=True, slots=True)
class Row:
    """One operation in a box.

    ``link`` is the reason that it comes after the row above; ``None`` in the first row.
    """

    operation: Operation
    words: str
    link: ChartLink | None = None


@dataclass(frozen=True, slots=True)
class Box:
    """What is drawn as one box; ``heading`` is empty where there is but one row.

    ``lane`` counts from 0.
    """

    lane: int
    heading: str
    rows: tuple[Row, ...]

    @property
    def first(self) -> OpId:
        """The operation at the top, after which the box is named."""
        return self.rows[0].operation.id


def make_boxes(chart: Chart, c: Construction) -> tuple[Box, ...]:
    """Put the operations of a chart into boxes, lane by lane.

    Parameters
    ----------
    chart
        The chart.
    c
        The garment.
    """
    follows = _follows(chart, c)
    inner = {link.arc.after for link in follows.values()}
    found: list[Box] = []
    for number, lane in enumerate(chart.lanes):
        for op in lane.operations:
            if op.id not in inner:
                found.append(_box(number, op, follows, c))
    return tuple(found)


def entry_words(c: Construction, entry: EntryId) -> str:
    """An entry as people read it: its title, or its name with spaces for dashes."""
    return c.garment.entry[entry].title or plain_words(entry)


def operation_words(c: Construction, op: Operation) -> str:
    """An operation as people read it, such as ``side seams · finish``."""
    if len(c.of_entry[op.entry]) == 1:
        return entry_words(c, op.entry)
    return say("chart-operation", entry=entry_words(c, op.entry), part=part_words(c, op))


def part_words(c: Construction, op: Operation) -> str:
    """What an operation does within its entry, in words."""
    alike = [other for other in c.of_entry[op.entry] if other.action is op.action]
    if len(alike) > 1 and op.part:
        return translated("part", plain_words(op.part))
    return translated("action", op.action.value)


def plain_words(name: str) -> str:
    """A name with spaces for dashes.

    >>> plain_words("press-before-crossing")
    'press before crossing'
    """
    return name.replace("-", " ").replace("_", " ")


def _follows(chart: Chart, c: Construction) -> Mapping[OpId, ChartLink]:
    """Which operation simply follows another, by the one that it follows."""
    lane_of = {op.id: number for number, lane in enumerate(chart.lanes) for op in lane.operations}
    leaving: dict[OpId, int] = {}
    coming: dict[OpId, int] = {}
    for link in chart.links:
        leaving[link.arc.before] = leaving.get(link.arc.before, 0) + 1
        coming[link.arc.after] = coming.get(link.arc.after, 0) + 1
    return {
        link.arc.before: link
        for link in chart.links
        if leaving[link.arc.before] == coming[link.arc.after] == 1
        and c.op[link.arc.before].entry == c.op[link.arc.after].entry
        and lane_of[link.arc.before] == lane_of[link.arc.after]
    }


def _box(lane: int, op: Operation, follows: Mapping[OpId, ChartLink], c: Construction) -> Box:
    """The box that begins with an operation."""
    if op.id not in follows:
        return Box(lane, "", (Row(op, operation_words(c, op)),))
    rows = [Row(op, part_words(c, op))]
    while (link := follows.get(rows[-1].operation.id)) is not None:
        after = c.op[link.arc.after]
        rows.append(Row(after, part_words(c, after), link))
    return Box(lane, entry_words(c, op.entry), tuple(rows))
