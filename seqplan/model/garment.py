"""Everything one garment file says, together."""

from collections.abc import Mapping
from dataclasses import dataclass, field
from enum import Enum
from functools import cached_property
from typing import NamedTuple

from seqplan.base.ids import EntryId, NotionId, OpId, PieceId, RuleSlug
from seqplan.base.measure import Length
from seqplan.base.path import DocPath
from seqplan.model.entry import Entry
from seqplan.model.piece import Piece
from seqplan.model.station import DEFAULT_STATIONS, Station


class Wearer(Enum):
    """Who wears it, which decides the cautions for cords and small parts."""

    ADULT = "adult"
    CHILD = "child"


@dataclass(frozen=True, slots=True)
class Picture:
    """A picture file of the author's: its name in the garment file, its media type, its bytes."""

    file: str
    media: str
    data: bytes = field(repr=False)


class Amount(NamedTuple):
    """How much of a fabric is needed where the cloth is of some width.

    Parameters
    ----------
    width
        The width of the cloth, from selvage to selvage.
    length
        How much of it, for the base size.
    by_size
        How much for each size, where it differs.
    """

    width: Length
    length: Length
    by_size: tuple[tuple[str, Length], ...] = ()


class Fabric(NamedTuple):
    """A cloth or interfacing; ``kind`` is woven, knit, felt, interfacing or free words.

    ``is_ironed`` tells whether it bears an iron; what does not is creased with the fingers.
    ``amounts`` tell how much of it is needed, by the width of the cloth.
    """

    id: str
    kind: str = "woven"
    weight: str | None = None
    note: str | None = None
    is_ironed: bool = True
    amounts: tuple[Amount, ...] = ()
    path: DocPath = ()

    @property
    def frays(self) -> bool:
        """Whether a cut edge of it ravels: knits and felt do not, nor does interfacing matter."""
        return self.kind not in {"knit", "felt", "interfacing"}


@dataclass(frozen=True, slots=True, kw_only=True)
class Notion:
    """Something bought: zip, elastic, cord, hook and eye, button.

    Parameters
    ----------
    id, kind, note, path
        Its name, what it is, a note for whoever buys it, where the document says so.
    length, width, count
        Its measures, and how many; ``length`` is that of the base size.
    by_size
        The length for each size, where it differs.
    is_ironed
        Whether it bears an iron; elastic, sequins and plastic often do not.
    when
        The choices for which it is used, as (choice, option); all of them if empty.
    """

    id: NotionId
    kind: str
    length: Length | None = None
    width: Length | None = None
    count: int = 1
    is_ironed: bool = True
    note: str | None = None
    by_size: tuple[tuple[str, Length], ...] = ()
    when: tuple[tuple[str, str], ...] = ()
    path: DocPath = ()


class LayPlan(NamedTuple):
    """A picture of how the pieces lie on the cloth.

    Parameters
    ----------
    picture
        The picture.
    fabric
        The fabric that is cut.
    width, size
        The width of the cloth and the size that it is drawn for, if it is for one of them only.
    alt
        The picture in words, for whoever cannot see it.
    path
        Where the document says so.
    """

    picture: Picture
    fabric: str
    width: Length | None = None
    size: str | None = None
    alt: str | None = None
    path: DocPath = ()


class Choice(NamedTuple):
    """Something that the reader may choose: a view, a fabric, a method, an optional step.

    Parameters
    ----------
    id
        Its name.
    options
        What there is to choose from, the default first.
    path
        Where the document says so.
    """

    id: str
    options: tuple[str, ...]
    path: DocPath = ()


class OwnSeam(NamedTuple):
    """A kind of seam of the author's own: its parts, one after the other.

    Parameters
    ----------
    id
        Its name, as ``as:`` uses it.
    parts
        The parts of seams in their order; ``sew`` is the stitching itself.
    path
        Where the document says so.
    """

    id: str
    parts: tuple[str, ...]
    path: DocPath = ()


class Waiver(NamedTuple):
    """A rule that the author sets aside for some operations, and why.

    Parameters
    ----------
    rule
        The rule's slug.
    at
        The entries, or single operations of them, for which it is set aside; all if empty.
    because
        The author's reason.
    path
        Where the document says so.
    """

    rule: RuleSlug
    at: tuple[OpId, ...]
    because: str
    path: DocPath = ()


@dataclass(frozen=True, kw_only=True)
class Garment:
    """A garment as its author describes it.

    Parameters
    ----------
    name, about, author, version, date
        What stands on the cover, as it is written; all but the name may be missing.
    mark
        The author's own mark.
    terms
        The terms of use, paragraph by paragraph.
    units
        ``cm``, ``mm`` or ``in``: the unit of bare numbers.
    language
        The language of its handouts; ``None`` where the file does not say.
    allowance
        The seam allowance where an entry names none.
    wearer
        Adult or child; ``None`` where the file does not say.
    fabrics, pieces, notions, stations
        In the order of the file; ``stations`` are the defaults with the file's changes.
    entries
        The author's written order.
    choices
        What the reader may choose.
    picks
        What was chosen, as (choice, option); empty as long as nothing was.
    recipes
        Kinds of seam of the author's own.
    waivers
        Rules that the author sets aside.
    sizes
        The sizes it is offered in, the base size first; empty where there is one only.
    not_shown
        Kinds of operation that the file leaves out on purpose, such as ``press``.
    plans
        Pictures of lay plans.
    glossary
        Words of the author's own, as (word, what it means).
    """

    name: str
    about: str | None = None
    author: str | None = None
    version: str | None = None
    date: str | None = None
    mark: Picture | None = None
    terms: tuple[str, ...] = ()
    units: str = "cm"
    language: str | None = None
    allowance: Length | None = None
    wearer: Wearer | None = None
    fabrics: tuple[Fabric, ...] = ()
    pieces: tuple[Piece, ...] = ()
    notions: tuple[Notion, ...] = ()
    stations: tuple[Station, ...] = field(default=DEFAULT_STATIONS)
    entries: tuple[Entry, ...] = ()
    choices: tuple[Choice, ...] = ()
    picks: tuple[tuple[str, str], ...] = ()
    recipes: tuple[OwnSeam, ...] = ()
    waivers: tuple[Waiver, ...] = ()
    sizes: tuple[str, ...] = ()
    not_shown: tuple[str, ...] = ()
    plans: tuple[LayPlan, ...] = ()
    glossary: tuple[tuple[str, str], ...] = ()

    @cached_property
    def own_seam(self) -> Mapping[str, OwnSeam]:
        """The author's own kinds of seam by name."""
        return {own.id: own for own in self.recipes}

    @cached_property
    def piece(self) -> Mapping[PieceId, Piece]:
        """Pieces by name."""
        return {piece.id: piece for piece in self.pieces}

    @cached_property
    def notion(self) -> Mapping[NotionId, Notion]:
        """Notions by name."""
        return {notion.id: notion for notion in self.notions}

    @cached_property
    def fabric(self) -> Mapping[str, Fabric]:
        """Fabrics by name."""
        return {fabric.id: fabric for fabric in self.fabrics}

    @cached_property
    def station(self) -> Mapping[str, Station]:
        """Stations by name."""
        return {station.id: station for station in self.stations}

    @cached_property
    def entry(self) -> Mapping[EntryId, Entry]:
        """Entries by name."""
        return {entry.id: entry for entry in self.entries}
