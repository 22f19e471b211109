"""Every kind of handout, and who composes it; a composer is imported when it is asked for."""

from collections.abc import Callable, Mapping
from dataclasses import replace
from typing import Final, NamedTuple

from seqplan.model.workroom import Workroom
from seqplan.order.limits import Limit, no_limit
from seqplan.paper.blocks import Document
from seqplan.plan.plan import Planner
from seqplan.recipes.construction import Construction


class Asked(NamedTuple):
    """What a handout is asked to be like; a kind takes of it what concerns it.

    Parameters
    ----------
    is_large
        Whether it is set in large print.
    sessions, learners
        Of a class: how many sessions and learners; ``None`` where nobody says.
    workroom
        One's own machines, for a batch and a class.
    limit
        When to break off the search for the fewest changes.
    """

    is_large: bool = False
    sessions: int | None = None
    learners: int | None = None
    workroom: Workroom | None = None
    limit: Limit = no_limit


Composed = Mapping[str, Document]
"""The documents of a handout by what is added to its name; the only one has an empty addition."""


def compose(kind: str, c: Construction, planner: Planner, asked: Asked | None = None) -> Composed:
    """Compose a handout.

    Parameters
    ----------
    kind
        One of `HANDOUTS`.
    c, planner
        The garment, and what finds its orders.
    asked
        What it is asked to be like.

    Raises
    ------
    NoPlanError
        When no order exists.
    NoMachineError
        An operation needs a station that the workroom does not have.
    """
    wanted = asked or Asked()
    found = HANDOUTS[kind](c, planner, wanted)
    return {name: replace(one, is_large=wanted.is_large) for name, one in found.items()}


def _booklet(c: Construction, planner: Planner, _asked: Asked) -> Composed:
    from seqplan.paper.booklet import compose

    return {"": compose(c, planner)}


def _batch(c: Construction, planner: Planner, asked: Asked) -> Composed:
    from seqplan.paper.batch import compose

    return {"": compose(c, planner, limit=asked.limit, workroom=asked.workroom)}


def _class(c: Construction, planner: Planner, asked: Asked) -> Composed:
    from seqplan.paper.class_sheets import compose

    sheets = compose(
        c,
        planner,
        sessions=asked.sessions,
        learners=asked.learners,
        workroom=asked.workroom,
    )
    return dict(zip(("learner", "teacher", "cards"), sheets, strict=True))


def _filming(c: Construction, planner: Planner, asked: Asked) -> Composed:
    from seqplan.paper.filming import compose

    return {"": compose(c, planner, limit=asked.limit)}


HANDOUTS: Final[Mapping[str, Callable[[Construction, Planner, Asked], Composed]]] = {
    "booklet": _booklet,
    "batch": _batch,
    "class": _class,
    "filming": _filming,
}
"""Who composes each kind."""
