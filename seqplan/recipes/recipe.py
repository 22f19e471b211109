"""What a recipe is made of: steps that say part, action and where it is done."""

from enum import Enum, auto
from typing import NamedTuple

from seqplan.base.ids import PieceId
from seqplan.model.operation import Action

MAIN = ""
"""The part name of the operation that an entry is named after."""


class Reach(Enum):
    """Which of an entry's cut edges and pieces an operation of its recipe acts on."""

    RUN = auto()
    """Its run with all that lies in it, and all its pieces."""
    PARTNER = auto()
    """The pieces that are set on, before they are; no edge of theirs."""
    ENDS = auto()
    """The ends of a band."""
    MOUTH = auto()
    """The edges of a pocket that stay open."""
    AROUND = auto()
    """The edges of a pocket that are stitched on, before they are."""
    BAG = auto()
    """The edges of a pocket bag."""


class Ingredient(NamedTuple):
    """One operation of a recipe.

    Parameters
    ----------
    part
        Its name within the entry; ``MAIN`` for the operation that bears the entry's own name.
    action
        What is done.
    station
        Where, unless the entry says otherwise for the main operation.
    foot
        The presser foot it wants; empty for the standard foot of a machine or none.
    reach
        What of the entry it acts on.
    piece
        The one piece that it acts on, where an entry does the same on several.
    """

    part: str
    action: Action
    station: str
    foot: str = ""
    reach: Reach = Reach.RUN
    piece: PieceId | None = None


Recipe = tuple[Ingredient, ...]
"""Ingredients in the order in which a sewist would say them. The order binds nothing: rules do."""
