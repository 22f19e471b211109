"""An operation: one thing done at one station; entries become operations through recipes."""

from enum import Enum
from typing import NamedTuple

from seqplan.base.ids import EntryId, NotionId, OpId, PieceId
from seqplan.base.path import DocPath
from seqplan.model.piece import Segment


class Action(Enum):
    """What an operation does. Rules speak of actions, never of the words of an entry."""

    FUSE = "fuse"
    STAYSTITCH = "staystitch"
    DART = "dart"
    PLEAT = "pleat"
    GATHER = "gather"

    SEW = "sew"
    ENCLOSE = "enclose"
    """The second stitching of a French seam."""
    BASTE = "baste"
    SET_ZIP = "set zip"
    THREAD = "thread"
    """Draw elastic or cord through a casing."""
    ATTACH = "attach"
    TACK = "tack"

    FINISH = "finish"
    TRIM = "trim"
    CLIP = "clip"
    PRESS = "press"
    """Press a seam or a hem for good: open, to one side, towards the facing, or as it lies."""
    PRESS_OVER = "press over"
    """Press a French seam between its two stitchings, right sides together."""
    PRESS_COILS = "press coils"
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

    FIT = "fit"
    INSPECT = "inspect"
    DO = "do"


class Setup(NamedTuple):
    """What has to be ready: a station and the presser foot on it (empty where there is none)."""

    station: str
    foot: str = ""


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
        Station and foot.
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
