"""A garment with its entries expanded and laid out on the cloth: what the rules look at.

`construct` makes it. Everything here is derived, so it depends only on the garment, and not on the
order in which the entries are written.
"""

from collections.abc import Iterable, Iterator, Mapping
from dataclasses import dataclass
from functools import cached_property

from seqplan.base.ids import EntryId, OpId, PieceId
from seqplan.model.entry import Entry, SeamMethod, Verb
from seqplan.model.garment import Garment
from seqplan.model.operation import Action, Operation
from seqplan.model.piece import Segment
from seqplan.recipes.crossing import Meetings
from seqplan.recipes.shape import COVERING, Shape
from seqplan.surface.glued import Glue, Surface
from seqplan.surface.ring import Rings
from seqplan.surface.stretch import MayFollow, Stretch, find_stretches

_SIDES_OF_A_ZIP = 2


@dataclass(frozen=True, kw_only=True)
class Construction:
    """A garment, its operations and its cloth.

    Parameters
    ----------
    garment
        As written.
    rings
        The cut pieces, split where entries mean only parts of edges.
    shapes
        What each entry means on the cloth.
    operations
        Every operation, in the written order of the entries and, within an entry, in the order
        of its recipe.
    """

    garment: Garment
    rings: Rings
    shapes: Mapping[EntryId, Shape]
    operations: tuple[Operation, ...]

    # -- operations ------------------------------------------------------------------------

    @cached_property
    def op(self) -> Mapping[OpId, Operation]:
        """Operations by name."""
        return {op.id: op for op in self.operations}

    @cached_property
    def ids(self) -> tuple[OpId, ...]:
        """The names of all operations in the written order."""
        return tuple(op.id for op in self.operations)

    @cached_property
    def of_entry(self) -> Mapping[EntryId, tuple[Operation, ...]]:
        """The operations of each entry."""
        found: dict[EntryId, list[Operation]] = {id_: [] for id_ in self.garment.entry}
        for op in self.operations:
            found[op.entry].append(op)
        return {id_: tuple(ops) for id_, ops in found.items()}

    def entry(self, op: Operation) -> Entry:
        """The entry that an operation comes from."""
        return self.shapes[op.entry].entry

    def main(self, entry: EntryId) -> Operation:
        """The operation that an entry is named after."""
        return next(op for op in self.of_entry[entry] if not op.part)

    def opening(self, entry: EntryId) -> Operation:
        """The operation with which an entry first lays hold of its edges from end to end.

        The turning up of a hem or casing, the basting of an opening for a zip, else the operation
        that the entry is named after.
        """
        ops = self.of_entry[entry]
        first = (op for op in ops if op.action in {Action.TURN_UP, Action.BASTE})
        return next(first, self.main(entry))

    def closing(self, entry: EntryId) -> Operation:
        """The operation after which a seam holds for good: the last stitching of its recipe."""
        ops = self.of_entry[entry]
        last = (op for op in ops if op.action in {Action.ENCLOSE, Action.CLOSE_BAND})
        return next(last, self.main(entry))

    def doing(self, entry: EntryId, *actions: Action) -> tuple[Operation, ...]:
        """The operations of an entry that do one of these."""
        return tuple(op for op in self.of_entry[entry] if op.action in actions)

    def acting(self, *actions: Action) -> tuple[Operation, ...]:
        """All operations that do one of these, in the written order for each action."""
        return tuple(op for action in actions for op in self._by_action.get(action, ()))

    @cached_property
    def _by_action(self) -> Mapping[Action, tuple[Operation, ...]]:
        found: dict[Action, list[Operation]] = {}
        for op in self.operations:
            found.setdefault(op.action, []).append(op)
        return {action: tuple(ops) for action, ops in found.items()}

    # -- edges -----------------------------------------------------------------------------

    @cached_property
    def joins(self) -> tuple[Shape, ...]:
        """The entries that sew permanent seams."""
        return tuple(shape for shape in self.shapes.values() if shape.glues)

    @cached_property
    def finished(self) -> Surface:
        """The garment with every seam sewn."""
        glues = (glue for shape in self.joins for glue in shape.glues)
        riders = (glue for shape in self.shapes.values() for glue in shape.riders)
        return Surface(self.rings, glues, riders)

    def body(self, shapes: Iterable[Shape]) -> Surface:
        """The garment with some seams, followed through what they catch.

        A front that is caught between two yokes hangs together with the outer one; the inner yoke
        is left out at that seam, so that the garment itself can be walked round.
        """
        sewn = list(shapes)
        riders = {rider.second: rider for shape in sewn for rider in reversed(shape.riders)}
        taken = {s for rider in riders.values() for s in (rider.first, rider.second)}
        skins = [
            glue
            for shape in sewn
            for glue in shape.glues
            if glue.first not in taken and glue.second not in taken
        ]
        return Surface(self.rings, [*skins, *_once_each(riders.values())])

    def seam_at(self, segment: Segment) -> EntryId | None:
        """The entry that sews this edge to another, if one does."""
        glue = self.finished.glue_at(segment)
        return glue.entry if glue else None

    def seams_at(self, segments: Iterable[Segment]) -> tuple[EntryId, ...]:
        """The entries that sew these edges, or catch them in a seam, each once."""
        found = (id_ for segment in segments for id_ in self._sewn_by.get(segment, ()))
        return tuple(dict.fromkeys(found))

    @cached_property
    def _sewn_by(self) -> Mapping[Segment, tuple[EntryId, ...]]:
        found: dict[Segment, list[EntryId]] = {}
        for shape in self.joins:
            sewn = (s for glue in shape.glues for s in (glue.first, glue.second))
            for segment in dict.fromkeys((*sewn, *shape.along)):
                found.setdefault(segment, []).append(shape.entry.id)
        return {segment: tuple(ids) for segment, ids in found.items()}

    @cached_property
    def on_segment(self) -> Mapping[Segment, tuple[Operation, ...]]:
        """The operations that act on each cut edge, in the written order."""
        found: dict[Segment, list[Operation]] = {}
        for op in self.operations:
            for segment in op.segments:
                found.setdefault(segment, []).append(op)
        return {segment: tuple(ops) for segment, ops in found.items()}

    def meeting(self, op: Operation, *actions: Action) -> tuple[Operation, ...]:
        """Operations that do one of these to an edge that ``op`` acts on too, each once."""
        found = (
            other
            for segment in op.segments
            for other in self.on_segment[segment]
            if other.action in actions and other is not op
        )
        return tuple(dict.fromkeys(found))

    def on_pieces(self, pieces: frozenset[PieceId], *actions: Action) -> tuple[Operation, ...]:
        """Operations that do one of these to one of the pieces."""
        found = (op for piece in pieces for op in self._on_piece.get(piece, ()))
        return tuple(op for op in dict.fromkeys(found) if op.action in actions)

    @cached_property
    def _on_piece(self) -> Mapping[PieceId, tuple[Operation, ...]]:
        found: dict[PieceId, list[Operation]] = {}
        for op in self.operations:
            for piece in op.pieces:
                found.setdefault(piece, []).append(op)
        return {piece: tuple(ops) for piece, ops in found.items()}

    def edge_name(self, segment: Segment) -> str:
        """The edge as a file would name it."""
        return f"{segment.piece}.{self.rings.name(segment)}"

    # -- chains ----------------------------------------------------------------------------

    @cached_property
    def stretches(self) -> Mapping[EntryId, tuple[Stretch, ...]]:
        """The continuous stretches that the run of each entry forms in the finished garment."""
        return {
            id_: self.stretches_on(self.finished, id_)
            for id_, shape in self.shapes.items()
            if shape.run
        }

    def stretches_on(self, surface: Surface, entry: EntryId) -> tuple[Stretch, ...]:
        """The continuous stretches that the run of an entry forms with the seams of a surface."""
        shape = self.shapes[entry]
        return find_stretches(surface, shape.run, self._may_follow(shape), entry)

    @cached_property
    def meetings(self) -> Meetings:
        """Where entries cross, and which seams each run needs closed."""
        return Meetings(self.shapes, self.finished, self.stretches)

    def _may_follow(self, shape: Shape) -> MayFollow:
        """Which edges of a run go on into one another.

        What folds an edge follows it wherever it goes. A list is one run. A single name that
        stands for two copies is two separate stretches, unless the author says ``in one``. The two
        sides of a join or a zip lie side by side, and no edge of one follows an edge of the other.
        """
        entry = shape.entry
        named = (len({(ref.piece, ref.edge) for ref in side}) for side in (entry.run, entry.to))
        is_one_run = (
            entry.verb in COVERING
            or entry.is_in_one
            or entry.how is SeamMethod.IN_THE_ROUND
            or max(named) > 1
        ) and not (entry.verb is Verb.INSERT and len(shape.run) == _SIDES_OF_A_ZIP)
        mates = {frozenset((glue.first, glue.second)) for glue in shape.glues}

        def may_follow(one: Segment, other: Segment) -> bool:
            is_near = is_one_run or self.rings.disc(one) == self.rings.disc(other)
            is_same_side = (one in shape.to) == (other in shape.to)
            return is_near and is_same_side and frozenset((one, other)) not in mates

        return may_follow


def _once_each(glues: Iterable[Glue]) -> Iterator[Glue]:
    """Glues of which none takes an edge that an earlier one has."""
    taken: set[Segment] = set()
    for glue in glues:
        if not taken & {glue.first, glue.second}:
            taken |= {glue.first, glue.second}
            yield glue
