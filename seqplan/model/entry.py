"""One entry under ``operations:``, as its author wrote it.

An entry is what a sewist says in one breath ("sew the side seams, finished together"); recipes
turn it into the operations that happen at one station each.
"""

from enum import Enum
from typing import NamedTuple

from seqplan.base.ids import EntryId, NotionId, OpId, PieceId
from seqplan.base.measure import Length
from seqplan.base.path import DocPath
from seqplan.model.piece import EdgeRef, Hand, Place, Worn


class Verb(Enum):
    """What an entry does, in the trade's words; the value is the key in the file."""

    # prepare
    PRETREAT = "pretreat"
    CUT = "cut"
    MARK = "mark"
    FUSE = "fuse"
    STAYSTITCH = "staystitch"
    DART = "dart"
    PLEAT = "pleat"
    GATHER = "gather"
    SLASH = "slash"
    STRAP = "strap"
    # join
    SEW = "sew"
    BASTE = "baste"
    HOLD = "hold"
    INSERT = "insert"
    ATTACH = "attach"
    BAND = "band"
    BIND = "bind"
    PATCH_POCKET = "patch pocket"
    IN_SEAM_POCKET = "in-seam pocket"
    WELT_POCKET = "welt pocket"
    TOWER_PLACKET = "tower placket"
    CONTINUOUS_PLACKET = "continuous placket"
    BOX_CORNER = "box corner"
    # tidy
    FINISH = "finish"
    TRIM = "trim"
    GRADE = "grade"
    CLIP = "clip"
    PRESS = "press"
    UNDERSTITCH = "understitch"
    TOPSTITCH = "topstitch"
    TACK = "tack"
    HEM = "hem"
    CASING = "casing"
    BUTTONHOLE = "buttonhole"
    REMOVE_BASTING = "remove basting"
    # handle
    TURN = "turn"
    FOLD = "fold"
    UNFOLD = "unfold"
    NEST = "nest"
    ROLL = "roll"
    OPEN = "open"
    SHORTEN = "shorten"
    CLOSE = "close"
    # pause
    FIT = "fit"
    INSPECT = "inspect"
    WAIT = "wait"
    SEND_OUT = "send out"
    # anything else
    DO = "do"


class SeamKind(Enum):
    """How a seam is made, as ``as:`` names it."""

    PLAIN = "plain"
    PRESSED_OPEN = "pressed open"
    FINISHED_TOGETHER = "finished together"
    OVERLOCKED = "overlocked"
    """Sewn and finished in one pass of the overlocker."""
    FRENCH = "French"
    FLAT_FELLED = "flat-felled"
    LAPPED = "lapped"
    BOUND = "bound"
    FACED = "faced"
    ENCLOSED = "enclosed"
    OWN = "own"
    """A seam of the author's own, under ``recipes:``."""


class ZipMethod(Enum):
    """How a zip is set."""

    INVISIBLE = "invisible"
    CENTRED = "centred"
    LAPPED = "lapped"
    FLY = "fly"

    @property
    def is_covered(self) -> bool:
        """Whether one side of the opening lies over the other and covers the zip."""
        return self in {ZipMethod.LAPPED, ZipMethod.FLY}


class SeamMethod(Enum):
    """When, or how, a seam is joined, where that changes what must come before it."""

    IN_THE_ROUND = "in the round"
    FLAT = "flat"
    ROLL = "roll"
    """The body is rolled up inside while the seam is sewn, and drawn out through an end."""
    WRAP = "wrap"


class Sides(Enum):
    """Which sides lie together when two edges are joined."""

    RIGHT_TOGETHER = "right together"
    WRONG_TOGETHER = "wrong together"
    RIGHT_TO_WRONG = "right to wrong"


class Ends(Enum):
    """What becomes of the ends of a band."""

    CLOSED = "closed"
    OPEN = "open"
    JOINED = "joined"


class Closing(Enum):
    """How the loose edge of a band is fastened."""

    TOPSTITCHED = "topstitched"
    IN_THE_DITCH = "in the ditch"
    BY_HAND = "by hand"
    IN_ONE_SEAM = "in one seam"
    """Both edges of the folded band are caught in the one seam."""


class StrapMethod(Enum):
    """How a strap is made."""

    TURNED = "turned"
    FOLDED = "folded"


class Purpose(Enum):
    """What one waits for."""

    HANG = "hang"
    """Cloth on the slant grows under its own weight."""
    DRY = "dry"
    SET = "set"
    """Glue, paint or resist becomes firm."""
    COME_BACK = "come back"
    """What was sent out is in the house again."""


class Portion(NamedTuple):
    """A part of an edge, measured from one of its ends.

    ``part: 10 from waist`` is the 10 cm that start where the edge meets ``waist``
    (``is_named_part``); ``stop: 10 before waist`` is all but those (not ``is_named_part``).
    """

    length: Length
    neighbour: str
    is_named_part: bool


class Caught(NamedTuple):
    """What is caught between the two sides of a seam.

    Parameters
    ----------
    edge
        The edge of a piece that is caught, if it is one.
    notion
        The notion that is caught, if it is one.
    piece
        The piece that is caught, where the author names no edge of it.
    at
        The edge of the seam at which it is caught; where the author names none, it is the edge of
        the same place in the list, or the first.
    """

    edge: EdgeRef | None = None
    notion: NotionId | None = None
    piece: PieceId | None = None
    at: EdgeRef | None = None


class Entry(NamedTuple):
    """An entry of the operations list. Which fields a verb takes, the table of keys says.

    Parameters
    ----------
    id, verb
        Its name and what it does.
    run
        The edges it acts on, in one run.
    pieces
        Whole pieces it acts on (fuse, fit, inspect, turn, do).
    to
        The other side of a join.
    to_name
        For ``tack``: the notion or entry that the edge is fastened to.
    notion
        What is inserted or attached.
    fabric
        The interfacing that is fused.
    into
        For ``insert`` of elastic or cord: the casing entry it goes through.
    seam, method
        How a seam is made; how a zip is set.
    on_top
        Of a zip that is covered: the side of its opening that lies on top.
    ease
        How much longer one side of a join may be than the other.
    allowance, depth, gap, overlap
        Measures; ``gap`` is the part of a casing left open to thread through.
    press_to
        Which way the allowances are pressed, such as ``back``.
    portion
        The part of the edges that is meant.
    is_flat
        Hemmed or cased before the seam closes it.
    is_in_one
        Both copies of a pair in one seam, past the point where they meet.
    open
        The seam that stays open while a ring is joined.
    turned
        ``once`` or ``twice``, how a hem or casing is turned.
    by_hand
        Whether it is sewn by hand.
    how
        A join in the round (which wants the whole ring closed first), flat, rolled or wrapped.
    own_seam
        The name of the author's own kind of seam.
    between
        What is caught between the two sides.
    partners
        The pieces that are set on or laid along: a band, a binding, a placket, a held layer. Bands
        that are set on side by side stand in a row, each followed by the layers under it.
    under
        Of the partners of a band: the inner layers, which close over the one before them.
    places
        Places on the faces of pieces: where pockets, buttons and buttonholes go.
    mouth
        The edges of a patch pocket that stay open.
    sides
        Which sides lie together.
    ends, closing
        The ends of a band, and how its loose edge is fastened.
    from_wrong_side
        Whether a band is set on, or a piece is sewn on, from the wrong side.
    by
        For ``attach``: the one edge by which a piece is sewn on, as a tie by one end.
    is_doubled
        Whether what is sewn on is laid double, with both its ends at the edge.
    from_bottom
        Whether a zip is shortened at its lower end.
    topstitch
        Where a seam is topstitched afterwards, in the author's words; ``None`` for not at all.
    strap
        How a strap is made.
    is_bound
        Whether buttonholes are bound with cloth, before the facing, and not worked with thread.
    number
        How many: buttonholes, darts.
    cuts
        How much the knife takes off while an edge is finished.
    left
        How much of an allowance is left when it is trimmed.
    hours
        How long to wait.
    purpose
        What one waits for, where the author says so.
    width
        How wide a boxed corner is.
    half
        Of the pieces: those of which only half the width is fused.
    through
        The opening through which the work is turned, in the author's words.
    closes
        For ``close``: the entry that left the gap. For ``open``: the notion is ``notion``.
    fabrics
        What is washed beforehand.
    when
        The choices for which it is done, as (choice, option); all of them if empty.
    picture
        A picture of the author's own that goes with the step.
    without
        Parts of the recipe that are left out.
    station, foot, minutes
        Overrides for the main operation: where, with which presser foot, how long.
    thread, needle
        What its stitching is done with, where that is not what the rest is sewn with; where some
        of it is topstitching, the topstitching alone.
    setting
        How the machine is set for the main operation, in the author's words.
    unit
        Overrides the part in hand: the pieces named.
    keep_clear
        The layers that are folded out of the way of the stitching.
    after
        What the author wants done before, entries or single operations.
    because
        The author's reason for ``after``.
    makes, uses
        Named results of free-word operations.
    words
        The text of ``do:``.
    is_wet
        Whether it gets wet: folds, pressing and marks come out.
    title, note, say
        A heading, the designer's note, and the author's own sentence.
    path
        Where the document says so.
    """

    id: EntryId
    verb: Verb
    run: tuple[EdgeRef, ...] = ()
    pieces: tuple[PieceId, ...] = ()
    to: tuple[EdgeRef, ...] = ()
    to_name: str | None = None
    notion: NotionId | None = None
    fabric: str | None = None
    into: EntryId | None = None
    seam: SeamKind = SeamKind.PLAIN
    method: ZipMethod | None = None
    on_top: Hand | Worn | None = None
    ease: Length | None = None
    allowance: Length | None = None
    depth: Length | None = None
    gap: Length | None = None
    overlap: Length | None = None
    press_to: str | None = None
    portion: Portion | None = None
    is_flat: bool = False
    is_in_one: bool = False
    how: SeamMethod | None = None
    own_seam: str | None = None
    between: tuple[Caught, ...] = ()
    partners: tuple[PieceId, ...] = ()
    under: tuple[PieceId, ...] = ()
    places: tuple[Place, ...] = ()
    mouth: tuple[str, ...] = ()
    sides: Sides = Sides.RIGHT_TOGETHER
    ends: Ends | None = None
    closing: Closing | None = None
    from_wrong_side: bool = False
    by: EdgeRef | None = None
    is_doubled: bool = False
    from_bottom: bool = False
    topstitch: str | None = None
    strap: StrapMethod = StrapMethod.TURNED
    is_bound: bool = False
    number: int | None = None
    cuts: Length | None = None
    left: Length | None = None
    hours: int | None = None
    purpose: Purpose | None = None
    width: Length | None = None
    half: tuple[PieceId, ...] = ()
    through: str | None = None
    closes: EntryId | None = None
    fabrics: tuple[str, ...] = ()
    when: tuple[tuple[str, str], ...] = ()
    picture: str | None = None
    open: EntryId | None = None
    turned: str | None = None
    by_hand: bool = False
    without: tuple[str, ...] = ()
    station: str | None = None
    foot: str | None = None
    thread: str | None = None
    needle: str | None = None
    setting: str | None = None
    minutes: int | None = None
    unit: tuple[PieceId, ...] = ()
    keep_clear: tuple[PieceId, ...] = ()
    after: tuple[OpId, ...] = ()
    because: str | None = None
    makes: tuple[str, ...] = ()
    uses: tuple[str, ...] = ()
    words: str | None = None
    is_wet: bool = False
    title: str | None = None
    note: str | None = None
    say: str | None = None
    path: DocPath = ()

    @property
    def outer(self) -> tuple[PieceId, ...]:
        """The partners without the layers under them."""
        return tuple(piece for piece in self.partners if piece not in self.under)

    @property
    def in_the_round(self) -> bool:
        """Whether a join wants the whole ring closed first."""
        return self.how is SeamMethod.IN_THE_ROUND
