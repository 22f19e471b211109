"""Every kind of handout, and who composes it; a composer is imported when it is asked for."""

from collections.abc import Callable
from importlib import import_module
from typing import Final

from seqplan.paper.blocks import Document
from seqplan.plan.plan import Planner
from seqplan.recipes.construction import Construction

Composer = Callable[[Construction, Planner], Document]

HANDOUTS: Final = {
    "booklet": "seqplan.paper.booklet",
}
"""The module of each kind; its function ``compose`` makes the document."""


def composer(kind: str) -> Composer:
    """The composer of a kind of handout."""
    compose: Composer = import_module(HANDOUTS[kind]).compose
    return compose
