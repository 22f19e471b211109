"""Lay the entries of a garment out on the cloth: find their cut edges, pair them, glue them.

Where one long edge lies along a run of several (a band on a waist, a sleeve in an armhole), the
run is known only once the seams within it are. So the cloth is laid out to see how long such runs
are, and again with the long edges split into as many parts, until every one has its place.
"""

from collections import Counter
from collections.abc import Callable, Container, Iterable, Iterator, Mapping, Sequence
from typing import NamedTuple

from seqplan.base.diagnostic import Diagnostic, Severity
from seqplan.base.ids import EntryId, PieceId, RuleSlug
from seqplan.model.entry import Caught, Entry, Portion, SeamKind, Sides, Verb
from seqplan.model.garment import Garment
from seqplan.model.piece import EdgeRef, Piece, Segment
from seqplan.recipes.bands import edges_to_set_on, free_ends, named_elsewhere
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
from seqplan.surface.portion import SplitPiece, is_clear
from seqplan.surface.ring import Rings
from seqplan.surface.stretch import Link, Stretch, find_stretches
from seqplan.words.say import say

_TWO_SIDED = frozenset({Verb.SEW, Verb.BASTE})

Parts = Mapping[tuple[PieceId, str], int]
"""Into how many parts the long edges are split."""


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


class _Sides(NamedTuple):
    """The cut edges of either side of a join, edge by edge as the entry names them."""

    one: list[tuple[Segment, ...]]
    two: list[tuple[Segment, ...]]
    is_strip: bool = False

    @property
    def is_along(self) -> bool:
        """Whether one long edge lies along a run: a strip, or one edge sewn to several."""
        return bool(self.two) and (self.is_strip or len(self.one) != len(self.two))

    def long_and_runs(self) -> tuple[tuple[Segment, ...], tuple[Segment, ...]]:
        """The cut edges of the long side, and those of the other."""
        first_is_long = len(self.one) == 1 and not self.is_strip
        long, runs = (self.one, self.two) if first_is_long else (self.two, self.one)
        return _flat(long), _flat(runs)


class _Layout:
    def __init__(self, garment: Garment, parts: Parts) -> None:
        self.problems: list[Diagnostic] = []
        self._garment = garment
        self._open: dict[EntryId, list[tuple[Pairing, ...]]] = {}
        self._portions = self._clear_portions(garment)
        wanted = self._wanted_portions()
        self._split = {
            piece.id: SplitPiece(piece, _of_piece(wanted, piece), _parts_of(piece, parts))
            for piece in garment.pieces
        }
        self.rings = Rings(split.piece for split in self._split.values())

    # -- the whole -------------------------------------------------------------------------

    def cloth(self) -> tuple[Cloth, dict[tuple[PieceId, str], int]]:
        """Lay out every entry, and say into how many parts further long edges have to be split."""
        shapes = self._without_double_seams(self._shapes())
        shapes, wanted = self._with_long_edges(shapes)
        shapes = self._with_open_pairings_settled(shapes)
        return Cloth(self.rings, _with_held(shapes), tuple(self.problems)), wanted

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
            for id_, sides in ((id_, self._sides(shape.entry)) for id_, shape in shapes.items())
            if sides.is_along
        }
        wanted: dict[tuple[PieceId, str], int] = {}
        is_moving = bool(waiting)
        known: set[EntryId] = set()
        while is_moving:
            shapes = self._with_open_pairings_settled(shapes, known)
            known |= self._open.keys()
            found = {
                id_: self._stretches(self._sewn_around(shapes, id_), id_, sides)
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
                self._named(segment): count
                for id_, count in counts.items()
                if id_ in waiting and count
                for segment in waiting[id_].long_and_runs()[0]
            }
            is_moving = bool(fitting and waiting)
        for id_ in waiting:
            names = {"long": len(found[id_][0]), "runs": len(found[id_][1])}
            entry = shapes[id_].entry
            self._report("long-edge-differs", entry, severity=Severity.WARNING, **names)
        return shapes, wanted

    def _sewn_around(self, shapes: Mapping[EntryId, Shape], id_: EntryId) -> Surface:
        """The garment with its seams; what is only basted comes before the seam on its edges."""
        held = list(shapes.values())
        if shapes[id_].entry.verb not in JOINS:
            ours = set(shapes[id_].run)
            held = [shape for shape in held if not ours & set(shape.run)]
        return _sewn(self.rings, held)

    def _stretches(
        self, surface: Surface, id_: EntryId, sides: _Sides
    ) -> tuple[tuple[Stretch, ...], tuple[Stretch, ...]]:
        long, runs = sides.long_and_runs()
        alone = find_stretches(Surface(self.rings), long, _anything)
        closed = find_stretches(surface, long, _anything, id_)
        closing = frozenset(e for s in closed if s.is_ring for e in s.junctions)
        names = [self._named(segment) for segment in runs]

        def rank(link: Link) -> int:
            """Where the long edge is closed by a seam, else where the list begins and ends."""
            if closing & set(link.junctions):
                return 0
            ends = {self._named(end.segment) for end in link.ends}
            return 1 if ends == {names[0], names[-1]} else 2 if link.junctions else 3

        found = find_stretches(surface, runs, _anything, id_)
        return alone, tuple(broken_at(stretch, rank) for stretch in found)

    def _may_turn(self, long: Iterable[Stretch]) -> bool:
        pieces = {segment.piece for stretch in long for segment in stretch.segments}
        return all(self._garment.piece[id_].is_strip for id_ in pieces)

    # -- one entry -------------------------------------------------------------------------

    def _shape(self, entry: Entry) -> Shape:
        """Lay one entry out."""
        sides = self._sides(entry)
        one, two = _flat(sides.one), _flat(sides.two)
        run = tuple(dict.fromkeys((*one, *two)))
        shape = Shape(entry, run, frozenset(two) - frozenset(one), reaches=self._reaches(entry))
        is_join = entry.verb in _TWO_SIDED or bool(sides.two)
        if is_join and not sides.is_along:
            glues = self._pair(entry, sides)
            shape = shape._replace(glues=glues if entry.verb in JOINS else ())
        riders, along = self._riders(entry)
        if entry.verb in {Verb.TOWER_PLACKET, Verb.CONTINUOUS_PLACKET}:
            along = (*along, *shape.reached(Reach.ENDS))
        if entry.verb is Verb.INSERT:
            along = (*along, *shape.reached(Reach.BAG))
        return shape._replace(riders=riders, along=along)

    def _sides(self, entry: Entry) -> _Sides:
        portion = self._portions.get(entry.id)
        if entry.verb is Verb.PATCH_POCKET:
            return _Sides([self._around_pocket(entry)], [])
        one = [self._segments(ref, portion) for ref in entry.run]
        if entry.verb is Verb.TOWER_PLACKET:
            attached = self._attached(entry)
            return _Sides(_side_by_side(one, len(attached)), attached)
        if entry.verb in SETTING_ON:
            return _Sides(one, self._attached(entry), is_strip=True)
        return _Sides(one, [self._segments(ref, portion) for ref in entry.to])

    def _attached(self, entry: Entry) -> list[tuple[Segment, ...]]:
        """The edges of bands, bindings and plackets that are sewn to the run.

        Of a band in two layers only the outer is sewn to the run; the inner closes over it.
        """
        partners = entry.partners
        if entry.verb is not Verb.TOWER_PLACKET:
            partners = partners[:1]
        found = [self._set_on_by(entry, self._garment.piece[id_]) for id_ in partners]
        return [edges for edges in found if edges]

    def _set_on_by(self, entry: Entry, piece: Piece) -> tuple[Segment, ...]:
        """The edge by which a piece is set on: `attach`, the first of a strip, or the free one."""
        names = edges_to_set_on(self._garment, piece)
        if len(names) > 1:
            self._report("which-edge-is-set-on", entry, piece=piece.id)
        return self._segments(EdgeRef(piece.id, names[0]), None) if len(names) == 1 else ()

    def _around_pocket(self, entry: Entry) -> tuple[Segment, ...]:
        pockets = (self._garment.piece[id_] for id_ in entry.pieces)
        return tuple(
            segment
            for piece in pockets
            for segment in self._split[piece.id].piece.segments()
            if self.rings.name(segment) not in entry.mouth
        )

    def _reaches(self, entry: Entry) -> dict[Reach, tuple[Segment, ...]]:
        """Edges that single parts of a recipe act on."""
        if entry.verb is Verb.PATCH_POCKET:
            mouth = self._edges_of(entry.pieces, lambda name: name in entry.mouth)
            return {Reach.MOUTH: mouth, Reach.AROUND: self._around_pocket(entry)}
        if entry.verb in {Verb.IN_SEAM_POCKET, Verb.WELT_POCKET, Verb.STRAP, Verb.INSERT}:
            named = named_elsewhere(self._garment, entry)
            bag = (s for s in self._all_of((*entry.pieces, *entry.partners)))
            return {Reach.BAG: tuple(s for s in bag if self._named(s) not in named)}
        if entry.verb in SETTING_ON:
            ends = free_ends(self._garment, entry)
            return {Reach.ENDS: self._flat_refs(EdgeRef(*end) for end in ends)}
        return {}

    def _named(self, segment: Segment) -> tuple[PieceId, str]:
        return segment.piece, self.rings.name(segment)

    def _flat_refs(self, refs: Iterable[EdgeRef]) -> tuple[Segment, ...]:
        return tuple(segment for ref in refs for segment in self._segments(ref, None))

    def _edges_of(
        self, pieces: Iterable[PieceId], wanted: Callable[[str], bool]
    ) -> tuple[Segment, ...]:
        return tuple(s for s in self._all_of(pieces) if wanted(self.rings.name(s)))

    def _all_of(self, pieces: Iterable[PieceId]) -> tuple[Segment, ...]:
        return tuple(s for id_ in pieces for s in self._split[id_].piece.segments())

    # -- riders ----------------------------------------------------------------------------

    def _riders(
        self, entry: Entry, sewn: Sequence[Glue] = ()
    ) -> tuple[tuple[Glue, ...], tuple[Segment, ...]]:
        glues: list[Glue] = []
        along: list[Segment] = []
        for carried, carrier in self._carried(entry):
            along += carried
            if carrier and len(carried) == len(carrier):
                glues += _glues(entry, lay_on(self.rings, carried, carrier, sewn))
        return tuple(glues), tuple(dict.fromkeys(along))

    def _carried(self, entry: Entry) -> Iterator[tuple[tuple[Segment, ...], tuple[Segment, ...]]]:
        """Each rider of an entry with the edge that carries it."""
        for place, caught in enumerate(entry.between):
            if caught.edge is not None:
                carrier = self._segments(_carrier(entry, caught, place), None)
                for ref in (caught.edge, *self._backs(caught.edge)):
                    yield self._segments(ref, None), carrier
        if entry.verb is Verb.HOLD:
            for id_ in entry.partners:
                names = self._garment.piece[id_].edge_names
                for ref in entry.run:
                    if ref.edge in names:
                        held = EdgeRef(id_, ref.edge, ref.hand)
                        yield self._segments(held, None), self._segments(ref, None)
        if entry.verb is Verb.BAND:
            outer = _flat(self._attached(entry))
            for id_ in entry.partners[1:]:
                yield self._set_on_by(entry, self._garment.piece[id_]), outer

    def _backs(self, ref: EdgeRef) -> Iterator[EdgeRef]:
        """The same edge of the layers that an edge has been sewn to: a collar has two."""
        for entry in self._garment.entries:
            if entry.seam not in {SeamKind.ENCLOSED, SeamKind.FACED}:
                continue
            one, two = ({other.piece for other in side} for side in (entry.run, entry.to))
            for id_ in two if ref.piece in one else one if ref.piece in two else ():
                if id_ != ref.piece and ref.edge in self._garment.piece[id_].edge_names:
                    yield EdgeRef(id_, ref.edge, ref.hand)

    # -- pairing ---------------------------------------------------------------------------

    def _pair(self, entry: Entry, sides: _Sides) -> tuple[Glue, ...]:
        items: list[tuple[Pairing, ...]] = []
        for place, edges in enumerate(sides.one):
            try:
                other = sides.two[place] if sides.two else ()
                items.append(self._pair_edge(entry, edges, other))
            except UnpairableError as error:
                ref = entry.run[min(place, len(entry.run) - 1)]
                self._report(error.key, entry, edge=ref)
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
            self._report("sewn-twice", shape.entry, edge=edge, other=other)
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

    def _wanted_portions(self) -> dict[tuple[PieceId, str], dict[Portion, None]]:
        """The portions of every edge; a mark on one side of a seam is on the other side too."""
        wanted: dict[tuple[PieceId, str], dict[Portion, None]] = {}
        for id_, portion in self._portions.items():
            entry = self._garment.entry[id_]
            for ref in (*entry.run, *entry.to):
                wanted.setdefault((ref.piece, ref.edge), {})[portion] = None
        mates = [
            ((one.piece, one.edge), (two.piece, two.edge))
            for entry in self._garment.entries
            if entry.verb in _TWO_SIDED and len(entry.run) == len(entry.to)
            for pair in zip(entry.run, entry.to, strict=True)
            for one, two in (pair, pair[::-1])
        ]
        waiting = list(wanted)
        for edge in waiting:
            for mate in (two for one, two in mates if one == edge):
                new = [p for p in wanted[edge] if p not in wanted.get(mate, {})]
                new = [p for p in new if is_clear(self._garment.piece[mate[0]], mate[1], p)]
                if new:
                    wanted.setdefault(mate, {}).update(dict.fromkeys(new))
                    waiting.append(mate)
        return wanted

    # -- edges -----------------------------------------------------------------------------

    def _segments(self, ref: EdgeRef, portion: Portion | None) -> tuple[Segment, ...]:
        split = self._split[ref.piece]
        wanted = split.indices(ref.edge, portion)
        found = split.piece.segments(ref.edge, ref.hand)
        return tuple(segment for segment in found if segment.place in wanted)

    def _clear_portions(self, garment: Garment) -> dict[EntryId, Portion]:
        clear = {}
        for entry in garment.entries:
            portion = entry.portion
            if portion is None:
                continue
            refs = [
                ref
                for ref in (*entry.run, *entry.to)
                if not is_clear(garment.piece[ref.piece], ref.edge, portion)
            ]
            if refs:
                self._report("part-unclear", entry, edge=refs[0], neighbour=portion.neighbour)
            else:
                clear[entry.id] = portion
        return clear

    def _report(
        self,
        slug: str,
        entry: Entry,
        *,
        severity: Severity = Severity.ERROR,
        **names: object,
    ) -> None:
        found = Diagnostic(
            slug=RuleSlug(slug),
            severity=severity,
            message=say(f"shape-{slug}", entry=entry.id, **names),
            path=entry.path,
            fix=say(f"shape-{slug}-fix", entry=entry.id, **names),
        )
        if found not in self.problems:
            self.problems.append(found)


def _of_piece(
    wanted: Mapping[tuple[PieceId, str], Iterable[Portion]], piece: Piece
) -> dict[str, Iterable[Portion]]:
    return {edge: portions for (id_, edge), portions in wanted.items() if id_ == piece.id}


def _parts_of(piece: Piece, parts: Parts) -> dict[str, int]:
    return {name: count for (id_, name), count in parts.items() if id_ == piece.id}


def _anything(_one: Segment, _other: Segment) -> bool:
    return True


def _flat(groups: Iterable[tuple[Segment, ...]]) -> tuple[Segment, ...]:
    return tuple(segment for group in groups for segment in group)


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


def _side_by_side(edges: Sequence[tuple[Segment, ...]], count: int) -> list[tuple[Segment, ...]]:
    """The two edges of a slit apart, each for the strip that is set on it."""
    segments = sorted(_flat(edges), key=lambda s: (s.place, s.copy, s.half))
    indices = sorted({segment.place for segment in segments})
    if count < 2 or len(indices) != count:
        return list(edges)
    return [tuple(s for s in segments if s.place == index) for index in indices]


def _carrier(entry: Entry, caught: Caught, place: int) -> EdgeRef:
    """The edge of the seam at which something is caught."""
    if caught.at is not None:
        return caught.at
    is_one_each = len(entry.between) == len(entry.run)
    return entry.run[place if is_one_each else 0]


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
