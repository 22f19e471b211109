"""The ends of zips: cut off only where something keeps the slider on.

A stop that is sewn over the teeth does, or a seam or band that crosses them.
"""

from collections.abc import Iterator
from typing import Final

from seqplan.base.ids import NotionId
from seqplan.model.operation import Action, Operation
from seqplan.recipes.construction import Construction
from seqplan.rehearse.states.state import Done
from seqplan.rehearse.trouble import Trouble
from seqplan.surface.ring import EdgeEnd

_CROSSING: Final = frozenset(
    {Action.SEW, Action.SET_ON, Action.CLOSE_BAND, Action.CASE, Action.HEM}
)
"""What runs across the end of a zip and holds it."""


class ZipEnds:
    """Which ends of zips are secured.

    Parameters
    ----------
    c
        The garment.
    done
        What is done.
    """

    def __init__(self, c: Construction, done: Done) -> None:
        self._c = c
        self._done = done

    def hinders(self, op: Operation) -> Iterator[Trouble]:
        """Off a cut end without a stop, the slider runs."""
        if op.action is not Action.SHORTEN:
            return
        stops = self._c.doing(op.entry, Action.SEW_STOP)
        holding = stops or tuple(self._across(op))
        if any(other.id in self._done for other in holding):
            return
        missing = holding[0].id if holding else None
        yield Trouble(op.id, "slider-runs-off" if holding else "no-stop", missing=missing)

    def do(self, op: Operation) -> None:
        """Nothing but what is done is kept."""

    def _across(self, op: Operation) -> Iterator[Operation]:
        """What crosses the zip at a corner of its opening; at a mark, a seam only goes on from it.

        At the lower end the seam below it does, or what the zip is closed in.
        """
        is_low = self._c.entry(op).from_bottom
        for notion in op.notions:
            for end in self._ends(notion):
                corner = self._c.rings.across(end)
                if corner.is_straight is not is_low:
                    continue
                ops = self._c.on_segment.get(corner.neighbour.segment, ())
                yield from (other for other in ops if other.action in _CROSSING)

    def _ends(self, notion: NotionId) -> Iterator[EdgeEnd]:
        for setting in self._c.acting(Action.SET_ZIP):
            if notion in setting.notions:
                for segment in setting.segments:
                    yield EdgeEnd(segment, False)
                    yield EdgeEnd(segment, True)
