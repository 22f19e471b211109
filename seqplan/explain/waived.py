"""The rules that the author sets aside: what becomes of each waiver, and what to say of it."""

from collections.abc import Iterable, Iterator, Mapping, Sequence
from typing import NamedTuple

from seqplan.base.diagnostic import Diagnostic, Note, Severity
from seqplan.base.ids import OpId, RuleSlug
from seqplan.base.strength import Strength
from seqplan.explain.written import check_written
from seqplan.graph.reason import Reason
from seqplan.model.garment import Garment, Waiver
from seqplan.plan.binding import Binding
from seqplan.plan.waivers import is_named, is_waivable
from seqplan.recipes.construction import Construction
from seqplan.rules.book import RULE
from seqplan.rules.rule import Rule
from seqplan.words.say import say

_MOST_NAMES = 3


class SetAside(NamedTuple):
    """A waiver that holds, and what the check would report without it.

    Parameters
    ----------
    waiver
        The waiver.
    findings
        What the written order breaks of the reasons that are set aside; a reason that several
        waivers set aside counts with the first.
    """

    waiver: Waiver
    findings: Sequence[Diagnostic]


def find_set_aside(c: Construction, reasons: Iterable[Reason]) -> tuple[SetAside, ...]:
    """Give the waivers that hold, in the order of the file, with what they keep from the check.

    Parameters
    ----------
    c
        The garment.
    reasons
        All its reasons.
    """
    left = [reason for reason in reasons if is_waivable(reason)]
    found = []
    for waiver in c.garment.waivers:
        rule = RULE.get(waiver.rule)
        if rule is None or _is_refused(rule, [r for r in reasons if is_named(waiver, r)]):
            continue
        ours = tuple(reason for reason in left if is_named(waiver, reason))
        left = [reason for reason in left if reason not in set(ours)]
        told = tuple(reason for reason in ours if reason.strength is not Strength.PREFER)
        findings = check_written(c, Binding(told))
        found.append(SetAside(waiver, tuple(each._replace(fix=None) for each in findings)))
    return tuple(found)


def check_waivers(c: Construction, reasons: Iterable[Reason]) -> Iterator[Diagnostic]:
    """Report waivers that set nothing aside, and those that cannot.

    Parameters
    ----------
    c
        The garment.
    reasons
        All its reasons.
    """
    position = {id_: place for place, id_ in enumerate(c.ids)}
    by_rule: dict[RuleSlug, list[Reason]] = {}
    for reason in reasons:
        by_rule.setdefault(reason.rule, []).append(reason)
    for waiver in c.garment.waivers:
        rule = RULE.get(waiver.rule)
        if rule is None:
            yield _unknown(waiver)
            continue
        of_rule = by_rule.get(waiver.rule, [])
        named = [reason for reason in of_rule if is_named(waiver, reason)]
        if _is_refused(rule, named):
            yield _refused(waiver, named)
        elif not named:
            yield _unused(c.garment, waiver, of_rule)
        elif _is_kept(named, position):
            yield _kept(waiver)


def list_waivers(found: Iterable[SetAside]) -> tuple[str, ...]:
    """One line for each rule that is set aside, with the author's reason."""
    return tuple(
        say(
            "check-waived" if waiver.at else "check-waived-everywhere",
            rule=waiver.rule,
            at=_names(waiver.at),
            because=waiver.because.rstrip("."),
        )
        for waiver, _ in found
    )


def _is_refused(rule: Rule, named: Iterable[Reason]) -> bool:
    """Whether a waiver asks for what is impossible or ruins the cloth: a must, and nothing else."""
    return rule.strength is Strength.MUST and not any(map(is_waivable, named))


def _is_kept(named: list[Reason], position: Mapping[OpId, int]) -> bool:
    return all(reason.is_held(position) for reason in named if is_waivable(reason))


def _unknown(waiver: Waiver) -> Diagnostic:
    from difflib import get_close_matches

    near = get_close_matches(waiver.rule, RULE, _MOST_NAMES)
    fix = say("check-unknown-rule-near", names=_names(near)) if near else None
    return _finding("unknown-rule", Severity.ERROR, waiver, fix=fix)


def _refused(waiver: Waiver, named: list[Reason]) -> Diagnostic:
    why = tuple(Note(reason.because, reason.source) for reason in named[:1])
    notes = (*why, Note(say("check-cannot-be-waived-why")))
    return _finding("cannot-be-waived", Severity.ERROR, waiver, notes=notes)


def _unused(garment: Garment, waiver: Waiver, of_rule: list[Reason]) -> Diagnostic:
    """Warn of a waiver that names nothing; where there are choices, others may need it."""
    severity = Severity.HINT if garment.choices else Severity.WARNING
    spoken_of = dict.fromkeys(
        op.partition("/")[0] for reason in of_rule for op in sorted(reason.operations)
    )
    fix = None
    if spoken_of:
        names = _names(list(spoken_of)[:_MOST_NAMES])
        fix = say("check-unused-waiver-elsewhere", rule=waiver.rule, names=names)
    return _finding("unused-waiver", severity, waiver, fix=fix)


def _kept(waiver: Waiver) -> Diagnostic:
    """Other orders may still make use of it, so this is a hint."""
    return _finding("kept-though-waived", Severity.HINT, waiver)


def _finding(
    slug: str,
    severity: Severity,
    waiver: Waiver,
    *,
    notes: tuple[Note, ...] = (),
    fix: str | None = None,
) -> Diagnostic:
    key = f"check-{slug}" if waiver.at or slug != "unused-waiver" else f"check-{slug}-anywhere"
    values = {"rule": waiver.rule, "at": _names(waiver.at)}
    return Diagnostic(
        slug=RuleSlug(slug),
        severity=severity,
        message=say(key, **values),
        path=(*waiver.path, "rule"),
        notes=notes,
        fix=fix or say(f"check-{slug}-fix", **values),
    )


def _names(names: Iterable[str]) -> str:
    return ", ".join(f"`{name}`" for name in names)
