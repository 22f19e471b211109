"""Keys in braces without a value: what is left where a sign between two words was forgotten.

`{hem: front.hem, depth: 2,5}` has a key `5`, and `{cut fold}` has a key `cut fold`. What was meant
follows from the sign that is missing and from what the key before takes; it is reported once, and
reading goes on with what was meant.
"""

import re
from collections.abc import Mapping

from seqplan.load.keys import LISTS, Key, Takes
from seqplan.load.nodes import ListNode, MappingNode, Node, Pair, Scalar
from seqplan.load.sink import Sink, quoted

_SIGNS = {":": "no-space-after-colon", "=": "equals-for-colon", "": "missing-colon-here"}
_KEY_AND_VALUE = r"^(?P<key>[^:=]+?)\s*(?P<sign>[:=])\s*(?P<value>\S.*)$"
_TEXTS = frozenset({Takes.TEXT, Takes.NOTE})


def joined(table: MappingNode, keys: Mapping[str, Key], sink: Sink) -> MappingNode:
    """Put strays back where they belong, each with one report."""
    pairs: list[Pair] = []
    waiting = list(table.pairs)
    while waiting:
        pair = waiting.pop(0)
        if not pair.is_stray or pair.key in keys:
            pairs.append(pair)
            continue
        before = pairs[-1] if pairs else None
        key = keys.get(before.key) if before is not None else None
        is_text = key is not None and key.takes in _TEXTS
        whole = None if is_text else split_pair(pair, keys, sink)
        if whole is not None:
            pairs.append(whole)
            continue
        run = [pair]
        while waiting and waiting[0].is_stray and waiting[0].key not in keys:
            run.append(waiting.pop(0))
        longer = _longer(before, key, run, sink) if before is not None else None
        if longer is not None:
            pairs[-1] = longer
        else:
            pairs += run
    return MappingNode(tuple(pairs), table.span, table.path)


def split_pair(pair: Pair, keys: Mapping[str, Key], sink: Sink) -> Pair | None:
    """Read `cut fold`, `cut:fold` and `cut = fold` as a key with its value."""
    parted = key_and_value(pair.key, keys)
    if parted is None:
        return None
    name, sign, text = parted
    value = Scalar(text, pair.span, pair.path)
    words = _SIGNS[sign]
    sink.error("missing-colon", pair, words=words, text=quoted(f"{name}: {text}"))
    return Pair(name, pair.span, value)


def key_and_value(text: str, keys: Mapping[str, object]) -> tuple[str, str, str] | None:
    """Part a text into a known key, the sign after it, and what stands behind that."""
    match = re.match(_KEY_AND_VALUE, text)
    if match is not None and match["key"] in keys:
        return match["key"], match["sign"], match["value"]
    words = text.split()
    for count in range(len(words) - 1, 0, -1):
        name = " ".join(words[:count])
        if name in keys:
            return name, "", " ".join(words[count:])
    return None


def _longer(before: Pair, key: Key | None, run: list[Pair], sink: Sink) -> Pair | None:
    """The pair before with the strays that belong to its value."""
    value = before.value
    is_text = key is not None and key.takes in _TEXTS
    if isinstance(value, Scalar) and not is_text and _is_decimal(value, run):
        # Whoever reads the number says what is wrong with it.
        value = value._replace(text=f"{value.text},{run[0].key}")
    elif is_text and isinstance(value, Scalar):
        text = ", ".join((value.text, *(stray.key for stray in run)))
        sink.error("text-with-comma", value, text=quoted(f'{before.key}: "{_plain(text)}"'))
        value = value._replace(text=text)
    elif key is not None and key.takes in LISTS and isinstance(value, Scalar) and value.text:
        value = _bracketed(before.key, value, run, sink)
    else:
        return None
    return before._replace(value=value)


def _is_decimal(value: Scalar, run: list[Pair]) -> bool:
    """Whether a number goes on right after the comma."""
    start, end = run[0].span, value.span
    is_close = (start.line, start.column - 1) == (end.end_line, end.end_column)
    is_number = value.text.isdecimal() and run[0].key[:1].isdecimal()
    return is_close and is_number and len(run) == 1


def _bracketed(name: str, value: Scalar, run: list[Pair], sink: Sink) -> Node:
    """The strays as items of a list that has no brackets, or round ones."""
    items = [value, *(Scalar(stray.key, stray.span, stray.path) for stray in run)]
    texts = [item.text.strip("() ") for item in items]
    sink.error("missing-brackets", value, text=quoted(f"{name}: [{', '.join(texts)}]"))
    bare = (item._replace(text=text) for item, text in zip(items, texts, strict=True) if text)
    return ListNode(tuple(bare), value.span, value.path)


def _plain(text: str) -> str:
    return text.translate(str.maketrans("", "", '"“”„'))
