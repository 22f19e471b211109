"""What is wrong with a garment, as data: collected, sorted, printed by a renderer."""

from enum import Enum
from typing import NamedTuple

from seqplan.base.ids import RuleSlug
from seqplan.base.path import DocPath, Span


class Severity(Enum):
    """How bad a finding is; ``rank`` sorts the worst first."""

    ERROR = "error"
    WARNING = "warning"
    CAUTION = "caution"
    """Something that can hurt whoever wears the garment; nothing is wrong with the file."""
    HINT = "hint"

    @property
    def rank(self) -> int:
        """0 for an error, 1 for a warning, 2 for a caution, 3 for a hint."""
        return ["error", "warning", "caution", "hint"].index(self.value)


class Note(NamedTuple):
    """A further sentence of a finding, with the place it speaks of if it has one."""

    message: str
    path: DocPath | None = None
    span: Span | None = None


class Diagnostic(NamedTuple):
    """One fault, or one remark, about one place.

    Parameters
    ----------
    slug
        The name of the fault or rule.
    severity
        Error, warning, caution or hint.
    message
        One sentence without a final period that can stand alone; names in backticks.
    path
        Where in the document, as a path.
    span
        Where in the text. Readers fill it in; what rules find is placed by its path.
    notes
        The reason and what else to know, each a full sentence.
    fix
        What would put it right, a full sentence.
    """

    slug: RuleSlug
    severity: Severity
    message: str
    path: DocPath = ()
    span: Span | None = None
    notes: tuple[Note, ...] = ()
    fix: str | None = None


def diagnostic_order(item: Diagnostic) -> tuple[int, int, int, str, str]:
    """Sort key: by place, then the worst first, then by name."""
    line, column = (item.span.line, item.span.column) if item.span else (10**9, 0)
    return (line, column, item.severity.rank, item.slug, item.message)
