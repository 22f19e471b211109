"""What a rule is, and the short words in which rules state reasons."""

from collections.abc import Callable, Iterable, Iterator, Sequence
from dataclasses import replace
from itertools import pairwise
from typing import NamedTuple

from seqplan.base.ids import OpId, RuleSlug
from seqplan.base.strength import Strength
from seqplan.graph.reason import Arc, Reason, ReasonKind
from seqplan.model.operation import Operation
from seqplan.recipes.construction import Construction
from seqplan.words.say import say

Before = tuple[Operation, Operation]
"""One operation, and one that comes after it."""

Derive = Callable[[Construction], Iterator[Reason]]


class Rule(NamedTuple):
    """One rule of the trade, or one need that follows from what operations make.

    Parameters
    ----------
    slug
        Its name, which says the rule.
    strength
        Must, should or prefer.
    derive
        Yields the reasons that the rule gives for a garment.
    text
        What people read about it: one sentence, then *Why*, *Fires*, *Stays quiet*, *Sources*.
    numbers
        Its places in the project's list of trade rules. A need has some where the trade teaches
        what follows from the make anyway.
    kind
        Whether the trade says so, or it follows from what operations make.
    """

    slug: RuleSlug
    strength: Strength
    derive: Derive
    text: str
    numbers: tuple[int, ...] = ()
    kind: ReasonKind = ReasonKind.RULE

    @property
    def headline(self) -> str:
        """The rule as one sentence."""
        return self.text.strip().splitlines()[0]


def arc(
    rule: Rule,
    before: Operation,
    after: Operation,
    *,
    key: str = "",
    strength: Strength | None = None,
    **names: object,
) -> Reason:
    """State that one operation comes before another.

    Parameters
    ----------
    rule
        The rule that says so.
    before, after
        The operations.
    key
        Which of the rule's sentences tells why; its own name without.
    strength
        Where it binds less than the rule does.
    names
        Further names for the sentence, besides ``before`` and ``after``.
    """
    because = say(key or f"because-{rule.slug}", before=before.id, after=after.id, **names)
    reason = _reason(rule, ((Arc(before.id, after.id),),), because, after)
    return reason if strength is None else replace(reason, strength=strength)


def either(
    rule: Rule,
    alternatives: Iterable[Sequence[Before]],
    *,
    asker: Operation,
    because: str,
    strength: Strength | None = None,
) -> Reason:
    """State that all arcs of at least one alternative hold.

    Parameters
    ----------
    rule
        The rule that says so.
    alternatives
        Bundles of (before, after). One that asks for all that another asks for, and more, is
        left out.
    asker
        The operation whose entry asks for it, for the place in the document.
    because
        The sentence.
    strength
        Where it binds less than the rule does.
    """
    bundles = {frozenset(Arc(a.id, b.id) for a, b in bundle) for bundle in alternatives}
    least = [b for b in bundles if not any(other < b for other in bundles)]
    ordered = sorted(tuple(sorted(bundle)) for bundle in least)
    reason = _reason(rule, tuple(ordered), because, asker)
    return reason if strength is None else replace(reason, strength=strength)


def chain(rule: Rule, ops: Iterable[Operation], *, key: str = "") -> Iterator[Reason]:
    """State that operations come one after the other."""
    for before, after in pairwise(ops):
        yield arc(rule, before, after, key=key)


def names(ids: Iterable[OpId | str]) -> str:
    """List names for a sentence, each set off from it."""
    return ", ".join(say("because-name", name=id_) for id_ in ids)


def _reason(
    rule: Rule, alternatives: tuple[tuple[Arc, ...], ...], because: str, asker: Operation
) -> Reason:
    return Reason(
        alternatives=alternatives,
        kind=rule.kind,
        strength=rule.strength,
        rule=rule.slug,
        because=because,
        source=asker.path,
    )
