"""Draw a stack from above: corners turned back, the row at its allowance, pins, names."""

from collections.abc import Iterator
from math import ceil
from typing import Final

from seqplan.base.measure import MM_PER_INCH, both
from seqplan.draw.cloth import Cloth
from seqplan.draw.figure import (
    PAPER,
    Area,
    Disc,
    Figure,
    Group,
    Line,
    Mark,
    Spot,
    Words,
)
from seqplan.draw.lay import Way
from seqplan.draw.leaders import LEADING, SIZE, Columns, Named, name_things, widest
from seqplan.draw.notch_marks import notch_marks
from seqplan.draw.section_picture import lay_key
from seqplan.draw.stack import Layer, Stack
from seqplan.draw.textwidth import text_width
from seqplan.draw.tones import cloth_marks
from seqplan.words.say import say

_MARGIN: Final = 5.0
_WIDTH: Final = 96.0
_HEIGHT: Final = 88.0
_STEP: Final = 5.0
_SCALE: Final = 3
_PT_PER_MM: Final = 72 / float(MM_PER_INCH)
_NEAREST: Final = 8.5
"""3 mm on paper, so that 2 mm are left where a page shows the picture smaller."""
_USUAL_MM: Final = 15.0
"""How far a row is drawn from the edge where nobody says how far it is."""
_LABELS: Final = 66.0
_BEYOND: Final = 26.0
_TAPE: Final = 17.0
_TAPE_OUT: Final = 12.0
_STRAP: Final = 52.0
_ARROW: Final = 40.0
"""How wide a tape or strap is, how far a tape looks out, how long straps and arrows are."""
_MANY: Final = 4
"""From so many layers on their corners take up most of the picture."""
_PINS: Final = (0.2, 0.5, 0.8)
_PINS_AT_BAG: Final = (0.1, 0.9)
_CLEAR: Final = 0.09
"""No pin so near to a notch, in parts of the edge."""
_NOTCH: Final = 1.3
"""How large notches are, compared with those of the map."""
_LETTER: Final = 9.0
_BAG: Final = 32.0
"""How far the bag of a pocket looks out."""
_MOUTH: Final = (0.4, 0.66)
"""Where its mouth begins and ends, in parts of the edge."""
_ROUND: Final = 6.0
"""How much of its corners is cut off."""


def draw_stack(stack: Stack, title: str, words: str) -> Figure:
    """Draw a stack.

    Parameters
    ----------
    stack
        What is drawn.
    title, words
        Title and text for who cannot see it.
    """
    return _Drawing(stack).figure(title, words)


def layer_name(number: int, layer: Layer) -> str:
    """A layer as the picture names it: its number from the table up, its name, which side is up."""
    keys = {None: "picture-layer-bought", True: "picture-layer-right", False: "picture-layer-wrong"}
    return say(keys[layer.is_right_up], number=number, piece=layer.material.title)


class _Drawing:
    def __init__(self, stack: Stack) -> None:
        self.stack = stack
        self.names = [layer_name(n + 1, layer) for n, layer in enumerate(stack.layers)]
        self.column = widest(self.names, _LABELS)
        wide = [n for n, layer in enumerate(stack.layers) if layer.way is Way.LEVEL]
        self.across = [n for n, x in enumerate(stack.layers) if x.way is Way.ACROSS]
        self.place = {n: place for place, n in enumerate(wide)}
        self.count = len(wide)
        self.left = _MARGIN + self.column + 9 + _STEP * (self.count - 1)
        self.edge = self.left + _WIDTH
        self.top = _MARGIN + LEADING + 8
        self.bottom = self.top + _HEIGHT
        self.beyond = _BEYOND if stack.fold else 0.0
        self.out = _BAG if stack.bag else 0.0
        mm = float(stack.distance.mm) if stack.distance else _USUAL_MM
        self.is_enlarged = stack.distance is None or mm * _PT_PER_MM / _SCALE < _NEAREST
        self.row = self.edge - max(_NEAREST, mm * _PT_PER_MM / _SCALE)

    def figure(self, title: str, words: str) -> Figure:
        width = self.edge + max(self.beyond + (17 if self.stack.part else 10), self.out) + _MARGIN
        marks: list[Mark] = [*self._bag()]
        marks += [
            self._layer(n, self.place[n]) if n in self.place else self._tape(n)
            for n in range(len(self.stack.layers))
            if n not in self.across
        ]
        marks += [self._strap(n) for n in self.across]
        marks += [*self._pins(), *self._stitches(), *self._measure(), *self._bracket()]
        marks += self._notches()
        columns = Columns(
            _MARGIN + self.column,
            0,
            self.column,
            0,
            self.top - 4,
            self._lowest() + LEADING / 2,
        )
        named, down = name_things(self._named(), columns)
        key, low = lay_key(
            self._key(),
            _MARGIN,
            max(down, self._lowest() + 4) + 3,
            width - 2 * _MARGIN,
        )
        return Figure(ceil(width), ceil(low + _MARGIN), title, words, (*marks, *named, *key))

    # -- layers --------------------------------------------------------------------------

    def _cut(self, place: int) -> float:
        """How much of the corner of a layer is turned back."""
        if place == 0:
            return 0.0
        return {2: 40.0, 3: 26.0 * place, 4: 20.0 * place}.get(
            self.count, 64 / (self.count - 1) * place
        )

    def _corner(self, place: int) -> Spot:
        """The lower left corner of a layer; lower layers look out a little."""
        out = _STEP * (self.count - 1 - place)
        return self.left - out, self.bottom + out

    def _right(self, place: int) -> float:
        return self.edge + (self.beyond if place < self.count - 1 else 0)

    def _outline(self, place: int) -> tuple[Spot, ...]:
        (x, y), cut, right = self._corner(place), self._cut(place), self._right(place)
        if not cut:
            return ((x, self.top), (right, self.top), (right, y), (x, y))
        return ((x, self.top), (right, self.top), (right, y), (x + cut, y), (x, y - cut))

    def _lowest(self) -> float:
        """How far down the drawing reaches."""
        has_tapes = any(x.way in {Way.ALONG, Way.WITHIN} for x in self.stack.layers)
        return self._corner(0)[1] + (_TAPE_OUT if has_tapes else 0)

    def _strap(self, number: int) -> Group:
        """What is caught with an end only: hidden by the layers above it, so in dashes."""
        left, top, right, low = self._strap_at(number)
        way = ((right, top), (left, top), (left, low), (right, low))
        mark = Line(way, 1.1, (2.4, 1.8))
        return Group((mark,), "hidden", self.stack.layers[number].material.key)

    def _strap_at(self, number: int) -> tuple[float, float, float, float]:
        middle = self.top + _HEIGHT * (0.51 + 0.2 * self.across.index(number))
        return self.edge - _STRAP, middle - _TAPE / 2, self.edge, middle + _TAPE / 2

    def _tape(self, number: int) -> Group:
        """What is bought and lies along the edge; its end looks out below."""
        layer = self.stack.layers[number]
        left, low = self.edge - _TAPE, self._lowest()
        outline = ((left, self.top), (self.edge, self.top), (self.edge, low), (left, low))
        return Group(tuple(_cloth(outline, layer, flipped=False)), "layer", layer.material.key)

    def _layer(self, number: int, place: int) -> Group:
        layer = self.stack.layers[number]
        outline = self._outline(place)
        marks: list[Mark] = [*_cloth(outline, layer, flipped=False)]
        right = self._right(place)
        role = "edge" if place == self.count - 1 or not self.stack.fold else "edge-below"
        marks.append(Line((outline[1], (right, outline[2][1])), 1.6, role=role))
        if self.stack.fold and place == self.count - 1:
            marks.append(Line(((right - 2.2, self.top), (right - 2.2, outline[2][1])), 0.5))
        (x, y), cut = self._corner(place), self._cut(place)
        if cut:
            flap = ((x + cut, y), (x, y - cut), (x + cut, y - cut))
            marks += _cloth(flap, layer, flipped=True)
            marks += _letter((x + cut * 0.68, y - cut * 0.68), layer, flipped=True)
        marks += _letter(self._letter_spot(place), layer, flipped=False)
        side = {None: "", True: "R", False: "W"}[layer.is_right_up]
        return Group(tuple(marks), "layer", layer.material.key, side)

    def _letter_spot(self, place: int) -> Spot:
        (x, y), cut = self._corner(place), self._cut(place)
        if place == self.count - 1:
            return (self.left + self.row) / 2 + 8, self.top + _HEIGHT * (
                0.36 if self.count < 4 else 0.22
            )
        next_cut = self._cut(place + 1)
        if place == 0:
            return x + next_cut * 0.33, y - next_cut * 0.27
        return x + (cut + next_cut) / 2 + 2, y - 7

    def _mouth(self) -> tuple[float, float]:
        """From where to where the mouth of a pocket stays open."""
        start, end = _MOUTH
        return self.top + start * _HEIGHT, self.top + end * _HEIGHT

    def _bag(self) -> Iterator[Mark]:
        """The bag of a pocket, folded out over the edge; its ends lie beyond those of its mouth."""
        if self.stack.bag is None:
            return
        inset = self.edge - self.row
        start, end = self._mouth()
        high, low, right = start - inset, end + inset, self.edge + self.out
        outline = (
            (self.edge - 1, high),
            (right - _ROUND, high),
            (right, high + _ROUND),
            (right, low - _ROUND),
            (right - _ROUND, low),
            (self.edge - 1, low),
        )
        name = self.stack.bag.material
        yield Group(tuple(_cloth(outline, self.stack.bag, flipped=False)), "bag", name.key)
        yield Words((right, high - 3), name.title, SIZE, "end", role="label")

    def _named(self) -> list[Named]:
        spots = (
            self._named_spot(self.place[n]) if n in self.place else self._narrow_spot(n)
            for n in range(len(self.stack.layers))
        )
        return [Named(name, (spot,)) for name, spot in zip(self.names, spots, strict=True)]

    def _narrow_spot(self, number: int) -> Spot:
        if number in self.across:
            left, top, _, low = self._strap_at(number)
            return left + 2, (top + low) / 2
        return self.edge - _TAPE / 2, self._lowest() - _TAPE_OUT / 2

    def _named_spot(self, place: int) -> Spot:
        (x, y), cut = self._corner(place), self._cut(place)
        if place == self.count - 1:
            return x + 5, self.top + 16
        if place == 0:
            return x + 2.4, y - self._cut(1) * 0.62
        return x + 2.4, y - (cut + self._cut(place + 1)) / 2 - 2

    # -- row, pins, measures -------------------------------------------------------------

    def _ways(self) -> list[tuple[float, float]]:
        """From where to where the row runs, from the top down."""
        low = self.bottom
        if self.stack.bag is not None:
            start, end = self._mouth()
            return [(self.top, start), (end, low)]
        if not self.stack.part:
            return [(self.top, low)]
        third = (low - self.top) / 3
        if self.stack.is_gap:
            return [(self.top, self.top + third), (low - third, low)]
        return [(self.top, self.top + 2 * third)]

    def _stitches(self) -> Iterator[Mark]:
        for start, end in self._ways():
            yield Line(((self.row, start), (self.row, end)), 3.4, ink=PAPER)
            yield Line(((self.row, start), (self.row, end)), 1.7, (5, 2.6), role="stitch")
        yield from self._round_bag()
        start, end = self._ways()[0]
        x, tip = self.row - 9, min(end, start + _ARROW)
        yield Line(((x, start + 8), (x, tip)), 3.4, ink=PAPER)
        yield Line(((x, start + 8), (x, tip - 4)), 1.2, role="arrow")
        yield Area(((x - 3, tip - 6), (x + 3, tip - 6), (x, tip + 1)), "#000")

    def _round_bag(self) -> Iterator[Mark]:
        """The row where it leaves the seam and goes round the bag."""
        if self.stack.bag is None:
            return
        start, end = self._mouth()
        far = self.edge + self.out - (self.edge - self.row)
        way = ((self.row, start), (far, start), (far, end), (self.row, end))
        yield Line(way, 3.4, ink=PAPER)
        yield Line(way, 1.7, (5, 2.6), role="round-bag")

    def _pins(self) -> Iterator[Mark]:
        low = self.bottom
        notches = [share for share, _ in self.stack.notches]
        for share in _PINS if self.stack.bag is None else _PINS_AT_BAG:
            if any(abs(share - notch) < _CLEAR for notch in notches):
                continue
            y = self.top + share * (low - self.top)
            tip, head = (self.row - 5, y), (self.edge + 7, y)
            yield Line((tip, head), 2.2, ink=PAPER)
            yield Line((tip, head), 0.8, role="pin")
            yield Disc(head, 2.0, PAPER, 0.8)

    def _notches(self) -> Iterator[Mark]:
        """Where the notches of all layers lie on one another."""
        for share, marks in self.stack.notches:
            spot = complex(self.edge, self.top + share * (self.bottom - self.top))
            yield from notch_marks(spot, 1j, marks, _NOTCH)

    def _measure(self) -> Iterator[Mark]:
        y = self.top - 4
        yield Line(((self.row, y - 2.5), (self.row, y + 2.5)), 0.6)
        yield Line(((self.edge, y - 2.5), (self.edge, y + 2.5)), 0.6)
        yield Line(((self.row, y), (self.edge, y)), 0.6)
        words = both(self.stack.distance) if self.stack.distance else ""
        if words:
            yield Words((self.edge, y - 4), words, SIZE, "end", role="label")

    def _bracket(self) -> Iterator[Mark]:
        """What of the edge stays open, or is not sewn now."""
        if not self.stack.part:
            return
        ways = self._ways()
        start, end = ways[0][1], ways[1][0] if len(ways) > 1 else self.bottom
        x = self.edge + self.beyond + 12
        yield Line(((x, start), (x + 3, start), (x + 3, end), (x, end)), 1.1, role="open")

    # -- key -----------------------------------------------------------------------------

    def _key(self) -> list[tuple[str, list[Mark], float]]:
        items: list[tuple[str, list[Mark], float]] = []
        for is_right, words in ((True, "picture-right-side"), (False, "picture-wrong-side")):
            box: tuple[Spot, ...] = ((0, -5), (15, -5), (15, 5), (0, 5))
            layer = Layer(self.stack.layers[0].material._replace(cloth=Cloth.SHELL), is_right)
            sample = [
                *_cloth(box, layer, flipped=False),
                *_letter((7.5, 0), layer, flipped=False, size=SIZE),
            ]
            items.append((say(words), sample, 15))
        order = list(Cloth)
        kinds = sorted({x.material.cloth for x in self.stack.layers}, key=order.index)
        if set(kinds) - {Cloth.SHELL}:
            for kind in kinds:
                box = ((0, -4), (15, -4), (15, 4), (0, 4))
                layer = Layer(self.stack.layers[0].material._replace(cloth=kind), True)
                items.append(
                    (say(f"picture-cloth-{kind.value}"), [*_cloth(box, layer, flipped=False)], 15)
                )
        if self.stack.notches:
            notch = [Line(((4, -5), (4, 5)), 1.6), *notch_marks(4 + 0j, 1j, 1, _NOTCH)]
            items.append((say("picture-notches-meet"), notch, 6))
        if self.stack.part:
            bracket = Line(((0, -4), (3, -4), (3, 4), (0, 4)), 1.1)
            items.append((self.stack.part, [bracket], 4))
        if self.is_enlarged:
            items.append((say("picture-not-to-scale"), [], -3))
        return items


def _letter(spot: Spot, layer: Layer, *, flipped: bool, size: float = _LETTER) -> Iterator[Mark]:
    """R or W on a patch of paper."""
    if layer.is_right_up is None:
        return
    is_right = layer.is_right_up != flipped
    letter = say("picture-right-letter" if is_right else "picture-wrong-letter")
    half = text_width(letter, size, bold=True) / 2 + 0.8
    x, y = spot
    rise = size * 0.42
    yield Area(
        (
            (x - half, y - rise - 0.6),
            (x + half, y - rise - 0.6),
            (x + half, y + rise + 0.4),
            (x - half, y + rise + 0.4),
        )
    )
    yield Words((x, y + size * 0.35), letter, size, "middle", is_bold=True, role="side")


def _cloth(outline: tuple[Spot, ...], layer: Layer, *, flipped: bool) -> Iterator[Mark]:
    is_right = layer.is_right_up is None or layer.is_right_up != flipped
    return cloth_marks(outline, layer.material.cloth, is_right=is_right)
