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
_BESIDE_STEP: Final = View(width=260.0, largest=64.0)
"""A map that stands beside a step, and not on a page of its own."""
_ON_ALL: Final = frozenset({Action.CUT, Action.MARK})
"""What is done to many pieces while they lie apart."""
_SHOWN_WHOLE: Final = frozenset({Verb.TURN, Verb.FIT, Verb.INSPECT, Verb.CLOSE})
"""Verbs for which the unit in hand says all there is."""
_WHY: Final[Mapping[Action, str]] = {
    Action.PRETREAT: "no-picture-wet",
    Action.WAIT: "no-picture-wait",
    Action.SEND_OUT: "no-picture-wait",
    Action.FIT: "no-picture-look",
    Action.INSPECT: "no-picture-look",
    Action.DO: "no-picture-do",
    Action.OPEN: "no-picture-zip",
}


class Shown(NamedTuple):
    """The pictures of a step.

    Parameters
    ----------
    figures
        In the order in which they are looked at.
    why_none
        Why there are none, in a sentence; empty where there are.
    """

    figures: tuple[Figure, ...]
    why_none: str = ""


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
        figures = _new(_chosen(artist, step), before)
        found.append(Shown(figures, "" if figures else _why(c, step)))
    return tuple(found)


def _chosen(artist: Artist, step: Sequence[OpId]) -> list[Figure]:
    offered = [artist.do(id_, _ASKED) for id_ in step]
    by_kind: dict[Kind, list[Sketch]] = {
        kind: [sketch for found in offered for sketch in found.get(kind, ())] for kind in Kind
    }
    pieces = _different(by_kind[Kind.PIECE], _MOST_PIECES)
    units = _different(by_kind[Kind.UNIT][-_MOST_UNITS:], _MOST_UNITS)
    verbs = {artist.c.garment.entry[artist.c.op[id_].entry].verb for id_ in step}
    stacks: list[Figure] = []
    if not (pieces and verbs == {Verb.PATCH_POCKET}):
        # A pocket in its place says more than layers that lie level.
        stacks = _different(by_kind[Kind.STACK], _MOST_STACKS)
    sections: list[Figure] = []
    if not (units and verbs <= _SHOWN_WHOLE):
        last = [found[Kind.SECTION] for found in offered if Kind.SECTION in found][-1:]
        sections = _different([sketch for sketches in last for sketch in sketches], _MOST_STACKS)
    figures = [*stacks, *pieces, *sections, *units]
    is_on_all = any(artist.c.op[id_].action in _ON_ALL for id_ in step)
    if not figures and is_on_all and artist.c.garment.pieces:
        figures = [artist.map(step, _BESIDE_STEP)]
    return figures


def _different(sketches: Sequence[Sketch], most: int) -> list[Figure]:
    """Pictures of which none looks like an earlier one, the first of them."""
    found: list[Figure] = []
    for sketch in sketches:
        if len(found) == most:
            break
        figure = sketch()
        if all(figure.marks != other.marks for other in found):
            found.append(figure)
    return found


def _new(figures: Sequence[Figure], before: Sequence[Figure]) -> tuple[Figure, ...]:
    """What the step before has not shown; all of it where nothing would be left."""
    new = [f for f in figures if all(f.marks != other.marks for other in before)]
    return tuple(new or figures)


def _why(c: Construction, step: Sequence[OpId]) -> str:
    keys = [_WHY[c.op[id_].action] for id_ in step if c.op[id_].action in _WHY]
    return say(keys[0] if keys else "no-picture-words")
