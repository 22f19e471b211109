"""How the room stands: the state of every track at once, and what it takes to change it."""

from collections.abc import Sequence

from seqplan.base.ids import OpId
from seqplan.order.changes import Changes
from seqplan.order.entries import ANY, Side


def sides_of(operations: Sequence[OpId], changes: Changes) -> tuple[Side, ...]:
    """Translate tracks into numbers."""
    return tuple(
        Side(
            labels=tuple(
                track.number[track.needs[each]] if each in track.needs else ANY
                for each in operations
            ),
            costs=track.costs,
            start=len(track.states) if track.start is None else track.number[track.start],
        )
        for track in changes.tracks
    )


class Rooms:
    """Rooms, and kinds of operations that need the same of them; both numbered.

    Parameters
    ----------
    sides
        The tracks.
    size
        How many operations there are.

    Attributes
    ----------
    stands
        For every room met so far the state of every track.
    fits
        For every room the operations that can be done in it without any change.
    kinds
        For every kind its operations.
    first
        The room before the first operation.
    """

    def __init__(self, sides: Sequence[Side], size: int) -> None:
        # A track without a start has one more state, from which everything is free.
        self._costs = [(*side.costs, (0,) * len(side.costs)) for side in sides]
        self._number: dict[tuple[int, ...], int] = {}
        self._steps: list[dict[int, tuple[int, int]]] = []
        self._extra: dict[tuple[int, int], int] = {}
        masks: dict[tuple[int, ...], int] = {}
        for node in range(size):
            wanted = tuple(side.labels[node] for side in sides)
            masks[wanted] = masks.get(wanted, 0) | 1 << node
        self._wants = list(masks)
        self.kinds = list(masks.values())
        self.stands: list[tuple[int, ...]] = []
        self.fits: list[int] = []
        self.first = self._enter(tuple(side.start for side in sides))

    def step(self, room: int, kind: int) -> tuple[int, int]:
        """Make a room ready for a kind: what that costs, and the room it then is."""
        step = self._steps[room].get(kind)
        if step is None:
            here = self.stands[room]
            there = tuple(
                state if want == ANY else want
                for state, want in zip(here, self._wants[kind], strict=True)
            )
            # The state without a start has no column, and nobody goes there.
            cost = sum(
                costs[one][other]
                for costs, one, other in zip(self._costs, here, there, strict=True)
                if one != other
            )
            step = self._steps[room][kind] = cost, self._enter(there)
        return step

    def extra(self, one: int, other: int) -> int:
        """Tell by how much at most one room makes the rest of an order dearer than the other."""
        extra = self._extra.get((one, other))
        if extra is None:
            extra = self._extra[one, other] = sum(
                max(map(int.__sub__, costs[here], costs[there]), default=0)
                for costs, here, there in zip(
                    self._costs, self.stands[one], self.stands[other], strict=True
                )
            )
        return extra

    def _enter(self, stand: tuple[int, ...]) -> int:
        """Number a room."""
        if stand not in self._number:
            self._number[stand] = len(self.stands)
            self.stands.append(stand)
            self._steps.append({})
            self.fits.append(
                sum(
                    mask
                    for wants, mask in zip(self._wants, self.kinds, strict=True)
                    if all(want in (ANY, state) for want, state in zip(wants, stand, strict=True))
                )
            )
        return self._number[stand]
