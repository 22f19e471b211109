"""Which ends lie over one another where something is closed, as over a fly or a lapped zip."""

from collections.abc import Iterable

from seqplan.model.entry import Entry, Verb
from seqplan.model.piece import Segment
from seqplan.recipes.construction import Construction
from seqplan.surface.ring import EdgeEnd


def beside(c: Construction, segments: Iterable[Segment], *, at_mark: bool) -> tuple[Segment, ...]:
    """Edges next to these on their pieces, at a mark or at a corner, each name once."""
    run = set(segments)
    found: dict[str, Segment] = {}
    for segment in sorted(run):
        for at_end in (False, True):
            corner = c.rings.across(EdgeEnd(segment, at_end))
            other = corner.neighbour.segment
            is_fold = other.place == segment.place and other.half != segment.half
            if other not in run and corner.is_straight == at_mark and not is_fold:
                found.setdefault(c.rings.name(other), other)
    return tuple(found.values())


def zip_over(c: Construction, entry: Entry) -> Entry | None:
    """The zip that one side covers, at whose top an entry closes what it closes.

    The entry names edges that end at the zip, or a band that is sewn to such edges.
    """
    pieces = {place.piece for place in entry.places}
    bands = (e for e in c.garment.entries if e.verb is Verb.BAND and pieces & {*e.partners})
    run = {segment for band in bands for segment in c.shapes[band.id].run}
    edges = set(beside(c, run or c.shapes[entry.id].run, at_mark=False))
    zips = (e for e in c.garment.entries if e.method is not None and e.method.is_covered)
    return next((e for e in zips if edges & set(c.shapes[e.id].run)), None)
