r"""A handout as Markdown (CommonMark, with the tables of GitHub's flavour).

Whatever a text holds is shown as text: every letter that could be markup is escaped, and there is
no HTML and no link. Pictures are left out; what they show is told in their place.
"""

import re
from collections.abc import Iterable, Iterator, Sequence
from typing import Final

from seqplan.draw.figure import Figure
from seqplan.paper.blocks import (
    Beside,
    Blanks,
    Block,
    Card,
    Cards,
    Deed,
    Document,
    Facts,
    Image,
    Items,
    Note,
    Pairs,
    Part,
    Picture,
    Prose,
    Stations,
    Step,
    Table,
    Terms,
)
from seqplan.render.handout.letters import printed
from seqplan.words.say import say

_MARKUP: Final = re.compile(r"[\\`*_{}\[\]<>#|~$&!@^=]")
_SCHEME: Final = re.compile(r":(?=\S)|(?<=\bwww)\.", re.IGNORECASE)
_LIST: Final = re.compile(r"^(\s*)(?:([-+])|(\d+)([.)]))")
_BLANK: Final = "\\_" * 12
_BOX: Final = "- [ ] "
_DEEPEST: Final = 6


def markdown(document: Document) -> str:
    """Write a handout as Markdown; equal documents give equal text."""
    parts = [
        [f"{escaped(document.kind)}"],
        [f"# {escaped(document.title)}"],
        *_blocks(document.cover, 2),
        *_blocks(document.parts, 2),
    ]
    return "\n\n".join("\n".join(lines) for lines in parts if lines) + "\n"


def escaped(text: str) -> str:
    r"""A text in one line that is nothing but text.

    >>> escaped("*b* [x](javascript:y) 1 < 2")
    '\\*b\\* \\[x\\](javascript\\:y) 1 \\< 2'
    >>> escaped("1. no list"), escaped("- nor here")
    ('1\\. no list', '\\- nor here')
    """
    line = " ".join(printed(text).split())
    line = _MARKUP.sub(lambda match: "\\" + match[0], line)
    line = _SCHEME.sub(lambda match: "\\" + match[0], line)
    return _LIST.sub(lambda m: m[1] + (f"\\{m[2]}" if m[2] else f"{m[3]}\\{m[4]}"), line)


_Lines = Sequence[str]
"""Lines that belong together; between such groups stands an empty line."""


def _blocks(held: Iterable[Block], level: int) -> Iterator[_Lines]:
    for block in held:
        yield from _block(block, level)


def _block(block: Block, level: int) -> Iterator[_Lines]:
    """A block, whatever it is."""
    match block:
        case Part() | Card() | Cards() | Beside() | Step():
            yield from _holding(block, level)
        case Table():
            yield from _table(block, level)
        case Deed():
            yield _deed(block)
        case Picture(figure, caption):
            yield from _figure(figure, caption)
        case Image():
            yield from _told(block.alt, block.caption)
        case _:
            yield from _listed(block)


def _holding(block: Part | Card | Cards | Beside | Step, level: int) -> Iterator[_Lines]:
    match block:
        case Part():
            yield _heading(level, block.title)
            if block.remark:
                yield [escaped(block.remark)]
            yield from _blocks(block.blocks, level + 1)
        case Card():
            yield _heading(level, block.title)
            yield from _blocks(block.blocks, level + 1)
        case Cards():
            yield from _blocks(block.cards, level)
        case Beside():
            yield from _blocks((*block.left, *block.right), level)
        case Step():
            yield from _step(block, level)


def _listed(block: Block) -> Iterator[_Lines]:
    match block:
        case Prose():
            yield from ([escaped(text)] for text in block.texts)
        case Note():
            label = f"**{escaped(block.label)}** " if block.label else ""
            for place, text in enumerate(block.texts):
                yield [f"> {'' if place else label}{escaped(text)}"]
        case Items():
            yield [(_BOX if block.is_ticked else "- ") + escaped(line) for line in block.lines]
        case Terms():
            yield _terms(block)
        case Pairs():
            yield [f"- **{escaped(label)}**: {escaped(text)}" for label, text in block.pairs]
        case Facts():
            yield [f"- {escaped(label)}: {escaped(value)}" for label, value in block.pairs]
        case Blanks():
            yield [f"- {escaped(label)}: {_BLANK}" for label in block.labels]
        case Stations():
            yield [f"- {_station(each.mark, each.title, each.note)}" for each in block.stations]


def _heading(level: int, title: str) -> _Lines:
    return [f"{'#' * min(level, _DEEPEST)} {escaped(title)}"]


def _station(mark: str, title: str, note: str) -> str:
    told = f"**{escaped(mark)}** {escaped(title)}"
    return f"{told}: {escaped(note)}" if note else told


def _terms(block: Terms) -> _Lines:
    return [f"- **{escaped(term.name)}**: {escaped(term.meaning)}" for term in block.terms]


def _table(table: Table, level: int) -> Iterator[_Lines]:
    if table.title:
        yield _heading(level, table.title)
    head = [say("sheet-col-done")] * table.is_ticked + list(table.head)
    lines = [_row(head), _row(["---"] * len(head), is_text=False)]
    for row in table.rows:
        *cells, last = row.cells
        whole = " ".join(text for text in (last, *row.notes) if text)
        lines.append(_row([*[""] * table.is_ticked, *cells, whole]))
    yield lines


def _row(cells: Iterable[str], *, is_text: bool = True) -> str:
    return f"| {' | '.join(escaped(cell) if is_text else cell for cell in cells)} |"


def _step(step: Step, level: int) -> Iterator[_Lines]:
    yield _heading(level, say("sheet-glance-line", number=step.number, heading=step.heading))
    yield from _listed(Note(say("sheet-note"), step.notes))
    for deed in step.deeds:
        yield _deed(deed)
    for figure in step.figures:
        yield from _figure(figure)
    if step.sketch:
        yield from _told(step.sketch)
    if step.terms:
        yield _terms(Terms(step.terms))


def _deed(deed: Deed) -> _Lines:
    """An operation as an item of a list, each of its paragraphs a line further in."""
    foot = say("sheet-foot", foot=deed.foot) if deed.foot else ""
    where = ", ".join(escaped(text) for text in (deed.title, deed.station.title, foot) if text)
    check = [f"**{escaped(say('sheet-check'))}** {escaped(deed.check)}"] if deed.check else []
    texts = [f"**{escaped(deed.station.mark)}** {where}", *map(escaped, deed.texts), *check]
    return [_BOX + "\n\n  ".join(texts)]


def _figure(figure: Figure, caption: str = "") -> Iterator[_Lines]:
    yield from _told(say("paper-picture", words=figure.words), caption)


def _told(words: str, caption: str = "") -> Iterator[_Lines]:
    """What a picture shows, in italics, and its caption."""
    if told := escaped(words):
        yield [f"*{told}*"]
    if caption:
        yield [escaped(caption)]
