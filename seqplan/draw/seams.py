"""Sections of seams, in every state between the first row and the last press."""

from enum import Enum, auto
from typing import Final

from seqplan.base.ids import PieceId
from seqplan.draw import folds
from seqplan.draw.cloth import End, Material, Ply, Section, Stitch
from seqplan.draw.folds import ALLOWANCE, NARROW, WIDE, Caught, Side
from seqplan.draw.lay import Way, layers, lower_and_upper
from seqplan.draw.subject import RowSpec, Subject
from seqplan.model.entry import SeamKind
from seqplan.model.operation import Action, Operation
from seqplan.model.piece import Hand
from seqplan.tell.names import readable
from seqplan.tell.pressing import BODY, is_called, pressed_side
from seqplan.words.say import say

_ABOVE: Final = 0.6
"""How far a row looks out above and below what it goes through."""
_SHORT: Final = 3.2
_BOUND: Final = 1
"""Levels that a binding takes up on each side of an allowance."""


def join(s: Subject) -> Section | None:
    """A seam as far as it has come; ``None`` where nothing is joined."""
    if s.main is None:
        return _before(s)
    if not layers(s):
        return None
    drawn = _OF_KIND.get(s.entry.seam)
    return drawn(s) if drawn else _Seam(s).section()


def _before(s: Subject) -> Section | None:
    """An edge that is treated before the seam: finished, or pressed under."""
    if not s.here:
        return None
    side = s.side(s.here[0])
    if s.done(Action.FINISH):
        side = side._replace(end=End.FINISHED)
    if s.done(Action.PRESS_UNDER):
        return Section((folds.folded_under(side),), is_outside_up=True)
    return Section((folds.flat(side, 0, right_up=True),)) if s.done(Action.FINISH) else None


# -- plain, pressed, faced, enclosed -------------------------------------------------------


class _Lies(Enum):
    """How a seam lies: as sewn, turned, opened out, or pressed to one of its sides."""

    TOGETHER = auto()
    TURNED = auto()
    OPEN = auto()
    LOWER = auto()
    UPPER = auto()


class _Seam:
    """A seam of two sides, and what each state of it needs to know."""

    def __init__(self, s: Subject) -> None:
        self.s = s
        found = layers(s)
        self.lower, self.upper = found[0].side, found[-1].side
        self.laid = found
        self._trim()
        self._finish()

    @property
    def middle(self) -> tuple[Caught, ...]:
        """What is caught, from the table up, as it is sewn."""
        return tuple(
            Caught(layer.side, layer.is_right_up, layer.way is Way.WITHIN)
            for layer in self.laid[1:-1]
        )

    @property
    def _is_turned(self) -> bool:
        """Whether both sides lie back from what is caught between them: one is the inner one."""
        inner = [self.s.is_inner(self.piece(side)) for side in (self.lower, self.upper)]
        return bool(self.middle) and any(inner)

    @property
    def _will_be_turned(self) -> bool:
        """Whether an operation turns it, or the pieces on both sides, at some time."""
        both = {self.piece(side) for side in (self.lower, self.upper)}
        turning = self.s.c.acting(Action.TURN)
        return self.s.will(Action.TURN) or any(both <= op.pieces for op in turning)

    def outer_first(self) -> tuple[Side, Side]:
        """The two sides, that which goes to the inside last; else that which is named first."""
        inner = [x for x in (self.upper, self.lower) if self.s.is_inner(self.piece(x))]
        if inner == [self.upper]:
            return self.lower, self.upper
        return self.upper, self.lower

    def piece(self, side: Side) -> PieceId:
        """The piece that a side is cut from."""
        return PieceId(side.material.key.removesuffix("~"))

    def _trim(self) -> None:
        is_graded = self.s.done(Action.GRADE) or (
            self.s.done(Action.TRIM) and self.s.entry.seam in {SeamKind.FACED, SeamKind.ENCLOSED}
        )
        if not is_graded and not self.s.done(Action.TRIM):
            return
        outer, inner = self.outer_first()
        wide = WIDE if is_graded else NARROW
        cut = {
            outer.material: outer._replace(width=wide),
            inner.material: inner._replace(width=NARROW),
        }
        self.lower, self.upper = cut[self.lower.material], cut[self.upper.material]

    def _finish(self) -> None:
        """Edges that are finished each by itself; two that are finished as one bear a row."""
        if self.is_finished_as_one or self.s.entry.seam is SeamKind.BOUND:
            return
        if self.s.done(Action.FINISH):
            self.lower = self.lower._replace(end=End.FINISHED)
            self.upper = self.upper._replace(end=End.FINISHED)

    @property
    def is_finished_as_one(self) -> bool:
        """Whether both edges are finished together."""
        return self.s.entry.seam is SeamKind.FINISHED_TOGETHER

    def _overlocked(self, edge: float, top: float, bottom: float) -> list[RowSpec]:
        """The row that finishes both edges as one."""
        if not self.is_finished_as_one:
            return []
        x = edge - 3.5
        return [(Stitch.OVERLOCK, self.s.done(Action.FINISH), (x, top, x, bottom, edge))]

    def _seam_row(self, place: tuple[float, float, float, float], edge: float) -> RowSpec:
        """The row that makes the seam."""
        if self.s.entry.seam is SeamKind.OVERLOCKED:
            return (Stitch.OVERLOCK, self.s.main, (*place, edge))
        return (Stitch.SEAM, self.s.main, place)

    # -- states --------------------------------------------------------------------------

    @property
    def direction(self) -> _Lies:
        """How it lies now: together, turned, open, or to the side of the lower or the upper."""
        s = self.s
        if s.entry.id in s.work.turned:
            return _Lies.TURNED
        if not s.done(Action.PRESS):
            return self._unpressed()
        if s.entry.seam is SeamKind.ENCLOSED:
            is_back = self._is_turned and not self._will_be_turned
            return _Lies.TURNED if is_back else _Lies.TOGETHER
        if self._is_turned:
            return _Lies.TURNED
        return self._pressed()

    def _unpressed(self) -> _Lies:
        s = self.s
        if s.done(Action.TOPSTITCH):
            return (
                _Lies.TURNED
                if self._is_turned or s.entry.seam is SeamKind.ENCLOSED
                else _Lies.UPPER
            )
        return self._towards_facing() if s.done(Action.UNDERSTITCH) else _Lies.TOGETHER

    def _pressed(self) -> _Lies:
        s = self.s
        if s.entry.press_to:
            return self.towards(s.entry.press_to)
        if s.entry.seam is SeamKind.FACED or s.will(Action.UNDERSTITCH):
            return self._towards_facing()
        is_open = s.entry.seam in {SeamKind.PRESSED_OPEN, SeamKind.PLAIN}
        return _Lies.OPEN if is_open else self.by_custom()

    def by_custom(self) -> _Lies:
        """The side towards which it is pressed where the author names none."""
        side = pressed_side(self.s.c, self.s.entry)
        is_lower = self.piece(self.lower) in side and self.piece(self.upper) not in side
        return _Lies.LOWER if is_lower else _Lies.UPPER

    def _towards_facing(self) -> _Lies:
        return _Lies.LOWER if self.outer_first()[1].material == self.lower.material else _Lies.UPPER

    def towards(self, words: str) -> _Lies:
        """The side that the author's words mean; the upper one where they mean neither."""
        word = words.casefold().removeprefix("the ")
        if word == "open":
            return _Lies.OPEN
        away = word.startswith("away from ")
        if word in {hand.value for hand in Hand}:
            lower, upper = map(self.s.hand, lower_and_upper(self.s) or self.s.here)
            is_lower = lower is Hand(word) is not upper
            return _Lies.LOWER if is_lower else _Lies.UPPER
        name = readable(word.removeprefix("away from ").removeprefix("the "))
        is_lower = self._is_called(self.lower, name) and not self._is_called(self.upper, name)
        return _Lies.LOWER if is_lower != (away and self._is_either(name)) else _Lies.UPPER

    def _is_either(self, name: str) -> bool:
        return self._is_called(self.lower, name) or self._is_called(self.upper, name)

    def _is_called(self, side: Side, name: str) -> bool:
        """Whether a side bears a name; the body is what the other side is sewn to."""
        if name == BODY:
            return side.material == self.lower.material
        return is_called(self.s.c, self.piece(side), name)

    def section(self) -> Section:
        """The section in the state in which it is."""
        direction = self.direction
        if direction is _Lies.TOGETHER:
            return self._together()
        if direction is _Lies.TURNED:
            return self._turned()
        if direction is _Lies.OPEN and self.middle:
            direction = _Lies.UPPER
        return self._opened(direction)

    def _together(self) -> Section:
        s = self.s
        sides = [self.lower, *(one.side for one in self.middle), self.upper]
        ups = [layer.is_right_up for layer in self.laid]
        plies = folds.stacked(list(zip(sides, ups, strict=True)))
        top = len(plies) - 1 + _ABOVE
        edge = min(self.lower.width, self.upper.width)
        binding = s.done(Action.FINISH) if s.entry.seam is SeamKind.BOUND else None
        bound: tuple[Ply, ...] = ()
        if binding:
            bound = (folds.wrapped_end(self.binding, edge, len(plies), -1),)
        rows = s.rows(
            [
                self._seam_row((0, top, 0, -_ABOVE), edge),
                *self._overlocked(edge, top, -_ABOVE),
                (
                    Stitch.TOPSTITCHING,
                    binding,
                    (edge - 3, top + 1, edge - 3, -_ABOVE - 1),
                ),
            ]
        )
        return Section((*plies, *bound), rows)

    def _opened(self, direction: _Lies) -> Section:
        s = self.s
        left, right = self.lower, self.upper
        if direction is _Lies.LOWER:
            left, right = right, left
        binding = s.done(Action.FINISH) if s.entry.seam is SeamKind.BOUND else None
        room = _BOUND if binding else 0
        up = not s.is_wrong_together
        if direction is _Lies.OPEN:
            plies = folds.opened(left, right, room=room, right_up=up)
            level = -0.5 - room / 2
            seam = (-1.6, level, 1.6, level)
            bindings = self._bound_apart(left, right) if binding else ()
        else:
            between = self._between(direction)
            plies = folds.to_side(left, right, between, room=room, right_up=up)
            x, low = _SHORT + len(between), -2 - room - len(between) - _ABOVE
            seam = (x, -_ABOVE / 2 - 0.3 - room, x, low)
            bindings = self._bound_together(left) if binding else ()
        edge = min(left.width, right.width)
        finish = self._overlocked(edge, seam[1], seam[3]) if direction is not _Lies.OPEN else []
        made = self._seam_row(seam, edge)
        rows = s.rows([made, *finish, *self._on_top(direction, room, binding)])
        section = Section((*plies, *bindings), rows, is_outside_up=True)
        if s.is_wrong_together:
            section = section.upside_down()
        return section.the_other_way() if direction is _Lies.LOWER else section

    def _between(self, direction: _Lies) -> tuple[Caught, ...]:
        """What is caught, from the allowance next to the cloth down."""
        if direction is _Lies.LOWER:
            return tuple(one.turned_over() for one in self.middle)
        return self.middle[::-1]

    def _on_top(self, direction: _Lies, room: int, binding: Operation | None) -> list[RowSpec]:
        """Rows that are sewn once it lies open."""
        under, top = self.s.done(Action.UNDERSTITCH), self.s.done(Action.TOPSTITCH)
        over, low = _ABOVE, -2.0 - room - len(self.middle) - _ABOVE
        if direction is _Lies.OPEN:
            places = (-5.0, 5.0)
            return [
                row
                for x in places
                for row in (
                    (Stitch.TOPSTITCHING, top, (x, over, x, low + 1)),
                    (Stitch.TOPSTITCHING, binding, (1.4 * x, -_ABOVE, 1.4 * x, low)),
                )
            ]
        x = (3.4 if self._is_cut else 5.0) + len(self.middle)
        return [
            (Stitch.UNDERSTITCHING, under, (x, over, x, low)),
            (Stitch.TOPSTITCHING, top, (x + 0.5, over, x + 0.5, low)),
            (Stitch.TOPSTITCHING, binding, (7, -_ABOVE, 7, low - 1)),
        ]

    @property
    def _is_cut(self) -> bool:
        return min(self.lower.width, self.upper.width) < ALLOWANCE

    @property
    def binding(self) -> Material:
        """What the raw edges are bound with."""
        s = self.s
        if s.entry.partners:
            return s.material(s.entry.partners[0])
        if s.entry.notion is not None:
            return s.notion(s.entry.notion)._replace(cloth=self.lower.material.cloth)
        return Material("binding", say("picture-binding"))

    def _bound_together(self, left: Side) -> tuple[Ply, ...]:
        return (folds.wrapped_end(self.binding, left.width, -1, -4 - len(self.middle)),)

    def _bound_apart(self, left: Side, right: Side) -> tuple[Ply, ...]:
        one = Section((folds.wrapped_end(self.binding, right.width + 1, -1, -3),))
        other = Section((folds.wrapped_end(self.binding, left.width + 1, -1, -3),)).the_other_way()
        return (*one.plies, *other.plies)

    def _turned(self) -> Section:
        s = self.s
        outer, inner = self.outer_first()
        if outer.material == self.upper.material:
            middle = self.middle[::-1]
        else:
            middle = tuple(one.turned_over() for one in self.middle)
        plies = folds.turned(outer, inner, middle)
        last = -3.0 - len(middle)
        under, top = s.done(Action.UNDERSTITCH), s.done(Action.TOPSTITCH)
        x = -3.0 if self._is_cut and under is None else -5.5
        rows = s.rows(
            [
                (Stitch.SEAM, s.main, (-1.7, -_ABOVE, -1.7, last + _ABOVE)),
                (
                    Stitch.UNDERSTITCHING,
                    under,
                    (-3.2, last - _ABOVE, -3.2, -_ABOVE),
                ),
                (Stitch.TOPSTITCHING, top, (x, _ABOVE, x, last - _ABOVE)),
            ]
        )
        return Section(plies, rows, is_outside_up=True)


# -- seams of two rows ---------------------------------------------------------------------


def _french(s: Subject) -> Section:
    """The first row wrong sides together; then folded the other way, sewn again, and pressed."""
    found = layers(s)
    is_trimmed = s.done(Action.TRIM)
    width = NARROW if is_trimmed else WIDE
    lower, upper = (layer.side._replace(width=width) for layer in (found[0], found[-1]))
    enclose = s.done(Action.ENCLOSE)
    if enclose and s.done(Action.PRESS):
        rows = s.rows(
            [
                (Stitch.SEAM, s.main, (8.3, -1.5, 8.3, -3.5)),
                (Stitch.SEAM, enclose, (_SHORT, -0.5, _SHORT, -4 - _ABOVE)),
            ]
        )
        seam = _Seam(s)
        where = seam.towards(s.entry.press_to) if s.entry.press_to else seam.by_custom()
        if where is _Lies.LOWER:
            section = Section(folds.french_pressed(upper, lower), rows, is_outside_up=True)
            return section.the_other_way()
        return Section(folds.french_pressed(lower, upper), rows, is_outside_up=True)
    if s.done(Action.PRESS_OVER) or enclose:
        rows = s.rows(
            [
                (Stitch.SEAM, s.main, (-1.6, 2.5, -1.6, 0.5)),
                (Stitch.SEAM, enclose, (-7, 3 + _ABOVE, -7, -_ABOVE)),
            ]
        )
        return Section(folds.french_closed(upper, lower), rows)
    rows = s.rows([(Stitch.SEAM, s.main, (0, 1 + _ABOVE, 0, -_ABOVE))])
    return Section(folds.stacked([(lower, False), (upper, True)]), rows)


def _felled(s: Subject) -> Section:
    """Sewn, pressed to one side, the under allowance trimmed, the upper folded in and sewn down."""
    seam = _Seam(s)
    if not s.done(Action.PRESS, Action.TRIM, Action.PRESS_OVER, Action.ENCLOSE):
        return seam.section()
    direction = seam.towards(s.entry.press_to) if s.entry.press_to else seam.by_custom()
    left, right = seam.lower, seam.upper
    if direction is _Lies.LOWER:
        left, right = right, left
    wide = left._replace(width=ALLOWANCE)
    near = right._replace(width=NARROW if s.done(Action.TRIM) else ALLOWANCE)
    fell = s.done(Action.ENCLOSE)
    if s.done(Action.PRESS_OVER) or fell:
        plies = folds.felled(wide, near)
        rows = s.rows(
            [
                (Stitch.SEAM, s.main, (2.4, -1.5, 2.4, -3 - _ABOVE)),
                (Stitch.TOPSTITCHING, fell, (7.4, _ABOVE, 7.4, -3 - _ABOVE)),
            ]
        )
    else:
        plies = folds.to_side(wide, near)
        rows = s.rows([(Stitch.SEAM, s.main, (_SHORT, -0.6, _SHORT, -2 - _ABOVE))])
    section = Section(plies, rows, is_outside_up=True)
    if s.is_wrong_together:
        section = _other_side_up(section)
    return section.the_other_way() if direction is _Lies.LOWER else section


def _other_side_up(section: Section) -> Section:
    """The same seam sewn with wrong sides together: its allowances lie on the outside."""
    plies = tuple(p._replace(right_at_left=not p.right_at_left) for p in section.plies)
    return section._replace(plies=plies).upside_down()


def _lapped(s: Subject) -> Section:
    """One edge, pressed under, on the right side of the other."""
    found = layers(s)
    lower, upper = found[0].side, found[-1].side
    top = s.done(Action.TOPSTITCH)
    rows = s.rows(
        [
            (Stitch.TOPSTITCHING, s.main, (1.6, 2 + _ABOVE, 1.6, -_ABOVE)),
            (Stitch.TOPSTITCHING, top, (-2.5, 2 + _ABOVE, -2.5, -_ABOVE)),
        ]
    )
    return Section(folds.lapped(upper, lower), rows, is_outside_up=True)


_OF_KIND: Final = {
    SeamKind.FRENCH: _french,
    SeamKind.FLAT_FELLED: _felled,
    SeamKind.LAPPED: _lapped,
}
"""Seams that have shapes of their own."""
