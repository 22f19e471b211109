"""An operation with all around it that a sentence may need."""

from collections.abc import Iterable
from dataclasses import dataclass
from functools import cached_property

from seqplan.base.ids import OpId, PieceId
from seqplan.base.measure import Length
from seqplan.model.entry import Entry, SeamKind, Verb
from seqplan.model.garment import Garment, Notion
from seqplan.model.operation import Action, Operation
from seqplan.model.piece import Cut, EdgeRef, Layer, Segment
from seqplan.recipes.construction import Construction
from seqplan.surface.ring import EdgeEnd
from seqplan.surface.stretch import Stretch
from seqplan.tell.lapping import beside, zip_over
from seqplan.tell.names import (
    listing,
    name_edges,
    name_pieces,
    name_places,
    name_seam,
    notion_words,
    quoted,
    readable,
)
from seqplan.tell.pressing import bags_at
from seqplan.tell.tubes import Tubes, tubes_at
from seqplan.tell.usual import told
from seqplan.words.say import say


@dataclass(frozen=True)
class Scene:
    """One operation in its garment, with what is done before it.

    Parameters
    ----------
    c
        The garment.
    op
        The operation.
    before
        The operations that are done by then.
    """

    c: Construction
    op: Operation
    before: frozenset[OpId]

    @property
    def garment(self) -> Garment:
        """The garment as written."""
        return self.c.garment

    @cached_property
    def entry(self) -> Entry:
        """The entry that the operation comes from."""
        return self.c.entry(self.op)

    @cached_property
    def refs(self) -> tuple[EdgeRef, ...]:
        """The edges that are named: those of the entry whose casing or gap it is, for such."""
        other = self.entry.into or self.entry.closes
        return self.garment.entry[other].run if other else self.entry.run

    @cached_property
    def edges(self) -> str:
        """The edges as a sentence calls them."""
        return name_edges(self.garment, self.refs)

    @cached_property
    def all_edges(self) -> str:
        """Both sides of a join."""
        both_sides = dict.fromkeys((*self.entry.run, *self.entry.to))
        return name_edges(self.garment, tuple(both_sides))

    @cached_property
    def pieces(self) -> str:
        """The pieces as a sentence calls them."""
        if len(self.piece_ids) > 1 and set(self.piece_ids) == set(self.garment.piece):
            return say("step-whole")
        return name_pieces(self.garment, self.piece_ids)

    @cached_property
    def named_pieces(self) -> str:
        """The pieces while they still lie apart."""
        if len(self.piece_ids) > 2 and set(self.piece_ids) == set(self.garment.piece):
            return say("step-all-pieces")
        return name_pieces(self.garment, self.piece_ids)

    @cached_property
    def piece_ids(self) -> tuple[PieceId, ...]:
        """The pieces that are named, in the order in which the entry names them."""
        named = (*self.entry.pieces, *(ref.piece for ref in (*self.refs, *self.entry.to)))
        return tuple(dict.fromkeys(named))

    @cached_property
    def seam(self) -> str:
        """The seam as a sentence calls it."""
        return name_seam(self.garment, self.entry)

    @cached_property
    def notion(self) -> Notion | None:
        """The notion that is used."""
        return self.garment.notion.get(self.entry.notion) if self.entry.notion else None

    @property
    def notion_name(self) -> str:
        """The notion as a sentence calls it: its kind."""
        return notion_words(self.notion.kind) if self.notion else ""

    @property
    def notion_kind(self) -> str:
        """The kind of the notion as the file calls it."""
        return self.notion.kind if self.notion else ""

    @cached_property
    def allowance(self) -> Length | None:
        """The seam allowance: the entry's own, else the garment's."""
        return self.entry.allowance or self.garment.allowance

    @cached_property
    def is_alone(self) -> bool:
        """Whether copies of the same edges are joined to one another."""
        one = {(ref.piece, ref.edge) for ref in self.entry.run}
        return not self.entry.to or one == {(ref.piece, ref.edge) for ref in self.entry.to}

    @cached_property
    def joins_itself(self) -> bool:
        """Whether every cut copy is sewn to itself, as a sleeve is along the underarm."""
        glues = self.c.shapes[self.entry.id].glues
        disc = self.c.rings.disc
        return bool(glues) and all(disc(glue.first) == disc(glue.second) for glue in glues)

    @property
    def has_halves(self) -> bool:
        """Whether some piece is cut on the fold, so that its two halves may be joined."""
        return any(self.garment.piece[id_].cut is Cut.FOLD for id_ in self.piece_ids)

    @cached_property
    def hanging_on(self) -> tuple[PieceId, ...]:
        """The lining that hangs on the outside whose seam this is, or the outside on a lining.

        What is held to it, or caught in the seam, is handled with it.
        """
        layers = {self.garment.piece[id_].layer for id_ in self.piece_ids}
        others = {Layer.SHELL: Layer.LINING, Layer.LINING: Layer.SHELL}
        other = others.get(min(layers, key=lambda layer: layer.value)) if len(layers) == 1 else None
        if other is None or self.entry.verb is not Verb.SEW or self.entry.between:
            return ()
        entries = self.garment.entries
        held = {piece for e in entries if e.verb is Verb.HOLD for piece in e.partners}
        found: dict[PieceId, None] = {}
        for shape in self.c.joins:
            if (
                shape.entry.verb is not Verb.SEW
                or self.c.main(shape.entry.id).id not in self.before
            ):
                continue
            for glue in shape.glues:
                pair = glue.first.piece, glue.second.piece
                for one, hung in (pair, pair[::-1]):
                    is_other = self.garment.piece[hung].layer is other and hung not in held
                    if one in self.piece_ids and is_other:
                        found[hung] = None
        return tuple(found)

    @cached_property
    def sewn_to(self) -> tuple[EdgeRef, ...]:
        """The edges to which those of the operation are sewn later on."""
        own = set(self.op.segments)
        found: dict[EdgeRef, None] = {}
        for shape in self.c.joins:
            if self.c.main(shape.entry.id).id in self.before:
                continue
            for glue in shape.glues:
                for one, other in ((glue.first, glue.second), (glue.second, glue.first)):
                    if one in own and other not in own:
                        found[EdgeRef(other.piece, self.c.rings.name(other))] = None
        return tuple(found)

    def usual(self, mm: int) -> str:
        """A measure of common practice in both systems."""
        return told(self.garment, mm)

    def inner(self) -> tuple[PieceId, ...]:
        """The pieces of a join that go to the inside, if some but not all do."""
        ids = [id_ for id_ in self.piece_ids if self.garment.piece[id_].layer is not Layer.SHELL]
        return tuple(ids) if len(ids) < len(self.piece_ids) else ()

    def outer(self) -> tuple[PieceId, ...]:
        """The pieces of a join that stay outside."""
        inner = set(self.inner())
        return tuple(id_ for id_ in self.piece_ids if id_ not in inner)

    # -- on the cloth ----------------------------------------------------------------------

    @cached_property
    def stretches(self) -> tuple[Stretch, ...]:
        """The stretches of the run, or of the casing that something goes through."""
        return self.c.stretches.get(self.entry.into or self.entry.id, ())

    @cached_property
    def is_ring(self) -> bool:
        """Whether the run goes all the way round something by now.

        A ring of which a seam across it is still open is sewn as a line from end to end.
        """
        if self.entry.is_flat:
            return False
        return any(s.is_ring and self._is_closed(s) for s in self.stretches)

    def _is_closed(self, stretch: Stretch) -> bool:
        """Whether every seam across a ring is sewn; a layer that is only held closes nothing."""
        own = {self.entry.id, self.entry.into}
        across = [entry for entry in stretch.junctions if entry not in own]
        if any(self.garment.entry[entry].verb is Verb.HOLD for entry in across):
            return False
        return all(self.c.main(entry).id in self.before for entry in across)

    @cached_property
    def groups(self) -> tuple[frozenset[Segment], ...]:
        """The cut edges, those that are sewn in one go together."""
        held = [set(stretch.segments) for stretch in self.stretches]
        held += [{g.first, g.second} for g in self.c.shapes[self.entry.id].glues]
        found: list[set[Segment]] = []
        for group in held:
            touching = [other for other in found if other & group]
            found = [other for other in found if not other & group]
            found.append(group.union(*touching))
        return tuple(frozenset(group) for group in found)

    @property
    def count(self) -> int:
        """How many times it is done."""
        return len(self.groups)

    @cached_property
    def is_once_for_each_side(self) -> bool:
        """Whether it is done twice, and the second is the mirror image of the first."""
        if self.count != 2:
            return False
        one, other = self.groups
        flipped = {(s.piece, "a" if s.is_mirrored else "b", s.place) for s in other}
        return {(s.piece, s.half, s.place) for s in one} == flipped

    @cached_property
    def crossed(self) -> tuple[Entry, ...]:
        """The seams that the run goes across and that are sewn by now."""
        found = dict.fromkeys(e for stretch in self.stretches for e in stretch.junctions)
        return tuple(self.garment.entry[e] for e in found if self.c.main(e).id in self.before)

    @cached_property
    def left_open(self) -> tuple[Entry, ...]:
        """The seams across a run that goes all round in the end, and that are not sewn by now."""
        rings = (s for s in self.stretches if s.is_ring and not self._is_closed(s))
        across = dict.fromkeys(e for ring in rings for e in ring.junctions if e != self.entry.id)
        entries = (self.garment.entry[e] for e in across if self.c.main(e).id not in self.before)
        return tuple(entry for entry in entries if entry.verb is Verb.SEW)

    @cached_property
    def tubes(self) -> Tubes | None:
        """The two tubes that a seam joins, one of which is slipped into the other."""
        return tubes_at(self.c, self.entry.id, self.before, is_ring=self.is_ring)

    @cached_property
    def meets_bags(self) -> bool:
        """Whether the bags of pockets in the seam were sewn to its edges."""
        return bool(bags_at(self.c, self.op.segments))

    @cached_property
    def turns_corner(self) -> bool:
        """Whether one seam goes on round a corner of a piece."""
        run = set(self.op.segments)
        return any(
            end.neighbour.segment in run and not end.is_straight
            for segment in run
            for end in (self.c.rings.across(EdgeEnd(segment, True)),)
        )

    def beside(self, segments: Iterable[Segment], *, at_mark: bool) -> tuple[Segment, ...]:
        """Edges next to these on their pieces, at a mark or at a corner, each name once."""
        return beside(self.c, segments, at_mark=at_mark)

    def zip_at(self, segment: Segment) -> Operation | None:
        """The operation that sets a zip into this edge."""
        ops = self.c.on_segment.get(segment, ())
        return next((op for op in ops if op.action is Action.SET_ZIP), None)

    @cached_property
    def crosses_zip(self) -> bool:
        """Whether the run goes over the top of a zip that is set already."""
        zips = (self.zip_at(segment) for segment in self.beside(self.op.segments, at_mark=False))
        return any(op is not None and op.id in self.before for op in zips)

    @cached_property
    def laps_over(self) -> bool:
        """Whether what is closed here lies with one end over the other, as over a fly."""
        return zip_over(self.c, self.entry) is not None

    def is_faced(self, segment: Segment) -> bool:
        """Whether a facing is sewn to this edge."""
        seam = self.c.seam_at(segment)
        return seam is not None and self.garment.entry[seam].seam is SeamKind.FACED

    def edge_title(self, segment: Segment) -> str:
        """The name of a cut edge as people read it."""
        return quoted(readable(self.c.rings.name(segment)))

    # -- what is set on, and where ---------------------------------------------------------

    @cached_property
    def partners(self) -> str:
        """What is set on, as a sentence calls it: the pieces, or the tape."""
        if self.entry.partners:
            return name_pieces(self.garment, self.entry.partners)
        return say("step-the", name=self.notion_name)

    @cached_property
    def entry_pieces(self) -> str:
        """The pieces that the entry is about: pockets, straps, bags."""
        return name_pieces(self.garment, self.entry.pieces)

    @cached_property
    def attached(self) -> str:
        """The edges by which bands, bindings and plackets are sewn on; may be empty."""
        to = self.c.shapes[self.entry.id].to
        refs = dict.fromkeys(EdgeRef(s.piece, self.c.rings.name(s)) for s in sorted(to))
        return name_edges(self.garment, tuple(refs))

    @cached_property
    def op_edges(self) -> str:
        """The cut edges that the operation itself acts on."""
        named = (EdgeRef(s.piece, self.c.rings.name(s)) for s in self.op.segments)
        return name_edges(self.garment, tuple(dict.fromkeys(named)))

    @cached_property
    def places(self) -> str:
        """The places on faces of pieces, those of the operation's pieces where it has fewer."""
        return name_places(self.garment, [p for p in self.entry.places if p.piece in self._own])

    @cached_property
    def edges_and_places(self) -> str:
        """Edges and places on faces, where an entry may name both."""
        places = name_places(self.garment, self.entry.places)
        return listing(name for name in (self.edges, places) if name)

    @cached_property
    def is_seam_to_come(self) -> bool:
        """Whether a seam is still to be sewn along the edges that are named."""
        segments = self.c.shapes[self.entry.id].run
        seams = (self.c.seam_at(segment) for segment in segments)
        return any(seam and self.c.main(seam).id not in self.before for seam in seams)

    @property
    def _own(self) -> frozenset[PieceId]:
        return self.op.pieces or frozenset(place.piece for place in self.entry.places)

    def copies(self, pieces: Iterable[PieceId]) -> int:
        """How many copies of these pieces there are."""
        return sum(self.garment.piece[id_].copies for id_ in dict.fromkeys(pieces))

    @property
    def is_join(self) -> bool:
        """Whether the entry sews a seam."""
        return self.entry.verb is Verb.SEW
