"""Typed readers. Each gives the value, or reports what is wrong with it and gives ``None``."""

from collections.abc import Callable, Mapping
from typing import Final, TypeAlias, TypeVar

from seqplan.base.measure import Length, are_alike, centimetres, inches, parse_length
from seqplan.load.keys import Key, Keys, verbs_with
from seqplan.load.names import Names, check_name, clean, report_twice, report_unknown
from seqplan.load.nodes import ListNode, MappingNode, Node, Pair, Placed, Scalar
from seqplan.load.sink import Sink, found_instead, listing, quoted
from seqplan.load.text import character_code
from seqplan.words.say import say

T = TypeVar("T")

Fields: TypeAlias = Mapping[str, Node]
"""What stands under the keys of one thing: only keys that are known."""

_INCH: Final = "in"
_METRIC: Final = frozenset({"mm", "cm", "m"})

LONGEST_MM = 1_000_000
"""More than any length in sewing, and few enough digits to be written again in any unit."""

_LONGEST_GUESSED = 60
"""Letters of a value that is taken for another way of writing one."""

_WIDTHLESS = "\u00ad\u200b\u2060\ufeff"
"""Letters that nobody sees; they come along with text pasted from elsewhere."""

_YES = {"yes": True, "true": True, "no": False, "false": False}


def read_fields(table: MappingNode, keys: Keys, sink: Sink) -> Fields:
    """Sort the pairs of a mapping by key, and report keys that are unknown."""
    fields: dict[str, Node] = {}
    for pair in spelt(table, keys, sink).pairs:
        fields.setdefault(pair.key, pair.value)
    return fields


def spelt(table: MappingNode, keys: Keys, sink: Sink) -> MappingNode:
    """The pairs whose keys are known, or were meant to be; the others are reported."""
    if all(pair.key in keys for pair in table.pairs):
        return table
    pairs: list[Pair] = []
    for pair in with_strays(table, keys, sink).pairs:
        name = pair.key if pair.key in keys else _report_key(pair, keys, table, sink)
        if name is not None:
            pairs.append(pair._replace(key=name))
    return MappingNode(tuple(pairs), table.span, table.path)


def with_strays(table: MappingNode, keys: Keys, sink: Sink) -> MappingNode:
    """The table with what stands in it without a value put back where it belongs."""
    if not any(pair.is_stray for pair in table.pairs):
        return table
    from seqplan.load.strays import joined

    return joined(table, keys, sink)


def check_required(fields: Fields, keys: Keys, at: Placed, sink: Sink) -> None:
    """Report keys that have to be there and are not."""
    for key in keys.values():
        if key.is_required and not key.is_verb and key.name not in fields:
            sink.error("missing-key", at, word=quoted(key.name), help=key.help)


def _report_key(pair: Pair, keys: Keys, table: MappingNode, sink: Sink) -> str | None:
    """Report a key that is not known here, and give the one that was meant, if that is certain."""
    verb = next((key.name for key in keys.values() if key.is_verb), None)
    verbs = [other.value for other in verbs_with(pair.key)] if verb else []
    if verb and verbs:
        names = {"word": quoted(pair.key), "verb": quoted(verb)}
        sink.error("key-of-other-verb", pair, verbs=listing(verbs), **names)
        return None
    bare = "".join(letter for letter in pair.key if letter not in _WIDTHLESS)
    if bare != pair.key and bare in keys:
        unseen = next(letter for letter in pair.key if letter in _WIDTHLESS)
        sink.error("control-character", pair, code=character_code(unseen))
        return bare
    meant = sink.meant(pair.key, list(keys))
    fix = sink.offer_of(meant) or say("fix-known-names", names=listing(keys))
    sink.error("unknown-key", pair, word=quoted(pair.key), fix=fix)
    return meant[0] if len(meant) == 1 and table.get(meant[0]) is None else None


def is_empty(node: Node, sink: Sink) -> bool:
    """Report a key with nothing after it."""
    if not isinstance(node, Scalar) or not node.is_empty:
        return False
    names = [part for part in node.path if isinstance(part, str)]
    is_item = bool(node.path) and isinstance(node.path[-1], int)
    words = "empty-item" if is_item else "empty-value"
    sink.error("empty-value", node, words=words, word=quoted(names[-1] if names else ""))
    return True


def text_of(node: Node, sink: Sink) -> str | None:
    """The text of a scalar as written; lists, mappings and emptiness are reported."""
    if not isinstance(node, Scalar):
        sink.error("wrong-type", node, words="expected-text", found=found_instead(node))
        return None
    if is_empty(node, sink):
        return None
    return node.text.strip()


def text(node: Node | None, sink: Sink) -> str | None:
    """Text of one line; line breaks and runs of spaces become one space."""
    written = text_of(node, sink) if node is not None else None
    return None if written is None else " ".join(written.split())


def note(node: Node | None, sink: Sink) -> str | None:
    """Text that keeps its lines."""
    written = text_of(node, sink) if node is not None else None
    if written is None:
        return None
    return "\n".join(" ".join(line.split()) for line in written.splitlines())


def name(node: Node | None, sink: Sink) -> str | None:
    """A name in the making, such as what an operation makes."""
    written = text_of(node, sink) if node is not None else None
    if node is None or written is None:
        return None
    cleaned = clean(written)
    return cleaned if check_name(cleaned, node, sink) else None


def edge_name(node: Node | None, sink: Sink) -> str | None:
    """The name of an edge of a piece that is known already, so that it stands alone."""
    if isinstance(node, Scalar) and "." in node.text:
        sink.error("edge-alone", node, found=quoted(node.text))
        return None
    return name(node, sink)


def known(node: Node | None, names: Names, slug: str, sink: Sink) -> str | None:
    """A name that has to be one of ``names``; ``slug`` is the fault of one that is not."""
    written = text(node, sink)
    if node is None or written is None:
        return None
    cleaned = clean(written)
    if cleaned in names:
        return cleaned
    report_unknown(slug, cleaned, node, names, sink)
    return None


def length(node: Node | None, sink: Sink, units: str) -> Length | None:
    """A length; a bare number is in ``units``."""
    if node is None or is_empty(node, sink):
        return None
    if isinstance(node, MappingNode):
        return _both_lengths(node, sink)
    measure = parse_length(node.text, default_unit=units) if isinstance(node, Scalar) else None
    if measure is None:
        _report_length(node, sink)
    elif measure.mm > LONGEST_MM:
        sink.error("long-length", node, found=found_instead(node), limit=LONGEST_MM // 1_000_000)
    return measure


def _both_lengths(node: MappingNode, sink: Sink) -> Length | None:
    """Read ``{cm: 1.5, in: 5/8}``: a length as its author wants it printed in either system."""
    if not is_pair(node):
        sink.error("unreadable-length", node, words="unreadable-pair", found=found_instead(node))
        return None
    one, other = (length(pair.value, sink, pair.key) for pair in node.pairs)
    if one is None or other is None:
        return None
    texts = [pair.value.text.strip() for pair in node.pairs if isinstance(pair.value, Scalar)]
    if not all(text[-1:].isdecimal() for text in texts):
        sink.error("unreadable-length", node, words="unreadable-pair", found=found_instead(node))
        return None
    metric, imperial = (other, one) if one.written_in == _INCH else (one, other)
    if not are_alike(metric.mm, imperial.mm):
        values = {"metric": centimetres(metric), "imperial": inches(imperial)}
        sink.warning("unlike-lengths", node, **values)
    return one._replace(pair=(other.mm, other.written_in))


def is_pair(node: MappingNode) -> bool:
    """Whether keys are two units, one of either system, and not names of something else."""
    keys = [pair.key for pair in node.pairs]
    return len(keys) == 2 and keys.count(_INCH) == 1 and bool(_METRIC.intersection(keys))


def _report_length(node: Node, sink: Sink) -> None:
    from seqplan.load.meant import has_decimal_comma, length_meant

    text = node.text if isinstance(node, Scalar) and len(node.text) <= _LONGEST_GUESSED else ""
    meant = length_meant(text)
    words = "decimal-comma" if meant and has_decimal_comma(text) else "unreadable-length"
    fix = say("fix-write", text=quoted(meant)) if meant else None
    sink.error("unreadable-length", node, words=words, found=found_instead(node), fix=fix)


def number(node: Node | None, sink: Sink, bounds: tuple[int, int]) -> int | None:
    """A whole number within bounds, both included."""
    if node is None or is_empty(node, sink):
        return None
    least, most = bounds
    written = node.text.strip() if isinstance(node, Scalar) else ""
    value = int(written) if written.isdecimal() and len(written) <= 9 else None
    if value is None or not least <= value <= most:
        found = found_instead(node)
        fix = _written_otherwise(written, least, most)
        sink.error("unreadable-number", node, found=found, least=least, most=most, fix=fix)
        return None
    return value


def _written_otherwise(written: str, least: int, most: int) -> str | None:
    from seqplan.load.meant import number_meant

    meant = number_meant(written[:_LONGEST_GUESSED])
    is_good = meant is not None and least <= int(meant) <= most
    return say("fix-write", text=quoted(meant)) if meant and is_good else None


def yes_no(node: Node | None, sink: Sink) -> bool | None:
    """Yes or no; true and false are understood."""
    if node is None or is_empty(node, sink):
        return None
    value = _YES.get(node.text.strip().casefold()) if isinstance(node, Scalar) else None
    if value is None:
        sink.error("neither-yes-nor-no", node, found=found_instead(node))
    return value


def choice(node: Node | None, sink: Sink, key: Key, *, otherwise: str = "") -> str | None:
    """One of the words that a key takes, whatever its capitals.

    Where no word comes close to another one, ``otherwise`` names the sentence that repairs it.
    """
    if node is None or is_empty(node, sink):
        return None
    written = " ".join(node.text.split()) if isinstance(node, Scalar) else None
    if written is not None:
        for word in key.choices:
            if word.casefold() == written.casefold():
                return word
    fix = _choice_meant(written, key, sink) if written else None
    if fix is None and written and otherwise:
        fix = say(otherwise, name=quoted(written))
    words = listing(key.choices)
    sink.error("unknown-choice", node, choices=words, found=found_instead(node), fix=fix)
    return None


def _choice_meant(written: str, key: Key, sink: Sink) -> str | None:
    """A repair for a word that is none of those wanted, if one is plausible."""
    from seqplan.load.meant import UNITS, comment_meant

    unit = UNITS.get(written.casefold()) if key.name == "units" else None
    if unit in key.choices:
        return say("fix-write", text=quoted(unit))
    return comment_meant(written) or sink.offer(written, key.choices)


def listed(node: Node | None, read: Callable[[Node], T | None], sink: Sink) -> list[tuple[T, Node]]:
    """Read a list; what is no list counts as a list of one. Each value comes with its node."""
    if node is None:
        return []
    if isinstance(node, ListNode) and not node.items:
        sink.error("empty-list", node)
    values = [(read(item), item) for item in items_of(node)]
    return [(value, item) for value, item in values if value is not None]


def items_of(node: Node) -> tuple[Node, ...]:
    """The items of a list; what is no list is its own only item."""
    return node.items if isinstance(node, ListNode) else (node,)


def names_of(
    node: Node | None, read: Callable[[Node], str | None], sink: Sink
) -> list[tuple[str, Node]]:
    """Read a list of names or texts; one that stands twice is reported and kept once."""
    seen: set[str] = set()
    once: list[tuple[str, Node]] = []
    for value, item in listed(node, read, sink):
        if value in seen:
            report_twice(value, item, sink)
        else:
            seen.add(value)
            once.append((value, item))
    return once


def mapping(node: Node, sink: Sink, *, words: str) -> MappingNode | None:
    """A mapping, or a report of what stands there instead."""
    if isinstance(node, MappingNode):
        return node
    if not is_empty(node, sink):
        sink.error("wrong-type", node, words=words, found=found_instead(node))
    return None


def mapping_of(node: Node, keys: Keys, sink: Sink, *, words: str) -> MappingNode | None:
    """A mapping with at least one of ``keys``; another one was meant as something else."""
    table = mapping(node, sink, words=words)
    if table is None or any(pair.key in keys for pair in table.pairs):
        return table
    sink.error("wrong-type", node, words=words, found=found_instead(node))
    return None


def table(pair: Pair | None, sink: Sink) -> MappingNode | None:
    """A whole section: names with what they are. An empty one is reported at its key."""
    if pair is None:
        return None
    value = pair.value
    if isinstance(value, MappingNode) and value.pairs:
        return value
    is_bare = isinstance(value, Scalar) and value.is_empty
    if is_bare or (isinstance(value, MappingNode) and not value.pairs):
        sink.error("empty-section", pair, word=quoted(pair.key))
    else:
        sink.error(
            "wrong-type",
            value,
            words="expected-table",
            word=quoted(pair.key),
            found=found_instead(value),
        )
    return None
