"""Which findings somebody wants to see, by the names of rules and of what else the check finds."""

from collections.abc import Iterable, Mapping
from typing import Final, NamedTuple

from seqplan.base.diagnostic import Diagnostic, Severity
from seqplan.base.ids import RuleSlug
from seqplan.explain.audit.book import AUDIT, AUDITS
from seqplan.rules.book import RULE
from seqplan.words.say import say

OTHERS: Final[Mapping[RuleSlug, Severity]] = {
    RuleSlug("after"): Severity.ERROR,
    RuleSlug("no-order"): Severity.ERROR,
    RuleSlug("cannot-be-done"): Severity.ERROR,
    RuleSlug("unknown-rule"): Severity.ERROR,
    RuleSlug("cannot-be-waived"): Severity.ERROR,
    RuleSlug("left-undone"): Severity.WARNING,
    RuleSlug("unused-waiver"): Severity.WARNING,
    RuleSlug("edge-wanted"): Severity.WARNING,
    RuleSlug("unknown-direction"): Severity.WARNING,
    RuleSlug("listed-twice"): Severity.WARNING,
    RuleSlug("options-alike"): Severity.WARNING,
    RuleSlug("look-alike-names"): Severity.WARNING,
    RuleSlug("same-mark"): Severity.WARNING,
    RuleSlug("because-of-nothing"): Severity.WARNING,
    RuleSlug("long-edge-differs"): Severity.WARNING,
    RuleSlug("measures-disagree"): Severity.WARNING,
    RuleSlug("unlike-lengths"): Severity.WARNING,
    RuleSlug("step-not-there"): Severity.WARNING,
    RuleSlug("inside-out"): Severity.WARNING,
    RuleSlug("cord-at-neck"): Severity.CAUTION,
    RuleSlug("free-cord-ends"): Severity.CAUTION,
    RuleSlug("small-part"): Severity.CAUTION,
    RuleSlug("after-not-needed"): Severity.HINT,
    RuleSlug("kept-though-waived"): Severity.HINT,
    RuleSlug("free-words"): Severity.HINT,
    RuleSlug("part-not-there"): Severity.HINT,
    RuleSlug("told-later"): Severity.HINT,
}
"""What the check finds besides broken rules and what audits find, with how bad it is."""

FINDINGS: Final[Mapping[RuleSlug, Severity]] = {
    **OTHERS,
    **{audit.slug: audit.severity for audit in AUDITS},
}
"""Everything that the check finds besides broken rules, with how bad it usually is.

Errors that keep a file from being read or laid out are not among them: they are always shown.
"""

NAMES: Final = (*RULE, *FINDINGS)
"""Every name by which findings can be chosen."""


def headline(slug: RuleSlug) -> str:
    """Say in one sentence what a rule asks for, or what a finding is about."""
    known = RULE.get(slug) or AUDIT.get(slug)
    return known.headline if known else say(f"finding-{slug}")


class Selection(NamedTuple):
    """Findings by name.

    Parameters
    ----------
    only
        The names to show; all of them if empty.
    without
        The names to leave out, whatever ``only`` says.
    """

    only: frozenset[RuleSlug] = frozenset()
    without: frozenset[RuleSlug] = frozenset()

    def takes(self, slug: RuleSlug) -> bool:
        """Whether findings of this name are shown."""
        return (not self.only or slug in self.only) and slug not in self.without

    def of(self, findings: Iterable[Diagnostic]) -> list[Diagnostic]:
        """Choose among findings; what has no name to choose it by stays."""
        return [item for item in findings if item.slug not in NAMES or self.takes(item.slug)]


EVERYTHING: Final = Selection()
