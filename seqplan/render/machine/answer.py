"""Reasons, answers to why, and rules as data."""

from collections.abc import Iterable

from seqplan.base.ids import RuleSlug
from seqplan.base.path import format_path
from seqplan.explain.selection import FINDINGS, headline
from seqplan.explain.why import Between, Grounds, Place
from seqplan.graph.reason import Reason
from seqplan.render.machine.document import Data
from seqplan.rules.rule import Rule


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


def finding_data(slug: RuleSlug) -> Data:
    """Give what a check finds besides broken rules."""
    return {"slug": slug, "severity": FINDINGS[slug].value, "headline": headline(slug)}


def _grounds(grounds: Iterable[Grounds]) -> list[Data]:
    return [
        {
            "before": ground.arc.before,
            "after": ground.arc.after,
            "reasons": [reason_data(reason) for reason in ground.reasons],
        }
        for ground in grounds
    ]
