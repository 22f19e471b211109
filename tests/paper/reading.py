"""A document as lines of plain text, to look things up in."""

from collections.abc import Iterator

from seqplan.paper import blocks as b


def lines_of(document):
    """Everything that a document says, block by block."""
    return [document.kind, document.title, *_all(document.cover), *_all(document.parts)]


def find(document, kind):
    """All blocks of a kind, wherever they stand."""
    return [block for block in walk((*document.cover, *document.parts)) if isinstance(block, kind)]


def walk(blocks) -> Iterator[object]:
    """All blocks, those within others too."""
    for block in blocks:
        yield block
        yield from walk(_inner(block))


def _inner(block):
    if isinstance(block, b.Beside):
        return (*block.left, *block.right)
    if isinstance(block, b.Cards):
        return block.cards
    if isinstance(block, b.Part | b.Card):
        return block.blocks
    return ()


def _all(blocks) -> Iterator[str]:
    for block in walk(blocks):
        yield from _own(block)


def _own(block) -> Iterator[str]:
    if isinstance(block, b.Table):
        yield from (block.title, " | ".join(block.head))
        yield from (" | ".join(row.cells) for row in block.rows)
    elif isinstance(block, b.Step):
        yield f"{block.number}. {block.heading}"
        for deed in block.deeds:
            yield from _deed(deed)
        yield from block.notes
    elif isinstance(block, b.Deed):
        yield from _deed(block)
    else:
        yield from _simple(block)


def _deed(deed) -> Iterator[str]:
    yield f"{deed.station.mark} {' '.join(deed.texts)}"
    yield deed.check


def _simple(block) -> Iterator[str]:
    match block:
        case b.Part() | b.Card():
            yield f"# {block.title}"
        case b.Prose() | b.Note():
            yield from block.texts
        case b.Items():
            yield from block.lines
        case b.Facts() | b.Pairs():
            yield from (f"{label}: {value}" for label, value in block.pairs)
        case b.Blanks():
            yield from block.labels
        case b.Terms():
            yield from (f"{term.name}: {term.meaning}" for term in block.terms)
        case b.Picture():
            yield f"[{block.figure.title}] {block.caption}"
