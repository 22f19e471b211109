"""Which pictures a step is shown with.

One picture for every major operation, in their order; what is added stands out in it, and the way
in which it is joined can be seen (Agrawala et al., "Designing effective step-by-step assembly
instructions", ACM Transactions on Graphics 22(3), 2003). So:

1. Layers that are joined: the stack, once for each different one. Mirror images share it.
2. What is put on the face of a piece: the piece.
3. The seam or edge as the step leaves it: the last section only, as the stacks show the way there.
4. Turning, closing a tube, setting in the round, threading, closing a gap, trying on: the unit in
   hand, as words fail there.
5. What the step before has shown already is left out, and so is a section that shows less than the
   unit.
6. A step with nothing of that, on all pieces at once: the map. Otherwise there is a reason why it
   has no picture.
"""

from collections.abc import Mapping, Sequence
from typing import Final, NamedTuple

from seqplan.base.ids import OpId
from seqplan.draw.figure import Figure
from seqplan.draw.map import View
from seqplan.draw.pictures import Artist, Kind, Sketch
from seqplan.model.entry import Verb
from seqplan.model.operation import Action
from seqplan.recipes.construction import Construction
from seqplan.words.say import say

_ASKED: Final = frozenset({Kind.STACK, Kind.PIECE, Kind.SECTION, Kind.UNIT})
_MOST_STACKS: Final = 2
_MOST_PIECES: Final = 2
_MOST_UNITS: Final = 2
_BESIDE_STEP: Final = View(width=200.0, largest=46.0)
"""A map that stands beside a step, and not on a page of its own."""
_ON_ALL: Final = frozenset({Action.CUT, Action.MARK})
"""What is done to many pieces while they lie apart."""
_SHOWN_WHOLE: Final = frozenset({Verb.TURN, Verb.FIT, Verb.INSPECT, Verb.CLOSE})
"""Verbs for which the unit in hand says all there is."""
_FREE: Final = "no-picture-do"
_IN_WORDS: Final = "no-picture-words"
_SKETCHED: Final = frozenset({_FREE, _IN_WORDS})
_WHY: Final[Mapping[Action, str]] = {
    Action.PRETREAT: "no-picture-wet",
    Action.WAIT: "no-picture-wait",
    Action.SEND_OUT: "no-picture-wait",
    Action.FIT: "no-picture-look",
    Action.INSPECT: "no-picture-look",
    Action.DO: _FREE,
    Action.OPEN: "no-picture-zip",
}


class Shown(NamedTuple):
    """The pictures of a step.

    Parameters
    ----------
    by_op
        The pictures of each operation that has any, in the order in which they are looked at.
    why_none
        Why there are none, in a sentence; empty where there are.
    is_sketched
        Whether a sketch by hand would say something: what is told in the designer's own words.
    """

    by_op: Mapping[OpId, tuple[Figure, ...]]
    why_none: str = ""
    is_sketched: bool = False

    @property
    def figures(self) -> tuple[Figure, ...]:
        """All of them."""
        return tuple(figure for figures in self.by_op.values() for figure in figures)


class _Offer(NamedTuple):
    """A picture that could be shown with an operation."""

    op: OpId
    figure: Figure


def choose_pictures(
    c: Construction, steps: Sequence[Sequence[OpId]], told: Mapping[OpId, str] | None = None
) -> tuple[Shown, ...]:
    """Choose and draw the pictures of every step.

    Parameters
    ----------
    c
        The garment.
    steps
        The operations of each step, in the order in which they are done.
    told
        What each operation is told with, if somebody has told them already.

    Returns
    -------
    tuple of Shown
        One for each step.
    """
    artist = Artist(c, told)
    found: list[Shown] = []
    for step in steps:
        before = found[-1].figures if found else ()
        offers = _new(_chosen(artist, step), before)
        by_op = {id_: tuple(f for op, f in offers if op == id_) for id_ in step}
        shown = {id_: figures for id_, figures in by_op.items() if figures}
        why = "" if shown else _why(c, step)
        found.append(Shown(shown, say(why) if why else "", is_sketched=why in _SKETCHED))
    return tuple(found)


def _chosen(artist: Artist, step: Sequence[OpId]) -> list[_Offer]:
    offered = [(id_, artist.do(id_, _ASKED)) for id_ in step]
    by_kind: dict[Kind, list[tuple[OpId, Sketch]]] = {
        kind: [(id_, sketch) for id_, found in offered for sketch in found.get(kind, ())]
        for kind in Kind
    }
    pieces = _different(by_kind[Kind.PIECE], _MOST_PIECES)
    units = _different(by_kind[Kind.UNIT][-_MOST_UNITS:], _MOST_UNITS)
    verbs = {artist.c.garment.entry[artist.c.op[id_].entry].verb for id_ in step}
    stacks: list[_Offer] = []
    if not (pieces and verbs == {Verb.PATCH_POCKET}):
        # A pocket in its place says more than layers that lie level.
        stacks = _different(by_kind[Kind.STACK], _MOST_STACKS)
    sections: list[_Offer] = []
    if by_kind[Kind.SECTION] and not (units and verbs <= _SHOWN_WHOLE):
        last = by_kind[Kind.SECTION][-1][0]
        sections = _different(
            [each for each in by_kind[Kind.SECTION] if each[0] == last], _MOST_STACKS
        )
    chosen = [*stacks, *pieces, *sections, *units]
    on_all = [id_ for id_ in step if artist.c.op[id_].action in _ON_ALL]
    if not chosen and on_all and artist.c.garment.pieces:
        chosen = [_Offer(on_all[0], artist.map(step, _BESIDE_STEP))]
    return chosen


def _different(sketches: Sequence[tuple[OpId, Sketch]], most: int) -> list[_Offer]:
    """Pictures of which none looks like an earlier one, the first of them."""
    found: list[_Offer] = []
    for op, sketch in sketches:
        if len(found) == most:
            break
        figure = sketch()
        if all(figure.marks != other.figure.marks for other in found):
            found.append(_Offer(op, figure))
    return found


def _new(offers: Sequence[_Offer], before: Sequence[Figure]) -> Sequence[_Offer]:
    """What the step before has not shown; all of it where nothing would be left."""
    new = [o for o in offers if all(o.figure.marks != other.marks for other in before)]
    return new or offers


def _why(c: Construction, step: Sequence[OpId]) -> str:
    keys = [_WHY[c.op[id_].action] for id_ in step if c.op[id_].action in _WHY]
    return keys[0] if keys else _IN_WORDS
