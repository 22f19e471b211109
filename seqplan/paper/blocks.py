"""What stands on paper, before it is HTML, PDF or Markdown: blocks, one below the other.

Every text in a block is final and plain: whoever writes a file format escapes it. Nothing here
knows a file format or a size of paper.
"""

from dataclasses import dataclass
from typing import NamedTuple

from seqplan.draw.figure import Figure
from seqplan.tell.content import StationKey
from seqplan.tell.sentence import Term


class Prose(NamedTuple):
    """Paragraphs; ``is_small`` for what only explains."""

    texts: tuple[str, ...]
    is_small: bool = False


class Items(NamedTuple):
    """A list of short lines, each with a box to tick or without."""

    lines: tuple[str, ...]
    is_ticked: bool = False


class Terms(NamedTuple):
    """Words and what they mean."""

    terms: tuple[Term, ...]


class Facts(NamedTuple):
    """Labels, each with its value: a number or a word."""

    pairs: tuple[tuple[str, str], ...]


class Pairs(NamedTuple):
    """Labels, each with a text of any length beside it."""

    pairs: tuple[tuple[str, str], ...]


class Blanks(NamedTuple):
    """Labels, each with a line to write on."""

    labels: tuple[str, ...]


class Row(NamedTuple):
    """A row of a table; ``is_under`` when it belongs to the row above it.

    ``notes`` stand small below the last cell.
    """

    cells: tuple[str, ...]
    is_under: bool = False
    notes: tuple[str, ...] = ()


class Table(NamedTuple):
    """A table whose first column names the row; a box to tick before each row if ``is_ticked``."""

    title: str
    head: tuple[str, ...]
    rows: tuple[Row, ...]
    is_ticked: bool = False


class Card(NamedTuple):
    """Blocks in a frame under a small title."""

    title: str
    blocks: "tuple[Block, ...]"


class Cards(NamedTuple):
    """Cards beside one another, as many as the width bears."""

    cards: tuple[Card, ...]


class Beside(NamedTuple):
    """Blocks in two columns of the same width."""

    left: "tuple[Block, ...]"
    right: "tuple[Block, ...]"


class Stations(NamedTuple):
    """The key of the letters that stand beside the boxes."""

    stations: tuple[StationKey, ...]


class Note(NamedTuple):
    """Paragraphs in the author's voice, with a label before the first."""

    label: str
    texts: tuple[str, ...]


class Picture(NamedTuple):
    """A drawing of ours, with a caption below it that may be empty."""

    figure: Figure
    caption: str = ""


class Image(NamedTuple):
    """A picture file of the author's: a mark, a lay plan, a photograph.

    ``media`` is ``image/png``, ``image/jpeg`` or ``image/svg+xml``; ``alt`` tells it to whoever
    cannot see it.
    """

    data: bytes
    media: str
    alt: str
    caption: str = ""


@dataclass(frozen=True, slots=True, kw_only=True)
class Deed:
    """One operation, with a box to tick.

    Parameters
    ----------
    station, foot
        Where it is done, and the presser foot where it is not the standard one.
    title
        What it is called, where several of them do not stand under one heading.
    texts, check
        What to do, in whole sentences, and what to look at when it is done.
    figures
        The pictures of it, which stand beside it.
    """

    station: StationKey
    foot: str = ""
    title: str = ""
    texts: tuple[str, ...]
    check: str = ""
    figures: tuple[Figure, ...] = ()


@dataclass(frozen=True, slots=True, kw_only=True)
class Step:
    """A numbered step.

    Parameters
    ----------
    number, heading
        Its number from 1, and what it is called.
    deeds
        Its operations.
    terms
        Words that are explained beside it.
    notes
        The author's notes.
    sketch
        The label of a place to draw in; none where it is empty.
    """

    number: int
    heading: str
    deeds: tuple[Deed, ...]
    terms: tuple[Term, ...] = ()
    notes: tuple[str, ...] = ()
    sketch: str = ""

    @property
    def figures(self) -> tuple[Figure, ...]:
        """The pictures of its operations, one after the other."""
        return tuple(figure for deed in self.deeds for figure in deed.figures)


@dataclass(frozen=True, slots=True, kw_only=True)
class Part:
    """Blocks under a heading; parts within parts have smaller headings.

    Parameters
    ----------
    title, remark
        The heading, and what stands small beside it.
    blocks
        What stands under it.
    starts_page
        Whether it begins a page of its own.
    is_whole
        Whether it stays on one page, where a page can hold it.
    is_warning
        Whether it tells what can hurt somebody.
    """

    title: str
    remark: str = ""
    blocks: "tuple[Block, ...]"
    starts_page: bool = False
    is_whole: bool = False
    is_warning: bool = False


Block = (
    Prose
    | Items
    | Terms
    | Facts
    | Pairs
    | Blanks
    | Table
    | Card
    | Cards
    | Beside
    | Stations
    | Note
    | Picture
    | Image
    | Deed
    | Step
    | Part
)


@dataclass(frozen=True, slots=True, kw_only=True)
class Document:
    """A whole handout.

    Parameters
    ----------
    kind, title, author
        What sort of handout it is, the garment, and who designed it (may be empty).
    cover
        What stands below the title on the first page.
    parts
        The rest; the contents list the headings of these and of the parts right below them.
    lang
        The language of all texts, as BCP 47 names it.
    has_contents
        Whether it is long enough that contents help.
    is_large
        Whether it is set in large print.
    """

    kind: str
    title: str
    author: str = ""
    cover: "tuple[Block, ...]" = ()
    parts: tuple[Part, ...]
    lang: str = "en"
    has_contents: bool = False
    is_large: bool = False
