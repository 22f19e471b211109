"""What was done to each piece and edge by the end: the book in which the audits look things up."""

from collections.abc import Iterable, Mapping
from functools import cached_property
from itertools import chain, pairwise

from seqplan.base.ids import EntryId, PieceId
from seqplan.model.entry import Entry, Verb
from seqplan.model.garment import Amount, Fabric, Garment
from seqplan.model.operation import Action, Operation
from seqplan.model.piece import Layer, Piece, Segment
from seqplan.recipes.bands import edges_to_set_on
from seqplan.recipes.construction import Construction
from seqplan.recipes.shape import Shape
from seqplan.surface.glued import Glue

Disc = tuple[PieceId, int]
"""A cut copy of a piece."""

SETTLING = frozenset(
    {
        Action.SEW,
        Action.FINISH,
        Action.HEM,
        Action.CASE,
        Action.TURN_UP,
        Action.SET_ZIP,
        Action.TACK,
        Action.SET_ON,
        Action.STITCH_ON,
        Action.CLOSE_ENDS,
        Action.CLOSE_BAND,
        Action.MAKE_STRAP,
        Action.DO,
    }
)
"""Actions after which an edge is no longer simply raw."""

_HANDLING = frozenset(
    {
        Action.PRETREAT,
        Action.CUT,
        Action.MARK,
        Action.TURN,
        Action.OPEN,
        Action.SEW_STOP,
        Action.SHORTEN,
        Action.FIT,
        Action.INSPECT,
        Action.WAIT,
        Action.SEND_OUT,
    }
)
"""What is done to anything that is there: it makes no use of a piece or a notion."""

_MOST = 0.5
"""A lining that has so many of the edges of a piece lies under all of it, unlike a pocket bag; a
garment with so many pieces covered is lined."""


class Ledger:
    """A garment and what was done to it.

    Parameters
    ----------
    c
        The garment on the cloth.
    offered
        The garment with all that its choices offer, if it offers any.
    """

    def __init__(self, c: Construction, offered: Garment | None = None) -> None:
        self.c = c
        self._offered = offered
        self._settling: dict[Segment, tuple[Operation, ...]] = {}

    # -- what is written ---------------------------------------------------------------------

    @cached_property
    def using(self) -> tuple[Operation, ...]:
        """The operations that make something of a piece or a notion."""
        return tuple(op for op in self.c.operations if op.action not in _HANDLING)

    @cached_property
    def used(self) -> frozenset[PieceId]:
        """The pieces of which something is made."""
        return frozenset(piece for op in self.using for piece in op.pieces)

    @cached_property
    def place(self) -> Mapping[EntryId, int]:
        """Where each entry stands in the file."""
        return {entry.id: place for place, entry in enumerate(self.c.garment.entries)}

    @cached_property
    def words(self) -> str:
        """All that is told in free words, in small letters."""
        return " ".join(entry.words or "" for entry in self.c.garment.entries).casefold()

    def tells(self, *stems: str) -> bool:
        """Whether the author's free words speak of something, by the stem of a word."""
        return any(stem in self.words for stem in stems)

    def amounts(self, fabric: Fabric) -> tuple[Amount, ...]:
        """How much of a fabric the author says is needed, in the base size first of all."""
        offered = self._offered.fabric.get(fabric.id, fabric) if self._offered else fabric
        return offered.amounts

    @cached_property
    def elsewhere(self) -> tuple[Entry, ...]:
        """The entries that are left out here, and that other choices bring."""
        offered = self._offered.entries if self._offered else ()
        return tuple(entry for entry in offered if entry.id not in self.c.garment.entry)

    def is_brought(self, *verbs: Verb) -> bool:
        """Whether another choice brings an entry that does one of these."""
        return any(entry.verb in verbs for entry in self.elsewhere)

    # -- edges -------------------------------------------------------------------------------

    def settling(self, segment: Segment) -> tuple[Operation, ...]:
        """The operations after which this edge is no longer raw."""
        found = self._settling.get(segment)
        if found is None:
            ops = self.c.on_segment.get(segment, ())
            found = tuple(op for op in ops if self._settles(op, segment))
            self._settling[segment] = found
        return found

    def _settles(self, op: Operation, segment: Segment) -> bool:
        """A strap that is stitched on leaves its edge raw; a seam must have sewn this copy."""
        if op.action not in SETTLING or self.c.entry(op).verb is Verb.ATTACH:
            return False
        entry, shape = self.c.entry(op), self.c.shapes[op.entry]
        if entry.verb is Verb.IN_SEAM_POCKET:
            # The bags lie on the edges of a seam, which is still to be sewn.
            return segment not in shape.run
        if entry.verb is Verb.INSERT and segment in shape.along:
            return self._is_set_on(segment, shape)
        return op.action is not Action.SEW or not shape.glues or segment in self._sewn[entry.id]

    def _is_set_on(self, segment: Segment, shape: Shape) -> bool:
        """Whether an edge of a fly facing or shield is sewn on, or lies at an edge of the front."""
        piece = self.c.garment.piece[segment.piece]
        names = set(edges_to_set_on(self.c.garment, piece))
        for front in {other.piece for other in shape.run}:
            names |= set(self.c.garment.piece[front].edge_names)
        return piece.is_strip or self.c.rings.name(segment) in names

    @cached_property
    def _sewn(self) -> Mapping[EntryId, frozenset[Segment]]:
        return {
            shape.entry.id: frozenset((*_ends(shape.glues), *_ends(shape.riders), *shape.along))
            for shape in self.c.joins
        }

    def is_fine(self, segment: Segment) -> bool:
        """Whether this edge may stay as it was cut."""
        piece = self.c.garment.piece[segment.piece]
        fabric = self.c.garment.fabric.get(piece.fabric or "")
        return (
            self.c.rings.name(segment) in piece.selvage
            or (fabric is not None and not fabric.frays)
            or self.c.rings.pieces[piece.id].edges[segment.place].is_folded
        )

    def is_known_to_ravel(self, segment: Segment) -> bool:
        """Whether the file names the cloth, and this cut edge of it ravels and may show."""
        piece = self.c.garment.piece[segment.piece]
        is_named = piece.fabric in self.c.garment.fabric
        return is_named and piece.layer is Layer.SHELL and not self.is_fine(segment)

    def has(self, segment: Segment, *actions: Action) -> bool:
        """Whether one of these was done to the edge."""
        return any(op.action in actions for op in self.c.on_segment.get(segment, ()))

    # -- what hangs together -----------------------------------------------------------------

    @cached_property
    def units(self) -> "Units":
        """The cut copies as the seams join them."""
        return Units(self.c, (glue for shape in self.c.joins for glue in shape.glues))

    @cached_property
    def bodies(self) -> "Units":
        """The cut copies as seams join them and as they are caught or held."""
        shapes = self.c.shapes.values()
        return Units(self.c, (g for shape in shapes for g in (*shape.glues, *shape.riders)))

    @cached_property
    def covered(self) -> frozenset[PieceId]:
        """The pieces of the outside that a lining, or a facing of the same shape, hides."""
        covered: set[PieceId] = set()
        for pieces in self._by_body.values():
            shell = [piece for piece in pieces if piece.layer is Layer.SHELL]
            inner = [piece for piece in pieces if piece.layer is not Layer.SHELL]
            covered |= {
                piece.id for piece in shell if any(_covers(other, piece) for other in inner)
            }
        return frozenset(covered)

    @cached_property
    def lined(self) -> frozenset[int]:
        """The bodies of which half the pieces of the outside, or more, are covered."""
        lined = set()
        for body, pieces in self._by_body.items():
            shell = [p.id for p in pieces if p.layer is Layer.SHELL and not p.is_strip]
            if shell and len(self.covered.intersection(shell)) >= _MOST * len(shell):
                lined.add(body)
        return frozenset(lined)

    @cached_property
    def _by_body(self) -> Mapping[int, tuple[Piece, ...]]:
        found: dict[int, dict[PieceId, Piece]] = {}
        for disc in self.bodies.discs:
            piece = self.c.garment.piece[disc[0]]
            found.setdefault(self.bodies.of(disc), {})[piece.id] = piece
        return {body: tuple(pieces.values()) for body, pieces in found.items()}

    def is_hidden(self, segment: Segment) -> bool:
        """Whether nobody will see or wear this edge: it is lined, or shut in all round."""
        disc = self.c.rings.disc(segment)
        is_lined = segment.piece in self.covered or self.bodies.of(disc) in self.lined
        return is_lined or self.units.is_closed(disc)

    def turns(self, pieces: frozenset[PieceId]) -> tuple[Operation, ...]:
        """The operations that turn one of these pieces."""
        return self.c.on_pieces(pieces, Action.TURN)


class Units:
    """The cut copies, numbered by what hangs together with what.

    Parameters
    ----------
    c
        The garment.
    glues
        What joins them.
    """

    def __init__(self, c: Construction, glues: Iterable[Glue]) -> None:
        self._root: dict[Disc, Disc] = {}
        self._free: dict[Disc, list[Segment]] = {}
        sewn: set[Segment] = set()
        for glue in glues:
            one, other = (self._find(c.rings.disc(s)) for s in (glue.first, glue.second))
            self._root[one] = other
            sewn |= {glue.first, glue.second}
        for segment in c.rings.segments:
            free = self._free.setdefault(self._find(c.rings.disc(segment)), [])
            if segment not in sewn:
                free.append(segment)
        self.discs = tuple(dict.fromkeys(map(c.rings.disc, c.rings.segments)))
        self._number = {disc: n for n, disc in enumerate(self._free)}

    def of(self, disc: Disc) -> int:
        """The number of what this copy hangs together with."""
        return self._number[self._find(disc)]

    def free(self, disc: Disc) -> tuple[Segment, ...]:
        """The edges that no seam takes of all that hangs together with this copy."""
        return tuple(self._free[self._find(disc)])

    def is_closed(self, disc: Disc) -> bool:
        """Whether seams close all that hangs together with this copy, all round."""
        return not self._free[self._find(disc)]

    def _find(self, disc: Disc) -> Disc:
        path = [disc]
        while self._root.setdefault(path[-1], path[-1]) != path[-1]:
            path.append(self._root[path[-1]])
        for below, _ in pairwise(path):
            self._root[below] = path[-1]
        return path[-1]


def _covers(inner: Piece, piece: Piece) -> bool:
    """Whether an inner piece lies under all of a piece of the outside."""
    names = set(piece.edge_names)
    is_lining = inner.layer is Layer.LINING
    return inner.like == piece.id or (
        is_lining and len(names & set(inner.edge_names)) >= _MOST * len(names)
    )


def discs_of(c: Construction, shape: Shape) -> tuple[Disc, ...]:
    """The cut copies that an entry joins, each once."""
    return tuple(dict.fromkeys(c.rings.disc(segment) for segment in _ends(shape.glues)))


def _ends(glues: Iterable[Glue]) -> Iterable[Segment]:
    return chain.from_iterable((glue.first, glue.second) for glue in glues)
