"""What has become of each edge so far: raw, sewn, hemmed, finished, pressed, trimmed to what."""

from collections.abc import Collection
from enum import Enum
from fractions import Fraction
from typing import Final, NamedTuple

from seqplan.base.ids import OpId
from seqplan.model.entry import SeamKind
from seqplan.model.operation import Action
from seqplan.model.piece import Segment
from seqplan.rehearse.work import Work

_ROWS: Final = (Action.STAYSTITCH, Action.BASTE, Action.HOLD, Action.GATHER)
_SEWN: Final = (
    Action.SEW,
    Action.SET_ON,
    Action.SET_ZIP,
    Action.STITCH_ON,
    Action.MAKE_STRAP,
    Action.CLOSE_ENDS,
)
_FOLDED: Final = (Action.HEM, Action.CASE, Action.TURN_UP, Action.PRESS_UNDER)
_ENCLOSING: Final = (Action.ENCLOSE, Action.WRAP, Action.CLOSE_BAND)
_AS_A_WHOLE: Final = frozenset(
    {
        Action.PRETREAT,
        Action.CUT,
        Action.MARK,
        Action.FIT,
        Action.INSPECT,
        Action.WAIT,
        Action.SEND_OUT,
    }
)
"""What is done to whole pieces, and to no edge of them."""
_OVERLOCKER: Final = "overlocker"


class Kind(Enum):
    """How far an edge is; the later ones hide the earlier."""

    RAW = "raw"
    ROWS = "rows"
    """Staystitched, basted, held or gathered."""
    SEWN = "sewn"
    HEMMED = "hemmed"
    ENCLOSED = "enclosed"
    FOLD = "fold"


class EdgeState(NamedTuple):
    """The state of an edge.

    Parameters
    ----------
    kind
        How far it is.
    is_finished
        Whether it is finished against ravelling, by itself or in the pass that sewed it.
    is_active
        Whether this step works on it.
    """

    kind: Kind
    is_finished: bool = False
    is_active: bool = False

    @property
    def letters(self) -> tuple[str, ...]:
        """The ends of the names of the letters that tell it, beside how it is drawn."""
        plain = {Kind.RAW, Kind.FOLD}
        kind = () if self.kind in plain else (self.kind.value,)
        return (*kind, "finished") if self.is_finished else kind

    @property
    def key(self) -> str:
        """The end of the name of the sentence that tells it."""
        return f"{self.kind.value}-finished" if self.is_finished else self.kind.value


class EdgeNow(NamedTuple):
    """All that is known of an edge.

    Parameters
    ----------
    name
        The edge as a file would name it.
    state
        How far it is.
    pressed
        Which way its allowances are pressed, or ``flat``; ``None`` as long as they are not.
    understitched
        ``whole`` or ``part``; ``None`` where it is not.
    left
        What is left of its allowance, in mm; ``None`` where nobody has said.
    """

    name: str
    state: EdgeState
    pressed: str | None
    understitched: str | None
    left: Fraction | None


def edge_now(work: Work, segment: Segment) -> EdgeNow:
    """All that is known of a cut edge after what has been done."""
    row = work.mark(segment, [Action.UNDERSTITCH])
    is_part = row is not None and work.c.entry(work.c.op[row]).portion is not None
    return EdgeNow(
        name=work.c.edge_name(segment),
        state=state_of(work, segment),
        pressed=_pressed(work, segment),
        understitched=None if row is None else "part" if is_part else "whole",
        left=work.allowance.left(segment),
    )


def _pressed(work: Work, segment: Segment) -> str | None:
    by = work.mark(segment, [Action.PRESS])
    if by is None:
        return None
    entry = work.c.entry(work.c.op[by])
    if entry.seam is SeamKind.PRESSED_OPEN:
        return "open"
    return entry.press_to or "flat"


def state_of(work: Work, segment: Segment, step: Collection[OpId] = ()) -> EdgeState:
    """The state of a cut edge after what has been done.

    Parameters
    ----------
    work
        The work so far.
    segment
        The cut edge.
    step
        The operations of the step that is shown.
    """
    ops = (work.c.op[id_] for id_ in step if work.c.op[id_].action not in _AS_A_WHOLE)
    is_active = any(
        segment in op.segments if op.segments else segment.piece in op.pieces for op in ops
    )
    return EdgeState(_kind(work, segment), _is_finished(work, segment), is_active)


def _kind(work: Work, segment: Segment) -> Kind:
    if work.c.rings.pieces[segment.piece].edges[segment.place].is_folded:
        return Kind.FOLD
    is_turned = any(id_ in work.turned for id_ in work.c.seams_at([segment]))
    if is_turned or work.mark(segment, _ENCLOSING):
        return Kind.ENCLOSED
    if work.mark(segment, _FOLDED):
        return Kind.HEMMED
    if work.surface.glue_at(segment) is not None or work.mark(segment, _SEWN):
        return Kind.SEWN
    taken_out = work.mark(segment, [Action.REMOVE_BASTING])
    kept = (Action.STAYSTITCH,) if taken_out else _ROWS
    return Kind.ROWS if work.mark(segment, kept) else Kind.RAW


def _is_finished(work: Work, segment: Segment) -> bool:
    sewn = work.mark(segment, [Action.SEW])
    is_overlocked = sewn is not None and work.c.op[sewn].setup.station == _OVERLOCKER
    return is_overlocked or work.mark(segment, [Action.FINISH]) is not None
