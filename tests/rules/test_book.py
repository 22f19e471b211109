import inspect
import re
import sys
from pathlib import Path

import pytest
import yaml

from seqplan.base.strength import Strength
from seqplan.graph.reason import ReasonKind
from seqplan.rules import needs, trade
from seqplan.rules.book import RULE, RULES
from seqplan.words.reasons import SENTENCES

HEADINGS = ["Why", "Fires", "Stays quiet", "Sources"]
CASES = Path(__file__).parent / "cases"
FOLLOWS = "Follows from what the operations make."
WANTED = {7, 9, 10, 12, 25, 27, 28, 30, 32, 53, 54, 63, 72}

every_rule = pytest.mark.parametrize("rule", RULES, ids=lambda rule: rule.slug)


def module_of(rule):
    return inspect.getmodule(rule.derive)


def sections(rule):
    """The text of a rule by its headings, in their order."""
    parts = re.split(r"^([A-Z][a-z ]+)\n-+$", rule.text, flags=re.MULTILINE)
    return dict(zip(parts[1::2], map(str.strip, parts[2::2]), strict=True))


def cases_of(rule):
    path = CASES / f"{rule.slug.replace('-', '_')}.yaml"
    return yaml.safe_load(path.read_text(encoding="utf-8"))


@every_rule
def test_the_text_says_what_why_when_and_from_where(rule):
    assert list(sections(rule)) == HEADINGS
    assert all(sections(rule).values())
    assert rule.headline.endswith(".")


@every_rule
def test_a_rule_stands_in_a_file_of_its_name(rule):
    assert module_of(rule).__name__.rpartition(".")[2] == rule.slug.replace("-", "_")
    assert module_of(rule).RULE is rule


def test_no_two_rules_have_one_name():
    assert len(RULE) == len(RULES)


@pytest.mark.parametrize("floor", [needs, trade], ids=["needs", "trade"])
def test_every_file_is_in_the_book(floor):
    files = {path.stem for path in Path(floor.__file__).parent.glob("*.py")} - {"__init__"}
    assert files == {
        module_of(rule).__name__.rpartition(".")[2]
        for rule in RULES
        if module_of(rule).__name__.startswith(floor.__name__)
    }


@every_rule
def test_needs_come_from_what_is_made_and_rules_of_the_trade_name_a_source(rule):
    is_need = module_of(rule).__name__.startswith(needs.__name__)
    assert is_need == (not rule.numbers) == (rule.kind is ReasonKind.NEEDS)
    assert (sections(rule)["Sources"] == FOLLOWS) == is_need


@every_rule
def test_what_follows_from_the_make_is_a_must(rule):
    if rule.kind is ReasonKind.NEEDS:
        assert rule.strength is Strength.MUST


@every_rule
def test_a_rule_has_a_case_that_fires_and_one_that_is_quiet(rule):
    cases = cases_of(rule)
    assert any(case.get("orders") or case.get("either") for case in cases)
    assert any(case.get("quiet") for case in cases)
    names = [case["name"] for case in cases]
    assert len(set(names)) == len(names)


def test_every_file_of_cases_belongs_to_a_rule():
    assert {path.stem for path in CASES.iterdir()} == {slug.replace("-", "_") for slug in RULE}


@every_rule
def test_the_sentences_of_a_rule_exist(rule):
    source = inspect.getsource(module_of(rule))
    named = set(re.findall(r'"(because-[a-z-]+)"', source))
    assert named <= set(SENTENCES)
    # Only a rule that says something else every time goes without a sentence of its own name.
    assert f"because-{rule.slug}" in SENTENCES or named


def test_no_sentence_is_left_over():
    floor = [module for name, module in sys.modules.items() if name.startswith("seqplan.rules")]
    source = "".join(inspect.getsource(module) for module in floor)
    ours = {f"because-{slug}" for slug in RULE} | {f"because-{slug}-either" for slug in RULE}
    assert {name for name in SENTENCES if name not in source} <= ours


def test_the_numbers_are_those_of_the_list_and_the_wanted_ones_are_covered():
    numbers = [number for rule in RULES for number in rule.numbers]
    assert all(1 <= number <= 78 for number in numbers)
    assert set(numbers) >= WANTED


@every_rule
def test_what_is_quoted_as_source_reads_as_sentences(rule):
    assert all(text.endswith(".") for text in sections(rule).values())
