"""The cut edges that an entry names: either side of a join, bands, pockets, what is caught."""

from collections.abc import Callable, Iterable, Iterator, Sequence
from typing import NamedTuple

from seqplan.base.ids import PieceId
from seqplan.model.entry import Caught, Entry, Portion, SeamKind, Verb
from seqplan.model.garment import Garment
from seqplan.model.piece import EdgeRef, Piece, Segment
from seqplan.recipes.bands import edges_to_set_on, free_ends, named_elsewhere
from seqplan.recipes.marks import Parts, clear_portions, split_pieces
from seqplan.recipes.problems import Problems
from seqplan.recipes.recipe import Reach
from seqplan.recipes.shape import SETTING_ON
from seqplan.surface.ring import Rings

_WITH_LOOSE_PIECES = frozenset({Verb.IN_SEAM_POCKET, Verb.WELT_POCKET, Verb.STRAP, Verb.INSERT})
"""Verbs that take up pieces of which nobody names the edges."""


class JoinSides(NamedTuple):
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
        return flat(long), flat(runs)


class NamedEdges:
    """The cut edges of a garment, as its entries name them.

    Parameters
    ----------
    garment
        The garment.
    parts
        Into how many parts its long edges are split.
    problems
        Where faults go.
    """

    def __init__(self, garment: Garment, parts: Parts, problems: Problems) -> None:
        self._garment = garment
        self._problems = problems
        self._portions = clear_portions(garment, problems)
        self._split = split_pieces(garment, self._portions, parts)
        self.rings = Rings(split.piece for split in self._split.values())

    def sides(self, entry: Entry) -> JoinSides:
        """The two sides of what an entry joins; what joins nothing has one side."""
        portion = self._portions.get(entry.id)
        if entry.verb is Verb.PATCH_POCKET:
            return JoinSides([self._around_pocket(entry)], [])
        one = [self._segments(ref, portion) for ref in entry.run]
        if entry.verb is Verb.TOWER_PLACKET:
            attached = self._attached(entry)
            return JoinSides(_side_by_side(one, len(attached)), attached)
        if entry.verb in SETTING_ON:
            return JoinSides(one, self._attached(entry), is_strip=True)
        return JoinSides(one, [self._segments(ref, portion) for ref in entry.to])

    def _attached(self, entry: Entry) -> list[tuple[Segment, ...]]:
        """The edges of bands, bindings and plackets that are sewn to the run.

        Of a band in two layers only the outer is sewn to the run; the inner closes over it.
        """
        partners = entry.outer if entry.verb is Verb.BAND else entry.partners[:1]
        if entry.verb is Verb.TOWER_PLACKET:
            partners = entry.partners
        found = [self._set_on_by(entry, self._garment.piece[id_]) for id_ in partners]
        return [edges for edges in found if edges]

    def _set_on_by(self, entry: Entry, piece: Piece) -> tuple[Segment, ...]:
        """The edge by which a piece is set on: `attach`, the first of a strip, or the free one."""
        names = edges_to_set_on(self._garment, piece)
        if len(names) > 1:
            self._problems.report("which-edge-is-set-on", entry, piece=piece.id)
        return self._segments(EdgeRef(piece.id, names[0]), None) if len(names) == 1 else ()

    def _around_pocket(self, entry: Entry) -> tuple[Segment, ...]:
        pockets = (self._garment.piece[id_] for id_ in entry.pieces)
        return tuple(
            segment
            for piece in pockets
            for segment in self._split[piece.id].piece.segments()
            if self.rings.name(segment) not in entry.mouth
        )

    def reaches(self, entry: Entry) -> dict[Reach, tuple[Segment, ...]]:
        """Edges that single parts of a recipe act on."""
        if entry.verb is Verb.PATCH_POCKET:
            mouth = self._edges_of(entry.pieces, lambda name: name in entry.mouth)
            return {Reach.MOUTH: mouth, Reach.AROUND: self._around_pocket(entry)}
        if entry.verb in _WITH_LOOSE_PIECES or entry.seam is SeamKind.BOUND:
            named = named_elsewhere(self._garment, entry)
            bag = (s for s in self._all_of((*entry.pieces, *entry.partners)))
            return {Reach.BAG: tuple(s for s in bag if self.name_of(s) not in named)}
        if entry.verb in SETTING_ON:
            ends = free_ends(self._garment, entry)
            return {Reach.ENDS: self._flat_refs(EdgeRef(*end) for end in ends)}
        return {}

    def name_of(self, segment: Segment) -> tuple[PieceId, str]:
        """The piece and the name of a cut edge."""
        return segment.piece, self.rings.name(segment)

    def _flat_refs(self, refs: Iterable[EdgeRef]) -> tuple[Segment, ...]:
        return tuple(segment for ref in refs for segment in self._segments(ref, None))

    def _edges_of(
        self, pieces: Iterable[PieceId], wanted: Callable[[str], bool]
    ) -> tuple[Segment, ...]:
        return tuple(s for s in self._all_of(pieces) if wanted(self.rings.name(s)))

    def _all_of(self, pieces: Iterable[PieceId]) -> tuple[Segment, ...]:
        return tuple(s for id_ in pieces for s in self._split[id_].piece.segments())

    def carried(self, entry: Entry) -> Iterator[tuple[tuple[Segment, ...], tuple[Segment, ...]]]:
        """Each rider of an entry with the edge that carries it."""
        for place, caught in enumerate(entry.between):
            if caught.edge is not None:
                carrier = self._segments(_carrier(entry, caught, place), None)
                for ref in (caught.edge, *self._backs(caught.edge)):
                    yield self._segments(ref, None), carrier
        if entry.verb is Verb.HOLD:
            for id_ in entry.partners:
                piece = self._garment.piece[id_]
                alike = [ref for ref in entry.run if ref.piece == piece.like]
                for ref in alike or entry.run:
                    if ref.edge in piece.edge_names:
                        held = EdgeRef(id_, ref.edge, ref.hand)
                        yield self._segments(held, None), self._segments(ref, None)
        if entry.under:
            yield from self._inner_layers(entry)

    def _inner_layers(
        self, entry: Entry
    ) -> Iterator[tuple[tuple[Segment, ...], tuple[Segment, ...]]]:
        """Each layer under a band with the band before it."""
        outer: tuple[Segment, ...] = ()
        for id_ in entry.partners:
            edges = self._set_on_by(entry, self._garment.piece[id_])
            if id_ in entry.under:
                yield edges, outer
            else:
                outer = edges

    def _backs(self, ref: EdgeRef) -> Iterator[EdgeRef]:
        """The same edge of the layers that an edge has been sewn to: a collar has two."""
        for entry in self._garment.entries:
            if entry.seam not in {SeamKind.ENCLOSED, SeamKind.FACED}:
                continue
            one, two = ({other.piece for other in side} for side in (entry.run, entry.to))
            for id_ in two if ref.piece in one else one if ref.piece in two else ():
                if id_ != ref.piece and ref.edge in self._garment.piece[id_].edge_names:
                    yield EdgeRef(id_, ref.edge, ref.hand)

    def _segments(self, ref: EdgeRef, portion: Portion | None) -> tuple[Segment, ...]:
        split = self._split[ref.piece]
        wanted = split.indices(ref.edge, portion)
        found = split.piece.segments(ref.edge, ref.hand)
        return tuple(segment for segment in found if segment.place in wanted)


def flat(groups: Iterable[tuple[Segment, ...]]) -> tuple[Segment, ...]:
    """Cut edges, edge by edge as they are named, in one row."""
    return tuple(segment for group in groups for segment in group)


def _side_by_side(edges: Sequence[tuple[Segment, ...]], count: int) -> list[tuple[Segment, ...]]:
    """The two edges of a slit apart, each for the strip that is set on it."""
    segments = sorted(flat(edges), key=lambda s: (s.place, s.copy, s.half))
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
