"""What a recipe is made of: steps that say part, action and where it is done."""

from typing import NamedTuple

from seqplan.model.operation import Action

MAIN = ""
"""The part name of the operation that an entry is named after."""


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
    """

    part: str
    action: Action
    station: str
    foot: str = ""


Recipe = tuple[Ingredient, ...]
"""Ingredients in the order in which a sewist would say them. The order binds nothing: rules do."""
