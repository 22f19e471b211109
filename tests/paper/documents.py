"""Documents to write: those of the sampler, one that holds every block, and spoiled ones."""

from dataclasses import fields, is_dataclass, replace

from tell.sampler import document

from seqplan.draw.figure import Figure, Words
from seqplan.paper.blocks import (
    Beside,
    Blanks,
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
    Row,
    Stations,
    Step,
    Table,
    Terms,
)
from seqplan.tell.content import StationKey
from seqplan.tell.sentence import Term

DOT_PNG = bytes.fromhex(
    "89504e470d0a1a0a0000000d49484452000000010000000108000000003a7e9b550000000a49"
    "44415478da6368000000820081da45083b0000000049454e44ae426082"
)
"""One grey dot."""
DOT_SVG = (
    b'<svg xmlns="http://www.w3.org/2000/svg" width="8" height="8"><path d="M0 0L8 8Z"/></svg>'
)

MACHINE = StationKey("lockstitch", "M", "sewing machine", "everything that is stitched")
FIGURE = Figure(80, 40, "A row", "A row of stitches.", (Words((5, 20), "front", 8),))


def every_block():
    """A document that holds every kind of block once."""
    deed = Deed(station=MACHINE, foot="zip", title="Row", texts=("Stitch it.",), check="it holds")
    blocks = (
        Prose(("A paragraph.", "Another one."), is_small=True),
        Items(("plain",)),
        Items(("to tick",), is_ticked=True),
        Terms((Term("ease", "A little extra length."),)),
        Facts((("Steps", "12"),)),
        Pairs((("Set-up", "Zip foot, stitch 2.5 mm"),)),
        Blanks(("Begun on",)),
        Table(
            "By size",
            ("Size", "S", "M"),
            (Row(("Length", "1", "2")), Row(("Note", "", ""), is_under=True, notes=("so",))),
            is_ticked=True,
        ),
        Card("A card", (Prose(("On a card.",)),)),
        Cards((Card("One", (Items(("first",)),)), Card("Two", (Items(("second",)),)))),
        Beside((Prose(("left",)),), (Prose(("right",)),)),
        Stations((MACHINE,)),
        Note("From the designer:", ("Take your time.",)),
        Picture(FIGURE, "A caption"),
        Image(DOT_PNG, "image/png", "A grey dot", "The mark"),
        Image(DOT_SVG, "image/svg+xml", "A stroke"),
        deed,
        Step(
            number=1,
            heading="First",
            deeds=(replace(deed, figures=(FIGURE,)), deed),
            notes=("Slowly.",),
        ),
        Step(number=2, heading="Second", deeds=(deed,), terms=(Term("bag", "What is turned."),)),
        Step(number=3, heading="Third", deeds=(deed,), sketch="Place for a sketch"),
        Part(title="Within", remark="Step 4", blocks=(Prose(("deep",)),), starts_page=True),
    )
    return Document(
        kind="Sampler",
        title="Every block",
        author="The hall",
        cover=(Prose(("About it.",)), Image(DOT_SVG, "image/svg+xml", "The mark")),
        parts=(
            Part(title="All", blocks=blocks),
            Part(
                title="Beware",
                blocks=(Cards((Card("Iron", (Prose(("hot",)),)),)),),
                is_warning=True,
            ),
        ),
        has_contents=True,
    )


def steps(name):
    """The steps of a booklet."""

    def within(blocks):
        for block in blocks:
            if isinstance(block, Step):
                yield block
            elif isinstance(block, Part):
                yield from within(block.blocks)

    return list(within(document(name).parts))


def texts_of(value):
    """Every text that a reader sees or hears, in the order of the document."""
    if isinstance(value, str):
        yield value
    elif isinstance(value, Figure):
        yield value.words
    elif isinstance(value, Image):
        yield from (value.alt, value.caption)
    elif isinstance(value, StationKey):
        yield from (value.mark, value.title, value.note)
    elif is_dataclass(value):
        for field in fields(value):
            if field.name not in {"lang", "author"}:
                yield from texts_of(getattr(value, field.name))
    elif isinstance(value, tuple):
        for each in value:
            yield from texts_of(each)


def spoiled(value, text):
    """The same with another text in every place of a text."""
    if isinstance(value, str):
        return text if value else value
    if isinstance(value, Figure):
        marks = tuple(m._replace(text=text) if isinstance(m, Words) else m for m in value.marks)
        return value._replace(title=text, words=text, marks=marks)
    if isinstance(value, Image):
        return value._replace(alt=text, caption=text)
    if is_dataclass(value):
        kept = {"lang", "id"}
        changed = {
            field.name: spoiled(getattr(value, field.name), text)
            for field in fields(value)
            if field.name not in kept
        }
        return replace(value, **changed)
    if hasattr(value, "_fields"):
        return type(value)(*(spoiled(each, text) for each in value))
    return tuple(spoiled(each, text) for each in value) if isinstance(value, tuple) else value
