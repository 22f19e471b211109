"""Findings as data."""

from seqplan.base.diagnostic import Diagnostic
from seqplan.base.path import Span, format_path
from seqplan.explain.waived import SetAside
from seqplan.render.machine.document import Data


def diagnostic_data(item: Diagnostic, name: str) -> Data:
    """Give a finding: slug, severity, message, file, place, path, notes and fix."""
    return {
        "slug": item.slug,
        "severity": item.severity.value,
        "message": item.message,
        "file": name,
        "path": format_path(item.path),
        "place": _span(item.span),
        "notes": [{"message": note.message, "place": _span(note.span)} for note in item.notes],
        "fix": item.fix,
    }


def set_aside_data(aside: SetAside, name: str) -> Data:
    """Give a waiver that holds: rule, operations, reason, and what is not reported for it."""
    waiver, findings = aside
    return {
        "rule": waiver.rule,
        "at": list(waiver.at),
        "because": waiver.because,
        "findings": [diagnostic_data(item, name) for item in findings],
    }


def _span(span: Span | None) -> Data | None:
    if span is None:
        return None
    return {
        "line": span.line,
        "column": span.column,
        "end_line": span.end_line,
        "end_column": span.end_column,
    }
