"""What to say where a text cannot be taken apart: the parser's complaint in a sewist's words."""

from seqplan.base.diagnostic import Note
from seqplan.base.path import Span
from seqplan.load.nodes import DEPTH_LIMIT, Spot
from seqplan.load.repair import Try, find_repair
from seqplan.load.sink import Sink, quoted
from seqplan.load.slip import Complaint, Repair
from seqplan.words.say import say

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
_SLUGS = {
    "missing-colon-here": "missing-colon",
    "no-space-after-colon": "missing-colon",
    "equals-for-colon": "missing-colon",
    "colon-too-many": "stray-colon",
    "text-with-colon": "stray-colon",
    "no-braces": "stray-colon",
    "smart-quotes": "unclosed-quote",
    "apostrophe": "unclosed-quote",
    "text-after-quote": "unclosed-quote",
    "stray-quote": "unclosed-quote",
    "unopened-list": "unclosed-list",
    "unopened-braces": "unclosed-braces",
    "open-quote": "unclosed-quote",
    "open-list": "unclosed-list",
    "open-braces": "unclosed-braces",
    "semicolon": "unclosed-braces",
    "missing-comma": "unclosed-braces",
    "stray-dash": "uneven-indent",
    "out-of-line": "uneven-indent",
}
"""The slug of each slip, where it is not its own name."""

_WITH_OPENING = frozenset({"unclosed-list", "unclosed-braces", "unclosed-quote"})


_NO_SLIPS = ("maximum nesting depth", "unknown escape", "invalid Unicode")
_MOST_REPAIRS = 20
_MOST_PARSED = 2_000_000
"""Letters that are taken apart in search of slips, before that takes too long."""


def find_slips(
    lines: list[str], complaint: Complaint, attempt: Try
) -> tuple[list[str], list[Repair], Complaint | None]:
    """Put slips right one after the other.

    Parameters
    ----------
    complaint
        What there is to complain of in ``lines``.
    attempt
        Takes lines apart, and says what there is to complain of then.

    Returns
    -------
    tuple
        The lines put right, the repairs, and the complaint behind which no slip was found.
    """
    size, parsed = sum(map(len, lines)) + 1, 0
    repairs: list[Repair] = []

    def counted(tried: list[str]) -> Complaint | None:
        nonlocal parsed
        parsed += size
        return attempt(tried) if parsed <= _MOST_PARSED else complaint

    left: Complaint | None = complaint
    while left is not None and len(repairs) < _MOST_REPAIRS and _is_slip(left, lines):
        repair = find_repair(lines, left, counted)
        if repair is None or parsed > _MOST_PARSED:
            break
        repairs.append(repair)
        lines = [*lines[: repair.number - 1], repair.line, *lines[repair.number :]]
        left = counted(lines)
    return lines, repairs, left


def _is_slip(complaint: Complaint, lines: list[str]) -> bool:
    """Whether something was forgotten, and it is no tab, no odd sign and no limit."""
    is_other = any(part in complaint.problem for part in _NO_SLIPS)
    return not is_other and not _is_sign(complaint) and _tab(complaint, lines) is None


def report_repair(repair: Repair, lines: list[str], sink: Sink) -> None:
    """Report the slip behind a complaint, with the line as it should be."""
    line = lines[repair.number - 1]
    column = min(repair.column, len(line) + 1)
    at = Spot(Span(repair.number, column, repair.number, column + 1))
    slug = _SLUGS.get(repair.words, repair.words)
    sink.error(slug, at, words=repair.words, text=_shown(repair))


def report_complaint(complaint: Complaint, lines: list[str], sink: Sink) -> None:
    """Report a complaint of the parser at its place, where the slip behind it is not known."""
    number = min(complaint.line, len(lines))
    line = lines[number - 1]
    column = min(complaint.column, len(line) + 1) if number == complaint.line else len(line) + 1
    at = Spot(Span(number, column, number, column + 1))
    tab = _tab(complaint, lines)
    if tab is not None:
        sink.error("tab", tab)
        return
    letter = line[column - 1 : column] or " "
    if _is_sign(complaint):
        sink.error("stray-character", at, letter=letter)
        return
    words = next((ours for part, ours in _KNOWN if part in complaint.problem), "unreadable-text")
    notes: tuple[Note, ...] = ()
    if words in _WITH_OPENING and complaint.opened is not None:
        opened_line, opened_column = complaint.opened
        place = Span(opened_line, opened_column, opened_line, opened_column + 1)
        notes = (Note(say("note-opened-here"), span=place),)
    sink.error(words, at, notes=notes, limit=DEPTH_LIMIT, problem=complaint.problem)


def _is_sign(complaint: Complaint) -> bool:
    return "cannot start any token" in complaint.problem or "expected alpha" in complaint.problem


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


def _shown(repair: Repair) -> str:
    return repair.text if repair.words == "out-of-line" else quoted(repair.text)
