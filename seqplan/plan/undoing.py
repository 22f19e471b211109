"""How an operation is undone, and which cannot be."""

from collections.abc import Mapping
from enum import Enum
from typing import Final

from seqplan.base.ids import RuleSlug
from seqplan.model.operation import Action


class Undoing(Enum):
    """What it takes to undo an operation."""

    UNPICK = "unpick"
    """Stitches are taken out."""
    PRESS_FLAT = "press flat"
    """A crease or a fold is pressed out."""
    LAY_BACK = "lay back"
    """The work is turned, folded or opened the other way."""
    TAKE_OFF = "take off"
    """What was drawn in or put on is taken off."""
    NOTHING = "nothing"
    """Nothing is in the way; it is only done again."""
    YOURS = "yours"
    """It is told in free words, so only its author knows."""
    LOST = "lost"
    """Cloth is cut or glued: it cannot be undone."""


UNDOING: Final[Mapping[Action, Undoing]] = {
    **dict.fromkeys(
        (
            Action.CUT,
            Action.FUSE,
            Action.SLASH,
            Action.TRIM,
            Action.GRADE,
            Action.CLIP,
            Action.BUTTONHOLE,
            Action.BIND_HOLE,
            Action.OPEN_BEHIND,
            Action.SEND_OUT,
            Action.SHORTEN,
        ),
        Undoing.LOST,
    ),
    **dict.fromkeys(
        (
            Action.PRESS,
            Action.PRESS_OVER,
            Action.PRESS_COILS,
            Action.PRESS_UNDER,
            Action.FOLD_BAND,
            Action.WRAP,
            Action.TURN_UP,
        ),
        Undoing.PRESS_FLAT,
    ),
    **dict.fromkeys(
        (Action.TURN, Action.FOLD, Action.UNFOLD, Action.NEST, Action.ROLL, Action.OPEN),
        Undoing.LAY_BACK,
    ),
    **dict.fromkeys((Action.THREAD, Action.ATTACH), Undoing.TAKE_OFF),
    **dict.fromkeys(
        (
            Action.PRETREAT,
            Action.MARK,
            Action.REMOVE_BASTING,
            Action.FIT,
            Action.INSPECT,
            Action.WAIT,
        ),
        Undoing.NOTHING,
    ),
    **dict.fromkeys(
        (
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
            Action.TACK,
            Action.SEW_STOP,
            Action.STITCH_ON,
            Action.SET_ON,
            Action.CLOSE_ENDS,
            Action.CLOSE_BAND,
            Action.BOX,
            Action.FINISH,
            Action.UNDERSTITCH,
            Action.TOPSTITCH,
            Action.HEM,
            Action.CASE,
            Action.JOIN_ENDS,
            Action.CLOSE_GAP,
        ),
        Undoing.UNPICK,
    ),
    Action.DO: Undoing.YOURS,
}
"""What it takes for every action."""

GOING_THROUGH: Final[frozenset[RuleSlug]] = frozenset(
    map(
        RuleSlug,
        (
            "buttonholes-after-layers",
            "facing-tacked-last",
            "fastenings-last",
            "hemmed-before-banded",
            "zip-before-waist-finish",
        ),
    )
)
"""Good practice by which the later operation goes through, or over the end of, what the earlier one
made. Nobody can undo the earlier one while the later one holds it, whatever order is possible when
both are made. For the other rules it makes no difference, or a must says so anyway."""
