"""The table of all trade rules: what the trade says, which of our rules say it, and how strongly.

The words and the trade's marks are data, ``rules/trade_rules.yaml``; slugs come from the rule book,
and strengths from what the rules give for their own cases.
"""

from collections.abc import Iterator, Mapping
from functools import cache
from pathlib import Path
from typing import Any, NamedTuple

import yaml

from seqplan.base.strength import Strength
from seqplan.load.document import load_text
from seqplan.recipes.expand import construct
from seqplan.rules.book import RULES
from seqplan.rules.rule import Rule

from .printed import printed_orders

HERE = Path(__file__).parents[1] / "rules"
MARKS = {"H": Strength.MUST, "S": Strength.SHOULD, "P": Strength.PREFER}

_INTRO = """\
# What the trade teaches, and where it is held

Made from the rule book and its cases by `python -m tests.tools.make_docs`.

The numbers are those that [the rules](rules.md) bear. The mark is what the sources give: H, the
other way is impossible or cannot be undone; S, good practice; P, a preference, and orders in print
go both ways. Beside each of our rules stands how it binds where it says this: *must* goes with H,
*should* with S, *prefer* with P. Where the two differ, the last column says why; there stand also
the [printed orders](published-orders.md) that depart from a rule, for which it is no must.

| no. | what the trade teaches | mark | our rules | remarks |
|---|---|---|---|---|"""


class TradeRule(NamedTuple):
    """A rule of the trade.

    ``held`` says what sees to it where no rule does, ``left_out`` why nothing does.
    """

    number: int
    text: str
    mark: str
    note: str = ""
    weaker: str = ""
    stronger: str = ""
    held: str = ""
    left_out: str = ""

    @property
    def marks(self) -> frozenset[Strength]:
        """How strongly the sources say it, in several respects."""
        return frozenset(MARKS[mark] for mark in self.mark.split(", "))

    @property
    def rules(self) -> tuple[Rule, ...]:
        """The rules of the book that bear its number."""
        return tuple(rule for rule in RULES if self.number in rule.numbers)

    @property
    def strengths(self) -> frozenset[Strength]:
        """How strongly the rules of the book say it."""
        return frozenset().union(*(shown_strengths(rule, self.number) for rule in self.rules))

    @property
    def is_weaker(self) -> bool:
        """Whether none of our rules binds as much as the mark."""
        return bool(self.rules) and _most(self.strengths) < _most(self.marks)

    @property
    def is_stronger(self) -> bool:
        """Whether one of our rules binds more than the mark."""
        return bool(self.rules) and _most(self.strengths) > _most(self.marks)


@cache
def trade_rules() -> tuple[TradeRule, ...]:
    """All rules of the trade, by number."""
    listed = yaml.safe_load((HERE / "trade_rules.yaml").read_text(encoding="utf-8"))
    return tuple(
        TradeRule(**{key.replace(" ", "_"): value for key, value in item.items()})
        for item in listed
    )


def cases_of(rule: Rule) -> list[dict[str, Any]]:
    """The cases of a rule."""
    path = HERE / "cases" / f"{rule.slug.replace('-', '_')}.yaml"
    cases: list[dict[str, Any]] = yaml.safe_load(path.read_text(encoding="utf-8"))
    return cases


@cache
def shown_strengths(rule: Rule, number: int) -> frozenset[Strength]:
    """How strong the reasons are that a rule gives in the cases that show a number.

    All its cases show the number of a rule that bears only one.
    """
    is_only = rule.numbers == (number,)
    showing = [case for case in cases_of(rule) if is_only or number in case.get("shows", ())]
    return frozenset(strength for case in showing for strength in _strengths(rule, case))


def trade_table() -> str:
    """The page."""
    return "\n".join([_INTRO, *(_row(listed) for listed in trade_rules())]) + "\n"


def _strengths(rule: Rule, case: Mapping[str, Any]) -> Iterator[Strength]:
    text = case["garment"]
    loaded = load_text(text if "garment:" in text else f"garment: A garment\n{text}")
    assert loaded.garment is not None
    construction, _ = construct(loaded.garment)
    assert construction is not None
    yield from (reason.strength for reason in rule.derive(construction))


def _most(strengths: frozenset[Strength]) -> int:
    return max((strength.weight for strength in strengths), default=0)


def _row(listed: TradeRule) -> str:
    rules = "; ".join(_rule(rule, listed.number) for rule in listed.rules) or "none"
    remarks = [listed.weaker, listed.stronger, listed.note, listed.held, listed.left_out]
    remarks += [
        f"{printed.order} departs from `{departure.rule}`."
        for printed in printed_orders()
        for departure in printed.departs
        if departure.rule in {rule.slug for rule in listed.rules}
    ]
    told = " ".join(filter(None, remarks))
    return f"| {listed.number} | {listed.text} | {listed.mark} | {rules} | {told} |"


def _rule(rule: Rule, number: int) -> str:
    strengths = sorted(shown_strengths(rule, number), key=lambda each: -each.weight)
    binds = " and ".join(strength.value for strength in strengths)
    return f"[{rule.slug}](rules.md#{rule.slug}) ({binds})"
