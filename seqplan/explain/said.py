"""The author's own `after:` where a reason already gives it: it may go, or stay as a note."""

from __future__ import annotations

from collections.abc import Iterable
from typing import TYPE_CHECKING

from seqplan.base.diagnostic import Diagnostic, Note, Severity
from seqplan.base.ids import RuleSlug
from seqplan.graph.reason import Arc, Reason, ReasonKind
from seqplan.recipes.construction import Construction
from seqplan.words.say import say

if TYPE_CHECKING:
    from seqplan.graph.precedence import Precedence


def check_said(c: Construction, reasons: Iterable[Reason]) -> tuple[Diagnostic, ...]:
    """Find every ``after:`` that follows from other reasons.

    Parameters
    ----------
    c
        The garment.
    reasons
        All reasons; they must admit an order.
    """
    plain = [r for r in reasons if not r.is_either_or]
    if all(r.kind is not ReasonKind.SAID for r in plain):
        return ()
    derived = _precedence(c, (r for r in plain if r.kind is not ReasonKind.SAID))
    said: dict[tuple[str, str], list[Arc]] = {}
    for reason in plain:
        if reason.kind is ReasonKind.SAID:
            for arc in reason.alternatives[0]:
                entries = (c.op[arc.before].entry, c.op[arc.after].entry)
                said.setdefault(entries, []).append(arc)
    return tuple(
        Diagnostic(
            slug=RuleSlug("after-not-needed"),
            severity=Severity.HINT,
            message=say("check-after-not-needed", before=before, after=after),
            path=("operations", after, "after"),
            notes=(Note(say("check-after-not-needed-why", before=before, after=after)),),
        )
        for (before, after), arcs in said.items()
        if all(derived.reaches(arc.before, arc.after) for arc in arcs)
    )


def _precedence(c: Construction, reasons: Iterable[Reason]) -> Precedence:
    # Few files say `after:`, so only those pay for the import.
    from seqplan.graph.precedence import Precedence

    arcs = (arc for reason in reasons for bundle in reason.alternatives for arc in bundle)
    return Precedence.of(c.ids, arcs)
