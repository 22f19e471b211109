"""Sections of openings that are worked in the cloth itself: a fly, and a pocket with a welt."""

from typing import Final

from seqplan.draw import folds
from seqplan.draw.cloth import End, Material, Ply, Point, Section, Stitch
from seqplan.draw.folds import BODY, Side
from seqplan.draw.lay import fly_facing
from seqplan.draw.subject import RowSpec, Subject
from seqplan.model.operation import Action
from seqplan.tell.pockets import welt_and_bag
from seqplan.words.say import say

_ABOVE: Final = 0.6
_FACING: Final = 22.0
"""How far a fly facing reaches from the edge of the fly."""

# -- a fly ---------------------------------------------------------------------------------


def fly(s: Subject) -> Section | None:
    """A fly cut across: faced, pressed, the zip set, the shield behind it, topstitched."""
    if len(s.shape.run) < 2:
        return None
    over, under = s.over_and_under
    facing = Side(fly_facing(s), end=End.FINISHED)
    faced = s.done(Action.SET_ON)
    if faced is None:
        return None
    if s.main is None and not s.done(Action.PRESS):
        rows = s.rows([(Stitch.SEAM, faced, (0, 1 + _ABOVE, 0, -_ABOVE))])
        return Section(folds.stacked([(over, True), (facing, False)]), rows)
    seam = (Stitch.SEAM, faced, (-1.7, -0.5, -1.7, -2.5))
    plies: list[Ply] = [*_faced(over, facing)]
    if s.main is None or s.entry.notion is None:
        return Section(tuple(plies), s.rows([seam]), is_outside_up=True)
    plies += [*_under(under), *_zip(s.notion(s.entry.notion))]
    shield = s.done(Action.STITCH_ON)
    if shield is not None:
        named = s.entry.partners[1:2]
        unnamed = Material("fly shield", say("picture-fly-shield"))
        plies.append(_shield(s.material(named[0]) if named else unnamed))
    rows = s.rows(
        [
            seam,
            (Stitch.SEAM, s.main, (-0.2, -5 + _ABOVE, -0.2, -7 - _ABOVE)),
            (Stitch.SEAM, s.main, (-13, -3 + _ABOVE, -13, -4 - _ABOVE)),
            (Stitch.SEAM, s.main, (-15, -3 + _ABOVE, -15, -4 - _ABOVE)),
            (Stitch.SEAM, shield, (2.6, -6 + _ABOVE, 2.6, -9 - _ABOVE)),
            (Stitch.TOPSTITCHING, s.done(Action.TOPSTITCH), (-20, _ABOVE, -20, -3 - _ABOVE)),
        ]
    )
    return Section(tuple(plies), rows, is_outside_up=True)


def _faced(over: Side, facing: Side) -> tuple[Ply, Ply]:
    """The side that lies on top, with its facing turned to the inside."""
    upper, lower = folds.turned(over, facing)[:2]
    way = ((-_FACING, lower.points[0][1]), *lower.points[1:])
    return upper, lower._replace(points=way, ends=(End.FINISHED, End.RAW))


def _under(under: Side) -> tuple[Ply, ...]:
    """The side that lies underneath, its edge pressed under; it reaches under the fly."""
    way: tuple[Point, ...] = ((BODY, -5), (-4, -5), (-4, -6), (4.5, -6))
    return (Ply(under.material, way, False, (End.GOES_ON, under.end)),)


def _zip(zip_: Material) -> tuple[Ply, ...]:
    """One tape on the facing, the other under the fold of the side beneath."""
    left: tuple[Point, ...] = ((-7.4, -5.5), (-9, -4), (-17.5, -4))
    right: tuple[Point, ...] = ((-6.2, -5.5), (-5.2, -7), (4.5, -7))
    return tuple(Ply(zip_, way, None, (End.TEETH, End.RAW)) for way in (left, right))


def _shield(shield: Material) -> Ply:
    """Folded double, behind the zip."""
    return Ply(shield, ((4.5, -8), (-14, -8), (-14, -9), (4.5, -9)), False, (End.RAW, End.RAW))


# -- a pocket with a welt ------------------------------------------------------------------


def welt(s: Subject) -> Section | None:
    """A welt pocket cut across its mouth, the upper side of the garment at the right."""
    welts, bags = welt_and_bag(s.c.garment, s.entry)
    if not s.entry.places or not bags:
        return None
    strip = s.material(welts[0]) if welts else None
    if s.main is None:
        if strip is None or s.done(Action.FOLD_BAND) is None:
            return None
        return Section((folds.band_alone(Side(strip), double=True),))
    ground, bag = s.material(s.entry.places[0].piece), s.material(bags[0])
    if s.done(Action.TURN):
        return _turned(s, ground, strip, bag) if strip else _drawn_through(s, ground, bag)
    top = 2 if strip else 1
    laid: tuple[Ply, ...] = (Ply(bag, ((-18, 1), (18, 1)), False, (End.GOES_ON, End.GOES_ON)),)
    if strip:
        folded: tuple[Point, ...] = ((-0.5, 1), (-14, 1), (-14, 2), (-0.5, 2))
        laid = (
            Ply(strip, folded, True, (End.RAW, End.RAW)),
            Ply(bag, ((0.5, 1), (BODY, 1)), False, (End.RAW, End.GOES_ON)),
        )
    rows = s.rows(
        [
            (Stitch.SEAM, s.main, (-3, top + _ABOVE, -3, -_ABOVE)),
            (Stitch.SEAM, s.main, (3, 1 + _ABOVE, 3, -_ABOVE)),
        ]
    )
    return Section((*_ground(ground, is_cut=s.done(Action.SLASH) is not None), *laid), rows)


def _ground(ground: Material, *, is_cut: bool) -> tuple[Ply, ...]:
    """The garment, whole or cut open between the rows."""
    left: tuple[Point, ...] = ((-BODY, 0), (-0.5, 0))
    right: tuple[Point, ...] = ((BODY, 0), (0.5, 0))
    if is_cut:
        return (Ply(ground, left, True), Ply(ground, right, False))
    return (Ply(ground, (left[0], right[0]), True, (End.GOES_ON, End.GOES_ON)),)


def _drawn_through(s: Subject, ground: Material, bag: Material) -> Section:
    """A bag without a welt, drawn through the cut; its two ends hang inside."""
    plies: list[Ply] = []
    rows: list[RowSpec] = []
    for hand in (-1, 1):
        body = ((hand * BODY, 0), (hand * 3, 0), (hand * 3, -1), (hand * 9, -1))
        half = ((hand * 9, -2), (hand * 3, -2), (hand * 3, -3), (hand * 20, -3))
        plies += [
            Ply(ground, body, hand < 0),
            Ply(bag, half, hand < 0, (End.RAW, End.GOES_ON)),
        ]
        rows.append((Stitch.SEAM, s.main, (hand * 6, -1 + _ABOVE, hand * 6, -2 - _ABOVE)))
    return Section(tuple(plies), s.rows(rows), is_outside_up=True)


def _turned(s: Subject, ground: Material, strip: Material, bag: Material) -> Section:
    """The welt stands up and fills the mouth; the bag hangs inside, and is closed to the welt."""
    closed = s.done(Action.CLOSE_BAND)
    stands: tuple[Point, ...] = (
        (-9, -2), (-1.6, -2), (-1.6, 0), (6, 0), (6, -1), (1.4, -1), (1.4, -3), (-9, -3)
    )  # fmt: skip
    hangs: tuple[Point, ...] = ((14, -2), (8.8, -2), (8.8, -5), (-20, -5))
    ends = (End.RAW, End.GOES_ON)
    if closed:
        hangs, ends = (*hangs, (-20, -4), (-4, -4)), (End.RAW, End.RAW)
    plies = (
        Ply(ground, ((-BODY, 0), (-3, 0), (-3, -1), (-9, -1)), True),
        Ply(ground, ((BODY, 0), (7.6, 0), (7.6, -1), (14, -1)), False),
        Ply(strip, stands, True, (End.RAW, End.RAW)),
        Ply(bag, hangs, False, ends),
    )
    rows = s.rows(
        [
            (Stitch.SEAM, s.main, (-5, -1 + _ABOVE, -5, -3 - _ABOVE)),
            (Stitch.SEAM, s.main, (11.4, -1 + _ABOVE, 11.4, -2 - _ABOVE)),
            (Stitch.SEAM, closed, (-7, -1 + _ABOVE, -7, -4 - _ABOVE)),
        ]
    )
    return Section(plies, rows, is_outside_up=True)
