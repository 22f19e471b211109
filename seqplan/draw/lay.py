"""How layers lie on the table when an operation joins them, from the table up.

The same answer serves the stack and the section, so that they cannot differ. What is laid on what
follows the sentences: the edge that an entry names first lies on the other.
"""

from collections.abc import Iterator
from enum import Enum
from typing import Final, NamedTuple

from seqplan.base.ids import NotionId, PieceId
from seqplan.draw.cloth import Cloth, Material
from seqplan.draw.folds import Side
from seqplan.draw.subject import Subject
from seqplan.model.entry import Closing, Entry, SeamKind, Sides, Verb, ZipMethod
from seqplan.model.operation import Action
from seqplan.model.piece import Layer, Segment
from seqplan.tell.seams import ALONG, STAYS, is_strap
from seqplan.words.say import say


class Way(Enum):
    """How a layer lies at the edge that is sewn."""

    LEVEL = "level"
    """Its edge level with the others."""
    ALONG = "along"
    """A tape or a trimming that runs along the edge."""
    ACROSS = "across"
    """With an end only, such as a strap; all the rest points inwards."""
    WITHIN = "within"
    """A stay that runs along the edge and never looks out of the seam."""


class Lying(NamedTuple):
    """One layer on the table.

    Parameters
    ----------
    side
        What it is, and its edge at the seam.
    is_right_up
        Whether its right side is up; ``None`` for what is alike on both sides.
    way
        How it lies at the edge.
    """

    side: Side
    is_right_up: bool | None
    way: Way = Way.LEVEL


def layers(s: Subject) -> tuple[Lying, ...]:
    """The layers of a join as they are sewn, from the table up; none where nothing is laid."""
    verb = s.entry.verb
    if verb in _LAID_BY:
        return _LAID_BY[verb](s)
    return ()


def _join(s: Subject) -> tuple[Lying, ...]:
    """Two sides of a seam, with what is caught between them."""
    pair = _pair(s)
    if pair is None:
        return ()
    lower, upper = pair
    if s.entry.seam is SeamKind.LAPPED:
        return (Lying(lower, True), Lying(upper, True))
    wrong, over = s.is_wrong_together, s.entry.sides is Sides.RIGHT_TO_WRONG
    is_lower_right_up = not (wrong or over)
    return (Lying(lower, is_lower_right_up), *caught(s, pair), Lying(upper, wrong))


def _pair(s: Subject) -> tuple[Side, Side] | None:
    """The lower and the upper side of a join."""
    edges = lower_and_upper(s)
    return s.copies(*edges) if edges else None


def lower_and_upper(s: Subject) -> tuple[Segment, Segment] | None:
    """The two cut edges of a join as they lie: the lower one first."""
    if len(s.here) < 2:
        run = s.shape.run
        other = [x for x in run if x in s.shape.to] or list(run[1:2])
        return (other[0], run[0]) if run and other else None
    first, second = s.here
    if first not in s.shape.to and second in s.shape.to:
        return second, first
    return first, second


def caught(s: Subject, pair: tuple[Side, Side]) -> tuple[Lying, ...]:
    """What is caught between the two sides at the place that is drawn, from the table up.

    The right side of what is caught lies on the right side of the outer layer; of two layers that
    are caught as one, each faces the side next to it.
    """
    pieces: dict[PieceId, None] = {}
    carriers: set[PieceId] = set()
    for rider in s.shape.riders:
        if rider.second in s.here:
            pieces[rider.first.piece] = None
            carriers.add(rider.second.piece)
    for item in s.entry.between:
        if item.piece is not None and item.at is None:
            pieces[item.piece] = None
        if item.edge is not None and not s.shape.riders:
            pieces[item.edge.piece] = None
    is_on_upper = bool(carriers) and pair[1].material.key in carriers
    sheets = [Side(s.material(piece)) for piece in pieces if not is_strap(s.c.garment, piece)]
    if len(sheets) > 1:
        # Made up and turned, so that their right sides look away from each other.
        ordered = sheets[::-1] if is_on_upper else sheets
        found = [Lying(side, place > 0) for place, side in enumerate(ordered)]
    else:
        found = [Lying(side, is_on_upper) for side in sheets]
    straps = (Side(s.material(piece)) for piece in pieces if is_strap(s.c.garment, piece))
    found += [Lying(side, None, Way.ACROSS) for side in straps]
    notions = [item.notion for item in s.entry.between if item.notion is not None]
    return (*found, *(Lying(Side(s.notion(id_)), None, _way(s, id_)) for id_ in notions))


def _way(s: Subject, notion: NotionId) -> Way:
    """How what is bought lies in a seam, by its kind."""
    kind = s.c.garment.notion[notion].kind.casefold()
    if any(word in kind for word in (*ALONG, "zip")):
        return Way.ALONG
    return Way.WITHIN if any(word in kind for word in STAYS) else Way.ACROSS


def _set_on(s: Subject) -> tuple[Lying, ...]:
    """A band, a binding or a strip on an edge: right sides together, or on the wrong side."""
    if not s.here:
        return ()
    ground = Lying(s.side(_ground(s)), not is_from_wrong_side(s))
    band = band_side(s)
    if s.entry.closing is not Closing.IN_ONE_SEAM:
        return (ground, Lying(band, False))
    # Folded with wrong sides together, so that its right side looks up as well as down.
    half = say("picture-same-copy", piece=band.material.title)
    other = band.material._replace(key=f"{band.material.key}~", title=half)
    return (ground, Lying(band, False), Lying(band._replace(material=other), True))


def _ground(s: Subject) -> Segment:
    return next((x for x in s.here if x not in s.shape.to), s.here[0])


def is_from_wrong_side(s: Subject) -> bool:
    """Whether a strip is set on from the wrong side, as every placket is."""
    plackets = {Verb.TOWER_PLACKET, Verb.CONTINUOUS_PLACKET}
    return s.entry.from_wrong_side or s.entry.verb in plackets


def band_side(s: Subject) -> Side:
    """The band, the outer of its layers, or the tape that is set on."""
    to = [x.piece for x in s.here if x in s.shape.to]
    outer = [*to, *s.entry.outer]
    if outer:
        return Side(s.material(outer[0]))
    if s.entry.notion is not None:
        notion = s.notion(s.entry.notion)
        return Side(notion._replace(cloth=Cloth.SHELL))
    return Side(Material("band", say("picture-band")))


def _bag(s: Subject) -> tuple[Lying, ...]:
    """A pocket bag on the edge of a seam to come, right sides together."""
    if not s.here or not s.entry.pieces:
        return ()
    ground = s.side(s.here[0])
    return (Lying(ground, True), Lying(Side(s.material(s.entry.pieces[0])), False))


def _held(s: Subject) -> tuple[Lying, ...]:
    """A layer held to another: shell on its face, facing or lining on its wrong side."""
    if not s.here or not s.entry.partners:
        return ()
    ground = s.side(s.here[0])
    found = [Lying(Side(s.material(id_)), up) for id_, up in _facing_one_another(s)]
    kinds = {s.c.garment.piece[piece].layer for piece in s.entry.partners}
    if kinds == {Layer.SHELL}:
        return (Lying(ground, True), *found)
    return (Lying(ground, False), *found)


def _facing_one_another(s: Subject) -> Iterator[tuple[PieceId, bool]]:
    """Layers that are held, from the first up, and whether the right side of each is up.

    Two that lie at one edge and were sewn together before, as the halves of a pocket bag, lie on
    one another as they were sewn: right sides together. A facing is opened flat beside the other.
    """
    pieces, name = s.c.garment.piece, s.c.rings.name(s.here[0])
    is_up: dict[PieceId, bool] = {}
    for piece in s.entry.partners:
        below = [
            other
            for shape in s.c.joins
            if s.c.main(shape.entry.id).id in s.work.done and _is_right_together(shape.entry)
            for glue in shape.glues
            for one, other in (
                (glue.first.piece, glue.second.piece),
                (glue.second.piece, glue.first.piece),
            )
            if one == piece and other in is_up
            if all(
                name in pieces[id_].edge_names and pieces[id_].layer is not Layer.FACING
                for id_ in (one, other)
            )
        ]
        is_up[piece] = not is_up[below[0]] if below else True
        yield piece, is_up[piece]


def _is_right_together(entry: Entry) -> bool:
    return entry.sides is Sides.RIGHT_TOGETHER and entry.seam is not SeamKind.LAPPED


def _patch(s: Subject) -> tuple[Lying, ...]:
    """A pocket, right side up, on the face of another piece."""
    places, pieces = s.entry.places, s.entry.pieces
    if not places or not pieces:
        return ()
    ground = Side(s.material(places[0].piece))
    return (Lying(ground, True), Lying(Side(s.material(pieces[0])), True))


def _zip_opening(s: Subject) -> tuple[Lying, ...]:
    """The two edges of an opening that is basted shut for a zip; a fly and its facing."""
    if s.op.action is Action.BASTE:
        return _join(s)
    is_faced = s.entry.method is ZipMethod.FLY and s.op.action is Action.SET_ON
    if not is_faced or len(s.shape.run) < 2:
        return ()
    return (Lying(s.over_and_under[0], True), Lying(Side(fly_facing(s)), False))


def fly_facing(s: Subject) -> Material:
    """The facing of a fly, whether the author names it or not."""
    if s.entry.partners:
        return s.material(s.entry.partners[0])
    return Material("fly facing", say("picture-fly-facing"), Cloth.FACING)


_LAID_BY: Final = {
    Verb.SEW: _join,
    Verb.BASTE: _join,
    Verb.INSERT: _zip_opening,
    Verb.BAND: _set_on,
    Verb.BIND: _set_on,
    Verb.TOWER_PLACKET: _set_on,
    Verb.CONTINUOUS_PLACKET: _set_on,
    Verb.IN_SEAM_POCKET: _bag,
    Verb.HOLD: _held,
    Verb.PATCH_POCKET: _patch,
}
"""How the layers of an entry are found."""

JOINING: Final = frozenset({Action.SEW, Action.BASTE, Action.HOLD, Action.SET_ON, Action.STITCH_ON})
"""What is done to layers that are laid on one another."""
