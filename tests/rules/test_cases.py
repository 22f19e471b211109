"""Cases of every rule.

A case names a garment and what one rule gives for it: ``orders`` and ``either`` are all that it
gives, ``quiet: yes`` says nothing at all, ``among others: yes`` that there is more than is listed.
``free`` are pairs that the whole rule book leaves open, so that orders show both. ``shows`` are the
numbers of the trade rules for which the case stands, where its rule bears several.
"""

from pathlib import Path

import pytest
import yaml
from rules.reasoning import can_precede, construction, orders

from seqplan.base.ids import RuleSlug
from seqplan.base.strength import Strength
from seqplan.rules.book import RULE
from seqplan.rules.derive import derive

CASES = Path(__file__).parent / "cases"


def read_cases():
    for path in sorted(CASES.glob("*.yaml")):
        for case in yaml.safe_load(path.read_text(encoding="utf-8")):
            yield pytest.param(path.stem, case, id=f"{path.stem}: {case['name']}")


def given(slug, case):
    built = construction(case["garment"])
    rule = RULE[RuleSlug(slug.replace("_", "-"))]
    return built, list(rule.derive(built))


def binding(built):
    return [reason for reason in derive(built) if reason.strength is not Strength.PREFER]


def as_pairs(bundle):
    return frozenset((arc.before, arc.after) for arc in bundle)


def as_choice(text):
    return frozenset(
        frozenset(orders(part.strip() for part in bundle.split("&"))) for bundle in text.split("|")
    )


@pytest.mark.parametrize(("slug", "case"), list(read_cases()))
def test_a_rule_gives_what_its_case_says(slug, case):
    _, reasons = given(slug, case)
    arcs = {pair for r in reasons if not r.is_either_or for pair in as_pairs(r.alternatives[0])}
    choices = {frozenset(map(as_pairs, r.alternatives)) for r in reasons if r.is_either_or}
    wanted_arcs = orders(case.get("orders", ()))
    wanted_choices = {as_choice(text) for text in case.get("either", ())}
    if case.get("among others"):
        assert wanted_arcs <= arcs
        assert wanted_choices <= choices
    else:
        assert arcs == wanted_arcs
        assert choices == wanted_choices
    assert case.get("quiet", False) == (not reasons)


@pytest.mark.parametrize(("slug", "case"), list(read_cases()))
def test_the_whole_book_leaves_the_free_pairs_of_a_case_open(slug, case):
    built, _ = given(slug, case)
    reasons = binding(built)
    for pair in case.get("free", ()):
        one, other = pair.split(" - ")
        assert {one, other} <= set(built.ids)
        assert can_precede(reasons, one, other), pair
        assert can_precede(reasons, other, one), pair


@pytest.mark.parametrize(("slug", "case"), list(read_cases()))
def test_the_garment_of_a_case_can_be_made(slug, case):
    # An arc from an operation to itself stands for nothing: is any order left at all?
    built, _ = given(slug, case)
    assert can_precede(binding(built), built.ids[0], "")
