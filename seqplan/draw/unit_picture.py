"""Draw the unit in hand: its outline, its seams so far, its openings, and what this step does."""

from collections.abc import Iterator, Sequence
from functools import cached_property
from math import ceil
from typing import Final, NamedTuple

from seqplan.base.ids import PieceId
from seqplan.draw.cloth import Cloth
from seqplan.draw.figure import (
    PAPER,
    TONE,
    Area,
    Disc,
    Figure,
    Group,
    Line,
    Mark,
    Spot,
    Strokes,
    Words,
)
from seqplan.draw.leaders import LEADING, SIZE, Columns, Named, name_things, widest
from seqplan.draw.map_lines import length_of, sampled
from seqplan.draw.section_picture import lay_key
from seqplan.draw.subject import CLOTH_OF
from seqplan.draw.textwidth import wrap
from seqplan.draw.tones import cloth_marks, hatching
from seqplan.draw.unit import Need, Opening, Unit
from seqplan.draw.unit_faces import Move, Points
from seqplan.draw.unit_lines import (
    between,
    bulged,
    chained,
    doubles_back,
    inner_spots,
    inside_of,
    middle_in,
    middle_of,
    room_in,
    spot_of,
    spots_of,
    way_there,
)
from seqplan.draw.unit_place import Placed, is_inside
from seqplan.model.garment import Garment
from seqplan.model.piece import Layer, Segment
from seqplan.tell.names import comma_list, readable
from seqplan.words.say import say

_LARGEST: Final = 108.0
_BAG: Final = 84.0
"""How large the unit is drawn, and a bag, which is plain enough to be read when it is smaller."""
_MARGIN: Final = 5.0
_COLUMN: Final = 46.0
_BESIDE: Final = 13.0
"""Between the drawing and the names beside it."""
_ASKEW: Final = 0.3
"""How far the ends of the far rim of an opening may lie off, in parts of its width."""
_SHORTEST: Final = 3.0
_LETTER: Final = 9.0
_STITCHES: Final = (3.0, 2.0)
_HEAVY: Final = 2.6


def draw_unit(unit: Unit, garment: Garment, title: str, words: str) -> Figure:
    """Draw a unit.

    Parameters
    ----------
    unit
        What is drawn.
    garment
        Whose it is.
    title, words
        Title and text for who cannot see it.
    """
    return _Drawing(unit, garment).figure(title, words)


def told_unit(unit: Unit, garment: Garment, words: str) -> str:
    """The same in words."""
    pieces = dict.fromkeys(garment.piece[one.face.piece].title for one in unit.placed)
    side = say("unit-right-out" if unit.is_right_out else "unit-wrong-out")
    told = say("unit-told", words=words, pieces=comma_list(list(pieces)), side=side)
    openings = [_names(opening) for opening in unit.openings]
    if unit.is_flat or not openings:
        return told
    return say("unit-told-open", told=told, openings="; ".join(openings))


class _Rim(NamedTuple):
    """The edge round an opening of a tube, the half that is near and the half behind it."""

    opening: Opening
    near: Points
    far: Points


class _Drawing:
    def __init__(self, unit: Unit, garment: Garment) -> None:
        self.unit = unit
        self.garment = garment
        names = [text for text, _ in self._texts()]
        self.column = widest(names, _COLUMN)
        self.left = _MARGIN + self.column + _BESIDE
        self.top = _MARGIN + 20
        self.placed, self.room = self._scaled()
        self.right = self.left + self.room.real

    def _scaled(self) -> tuple[list[Placed], complex]:
        """The faces on the canvas, and the room that they take; inside out they lie mirrored."""
        flip = 1 if self.unit.is_right_out != self.unit.is_from_behind else -1
        points = [p for one in self.unit.placed for p in one.face.outline]
        xs, ys = [p.real * flip for p in points], [p.imag for p in points]
        wide, tall = max(xs) - min(xs), max(ys) - min(ys)
        scale = (_BAG if self.unit.need is Need.BAG else _LARGEST) / max(wide, tall)
        corner = complex(self.left - min(xs) * scale, self.top - min(ys) * scale)
        if flip > 0:
            move = Move(complex(scale), corner)
        else:
            # Turned over about an upright line: over the level one, then half round.
            move = Move(complex(-scale), corner, is_over=True)
        placed = [one._replace(face=one.face.moved(move)) for one in self.unit.placed]
        return placed, complex(wide, tall) * scale

    def figure(self, title: str, words: str) -> Figure:
        rims = (point.imag for rim in self._open_rims for point in rim.far)
        low = max([self.top + self.room.imag, *rims])
        marks: list[Mark] = [self._face(one) for one in self._ordered() if one.is_far]
        marks += self._rims()
        for one in self._ordered():
            if not one.is_far:
                marks += [self._face(one), *self._seams(one)]
        marks += [*self._thread(), *self._now(), *self._gap_marks()]
        marks += [mark for one in self._fronts() for mark in self._letter(one)]
        columns = Columns(
            self.left - _BESIDE,
            self.right + _BESIDE,
            self.column,
            self.column,
            self.top - 2,
            max(low, self.top + 4 * LEADING),
        )
        named, down = name_things(self._named(), columns)
        is_two_sided = any(isinstance(m, Words) and m.anchor == "start" for m in named)
        width = self.right + _BESIDE + (self.column if is_two_sided else 0) + _MARGIN
        width = max(width, 170.0)
        key, low = lay_key(self._key(), _MARGIN, max(low + 10, down) + 3, width - 2 * _MARGIN)
        for line in self._remark(width - 2 * _MARGIN):
            low += LEADING
            key.append(Words((_MARGIN, low), line, SIZE, role="label"))
        return Figure(ceil(width), ceil(low + _MARGIN), title, words, (*marks, *named, *key))

    def _remark(self, width: float) -> tuple[str, ...]:
        """Through what the work is turned, or how it lies while it is sewn, in lines."""
        if self.unit.is_slipped_in:
            return wrap(say("unit-slipped-in"), width, SIZE)
        if not self.unit.through:
            return ()
        return wrap(say("unit-through", way=self.unit.through), width, SIZE)

    # -- faces ---------------------------------------------------------------------------

    def _ordered(self) -> list[Placed]:
        """From the back to the front: layers that go to the inside, what lies behind, the rest."""
        return sorted(
            self.placed,
            key=lambda one: (
                self.garment.piece[one.face.piece].layer is Layer.SHELL,
                not one.is_far,
            ),
        )

    def _fronts(self) -> list[Placed]:
        return [one for one in self._ordered() if not one.is_far and not self._is_hidden(one)]

    def _is_hidden(self, one: Placed) -> bool:
        """Whether other faces lie over the middle of it."""
        spot = middle_in(one.face.outline)
        after = self._ordered()
        later = after[after.index(one) + 1 :]
        return any(is_inside(spot, other.face.outline) for other in later)

    def _face(self, one: Placed) -> Group:
        piece = self.garment.piece[one.face.piece]
        is_right = self.unit.is_right_out != one.is_far
        outline = spots_of(one.face.outline)
        marks = tuple(cloth_marks(outline, CLOTH_OF[piece.layer], is_right=is_right, pen=0.8))
        side = "R" if is_right else "W"
        return Group(marks, "behind" if one.is_far else "face", piece.id, side)

    def _letter(self, one: Placed) -> Iterator[Mark]:
        x, y = spot_of(middle_in(one.face.outline))
        if room_in(one.face.outline) < 2 * _LETTER:
            return
        letter = say("picture-right-letter" if self.unit.is_right_out else "picture-wrong-letter")
        yield Disc((x, y), 6.4, PAPER, 0.5)
        yield Words((x, y + _LETTER * 0.35), letter, _LETTER, "middle", is_bold=True, role="side")

    # -- edges ---------------------------------------------------------------------------

    def _rims(self) -> Iterator[Mark]:
        """The far rim of each opening of a tube, seen through the opening."""
        for opening, near, far in self._open_rims:
            area = spots_of((*near, *far[::-1]))
            is_right = not self.unit.is_right_out
            marks: list[Mark] = [Area(area, PAPER if is_right else TONE)]
            if not is_right:
                marks.append(Strokes(tuple(hatching(area, (1, 1), 4.0)), 0.4))
            marks.append(Line(spots_of(far), 0.8))
            yield Group(tuple(marks), "opening", "/".join(opening.names))

    @cached_property
    def _open_rims(self) -> tuple[_Rim, ...]:
        found = ((each, self._near_rim(each)) for each in self.unit.openings)
        return tuple(_Rim(each, near[0], bulged(*near)) for each, near in found if near)

    def _near_rim(self, opening: Opening) -> tuple[Points, complex] | None:
        """The near half of the edge round an opening, and the direction out of the cloth.

        There is none where the far half does not lie behind it from end to end.
        """
        near = self._rim(opening, is_far=False)
        far = self._rim(opening, is_far=True)
        if near is None or far is None:
            return None
        line, inside = near
        chord = line[-1] - line[0]
        ends = min(
            max(abs(line[0] - a), abs(line[-1] - b))
            for a, b in ((far[0][0], far[0][-1]), (far[0][-1], far[0][0]))
        )
        if abs(chord) < _SHORTEST or ends > _ASKEW * abs(chord) + 2:
            return None
        normal = chord * 1j / abs(chord)
        middle = next(sampled(line, 1, length_of(line) / 2, 1.0))[0]
        is_out = ((middle - inside) * normal.conjugate()).real > 0
        return line, normal if is_out else -normal

    def _rim(self, opening: Opening, *, is_far: bool) -> tuple[Points, complex] | None:
        """The edge round an opening on one layer, and a spot inside the cloth."""
        lines: list[Points] = []
        inside: list[complex] = []
        for one in self.placed:
            for segment in opening.segments:
                if segment not in one.face.edges:
                    continue
                line = one.face.edges[segment].line
                is_both = one.face.is_folded and doubles_back(line)
                if is_both:
                    line = way_there(line)
                if is_both or one.lies_behind(segment) == is_far:
                    lines.append(line)
                    inside.append(middle_in(one.face.outline))
        chain = chained(lines) if lines else None
        return None if chain is None else (chain, sum(inside) / len(inside))

    def _seams(self, one: Placed) -> Iterator[Mark]:
        """The seams so far, as rows beside the edges of what lies in front."""
        if self._is_hidden(one):
            return
        for segment, edge in one.face.edges.items():
            if segment not in self.unit.sewn or segment in self.unit.active:
                continue
            if length_of(edge.line) > _SHORTEST and not one.lies_behind(segment):
                inner = inside_of(edge.line, one.face.outline)
                if all(is_inside(spot, one.face.outline) for spot in inner[:: len(inner) // 8 + 1]):
                    yield Line(spots_of(inner), 0.8, _STITCHES, role="seam")

    def _now(self) -> Iterator[Mark]:
        """What this step works on; where it cannot be seen, in dashes."""
        for segment, one in self._active():
            line = one.face.edges[segment].line
            dashes = (5.0, 4.0) if one.lies_behind(segment) else ()
            yield Line(spots_of(line), _HEAVY, dashes, is_round=not dashes, role="active")

    def _active(self) -> list[tuple[Segment, Placed]]:
        """What this step works on: in front where it can be seen there."""
        if self.unit.need is Need.GAP:
            return []
        return self._seen(sorted(self.unit.active))

    def _gap(self) -> Points | None:
        """The edge that has a gap; the longest part of it that can be seen."""
        lines = [one.face.edges[s].line for s, one in self._seen(sorted(self.unit.gaps))]
        return max(lines, key=length_of) if lines else None

    def _gap_marks(self) -> Iterator[Mark]:
        """What is left open, or closed now; with an arrow where the work is turned through it."""
        line = self._gap()
        if line is None:
            return
        total = length_of(line)
        ends = [next(sampled(line, 1, total * share, 1.0)) for share in (1 / 3, 2 / 3)]
        between = tuple(spot for spot, _ in sampled(line, 6, total / 3, 2 * total / 3))
        if self.unit.need is Need.GAP:
            yield Line(spots_of(between), _HEAVY, is_round=True, role="active")
        else:
            yield Line(spots_of(between), 3.4, ink=PAPER)
        strokes = tuple((spot_of(at - along * 4j), spot_of(at + along * 4j)) for at, along in ends)
        yield Strokes(strokes, 1.4)
        if self.unit.is_through_gap:
            yield from self._arrow(line)

    def _arrow(self, line: Points) -> Iterator[Mark]:
        """Out of the gap."""
        middle, along = next(sampled(line, 1, length_of(line) / 2, 1.0))
        owner = next(o for o in self.placed if any(e.line == line for e in o.face.edges.values()))
        out = along * 1j
        if is_inside(middle + out * 3, owner.face.outline):
            out = -out
        start, tip = middle - out * 13, middle + out * 10
        yield Line(spots_of((start, tip)), 1.4, role="arrow")
        head = (tip + out * 3, tip - out * 4 + along * 3.4, tip - out * 4 - along * 3.4)
        yield Area(spots_of(head), "#000")

    def _thread(self) -> Iterator[Mark]:
        """What is drawn through a casing."""
        if not self.unit.notion:
            return
        for segment, one in self._active():
            inner = inside_of(one.face.edges[segment].line, one.face.outline, 5.0)
            yield Line(spots_of(inner), 4.2, role="thread")
            yield Line(spots_of(inner), 2.8, ink=TONE)

    def _seen(self, segments: Sequence[Segment]) -> list[tuple[Segment, Placed]]:
        found = [(s, one) for s in segments for one in self.placed if s in one.face.edges]
        front = [(s, one) for s, one in found if not one.lies_behind(s)]
        return front or found

    # -- names ---------------------------------------------------------------------------

    def _texts(self) -> list[tuple[str, object]]:
        texts: list[tuple[str, object]] = [
            (self.garment.piece[one.face.piece].title, one.face.piece) for one in self.unit.placed
        ]
        texts += [(_names(opening), opening) for opening in self.unit.openings]
        return [*texts, (self._gap_name(), None), (self.unit.notion, None)]

    def _gap_name(self) -> str:
        if self.unit.is_through_gap:
            return say("unit-turn-through")
        return say("unit-gap-closed" if self.unit.need is Need.GAP else "unit-gap")

    def _named(self) -> list[Named]:
        found: dict[PieceId, list[Spot]] = {}
        for one in self._fronts():
            spots = inner_spots(one.face.outline)
            free = [s for s in spots if not self._is_over(s, one)]
            found.setdefault(one.face.piece, []).extend(map(spot_of, free[:2]))
        behind = [one for one in self._ordered() if one.is_far]
        for one in behind:
            seen = [s for s in inner_spots(one.face.outline) if not self._is_over(s, one)]
            if seen and one.face.piece not in found:
                found[one.face.piece] = [spot_of(seen[0])]
        things = [
            Named(self.garment.piece[id_].title, tuple(spots[:4]))
            for id_, spots in found.items()
            if spots
        ]
        things += self._named_openings()
        gap = self._gap()
        if gap is not None:
            things.append(Named(self._gap_name(), (spot_of(middle_of(gap)),)))
        if self.unit.notion:
            places = [
                spot_of(middle_of(inside_of(one.face.edges[s].line, one.face.outline, 5.0)))
                for s, one in self._active()
            ]
            things.append(Named(self.unit.notion, tuple(places)))
        return things

    def _is_over(self, spot: complex, one: Placed) -> bool:
        after = self._ordered()
        return any(is_inside(spot, x.face.outline) for x in after[after.index(one) + 1 :])

    def _named_openings(self) -> Iterator[Named]:
        for opening, near, far in self._open_rims:
            spots = [between(near, far, share) for share in (0.5, 0.3, 0.7)]
            yield Named(_names(opening), tuple(map(spot_of, spots)))

    # -- key -----------------------------------------------------------------------------

    def _key(self) -> list[tuple[str, list[Mark], float]]:
        items: list[tuple[str, list[Mark], float]] = []
        words = "unit-right-out" if self.unit.is_right_out else "unit-wrong-out"
        box = ((0.0, -4.5), (15.0, -4.5), (15.0, 4.5), (0.0, 4.5))
        sample = list(cloth_marks(box, Cloth.SHELL, is_right=self.unit.is_right_out))
        items.append((say(words), sample, 15))
        if self._active():
            items.append((say("unit-now"), [Line(((0, 0), (14, 0)), _HEAVY, is_round=True)], 14))
        if self.unit.need is Need.GAP:
            items.append((say("unit-now"), [Line(((0, 0), (14, 0)), _HEAVY, is_round=True)], 14))
        if any(segment not in self.unit.active for segment in self.unit.sewn):
            items.append((say("unit-seams"), [Line(((0, 0), (14, 0)), 0.8, _STITCHES)], 14))
        if self.unit.is_twice:
            items.append((say("unit-twice"), [], -3))
        items.append((say("picture-not-to-scale"), [], -3))
        return items


def _names(opening: Opening) -> str:
    return say("unit-open", edges=comma_list([readable(name) for name in opening.names]))
