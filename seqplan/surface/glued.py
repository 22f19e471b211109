"""Pieces glued at seams: parts, free edge loops, genus, and the fan of cloth round a point.

1. A glue joins one cut edge to another. It is ``aligned`` when the listed starts meet, and
   reversed when the start of one meets the end of the other.
2. Round a point of the garment, cloth lies like a fan: from an edge end across the corner to its
   neighbour, over the seam to the mate of that neighbour, across the next corner, and so on until
   an edge is free or the fan closes. Loops, points and chains are all read from fans.
3. What is caught in a seam, or held along an edge, is a **rider**. Riders are connected and a run
   goes on over them, but they are no part of the surface: loops, points and genus leave them out.
4. Points (classes of corners), edges (a glued pair counts once) and cut copies give the Euler
   characteristic of each connected part, and with the number of free loops its genus.

All walks are linear in the number of edges.
"""

from collections.abc import Callable, Container, Iterable, Iterator
from functools import cached_property
from typing import NamedTuple

from seqplan.base.ids import EntryId, PieceId
from seqplan.model.piece import Segment
from seqplan.surface.ring import EdgeEnd, Rings


class Glue(NamedTuple):
    """A seam between two cut edges, made by ``entry``.

    ``aligned``: the listed start of one meets the listed start of the other.
    """

    first: Segment
    second: Segment
    aligned: bool
    entry: EntryId

    @property
    def keeps_sides(self) -> bool:
        """Whether right side goes on as right side across the seam.

        A mirrored half runs against the ring, so two edges of unlike halves are aligned, and two
        of like halves reversed, where the cloth goes on with the same side up.
        """
        return self.aligned == (self.first.is_mirrored != self.second.is_mirrored)

    @property
    def ends(self) -> tuple[tuple[EdgeEnd, EdgeEnd], tuple[EdgeEnd, EdgeEnd]]:
        """The two pairs of edge ends that meet in it."""
        first, second, aligned, _ = self
        return (
            (EdgeEnd(first, False), EdgeEnd(second, not aligned)),
            (EdgeEnd(first, True), EdgeEnd(second, aligned)),
        )


Disc = tuple[PieceId, int]
"""A cut copy of a piece; both halves of a fold are one."""


class Part(NamedTuple):
    """A connected part of what is sewn so far.

    Parameters
    ----------
    discs
        The cut copies in it, as (piece, copy).
    loops
        Its free edges, loop by loop, each in walking order.
    genus
        0 for anything that can be laid out like a bag with holes. For a one-sided part (a band
        closed with a twist) it is the number of crosscaps.
    is_two_sided
        Whether right side and wrong side can be told apart all over.
    """

    discs: frozenset[Disc]
    loops: tuple[tuple[Segment, ...], ...]
    genus: int
    is_two_sided: bool


_Mates = dict[EdgeEnd, tuple[EdgeEnd, Glue]]
"""For each edge end that is sewn: the one on the other side of the seam, and the seam."""


_Riding = dict[EdgeEnd, list[tuple[EdgeEnd, Glue]]]
"""For each edge end that bears riders, or rides: the ends that it lies on, or that lie on it."""


class Surface:
    """Pieces with some seams sewn. Never changed: sewing on makes a new surface.

    Parameters
    ----------
    rings
        The pieces.
    glues
        The seams; an edge bears at most one.
    riders
        What is caught or held: each a glue from the rider to an edge that carries it.

    Raises
    ------
    ValueError
        When an edge is glued twice, or to itself.
    """

    def __init__(
        self, rings: Rings, glues: Iterable[Glue] = (), riders: Iterable[Glue] = ()
    ) -> None:
        self.rings = rings
        self.glues = tuple(sorted(glues))
        self.riders = tuple(sorted(riders))
        self._mate: _Mates = {}
        self._riding: _Riding = {}
        for glue in self.glues:
            _sew(self._mate, glue)
        for glue in self.riders:
            _lay_on(self._riding, glue)
        self._point: dict[EdgeEnd, EdgeEnd] = {}
        self._cloth: dict[Disc, Disc] = {}

    def with_seams(self, glues: Iterable[Glue], riders: Iterable[Glue] = ()) -> "Surface":
        """The same with further seams and riders, without sewing the ones that it has again.

        Raises
        ------
        ValueError
            When an edge is glued twice, or to itself.
        """
        more = tuple(glues)
        mate = dict(self._mate)
        for glue in more:
            _sew(mate, glue)
        return self._with(mate, sorted((*self.glues, *more)), tuple(riders))

    def without_seams(self, glues: Iterable[Glue]) -> "Surface":
        """The same without some of its seams."""
        fewer = set(glues)
        mate = dict(self._mate)
        for glue in fewer:
            for one, other in glue.ends:
                del mate[one], mate[other]
        return self._with(mate, (glue for glue in self.glues if glue not in fewer))

    def _with(
        self, mate: "_Mates", glues: Iterable[Glue], riders: tuple[Glue, ...] = ()
    ) -> "Surface":
        """The same pieces with other seams, which need no second look, and further riders."""
        new = Surface(self.rings)
        new.glues, new.riders = tuple(glues), tuple(sorted((*self.riders, *riders)))
        riding = {end: list(held) for end, held in self._riding.items()} if riders else self._riding
        for glue in riders:
            _lay_on(riding, glue)
        new._mate, new._riding = mate, riding
        return new

    def mate(self, end: EdgeEnd) -> EdgeEnd | None:
        """The edge end on the other side of the seam, or ``None`` where the edge is free."""
        found = self._mate.get(end)
        return found[0] if found else None

    def glue_at(self, segment: Segment) -> Glue | None:
        """The seam on this edge, if any."""
        found = self._mate.get(EdgeEnd(segment, False))
        return found[1] if found else None

    def next_of(
        self, end: EdgeEnd, members: frozenset[Segment], unsewn: EntryId | None = None
    ) -> tuple[EdgeEnd, tuple[EntryId, ...]]:
        """Find the edge of a run that follows at ``end``, over seams and all that rides on them.

        Parameters
        ----------
        end
            The end of an edge of the run.
        members
            The edges of the run.
        unsewn
            An entry whose seams, and whatever is caught in them, count as not sewn.

        Returns
        -------
        EdgeEnd, tuple of EntryId
            The edge end reached and the entries crossed; ``end`` itself where there is none.
        """
        if not self.riders:
            reached, seams = self.fan(end, members.__contains__, unsewn)
            return reached, tuple(seams)
        waiting: list[tuple[EdgeEnd, tuple[EntryId, ...]]] = [(end, ())]
        waiting += [(here, (glue.entry,)) for here, glue in self._held_with(end, unsewn)]
        seen = {here for here, _ in waiting}
        for here, crossed in waiting:
            other = self.rings.across(here).neighbour
            if other == end:
                # Round a pocket or under a facing, back to where the walk began.
                continue
            if other.segment in members:
                return other, crossed
            # An edge that is held along an edge of the run stands for it.
            for held_to, glue in self._held_with(other, unsewn):
                if held_to.segment in members and held_to not in seen:
                    return held_to, (*crossed, glue.entry)
            for over, entries in self._beyond(other, unsewn):
                if over not in seen:
                    seen.add(over)
                    waiting.append((over, (*crossed, *entries)))
        return end, ()

    def _held_with(self, end: EdgeEnd, unsewn: EntryId | None) -> list[tuple[EdgeEnd, Glue]]:
        return [(o, glue) for o, glue in self._riding.get(end, ()) if glue.entry != unsewn]

    def _beyond(
        self, end: EdgeEnd, unsewn: EntryId | None
    ) -> Iterator[tuple[EdgeEnd, tuple[EntryId, ...]]]:
        """All edge ends that lie at a seam together with this one, the nearest first."""
        waiting: list[tuple[EdgeEnd, tuple[EntryId, ...]]] = [(end, ())]
        seen = {end}
        for here, crossed in waiting:
            mate = self._mate.get(here)
            links = [mate, *self._riding.get(here, ())] if mate else self._riding.get(here, ())
            for other, glue in links:
                if other not in seen and glue.entry != unsewn:
                    seen.add(other)
                    is_new = glue.entry not in crossed
                    entries = (*crossed, glue.entry) if is_new else crossed
                    waiting.append((other, entries))
                    yield other, entries

    def fan(
        self,
        end: EdgeEnd,
        stop: Callable[[Segment], bool],
        unsewn: EntryId | None = None,
    ) -> tuple[EdgeEnd, list[EntryId]]:
        """Turn round the point at ``end``, away from its edge.

        Parameters
        ----------
        end
            Where to start.
        stop
            Tells the edges at which to stop, besides free ones.
        unsewn
            An entry whose seams count as not sewn.

        Returns
        -------
        EdgeEnd, list of EntryId
            The edge end reached, and the entries whose seams were crossed on the way. Where the
            fan closes without meeting a stop, the edge end reached is ``end``.
        """
        crossed: list[EntryId] = []
        here = end
        while True:
            other = self.rings.across(here).neighbour
            if stop(other.segment):
                return other, crossed
            found = self._mate.get(other)
            if found is None or found[1].entry == unsewn:
                return other, crossed
            here, glue = found
            crossed.append(glue.entry)
            if here == end:
                return end, crossed

    def point(self, end: EdgeEnd) -> EdgeEnd:
        """The point of the sewn garment that an edge end lies at: one of the ends that meet there.

        It is the same one for all of them.
        """
        known = self._point.get(end)
        if known is not None:
            return known
        meeting = {end: None}
        waiting = [end]
        for here in waiting:
            for other in (self.rings.across(here).neighbour, self.mate(here)):
                if other is not None and other not in meeting:
                    meeting[other] = None
                    waiting.append(other)
        self._point.update(dict.fromkeys(meeting, end))
        return end

    def cloth_of(self, segment: Segment) -> Disc:
        """What an edge hangs together with: one of its cut copies, the same one for all of them."""
        disc = self.rings.disc(segment)
        if disc not in self._cloth:
            self._cloth.update(dict.fromkeys(self._connected(disc), disc))
        return self._cloth[disc]

    @cached_property
    def parts(self) -> tuple[Part, ...]:
        """The connected parts, in the order of the pieces."""
        return self.parts_with(self.rings.pieces)

    def parts_with(self, pieces: Container[PieceId]) -> tuple[Part, ...]:
        """The connected parts that some pieces lie in, in the order of the pieces."""
        seen: set[Disc] = set()
        found = []
        for disc in self.rings.discs:
            if disc[0] in pieces and disc not in seen:
                discs = self._connected(disc)
                seen |= discs
                found.append(self._measure(discs))
        return tuple(found)

    def _links(self, disc: Disc) -> Iterator[tuple[Disc, bool]]:
        """What a cut copy is joined to, and whether the seam keeps right side up."""
        for segment in self.rings.on(disc):
            found = self._mate.get(EdgeEnd(segment, False))
            if found is not None:
                mate, glue = found
                yield self.rings.disc(mate.segment), glue.keeps_sides

    def _connected(self, start: Disc) -> frozenset[Disc]:
        seen = {start}
        waiting = [start]
        while waiting:
            for disc, _ in self._links(waiting.pop()):
                if disc not in seen:
                    seen.add(disc)
                    waiting.append(disc)
        return frozenset(seen)

    def _measure(self, discs: frozenset[Disc]) -> Part:
        segments = [s for disc in sorted(discs) for s in self.rings.on(disc)]
        points = {self.point(EdgeEnd(s, at_end)) for s in segments for at_end in (False, True)}
        free = [s for s in segments if self.glue_at(s) is None]
        seams = (len(segments) - len(free)) // 2
        loops = self._loops(free)
        euler = len(points) - (len(segments) - seams) + len(discs)
        is_two_sided = self._is_two_sided(discs)
        handles = 2 - len(loops) - euler
        return Part(discs, loops, handles // 2 if is_two_sided else handles, is_two_sided)

    def _loops(self, free: list[Segment]) -> tuple[tuple[Segment, ...], ...]:
        remaining = dict.fromkeys(free)
        loops = []
        while remaining:
            first = next(iter(remaining))
            loop = []
            end = EdgeEnd(first, True)
            while end.segment in remaining:
                del remaining[end.segment]
                loop.append(end.segment)
                reached, _ = self.fan(end, lambda _: False)
                end = reached.opposite
            loops.append(tuple(loop))
        return tuple(loops)

    def _is_two_sided(self, discs: frozenset[Disc]) -> bool:
        start = min(discs)
        side = {start: True}
        waiting = [start]
        while waiting:
            disc = waiting.pop()
            for other, keeps in self._links(disc):
                wanted = side[disc] if keeps else not side[disc]
                if other not in side:
                    side[other] = wanted
                    waiting.append(other)
                elif side[other] != wanted:
                    return False
        return True


def _sew(mate: _Mates, glue: Glue) -> None:
    if glue.first == glue.second:
        msg = f"{glue.first} cannot be glued to itself"
        raise ValueError(msg)
    for one, other in glue.ends:
        for here, there in ((one, other), (other, one)):
            if here in mate:
                msg = f"{here.segment} bears a seam already"
                raise ValueError(msg)
            mate[here] = (there, glue)


def _lay_on(riding: _Riding, glue: Glue) -> None:
    for one, other in glue.ends:
        riding.setdefault(one, []).append((other, glue))
        riding.setdefault(other, []).append((one, glue))
