"""What each entry means on the cloth: which cut edges it acts on and which seams it sews."""

from collections.abc import Iterable, Mapping
from typing import NamedTuple

from seqplan.base.diagnostic import Diagnostic, Severity
from seqplan.base.ids import EntryId, PieceId, RuleSlug
from seqplan.model.entry import Entry, Portion, Verb
from seqplan.model.garment import Garment
from seqplan.model.piece import EdgeRef, Segment
from seqplan.surface.glued import Glue
from seqplan.surface.pairing import (
    Pair,
    Pairing,
    UnpairableError,
    pair_with_itself,
    readings,
    settle,
)
from seqplan.surface.portion import SplitPiece, is_clear
from seqplan.surface.ring import Rings
from seqplan.words.say import say

JOINS = frozenset({Verb.SEW})
"""Verbs whose seams hold for good, so that they glue the surface."""

FOLDING = frozenset({Verb.HEM, Verb.CASING})
"""Verbs that fold an edge over, all round where it is a ring."""

_TWO_SIDED = frozenset({Verb.SEW, Verb.BASTE})


class Shape(NamedTuple):
    """An entry on the cloth.

    Parameters
    ----------
    entry
        The entry.
    run
        Its cut edges, all copies, in the order in which it names them; both sides of a join.
    to
        Those of them that the other side of a join is made of; none where the entry names no
        other side.
    glues
        The seams it sews.
    """

    entry: Entry
    run: tuple[Segment, ...]
    to: frozenset[Segment]
    glues: tuple[Glue, ...]


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
    layout = _Layout(garment)
    shapes = {entry.id: layout.shape(entry) for entry in garment.entries}
    shapes = layout.without_double_seams(shapes)
    shapes = layout.with_open_pairings_settled(shapes)
    return Cloth(layout.rings, shapes, tuple(layout.problems))


class _Layout:
    def __init__(self, garment: Garment) -> None:
        self.problems: list[Diagnostic] = []
        self._open: dict[EntryId, list[tuple[Pairing, ...]]] = {}
        self._portions = self._clear_portions(garment)
        wanted: dict[PieceId, dict[str, list[Portion]]] = {}
        for entry in garment.entries:
            portion = self._portions.get(entry.id)
            if portion is not None:
                for ref in (*entry.run, *entry.to):
                    wanted.setdefault(ref.piece, {}).setdefault(ref.edge, []).append(portion)
        self._split = {p.id: SplitPiece(p, wanted.get(p.id, {})) for p in garment.pieces}
        self.rings = Rings(split.piece for split in self._split.values())

    def shape(self, entry: Entry) -> Shape:
        """Lay one entry out."""
        portion = self._portions.get(entry.id)
        one = [self._segments(ref, portion) for ref in entry.run]
        two = [self._segments(ref, portion) for ref in entry.to]
        glues: tuple[Glue, ...] = ()
        if entry.verb in _TWO_SIDED:
            glues = self._pair(entry, one, two)
        near, far = ([segment for group in side for segment in group] for side in (one, two))
        run = tuple(dict.fromkeys((*near, *far)))
        to = frozenset(far) - frozenset(near)
        return Shape(entry, run, to, glues if entry.verb in JOINS else ())

    def without_double_seams(self, shapes: Mapping[EntryId, Shape]) -> dict[EntryId, Shape]:
        """Take the seams from entries that sew an edge which an earlier one has sewn."""
        taken: dict[Segment, EntryId] = {}
        kept = dict(shapes)
        for id_, shape in shapes.items():
            edges = [segment for glue in shape.glues for segment in (glue.first, glue.second)]
            clash = next((segment for segment in edges if segment in taken), None)
            if clash is None:
                taken.update(dict.fromkeys(edges, id_))
                continue
            kept[id_] = shape._replace(glues=())
            edge = f"{clash.piece}.{self.rings.name(clash)}"
            self._report("sewn-twice", shape.entry, edge=edge, other=taken[clash])
        return kept

    def with_open_pairings_settled(self, shapes: dict[EntryId, Shape]) -> dict[EntryId, Shape]:
        """Choose, where names leave open which copies meet, by the garment as a whole."""
        open_pairings = {id_: items for id_, items in self._open.items() if shapes[id_].glues}
        if not open_pairings:
            return shapes
        fixed = [g for s in shapes.values() if s.entry.id not in open_pairings for g in s.glues]
        runs = [
            (id_, side)
            for id_, shape in shapes.items()
            if len(shape.entry.run) > 1
            for side in (tuple(s for s in shape.run if s not in shape.to), tuple(shape.to))
        ]
        settled = dict(shapes)
        for id_, pairs in settle(self.rings, fixed, open_pairings, runs).items():
            settled[id_] = shapes[id_]._replace(glues=_glues(id_, pairs))
        return settled

    def _pair(
        self, entry: Entry, one: list[tuple[Segment, ...]], two: list[tuple[Segment, ...]]
    ) -> tuple[Glue, ...]:
        items: list[tuple[Pairing, ...]] = []
        for place, edges in enumerate(one):
            try:
                items.append(self._pair_edge(edges, two[place] if two else ()))
            except UnpairableError as error:
                self._report(error.key, entry, edge=entry.run[place])
        if any(len(pairings) > 1 for pairings in items):
            self._open[entry.id] = items
        return _glues(entry.id, (pair for pairings in items for pair in pairings[0]))

    def _pair_edge(
        self, edges: tuple[Segment, ...], facing_edges: tuple[Segment, ...]
    ) -> tuple[Pairing, ...]:
        if not facing_edges:
            return (pair_with_itself(self.rings, edges),)
        if set(edges) != set(facing_edges):
            return readings(self.rings, edges, facing_edges)
        first = tuple(segment for segment in edges if segment.copy == 0)
        return readings(self.rings, first, tuple(s for s in edges if s.copy == 1))

    def _segments(self, ref: EdgeRef, portion: Portion | None) -> tuple[Segment, ...]:
        split = self._split[ref.piece]
        wanted = split.indices(ref.edge, portion)
        found = split.piece.segments(ref.edge, ref.hand)
        return tuple(segment for segment in found if segment.index in wanted)

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

    def _report(self, slug: str, entry: Entry, **names: object) -> None:
        self.problems.append(
            Diagnostic(
                slug=RuleSlug(slug),
                severity=Severity.ERROR,
                message=say(f"shape-{slug}", entry=entry.id, **names),
                path=entry.path,
                fix=say(f"shape-{slug}-fix", entry=entry.id, **names),
            )
        )


def _glues(entry: EntryId, pairs: Iterable[Pair]) -> tuple[Glue, ...]:
    return tuple(Glue(pair.first, pair.second, pair.aligned, entry) for pair in pairs)
