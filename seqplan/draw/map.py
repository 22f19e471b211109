"""The map: all pieces laid flat, with the state of every edge so far and this step's edges heavy.

It doubles as a state card: who puts the work down can see from it how far everything is.
"""

from collections.abc import Collection, Iterable, Iterator, Sequence
from math import ceil
from typing import Final, NamedTuple

from seqplan.base.ids import OpId
from seqplan.draw.figure import PAPER, Area, Disc, Figure, Group, Mark, Strokes, Words
from seqplan.draw.map_edges import edge_paths, laid_out
from seqplan.draw.map_lines import edge_marks, hatched, slit_marks
from seqplan.draw.map_piece import Cell, Sheet, Shown, draw_piece, flat_points
from seqplan.draw.svg import svg
from seqplan.draw.textwidth import text_width
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
_SAMPLE: Final = 26.0
_KEY: Final = 8.0
_KEY_LINE: Final = 13.0
_ON_WRONG_SIDE: Final = frozenset({Action.FUSE, Action.MARK})
"""What is done to the wrong side, so that the piece lies on its right side."""


class _Card(NamedTuple):
    """A piece, or copies of it that are alike so far."""

    piece: Piece
    copies: tuple[tuple[int, Half], ...]
    states: tuple[tuple[EdgeState, ...], ...]
    """Of the half that is described, and of its mirror image where it is cut on the fold."""

    @property
    def is_mirrored(self) -> bool:
        return all(half is Half.MIRRORED for _, half in self.copies)


def draw_map(c: Construction, work: Work, step: Collection[OpId] = ()) -> str:
    """Draw the map as SVG.

    Parameters
    ----------
    c
        The garment.
    work
        What has been done so far, the step itself included.
    step
        The operations of this step; their edges are drawn heavy.
    """
    return svg(map_figure(c, work, step))


def map_figure(c: Construction, work: Work, step: Collection[OpId] = ()) -> Figure:
    """Draw the map; equal work gives equal pictures."""
    return _Map(c, work, step).figure()


class _Map:
    def __init__(self, c: Construction, work: Work, step: Collection[OpId]) -> None:
        self._c = c
        self._work = work
        self._step = tuple(op for op in c.operations if op.id in step)
        self._wrong = {
            piece for op in self._step if op.action in _ON_WRONG_SIDE for piece in op.pieces
        }
        self._cards = [card for piece in c.garment.pieces for card in self._cards_of(piece)]

    def figure(self) -> Figure:
        cells = [draw_piece(self._sheet(card)) for card in self._cards]
        marks, low = _in_rows(cells)
        key, low = self._key(low + _GAP)
        return Figure(WIDTH, ceil(low + _MARGIN), self._title(), self._told(), (*marks, *key))

    # -- pieces ------------------------------------------------------------------------------

    def _cards_of(self, piece: Piece) -> Iterator[_Card]:
        """The copies of a piece, those together that are alike."""
        if not piece.edges:
            return
        by_states: dict[tuple[tuple[EdgeState, ...], ...], list[tuple[int, Half]]] = {}
        if piece.cut is Cut.FOLD:
            for copy in range(piece.copies):
                halves = (Half.DESCRIBED, Half.MIRRORED)
                states = tuple(self._states(piece, copy, half) for half in halves)
                by_states.setdefault(states, []).append((copy, Half.DESCRIBED))
        else:
            for copy, half in piece.halves():
                states = (self._states(piece, copy, half),)
                by_states.setdefault(states, []).append((copy, half))
        for states, copies in by_states.items():
            yield _Card(piece, tuple(copies), states)

    def _states(self, piece: Piece, copy: int, half: Half) -> tuple[EdgeState, ...]:
        step = [op.id for op in self._step]
        count = len(self._c.rings.pieces[piece.id].edges)
        return tuple(
            state_of(self._work, Segment(piece.id, copy, half.value, place), step)
            for place in range(count)
        )

    def _sheet(self, card: _Card) -> Sheet:
        piece = card.piece
        laid = laid_out(piece)
        ring = laid.whole()
        is_wrong = piece.id in self._wrong
        axis = laid.edges[self._first(laid.edges)][0][0]
        foot = laid.edges[-1 - self._first(laid.edges[::-1])][-1][-1]
        return Sheet(
            title=self._name(card),
            edges=tuple(self._shown(card, axis.real)),
            ring=ring,
            fold=(axis, foot) if laid.is_fold else (),
            letter=say("map-wrong-letter" if is_wrong else "map-right-letter"),
            is_wrong=is_wrong,
            is_mirrored=card.is_mirrored != is_wrong,
        )

    @staticmethod
    def _first(edges: Sequence[object]) -> int:
        """The place of the first edge that has a line."""
        return next(place for place, path in enumerate(edges) if path)

    def _shown(self, card: _Card, axis: float) -> Iterator[Shown]:
        """The edges of a card; those of a mirrored half bear names where they are otherwise."""
        split = self._c.rings.pieces[card.piece.id].edges
        paths = edge_paths(self._c, card.piece)
        is_named: set[tuple[str, EdgeState]] = set()
        for side, states in enumerate(card.states):
            for place, path in paths.items():
                edge, state = split[place], states[place]
                points = flat_points(path)
                if side:
                    points = tuple(complex(2 * axis - p.real, p.imag) for p in points)
                name = "" if (edge.name, state) in is_named else readable(edge.name)
                is_named.add((edge.name, state))
                copy, half = card.copies[0]
                mirrored = Half.MIRRORED if side else half
                segment = Segment(card.piece.id, copy, mirrored.value, place)
                is_cut = edge.is_slit and self._is_cut(segment)
                yield Shown(name, points, state, edge.is_slit, is_cut, bool(side))

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
        samples = [(self._side(is_wrong), words) for is_wrong, words in self._sides()]
        if any(state.is_active for state in states):
            samples.append((_line(EdgeState(Kind.RAW, is_active=True)), "map-key-active"))
        for kind in Kind:
            is_shown = kind is Kind.FOLD and any(c.piece.cut is Cut.FOLD for c in self._cards)
            if is_shown or any(state.kind is kind for state in states):
                samples.append((_line(EdgeState(kind)), f"map-key-{kind.value}"))
        if any(state.is_finished for state in states):
            samples.append((_line(EdgeState(Kind.RAW, is_finished=True)), "map-key-finished"))
        if any(self._is_uncut(segment) for segment in self._c.rings.segments):
            samples.append((slit_marks([0j, _SAMPLE + 0j], is_cut=False), "map-key-slit"))
        marks, low = _key_rows(samples, top)
        low += _KEY_LINE
        marks.append(Words((_MARGIN, low), say("map-not-to-scale"), _KEY, role="key"))
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
        return say("map-title", step=", ".join(names))

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


def _in_rows(cells: Iterable[Cell]) -> tuple[list[Mark], float]:
    """Lay cells side by side, and in further rows where there is no room left."""
    marks: list[Mark] = []
    left, top, low = _MARGIN, _MARGIN, _MARGIN
    for cell in cells:
        width = cell.box.right - cell.box.left
        if left > _MARGIN and left + width > WIDTH - _MARGIN:
            left, top = _MARGIN, low + _GAP
        shift = complex(left - cell.box.left, top - cell.box.top)
        marks += [moved(mark, shift) for mark in cell.marks]
        left += width + _GAP
        low = max(low, top + cell.box.bottom - cell.box.top)
    return marks, low


def _key_rows(samples: Sequence[tuple[list[Mark], str]], top: float) -> tuple[list[Mark], float]:
    """Samples with their words, one after the other."""
    marks: list[Mark] = []
    left, low = _MARGIN, top
    for sample, words in samples:
        text = say(words)
        width = _SAMPLE + 4 + text_width(text, _KEY)
        if left > _MARGIN and left + width > WIDTH - _MARGIN:
            left, low = _MARGIN, low + _KEY_LINE
        marks += [moved(mark, complex(left, low)) for mark in sample]
        marks.append(Words((left + _SAMPLE + 4, low + 0.34 * _KEY), text, _KEY, role="key"))
        left += width + _GAP
    return marks, low + 6


def moved(mark: Mark, by: complex) -> Mark:
    """A mark somewhere else."""
    x, y = by.real, by.imag
    if isinstance(mark, Group):
        return mark._replace(marks=tuple(moved(inner, by) for inner in mark.marks))
    if isinstance(mark, Strokes):
        strokes = tuple(((a[0] + x, a[1] + y), (b[0] + x, b[1] + y)) for a, b in mark.strokes)
        return mark._replace(strokes=strokes)
    if isinstance(mark, Words):
        return mark._replace(spot=(mark.spot[0] + x, mark.spot[1] + y))
    if isinstance(mark, Disc):
        return mark._replace(centre=(mark.centre[0] + x, mark.centre[1] + y))
    return mark._replace(points=tuple((px + x, py + y) for px, py in mark.points))
