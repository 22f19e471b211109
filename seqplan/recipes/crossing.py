"""Where entries meet in the finished garment, and which seams a run needs closed.

Two entries cross at a point of the finished garment in one of two ways:

- one **runs across** the other: its stretch goes on over the point where the other seam ends;
- both **end there**, at the same corner of some piece.

A run that ends at a mark where the other begins is a continuation, not a crossing.
"""

from collections.abc import Iterator, Mapping
from functools import cached_property
from typing import NamedTuple

from seqplan.base.ids import EntryId
from seqplan.model.entry import SeamMethod, Verb
from seqplan.recipes.shape import COVERING, Shape
from seqplan.surface.glued import Surface
from seqplan.surface.stretch import Stretch


class Crossing(NamedTuple):
    """Two entries that meet.

    ``runs_across``: ``over`` goes on across the end of ``under``. Otherwise both end there, and
    the two names stand in alphabetical order.
    """

    over: EntryId
    under: EntryId
    runs_across: bool


class Demand(NamedTuple):
    """The seams that a run needs before it is continuous.

    Parameters
    ----------
    always
        Entries whose seams must be sewn first. One that stands for two seams of a ring, as side
        seams do, is among them: only one of the two could be left open.
    all_but_one
        For each ring that a join closes: the seams it crosses, link by link. Any one link may
        still be open, and no more.
    one_open
        For each ring that is hemmed flat: the links of which at least one is still open.
    """

    always: frozenset[EntryId]
    all_but_one: tuple[tuple[frozenset[EntryId], ...], ...] = ()
    one_open: tuple[tuple[frozenset[EntryId], ...], ...] = ()


class Meetings:
    """All crossings and demands of a garment, each found once.

    Parameters
    ----------
    shapes
        The entries on the cloth.
    finished
        The garment with every seam sewn.
    stretches
        The stretches of every entry that has a run.
    """

    def __init__(
        self,
        shapes: Mapping[EntryId, Shape],
        finished: Surface,
        stretches: Mapping[EntryId, tuple[Stretch, ...]],
    ) -> None:
        self._shapes = shapes
        self._finished = finished
        self._stretches = stretches

    @cached_property
    def crossings(self) -> tuple[Crossing, ...]:
        """Every crossing of two entries of which one at least sews or folds, sorted."""
        return tuple(sorted({*self._passes(), *self._meeting_ends()}))

    @cached_property
    def demands(self) -> Mapping[EntryId, Demand]:
        """What each entry with a run needs closed first."""
        return {id_: self._demand(id_) for id_ in self._runners}

    @cached_property
    def _runners(self) -> tuple[EntryId, ...]:
        """The entries whose runs must be continuous: seams, zips and folds."""
        return tuple(
            id_
            for id_, shape in self._shapes.items()
            if shape.run and (shape.glues or shape.entry.verb in COVERING | {Verb.INSERT})
        )

    def _passes(self) -> Iterator[Crossing]:
        for id_ in self._runners:
            for stretch in self._stretches[id_]:
                for under in stretch.junctions:
                    yield Crossing(id_, under, True)

    def _meeting_ends(self) -> Iterator[Crossing]:
        tips = {
            tip: id_
            for id_ in self._runners
            if self._shapes[id_].entry.verb is not Verb.INSERT
            for stretch in self._stretches[id_]
            for tip in stretch.tips
        }
        going_on: set[Crossing] = set()
        crossing: set[Crossing] = set()
        for tip, id_ in tips.items():
            corner = self._finished.rings.across(tip)
            other = tips.get(corner.neighbour, id_)
            if other != id_:
                pair = Crossing(min(id_, other), max(id_, other), False)
                (going_on if corner.is_straight else crossing).add(pair)
        yield from crossing - going_on

    def _stays_open(self, id_: EntryId, link: frozenset[EntryId]) -> bool:
        """Whether a seam is the one that is still open when a ring is joined.

        The author names it; of what is set in flat, it is the seam that closes both sides at once,
        as the side seam closes sleeve and armhole.
        """
        entry = self._shapes[id_].entry
        if entry.how is not SeamMethod.FLAT:
            return entry.open in link
        rings = [frozenset(s.junctions) for s in self._stretches[id_] if s.is_ring]
        return bool(rings) and bool(link & frozenset.intersection(*rings))

    def _demand(self, id_: EntryId) -> Demand:
        entry = self._shapes[id_].entry
        wants_rings = entry.in_the_round or (entry.verb in COVERING and not entry.is_flat)
        always: set[EntryId] = set()
        all_but_one = []
        one_open: list[tuple[frozenset[EntryId], ...]] = []
        for stretch in self._stretches[id_]:
            links = _seam_links(stretch)
            if stretch.is_ring and not wants_rings:
                open_links = [link for link in links if self._stays_open(id_, link)]
                if open_links:
                    always.update(*(link for link in links if link != open_links[0]))
                    if entry.how is SeamMethod.FLAT:
                        one_open.append((open_links[0],))
                elif entry.is_flat and entry.verb in COVERING:
                    # A round piece is a ring by itself: it has no seam that could be open.
                    one_open += [links] if links else []
                elif len(links) > 1:
                    readings = _readings(links)
                    always.update(frozenset.intersection(*readings))
                    if len(readings) > 1:
                        all_but_one.append(links)
            elif not (entry.is_flat and entry.verb in COVERING):
                always.update(*links)
        return Demand(frozenset(always), tuple(all_but_one), tuple(one_open))


def _seam_links(stretch: Stretch) -> tuple[frozenset[EntryId], ...]:
    """The links of a stretch that are seams; edges of one piece meet without any."""
    return tuple(frozenset(link.junctions) for link in stretch.links if link.junctions)


def _readings(links: tuple[frozenset[EntryId], ...]) -> list[frozenset[EntryId]]:
    """What a ring needs closed, for each link that may be left open; the least of these only."""
    needed = {frozenset().union(*links[:place], *links[place + 1 :]) for place in range(len(links))}
    return [one for one in needed if not any(other < one for other in needed)]
