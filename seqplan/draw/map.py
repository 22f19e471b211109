"""The map: all pieces laid flat, with the state of every edge so far and this step's edges heavy.

It doubles as a state card: who puts the work down can see from it how far everything is. All pieces
of a sheet are drawn at one scale, but for those that would be too small to be read.
"""

from collections.abc import Collection, Iterable, Iterator, Sequence
from math import ceil
from typing import Final, NamedTuple

from seqplan.base.ids import OpId, PieceId
from seqplan.draw.figure import PAPER, Area, Disc, Figure, Mark, Words, moved_by
from seqplan.draw.map_lines import edge_marks, hatched, slit_marks
from seqplan.draw.map_piece import (
    Cell,
    Sheet,
    Shown,
    draw_piece,
    letter_box,
    letter_marks,
)
from seqplan.draw.map_scale import fit
from seqplan.draw.notch_marks import notch_marks, piece_notches
from seqplan.draw.pattern import Pattern
from seqplan.draw.textwidth import text_width, wrap
from seqplan.draw.thing_marks import thing_marks, thing_sample
from seqplan.draw.things import Thing, ThingKind
from seqplan.model.operation import Action
from seqplan.model.piece import Cut, Half, Piece, Segment
from seqplan.recipes.construction import Construction
from seqplan.rehearse.edges import EdgeState, Kind, state_of
from seqplan.rehearse.work import Work
from seqplan.tell.names import readable
from seqplan.tell.step import tell_operation
from seqplan.words.say import say

WIDTH: Final = 480.0
"""Points across a map: what is left of A4 or Letter between its margins."""

_MARGIN: Final = 6.0
_GAP: Final = 12.0
_BESIDE: Final = 92.0
"""Points that names take up beside a strip."""
_SAMPLE: Final = 26.0
_KEY: Final = 8.0
_KEY_LINE: Final = 13.0
_LARGEST: Final = 88.0
"""Points of the longest side of all pieces."""
_ON_WRONG_SIDE: Final = frozenset({Action.FUSE, Action.MARK})
"""What is done to the wrong side, so that the piece lies on its right side."""


class View(NamedTuple):
    """What of the pieces is shown, and how large.

    Parameters
    ----------
    width, largest
        Points across the sheet, and of the longest side of all pieces.
    only
        The pieces that are shown; all of them if ``None``.
    things
        What lies on their faces; only edges that this step works on are named then.
    kind
        The end of the name of the title.
    """

    width: float = WIDTH
    largest: float = _LARGEST
    only: frozenset[PieceId] | None = None
    things: tuple[Thing, ...] = ()
    kind: str = "map"


class _Card(NamedTuple):
    """A piece, or copies of it that are alike so far."""

    piece: Piece
    copies: tuple[tuple[int, Half], ...]
    states: tuple[tuple[EdgeState, ...], ...]
    """Of the half that is described, and of its mirror image where it is cut on the fold."""

    @property
    def is_mirrored(self) -> bool:
        return all(half is Half.MIRRORED for _, half in self.copies)

    def bears(self, thing: Thing) -> bool:
        """Whether a thing on its piece lies on one of these copies."""
        is_whole = thing.half is None or self.piece.cut is Cut.FOLD
        return is_whole or any(half is thing.half for _, half in self.copies)


def draw_map(
    c: Construction, done: Iterable[OpId], step: Collection[OpId] = (), *, title: str = ""
) -> Figure:
    """Draw the map of the work after some operations: a card of its state.

    Parameters
    ----------
    c
        The garment.
    done
        What has been done so far, in its order, the step itself included.
    step
        The operations of this step; their edges are drawn heavy.
    title
        What it is called; the step where nobody says.
    """
    work = Work(c)
    for id_ in done:
        work.do(c.op[id_])
    figure = map_figure(c, work, step)
    return figure._replace(title=title) if title else figure


def map_figure(
    c: Construction,
    work: Work,
    step: Collection[OpId] = (),
    pattern: Pattern | None = None,
    view: View | None = None,
) -> Figure:
    """Draw the map of the work; equal work gives equal pictures.

    Parameters
    ----------
    c, work, step
        As for ``draw_map``, with the work itself in place of what has been done.
    pattern
        The pieces laid flat, for those who draw many maps of one garment.
    view
        What of them is shown; all of them on a whole page where nobody says.
    """
    return _Map(c, work, step, pattern or Pattern(c), view or View()).figure()


class _Map:
    def __init__(
        self,
        c: Construction,
        work: Work,
        step: Collection[OpId],
        pattern: Pattern,
        view: View,
    ) -> None:
        self._view = view
        self._c = c
        self._work = work
        self._step = tuple(op for op in c.operations if op.id in step)
        self._wrong = {
            piece for op in self._step if op.action in _ON_WRONG_SIDE for piece in op.pieces
        } | {thing.piece for thing in view.things if thing.is_inside}
        shown = {
            id_: piece
            for id_, piece in pattern.pieces.items()
            if view.only is None or id_ in view.only
        }
        self._drawn = fit(shown, view.largest, view.width - _BESIDE)
        pieces = (piece for piece in c.garment.pieces if piece.id in shown)
        self._cards = [card for piece in pieces for card in self._cards_of(piece)]

    def figure(self) -> Figure:
        cells = [draw_piece(self._sheet(card)) for card in self._cards]
        marks, low = _in_rows(cells, self._view.width)
        key, low = self._key(low + _GAP)
        width = self._view.width
        return Figure(width, ceil(low + _MARGIN), self._title(), self._told(), (*marks, *key))

    # -- pieces ------------------------------------------------------------------------------

    def _cards_of(self, piece: Piece) -> Iterator[_Card]:
        """The copies of a piece, those together that are alike; those with a thing by itself."""
        by_states: dict[tuple[tuple[tuple[EdgeState, ...], ...], bool], list[tuple[int, Half]]] = {}
        halves = {thing.half for thing in self._view.things if thing.piece == piece.id}
        apart = halves - {None} if piece.cut is not Cut.FOLD else set()
        if piece.cut is Cut.FOLD:
            for copy in range(piece.copies):
                states = tuple(self._states(piece, copy, half) for half in Half)
                by_states.setdefault((states, False), []).append((copy, Half.DESCRIBED))
        else:
            for copy, half in piece.halves():
                states = (self._states(piece, copy, half),)
                if not apart or None in halves or half in apart:
                    by_states.setdefault((states, half in apart), []).append((copy, half))
        is_single = any(t.is_single for t in self._view.things if t.piece == piece.id)
        for (states, _), copies in by_states.items():
            yield _Card(piece, tuple(copies[:1] if is_single else copies), states)
            if is_single:
                return

    def _states(self, piece: Piece, copy: int, half: Half) -> tuple[EdgeState, ...]:
        step = [op.id for op in self._step]
        count = len(self._c.rings.pieces[piece.id].edges)
        return tuple(
            state_of(self._work, Segment(piece.id, copy, half.value, place), step)
            for place in range(count)
        )

    def _sheet(self, card: _Card) -> Sheet:
        sized, is_larger = self._drawn[card.piece.id]
        is_wrong = card.piece.id in self._wrong
        name = self._name(card)
        return Sheet(
            title=say("map-piece-larger", piece=name) if is_larger else name,
            edges=tuple(self._shown(card)),
            ring=sized.ring,
            fold=sized.fold,
            letter=say("map-wrong-letter" if is_wrong else "map-right-letter"),
            is_wrong=is_wrong,
            is_mirrored=card.is_mirrored != is_wrong,
            things=(
                *piece_notches(card.piece, self._c.rings.pieces[card.piece.id], sized),
                *(
                    mark
                    for thing in self._view.things
                    if thing.piece == card.piece.id and card.bears(thing)
                    for mark in thing_marks(thing, card.piece, sized)
                ),
            ),
        )

    def _shown(self, card: _Card) -> Iterator[Shown]:
        """The edges of a card; those of a mirrored half bear names where they are otherwise."""
        split = self._c.rings.pieces[card.piece.id].edges
        sized = self._drawn[card.piece.id].piece
        is_named: set[tuple[str, EdgeState]] = set()
        things = [thing for thing in self._view.things if thing.piece == card.piece.id]
        along = {thing.edge for thing in things}
        worked = {thing.edge for thing in things if thing.kind is not ThingKind.MARK}
        for side, states in enumerate(card.states):
            for place, line in sized.edges.items():
                edge, state, points = split[place], states[place], line
                if self._view.things:
                    state = state._replace(is_active=edge.name in worked)
                if side:
                    points = tuple(complex(2 * sized.axis - p.real, p.imag) for p in points)
                name = "" if (edge.name, state) in is_named else readable(edge.name)
                if self._view.things and edge.name not in along:
                    name = ""
                is_named.add((edge.name, state))
                copy, half = card.copies[0]
                mirrored = Half.MIRRORED if side else half
                segment = Segment(card.piece.id, copy, mirrored.value, place)
                is_cut = edge.is_slit and self._is_cut(segment)
                letters = tuple(say(f"map-letter-{key}") for key in state.letters)
                yield Shown(name, points, state, edge.is_slit, is_cut, bool(side), letters)

    def _is_uncut(self, segment: Segment) -> bool:
        edge = self._c.rings.pieces[segment.piece].edges[segment.place]
        return edge.is_slit and not self._is_cut(segment)

    def _is_cut(self, segment: Segment) -> bool:
        ops = self._c.on_segment.get(segment, ())
        is_bound = self._work.mark(segment, [Action.SET_ON]) is not None
        return is_bound or any(op.action is Action.SLASH and op.id in self._work.done for op in ops)

    def _name(self, card: _Card) -> str:
        count = len(card.copies)
        words = "map-piece-mirrored" if card.is_mirrored else "map-piece"
        if card.is_mirrored and card.piece.cut is not Cut.PAIR:
            words = "map-piece"
        if count > 1:
            words += "-copies"
        return say(words, piece=card.piece.title, count=count)

    # -- the key -----------------------------------------------------------------------------

    def _key(self, top: float) -> tuple[list[Mark], float]:
        """What the lines and letters mean, of those only that are there."""
        states = [s for card in self._cards for states in card.states for s in states]
        samples: list[tuple[list[Mark], str, str]] = [
            (self._side(is_wrong), say(words), "") for is_wrong, words in self._sides()
        ]
        worked = (t for t in self._view.things if t.edge and t.kind is not ThingKind.MARK)
        is_marked = any(worked) or not self._view.things
        if is_marked and any(state.is_active for state in states):
            samples.append((_line(EdgeState(Kind.RAW, is_active=True)), say("map-key-active"), ""))
        if any(card.piece.notches for card in self._cards):
            notch = list(notch_marks(complex(_SAMPLE / 2), 1 + 0j, 1))
            samples.append(([*_line(EdgeState(Kind.RAW)), *notch], say("map-key-notch"), ""))
        names = {thing.title: thing.kind for thing in self._view.things}
        samples += [(thing_sample(kind), words, "") for words, kind in names.items()]
        for kind in () if self._view.things else Kind:
            is_shown = kind is Kind.FOLD and any(c.piece.cut is Cut.FOLD for c in self._cards)
            if is_shown or any(state.kind is kind for state in states):
                letter = "".join(EdgeState(kind).letters)
                samples.append((_line(EdgeState(kind)), say(f"map-key-{kind.value}"), letter))
        if any(state.is_finished for state in states) and not self._view.things:
            finished = EdgeState(Kind.RAW, is_finished=True)
            words = say("map-key-finished")
            samples.append((_line(finished), words, "".join(finished.letters)))
        shown = (s for s in self._c.rings.segments if s.piece in self._drawn)
        if any(self._is_uncut(segment) for segment in shown):
            samples.append((slit_marks([0j, _SAMPLE + 0j], is_cut=False), say("map-key-slit"), ""))
        marks, low = _key_rows(samples, top, self._view.width)
        is_larger = any(self._drawn[card.piece.id].is_larger for card in self._cards)
        words = "map-one-scale-larger" if is_larger else "map-one-scale"
        is_all_over = {thing.kind for thing in self._view.things} == {ThingKind.INTERFACING}
        remark = say("map-places" if self._view.things else words)
        for line in () if is_all_over else wrap(remark, self._view.width - 2 * _MARGIN, _KEY):
            low += _KEY_LINE
            marks.append(Words((_MARGIN, low), line, _KEY, role="key"))
        return marks, low + 3

    def _sides(self) -> list[tuple[bool, str]]:
        found = {card.piece.id in self._wrong for card in self._cards}
        names = {False: "map-key-right", True: "map-key-wrong"}
        return [(is_wrong, names[is_wrong]) for is_wrong in sorted(found)]

    @staticmethod
    def _side(is_wrong: bool) -> list[Mark]:
        ring = [complex(0, -5), complex(_SAMPLE, -5), complex(_SAMPLE, 5), complex(0, 5)]
        marks: list[Mark] = [Area(tuple((p.real, p.imag) for p in ring), PAPER, 0.7)]
        if is_wrong:
            marks.append(hatched(ring))
        letter = say("map-wrong-letter" if is_wrong else "map-right-letter")
        middle = _SAMPLE / 2
        marks.append(Disc((middle, 0), 4.5, PAPER, 0.4))
        marks.append(Words((middle, 2.4), letter, 7.0, "middle", True, "side"))
        return marks

    # -- words -------------------------------------------------------------------------------

    def _title(self) -> str:
        if not self._step:
            return say("map-title-start")
        names = dict.fromkeys(readable(op.entry) for op in self._step)
        return say(f"map-title-{self._view.kind}", step=", ".join(names))

    def _told(self) -> str:
        """The same for who cannot see it."""
        words = [tell_operation(self._c, op, ()).text for op in self._step]
        pieces = ""
        for card in self._cards:
            told = self._told_piece(card)
            pieces = say("map-told-and", one=pieces, other=told) if pieces else told
        return say("map-told", words=" ".join(words), pieces=pieces)

    def _told_piece(self, card: _Card) -> str:
        split = self._c.rings.pieces[card.piece.id].edges
        edges = dict.fromkeys(
            self._told_edge(split[place].name, state)
            for states in card.states
            for place, state in enumerate(states)
        )
        side = "map-key-wrong" if card.piece.id in self._wrong else "map-key-right"
        return say("map-told-piece", piece=self._name(card), side=say(side), edges=", ".join(edges))

    @staticmethod
    def _told_edge(name: str, state: EdgeState) -> str:
        told = say(f"map-told-{state.key}", edge=readable(name))
        return say("map-told-active", state=told) if state.is_active else told


def _line(state: EdgeState) -> list[Mark]:
    return edge_marks([0j, _SAMPLE + 0j], state, 1)


def _in_rows(cells: Iterable[Cell], across: float) -> tuple[list[Mark], float]:
    """Lay cells side by side, and in further rows where there is no room left."""
    marks: list[Mark] = []
    left, top, low = _MARGIN, _MARGIN, _MARGIN
    for cell in cells:
        width = cell.box.right - cell.box.left
        if left > _MARGIN and left + width > across - _MARGIN:
            left, top = _MARGIN, low + _GAP
        shift = complex(left - cell.box.left, top - cell.box.top)
        marks += [moved_by(mark, shift.real, shift.imag) for mark in cell.marks]
        left += width + _GAP
        low = max(low, top + cell.box.bottom - cell.box.top)
    return marks, low


def _key_rows(
    samples: Sequence[tuple[list[Mark], str, str]], top: float, across: float
) -> tuple[list[Mark], float]:
    """Samples with their letters and words, one after the other."""
    marks: list[Mark] = []
    left, low = _MARGIN, top
    for sample, text, state in samples:
        letter = say(f"map-letter-{state}") if state else ""
        box = letter_box(letter) + 4 if letter else 0.0
        width = _SAMPLE + 4 + box + text_width(text, _KEY)
        if left > _MARGIN and left + width > across - _MARGIN:
            left, low = _MARGIN, low + _KEY_LINE
        marks += [moved_by(mark, left, low) for mark in sample]
        if letter:
            marks += letter_marks(letter, left + _SAMPLE + 4, low)
        spot = (left + _SAMPLE + 4 + box, low + 0.34 * _KEY)
        marks.append(Words(spot, text, _KEY, role="key"))
        left += width + _GAP
    return marks, low + 6
