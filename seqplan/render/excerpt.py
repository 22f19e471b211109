"""Findings as people read them: the place, the line with carets under it, the reason, the repair.

Columns count characters. Under a line, carets are put by the width that each character takes on a
screen. What nobody could see, or what would turn the line round, is shown by its number.
"""

import re
from collections.abc import Iterable
from dataclasses import dataclass

from seqplan.base.diagnostic import Diagnostic, Note
from seqplan.base.path import Span
from seqplan.base.visible import screen_width, shown, visible
from seqplan.words.say import say

LINE_WIDTH = 92
"""The most columns of a line that are shown."""

_INDENT = "   "
_NUMBER_WIDTH = 5
_BEFORE = 40
_LINE_BREAK = re.compile("\r\n|\r|\n")
_HAS_TEXT = re.compile(r"\S")
_CUT = "…"


@dataclass(frozen=True, slots=True)
class _Window:
    """The part of a line that is shown, and where the carets go."""

    text: str
    caret_from: int
    caret_width: int


def print_diagnostics(diagnostics: Iterable[Diagnostic], name: str, text: str) -> str:
    """Print findings with the lines they speak of.

    Parameters
    ----------
    diagnostics
        In the order in which they are to be printed.
    name
        What the file is called.
    text
        The text of the file, without a byte order mark.

    Returns
    -------
    str
        The printed findings with an empty line between them; empty if there are none.
    """
    lines = _LINE_BREAK.split(text)
    return "\n".join(_block(item, name, lines) for item in diagnostics)


def _block(item: Diagnostic, name: str, lines: list[str]) -> str:
    place = f"{name}:{item.span.line}:{item.span.column}" if item.span else name
    message = f"{item.severity.value}: {item.message} ({item.slug})"
    rows = [f"{visible(place)}: {visible(message)}"]
    if item.span is not None:
        rows.extend(_excerpt(item.span, lines))
    rows.extend(f"{_INDENT}{visible(_note(note))}" for note in item.notes)
    if item.fix is not None:
        rows.append(f"{_INDENT}{visible(item.fix)}")
    return "\n".join(rows) + "\n"


def _note(note: Note) -> str:
    if note.span is None:
        return note.message
    return say("note-with-place", note=note.message, line=note.span.line)


def _excerpt(span: Span, lines: list[str]) -> list[str]:
    """The line with its number and the carets; nothing for a place outside the text."""
    if not 1 <= span.line <= len(lines) or not _HAS_TEXT.search(lines[span.line - 1]):
        return []
    line = lines[span.line - 1]
    end = span.end_column if span.end_line == span.line else len(line) + 1
    window = _window(line, span.column - 1, max(end - 1, span.column))
    carets = " " * window.caret_from + "^" * window.caret_width
    return [
        f"{span.line:>{_NUMBER_WIDTH}} | {window.text}".rstrip(),
        f"{'':>{_NUMBER_WIDTH}} | {carets}",
    ]


def _window(line: str, start: int, end: int) -> _Window:
    """Cut a line to what fits round the place from ``start`` to ``end``."""
    first = 0 if end <= LINE_WIDTH and len(line) <= 2 * LINE_WIDTH else max(0, start - _BEFORE)
    left = (_CUT if first else "") + shown(line[first:start])
    room = max(LINE_WIDTH - screen_width(left), 1)
    # Slices are kept short: a line can be as long as a file, and hold a thousand places.
    marked, was_cut = _fitting(line[start : min(end, start + room + 1)], room)
    rest = "" if was_cut else line[end : end + room + 1]
    right, rest_was_cut = _fitting(rest, max(room - screen_width(marked), 0))
    tail = _CUT if was_cut or rest_was_cut else ""
    return _Window(left + marked + right + tail, screen_width(left), max(screen_width(marked), 1))


def _fitting(text: str, room: int) -> tuple[str, bool]:
    """As much of a text as fits, made visible, and whether anything was cut off."""
    kept, used = "", 0
    for letter in text:
        made = shown(letter)
        used += screen_width(made)
        if used > room:
            return kept, True
        kept += made
    return kept, False
