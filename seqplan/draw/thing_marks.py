"""Draw what lies on the face of a piece, at its schematic place."""

from collections.abc import Callable, Iterator, Mapping, Sequence
from itertools import pairwise
from typing import Final

from seqplan.draw.figure import INK, PAPER, TONE, Area, Disc, Line, Mark, Spot, Strokes
from seqplan.draw.map_lines import hatched, length_of, sampled, slit_marks
from seqplan.draw.pattern import Sized
from seqplan.draw.things import Thing, ThingKind
from seqplan.draw.unit_place import is_inside
from seqplan.model.piece import Cut, Half, Piece

_AT_FOLD: Final = 0.5
_INSET: Final = 8.0
"""Points from an edge to what lies along it."""
_FROM_EDGE: Final = {ThingKind.STRAP: 0.0, ThingKind.SLIP: 3.0}
_STRAP: Final = 26
"""Points of a strap that lies on a piece, where there is room for so many."""
_FROM_CLOSING: Final = 13.0
"""Points from the edge to the middle of a button or its hole."""
_FROM_END: Final = 10.0
"""Points from the end of an edge to what lies there."""


_ON_EACH_HALF: Final = frozenset(
    {ThingKind.MARK, ThingKind.POCKET, ThingKind.OPENING, ThingKind.SLIT}
)
"""What lies on either half of a piece that is cut on the fold, where nobody says on which."""
_BY_EDGES: Final = frozenset({ThingKind.STRAP, ThingKind.MARK})
"""What lies away from the fold, even on an edge that goes on over it."""


def thing_marks(thing: Thing, piece: Piece, sized: Sized) -> list[Mark]:
    """Draw a thing on a piece that lies right side up, the half that is described at its right."""
    if thing.kind is ThingKind.INTERFACING:
        return [_dots(sized.ring)]
    spots = list(_spots(thing, piece, sized))
    if thing.is_inwards and thing.kind is ThingKind.STRAP:
        return [mark for spot, along in spots for mark in _strap_within(spot, along, sized)]
    if thing.is_behind and thing.kind is ThingKind.STRAP:
        return [mark for spot, along in spots for mark in _strap_behind(spot, along)]
    return [mark for spot, along in spots for mark in _DRAWN[thing.kind](spot, along)]


def _spots(thing: Thing, piece: Piece, sized: Sized) -> Iterator[tuple[complex, complex]]:
    """Where it lies, each with the direction of the edge or of the longer side there."""
    lines = [line for place, line in sized.edges.items() if sized.names[place] == thing.edge]
    middle = _in_the_middle(thing, piece, sized, lines)
    if middle is not None:
        yield middle
        return
    if thing.is_at_start and lines:
        for flip in _flips(thing, piece):
            at = lines[0][0]
            yield _flipped(at, sized.axis) if flip else at, 1 + 0j
        return
    if thing.edge and lines:
        flips = _flips(thing, piece)
        for flip in flips:
            for spot, along in _at_edge(thing, sized, lines[0]):
                inwards = _FROM_EDGE.get(thing.kind, _INSET)
                at = spot + along * 1j * inwards
                # Its mirror image runs the other way, so that the cloth stays on the same hand.
                yield (_flipped(at, sized.axis), along.conjugate()) if flip else (at, along)
        return
    is_on_both = thing.kind in _ON_EACH_HALF and not thing.is_central
    for flip in _flips(thing, piece) if is_on_both else _flips(thing, piece)[:1]:
        for spot, along in _on_face(thing, piece, sized):
            yield (_flipped(spot, sized.axis), -along.conjugate()) if flip else (spot, along)


def _at_edge(
    thing: Thing, sized: Sized, line: Sequence[complex]
) -> Iterator[tuple[complex, complex]]:
    """Evenly along an edge, or near its end beside another one."""
    ends = [at for place, at in sized.edges.items() if sized.names[place] == thing.beside]
    if not thing.beside or not ends:
        return _along(line, thing.number)
    near = [min(abs(end - tip) for at in ends for end in at) for tip in (line[0], line[-1])]
    total = length_of(line)
    reach = min(_FROM_END, total / 2)
    share = reach if near[0] < near[1] else total - reach
    return sampled(line, 1, share, total)


def _in_the_middle(
    thing: Thing, piece: Piece, sized: Sized, lines: Sequence[Sequence[complex]]
) -> tuple[complex, complex] | None:
    """At the fold, where one thing lies along an edge that goes on over it."""
    is_one = thing.number == 1 and thing.half is None and thing.kind not in _BY_EDGES
    if piece.cut is not Cut.FOLD or not is_one or not lines:
        return None
    for end in (lines[0][0], lines[0][-1]):
        if abs(end.real - sized.axis) < _AT_FOLD:
            is_top = end.imag <= sum(p.imag for p in sized.ring) / len(sized.ring)
            return end + (_INSET if is_top else -_INSET) * 1j, 1 + 0j
    return None


def _flips(thing: Thing, piece: Piece) -> list[bool]:
    """Whether it lies on the half that is described, on its mirror image, or on both."""
    if piece.cut is not Cut.FOLD:
        return [False]
    return [False, True] if thing.half is None else [thing.half is Half.MIRRORED]


def _flipped(spot: complex, axis: float) -> complex:
    return complex(2 * axis - spot.real, spot.imag)


def _along(line: Sequence[complex], count: int) -> Iterator[tuple[complex, complex]]:
    total = length_of(line)
    reach = total / (2 * count)
    return sampled(line, count, reach, total - reach)


def _on_face(thing: Thing, piece: Piece, sized: Sized) -> Iterator[tuple[complex, complex]]:
    """On a strip along its middle, else down the edge at the fold or the centre, or one place."""
    width, height = sized.size
    left, top = min(p.real for p in sized.ring), min(p.imag for p in sized.ring)
    if piece.is_strip or max(width, height) > 3 * min(width, height):
        across = width > height
        start, end = (complex(left, top + height / 2), complex(left + width, top + height / 2))
        if not across:
            start, end = (complex(left + width / 2, top), complex(left + width / 2, top + height))
        is_held = _nearest(sized, start) in thing.sewn and _nearest(sized, end) not in thing.sewn
        for number in range(thing.number):
            share = 0.12 if thing.number == 1 else 0.1 + 0.8 * number / (thing.number - 1)
            share = 1 - share if thing.is_far != is_held else share
            if across:
                turned = [complex(p.imag, p.real) for p in sized.ring]
                spot = _across(turned, left + width * share, 0.5)
                yield complex(spot.imag, spot.real), 1 + 0j
            else:
                yield _across(sized.ring, top + height * share, 0.5), 1j
        return
    if thing.kind in {ThingKind.BUTTON, ThingKind.HOLE}:
        for number in range(thing.number):
            share = 0.22 + 0.64 * (number + 0.5) / thing.number
            yield _across(sized.ring, top + height * share, 0.1, _FROM_CLOSING), 1j
        return
    is_beside = piece.cut is Cut.FOLD and not thing.is_central
    at = _across(sized.ring, top + height * 0.32, 0.72 if is_beside else 0.5)
    yield at, 1 + 0j


def _nearest(sized: Sized, spot: complex) -> str:
    """The name of the edge whose middle is nearest to a spot."""
    middles = {place: next(iter(_along(line, 1)))[0] for place, line in sized.edges.items() if line}
    return sized.names[min(middles, key=lambda place: abs(middles[place] - spot))]


def _across(ring: Sequence[complex], level: float, share: float, inset: float = 0.0) -> complex:
    """A spot on a level, so far from the left end of the cloth there, and no nearer than that."""
    found = [
        one.real + (other.real - one.real) * (level - one.imag) / (other.imag - one.imag)
        for one, other in pairwise([*ring, ring[0]])
        if (one.imag <= level) != (other.imag <= level)
    ]
    left, right = min(found), max(found)
    return complex(left + min(max((right - left) * share, inset), (right - left) / 2), level)


def _at(spot: complex) -> Spot:
    return spot.real, spot.imag


def _box(spot: complex, along: complex, long: float, wide: float) -> tuple[Spot, ...]:
    one, other = along * long / 2, along * 1j * wide / 2
    return tuple(map(_at, (spot - one - other, spot + one - other, spot + one + other,
                           spot - one + other)))  # fmt: skip


def _dots(ring: Sequence[complex]) -> Strokes:
    strokes = hatched(ring, 4.0).strokes
    return Strokes(strokes, 1.2, (0.01, 4.0), is_round=True)


def _cross(spot: complex, _along_it: complex) -> list[Mark]:
    reach = 3.0 + 3.0j
    ends = ((spot - reach, spot + reach),
            (spot - reach.conjugate(), spot + reach.conjugate()))  # fmt: skip
    return [Strokes(tuple((_at(a), _at(b)) for a, b in ends), 1.4)]


def _slip(spot: complex, along: complex) -> list[Mark]:
    """Hand stitches along the edge, as in a section."""
    return [Line((_at(spot - along * 9), _at(spot + along * 9)), 1.3, (1.4, 2.0))]


def _button(spot: complex, _along_it: complex) -> list[Mark]:
    return [
        Disc(_at(spot), 3.6, PAPER, 1.1),
        Disc((spot.real - 1.1, spot.imag), 0.6),
        Disc((spot.real + 1.1, spot.imag), 0.6),
    ]


def _hole(spot: complex, _along_it: complex) -> list[Mark]:
    x, y = _at(spot)
    bars = (((x - 4, y), (x + 4, y)), ((x - 4, y - 2), (x - 4, y + 2)),
            ((x + 4, y - 2), (x + 4, y + 2)))  # fmt: skip
    return [Strokes(bars, 1.2)]


def _notion(spot: complex, along: complex) -> list[Mark]:
    return [Area(_box(spot, along, 11, 6), TONE, 1.1)]


def _strap(spot: complex, along: complex) -> list[Mark]:
    """With one end on the edge, the rest beyond it; turned round, the rest on the cloth."""
    outwards = along * -1j
    hold = _box(spot - outwards * 2.5, along, 6, 6)
    return [
        Area(_box(spot + outwards * 6, along, 9, 26), TONE, 1.1),
        Line((*hold, hold[0]), 0.9, (2, 1.2)),
    ]


def _strap_behind(spot: complex, along: complex) -> list[Mark]:
    """With one end hidden by the cloth, through which the row is seen."""
    outwards = along * -1j
    hold = _box(spot - outwards * 4, along, 6, 6)
    return [
        Area(_box(spot + outwards * 9.5, along, 9, 19), TONE, 1.1),
        Line((*hold, hold[0]), 0.9, (2, 1.2)),
    ]


def _strap_within(spot: complex, along: complex, sized: Sized) -> list[Mark]:
    """With its end level with the edge, the rest on the cloth; a row across holds it."""
    inwards = along * 1j
    inside = (n for n in range(_STRAP, 0, -1) if is_inside(spot + inwards * n, sized.ring))
    long = next(inside, _STRAP)
    row = (spot + inwards * 5 - along * 6, spot + inwards * 5 + along * 6)
    return [
        Area(_box(spot + inwards * (long / 2 - 1), along, 9, long), TONE, 1.1),
        Line(tuple(map(_at, row)), 1.2, (2.4, 1.4)),
    ]


def _pocket(spot: complex, _along_it: complex) -> list[Mark]:
    x, y = _at(spot)
    corners = ((x - 9, y - 9), (x + 9, y - 9), (x + 9, y + 11), (x - 9, y + 11))
    row = ((x - 7.4, y - 9), (x - 7.4, y + 9.4), (x + 7.4, y + 9.4), (x + 7.4, y - 9))
    return [Area(corners, PAPER, 1.4), Line(row, 0.9, (2.4, 1.4))]


def _opening(spot: complex, _along_it: complex) -> list[Mark]:
    x, y = _at(spot)
    rows = (((x - 12, y - 2.6), (x + 12, y - 2.6)), ((x - 12, y + 2.6), (x + 12, y + 2.6)))
    return [
        Strokes(rows, 1.3, (2.6, 1.4)),
        Line(((x - 12, y), (x + 12, y)), 0.5, ink=INK),
    ]


def _slit(spot: complex, _along_it: complex) -> list[Mark]:
    """Cut along the middle, and slantwise into the four corners."""
    x, y = _at(spot)
    corners = tuple(((x + 7 * s, y), (x + 12 * s, y + 2.6 * t)) for s in (-1, 1) for t in (-1, 1))
    cuts = (((x - 7, y), (x + 7, y)), *corners)
    return [*_opening(spot, 1 + 0j)[:1], Strokes(cuts, 1.6)]


def _nothing(_spot: complex, _along_it: complex) -> list[Mark]:
    """The slit itself is drawn as an edge."""
    return []


_DRAWN: Final[Mapping[ThingKind, Callable[[complex, complex], list[Mark]]]] = {
    ThingKind.MARK: _cross,
    ThingKind.BUTTON: _button,
    ThingKind.HOLE: _hole,
    ThingKind.NOTION: _notion,
    ThingKind.STRAP: _strap,
    ThingKind.POCKET: _pocket,
    ThingKind.TACK: _cross,
    ThingKind.SLIP: _slip,
    ThingKind.OPENING: _opening,
    ThingKind.SLIT: _slit,
    ThingKind.CUT: _nothing,
}


def thing_sample(kind: ThingKind) -> list[Mark]:
    """A thing for the key, round a spot 13 points from its left end."""
    middle = 13 + 0j
    if kind is ThingKind.INTERFACING:
        ring = [complex(0, -5), complex(26, -5), complex(26, 5), complex(0, 5)]
        return [Area(tuple(map(_at, ring)), PAPER, 0.7), _dots(ring)]
    if kind is ThingKind.CUT:
        return slit_marks([0j, 26 + 0j], is_cut=True)
    if kind is ThingKind.STRAP:
        return [Area(_box(middle, 1 + 0j, 22, 7), TONE, 1.1)]
    if kind is ThingKind.POCKET:
        return [Area(_box(middle, 1 + 0j, 12, 10), PAPER, 1.4)]
    return _DRAWN[kind](middle, 1 + 0j)
