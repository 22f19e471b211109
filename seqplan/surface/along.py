"""One long edge along a run of several: a band on a waist, a sleeve in an armhole.

The long edge is split into as many parts as the run has edges, and each part meets its edge of the
run. Which end of the long edge lies where follows from right sides lying together; a strip that is
folded lengthwise has its right side out on both faces, so it may lie either way round.
"""

from collections.abc import Callable, Iterable, Iterator, Sequence
from itertools import permutations
from typing import NamedTuple

from seqplan.model.piece import Segment
from seqplan.surface.pairing import MOST_COPIES, MOST_READINGS, Pair, Pairing
from seqplan.surface.stretch import Link, Stretch


class Walked(NamedTuple):
    """A cut edge in a walk; ``is_forward`` when it is walked in its listed direction."""

    segment: Segment
    is_forward: bool


Walk = tuple[Walked, ...]

Rank = Callable[[Link], int]
"""How unlikely it is that a long edge begins and ends at a link; the least is chosen."""


def walk_of(stretch: Stretch) -> Walk:
    """The edges of a stretch in walking order, each with its direction."""
    walk = [Walked(stretch.segments[0], not stretch.tips[0].at_end if stretch.tips else True)]
    for segment, link in zip(stretch.segments[1:], stretch.links, strict=False):
        walk.append(Walked(segment, not _entered(link, segment, walk[-1].segment)))
    return tuple(walk)


def broken_at(stretch: Stretch, rank: Rank) -> Stretch:
    """Begin a ring at the link where the two ends of the long edge meet; others are kept."""
    if not stretch.is_ring:
        return stretch
    place = min(range(len(stretch.links)), key=lambda i: (rank(stretch.links[i]), -i))
    turned = place + 1
    links = (*stretch.links[turned:], *stretch.links[:turned])
    segments = (*stretch.segments[turned:], *stretch.segments[:turned])
    last = stretch.links[place]
    start = next(end for end in last.ends if end.segment == segments[0])
    is_alone = len(segments) == 1
    end = last.ends[1] if is_alone and start == last.ends[0] else None
    end = end or next(end for end in last.ends if end != start)
    return Stretch(segments, links[:-1], False, (start, end))


def _entered(link: Link, segment: Segment, last: Segment) -> bool:
    """At which of its ends an edge is entered; an edge that meets itself is entered anywhere."""
    ends = [end for end in link.ends if end.segment == segment]
    return ends[-1 if last == segment else 0].at_end


def parts_wanted(long: Sequence[Stretch], runs: Sequence[Stretch]) -> int | None:
    """Into how many parts each cut edge of the long side has to be split.

    Parameters
    ----------
    long
        The long edges, before they are split.
    runs
        The stretches that they are sewn to.

    Returns
    -------
    int or None
        The number of parts; ``None`` where the two sides do not go together.
    """
    if not long or len(long) != len(runs):
        return None
    edges = {len(stretch.segments) for stretch in long}
    wanted = {len(stretch.segments) for stretch in runs}
    if len(edges) != 1 or len(wanted) != 1:
        return None
    count, most = edges.pop(), wanted.pop()
    return most // count if most % count == 0 else None


def readings_along(
    long: Sequence[Stretch], runs: Sequence[Stretch], *, may_turn: bool
) -> tuple[Pairing, ...]:
    """Give the ways in which long edges can lie along runs of as many edges.

    Strips that are joined to a ring beforehand may be turned round on the run; those ways are kept
    in which the most of their seams meet seams of the run, the first strip at the first edge
    before others.

    Parameters
    ----------
    long, runs
        Either side, as many stretches of as many edges.
    may_turn
        Whether the long edges may lie the other way round too.
    """
    begun = [walk_of(stretch) for stretch in long]
    others = [walk_of(stretch) for stretch in runs]
    places = range(len(begun[0])) if any(stretch.is_ring for stretch in long) else (0,)
    found: dict[Pairing, None] = {}
    for place in places:
        walks = [
            (*walk[place:], *walk[:place]) if stretch.is_ring else walk
            for stretch, walk in zip(long, begun, strict=True)
        ]
        # One strip is as good as another: only its two ways round are weighed.
        ways = [_alike(walks, others)] if may_turn else permutations(others)
        for turned in (False, True) if may_turn else (False,):
            for chosen in ways:
                pairs = (
                    pair
                    for walk, other in zip(walks, chosen, strict=True)
                    for pair in _lay_along(walk, other, turned=turned)
                )
                found.setdefault(tuple(pairs))
                if len(found) >= MOST_READINGS * len(places):
                    break
    if len(places) == 1:
        return tuple(found)[:MOST_READINGS]
    met = {pairing: _seams_met(pairing, long, runs) for pairing in found}
    best = (pairing for pairing in found if met[pairing] == max(met.values()))
    first = begun[0][0].segment
    return tuple(
        sorted(best, key=lambda pairing: _is_elsewhere(pairing, first, others[0][0].segment))
    )[:MOST_READINGS]


def _seams_met(pairing: Pairing, long: Iterable[Stretch], runs: Iterable[Stretch]) -> int:
    """How many seams of the long side lie at a seam, or at either end, of the run."""
    mate = {pair.first: pair.second for pair in pairing}
    inside = [link for stretch in runs for link in stretch.links if not link.junctions]
    smooth = {frozenset(end.segment for end in link.ends) for link in inside}
    seams = [link for stretch in long for link in stretch.links if link.junctions]
    return sum(frozenset(mate[end.segment] for end in link.ends) not in smooth for link in seams)


def _is_elsewhere(pairing: Pairing, first: Segment, wanted: Segment) -> bool:
    return all(p.second.piece != wanted.piece for p in pairing if p.first == first)


def _alike(walks: Sequence[Walk], others: Sequence[Walk]) -> Sequence[Walk]:
    """The runs in the order in which each meets the copy that is mirrored as it is."""
    if len(others) > MOST_COPIES:
        return others
    return max(
        permutations(others),
        key=lambda chosen: sum(
            walk[0].segment.half == other[0].segment.half
            for walk, other in zip(walks, chosen, strict=True)
        ),
    )


def _lay_along(long: Walk, run: Walk, *, turned: bool) -> Iterator[Pair]:
    """Lay one long edge along one run, right sides together unless it is turned end for end."""
    first = long[0]
    for ordered in (run, tuple(Walked(w.segment, not w.is_forward) for w in reversed(run))):
        is_right = (first.is_forward == ordered[0].is_forward) == (
            first.segment.is_mirrored != ordered[0].segment.is_mirrored
        )
        if is_right != turned:
            for one, other in zip(long, ordered, strict=True):
                yield Pair(one.segment, other.segment, one.is_forward == other.is_forward)
            return
    # Both ways round look alike only where a single edge closes into a ring.
    for one, other in zip(long, run, strict=True):
        yield Pair(one.segment, other.segment, one.is_forward == other.is_forward)
