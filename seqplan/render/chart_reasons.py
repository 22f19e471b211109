"""The reasons of a chart, numbered, so that a figure beside an arc can stand for a sentence."""

from collections.abc import Iterable
from dataclasses import dataclass

from seqplan.explain.chart import Chart
from seqplan.graph.reason import Reason, ReasonKind
from seqplan.render.chart_boxes import plain_words
from seqplan.words.say import say, translated


@dataclass(frozen=True, slots=True)
class Numbers:
    """The kinds of reason in a chart, in words, in the order of their numbers, which begin at 1.

    How binding a reason is and whether it is an either-or is seen from its line, so a kind has one
    number whatever its lines look like.
    """

    kinds: tuple[str, ...]

    def of(self, reasons: Iterable[Reason]) -> str:
        """The numbers of some reasons, as they stand beside an arc."""
        wanted = {_kind(reason) for reason in reasons}
        return ", ".join(str(n) for n, kind in enumerate(self.kinds, 1) if kind in wanted)


def number_reasons(chart: Chart) -> Numbers:
    """Number the kinds of reason in a chart, the most binding first.

    Parameters
    ----------
    chart
        The chart.
    """
    ranks: dict[str, tuple[bool, int]] = {}
    for reason in (*(r for link in chart.links for r in link.reasons), *chart.choices):
        rank = (reason.is_either_or, -reason.strength.weight)
        kind = _kind(reason)
        ranks[kind] = min(rank, ranks.get(kind, rank))
    return Numbers(tuple(sorted(ranks, key=lambda kind: (ranks[kind], kind))))


def _kind(reason: Reason) -> str:
    if reason.kind is ReasonKind.SAID:
        return say("chart-said")
    return translated("reason", plain_words(reason.rule))
