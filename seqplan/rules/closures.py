"""What several rules ask about the ends of zips, bands and casings."""

from collections.abc import Iterator

from seqplan.base.ids import EntryId
from seqplan.model.operation import Operation
from seqplan.recipes.construction import Construction
from seqplan.surface.ring import EdgeEnd


def seams_going_on(c: Construction, op: Operation) -> tuple[EntryId, ...]:
    """The seams that go straight on where the edges of ``op`` end, past a mark."""
    found = []
    for end in _tips(c, op.entry):
        corner = c.rings.across(end)
        seam = c.seam_at(corner.neighbour.segment) if corner.is_straight else None
        if seam is not None and seam != op.entry:
            found.append(seam)
    return tuple(dict.fromkeys(found))


def entries_ending_at(c: Construction, entry: EntryId) -> tuple[EntryId, ...]:
    """The entries that act on an edge which meets an end of this entry's run at a corner."""
    found = []
    for end in _tips(c, entry):
        corner = c.rings.across(end)
        if not corner.is_straight:
            found += [op.entry for op in c.on_segment.get(corner.neighbour.segment, ())]
    return tuple(id_ for id_ in dict.fromkeys(found) if id_ != entry)


def runs_over(c: Construction, entry: EntryId, other: EntryId) -> bool:
    """Whether one entry runs across what another sews, as a shirt hem over its front bands."""
    demand = c.meetings.demands.get(entry)
    return demand is not None and other in demand.always


def _tips(c: Construction, entry: EntryId) -> Iterator[EdgeEnd]:
    for stretch in c.stretches.get(entry, ()):
        yield from stretch.tips
