"""The reasons of a chart, numbered, so that a figure beside an arc can stand for a sentence."""

from collections.abc import Iterable
from dataclasses import dataclass

from seqplan.base.strength import Strength
from seqplan.explain.chart import Chart
from seqplan.graph.reason import Reason, ReasonKind
from seqplan.render.chart_boxes import plain_words
from seqplan.words.say import say


@dataclass(frozen=True, slots=True)
class Numbered:
    """A kind of reason as the key lists it; ``number`` counts from 1."""

    number: int
    strength: Strength
    is_either_or: bool
    words: str


@dataclass(frozen=True, slots=True)
class Numbers:
    """The kinds of reason in a chart, in the order of their numbers."""

    kinds: tuple[Numbered, ...]

    def of(self, reasons: Iterable[Reason]) -> str:
        """The numbers of some reasons, as they stand beside an arc."""
        wanted = {_kind(reason) for reason in reasons}
        return ", ".join(
            str(kind.number)
            for kind in self.kinds
            if (kind.strength, kind.is_either_or, kind.words) in wanted
        )


def number_reasons(chart: Chart) -> Numbers:
    """Number the kinds of reason in a chart, the most binding first.

    Parameters
    ----------
    chart
        The chart.
    """
    reasons = [reason for link in chart.links for reason in link.reasons]
    kinds = {_kind(reason) for reason in (*reasons, *chart.choices)}
    ordered = sorted(kinds, key=lambda kind: (kind[1], -kind[0].weight, kind[2]))
    return Numbers(tuple(Numbered(number, *kind) for number, kind in enumerate(ordered, 1)))


def _kind(reason: Reason) -> tuple[Strength, bool, str]:
    words = say("chart-said") if reason.kind is ReasonKind.SAID else plain_words(reason.rule)
    return reason.strength, reason.is_either_or, words
