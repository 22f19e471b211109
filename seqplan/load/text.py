"""Bytes to text: size, encoding, and characters that nobody can see."""

import re

from seqplan.base.path import Span
from seqplan.load.nodes import Spot
from seqplan.load.sink import Sink

SIZE_LIMIT = 2_000_000
"""Bytes; the longest garment we know of is under 20 000."""

_MOST_REPORTED = 10

# YAML allows these few line breaks beside ours, but editors do not count them as lines.
_UNSEEN = (
    "[^\t\n\r\x20-\x7e\xa0-\u2027\u202a-\ud7ff\ue000-\ufefe\uff00-\ufffd\U00010000-\U0010ffff]"
)
_UNSEEN_IN_ASCII = re.compile("[^\t\n\r\x20-\x7e]")
_LINE_BREAK = re.compile("\r\n|\r|\n")


def read_text(data: bytes | str, sink: Sink) -> tuple[str, bool]:
    """Give the text, without a byte order mark, and whether it can be read on."""
    text = data if isinstance(data, str) else _decode(data, sink)
    text = text.removeprefix("\ufeff")
    size = len(data) if isinstance(data, bytes) else len(text.encode("utf-8", "surrogatepass"))
    if size > SIZE_LIMIT:
        sink.error("file-too-large", Spot(Span(1, 1, 1, 1)), limit=SIZE_LIMIT // 1_000_000)
        return text, False
    if sink.has_errors:
        return text, False
    _report_unseen(text, sink)
    return text, not sink.has_errors


def lines_of(text: str) -> list[str]:
    """Split a text into lines as editors count them."""
    return _LINE_BREAK.split(text)


def first_unseen(text: str) -> str | None:
    """Give the first character of ``text`` that has no business in a garment file."""
    match = _unseen_for(text).search(text)
    return match.group() if match else None


def character_code(letter: str) -> str:
    """Write a character as its number, such as ``U+0007``."""
    return f"U+{ord(letter):04X}"


def _decode(data: bytes, sink: Sink) -> str:
    try:
        return data.decode("utf-8")
    except UnicodeDecodeError as error:
        if len(data) <= SIZE_LIMIT:
            words = "not-utf-16" if data[:2] in (b"\xff\xfe", b"\xfe\xff") else "not-utf-8"
            before = data[: error.start].decode("utf-8").removeprefix("\ufeff")
            byte = f"{data[error.start]:02X}"
            sink.error("not-utf-8", Spot(_place(before)), words=words, byte=byte)
        return data.decode("utf-8", "replace")


def _report_unseen(text: str, sink: Sink) -> None:
    for count, match in enumerate(_unseen_for(text).finditer(text)):
        if count == _MOST_REPORTED:
            return
        at = Spot(_place(text[: match.start()]))
        sink.error("control-character", at, code=character_code(match.group()))


def _place(before: str) -> Span:
    """The place of the character that comes after ``before``."""
    lines = lines_of(before)
    column = len(lines[-1]) + 1
    return Span(len(lines), column, len(lines), column + 1)


def _unseen_for(text: str) -> re.Pattern[str]:
    """The pattern for a text; the long one takes a while to compile, so only where it is needed."""
    return _UNSEEN_IN_ASCII if text.isascii() else re.compile(_UNSEEN)
