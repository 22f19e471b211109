"""A corner that is sewn across so that a bag gets a bottom: flattened, with its seams in line."""

from collections.abc import Iterator
from math import ceil
from typing import Final, NamedTuple

from seqplan.base.measure import Length, both
from seqplan.draw.cloth import Cloth
from seqplan.draw.figure import PAPER, Disc, Figure, Line, Mark, Spot, Words
from seqplan.draw.leaders import LEADING, SIZE, Columns, Named, name_things, widest
from seqplan.draw.section_picture import lay_key
from seqplan.draw.tones import cloth_marks
from seqplan.model.operation import Action, Operation
from seqplan.recipes.construction import Construction
from seqplan.tell.names import readable
from seqplan.words.say import say

_MARGIN: Final = 5.0
_HALF: Final = 62.0
_HEIGHT: Final = 74.0
_ROW: Final = 40.0
_COLUMN: Final = 60.0
_LETTER: Final = 9.0


class Corner(NamedTuple):
    """A corner: the two seams that meet in it, and how wide it is sewn across."""

    seams: tuple[str, str]
    width: Length | None


def corner(c: Construction, op: Operation) -> Corner | None:
    """The corner that an operation sews across; ``None`` for every other operation."""
    if op.action is not Action.BOX:
        return None
    entry = c.entry(op)
    names = list(dict.fromkeys(readable(ref.edge) for ref in (*entry.run, *entry.to)))
    if len(names) < len(Corner._fields):
        return None
    return Corner((names[0], names[1]), entry.width)


def draw_corner(found: Corner, title: str, words: str) -> Figure:
    """Draw a corner.

    Parameters
    ----------
    found
        What is drawn.
    title, words
        Title and text for who cannot see it.
    """
    return _Drawing(found).figure(title, words)


class _Drawing:
    def __init__(self, found: Corner) -> None:
        self.found = found
        self.names = [say("picture-corner-seam", edge=name) for name in found.seams]
        self.column = widest(self.names, _COLUMN)
        self.tip: Spot = (_MARGIN + self.column + 9 + _HALF, _MARGIN + 6)
        self.low = self.tip[1] + _HEIGHT
        self.row = self.tip[1] + _ROW
        self.half = _HALF * _ROW / _HEIGHT

    def figure(self, title: str, words: str) -> Figure:
        x, _ = self.tip
        triangle = (self.tip, (x + _HALF, self.low), (x - _HALF, self.low))
        marks: list[Mark] = [*cloth_marks(triangle, Cloth.SHELL, is_right=False)]
        # The bag goes on below.
        marks.append(Line(((x - _HALF, self.low), (x + _HALF, self.low)), 2.4, ink=PAPER))
        marks += [*self._seams(), *self._row(), *self._letter(), *self._measure()]
        columns = Columns(
            _MARGIN + self.column, 0, self.column, 0, self.tip[1], self.low + LEADING / 2
        )
        named, down = name_things(self._named(), columns)
        width = x + _HALF + _MARGIN + 34
        key, low = lay_key(self._key(), _MARGIN, max(down, self.low) + 4, width - 2 * _MARGIN)
        return Figure(ceil(width), ceil(low + _MARGIN), title, words, (*marks, *named, *key))

    def _seams(self) -> Iterator[Mark]:
        """One seam on top, the other exactly below it, so in dashes at its side."""
        x, top = self.tip
        yield Line(((x, top), (x, self.low)), 1.1, role="seam")
        yield Line(((x + 3, top + 5), (x + 3, self.low)), 0.8, (2.4, 1.8), role="hidden")

    def _row(self) -> Iterator[Mark]:
        x, _ = self.tip
        ends = ((x - self.half, self.row), (x + self.half, self.row))
        yield Line(ends, 3.4, ink=PAPER)
        yield Line(ends, 1.7, (5, 2.6), role="stitch")

    def _letter(self) -> Iterator[Mark]:
        spot = (self.tip[0] + _HALF / 2, self.low - 12)
        yield Disc(spot, 6.4, PAPER, 0.5)
        letter = say("picture-wrong-letter")
        base = (spot[0], spot[1] + _LETTER * 0.35)
        yield Words(base, letter, _LETTER, "middle", is_bold=True, role="side")

    def _measure(self) -> Iterator[Mark]:
        """How long the row is from fold to fold."""
        if self.found.width is None:
            return
        x, _ = self.tip
        y = self.row - 12
        for end in (x - self.half, x + self.half):
            yield Line(((end, y - 2.5), (end, self.row - 2)), 0.5)
        yield Line(((x - self.half, y), (x + self.half, y)), 0.6)
        spot = (x + self.half + 4, y + 0.34 * SIZE)
        yield Words(spot, both(self.found.width), SIZE, role="label")

    def _named(self) -> list[Named]:
        x, _ = self.tip
        spots = ((x, self.row + 10), (x + 3, self.row + 22))
        return [Named(name, (spot,)) for name, spot in zip(self.names, spots, strict=True)]

    def _key(self) -> list[tuple[str, list[Mark], float]]:
        box = ((0.0, -4.5), (15.0, -4.5), (15.0, 4.5), (0.0, 4.5))
        return [
            (say("picture-wrong-side"), [*cloth_marks(box, Cloth.SHELL, is_right=False)], 15),
            (say("picture-stitch-seam"), [Line(((0, 0), (14, 0)), 1.7, (5, 2.6))], 14),
            (say("picture-not-to-scale"), [], -3),
        ]
