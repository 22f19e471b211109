"""A step of a sheet as a block: its operations, the pictures beside it, its notes."""

from collections.abc import Iterable, Mapping
from typing import Final

from seqplan.base.ids import OpId
from seqplan.draw.choose import choose_pictures
from seqplan.draw.figure import Figure
from seqplan.paper.blocks import Deed, Step
from seqplan.recipes.construction import Construction
from seqplan.tell.content import Sheet, SheetStep, StationKey
from seqplan.tell.sentence import Sentence
from seqplan.words.say import say

Drawn = Mapping[OpId, tuple[Figure, ...]]
"""The pictures of operations; none at all for those that nobody has to draw."""

_SHORT: Final = 50
"""A sentence of so many letters does not need a paragraph of its own."""


def step_block(step: SheetStep, station: Mapping[str, StationKey], pictures: Drawn) -> Step:
    """Put a step on paper.

    Parameters
    ----------
    step
        The step.
    station
        The stations by their names in the file.
    pictures
        The pictures of operations. A step that is not among them keeps a place for a sketch; a
        step with a picture of the designer's own keeps a place for that one.
    """
    own = step.picture
    deeds = tuple(
        deed_block(sentence, station, () if own else pictures.get(sentence.operation, ()))
        for sentence in step.sentences
    )
    sketch = say("sheet-picture-own", caption=own) if own else say("sheet-picture")
    return Step(
        number=step.number,
        heading=step.heading,
        deeds=deeds,
        terms=step.terms,
        notes=(*([step.note] if step.note else []), *step.waived),
        sketch="" if not own and pictures.keys() & set(step.operations) else sketch,
    )


def draw_sheet(c: Construction, sheet: Sheet) -> Drawn:
    """Draw the steps of a sheet, told in its own words."""
    steps = [step for group in sheet.groups for step in group.steps]
    told = {each.operation: each.text for step in steps for each in step.sentences}
    shown = choose_pictures(c, [step.operations for step in steps], told)
    found: dict[OpId, tuple[Figure, ...]] = {}
    for step, one in zip(steps, shown, strict=True):
        if not one.is_sketched:
            found |= {op: one.by_op.get(op, ()) for op in step.operations}
    return found


def deed_block(
    sentence: Sentence, station: Mapping[str, StationKey], figures: tuple[Figure, ...] = ()
) -> Deed:
    """Put one operation on paper."""
    return Deed(
        station=station[sentence.station],
        foot=sentence.foot,
        texts=paragraphs(sentence.texts),
        check=sentence.check,
        figures=figures,
    )


def paragraphs(texts: Iterable[str]) -> tuple[str, ...]:
    """Put sentences into paragraphs: each its own, but short ones follow on the one before.

    >>> paragraphs(["Stitch from the mark to the end, as close to the fold as you can.", "Turn."])
    ('Stitch from the mark to the end, as close to the fold as you can. Turn.',)
    """
    found: list[str] = []
    for text in texts:
        if found and len(text) <= _SHORT:
            found[-1] = f"{found[-1]} {text}"
        else:
            found.append(text)
    return tuple(found)
