"""The garment in hand: what is sewn, tidied, folded, caught and open after so many operations."""

from collections.abc import Callable, Iterable, Mapping

from seqplan.base.ids import EntryId, NotionId, OpId, PieceId
from seqplan.model.entry import SeamKind, Sides, Verb
from seqplan.model.operation import Action, Operation
from seqplan.model.piece import Layer, Segment
from seqplan.recipes.construction import Construction
from seqplan.recipes.recipe import MAIN
from seqplan.recipes.shape import JOINS, Shape
from seqplan.rehearse.states.allowance import Allowance
from seqplan.rehearse.states.away import Away
from seqplan.rehearse.states.damp import Damp
from seqplan.rehearse.states.heat import Heat
from seqplan.rehearse.states.setting import Setting
from seqplan.rehearse.states.state import State
from seqplan.rehearse.states.zip_ends import ZipEnds
from seqplan.surface.glued import Part, Surface

Place = Segment | PieceId
"""What a deed leaves its mark on: a cut edge, or a piece as a whole."""

_HAND = "hand"

TURNED_SEAMS = frozenset({SeamKind.ENCLOSED, SeamKind.FACED})
"""Seams that are sewn right sides together and then turned, so that they lie inside."""


class Work:
    """The state of the work. It changes with every operation that is done.

    Parameters
    ----------
    construction
        The garment, of which nothing is sewn yet.
    """

    def __init__(self, construction: Construction) -> None:
        self.c = construction
        self.surface = Surface(construction.rings)
        self.done: dict[OpId, int] = {}
        self.joined: dict[EntryId, OpId] = {}
        """The seams that hold, each with the operation that sewed it, in the order of sewing."""
        self.turned: dict[EntryId, OpId] = {}
        """The seams whose allowances lie inside, each with the operation that turned them."""
        self.caught: dict[PieceId, OpId] = {}
        """Pieces of which an edge lies in a seam, or that lie on another piece."""
        self.gaps: dict[EntryId, OpId] = {}
        """Seams and casings with a part left open."""
        self.shut: dict[NotionId, OpId] = {}
        """Zips that are set and have not been opened."""
        self.allowance = Allowance(construction)
        self.damp = Damp(construction, self.done)
        self.away = Away(construction, self.done)
        self.setting = Setting(construction, self.done)
        self.heat = Heat(construction)
        self.zip_ends = ZipEnds(construction, self.done)
        self.states: tuple[State, ...] = (
            self.allowance,
            self.damp,
            self.away,
            self.setting,
            self.heat,
            self.zip_ends,
        )
        """What else changes from step to step, each kept in a module of its own."""
        self._effects: Mapping[Action, Callable[[Operation], None]] = {
            Action.SEW: self._shut_zips,
            Action.SET_ZIP: self._shut_zips,
            Action.OPEN: self._open_zips,
            Action.TURN: self._turn,
            Action.CLOSE_GAP: self._close_gap,
        }
        self._marks: dict[tuple[Place, Action], OpId] = {}

    # -- what there is -----------------------------------------------------------------------

    def mark(self, place: Place, actions: Iterable[Action]) -> OpId | None:
        """The operation that has done one of these to an edge or piece, the first of them."""
        found = (self._marks.get((place, action)) for action in actions)
        held = [op for op in found if op is not None]
        return min(held, key=self.done.__getitem__, default=None)

    def parts_with(self, pieces: frozenset[PieceId]) -> tuple[Part, ...]:
        """The connected parts that these pieces lie in, as they are sewn now."""
        return self.surface.parts_with(pieces)

    def gaps_in(self, part: Part) -> list[EntryId]:
        """The seams of a part that have been left open somewhere."""
        pieces = {piece for piece, _ in part.discs}
        return [id_ for id_ in self.gaps if self.c.shapes[id_].skins & pieces]

    def shuts(self, op: Operation) -> frozenset[PieceId]:
        """The pieces that an operation closes round: those of a seam, or of the seam with a gap."""
        entry = self.c.entry(op)
        return self.c.shapes[entry.closes or entry.into or entry.id].skins

    # -- what is done --------------------------------------------------------------------------

    def do(self, op: Operation) -> None:
        """Do an operation."""
        self.done[op.id] = len(self.done)
        places: tuple[Place, ...] = (*op.segments, *op.pieces)
        for place in places:
            self._marks.setdefault((place, op.action), op.id)
        if op.part == MAIN:
            self._join(op)
        if op.action in self._effects:
            self._effects[op.action](op)
        for state in self.states:
            state.do(op)

    def _join(self, op: Operation) -> None:
        """Sew seams, lay on what is held, catch what is caught."""
        entry, shape = self.c.entry(op), self.c.shapes[op.entry]
        if entry.verb in JOINS:
            self.surface = self.surface.with_seams(shape.glues, shape.riders)
            self.joined[entry.id] = op.id
        elif op.action is Action.HOLD:
            self.surface = self.surface.with_seams((), shape.riders)
        if entry.gap is not None and op.action in {Action.SEW, Action.CASE}:
            self.gaps[entry.id] = op.id
        self.caught.update((piece, op.id) for piece in taken_up(self.c, op))

    def _shut_zips(self, op: Operation) -> None:
        self.shut.update(dict.fromkeys(self._zips(op), op.id))

    def _open_zips(self, op: Operation) -> None:
        for notion in op.notions:
            self.shut.pop(notion, None)

    def _close_gap(self, op: Operation) -> None:
        entry = self.c.entry(op)
        self.gaps.pop(entry.closes or entry.into or entry.id, None)

    def _zips(self, op: Operation) -> list[NotionId]:
        kinds = {notion: self.c.garment.notion[notion].kind.casefold() for notion in op.notions}
        return [notion for notion, kind in kinds.items() if "zip" in kind]

    def _turn(self, op: Operation) -> None:
        """Bring allowances to the inside: of one seam, or of all seams of what is turned."""
        if self.c.entry(op).verb is not Verb.TURN:
            self.turned.setdefault(op.entry, op.id)
            return
        for id_ in self.joined:
            shape = self.c.shapes[id_]
            if is_turned_seam(self.c, shape) and shape.skins <= op.pieces:
                self.turned.setdefault(id_, op.id)


def is_turned_seam(c: Construction, shape: Shape) -> bool:
    """Whether a seam lies inside in the end: it is turned, or joins the outside to a lining.

    What is closed by hand is closed from the right side.
    """
    if shape.entry.seam in TURNED_SEAMS:
        return True
    is_by_hand = c.main(shape.entry.id).setup.station == _HAND
    is_inside = shape.entry.verb is Verb.SEW and shape.entry.sides is Sides.RIGHT_TOGETHER
    if is_by_hand or not is_inside:
        return False
    layers = {
        (c.garment.piece[g.first.piece].layer, c.garment.piece[g.second.piece].layer)
        for g in shape.glues
    }
    return any({Layer.SHELL, Layer.LINING} == set(pair) for pair in layers)


def taken_up(c: Construction, op: Operation) -> set[PieceId]:
    """The pieces that an operation catches in a seam, or lays on others for good."""
    entry, shape = c.entry(op), c.shapes[op.entry]
    found = {glue.first.piece for glue in shape.riders} - shape.skins
    found |= {item.piece for item in entry.between if item.piece is not None}
    found |= {item.edge.piece for item in entry.between if item.edge is not None} - shape.skins
    if op.action in {Action.STITCH_ON, Action.HOLD, Action.ATTACH}:
        found |= {*entry.partners, *entry.pieces}
    if entry.verb is Verb.BAND and entry.under:
        found |= set(entry.partners)
    return found


def too_late(work: Work, done: OpId) -> str:
    """Which sentence says what an operation has done to an edge that another one needed."""
    return f"too-late-{work.c.op[done].action.value.replace(' ', '-')}"
