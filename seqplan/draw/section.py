"""The section of a seam or an edge after an operation."""

from typing import Final

from seqplan.base.ids import PieceId
from seqplan.draw import edges
from seqplan.draw.cloth import Section
from seqplan.draw.subject import Subject, find_subject
from seqplan.model.operation import Action, Operation
from seqplan.recipes.construction import Construction
from seqplan.rehearse.work import Work

DRAWN: Final = frozenset(
    {
        Action.STAYSTITCH,
        Action.DART,
        Action.PLEAT,
        Action.GATHER,
        Action.MAKE_STRAP,
        Action.SEW,
        Action.ENCLOSE,
        Action.BASTE,
        Action.HOLD,
        Action.SET_ZIP,
        Action.THREAD,
        Action.STITCH_ON,
        Action.SET_ON,
        Action.SLASH,
        Action.CLOSE_BAND,
        Action.FINISH,
        Action.TRIM,
        Action.GRADE,
        Action.PRESS,
        Action.PRESS_OVER,
        Action.PRESS_UNDER,
        Action.FOLD_BAND,
        Action.WRAP,
        Action.UNDERSTITCH,
        Action.TOPSTITCH,
        Action.TURN,
        Action.TURN_UP,
        Action.HEM,
        Action.CASE,
        Action.REMOVE_BASTING,
    }
)
"""What changes how a seam or an edge looks in cross-section."""


def section(
    c: Construction, work: Work, op: Operation, focus: PieceId | None = None
) -> Section | None:
    """Derive how a seam or an edge lies after an operation.

    Parameters
    ----------
    c
        The garment.
    work
        The work in which the operation, and all before it, has been done.
    op
        The operation.
    focus
        The strip that is looked at, of several.

    Returns
    -------
    Section or None
        ``None`` where the operation leaves nothing to be seen in cross-section.
    """
    if op.action not in DRAWN:
        return None
    entry = c.shapes[find_subject(c, work, op)].entry
    if op.action is Action.THREAD and entry.into is not None:
        entry = c.shapes[entry.into].entry
    drawn = edges.OF_VERB.get(entry.verb)
    return drawn(Subject(c, work, entry, op, focus)) if drawn else None
