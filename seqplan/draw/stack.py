"""What lies on the table when layers are joined, seen from above."""

from collections.abc import Iterable, Iterator, Sequence
from fractions import Fraction
from typing import Final, NamedTuple

from seqplan.base.ids import PieceId
from seqplan.base.measure import Length, both
from seqplan.draw.cloth import Material, Stitch
from seqplan.draw.lay import JOINING, Lying, Way, layers
from seqplan.draw.subject import Subject
from seqplan.model.entry import SeamKind, Verb
from seqplan.model.operation import Action, Operation
from seqplan.model.piece import Half
from seqplan.recipes.construction import Construction
from seqplan.recipes.notches import meetings, whole_edge
from seqplan.rehearse.work import Work
from seqplan.tell import usual
from seqplan.tell.names import listing, quoted, readable
from seqplan.tell.pressing import bags_at
from seqplan.words.say import say


class Layer(NamedTuple):
    """A layer; ``is_right_up`` is ``None`` where it has no sides."""

    material: Material
    is_right_up: bool | None
    way: Way = Way.LEVEL


class Stack(NamedTuple):
    """Layers on the table with the row that joins them.

    Parameters
    ----------
    layers
        From the table up.
    stitch
        What the row is for.
    distance
        How far it runs from the edge at which the layers lie level; ``None`` where nobody says.
    fold
        Whether the edge of the uppermost layer is folded under, so that it does not lie level.
    part
        What of the edge stays open, in words; empty where the row runs from end to end.
    is_gap
        Whether it stays open in the middle, and not from one end on.
    notches
        Where notches of the layers meet, from 0 at the top of the edge to 1, and of how many marks
        they are.
    bag
        The bag of a pocket that looks out of the edge, with the row going round it.
    """

    layers: tuple[Layer, ...]
    stitch: Stitch
    distance: Length | None = None
    fold: bool = False
    part: str = ""
    is_gap: bool = False
    notches: tuple[tuple[float, int], ...] = ()
    bag: Layer | None = None


_BASTED: Final = frozenset({Action.BASTE, Action.HOLD})
_STRIPS: Final = frozenset({Verb.TOWER_PLACKET, Verb.CONTINUOUS_PLACKET})


def stack(c: Construction, work: Work, op: Operation, focus: PieceId | None = None) -> Stack | None:
    """Derive how layers lie for an operation that joins them.

    Parameters
    ----------
    c
        The garment.
    work
        The work, with all before the operation done; whether the operation itself is, makes no
        difference.
    op
        The operation.
    focus
        The strip that is looked at, of several.

    Returns
    -------
    Stack or None
        ``None`` where the operation does not join layers that are laid on one another.
    """
    if op.action not in JOINING:
        return None
    s = Subject(c, work, c.entry(op), op, focus)
    laid = layers(s)
    if not laid:
        return None
    found = tuple(
        Layer(_with_all(s, layer.side.material), layer.is_right_up, layer.way) for layer in laid
    )
    fold = s.entry.seam is SeamKind.LAPPED or s.entry.verb is Verb.PATCH_POCKET
    is_gap = s.entry.gap is not None
    notches = () if fold else tuple(_notches(s, laid))
    return Stack(found, _stitch(s), _distance(s), fold, _part(s), is_gap, notches, _bag(s, found))


def _notches(s: Subject, laid: Sequence[Lying]) -> Iterator[tuple[float, int]]:
    """Where notches meet on the edge that is drawn, from the top of the picture down."""
    here = {whole_edge(s.c, segment) for segment in s.here}
    meeting = next(
        (m for m in meetings(s.c, s.shape) if here & {*m.one.edges, *m.other.edges}), None
    )
    if meeting is None:
        return
    edge = meeting.one.edges[0]
    layer = next((x for x in laid[::-1] if x.side.material.key.rstrip("~") == edge.piece), laid[0])
    # With its edge at the right, a piece is walked clockwise down the page, unless it lies on its
    # right side, or is the mirror image of what is described.
    is_down = bool(layer.is_right_up) == (edge.half == Half.DESCRIBED.value)
    for number, (one, other) in enumerate(meeting.pairs):
        share = (number + 1) / (len(meeting.pairs) + 1)
        if one.before is not None and one.after is not None:
            share = one.before / (one.before + one.after)
        notch = one.notch or other.notch
        if notch is not None:
            yield share if is_down else 1 - share, notch.marks


def _bag(s: Subject, laid: tuple[Layer, ...]) -> Layer | None:
    """The bag on the uppermost layer, where pockets were sewn to the edges of the seam."""
    if s.entry.verb is not Verb.SEW or s.op.action is not Action.SEW:
        return None
    bags = bags_at(s.c, s.op.segments)
    return Layer(s.material(bags[0]), laid[-1].is_right_up) if bags else None


def _with_all(s: Subject, material: Material) -> Material:
    """The material under the names of all pieces that lie in one layer with it."""
    if material.key == s.focus:
        return material
    one = [x.piece for x in s.shape.run if x not in s.shape.to]
    other = [x.piece for x in s.shape.run if x in s.shape.to]
    for pieces in (one, other):
        if material.key in pieces and s.shape.to:
            return material._replace(title=_titles(s, pieces))
    return material


def _titles(s: Subject, pieces: Iterable[PieceId]) -> str:
    return listing(s.c.garment.piece[piece].title for piece in dict.fromkeys(pieces))


def _stitch(s: Subject) -> Stitch:
    if s.op.action in _BASTED:
        return Stitch.BASTING
    if s.entry.seam is SeamKind.OVERLOCKED and s.entry.verb is Verb.SEW:
        return Stitch.OVERLOCK
    is_on_top = s.entry.seam is SeamKind.LAPPED or s.op.action is Action.STITCH_ON
    return Stitch.TOPSTITCHING if is_on_top else Stitch.SEAM


def _distance(s: Subject) -> Length | None:
    """How far the row runs from the edge, as the sentences say it."""
    if s.entry.verb in _STRIPS:
        return usual.usual(s.c.garment, usual.PLACKET_SEAM)
    if s.entry.verb is Verb.PATCH_POCKET or s.entry.seam is SeamKind.LAPPED:
        return usual.usual(s.c.garment, usual.EDGE_STITCH)
    allowance = s.entry.allowance or s.c.garment.allowance
    return _within(s, allowance) if allowance else None


def _within(s: Subject, allowance: Length) -> Length:
    """How far the row runs from the edge, by the allowance."""
    if s.entry.seam is SeamKind.FRENCH:
        return usual.french_rows(allowance).first
    if s.op.action in _BASTED and s.entry.verb is not Verb.INSERT:
        less = min(Fraction(usual.BASTE_OUTSIDE), allowance.mm / 2)
        return Length(allowance.mm - less, allowance.written_in)
    if s.entry.verb is Verb.IN_SEAM_POCKET:
        return usual.shorter(allowance, by=usual.BAG_NEARER)[0]
    return allowance


def _part(s: Subject) -> str:
    if s.entry.gap is not None:
        return say("picture-leave-open", gap=both(s.entry.gap))
    portion = s.entry.portion
    if portion is None:
        return ""
    key = "picture-only-part" if portion.is_named_part else "picture-stop-before"
    return say(key, length=both(portion.length), neighbour=quoted(readable(portion.neighbour)))
