"""The leeway of operations as data."""

from collections.abc import Iterable

from seqplan.plan.leeway import Leeway, Leeways, Neighbour, Span
from seqplan.render.machine.answer import reason_data
from seqplan.render.machine.document import Data


def leeways_data(found: Leeways) -> Data:
    """Give where operations can stand; places count from 1."""
    return {
        "of": "entries" if found.is_of_entries else "operations",
        "places": found.places,
        "has_open_choices": found.has_choices,
        "leeway": [_row(row) for row in found.rows],
    }


def _row(row: Leeway) -> Data:
    return {
        "name": row.name,
        "written": row.written,
        **_span(row.span),
        "by_musts_alone": _span(row.must),
        "too_late_after": list(row.too_late),
        "before": _neighbours(row.before),
        "after": _neighbours(row.after),
        "choices": [reason_data(reason) for reason in row.choices],
    }


def _span(span: Span) -> Data:
    return {
        "earliest": span.earliest,
        "latest": span.latest,
        "slack": span.slack,
        "proven": span.is_proven,
    }


def _neighbours(neighbours: Iterable[Neighbour]) -> list[Data]:
    return [
        {
            "name": each.name,
            "strength": each.strength.value,
            "reasons": [reason_data(reason) for reason in each.reasons],
        }
        for each in neighbours
    ]
