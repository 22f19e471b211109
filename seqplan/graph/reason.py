"""A reason: why one operation comes before another, or why one of several things must hold.

Everything the planner does rests on these. Two forms share one class:

- an **arc**: one alternative with one arc, ``A before B``;
- an **either-or**: several alternatives, each a bundle of arcs; an order satisfies the reason
  when all arcs of at least one alternative hold in it.
"""

from collections.abc import Iterable, Mapping
from dataclasses import dataclass
from enum import Enum
from functools import cached_property
from typing import NamedTuple

from seqplan.base.ids import OpId, RuleSlug
from seqplan.base.path import DocPath
from seqplan.base.strength import Strength


class ReasonKind(Enum):
    """Where a reason comes from."""

    SAID = "said"
    """The author's own ``after:``."""
    NEEDS = "needs"
    """The later operation uses what the earlier one makes."""
    RULE = "rule"
    """The rule book derived it."""


class Arc(NamedTuple):
    """``before`` is done before ``after``."""

    before: OpId
    after: OpId


@dataclass(frozen=True, kw_only=True)
class Reason:
    """Why an order is bound.

    Parameters
    ----------
    alternatives
        At least one; each is a non-empty bundle of arcs that must hold together. One
        alternative with one arc is the plain case.
    kind
        Said by the author, needed, or derived by a rule.
    strength
        Must, should or prefer.
    rule
        The slug of the rule, ``after`` for what the author said.
    because
        A finished sentence that a sewist would say.
    source
        Where the document says what led to this: the path of the entry that asks for it.
    """

    alternatives: tuple[tuple[Arc, ...], ...]
    kind: ReasonKind
    strength: Strength
    rule: RuleSlug
    because: str
    source: DocPath = ()

    def __post_init__(self) -> None:
        if not self.alternatives or not all(self.alternatives):
            msg = "a reason has at least one alternative and each has at least one arc"
            raise ValueError(msg)

    @property
    def is_either_or(self) -> bool:
        """Whether there is a choice between alternatives."""
        return len(self.alternatives) > 1

    @cached_property
    def operations(self) -> frozenset[OpId]:
        """Every operation the reason speaks of."""
        return frozenset(
            op for bundle in self.alternatives for arc in bundle for op in (arc.before, arc.after)
        )

    def held_alternatives(self, position: Mapping[OpId, int]) -> tuple[int, ...]:
        """Tell which alternatives hold.

        Parameters
        ----------
        position
            The place of every operation in the order in question.

        Returns
        -------
        tuple of int
            Indices into ``alternatives``; empty when the order breaks the reason.
        """
        return tuple(
            index
            for index, bundle in enumerate(self.alternatives)
            if all(position[arc.before] < position[arc.after] for arc in bundle)
        )

    def is_held(self, position: Mapping[OpId, int]) -> bool:
        """Whether the order with these positions satisfies the reason."""
        return bool(self.held_alternatives(position))


def by_arc(reasons: Iterable[Reason]) -> dict[Arc, tuple[Reason, ...]]:
    """Gather plain reasons by the arc they give, the strongest first, in sorted order.

    Parameters
    ----------
    reasons
        Reasons without a choice.
    """
    found: dict[Arc, list[Reason]] = {}
    for reason in reasons:
        for arc in reason.alternatives[0]:
            found.setdefault(arc, []).append(reason)
    return {
        arc: tuple(sorted(given, key=lambda r: (-r.strength.weight, r.rule, r.because)))
        for arc, given in sorted(found.items())
    }
