"""What to say where a text cannot be taken apart: the parser's complaint in a sewist's words."""

from typing import NamedTuple

from seqplan.base.diagnostic import Note
from seqplan.base.path import Span
from seqplan.load.nodes import DEPTH_LIMIT, Spot
from seqplan.load.sink import Sink
from seqplan.words.say import say


class Complaint(NamedTuple):
    """A complaint of the parser; ``opened`` is where that began which it could not finish."""

    problem: str
    context: str
    line: int
    column: int
    opened: tuple[int, int] | None


# What the two parsers say, by a part that both use, and what we call it.
_KNOWN: tuple[tuple[str, str], ...] = (
    ("maximum nesting depth", "too-deep"),
    ("mapping values are not allowed", "stray-colon"),
    ("',' or ']'", "unclosed-list"),
    ("',' or '}'", "unclosed-braces"),
    ("unexpected end of stream", "unclosed-quote"),
    ("unexpected document separator", "unclosed-quote"),
    ("unknown escape", "unknown-escape"),
    ("invalid Unicode", "unknown-escape"),
    ("could not find expected ':'", "missing-colon"),
    ("expected '-' indicator", "uneven-indent"),
    ("did not find expected key", "uneven-indent"),
    ("expected <block end>", "uneven-indent"),
)
_WITH_OPENING = frozenset({"unclosed-list", "unclosed-braces", "unclosed-quote"})


def report_complaint(complaint: Complaint, lines: list[str], sink: Sink) -> None:
    """Report a complaint of the parser at its place."""
    number = min(complaint.line, len(lines))
    line = lines[number - 1]
    column = min(complaint.column, len(line) + 1) if number == complaint.line else len(line) + 1
    at = Spot(Span(number, column, number, column + 1))
    tab = _tab(complaint, lines)
    if tab is not None:
        sink.error("tab", tab)
        return
    letter = line[column - 1 : column] or " "
    if "cannot start any token" in complaint.problem or "expected alpha" in complaint.problem:
        sink.error("stray-character", at, letter=letter)
        return
    words = next((ours for part, ours in _KNOWN if part in complaint.problem), "unreadable-text")
    notes: tuple[Note, ...] = ()
    if words in _WITH_OPENING and complaint.opened is not None:
        opened_line, opened_column = complaint.opened
        place = Span(opened_line, opened_column, opened_line, opened_column + 1)
        notes = (Note(say("note-opened-here"), span=place),)
    sink.error(words, at, notes=notes, limit=DEPTH_LIMIT, problem=complaint.problem)


def _tab(complaint: Complaint, lines: list[str]) -> Spot | None:
    """The tab that is to blame: at the place itself, or in the indentation of its line."""
    if complaint.line > len(lines):
        return None
    line = lines[complaint.line - 1]
    indent = line[: len(line) - len(line.lstrip(" \t"))]
    column = indent.find("\t") + 1
    if not column and line[complaint.column - 1 : complaint.column] == "\t":
        column = complaint.column
    if not column or ("tab" not in complaint.problem and "token" not in complaint.problem):
        return None
    return Spot(Span(complaint.line, column, complaint.line, column + 1))
