"""The chains that a run of edges forms in the finished garment.

A run such as ``[back.hem, front.hem]`` is continuous only once the seams between its neighbours
are sewn. From each end of each of its edges the fan of the *finished* garment is walked until
another edge of the run is met; the seams crossed on the way are the junctions. Where every end
finds a neighbour, the run closes into a ring. The two sides of a slit, where a seam ends at a mark
and its edges go straight on, are two stretches.
"""

from collections.abc import Callable, Sequence
from typing import NamedTuple

from seqplan.base.ids import EntryId
from seqplan.model.piece import Segment
from seqplan.surface.glued import Surface
from seqplan.surface.ring import EdgeEnd

MayFollow = Callable[[Segment, Segment], bool]
"""Whether one edge of a run may go on into another."""


class Link(NamedTuple):
    """Two edges of a run that meet, and the entries whose seams lie between (none on one piece)."""

    ends: tuple[EdgeEnd, EdgeEnd]
    junctions: tuple[EntryId, ...]


class Stretch(NamedTuple):
    """A continuous piece of a run.

    Parameters
    ----------
    segments
        Its edges in walking order.
    links
        Between neighbours, in the same order; a ring has one more, back to the beginning.
    is_ring
        Whether it closes.
    tips
        The two ends that are no link; none in a ring.
    """

    segments: tuple[Segment, ...]
    links: tuple[Link, ...]
    is_ring: bool
    tips: tuple[EdgeEnd, ...]

    @property
    def junctions(self) -> tuple[EntryId, ...]:
        """The entries whose seams the stretch runs across, each once, in walking order."""
        return tuple(dict.fromkeys(e for link in self.links for e in link.junctions))


def find_stretches(
    surface: Surface,
    run: Sequence[Segment],
    may_follow: MayFollow,
    unsewn: EntryId | None = None,
) -> tuple[Stretch, ...]:
    """Find the stretches of a run.

    Parameters
    ----------
    surface
        The garment with its seams sewn.
    run
        The edges, in the order in which they are named.
    may_follow
        Whether two of them may be neighbours, where the walk says that they can.
    unsewn
        The entry whose run it is, if it sews seams itself: these count as not sewn.
    """
    links = _find_links(surface, run, may_follow, unsewn)
    left = dict.fromkeys(run)
    stretches = []
    while left:
        start = _tip_of(next(iter(left)), links)
        stretches.append(_walk(start, links))
        for segment in stretches[-1].segments:
            left.pop(segment, None)
    return tuple(stretches)


def _find_links(
    surface: Surface, run: Sequence[Segment], may_follow: MayFollow, unsewn: EntryId | None
) -> dict[EdgeEnd, Link]:
    members = frozenset(run)
    ends = [EdgeEnd(segment, at_end) for segment in run for at_end in (False, True)]
    fans = {end: surface.next_of(end, members, unsewn) for end in ends}
    links: dict[EdgeEnd, Link] = {}
    for end, (reached, crossed) in fans.items():
        # An edge that another seam has sewn is passed on one way round the point only.
        is_mutual = reached != end and reached in fans and fans[reached][0] == end
        if not is_mutual or (crossed and _is_slit(surface, end, reached)):
            continue
        if may_follow(end.segment, reached.segment):
            links[end] = Link((end, reached), crossed)
    return links


def _is_slit(surface: Surface, end: EdgeEnd, reached: EdgeEnd) -> bool:
    """Whether the seam between two edges goes straight on as both: the end of a slit or vent."""
    return surface.rings.across(end).is_straight and surface.rings.across(reached).is_straight


def _tip_of(segment: Segment, links: dict[EdgeEnd, Link]) -> EdgeEnd:
    """Walk backwards from an edge to where its stretch begins; in a ring, to the edge itself."""
    start = EdgeEnd(segment, False)
    here = start
    while here in links:
        here = _beyond(links[here], here).opposite
        if here == start:
            break
    return here


def _walk(start: EdgeEnd, links: dict[EdgeEnd, Link]) -> Stretch:
    segments = [start.segment]
    found = []
    here = start.opposite
    while here in links:
        link = links[here]
        found.append(link)
        entered = _beyond(link, here)
        if entered == start:
            return Stretch(tuple(segments), tuple(found), True, ())
        segments.append(entered.segment)
        here = entered.opposite
    return Stretch(tuple(segments), tuple(found), False, (start, here))


def _beyond(link: Link, end: EdgeEnd) -> EdgeEnd:
    return link.ends[1] if link.ends[0] == end else link.ends[0]
