"""One entry under ``operations:``, as its author wrote it.

An entry is what a sewist says in one breath ("sew the side seams, finished together"); recipes
turn it into the operations that happen at one station each.
"""

from enum import Enum
from typing import NamedTuple

from seqplan.base.ids import EntryId, NotionId, OpId, PieceId
from seqplan.base.measure import Length
from seqplan.base.path import DocPath
from seqplan.model.piece import EdgeRef


class Verb(Enum):
    """What an entry does, in the trade's words; the value is the key in the file."""

    # prepare
    FUSE = "fuse"
    STAYSTITCH = "staystitch"
    DART = "dart"
    PLEAT = "pleat"
    GATHER = "gather"
    # join
    SEW = "sew"
    BASTE = "baste"
    INSERT = "insert"
    ATTACH = "attach"
    # tidy
    FINISH = "finish"
    TRIM = "trim"
    CLIP = "clip"
    PRESS = "press"
    UNDERSTITCH = "understitch"
    TOPSTITCH = "topstitch"
    TACK = "tack"
    HEM = "hem"
    CASING = "casing"
    REMOVE_BASTING = "remove basting"
    # handle and pause
    TURN = "turn"
    FIT = "fit"
    INSPECT = "inspect"
    # anything else
    DO = "do"


class SeamKind(Enum):
    """How a seam is made, as ``as:`` names it."""

    PLAIN = "plain"
    PRESSED_OPEN = "pressed open"
    FINISHED_TOGETHER = "finished together"
    FRENCH = "French"
    FACED = "faced"


class ZipMethod(Enum):
    """How a zip is set."""

    INVISIBLE = "invisible"
    CENTRED = "centred"


class Portion(NamedTuple):
    """A part of an edge, measured from one of its ends.

    ``part: 10 from waist`` is the 10 cm that start where the edge meets ``waist``
    (``is_named_part``); ``stop: 10 before waist`` is all but those (not ``is_named_part``).
    """

    length: Length
    neighbour: str
    is_named_part: bool


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
    in_the_round
        A join that wants the whole ring closed first.
    open
        The seam that stays open while a ring is joined.
    turned
        ``once`` or ``twice``, how a hem or casing is turned.
    by_hand
        Whether it is sewn by hand.
    without
        Parts of the recipe that are left out.
    station, foot, minutes
        Overrides for the main operation: where, with which presser foot, how long.
    unit
        Overrides the part in hand: the pieces named.
    after
        What the author wants done before, entries or single operations.
    because
        The author's reason for ``after``.
    makes, uses
        Named results of free-word operations.
    words
        The text of ``do:``.
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
    allowance: Length | None = None
    depth: Length | None = None
    gap: Length | None = None
    overlap: Length | None = None
    press_to: str | None = None
    portion: Portion | None = None
    is_flat: bool = False
    is_in_one: bool = False
    in_the_round: bool = False
    open: EntryId | None = None
    turned: str | None = None
    by_hand: bool = False
    without: tuple[str, ...] = ()
    station: str | None = None
    foot: str | None = None
    minutes: int | None = None
    unit: tuple[PieceId, ...] = ()
    after: tuple[OpId, ...] = ()
    because: str | None = None
    makes: tuple[str, ...] = ()
    uses: tuple[str, ...] = ()
    words: str | None = None
    title: str | None = None
    note: str | None = None
    say: str | None = None
    path: DocPath = ()
