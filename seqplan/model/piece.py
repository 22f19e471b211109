"""Pieces of cloth and their edges.

A piece is a flat shape with a right and a wrong side. Its edges are listed clockwise as seen from
the right side. What is described is one half of a piece cut on the fold, one copy of a mirrored
pair, or the whole of a piece cut singly; the half or copy described has the fold or the centre at
its left when it lies right side up with its top away from you.
"""

from collections.abc import Mapping
from enum import Enum
from typing import Final, NamedTuple

from seqplan.base.ids import PieceId
from seqplan.base.measure import Length, format_written
from seqplan.base.path import DocPath


class Cut(Enum):
    """How a piece is cut."""

    FOLD = "fold"
    """On the fold: the list describes half a ring, from the top of the fold to its bottom."""
    PAIR = "pair"
    """Two copies, one the mirror of the other; the list describes the whole ring of one."""
    ALIKE = "alike"
    """One or more copies that are all alike."""


class Layer(Enum):
    """Which layer of the garment a piece belongs to."""

    SHELL = "shell"
    FACING = "facing"
    LINING = "lining"
    INTERLINING = "interlining"


class Worn(Enum):
    """Where a piece is worn, which tells the wearer's left from right."""

    FRONT = "front"
    BACK = "back"


class Hand(Enum):
    """The wearer's side."""

    LEFT = "left"
    RIGHT = "right"


class Half(Enum):
    """The half or copy that the list describes, or its mirror image."""

    DESCRIBED = "a"
    MIRRORED = "b"

    @property
    def other(self) -> "Half":
        """The mirror image of this one."""
        return Half.MIRRORED if self is Half.DESCRIBED else Half.DESCRIBED


class Edge(NamedTuple):
    """One edge of a piece.

    Parameters
    ----------
    name
        What it is called.
    at_mark
        It meets the edge before it at a mark on a straight run, written ``centre | opening``, and
        not at a corner.
    is_folded
        It is the fold of a strip, and so never raw.
    is_slit
        It is one side of a slit: two edges of the same name that lie beside each other, and are
        not there before the slit is cut.
    """

    name: str
    at_mark: bool = False
    is_folded: bool = False
    is_slit: bool = False


class Fullness(NamedTuple):
    """Darts or pleats of a piece, as the cutting list tells them.

    Parameters
    ----------
    on
        The name of the edge at which they open.
    number
        How many there are on each copy or half.
    intake
        How much of the edge each of them takes up, where the author says so.
    """

    on: str
    number: int = 1
    intake: Length | None = None


Side = tuple[complex, ...]
"""What lies between two corners of an outline: the corners with the handles between them.

Two points are a straight line, three a quadratic Bézier curve; more are cubic curves, each of two
handles and a point, after the first. A point is so many millimetres to the right, and as its
imaginary part so many millimetres down, to the thousandth.
"""


class Outline(NamedTuple):
    """The shape of a piece along its stitching lines, without allowances, right side up.

    Parameters
    ----------
    sides
        Clockwise, each from where the last one ends. Those of a piece cut on the fold go from the
        top of the fold to its bottom; all others come back to where they began. Edges that meet at
        a mark may have a side each, or share one.
    """

    sides: tuple[Side, ...]


class Spot(NamedTuple):
    """A marked place or line on the face of a piece; ``hand`` where it is on one side only."""

    name: str
    hand: "Hand | None" = None


class Beginning(NamedTuple):
    """Where a marked place or line begins: so far from an edge."""

    name: str
    length: Length
    edge: str


MARKS: Final[Mapping[str, int]] = {"single": 1, "double": 2, "triple": 3}
"""Of how many marks a notch is."""


class Notch(NamedTuple):
    """A notch at an edge, which meets another one when the edge is sewn.

    Parameters
    ----------
    edge
        The name of the edge; all edges of this name bear it.
    marks
        1 for a single notch, 2 for a double one, 3 for a triple one: see ``MARKS``.
    length
        How far along the stitching line it is from where the edge meets ``neighbour``; ``None``
        where nobody says.
    neighbour
        The edge beside, or ``fold`` for the fold of the piece.
    is_middle
        Whether it is in the middle of the edge.
    """

    edge: str
    marks: int = 1
    length: Length | None = None
    neighbour: str | None = None
    is_middle: bool = False

    def __str__(self) -> str:
        """As the author may write it."""
        where = "middle" if self.is_middle else ""
        if self.length is not None:
            where = f"{format_written(self.length)} from {self.neighbour}"
        words = next(word for word, count in MARKS.items() if count == self.marks)
        is_plain = self.marks == 1 and where
        return where if is_plain else f"{words} {where}".strip()


class Slit(NamedTuple):
    """A slit that begins at a mark between two edges, or in the middle of a fold.

    Parameters
    ----------
    name
        What its two edges are called.
    before, after
        The names of the edges between which it begins.
    length
        How long it is, where the author says so.
    """

    name: str
    before: str
    after: str
    length: Length | None = None


class Segment(NamedTuple):
    """One edge of one cut copy: what needles and knives actually meet.

    ``copy`` counts from 0, ``half`` is ``"a"`` for what the list describes and ``"b"`` for its
    mirror image, ``place`` is that of the edge in the piece's list.
    """

    piece: PieceId
    copy: int
    half: str
    place: int

    @property
    def is_mirrored(self) -> bool:
        """Whether this edge lies in a mirrored half or copy."""
        return self.half == Half.MIRRORED.value


class Place(NamedTuple):
    """A place on the face of a piece: ``front.pocket-place``, ``band@left``, or a whole piece."""

    piece: PieceId
    name: str | None = None
    hand: Hand | None = None

    def __str__(self) -> str:
        name = f".{self.name}" if self.name else ""
        return f"{self.piece}{name}" + (f"@{self.hand.value}" if self.hand else "")


class EdgeRef(NamedTuple):
    """An edge as an entry names it: ``front.side`` or ``front.side@left``."""

    piece: PieceId
    edge: str
    hand: Hand | None = None

    def __str__(self) -> str:
        return f"{self.piece}.{self.edge}" + (f"@{self.hand.value}" if self.hand else "")


class Piece(NamedTuple):
    """A pattern piece.

    Parameters
    ----------
    id
        Its name in the file.
    edges
        Clockwise as seen from the right side; the same name may stand twice.
    cut, copies
        How it is cut; ``copies`` counts pieces of cloth (2 for a pair, 1 for a fold).
    fabric
        The fabric it is cut from, a key of the garment's fabrics, or ``None``.
    layer
        Shell, facing, lining or interlining.
    like
        The piece that this one has the ring of, if it was written with ``like:``.
    worn
        Front or back, where ``@left`` and ``@right`` are to mean the wearer's side.
    selvage
        Names of edges that lie on the selvage, so that they need no finish.
    darts, pleats
        Darts and pleats, with the edges at which they open.
    spots, lines
        Places and lines marked on its face.
    begins
        How far from an edge some of those begin.
    notches
        Notches, those of one edge in the order in which they stand along it.
    slits
        Slits; their edges are among ``edges``.
    is_strip
        Whether it is a band folded lengthwise.
    shape
        Its outline, where the author gives it.
    lengths
        The lengths of edges along the stitching line, as (name, length).
    when
        The choices for which it is used, as (choice, option); all of them if empty.
    note
        The designer's note for the cutting list.
    path
        Where the document says so.
    """

    id: PieceId
    edges: tuple[Edge, ...]
    cut: Cut = Cut.ALIKE
    copies: int = 1
    fabric: str | None = None
    layer: Layer = Layer.SHELL
    like: PieceId | None = None
    worn: Worn | None = None
    selvage: tuple[str, ...] = ()
    darts: tuple[Fullness, ...] = ()
    pleats: tuple[Fullness, ...] = ()
    spots: tuple[Spot, ...] = ()
    lines: tuple[str, ...] = ()
    begins: tuple[Beginning, ...] = ()
    notches: tuple[Notch, ...] = ()
    slits: tuple[Slit, ...] = ()
    is_strip: bool = False
    shape: Outline | None = None
    lengths: tuple[tuple[str, Length], ...] = ()
    when: tuple[tuple[str, str], ...] = ()
    note: str | None = None
    path: DocPath = ()

    @property
    def title(self) -> str:
        """The name as people read it: ``back facing`` for ``back-facing``."""
        return self.id.replace("-", " ").replace("_", " ")

    @property
    def edge_names(self) -> tuple[str, ...]:
        """The names of the edges, each once, in their order round the piece."""
        return tuple(dict.fromkeys(edge.name for edge in self.edges))

    def halves(self) -> tuple[tuple[int, Half], ...]:
        """Every (copy, half) that the edge list stands for, the described one first.

        A single piece that is ``like`` another is cut as its mirror image, because the two are
        laid right sides together and their same-named edges meet.
        """
        if self.cut is Cut.FOLD:
            return tuple(
                (copy, half)
                for copy in range(self.copies)
                for half in (Half.DESCRIBED, Half.MIRRORED)
            )
        if self.cut is Cut.PAIR:
            return tuple(
                (copy, Half.MIRRORED if copy % 2 else Half.DESCRIBED) for copy in range(self.copies)
            )
        half = Half.MIRRORED if self.like else Half.DESCRIBED
        return tuple((copy, half) for copy in range(self.copies))

    def segments(self, name: str | None = None, hand: Hand | None = None) -> tuple[Segment, ...]:
        """The cut edges of this piece, all of them or those called ``name`` on one side."""
        half_worn = self.half_worn(hand)
        return tuple(
            Segment(self.id, copy, half.value, index)
            for copy, half in self.halves()
            if half_worn is None or half is half_worn
            for index, edge in enumerate(self.edges)
            if name is None or edge.name == name
        )

    def stretches(self, name: str, hand: Hand | None = None) -> int:
        """How many edges called ``name`` one sees: one that goes on over the fold counts once."""
        count = len(self.segments(name, hand))
        if self.cut is not Cut.FOLD or hand is not None or not self.edges:
            return count
        beside_slits = {name for slit in self.slits for name in (slit.before, slit.after)}
        ends = (edge for edge in (self.edges[0], self.edges[-1]) if not edge.is_slit)
        over = sum(edge.name == name and name not in beside_slits for edge in ends)
        return count - over * self.copies

    def half_worn(self, hand: Hand | None) -> Half | None:
        """Which half or copy the wearer's left or right is.

        Seen from its right side with the fold or centre at the left, a front covers the wearer's
        left, a back the wearer's right; facings and linings turn their right side to the body, so
        there it is the other way round.
        """
        if hand is None or self.worn is None:
            return None
        described_is_left = (self.worn is Worn.FRONT) == (
            self.layer in {Layer.SHELL, Layer.INTERLINING}
        )
        return Half.DESCRIBED if (hand is Hand.LEFT) == described_is_left else Half.MIRRORED
