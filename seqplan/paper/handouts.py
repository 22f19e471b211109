"""Every kind of handout, and who composes it; a composer is imported when it is asked for."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from dataclasses import replace
from typing import TYPE_CHECKING, Final, NamedTuple

from seqplan.order.limits import Limit, no_limit

if TYPE_CHECKING:
    from seqplan.model.workroom import Workroom
    from seqplan.paper.blocks import Document
    from seqplan.plan.plan import Planner
    from seqplan.recipes.construction import Construction


class Wish(NamedTuple):
    """How a handout is wanted.

    Parameters
    ----------
    is_large
        Whether it is set in large print.
    sessions, learners
        Of a class: how many sessions, and how many learners share the machines.
    workroom
        The machines there are, where others are not the same everywhere.
    limit
        When to break off the search for an order.
    """

    is_large: bool = False
    sessions: int | None = None
    learners: int | None = None
    workroom: Workroom | None = None
    limit: Limit = no_limit


Documents = Mapping[str, "Document"]
"""The documents of a handout; the name of each tells it from the others, empty for a lone one."""


def compose(kind: str, c: Construction, planner: Planner, wish: Wish) -> Documents:
    """Compose a handout.

    Parameters
    ----------
    kind
        One of ``HANDOUTS``.
    c, planner
        The garment, and what finds its orders.
    wish
        How it is wanted.

    Raises
    ------
    NoPlanError
        When no order exists.
    NoMachineError
        An operation needs a station that the workroom does not have.
    """
    found = HANDOUTS[kind](c, planner, wish)
    if not wish.is_large:
        return found
    return {name: replace(document, is_large=True) for name, document in found.items()}


def _booklet(c: Construction, planner: Planner, wish: Wish) -> Documents:
    from seqplan.paper import booklet

    return {"": booklet.compose(c, planner)}


def _batch(c: Construction, planner: Planner, wish: Wish) -> Documents:
    from seqplan.paper import batch

    return {"": batch.compose(c, planner, limit=wish.limit, workroom=wish.workroom)}


def _class(c: Construction, planner: Planner, wish: Wish) -> Documents:
    from seqplan.paper import class_sheets

    learner, teacher, cards = class_sheets.compose(
        c,
        planner,
        sessions=wish.sessions,
        learners=wish.learners,
        workroom=wish.workroom,
        is_large=wish.is_large,
    )
    return {"learner": learner, "teacher": teacher, "cards": cards}


def _filming(c: Construction, planner: Planner, wish: Wish) -> Documents:
    from seqplan.paper import filming

    return {"": filming.compose(c, planner, limit=wish.limit)}


HANDOUTS: Final[Mapping[str, Callable[[Construction, Planner, Wish], Documents]]] = {
    "booklet": _booklet,
    "batch": _batch,
    "class": _class,
    "filming": _filming,
}
"""Who composes each kind."""
