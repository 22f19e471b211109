"""How far the work is after so many operations, in words."""

from collections.abc import Iterable
from typing import Final, NamedTuple

from seqplan.model.operation import Action
from seqplan.model.piece import EdgeRef, Segment
from seqplan.plan.bundles import bundles
from seqplan.recipes.construction import Construction
from seqplan.rehearse.lying import is_free
from seqplan.rehearse.work import Work
from seqplan.tell.deeds import name_done, name_unit
from seqplan.tell.names import name_edges

_PREPARING: Final = frozenset({Action.PRETREAT, Action.CUT, Action.MARK, Action.FUSE})
"""What is done to pieces before they are begun."""


class Progress(NamedTuple):
    """How far the work is.

    Parameters
    ----------
    together
        What hangs together, part by part; only parts of several pieces.
    done
        What has been done, entry by entry.
    open
        The edges of what has been begun that nothing holds or covers, in words; may be empty.
    finished
        The same of edges that are finished.
    untouched
        What has not been begun.
    """

    together: tuple[str, ...]
    done: tuple[str, ...]
    open: str
    finished: str
    untouched: tuple[str, ...]


def tell_progress(c: Construction, work: Work) -> Progress:
    """Say how far the work is.

    Parameters
    ----------
    c
        The garment.
    work
        The work after what has been done.
    """
    done = tuple(work.done)
    begun = {
        piece for id_ in done for piece in c.op[id_].pieces if c.op[id_].action not in _PREPARING
    }
    units = bundles(c, done)
    is_open = [s for s in c.rings.segments if s.piece in begun and is_free(work, s)]
    finished = [s for s in is_open if work.mark(s, [Action.FINISH]) is not None]
    return Progress(
        together=tuple(name_unit(c, unit) for unit in units if len(unit) > 1),
        done=name_done(c, done),
        open=_edges(c, (s for s in is_open if s not in finished)),
        finished=_edges(c, finished),
        untouched=tuple(name_unit(c, unit) for unit in units if not unit & begun),
    )


def _edges(c: Construction, segments: Iterable[Segment]) -> str:
    refs = (EdgeRef(segment.piece, c.rings.name(segment)) for segment in segments)
    return name_edges(c.garment, tuple(dict.fromkeys(refs)))
