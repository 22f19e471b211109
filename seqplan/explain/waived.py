"""The rules that the author sets aside: whether there are such rules, and what to say of them."""

from collections.abc import Iterator

from seqplan.base.diagnostic import Diagnostic, Severity
from seqplan.base.ids import RuleSlug
from seqplan.model.garment import Garment
from seqplan.rules.book import RULE
from seqplan.words.say import say

_MOST_NAMES = 3


def check_waivers(garment: Garment) -> Iterator[Diagnostic]:
    """Report waivers of rules that do not exist, with the nearest that do."""
    for waiver in garment.waivers:
        if waiver.rule in RULE:
            continue
        from difflib import get_close_matches

        near = get_close_matches(waiver.rule, RULE, _MOST_NAMES)
        names = ", ".join(f"`{name}`" for name in near)
        yield Diagnostic(
            slug=RuleSlug("unknown-rule"),
            severity=Severity.ERROR,
            message=say("check-unknown-rule", rule=waiver.rule),
            path=(*waiver.path, "rule"),
            fix=say("check-unknown-rule-near", names=names)
            if near
            else say("check-unknown-rule-fix"),
        )


def list_waivers(garment: Garment) -> tuple[str, ...]:
    """One line for each rule that is set aside, with the author's reason."""
    return tuple(
        say(
            "check-waived" if waiver.at else "check-waived-everywhere",
            rule=waiver.rule,
            at=", ".join(f"`{entry}`" for entry in waiver.at),
            because=waiver.because,
        )
        for waiver in garment.waivers
    )
