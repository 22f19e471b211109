"""The pictures of all operations of an order, by their kinds, each as a picture and as SVG."""

from collections.abc import Callable, Collection, Iterator, Mapping, Sequence
from enum import Enum
from functools import cache, partial
from typing import Final

from seqplan.base.ids import OpId
from seqplan.draw.cloth import Pierced, Section
from seqplan.draw.corner import corner, draw_corner
from seqplan.draw.face import face_figure
from seqplan.draw.figure import Figure
from seqplan.draw.map import View, map_figure
from seqplan.draw.pattern import Pattern
from seqplan.draw.section import section
from seqplan.draw.section_picture import draw_section
from seqplan.draw.stack import Stack, stack
from seqplan.draw.stack_picture import draw_stack, layer_name
from seqplan.draw.subject import foci
from seqplan.draw.unit import Unit, need_of, unit
from seqplan.draw.unit_picture import draw_unit, told_unit
from seqplan.draw.unit_place import Placer
from seqplan.model.operation import Operation
from seqplan.recipes.construction import Construction
from seqplan.rehearse.work import Work
from seqplan.tell.names import comma_list, readable
from seqplan.tell.step import tell_operation
from seqplan.words.say import say, translated


class Kind(Enum):
    """What sort of picture it is; the value is its name on the command line and in file names."""

    STACK = "stack"
    """How layers are laid before they are joined, from above."""
    PIECE = "piece"
    """What is put on the face of a piece, or a corner that is sewn across."""
    SECTION = "section"
    """How a seam or an edge lies afterwards, cut across."""
    UNIT = "unit"
    """The unit in hand in outline."""
    MAP = "map"
    """All pieces flat, with the state of every edge."""


Pictures = Mapping[Kind, tuple[Figure, ...]]
"""The pictures of one operation, in the order of the kinds, those only that it has.

There are several of one kind where an operation does several different things of one kind, such as
setting on the two strips of a placket.
"""

Sketch = Callable[[], Figure]
"""A picture that can be drawn."""
Sketches = Mapping[Kind, tuple[Sketch, ...]]
Words = Callable[[], str]
"""What an operation is told with."""

EVERY_KIND: Final = frozenset(Kind)


class Artist:
    """Draws the operations of an order one after the other.

    Parameters
    ----------
    c
        The garment, of which nothing is sewn yet.
    told
        What each operation is told with in this order, if somebody has told them already.
    """

    def __init__(self, c: Construction, told: Mapping[OpId, str] | None = None) -> None:
        self.c = c
        self._told = told
        self.work = Work(c)
        self.pattern = Pattern(c)
        self._placer = Placer(c, self.pattern)

    def do(self, id_: OpId, kinds: Collection[Kind]) -> Sketches:
        """Do an operation, and offer the kinds of pictures that are asked for, but for maps.

        Those that say nothing about the operation are left out. Drawing takes longer than finding
        out what there is to draw, so that is left to whoever takes a picture.
        """
        c, work = self.c, self.work
        op, done = c.op[id_], tuple(work.done)

        @cache
        def words() -> str:
            return self._told[id_] if self._told else tell_operation(c, op, done).text

        strips = foci(c, op)
        laid = [stack(c, work, op, strip) for strip in strips] if Kind.STACK in kinds else []
        before = work.surface
        work.do(op)
        cut = [section(c, work, op, strip) for strip in strips] if Kind.SECTION in kinds else []
        piece = self._piece(op, words) if Kind.PIECE in kinds else None
        need = need_of(work, op, before) if Kind.UNIT in kinds else None
        in_hand = unit(work, op, need, self._placer) if need is not None else None
        found: dict[Kind, list[Sketch]] = {
            Kind.STACK: [partial(_stack_figure, one, op, words) for one in laid if one],
            Kind.PIECE: [partial(_same, piece)] if piece else [],
            Kind.SECTION: [partial(_section_figure, one, op, words) for one in cut if one],
            Kind.UNIT: [partial(_unit_figure, in_hand, c, op, words)] if in_hand else [],
        }
        return {kind: tuple(sketches) for kind, sketches in found.items() if sketches}

    def _piece(self, op: Operation, words: Words) -> Figure | None:
        boxed = corner(self.c, op)
        if boxed is not None:
            return draw_corner(boxed, say("picture-title-corner", step=_title(op)), words())
        return face_figure(self.c, self.work, [op.id], self.pattern)

    def map(self, step: Collection[OpId], view: View | None = None) -> Figure:
        """Draw the map of the work as it is now, the edges of a step marked."""
        return map_figure(self.c, self.work, step, self.pattern, view)


def draw_order(
    c: Construction, order: Sequence[OpId], kinds: Collection[Kind] = EVERY_KIND
) -> Mapping[OpId, Pictures]:
    """Draw every operation of an order that can be drawn.

    Parameters
    ----------
    c
        The garment.
    order
        All its operations; equal orders give equal pictures.
    kinds
        What to draw. A map stands with the last of some operations of one entry in a row.
    """
    artist = Artist(c)
    found: dict[OpId, Pictures] = {}
    for run in _runs(c, order):
        for id_ in run:
            found[id_] = {
                kind: tuple(sketch() for sketch in sketches)
                for kind, sketches in artist.do(id_, kinds).items()
            }
        if Kind.MAP in kinds and c.garment.pieces:
            found[run[-1]] = {**found[run[-1]], Kind.MAP: (artist.map(run),)}
    return {id_: pictures for id_, pictures in found.items() if pictures}


def _runs(c: Construction, order: Sequence[OpId]) -> Iterator[list[OpId]]:
    """Operations of one entry that stand together."""
    run: list[OpId] = []
    for id_ in order:
        if run and c.op[run[-1]].entry != c.op[id_].entry:
            yield run
            run = []
        run.append(id_)
    if run:
        yield run


def named_pictures(
    c: Construction, order: Sequence[OpId], kinds: Collection[Kind] = EVERY_KIND
) -> Mapping[str, Figure]:
    """Each picture by the name of its file without its ending, which holds nothing that could hurt.

    A name is made of the place of the operation in the order, its name, and what is drawn.
    """
    pictures = draw_order(c, order, kinds)
    return {
        f"{place:03}-{_file_name(id_)}-{kind.value}{number}": figure
        for place, id_ in enumerate(order, 1)
        for kind, figures in pictures.get(id_, {}).items()
        for number, figure in zip(("", *range(2, len(figures) + 1)), figures, strict=True)
    }


def _file_name(id_: OpId) -> str:
    """The name of an operation in small letters, digits and hyphens.

    >>> _file_name(OpId("Side seams/press"))
    'side-seams-press'
    """
    kept = "".join(x if x.isascii() and x.isalnum() else "-" for x in id_.lower())
    return "-".join(part for part in kept.split("-") if part) or "step"


def _title(op: Operation) -> str:
    if not op.part:
        return readable(op.entry)
    part = translated("part", readable(op.part))
    return say("picture-step-part", entry=readable(op.entry), part=part)


def _same(figure: Figure) -> Figure:
    """A picture that had to be drawn at once, as the work goes on."""
    return figure


def _unit_figure(found: Unit, c: Construction, op: Operation, words: Words) -> Figure:
    title = say("picture-title-unit", step=_title(op))
    return draw_unit(found, c.garment, title, told_unit(found, c.garment, words()))


def _stack_figure(found: Stack, op: Operation, words: Words) -> Figure:
    names = comma_list([layer_name(n, layer) for n, layer in enumerate(found.layers, 1)])
    told = say("picture-told-stack", words=words(), layers=names)
    return draw_stack(found, say("picture-title-stack", step=_title(op)), told)


def _section_figure(found: Section, op: Operation, words: Words) -> Figure:
    told = words()
    if found.rows:
        rows = [
            say(
                "picture-told-row",
                row=say(f"picture-stitch-{row.stitch.value}"),
                plies=comma_list([_told(ply) for ply in found.through(row)] or ["-"]),
            )
            for row in found.rows
        ]
        told = say("picture-told-section", words=told, rows="; ".join(dict.fromkeys(rows)))
    return draw_section(found, op.id, say("picture-title-section", step=_title(op)), told)


def _told(ply: Pierced) -> str:
    if ply.on_right is None:
        return ply.material.title
    key = "picture-told-right" if ply.on_right else "picture-told-wrong"
    return say(key, piece=ply.material.title)
