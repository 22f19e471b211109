"""What stands at the wrong depth: keys that are not indented, and dashes where names are wanted.

Each is reported once, and reading goes on with the outline that was meant.
"""

from collections.abc import Callable, Container, Mapping
from functools import partial
from typing import Final

from seqplan.load.keys import Keys, Section, Takes, entry_keys, keys_of
from seqplan.load.nodes import ListNode, MappingNode, Node, Pair, Scalar
from seqplan.load.sink import Sink, quoted


def outlined(root: MappingNode, sink: Sink) -> MappingNode:
    """The whole file with its sections, and what they name, at the depth that was meant."""
    sections = keys_of(Section.GARMENT)

    def is_section(pair: Pair) -> bool:
        return pair.key in sections and sections[pair.key].takes is Takes.TABLE

    def is_stranger(pair: Pair) -> bool:
        return pair.key not in sections and not sink.close(pair.key, sections)

    pairs = (
        pair._replace(value=_section(pair, sink)) if is_section(pair) else pair
        for pair in indented(root, is_section, is_stranger, sink).pairs
    )
    return root._replace(pairs=tuple(pairs))


def _section(pair: Pair, sink: Sink) -> Node:
    """A section, and each thing that it names."""
    keys = _KEYS_BELOW[pair.key]() if pair.key in _KEYS_BELOW else {}
    node = undashed(pair.value, keys, sink, is_section=True)
    if not isinstance(node, MappingNode) or not keys:
        return node

    def belongs(other: Pair) -> bool:
        return other.key in keys and not isinstance(other.value, MappingNode)

    table = indented(node, lambda other: other.key not in keys, belongs, sink)
    pairs = (
        item._replace(value=undashed(item.value, keys, sink, is_section=False))
        for item in table.pairs
    )
    return table._replace(pairs=tuple(pairs))


_KEYS_BELOW: Final[Mapping[str, Callable[[], Keys]]] = {
    "operations": entry_keys,
    "pieces": partial(keys_of, Section.PIECE),
    "notions": partial(keys_of, Section.NOTION),
    "fabrics": partial(keys_of, Section.FABRIC),
}


def indented(
    table: MappingNode,
    is_name: Callable[[Pair], bool],
    belongs: Callable[[Pair], bool],
    sink: Sink,
) -> MappingNode:
    """Put keys under the name before them, where that has nothing after its colon.

    Parameters
    ----------
    is_name
        Whether something can stand below this key.
    belongs
        Whether this key cannot stand where it does, but can stand below a name.
    """
    pairs: list[Pair] = []
    waiting = list(table.pairs)
    while waiting:
        pair = waiting.pop(0)
        inner: list[Pair] = []
        if is_name(pair) and isinstance(pair.value, Scalar) and pair.value.is_empty:
            while waiting and belongs(waiting[0]) and waiting[0].span.column == pair.span.column:
                inner.append(waiting.pop(0))
        if inner:
            sink.error("not-indented", inner[0], word=quoted(inner[0].key), name=quoted(pair.key))
            pair = pair._replace(value=MappingNode(tuple(inner), inner[0].span, pair.path))
        pairs.append(pair)
    return MappingNode(tuple(pairs), table.span, table.path)


def undashed(node: Node, keys: Container[str], sink: Sink, *, is_section: bool) -> Node:
    """A list of keys as one mapping.

    Parameters
    ----------
    keys
        Keys that stand below a name, so that in a section an item that begins with one is missing
        its name.
    is_section
        Whether names are wanted and not keys.
    """
    if not isinstance(node, ListNode) or not node.items:
        return node
    tables = [item for item in node.items if isinstance(item, MappingNode) and item.pairs]
    if len(tables) < len(node.items):
        return node
    pairs = tuple(pair for table in tables for pair in table.pairs)
    is_nameless = any(p.key in keys and not isinstance(p.value, MappingNode) for p in pairs)
    if is_section and is_nameless:
        sink.error("wrong-type", node, words="dashes-for-names")
        sink.mute(node)
        return node
    words = "brackets-for-braces" if node.is_bracketed else "stray-dashes"
    sink.error("wrong-type", node, words=words)
    return MappingNode(pairs, node.span, node.path)
