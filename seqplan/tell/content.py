"""What stands on a sheet, ready to be laid out: every text is final, nothing is looked up later."""

from dataclasses import dataclass
from typing import NamedTuple

from seqplan.base.ids import EntryId, OpId
from seqplan.tell.sentence import Sentence, Term


@dataclass(frozen=True, slots=True)
class Titled:
    """Lines under a small title: one kind of need, one caution."""

    title: str
    lines: tuple[str, ...]


@dataclass(frozen=True, slots=True, kw_only=True)
class CutRow:
    """One row of the cutting list.

    Parameters
    ----------
    piece
        The piece as people call it, with its layer where that is not the shell.
    cut
        How many, and how they are laid.
    fabric
        What it is cut from.
    edges
        The names of its edges, clockwise from the right side.
    notes
        The designer's note, and that it is cut in interfacing too.
    is_interfacing
        Whether this row is the interfacing of a piece above it.
    """

    piece: str
    cut: str
    fabric: str
    edges: str = ""
    notes: tuple[str, ...] = ()
    is_interfacing: bool = False


class SheetPicture(NamedTuple):
    """A picture file of the designer's: its bytes, their media type, and what it shows.

    ``alt`` tells it to whoever cannot see it; ``caption`` stands below it and may be empty.
    """

    data: bytes
    media: str
    alt: str
    caption: str = ""


@dataclass(frozen=True, slots=True)
class SizeTable:
    """Measures that differ from size to size: the sizes, and a row for each thing."""

    sizes: tuple[str, ...]
    rows: tuple[tuple[str, tuple[str, ...]], ...]


@dataclass(frozen=True, slots=True)
class StationKey:
    """A station that the sheet uses: its letters, its name, a line about it (may be empty)."""

    id: str
    mark: str
    title: str
    note: str = ""


@dataclass(frozen=True, slots=True, kw_only=True)
class SheetStep:
    """A step as it is printed.

    Parameters
    ----------
    number, entry, heading
        Its number from 1, the entry it comes from, its heading.
    sentences
        One for each operation.
    terms
        The words of the trade that occur here for the first time.
    note
        The designer's note.
    waived
        Why the designer sets a rule aside here.
    picture
        The caption of the designer's own picture, for which there is a place.
    """

    number: int
    entry: EntryId
    heading: str
    sentences: tuple[Sentence, ...]
    terms: tuple[Term, ...] = ()
    note: str | None = None
    waived: tuple[str, ...] = ()
    picture: str | None = None

    @property
    def operations(self) -> tuple[OpId, ...]:
        """The operations that are told."""
        return tuple(sentence.operation for sentence in self.sentences)


@dataclass(frozen=True, slots=True)
class SheetGroup:
    """Steps under one heading: the part in hand, or the visit to a station."""

    heading: str
    steps: tuple[SheetStep, ...]


@dataclass(frozen=True, slots=True, kw_only=True)
class Sheet:
    """All that a handout for one person says.

    Parameters
    ----------
    kind, title, about, author, version, date
        The cover; ``kind`` says what sort of sheet it is.
    mark
        The designer's own mark, for the cover.
    terms
        The terms of use, paragraph by paragraph.
    plans
        Pictures of how the pieces lie on the cloth.
    variant
        The choices that it is made for, with what else there is.
    sizes
        The sizes that the design comes in; empty where there is one only.
    steps, operations, changes
        How many steps and operations there are, how often the set-up changes.
    needs
        What to buy and have ready, kind by kind.
    cutting, cutting_notes, marks, allowances
        The cutting list, what its words mean, what to mark, what allowances there are.
    measures
        What differs from size to size, if anything does.
    notes
        Notes of the designer on the whole.
    stations, reading
        The key of the stations that are used, and how to read the sheet.
    caution_intro, cautions
        What to take care of.
    groups
        The steps.
    checks
        What to look at before it is done.
    glossary
        All words of the trade that occur.
    lang
        The language of the sentences.
    """

    kind: str
    title: str
    about: str | None
    author: str | None
    version: str | None
    steps: int
    operations: int
    changes: int
    needs: tuple[Titled, ...]
    cutting: tuple[CutRow, ...]
    cutting_notes: tuple[str, ...]
    marks: tuple[str, ...]
    allowances: tuple[str, ...]
    stations: tuple[StationKey, ...]
    reading: tuple[str, ...]
    caution_intro: str
    cautions: tuple[Titled, ...]
    groups: tuple[SheetGroup, ...]
    checks: tuple[str, ...]
    glossary: tuple[Term, ...]
    variant: tuple[str, ...] = ()
    sizes: tuple[str, ...] = ()
    measures: SizeTable | None = None
    notes: tuple[str, ...] = ()
    date: str | None = None
    mark: SheetPicture | None = None
    terms: tuple[str, ...] = ()
    plans: tuple[SheetPicture, ...] = ()
    lang: str = "en"

    @property
    def station(self) -> dict[str, StationKey]:
        """The stations by their names in the file."""
        return {station.id: station for station in self.stations}
