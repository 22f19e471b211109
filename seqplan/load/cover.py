"""What a booklet has of its author: terms of use, a mark, lay plans, and words of her own."""

from typing import NamedTuple

from seqplan.base.errors import UnreadableFileError
from seqplan.load import fields
from seqplan.load.beside import Beside
from seqplan.load.choices import Sizes
from seqplan.load.images import PIXEL_LIMIT, SIZE_LIMIT, ImageFaultError, media_of
from seqplan.load.keys import Section, keys_of
from seqplan.load.names import Names, check_title, clean
from seqplan.load.nodes import Node
from seqplan.load.sink import Sink, quoted
from seqplan.model.garment import LayPlan, Picture


class Offer(NamedTuple):
    """What a lay plan may name: fabrics, sizes, files; and the unit of bare lengths."""

    fabrics: Names
    sizes: Sizes
    units: str
    beside: Beside


def read_terms(node: Node | None, sink: Sink) -> tuple[str, ...]:
    """Read ``terms:``, a paragraph or a list of them."""
    return tuple(text for text, _ in fields.listed(node, lambda n: fields.text(n, sink), sink))


def read_glossary(node: Node | None, sink: Sink) -> tuple[tuple[str, str], ...]:
    """Read ``glossary:``: words, each with what it means."""
    table = fields.mapping(node, sink, words="expected-glossary") if node is not None else None
    if table is not None and not table.pairs:
        sink.error("wrong-type", table, words="expected-glossary", found="`{}`")
    found: dict[str, str] = {}
    for pair in table.pairs if table is not None else ():
        word, meaning = clean(pair.key), fields.text(pair.value, sink)
        if check_title(word, pair, sink) and meaning is not None:
            found.setdefault(word, meaning)
    return tuple(found.items())


def read_picture(node: Node | None, beside: Beside, sink: Sink) -> Picture | None:
    """Read the name of a picture file, and the file."""
    name = fields.text(node, sink)
    if node is None or name is None:
        return None
    try:
        data = beside.read(name, SIZE_LIMIT)
        return Picture(name, media_of(data), data)
    except UnreadableFileError as error:
        sink.error("image-unreadable", node, file=quoted(name), why=error.why)
    except ImageFaultError as fault:
        at = f"{name}:{fault.line}:{fault.column}" if fault.line else name
        sink.error(
            "image",
            node,
            words=f"image-{fault.kind}",
            file=quoted(at),
            found=quoted(fault.found),
            limit=SIZE_LIMIT // 1_000_000,
            dots=PIXEL_LIMIT // 1_000_000,
        )
    return None


def read_plans(node: Node | None, offer: Offer, sink: Sink) -> tuple[LayPlan, ...]:
    """Read ``plans:``, a list of lay plans, each with a picture."""
    found = fields.listed(node, lambda item: _plan(item, offer, sink), sink)
    return tuple(plan for plan, _ in found)


def _plan(node: Node, offer: Offer, sink: Sink) -> LayPlan | None:
    keys = keys_of(Section.PLAN)
    table = fields.mapping_of(node, keys, sink, words="expected-plan")
    if table is None:
        return None
    found = fields.read_fields(table, keys, sink)
    fields.check_required(found, keys, table, sink)
    picture = read_picture(found.get("picture"), offer.beside, sink)
    fabric = fields.known(found.get("fabric"), offer.fabrics, "unknown-fabric", sink)
    size = fields.known(found.get("size"), offer.sizes.names, "unknown-size", sink)
    width = fields.length(found.get("width"), sink, offer.units)
    alt = fields.text(found.get("alt"), sink)
    if picture is None or fabric is None:
        return None
    return LayPlan(picture, fabric, width, size, alt, table.path)
