"""Lay the entries of a garment out on the cloth: find their cut edges, pair them, glue them.

Where one long edge lies along a run of several (a band on a waist, a sleeve in an armhole), the
run is known only once the seams within it are. So the cloth is laid out to see how long such runs
are, and again with the long edges split into as many parts, until every one has its place.
"""

from collections import Counter
from collections.abc import Container, Iterable, Iterator, Mapping, Sequence
from typing import NamedTuple

from seqplan.base.diagnostic import Diagnostic, Severity
from seqplan.base.ids import EntryId, PieceId
from seqplan.model.entry import Ends, Entry, Sides, Verb
from seqplan.model.garment import Garment
from seqplan.model.piece import Segment
from seqplan.recipes.marks import TWO_SIDED, Parts
from seqplan.recipes.named_edges import JoinSides, NamedEdges, flat
from seqplan.recipes.problems import Problems
from seqplan.recipes.recipe import Reach
from seqplan.recipes.shape import JOINS, SETTING_ON, Shape
from seqplan.surface.along import broken_at, parts_wanted, readings_along
from seqplan.surface.glued import Glue, Surface
from seqplan.surface.pairing import (
    Pair,
    Pairing,
    UnpairableError,
    lay_on,
    pair_with_itself,
    readings,
    settle,
)
from seqplan.surface.ring import Rings
from seqplan.surface.stretch import Link, Stretch, find_stretches

_SHOULDER = "shoulder"


class Cloth(NamedTuple):
    """The pieces, split where entries mean only parts of their edges, and each entry's shape."""

    rings: Rings
    shapes: dict[EntryId, Shape]
    problems: tuple[Diagnostic, ...]


def lay_out(garment: Garment) -> Cloth:
    """Find what every entry means on the cloth.

    Returns
    -------
    Cloth
        ``problems`` holds what cannot be: an edge sewn twice, copies that cannot be paired.
        What has a problem sews no seam, so that the rest can still be looked at.
    """
    parts: dict[tuple[PieceId, str], int] = {}
    while True:
        cloth, wanted = _Layout(garment, parts).cloth()
        if wanted.keys() <= parts.keys():
            return cloth
        parts |= wanted


class _Layout:
    def __init__(self, garment: Garment, parts: Parts) -> None:
        self._garment = garment
        self._problems = Problems()
        self._edges = NamedEdges(garment, parts, self._problems)
        self._open: dict[EntryId, list[tuple[Pairing, ...]]] = {}
        self.rings = self._edges.rings

    # -- the whole -------------------------------------------------------------------------

    def cloth(self) -> tuple[Cloth, dict[tuple[PieceId, str], int]]:
        """Lay out every entry, and say into how many parts further long edges have to be split."""
        shapes = self._without_double_seams(self._shapes())
        shapes, wanted = self._with_long_edges(shapes)
        shapes = self._with_open_pairings_settled(shapes)
        shapes = self._with_ends_settled(_with_held(shapes))
        return Cloth(self.rings, shapes, self._problems.found), wanted

    def _shapes(self) -> dict[EntryId, Shape]:
        """Every entry by itself; what is held is laid where it hangs already."""
        shapes = {entry.id: self._shape(entry) for entry in self._garment.entries}
        sewn = [glue for shape in shapes.values() for glue in shape.glues]
        for id_, shape in shapes.items():
            if shape.entry.verb is Verb.HOLD:
                riders, _ = self._riders(shape.entry, sewn)
                shapes[id_] = shape._replace(riders=riders)
        return shapes

    def _with_long_edges(
        self, shapes: dict[EntryId, Shape]
    ) -> tuple[dict[EntryId, Shape], dict[tuple[PieceId, str], int]]:
        """Pair the parts of long edges with the runs that they lie along.

        A run may lead over other long edges, as a neckline does over the ends of front bands; so
        it is tried again as long as any of them found its place.
        """
        waiting = {
            id_: sides
            for id_, sides in (
                (id_, self._edges.sides(shape.entry)) for id_, shape in shapes.items()
            )
            if sides.is_along
        }
        wanted: dict[tuple[PieceId, str], int] = {}
        is_moving = bool(waiting)
        known: set[EntryId] = set()
        while is_moving:
            shapes = self._with_open_pairings_settled(shapes, known)
            known |= self._open.keys()
            whole = _sewn(self.rings, shapes.values())
            found = {
                id_: self._stretches(self._sewn_around(shapes, id_, whole), id_, sides)
                for id_, sides in waiting.items()
            }
            counts = {id_: parts_wanted(long, runs) for id_, (long, runs) in found.items()}
            fitting = [id_ for id_, count in counts.items() if count == 1]
            for id_ in fitting:
                long, runs = found[id_]
                if shapes[id_].entry.verb in JOINS:
                    self._open[id_] = [readings_along(long, runs, may_turn=self._may_turn(long))]
                    glues = _glues(shapes[id_].entry, self._open[id_][0][0])
                    shapes[id_] = shapes[id_]._replace(glues=glues)
                del waiting[id_]
            shapes = self._without_double_seams(shapes)
            wanted = {
                self._edges.name_of(segment): count
                for id_, count in counts.items()
                if id_ in waiting and count
                for segment in waiting[id_].long_and_runs()[0]
            }
            is_moving = bool(fitting and waiting)
        for id_ in waiting:
            names = {"long": len(found[id_][0]), "runs": len(found[id_][1])}
            entry = shapes[id_].entry
            self._problems.report("long-edge-differs", entry, severity=Severity.WARNING, **names)
        return shapes, wanted

    def _sewn_around(
        self, shapes: Mapping[EntryId, Shape], id_: EntryId, whole: Surface
    ) -> Surface:
        """The garment with its seams; what is only basted comes before the seam on its edges."""
        if shapes[id_].entry.verb in JOINS:
            return whole
        ours = set(shapes[id_].run)
        return _sewn(self.rings, (s for s in shapes.values() if not ours & set(s.run)))

    def _stretches(
        self, surface: Surface, id_: EntryId, sides: JoinSides
    ) -> tuple[tuple[Stretch, ...], tuple[Stretch, ...]]:
        long, runs = sides.long_and_runs()
        alone = find_stretches(Surface(self.rings), long, _anything)
        closed = find_stretches(surface, long, _anything, id_)
        closing = frozenset(e for s in closed if s.is_ring for e in s.junctions)
        names = [self._edges.name_of(segment) for segment in runs]

        def rank(link: Link) -> int:
            """Where the long edge is closed by a seam, else where the list begins and ends."""
            if closing & set(link.junctions):
                return 0
            ends = {self._edges.name_of(end.segment) for end in link.ends}
            if ends == {names[0], names[-1]} and not self._is_at_shoulder(link):
                return 1
            return 2 if link.junctions else 3

        found = find_stretches(surface, runs, _anything, id_)
        # Strips that are joined beforehand lie along the run as one.
        lying = alone if len(alone) == len(found) else closed
        return lying, tuple(broken_at(stretch, rank) for stretch in found)

    def _is_at_shoulder(self, link: Link) -> bool:
        """Whether a shoulder meets a run there: a sleeve has its seam at the other end."""
        beside = (self.rings.across(end).neighbour.segment for end in link.ends)
        return any(_SHOULDER in self.rings.name(segment).casefold() for segment in beside)

    def _may_turn(self, long: Iterable[Stretch]) -> bool:
        pieces = {segment.piece for stretch in long for segment in stretch.segments}
        return all(self._garment.piece[id_].is_strip for id_ in pieces)

    def _with_ends_settled(self, shapes: dict[EntryId, Shape]) -> dict[EntryId, Shape]:
        """Join the free ends of a band that goes all round, where the author does not say."""
        bands = [
            shape
            for shape in shapes.values()
            if shape.entry.verb is Verb.BAND
            and shape.entry.ends is None
            and shape.reached(Reach.ENDS)
        ]
        if not bands:
            return shapes
        surface = _sewn(self.rings, shapes.values())
        for shape in bands:
            body = [s for s in shape.run if s not in shape.to]
            run = find_stretches(surface, body, _anything, shape.entry.id)
            if run and all(stretch.is_ring for stretch in run):
                joined = shape.entry._replace(ends=Ends.JOINED)
                shapes[shape.entry.id] = shape._replace(entry=joined)
        return shapes

    # -- one entry -------------------------------------------------------------------------

    def _shape(self, entry: Entry) -> Shape:
        """Lay one entry out."""
        sides = self._edges.sides(entry)
        one, two = flat(sides.one), flat(sides.two)
        run = tuple(dict.fromkeys((*one, *two)))
        shape = Shape(
            entry, run, frozenset(two) - frozenset(one), reaches=self._edges.reaches(entry)
        )
        is_join = entry.verb in TWO_SIDED or bool(sides.two)
        if is_join and not sides.is_along:
            glues = self._pair(entry, sides)
            shape = shape._replace(glues=glues if entry.verb in JOINS else ())
        riders, along = self._riders(entry)
        if entry.verb in {Verb.TOWER_PLACKET, Verb.CONTINUOUS_PLACKET}:
            along = (*along, *shape.reached(Reach.ENDS))
        if entry.verb is Verb.INSERT:
            along = (*along, *shape.reached(Reach.BAG))
        return shape._replace(riders=riders, along=along)

    # -- riders ----------------------------------------------------------------------------

    def _riders(
        self, entry: Entry, sewn: Sequence[Glue] = ()
    ) -> tuple[tuple[Glue, ...], tuple[Segment, ...]]:
        glues: list[Glue] = []
        along: list[Segment] = []
        for carried, carrier in self._edges.carried(entry):
            along += carried
            if carrier and len(carried) == len(carrier):
                glues += _glues(entry, lay_on(self.rings, carried, carrier, sewn))
        return tuple(glues), tuple(dict.fromkeys(along))

    # -- pairing ---------------------------------------------------------------------------

    def _pair(self, entry: Entry, sides: JoinSides) -> tuple[Glue, ...]:
        items: list[tuple[Pairing, ...]] = []
        for place, edges in enumerate(sides.one):
            try:
                other = sides.two[place] if sides.two else ()
                items.append(self._pair_edge(entry, edges, other))
            except UnpairableError as error:
                ref = entry.run[min(place, len(entry.run) - 1)]
                self._problems.report(error.key, entry, edge=ref)
        if any(len(pairings) > 1 for pairings in items):
            self._open[entry.id] = items
        return _glues(entry, (pair for pairings in items for pair in pairings[0]))

    def _pair_edge(
        self, entry: Entry, edges: tuple[Segment, ...], facing_edges: tuple[Segment, ...]
    ) -> tuple[Pairing, ...]:
        if not facing_edges:
            return (pair_with_itself(self.rings, edges),)
        if set(edges) == set(facing_edges):
            first = tuple(segment for segment in edges if segment.copy == 0)
            return readings(self.rings, first, tuple(s for s in edges if s.copy == 1))
        found = readings(self.rings, edges, facing_edges)
        pieces = {segment.piece for segment in facing_edges}
        if entry.verb in SETTING_ON and all(self._garment.piece[p].is_strip for p in pieces):
            # One strip is as good as another: only its two ways round are weighed.
            return (found[0], tuple(_turned(pair) for pair in found[0]))
        return found

    def _without_double_seams(self, shapes: Mapping[EntryId, Shape]) -> dict[EntryId, Shape]:
        """Take the seams from entries that sew an edge which an earlier one has sewn."""
        taken: dict[Segment, EntryId] = {}
        kept = dict(shapes)
        for id_, shape in shapes.items():
            edges = [segment for glue in shape.glues for segment in (glue.first, glue.second)]
            counts = Counter(edges)
            twice = [segment for segment in counts if segment in taken or counts[segment] > 1]
            if not twice:
                taken.update(dict.fromkeys(edges, id_))
                continue
            kept[id_] = shape._replace(glues=())
            self._open.pop(id_, None)
            edge = f"{twice[0].piece}.{self.rings.name(twice[0])}"
            other = taken.get(twice[0], id_)
            self._problems.report("sewn-twice", shape.entry, edge=edge, other=other)
        return kept

    def _with_open_pairings_settled(
        self, shapes: dict[EntryId, Shape], known: Container[EntryId] = ()
    ) -> dict[EntryId, Shape]:
        """Choose, where names leave open which copies meet, by the garment as a whole.

        What is ``known`` keeps what was chosen for it before.
        """
        open_pairings = {
            id_: items
            for id_, items in self._open.items()
            if shapes[id_].glues and id_ not in known
        }
        if not open_pairings:
            return shapes
        fixed = _sewn(self.rings, (s for id_, s in shapes.items() if id_ not in open_pairings))
        runs = [
            (id_, side)
            for id_, shape in shapes.items()
            if len(shape.entry.run) > 1
            for side in (tuple(s for s in shape.run if s not in shape.to), tuple(shape.to))
        ]
        settled = dict(shapes)
        for id_, pairs in settle(self.rings, fixed, open_pairings, runs).items():
            settled[id_] = shapes[id_]._replace(glues=_glues(shapes[id_].entry, pairs))
        return settled


def _anything(_one: Segment, _other: Segment) -> bool:
    return True


def _sewn(rings: Rings, shapes: Iterable[Shape]) -> Surface:
    """The garment with the seams of these entries; an edge that two of them sew keeps the first."""
    held = list(shapes)
    taken: set[Segment] = set()
    glues = []
    for glue in (glue for shape in held for glue in shape.glues):
        if not taken & {glue.first, glue.second}:
            taken |= {glue.first, glue.second}
            glues.append(glue)
    return Surface(rings, glues, (rider for shape in held for rider in shape.riders))


def _with_held(shapes: dict[EntryId, Shape]) -> dict[EntryId, Shape]:
    """What is held to an edge lies in every seam and fold that this edge goes into."""
    held: dict[Segment, list[Segment]] = {}
    for shape in shapes.values():
        if shape.entry.verb is Verb.HOLD:
            for glue in shape.riders:
                held.setdefault(glue.second, []).append(glue.first)
    if not held:
        return shapes
    return {
        id_: shape._replace(along=tuple(dict.fromkeys((*shape.along, *_held_in(shape, held)))))
        for id_, shape in shapes.items()
    }


def _held_in(shape: Shape, held: Mapping[Segment, list[Segment]]) -> Iterator[Segment]:
    for segment in shape.run:
        yield from (other for other in held.get(segment, ()) if other not in shape.run)


def _turned(pair: Pair) -> Pair:
    """The same two edges, one of them end for end."""
    return pair._replace(aligned=not pair.aligned)


def _glues(entry: Entry, pairs: Iterable[Pair]) -> tuple[Glue, ...]:
    """Seams of an entry; where right side meets wrong side, the cloth goes on turned over."""
    flip = entry.sides is Sides.RIGHT_TO_WRONG
    return tuple(Glue(p.first, p.second, p.aligned != flip, entry.id) for p in pairs)
