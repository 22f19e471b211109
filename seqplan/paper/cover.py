"""What every handout but the booklet opens with: what it is about, and for which choices."""

from collections.abc import Iterable, Iterator

from seqplan.paper.blocks import Block, Card, Cards, Items, Part, Prose
from seqplan.tell.content import Sheet, Titled
from seqplan.words.say import say


def about(sheet: Sheet) -> Iterator[Block]:
    """Tell what the garment is, and which choices the sheet is made for."""
    if sheet.about:
        yield Prose((sheet.about,))
    if sheet.variant:
        yield Card(say("handout-for"), (Items(sheet.variant),))


def cautions(title: str, found: Iterable[Titled], intro: str = "") -> Part:
    """Warn, each caution in a frame of its own."""
    cards = Cards(tuple(Card(item.title, (Prose(item.lines),)) for item in found))
    blocks: tuple[Block, ...] = (Prose((intro,)), cards) if intro else (cards,)
    return Part(title=title, blocks=blocks, is_warning=True)
