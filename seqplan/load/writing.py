"""Small parts of a garment file as text: texts in quotes where they need them, lists, braces."""

import re
from collections.abc import Iterable, Mapping

from seqplan.base.measure import Length, format_pair, format_written
from seqplan.load.text import first_unseen

Values = Mapping[str, str | None]

# Text that needs no quotes anywhere, neither here nor for any other reader of the format.
_PLAIN = re.compile(r"[^\W\d_](?:[\w ./@|()+½¼¾°-]*[\w.)])?")
_TAKEN_WORDS = frozenset({"yes", "no", "on", "off", "true", "false", "null", "y", "n"})
_ESCAPES = {"\\": "\\\\", '"': '\\"', "\n": "\\n", "\t": "\\t"}


def write_text(text: str | None) -> str | None:
    """Write a text, in quotes unless it is plain enough for anybody."""
    return None if text is None else quoted_text(text)


def quoted_text(text: str) -> str:
    """Write a text that is there.

    >>> quoted_text("centre | opening"), quoted_text("1:30"), quoted_text("no")
    ('centre | opening', '"1:30"', '"no"')
    """
    if _PLAIN.fullmatch(text) and "  " not in text and text.casefold() not in _TAKEN_WORDS:
        return text
    return '"' + "".join(_escaped(letter) for letter in text) + '"'


def write_length(length: Length | None) -> str | None:
    """Write a length with its unit, or both measures of a pair."""
    if length is not None and length.pair is not None:
        return write_braces(format_pair(length))
    return None if length is None else format_written(length)


def write_number(number: int | None) -> str | None:
    """Write a whole number."""
    return None if number is None else str(number)


def write_yes(is_so: bool) -> str | None:
    """Write ``yes``, or nothing."""
    return "yes" if is_so else None


def write_texts(texts: Iterable[str]) -> str | None:
    """Write texts as a list, a single one alone."""
    return write_list(quoted_text(text) for text in texts)


def write_list(items: Iterable[str]) -> str | None:
    """Put written things into a list, a single one alone; nothing for none."""
    written = list(items)
    if len(written) == 1:
        return written[0]
    return f"[{', '.join(written)}]" if written else None


def write_braces(values: Values) -> str:
    """Put keys with what is written after them into braces; those without a value are left out."""
    pairs = (f"{key}: {value}" for key, value in values.items() if value is not None)
    return "{" + ", ".join(pairs) + "}"


def write_when(when: tuple[tuple[str, str], ...]) -> str | None:
    """Write the choices for which something is there; several options of one are a list."""
    options: dict[str, list[str]] = {}
    for choice, option in when:
        options.setdefault(choice, []).append(option)
    pairs = {quoted_text(choice): write_texts(found) for choice, found in options.items()}
    return write_braces(pairs) if pairs else None


def _escaped(letter: str) -> str:
    if letter in _ESCAPES:
        return _ESCAPES[letter]
    if first_unseen(letter) is None:
        return letter
    code = ord(letter)
    return f"\\x{code:02x}" if code < 256 else f"\\u{code:04x}"
