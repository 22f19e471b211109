"""What depends on the size, and how much of a fabric to buy from a bolt of each width."""

from collections.abc import Callable, Iterator
from fractions import Fraction

from seqplan.base.measure import Length, parse_length
from seqplan.load import fields
from seqplan.load.choices import Sizes
from seqplan.load.names import clean, report_unknown
from seqplan.load.nodes import MappingNode, Node, Pair, Scalar
from seqplan.load.sink import Sink, found_instead, listing, quoted
from seqplan.model.garment import Amount
from seqplan.words.say import say

Reader = Callable[[Node], Length | None]

_NARROWEST_MM = 50
_WIDEST_MM = 5000
"""Of cloth, lace and interfacing; what lies beyond is a slip of the unit."""


def lengths_by_size(
    node: Node | None, read: Reader, sizes: Sizes, sink: Sink
) -> tuple[tuple[str, Length], ...]:
    """Read ``{S: 20, M: 22}``; every size has to be there, and no other."""
    if not isinstance(node, MappingNode) or fields.is_pair(node):
        return ()
    if not node.pairs:
        sink.error("unreadable-length", node, found="`{}`")
        return ()
    found: dict[str, Length | None] = {}
    names, in_order = sizes
    for pair in node.pairs:
        size = clean(pair.key)
        found.setdefault(size, read(pair.value))
        if size not in names:
            report_unknown("unknown-size", size, pair, names, sink)
    missing = [size for size in in_order if size not in found]
    if missing and names.is_known and all(size in names for size in found):
        sink.error("size-missing", node, sizes=listing(missing))
    measured = ((size, found.get(size)) for size in in_order)
    return tuple((size, measure) for size, measure in measured if measure is not None)


def read_amounts(node: Node | None, units: str, sizes: Sizes, sink: Sink) -> tuple[Amount, ...]:
    """Read ``amounts: {150: 1.2 m, 115: {S: 1.6 m, M: 1.9 m}}``: widths with how much of them."""
    table = fields.mapping(node, sink, words="expected-amounts") if node is not None else None
    if table is not None and not table.pairs:
        sink.error("wrong-type", table, words="expected-amounts", found="`{}`")
    return tuple(_amounts(table, units, sizes, sink)) if table is not None else ()


def _amounts(table: MappingNode, units: str, sizes: Sizes, sink: Sink) -> Iterator[Amount]:
    first: dict[Fraction, Pair] = {}
    for pair in table.pairs:
        width = _width(pair, units, sink)
        by_size = lengths_by_size(pair.value, lambda item: _amount(item, sink), sizes, sink)
        is_table = isinstance(pair.value, MappingNode) and not fields.is_pair(pair.value)
        length = by_size[0][1] if by_size else None
        if not is_table:
            length = _amount(pair.value, sink)
        if width is None:
            continue
        if first.setdefault(width.mm, pair) is not pair and table.get(pair.key) is pair:
            other = quoted(first[width.mm].key)
            sink.error("width-twice", pair, width=quoted(pair.key), other=other)
        if length is not None:
            yield Amount(width, length, by_size)


def _width(pair: Pair, units: str, sink: Sink) -> Length | None:
    width = parse_length(pair.key, default_unit=units)
    if width is None:
        sink.error("unreadable-width", pair, found=quoted(pair.key))
    elif not _NARROWEST_MM <= width.mm <= _WIDEST_MM:
        sink.error("odd-width", pair, found=quoted(pair.key), units=units)
    else:
        return width
    return None


def _amount(node: Node, sink: Sink) -> Length | None:
    """A length with its unit: cloth is sold by the metre or the yard, whatever the file is in."""
    measure = fields.length(node, sink, "m")
    text = node.text.strip() if isinstance(node, Scalar) else ""
    if measure is None:
        return None
    if text[-1:].isdigit():
        metres, yards = quoted(f"{text} m"), quoted(f"{text} yd")
        fix = say("fix-amount-without-unit", metres=metres, yards=yards)
        sink.error("amount-without-unit", node, found=found_instead(node), fix=fix)
    elif measure.mm == 0:
        sink.error("unreadable-length", node, found=found_instead(node))
    else:
        return measure
    return None
