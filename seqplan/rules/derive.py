"""Apply the rule book to a garment."""

from collections.abc import Iterator

from seqplan.base.ids import RuleSlug
from seqplan.base.strength import Strength
from seqplan.graph.reason import Arc, Reason, ReasonKind
from seqplan.recipes.construction import Construction
from seqplan.rules.book import RULES
from seqplan.words.say import say

SAID = RuleSlug("after")
"""What stands in place of a rule's name where the author said it."""


def derive(c: Construction) -> tuple[Reason, ...]:
    """Derive every reason of a garment.

    Returns
    -------
    tuple of Reason
        What the author said, what operations need, what the rules give; each once, sorted, so
        that the order of the entries in the file changes nothing.
    """
    reasons = {*_said(c), *(reason for rule in RULES for reason in rule.derive(c))}
    return tuple(sorted(reasons, key=_order))


def _said(c: Construction) -> Iterator[Reason]:
    """The author's own ``after:``, which holds for every part of the entry."""
    for entry in c.garment.entries:
        for reference in entry.after:
            earlier = [op for op in c.operations if reference in {op.id, op.entry}]
            because = entry.because or say("because-said", before=reference, after=entry.id)
            for before in earlier:
                for op in c.of_entry[entry.id]:
                    yield Reason(
                        alternatives=((Arc(before.id, op.id),),),
                        kind=ReasonKind.SAID,
                        strength=Strength.MUST,
                        rule=SAID,
                        because=because,
                        source=(*entry.path, "after"),
                    )


def _order(reason: Reason) -> tuple[tuple[tuple[Arc, ...], ...], str, str]:
    return reason.alternatives, reason.rule, reason.because
