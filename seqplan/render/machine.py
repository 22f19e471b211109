"""Everything as JSON for programs: plain data with stable keys."""

import json
from collections.abc import Iterable, Mapping
from typing import Any

from seqplan.base.diagnostic import Diagnostic
from seqplan.base.path import Span, format_path
from seqplan.explain.why import Between, Grounds, Place
from seqplan.graph.reason import Reason
from seqplan.plan.plan import Group, Plan
from seqplan.rules.rule import Rule

Data = dict[str, Any]


def to_json(data: Mapping[str, Any]) -> str:
    """Write data as JSON, indented, keys in the order given, other scripts as they are."""
    return json.dumps(data, indent=2, ensure_ascii=False) + "\n"


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


def plan_data(plan: Plan) -> Data:
    """Give an order with its steps, its groups and what is known about it."""
    return {
        "purpose": plan.purpose.value,
        "order": list(plan.order),
        "groups": [_group(group) for group in plan.groups],
        "changes": plan.changes,
        "change_minutes": plan.change_minutes,
        "unit_changes": plan.unit_changes,
        "lower_bound": plan.lower_bound,
        "proof": plan.proof.value,
        "moved": list(plan.moved),
        "given_up": [reason_data(reason) for reason in plan.given_up],
    }


def reason_data(reason: Reason) -> Data:
    """Give a reason with its alternatives, each a list of [before, after]."""
    return {
        "rule": reason.rule,
        "kind": reason.kind.value,
        "strength": reason.strength.value,
        "because": reason.because,
        "source": format_path(reason.source),
        "alternatives": [
            [[arc.before, arc.after] for arc in bundle] for bundle in reason.alternatives
        ],
    }


def place_data(place: Place) -> Data:
    """Give what comes before and after an operation."""
    return {
        "name": place.name,
        "before": _grounds(place.before),
        "after": _grounds(place.after),
        "earlier_still": list(place.long_before),
        "later_still": list(place.long_after),
        "choices": [reason_data(reason) for reason in place.choices],
    }


def between_data(between: Between) -> Data:
    """Give the chain between two operations; an empty chain means that they are free."""
    return {
        "first": between.first,
        "second": between.second,
        "free": between.is_free,
        "chain": _grounds(between.chain),
        "choices": [reason_data(reason) for reason in between.choices],
    }


def rule_data(rule: Rule) -> Data:
    """Give a rule."""
    return {
        "slug": rule.slug,
        "strength": rule.strength.value,
        "kind": rule.kind.value,
        "numbers": list(rule.numbers),
        "headline": rule.headline,
        "text": rule.text.strip(),
    }


def _group(group: Group) -> Data:
    return {
        "unit": sorted(group.unit),
        "station": group.setup.station if group.setup else None,
        "foot": group.setup.foot if group.setup else None,
        "steps": [
            {
                "number": step.number,
                "entry": step.entry,
                "operations": [
                    {
                        "id": op.id,
                        "action": op.action.value,
                        "station": op.setup.station,
                        "foot": op.setup.foot,
                    }
                    for op in step.operations
                ],
            }
            for step in group.steps
        ],
    }


def _grounds(grounds: Iterable[Grounds]) -> list[Data]:
    return [
        {
            "before": ground.arc.before,
            "after": ground.arc.after,
            "reasons": [reason_data(reason) for reason in ground.reasons],
        }
        for ground in grounds
    ]


def _span(span: Span | None) -> Data | None:
    if span is None:
        return None
    return {
        "line": span.line,
        "column": span.column,
        "end_line": span.end_line,
        "end_column": span.end_column,
    }
