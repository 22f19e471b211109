"""Which lines a chart has and how each looks: links between boxes, and open either-ors."""

from collections.abc import Collection, Iterator, Mapping, Sequence
from dataclasses import dataclass, replace
from math import ceil

from seqplan.base.ids import OpId
from seqplan.draw.textwidth import text_width
from seqplan.explain.chart import Chart, ChartLink
from seqplan.graph.reason import Reason, ReasonKind
from seqplan.recipes.construction import Construction
from seqplan.render.chart_boxes import Box
from seqplan.render.chart_choices import find_choices
from seqplan.render.chart_levels import leads_to
from seqplan.render.chart_look import CHAIN_WIDTH, LINE_WIDTH, STYLE
from seqplan.render.chart_node import BoxWriter
from seqplan.render.chart_wires import Wire

_SIGN_LENGTH = {"": 0.0, "vee": 5.5, "normal": 8.0, "odiamond": 6.6, "odot": 4.4}
"""How long the signs at the ends of lines are drawn, in points."""


@dataclass(frozen=True, slots=True)
class Line:
    """One line between two boxes; ``label`` is empty where the number stands in a box."""

    wire: Wire
    style: str
    weight: float
    head: str
    tail: str
    label: str
    links: tuple[ChartLink, ...] = ()
    choices: tuple[Reason, ...] = ()

    @property
    def is_chain(self) -> bool:
        """Whether the longest chain runs along it."""
        return any(link.on_longest_chain for link in self.links)

    @property
    def is_either(self) -> bool:
        """Whether one of its two ends waits for the other."""
        return bool(self.choices) and self.head == self.tail

    @property
    def is_fork(self) -> bool:
        """Whether what it leads to waits, or what other lines of the same either-or lead to."""
        return bool(self.choices) and self.head != self.tail

    @property
    def head_length(self) -> float:
        """What the sign at its end takes, in points."""
        return _SIGN_LENGTH[self.head]

    @property
    def beside(self) -> float:
        """From its end to the number beside it, in points."""
        return _beside(self.is_chain)

    @property
    def tail_length(self) -> float:
        """What the sign at its start takes, in points."""
        return _SIGN_LENGTH[self.tail]


def find_lines(
    chart: Chart, c: Construction, boxes: Sequence[Box], writer: BoxWriter
) -> tuple[Line, ...]:
    """Find the lines of a chart, links first; links that look alike become one.

    Parameters
    ----------
    chart
        The chart.
    c
        The garment.
    boxes
        Its boxes.
    writer
        What writes the boxes; it knows the numbers of reasons.
    """
    box_of = {row.operation.id: number for number, box in enumerate(boxes) for row in box.rows}
    found: dict[Wire, Line] = {}
    for link in chart.links:
        before, after = box_of[link.arc.before], box_of[link.arc.after]
        if before == after:
            continue
        line = _link_line(before, after, link, writer)
        if line.wire in found:
            line = replace(line, links=(*found[line.wire].links, link))
        found[line.wire] = line
    ways = {(wire.before, wire.after) for wire in found}
    return (*found.values(), *_choice_lines(chart, c, box_of, ways, writer))


def _link_line(before: int, after: int, link: ChartLink, writer: BoxWriter) -> Line:
    style = STYLE[link.reasons[0].strength]
    is_said = any(reason.kind is ReasonKind.SAID for reason in link.reasons)
    is_chain = link.on_longest_chain
    numbers = writer.numbers.of(link.reasons)
    label = "" if link.arc.after in writer.led_to else numbers
    looks = f"{style} {'said' if is_said else ''} {'chain' if is_chain else ''}"
    room = _label_width(label, writer, is_chain=is_chain)
    return Line(
        Wire(before, after, looks, f"{looks} {numbers}", room),
        style=style,
        weight=CHAIN_WIDTH if is_chain else LINE_WIDTH,
        head="normal" if is_chain else "vee",
        tail="odot" if is_said else "",
        label=label,
        links=(link,),
    )


def _choice_lines(
    chart: Chart,
    c: Construction,
    box_of: Mapping[OpId, int],
    ways: Collection[tuple[int, int]],
    writer: BoxWriter,
) -> Iterator[Line]:
    """Either-ors: a line between the two of which one waits, or a line for each that can hold."""
    for number, choice in enumerate(find_choices(c, chart.choices, box_of)):
        label = writer.numbers.of(choice.reasons)
        room = _label_width(label, writer)
        if choice.ends:
            one, other = choice.ends
            pairs = [(other, one) if leads_to(ways, other, one) else (one, other)]
        else:
            both = ((before, after) for before in choice.before for after in choice.after)
            pairs = [pair for pair in both if not leads_to(ways, pair[1], pair[0])]
        # An either-or between two boxes says all that it says on its line, so several may run
        # together; what else may hold is seen from the lines that share a place.
        word = f"either {label}" if choice.ends else f"fork {number}"
        for before, after in pairs:
            yield Line(
                Wire(before, after, word, word, room),
                style=STYLE[choice.reasons[0].strength],
                weight=LINE_WIDTH,
                head="odiamond" if choice.ends else "vee",
                tail="odiamond",
                label=label,
                choices=choice.reasons,
            )


def _beside(is_chain: bool) -> float:
    return 6.0 if is_chain else 3.5


def _label_width(label: str, writer: BoxWriter, *, is_chain: bool = False) -> int:
    return ceil(_beside(is_chain) + text_width(label, writer.look.small.size)) if label else 0
