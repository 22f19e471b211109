"""The pictures of all steps of an order, each as a picture and as SVG."""

from collections.abc import Mapping, Sequence
from typing import NamedTuple

from seqplan.base.ids import OpId
from seqplan.draw.cloth import Pierced, Section
from seqplan.draw.figure import Figure
from seqplan.draw.section import section
from seqplan.draw.section_picture import draw_section
from seqplan.draw.stack import Stack, stack
from seqplan.draw.stack_picture import draw_stack, layer_name
from seqplan.draw.svg import svg
from seqplan.model.operation import Operation
from seqplan.recipes.construction import Construction
from seqplan.rehearse.work import Work
from seqplan.tell.names import comma_list, readable
from seqplan.tell.step import tell_operation
from seqplan.words.say import say, translated


class Pictures(NamedTuple):
    """The pictures of one operation, where it has any: layers before it, the section after it."""

    stack: Figure | None = None
    section: Figure | None = None


def draw_order(
    c: Construction, order: Sequence[OpId], told: Mapping[OpId, str] | None = None
) -> Mapping[OpId, Pictures]:
    """Draw every operation of an order that can be drawn.

    Parameters
    ----------
    c
        The garment.
    order
        All its operations; equal orders give equal pictures.
    told
        What each operation is told with in this order, if somebody has told them already.
    """
    work = Work(c)
    found: dict[OpId, Pictures] = {}
    for id_ in order:
        op = c.op[id_]
        words = told[id_] if told else tell_operation(c, op, tuple(work.done)).text
        laid = stack(c, work, op)
        work.do(op)
        cut = section(c, work, op)
        if laid or cut:
            found[id_] = Pictures(
                _stack_figure(laid, op, words) if laid else None,
                _section_figure(cut, op, words) if cut else None,
            )
    return found


def files(c: Construction, order: Sequence[OpId]) -> Mapping[str, str]:
    """Each picture as an SVG file of its own, by its name, which holds no letters that could hurt.

    A name is made of the place of the operation in the order, its name, and what is drawn.
    """
    pictures = draw_order(c, order)
    found = {}
    for place, id_ in enumerate(order, 1):
        for kind, figure in zip(Pictures._fields, pictures.get(id_, Pictures()), strict=True):
            if figure is not None:
                found[f"{place:03}-{_file_name(id_)}-{kind}.svg"] = svg(figure)
    return found


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


def _stack_figure(found: Stack, op: Operation, words: str) -> Figure:
    names = comma_list([layer_name(n, layer) for n, layer in enumerate(found.layers, 1)])
    told = say("picture-told-stack", words=words, layers=names)
    return draw_stack(found, say("picture-title-stack", step=_title(op)), told)


def _section_figure(found: Section, op: Operation, words: str) -> Figure:
    told = words
    if found.rows:
        rows = [
            say(
                "picture-told-row",
                row=say(f"picture-stitch-{row.stitch.value}"),
                plies=comma_list([_told(ply) for ply in found.through(row)] or ["-"]),
            )
            for row in found.rows
        ]
        told = say("picture-told-section", words=words, rows="; ".join(dict.fromkeys(rows)))
    return draw_section(found, op.id, say("picture-title-section", step=_title(op)), told)


def _told(ply: Pierced) -> str:
    if ply.on_right is None:
        return ply.material.title
    key = "picture-told-right" if ply.on_right else "picture-told-wrong"
    return say(key, piece=ply.material.title)
