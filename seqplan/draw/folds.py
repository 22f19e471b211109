"""The shapes in which cloth lies at a seam or an edge, as the trade folds it.

Lengths are schematic. Where cloth lies on the table as it is sewn, its body goes off to the left
and its raw edge is at the right, as under a machine. Where it lies as worn, one side goes off to
the left, the other to the right, the outside up.
"""

from collections.abc import Sequence
from typing import Final, NamedTuple

from seqplan.draw.cloth import Cloth, End, Material, Ply, Point

BODY: Final = 24.0
"""How much of the cloth beside a seam is drawn."""
ALLOWANCE: Final = 9.0
NARROW: Final = 4.0
WIDE: Final = 6.5
"""An allowance as cut, trimmed, and the wider of two that are graded."""
BAND: Final = 17.0
"""How far a band stands out beyond its seam."""
_WALL: Final = 1.4
"""Between folds that touch."""

_LOOSE: Final = (End.RAW, End.RAW)


class Side(NamedTuple):
    """One side of a join: what it is, how wide its allowance still is, and how that ends."""

    material: Material
    width: float = ALLOWANCE
    end: End = End.RAW


class Caught(NamedTuple):
    """What is caught in a seam: which side is up, and whether it stays within the allowances."""

    side: Side
    is_right_up: bool | None
    is_within: bool = False

    def turned_over(self) -> "Caught":
        """The same with its other side up."""
        return self._replace(is_right_up=_other(self.is_right_up))


def flat(side: Side, level: float, *, right_up: bool | None) -> Ply:
    """Cloth with its raw edge at the right."""
    return _ply(side, ((-BODY, level), (side.width, level)), right_at_left=right_up)


def stacked(sides: Sequence[tuple[Side, bool | None]]) -> tuple[Ply, ...]:
    """Layers on the table, from the table up, each with whether its right side is up."""
    return tuple(flat(side, level, right_up=up) for level, (side, up) in enumerate(sides))


def opened(left: Side, right: Side, *, room: int = 0, right_up: bool = True) -> tuple[Ply, ...]:
    """A seam pressed open: each allowance lies back under its own side."""
    return (
        _ply(left, _open(left, -1, room), right_at_left=right_up),
        _ply(right, _open(right, 1, room), right_at_left=not right_up),
    )


def _open(side: Side, hand: int, room: int) -> tuple[Point, ...]:
    fold, level = hand * _WALL, -1.0 - room
    return ((hand * BODY, 0), (fold, 0), (fold, level), (hand * (_WALL + side.width), level))


def to_side(
    left: Side,
    right: Side,
    caught: Sequence[Caught] = (),
    *,
    room: int = 0,
    right_up: bool = True,
) -> tuple[Ply, ...]:
    """Both allowances pressed under the right-hand side, with what is caught between them.

    What is caught looks out of the seam on the outside, unless it lies within.
    """
    wall, count = _WALL + len(caught), len(caught)
    near, far = -1.0 - room, -2.0 - room - count
    between = []
    for place, (side, up, is_within) in enumerate(caught):
        level = near - 1 - place
        x = wall * (2 * (place + 1) / (count + 1) - 1)
        way: tuple[Point, ...] = ((x, 1.0), (x, level), (side.width, level))
        if is_within:
            way = ((wall + 0.2, level), (side.width, level))
        between.append(Ply(side.material, way, up, _LOOSE))
    return (
        _ply(
            left, ((-BODY, 0), (-wall, 0), (-wall, far), (left.width, far)), right_at_left=right_up
        ),
        *between,
        _ply(
            right,
            ((BODY, 0), (wall, 0), (wall, near), (right.width, near)),
            right_at_left=not right_up,
        ),
    )


def turned(upper: Side, lower: Side, caught: Sequence[Caught] = ()) -> tuple[Ply, ...]:
    """Sewn and turned: an edge at the right, all allowances between the two sides.

    What is caught looks out of the edge.
    """
    last = -2.0 - len(caught)
    plies = [
        _ply(upper, ((-BODY, 0), (0, 0), (0, -1), (-upper.width, -1)), right_at_left=True),
        _ply(
            lower,
            ((-BODY, last - 1), (0, last - 1), (0, last), (-lower.width, last)),
            right_at_left=False,
        ),
    ]
    for place, (side, up, _) in enumerate(caught):
        level = -2.0 - place
        plies.append(_ply(side, ((BODY, level), (-side.width, level)), right_at_left=_other(up)))
    return tuple(plies)


def french_closed(upper: Side, lower: Side, *, right_up: bool = True) -> tuple[Ply, ...]:
    """Folded on the first row of a French seam, right sides together, the raw edges shut in."""
    return (
        _ply(lower, ((-BODY, 0), (0, 0), (0, 1), (-lower.width, 1)), right_at_left=right_up),
        _ply(upper, ((-BODY, 3), (0, 3), (0, 2), (-upper.width, 2)), right_at_left=not right_up),
    )


def french_pressed(left: Side, right: Side) -> tuple[Ply, ...]:
    """A French seam opened out, its tube pressed under the right-hand side."""
    tip = ALLOWANCE + 1
    return (
        _ply(
            left,
            ((-BODY, 0), (-_WALL, 0), (-_WALL, -4), (tip, -4), (tip, -3), (tip - left.width, -3)),
            right_at_left=True,
        ),
        _ply(
            right,
            ((BODY, 0), (_WALL, 0), (_WALL, -1), (tip, -1), (tip, -2), (tip - right.width, -2)),
            right_at_left=False,
        ),
    )


def felled(left: Side, right: Side) -> tuple[Ply, ...]:
    """The wide allowance of the left side folded in over the trimmed one of the right side."""
    tip = ALLOWANCE
    return (
        _ply(
            left,
            ((-BODY, 0), (-_WALL, 0), (-_WALL, -3), (tip, -3), (tip, -1), (_WALL + 2.2, -1)),
            right_at_left=True,
        ),
        _ply(
            right,
            ((BODY, 0), (_WALL, 0), (_WALL, -2), (_WALL + right.width, -2)),
            right_at_left=False,
        ),
    )


def folded_under(side: Side, *, right_up: bool = True) -> Ply:
    """An edge pressed to the wrong side."""
    return _ply(side, ((-BODY, 0), (0, 0), (0, -1), (-side.width, -1)), right_at_left=right_up)


def lapped(upper: Side, lower: Side) -> tuple[Ply, ...]:
    """The left side, its edge folded under, on the right side of the other."""
    fold = 3.0
    return (
        _ply(
            upper, ((-BODY, 2), (fold, 2), (fold, 1), (fold - upper.width, 1)), right_at_left=True
        ),
        _ply(lower, ((BODY, 0), (fold - lower.width, 0)), right_at_left=False),
    )


def laid_on(pocket: Side, ground: Side) -> tuple[Ply, ...]:
    """A pocket, its edge folded under, on the face of another piece."""
    return (
        Ply(ground.material, ((-BODY, 0), (BODY, 0)), True, (End.GOES_ON, End.GOES_ON)),
        _ply(pocket, ((BODY, 2), (-3, 2), (-3, 1), (-3 + pocket.width, 1)), right_at_left=False),
    )


def turned_up(side: Side, depth: float, first: float, *, twice: bool) -> Ply:
    """A hem or casing, its fold at the right; ``first`` is the inner turn of one turned twice."""
    if not twice:
        return _ply(side, ((-BODY, 0), (0, 0), (0, -1), (-depth, -1)), right_at_left=True)
    way = ((-BODY, 0), (0, 0), (0, -2), (-depth, -2), (-depth, -1), (first - depth, -1))
    return _ply(side, way, right_at_left=True)


def wrapped_end(material: Material, edge: float, top: float, bottom: float) -> Ply:
    """A binding round raw edges that end at ``edge``, from above ``top`` to below ``bottom``."""
    way = ((edge - 5, top), (edge + 1.4, top), (edge + 1.4, bottom), (edge - 5, bottom))
    return Ply(material, way, True, _LOOSE)


# -- bands ---------------------------------------------------------------------------------


def band_alone(side: Side, *, double: bool) -> Ply:
    """A band folded lengthwise; unless both edges are sewn at once, one is pressed in."""
    way: tuple[Point, ...] = ((0, 0), (BAND, 0), (BAND, 2), (0, 2))
    if not double:
        way = ((-4, 0), *way[1:3], (0, 2), (0, 1), (WIDE, 1))
    return Ply(side.material, way, False, _LOOSE)


def band_laid(side: Side, level: float) -> Ply:
    """A band, opened out, right side down, its other edge pressed in."""
    way = ((side.width, level), (-BODY, level), (-BODY, level + 1), (-BODY + WIDE, level + 1))
    return Ply(side.material, way, True, _LOOSE)


def band_laid_double(side: Side, level: float) -> Ply:
    """A band folded lengthwise, both its edges on the seam."""
    way = ((side.width, level), (-BAND, level), (-BAND, level + 1), (side.width, level + 1))
    return Ply(side.material, way, True, (side.end, side.end))


def band_up(ground: Side, band: Side) -> tuple[Ply, ...]:
    """A band pressed away from the garment, allowances towards it, its other edge pressed in."""
    far = BODY + BAND / 2
    return (
        _ply(
            ground, ((-BODY, 0), (-_WALL, 0), (-_WALL, -2), (ground.width, -2)), right_at_left=True
        ),
        Ply(
            band.material,
            ((far - WIDE, -1), (far, -1), (far, 0), (_WALL, 0), (_WALL, -1), (band.width, -1)),
            False,
            _LOOSE,
        ),
    )


def band_round(ground: Side, band: Side, reach: float = 3.5) -> tuple[Ply, ...]:
    """A band folded over the edge; its loose edge reaches over the seam from below."""
    return (
        _ply(ground, ((-BODY, 0), (ground.width, 0)), right_at_left=True),
        Ply(
            band.material,
            (
                (band.width, 1),
                (0, 1),
                (0, 2),
                (BAND, 2),
                (BAND, -2),
                (-reach, -2),
                (-reach, -1),
                (WIDE - reach, -1),
            ),
            True,
            _LOOSE,
        ),
    )


def two_bands_laid(outer: Side, inner: Side, level: float) -> tuple[Ply, ...]:
    """A band of two layers: the outer laid on, right side down, the inner kept clear above."""
    fold = -BODY
    return (
        Ply(
            outer.material,
            ((outer.width, level), (fold, level), (fold, level + 1), (fold + NARROW, level + 1)),
            True,
            _LOOSE,
        ),
        Ply(
            inner.material,
            (
                (-9 - WIDE, level + 2.9),
                (-9, level + 2.9),
                (-9, level + 4),
                (fold, level + 4),
                (fold, level + 2),
                (fold + NARROW, level + 2),
            ),
            False,
            _LOOSE,
        ),
    )


def two_bands_round(
    ground: Side, outer: Side, inner: Side, reach: float = 3.5, *, is_clear: bool = False
) -> tuple[Ply, ...]:
    """A band of two layers closed round the edge, or its inner layer still clear of it."""
    loose: tuple[Point, ...] = ((-reach, -2), (-reach, -1), (WIDE - reach, -1))
    if is_clear:
        loose = ((5, -3.6), (5, -2.6), (11, -2.6))
    return (
        _ply(ground, ((-BODY, 0), (ground.width, 0)), right_at_left=True),
        Ply(
            outer.material,
            (
                (outer.width, 1),
                (0, 1),
                (0, 2),
                (BAND, 2),
                (BAND, 0.6),
                (BAND - NARROW, 0.6),
            ),
            True,
            _LOOSE,
        ),
        Ply(
            inner.material,
            (
                *reversed(loose),
                (BAND, loose[0][1]),
                (BAND, -0.6),
                (BAND - NARROW, -0.6),
            ),
            False,
            _LOOSE,
        ),
    )


def band_in_one(ground: Side, band: Side) -> tuple[Ply, ...]:
    """A band both of whose edges are in the seam, allowances pressed under the garment."""
    return (
        _ply(ground, ((-BODY, 0), (0, 0), (0, -1), (-ground.width, -1)), right_at_left=True),
        Ply(
            band.material,
            (
                (-band.width, -2),
                (1.8, -2),
                (1.8, 0),
                (BAND, 0),
                (BAND, -1),
                (3.6, -1),
                (3.6, -3),
                (-band.width, -3),
            ),
            True,
            (band.end, band.end),
        ),
    )


# -- straps, darts, pleats, gathers --------------------------------------------------------


def strap_laid(side: Side) -> Ply:
    """A strap folded right sides together."""
    way = ((NARROW, 0), (-BAND, 0), (-BAND, 1), (NARROW, 1))
    return Ply(side.material, way, False, _LOOSE)


def strap_closed(side: Side) -> Ply:
    """A strap with both its edges inside."""
    way = (
        (-WIDE, -1),
        (0, -1),
        (0, 0),
        (-BAND - 4, 0),
        (-BAND - 4, -3),
        (0, -3),
        (0, -2),
        (-WIDE, -2),
    )
    return Ply(side.material, way, False, _LOOSE)


def dart_sewn(side: Side) -> Ply:
    """A dart as it is sewn: folded, right sides together."""
    way = ((-BODY, 0), (ALLOWANCE, 0), (ALLOWANCE, 1), (-BODY, 1))
    return Ply(side.material, way, True, (End.GOES_ON, End.GOES_ON))


def dart_pressed(side: Side) -> Ply:
    """A dart pressed to one side, the outside up."""
    way = (
        (-BODY, 0),
        (-_WALL, 0),
        (-_WALL, -2),
        (ALLOWANCE, -2),
        (ALLOWANCE, -1),
        (_WALL, -1),
        (_WALL, 0),
        (BODY, 0),
    )
    return Ply(side.material, way, True, (End.GOES_ON, End.GOES_ON))


def pleat(side: Side) -> Ply:
    """A pleat laid to one side."""
    way = ((-BODY, 0), (NARROW, 0), (NARROW, -1), (-NARROW, -1), (-NARROW, -2), (BODY, -2))
    return Ply(side.material, way, True, (End.GOES_ON, End.GOES_ON))


def gathered(side: Side) -> Ply:
    """An edge drawn up, seen along the edge."""
    waves = tuple((x, 1.0 if place % 2 else -1.0) for place, x in enumerate(range(-20, 24, 4)))
    way = ((-BODY, 0.0), *waves, (BODY, 0.0))
    return Ply(side.material, way, True, (End.GOES_ON, End.GOES_ON))


# -- zips ----------------------------------------------------------------------------------


def tapes(material: Material, level: float, reach: float = 8.0) -> tuple[Ply, ...]:
    """The two tapes of a zip, its teeth in the middle."""
    return tuple(
        Ply(material, ((hand * 0.8, level), (hand * reach, level)), None, (End.TEETH, End.RAW))
        for hand in (-1, 1)
    )


def zip_lapped(left: Side, right: Side) -> tuple[Ply, ...]:
    """The two folded edges over a lapped zip: the left one reaches over the right one."""
    return (
        _ply(left, ((-BODY, 2), (3.5, 2), (3.5, 1), (-left.width, 1)), right_at_left=True),
        _ply(right, ((BODY, 0), (1.2, 0), (1.2, -1), (1.2 + right.width, -1)), right_at_left=False),
    )


def _other(side: bool | None) -> bool | None:
    return None if side is None else not side


def _ply(side: Side, way: tuple[Point, ...], *, right_at_left: bool | None) -> Ply:
    """A ply that begins where the cloth goes on, and ends in a cut edge."""
    sides = None if side.material.cloth is Cloth.NOTION else right_at_left
    return Ply(side.material, way, sides, (End.GOES_ON, side.end))
