"""An operation: one thing done at one station; entries become operations through recipes."""

from enum import Enum
from typing import NamedTuple

from seqplan.base.ids import EntryId, NotionId, OpId, PieceId
from seqplan.base.path import DocPath
from seqplan.model.piece import Segment


class Action(Enum):
    """What an operation does. Rules speak of actions, never of the words of an entry."""

    PRETREAT = "pretreat"
    CUT = "cut"
    MARK = "mark"
    FUSE = "fuse"
    STAYSTITCH = "staystitch"
    DART = "dart"
    PLEAT = "pleat"
    GATHER = "gather"
    SLASH = "slash"
    MAKE_STRAP = "make strap"
    """Fold a strap lengthwise and stitch it along."""

    SEW = "sew"
    ENCLOSE = "enclose"
    """The second stitching of a French or flat-felled seam."""
    BASTE = "baste"
    HOLD = "hold"
    """Baste layers together so that they are one from then on."""
    SET_ZIP = "set zip"
    THREAD = "thread"
    """Draw elastic or cord through a casing."""
    ATTACH = "attach"
    TACK = "tack"
    STITCH_ON = "stitch on"
    """Stitch a pocket, a welt or a strap onto the face of a piece."""
    SET_ON = "set on"
    """Sew a band or a binding to an edge, or a pocket bag to the edges of a seam to be."""
    CLOSE_ENDS = "close ends"
    CLOSE_BAND = "close band"
    """Fasten the loose edge of a band or binding."""
    BOX = "box"
    """Sew across a corner, so that it becomes three-dimensional."""

    FINISH = "finish"
    TRIM = "trim"
    GRADE = "grade"
    CLIP = "clip"
    PRESS = "press"
    """Press a seam or a hem for good: open, to one side, towards the facing, or as it lies."""
    PRESS_OVER = "press over"
    """Press a French seam between its two stitchings, right sides together."""
    PRESS_COILS = "press coils"
    PRESS_UNDER = "press under"
    """Press an allowance to the wrong side: of a patch pocket, a lapped edge."""
    FOLD_BAND = "fold band"
    """Press a band or strap lengthwise."""
    WRAP = "wrap"
    """Fold a band or binding over the edge."""
    UNDERSTITCH = "understitch"
    TOPSTITCH = "topstitch"
    TURN = "turn"
    """Bring the right side out, or a facing to the inside."""
    TURN_UP = "turn up"
    """Fold and press a hem or casing."""
    HEM = "hem"
    CASE = "case"
    """Stitch a casing."""
    JOIN_ENDS = "join ends"
    CLOSE_GAP = "close gap"
    REMOVE_BASTING = "remove basting"
    BUTTONHOLE = "buttonhole"
    BIND_HOLE = "bind buttonhole"
    """Set lips of cloth into a slash, in the outer cloth alone."""
    OPEN_BEHIND = "open behind"
    """Cut the facing open behind a bound buttonhole and hem it to the lips."""

    FOLD = "fold"
    UNFOLD = "unfold"
    NEST = "nest"
    ROLL = "roll"
    OPEN = "open"
    SEW_STOP = "sew stop"
    """Oversew the teeth of a zip, so that its slider cannot pass."""
    SHORTEN = "shorten"
    """Cut the end of a zip off."""

    FIT = "fit"
    INSPECT = "inspect"
    WAIT = "wait"
    SEND_OUT = "send out"
    DO = "do"


class Setup(NamedTuple):
    """What has to be ready for an operation.

    Parameters
    ----------
    station
        Where it is done.
    foot
        The presser foot; empty where there is none.
    thread, needle
        The thread and the needle; empty for those that the garment is sewn with otherwise, and
        where there is none.
    """

    station: str
    foot: str = ""
    thread: str = ""
    needle: str = ""


class Operation(NamedTuple):
    """One thing done at one station.

    Parameters
    ----------
    id
        ``side-seams`` for the main operation of an entry, ``side-seams/press`` for its parts.
    entry, part
        The entry it comes from, and which part of its recipe it is (empty for the main one).
    action
        What is done.
    setup
        Where, and what is mounted there.
    minutes
        How long it takes, where the author says so.
    segments
        The cut edges it acts on.
    pieces
        The pieces it acts on.
    notions
        The notions it uses.
    path
        Where the document asks for it.
    """

    id: OpId
    entry: EntryId
    part: str
    action: Action
    setup: Setup
    minutes: int | None = None
    segments: tuple[Segment, ...] = ()
    pieces: frozenset[PieceId] = frozenset()
    notions: tuple[NotionId, ...] = ()
    path: DocPath = ()

    def __hash__(self) -> int:
        """Names are unique within a garment, so the name is hash enough."""
        return hash(self.id)
