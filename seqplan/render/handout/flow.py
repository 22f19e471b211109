"""How a step lies on the page, and a table: what stands beside which picture, where words go.

A row of it never breaks over a page, so no picture is parted from what it shows, and a page need
not stay empty because a whole step would not fit. Heights are those of the printed page, in
points: texts are measured in the shipped font.
"""

from collections.abc import Iterable, Iterator, Mapping, Sequence
from functools import cache, lru_cache
from itertools import pairwise
from math import ceil
from typing import Final, NamedTuple

from seqplan.draw.figure import Figure
from seqplan.draw.textwidth import text_width
from seqplan.paper.blocks import Beside, Block, Card, Cards, Deed, Document, Part, Step, Table
from seqplan.render.handout.paper import LARGE
from seqplan.tell.sentence import Term

_SIZE: Final = 10
_LINE: Final = 14.5
_WIDTH: Final = 281
"""Of what to do: the size of the letters, the height of a line, the width of the column."""
_SMALL: Final = 8.6
_SMALL_LINE: Final = 11.9
_SMALL_WIDTH: Final = 161
"""The same of the words beside it."""
_BESIDE: Final = 180
"""How wide a picture beside a step may be."""
_TALLEST_WORDS: Final = 130
"""How high the words beside a step are at most: the row that holds them stays on one page."""
_SKETCH: Final = 85
"""How high the place for a sketch is at least."""
_HIGH: Final = 200
"""A row that is higher leaves much of a page empty where it does not fit."""
_GAP: Final = 7
_PADDING: Final = 9
_CELL_GAP: Final = 8.0
_WIDEST_CELL: Final = 260.0
"""What stands right of a text in a table, and how wide a cell is at most without need."""
_HANDFUL: Final = 3
"""How many pairs of terms stay together at least."""


class StepRow(NamedTuple):
    """Operations, and what stands beside them."""

    deeds: tuple[Deed, ...]
    figures: tuple[Figure, ...] = ()
    terms: tuple[Term, ...] = ()


class Laid(NamedTuple):
    """A step as it lies: its rows, and the words that found no place beside them."""

    rows: tuple[StepRow, ...]
    below: tuple[Term, ...] = ()


def lay(step: Step) -> Laid:
    """Lay a step out: every picture beside its operation, or further down, never before it.

    The first row holds the place for a sketch if the step has one.
    """
    rows = _rows(step)
    rooms = [_room(row, step.sketch if place == 0 else "") for place, row in enumerate(rows)]
    place = max(range(len(rows)), key=lambda place: (rooms[place], -place))
    beside, below = _place(step.terms, rooms[place])
    rows[place] = rows[place]._replace(terms=beside)
    return Laid(tuple(rows), below)


def _rows(step: Step) -> list[StepRow]:
    """Part the operations into rows: as low as they get together, and none higher than need be.

    Beside a high picture several operations may stand, which saves paper; but what stands in one
    row cannot part at a page's end, so height beyond ``_HIGH`` counts thrice. Of ways that are as
    good, the one with the most rows parts best.
    """
    best: list[tuple[float, int, tuple[StepRow, ...]]] = [(0.0, 0, ())]
    for end in range(1, len(step.deeds) + 1):
        ways = []
        for start in range(end):
            row = _row(step.deeds[start:end])
            if _is_in_order(row):
                tall = _row_height(row, step.sketch if start == 0 else "")
                cost, more, rows = best[start]
                ways.append((cost + max(tall, 3 * tall - 2 * _HIGH), more - 1, (*rows, row)))
        best.append(min(ways, key=lambda way: way[:2]))
    return list(best[-1][-1])


def _is_in_order(row: StepRow) -> bool:
    """Whether no picture stands higher than the operation that it shows."""
    told = above = 0.0
    for deed in row.deeds:
        if deed.figures and told > above + _LINE:
            return False
        told += _height([deed])
        above += sum(map(shown, deed.figures))
    return True


def _row(deeds: tuple[Deed, ...]) -> StepRow:
    return StepRow(deeds, tuple(figure for deed in deeds for figure in deed.figures))


def _row_height(row: StepRow, sketch: str) -> float:
    return max(_height(row.deeds), _beside(row, sketch))


def _beside(row: StepRow, sketch: str) -> float:
    """How high the pictures of a row are, or the place for one."""
    return sum(map(shown, row.figures)) + (_SKETCH if sketch else 0)


def _room(row: StepRow, sketch: str) -> float:
    """How much is free beside a row, below its pictures."""
    return _height(row.deeds) - _beside(row, sketch)


def shown(figure: Figure) -> float:
    """How high a picture stands beside a step, with the gap below it."""
    return figure.height * min(1, _BESIDE / figure.width) + _GAP


def handfuls(terms: Sequence[Term]) -> list[Sequence[Term]]:
    """Cut a list into parts that each stay on one page, so that no term stands alone overleaf.

    Terms stand in pairs beside each other, so every part but the last is even.

    >>> [len(part) for part in handfuls([Term("a", "b")] * 17)]
    [6, 6, 5]
    """
    pairs = ceil(len(terms) / 2)
    parts = max(1, pairs // _HANDFUL)
    ends = [2 * round(pairs * number / parts) for number in range(parts + 1)]
    return [terms[start:end] for start, end in pairwise(ends)]


def widths_by_head(document: Document) -> Mapping[tuple[str, ...], list[float]]:
    """How the columns of every table share its width; tables with the same head are alike."""
    alike: dict[tuple[str, ...], list[Table]] = {}
    for table in _tables((*document.cover, *document.parts)):
        alike.setdefault(table.head, []).append(table)
    scale = LARGE if document.is_large else 1.0
    return {head: column_widths(tables, scale) for head, tables in alike.items()}


def _tables(blocks: Iterable[Block]) -> Iterator[Table]:
    for block in blocks:
        match block:
            case Table():
                yield block
            case Cards():
                yield from _tables(block.cards)
            case Beside():
                yield from _tables((*block.left, *block.right))
            case Card() | Part():
                yield from _tables(block.blocks)


def column_widths(tables: Sequence[Table], scale: float = 1.0) -> list[float]:
    """How the columns of tables share their width: by their longest texts, within reason.

    ``scale`` tells how much larger the letters are than usual.
    """
    count = len(tables[0].head)
    written = [row for table in tables for row in table.rows]
    rows = [tables[0].head, *(row.cells for row in written)]
    notes = [(*[""] * (count - 1), note) for row in written for note in row.notes]
    return [_column_width(cells, scale * _SIZE) for cells in zip(*rows, *notes, strict=True)]


def _column_width(cells: Iterable[str], size: float) -> float:
    """What the longest text would take, but no less than the longest word does."""
    texts = list(cells)
    words = [word for text in texts for word in text.split()]
    widest = max(text_width(text, size, bold=True) for text in texts)
    longest = max((text_width(word, size, bold=True) for word in words), default=0)
    return _CELL_GAP + max(longest, min(widest, _WIDEST_CELL))


def _place(terms: Sequence[Term], room: float) -> tuple[tuple[Term, ...], tuple[Term, ...]]:
    """Words that find room beside a step, and those below it."""
    count = len(terms)
    while count and _words_height(terms[:count]) > min(room, _TALLEST_WORDS):
        count -= 1
    return tuple(terms[:count]), tuple(terms[count:])


def _words_height(terms: Iterable[Term]) -> float:
    texts = [f"{term.name}: {term.meaning}" for term in terms]
    lines = sum(_lines(text, _SMALL_WIDTH, _SMALL) for text in texts)
    return _PADDING + lines * _SMALL_LINE + 2 * len(texts)


def _height(deeds: Iterable[Deed]) -> float:
    return sum(_deed_height((deed.title, *deed.texts, deed.check)) + _GAP for deed in deeds)


@lru_cache(maxsize=1000)
def _deed_height(told: tuple[str, ...]) -> float:
    texts = [text for text in told if text]
    return _LINE * (1 + sum(_lines(text, _WIDTH, _SIZE) for text in texts))


def _lines(text: str, width: float, size: float) -> int:
    """How many lines a text takes at a width."""
    count, used = 1, 0.0
    space = _word_width(" ", size)
    for word in text.split():
        wide = _word_width(word, size)
        if used and used + space + wide > width:
            count, used = count + 1, wide
        else:
            used += (space if used else 0) + wide
    return count


_word_width = cache(text_width)
