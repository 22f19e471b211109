"""What an operation's picture is about, and how far the work on it has come."""

from collections.abc import Iterable, Mapping
from dataclasses import dataclass
from functools import cached_property
from typing import Final

from seqplan.base.ids import EntryId, NotionId, PieceId
from seqplan.draw.cloth import Cloth, End, Material, Row, Stitch
from seqplan.draw.folds import ALLOWANCE, Side
from seqplan.model.entry import Entry, SeamKind, Sides, Verb
from seqplan.model.operation import Action, Operation
from seqplan.model.piece import Hand, Layer, Segment
from seqplan.recipes.construction import Construction
from seqplan.recipes.shape import SETTING_ON, Shape
from seqplan.rehearse.work import Work
from seqplan.surface.glued import Glue
from seqplan.tell.names import notion_kind
from seqplan.words.say import say

CLOTH_OF: Final[Mapping[Layer, Cloth]] = {
    Layer.SHELL: Cloth.SHELL,
    Layer.FACING: Cloth.FACING,
    Layer.LINING: Cloth.LINING,
    Layer.INTERLINING: Cloth.INTERLINING,
}


_OF_HAND: Final[Mapping[Hand, str]] = {
    Hand.LEFT: "picture-left-copy",
    Hand.RIGHT: "picture-right-copy",
}

RowSpec = tuple[Stitch, Operation | None, tuple[float, ...]]
"""A row, the operation that sews it if it is done, and its place as x, y, x, y.

A fifth number is where the raw edges lie which its thread goes round.
"""


@dataclass(frozen=True)
class Subject:
    """An entry whose seam or edge is drawn, in the state that the work is in.

    Parameters
    ----------
    c, work
        The garment, and the work after so many operations.
    entry
        The entry whose seam or edge it is.
    op
        The operation that the picture is for.
    focus
        The strip that is looked at, where the entry sets on several.
    """

    c: Construction
    work: Work
    entry: Entry
    op: Operation
    focus: PieceId | None = None

    @property
    def shape(self) -> Shape:
        """The entry on the cloth."""
        return self.c.shapes[self.entry.id]

    @cached_property
    def here(self) -> tuple[Segment, ...]:
        """The cut edges at the place that is drawn: one seam's two sides, or one edge."""
        acted = set(self.op.segments)
        for glue in sorted(self.shape.glues, key=self._strips):
            if self.focus is not None and self.focus not in {glue.first.piece, glue.second.piece}:
                continue
            if not acted or {glue.first, glue.second} & acted:
                return (glue.first, glue.second)
        run = [s for s in self.shape.run if s in acted] or [*self.shape.run, *self.op.segments]
        return tuple(run[:1])

    def _strips(self, glue: Glue) -> int:
        """How many strips a glue joins: an edge of a plain piece is drawn rather than one."""
        pieces = self.c.garment.piece
        return sum(pieces[segment.piece].is_strip for segment in (glue.first, glue.second))

    # -- how far it has come -----------------------------------------------------------------

    def done(self, *actions: Action) -> Operation | None:
        """The last operation that has done one of these to what is drawn, after it was begun.

        An operation of the entry itself, or one of a later entry on the same edges.
        """
        found = [op for op in self._acting(actions) if op.id in self.work.done and self._is_of(op)]
        return max(found, key=lambda op: self.work.done[op.id], default=None)

    def will(self, *actions: Action) -> bool:
        """Whether one of these is done to what is drawn at some time."""
        return any(True for _ in self._acting(actions))

    def _acting(self, actions: Iterable[Action]) -> Iterable[Operation]:
        wanted = set(actions)
        on_edges = (op for s in self.here for op in self.c.on_segment.get(s, ()))
        ops = dict.fromkeys((*self.c.of_entry[self.entry.id], *on_edges))
        return (op for op in ops if op.action in wanted)

    def _is_of(self, op: Operation) -> bool:
        """Whether an operation belongs to the entry, or treats what the entry has made."""
        if op.entry == self.entry.id:
            return True
        made = self.work.done.get(self.c.main(self.entry.id).id)
        is_treatment = self.c.entry(op).verb in TREATMENTS
        return is_treatment and made is not None and self.work.done[op.id] > made

    # -- what lies there ---------------------------------------------------------------------

    def material(self, piece: PieceId, key: str = "") -> Material:
        """A piece as a material; ``key`` tells a second ply of it from the first."""
        found = self.c.garment.piece[piece]
        title = found.title
        if key:
            word = "picture-same-copy" if self._is_of_one_copy else "picture-other-copy"
            title = say(word, piece=title)
        return Material(f"{piece}{key}", title, CLOTH_OF[found.layer])

    def copies(self, first: Segment, second: Segment) -> tuple[Side, Side]:
        """Two edges as the sides of a join, so that copies of one piece can be told apart.

        By the wearer's hand where that decides what lies on top or which way it is pressed, else
        as one and the other.
        """
        one, other = self.side(first), self.side(second)
        if first.piece != second.piece:
            return one, other
        hands = self.hand(first), self.hand(second)
        is_named = self.entry.on_top or self.entry.press_to in {hand.value for hand in Hand}
        if not is_named or None in hands or hands[0] is hands[1]:
            return one, other._replace(material=self.material(second.piece, "~"))
        title = one.material.title
        names = [say(_OF_HAND[hand], piece=title) for hand in hands if hand is not None]
        other_key = f"{one.material.key}~"
        return (
            one._replace(material=one.material._replace(title=names[0])),
            other._replace(material=other.material._replace(key=other_key, title=names[1])),
        )

    def hand(self, segment: Segment) -> Hand | None:
        """Which of the wearer's sides a cut edge is on, where that is known."""
        halves = ((hand, self.c.garment.piece[segment.piece].half_worn(hand)) for hand in Hand)
        return next((hand for hand, half in halves if half and half.value == segment.half), None)

    @cached_property
    def over_and_under(self) -> tuple[Side, Side]:
        """The sides of an opening, that which lies on top first: as the author says, else any."""
        first, second = self.shape.run[:2]
        on_top = self.entry.on_top
        if on_top in {self.hand(second), self.c.garment.piece[second.piece].worn} - {None}:
            is_first = on_top in {self.hand(first), self.c.garment.piece[first.piece].worn}
            if not is_first:
                return self.copies(second, first)
        return self.copies(first, second)

    @cached_property
    def _is_of_one_copy(self) -> bool:
        """Whether both edges that are drawn belong to one cut copy, which is folded."""
        discs = [self.c.rings.disc(segment) for segment in self.here]
        return len(discs) == 2 and discs[0] == discs[1]

    def notion(self, notion: NotionId) -> Material:
        """A notion as a material."""
        kind = notion_kind(self.c.garment.notion[notion].kind)
        return Material(f"notion {notion}", kind, Cloth.NOTION)

    def is_inner(self, piece: PieceId) -> bool:
        """Whether a piece goes to the inside."""
        return self.c.garment.piece[piece].layer is not Layer.SHELL

    def end_of(self, segment: Segment) -> End:
        """How an edge ends by what other entries have done to it."""
        op = self.work.mark(segment, {Action.FINISH})
        is_elsewhere = op is not None and self.c.op[op].entry != self.entry.id
        return End.FINISHED if is_elsewhere else End.RAW

    def side(self, segment: Segment, width: float = ALLOWANCE) -> Side:
        """An edge as one side of a join."""
        return Side(self.material(segment.piece), width, self.end_of(segment))

    @cached_property
    def is_wrong_together(self) -> bool:
        """Whether wrong sides lie together as a seam is sewn."""
        return self.entry.seam is SeamKind.FRENCH or self.entry.sides is Sides.WRONG_TOGETHER

    # -- rows --------------------------------------------------------------------------------

    def rows(self, found: Iterable[RowSpec]) -> tuple[Row, ...]:
        """Those rows that are sewn by now, in the order of sewing."""
        sewn = [
            Row(stitch, (ax, ay), (bx, by), op.id, *around)
            for stitch, op, (ax, ay, bx, by, *around) in found
            if op is not None
        ]
        return tuple(sorted(sewn, key=lambda row: self.work.done[row.op]))

    @cached_property
    def main(self) -> Operation | None:
        """The operation that the entry is named after, once it is done."""
        op = self.c.main(self.entry.id)
        return op if op.id in self.work.done else None


TREATMENTS: Final = frozenset(
    {
        Verb.FINISH,
        Verb.TRIM,
        Verb.GRADE,
        Verb.CLIP,
        Verb.PRESS,
        Verb.UNDERSTITCH,
        Verb.TOPSTITCH,
        Verb.TURN,
    }
)
"""Verbs that treat a seam or an edge that another entry has made."""


def foci(c: Construction, op: Operation) -> tuple[PieceId | None, ...]:
    """The strips that an operation sets on or closes, if its entry has several; else ``None``."""
    shape = c.shapes[op.entry]
    pieces = [
        glue_piece for glue in shape.glues for glue_piece in (glue.first.piece, glue.second.piece)
    ]
    outer = tuple(piece for piece in shape.entry.outer if piece in pieces)
    return outer if shape.entry.verb in SETTING_ON and len(outer) > 1 else (None,)


def find_subject(c: Construction, work: Work, op: Operation) -> EntryId:
    """Whose seam or edge an operation treats: that of its own entry, unless it treats another's."""
    entry = c.entry(op)
    if entry.verb not in TREATMENTS:
        return entry.id
    if entry.verb is Verb.TURN:
        return next((id_ for id_, by in work.turned.items() if by == op.id), entry.id)
    for segment in op.segments:
        sewn = [id_ for id_ in c.seams_at([segment]) if id_ in work.joined]
        folds = (work.mark(segment, {action}) for action in (Action.TURN_UP, Action.MAKE_STRAP))
        made = [c.op[fold].entry for fold in folds if fold is not None]
        if sewn or made:
            return [*sewn, *made][0]
    return entry.id
