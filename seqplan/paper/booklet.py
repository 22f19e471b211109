"""The booklet of one garment: all that a stranger needs to sew it from paper."""

from collections.abc import Iterable, Iterator
from typing import Final

from seqplan.draw.key import key_figure
from seqplan.paper.blocks import (
    Beside,
    Blanks,
    Block,
    Card,
    Cards,
    Document,
    Facts,
    Image,
    Items,
    Note,
    Part,
    Picture,
    Prose,
    Row,
    Stations,
    Table,
    Terms,
)
from seqplan.paper.steps import Drawn, draw_sheet, step_block
from seqplan.plan.plan import Planner
from seqplan.recipes.construction import Construction
from seqplan.tell.content import CutRow, Sheet, SheetGroup
from seqplan.tell.sheet import make_sheet
from seqplan.words.say import say

_BLANKS: Final = ("sheet-name-of-maker", "sheet-size", "sheet-date")
_BLANKS_OF_ONE_SIZE: Final = ("sheet-name-of-maker", "sheet-date")


def compose(c: Construction, planner: Planner) -> Document:
    """Compose the booklet of a garment in the order that suits one garment at a time.

    Raises
    ------
    NoPlanError
        When no order exists.
    """
    plan = planner.booklet()
    sheet = make_sheet(c, plan)
    return booklet(sheet, draw_sheet(c, sheet))


def booklet(sheet: Sheet, pictures: Drawn | None = None) -> Document:
    """Put a sheet on paper; a step that has no picture keeps a place for a sketch."""
    parts = (
        _needs(sheet),
        _cutting(sheet),
        _key(sheet, is_drawn=any((pictures or {}).values())),
        _cautions(sheet),
        _at_a_glance(sheet),
        _steps(sheet, pictures or {}),
        Part(title=say("sheet-checks"), blocks=(Items(sheet.checks, is_ticked=True),)),
        Part(title=say("sheet-glossary"), blocks=(Terms(sheet.glossary),)),
        Part(title=say("sheet-terms"), blocks=(Prose(sheet.terms),)),
    )
    return Document(
        kind=sheet.kind,
        title=sheet.title,
        author=sheet.author or "",
        cover=tuple(_cover(sheet)),
        parts=tuple(part for part in parts if any(_is_filled(block) for block in part.blocks)),
        lang=sheet.lang,
        has_contents=True,
    )


def _is_filled(block: Block) -> bool:
    if isinstance(block, Terms):
        return bool(block.terms)
    return not isinstance(block, Prose) or bool(block.texts)


def _cover(sheet: Sheet) -> Iterator[Block]:
    if sheet.mark:
        yield Image(*sheet.mark)
    if sheet.about:
        yield Prose((sheet.about,))
    if lines := tuple(_issue(sheet)):
        yield Prose(lines, is_small=True)
    if sheet.variant:
        yield Card(say("sheet-variant-label"), (Items(sheet.variant),))
    yield Facts(
        (
            (say("sheet-steps-label"), str(sheet.steps)),
            (say("sheet-operations-label"), str(sheet.operations)),
            (say("sheet-changes-label"), str(sheet.changes)),
        )
    )
    keys = _BLANKS if len(sheet.sizes) > 1 else _BLANKS_OF_ONE_SIZE
    yield Blanks(tuple(say(key) for key in keys))


def _issue(sheet: Sheet) -> Iterator[str]:
    """Who designed it, and which issue of it this is, a line each."""
    if sheet.author:
        yield say("sheet-by", author=sheet.author)
    if sheet.version:
        yield say("sheet-version", version=sheet.version)
    if sheet.date:
        yield say("sheet-as-of", date=sheet.date)
    if len(sheet.sizes) == 1:
        yield say("sheet-one-size", size=sheet.sizes[0])
    elif sheet.sizes:
        yield say("sheet-sizes", sizes=", ".join(sheet.sizes))


def _needs(sheet: Sheet) -> Part:
    blocks: list[Block] = [_cards((need.title, Items(need.lines)) for need in sheet.needs)]
    if sheet.measures:
        head = (say("sheet-size-column"), *sheet.measures.sizes)
        rows = tuple(Row((name, *values)) for name, values in sheet.measures.rows)
        blocks.append(Table(say("sheet-size-table"), head, rows))
    return Part(title=say("sheet-needs"), blocks=tuple(blocks))


def _cutting(sheet: Sheet) -> Part:
    lists = {"sheet-allowances": sheet.allowances, "sheet-marks": sheet.marks}
    return Part(
        title=say("sheet-cutting"),
        blocks=(
            *([_cutting_list(sheet.cutting)] if sheet.cutting else []),
            Prose(sheet.cutting_notes, is_small=True),
            *(Image(*plan) for plan in sheet.plans),
            _cards((say(key), Items(lines)) for key, lines in lists.items() if lines),
        ),
    )


def _cutting_list(rows: Iterable[CutRow]) -> Table:
    keys = ("sheet-col-piece", "sheet-col-cut", "sheet-col-fabric", "sheet-col-edges")
    return Table(
        title="",
        head=tuple(say(key) for key in keys),
        rows=tuple(
            Row((row.piece, row.cut, row.fabric, row.edges), row.is_interfacing, row.notes)
            for row in rows
        ),
        is_ticked=True,
    )


def _key(sheet: Sheet, *, is_drawn: bool) -> Part:
    marks = (Prose((say("sheet-read-marks"),)), Stations(sheet.stations))
    blocks: list[Block] = [Beside((Items(sheet.reading),), marks)]
    if is_drawn:
        blocks.append(Picture(key_figure(), say("sheet-key-pictures")))
    if sheet.notes:
        blocks.append(Note(say("sheet-note"), sheet.notes))
    return Part(title=say("sheet-key"), blocks=tuple(blocks))


def _cautions(sheet: Sheet) -> Part:
    cards = _cards((caution.title, Prose(caution.lines)) for caution in sheet.cautions)
    return Part(
        title=say("sheet-cautions"),
        blocks=(Prose((sheet.caution_intro,)), cards),
        is_warning=True,
    )


def _at_a_glance(sheet: Sheet) -> Part:
    """All steps of this variant in one list, without anything to skip."""
    lines = [
        say("sheet-glance-line", number=step.number, heading=step.heading)
        for group in sheet.groups
        for step in group.steps
    ]
    half = (len(lines) + 1) // 2
    left, right = (Items(tuple(part), is_ticked=True) for part in (lines[:half], lines[half:]))
    return Part(title=say("sheet-glance"), blocks=(Beside((left,), (right,)),))


def _steps(sheet: Sheet, pictures: Drawn) -> Part:
    groups = tuple(
        Part(
            title=group.heading,
            remark=_range(group),
            blocks=tuple(step_block(step, sheet.station, pictures) for step in group.steps),
        )
        for group in sheet.groups
    )
    return Part(title=say("sheet-steps"), blocks=groups)


def _range(group: SheetGroup) -> str:
    first, last = group.steps[0].number, group.steps[-1].number
    return say("sheet-step-range", count=last - first + 1, first=first, last=last)


def _cards(titled: Iterable[tuple[str, Block]]) -> Cards:
    return Cards(tuple(Card(title, (block,)) for title, block in titled))
