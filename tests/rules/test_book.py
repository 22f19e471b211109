import inspect
import re
import sys
from pathlib import Path

import pytest
from tools.make_docs import rules_page
from tools.printed import printed_orders
from tools.trade_table import cases_of, shown_strengths, trade_rules

from seqplan.base.strength import Strength
from seqplan.graph.reason import ReasonKind
from seqplan.render.listing import list_rules, show_rule
from seqplan.rules import needs, trade
from seqplan.rules.book import RULE, RULES
from seqplan.words.reasons import SENTENCES

HEADINGS = ["Why", "Fires", "Stays quiet", "Sources"]
CASES = Path(__file__).parent / "cases"
FOLLOWS = "Follows from what the operations make."

every_number = pytest.mark.parametrize("listed", trade_rules(), ids=lambda listed: listed.number)
every_rule = pytest.mark.parametrize("rule", RULES, ids=lambda rule: rule.slug)


def module_of(rule):
    return inspect.getmodule(rule.derive)


def sections(rule):
    """The text of a rule by its headings, in their order."""
    parts = re.split(r"^([A-Z][a-z ]+)\n-+$", rule.text, flags=re.MULTILINE)
    return dict(zip(parts[1::2], map(str.strip, parts[2::2]), strict=True))


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
    assert is_need == (rule.kind is ReasonKind.NEEDS)
    assert is_need or rule.numbers
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


def test_the_list_of_trade_rules_has_every_number_once():
    assert [listed.number for listed in trade_rules()] == list(range(1, 79))
    assert {number for rule in RULES for number in rule.numbers} <= set(range(1, 79))


@every_number
def test_a_trade_rule_is_in_the_book_or_it_is_said_why_not(listed):
    said = [text for text in (listed.held, listed.left_out) if text]
    assert len(said) == (0 if listed.rules else 1)


@every_number
def test_why_we_bind_more_or_less_than_the_trade_is_said_where_we_do(listed):
    assert listed.is_weaker == bool(listed.weaker)
    assert listed.is_stronger == bool(listed.stronger)


@every_number
def test_what_the_list_says_reads_as_sentences_and_names_printed_orders_that_are_kept(listed):
    texts = [listed.text, *filter(None, listed[3:])]
    assert all(text.endswith(".") for text in texts)
    kept = {printed.order for printed in printed_orders()}
    assert set(re.findall(r"\bO\d+\b", " ".join(texts))) <= kept


@every_rule
def test_every_number_of_a_rule_is_shown_by_a_case_in_which_it_fires(rule):
    shown = {number for case in cases_of(rule) for number in case.get("shows", ())}
    assert shown <= set(rule.numbers)
    assert all(shown_strengths(rule, number) for number in rule.numbers)


@every_rule
def test_the_commands_and_the_page_tell_a_rule_in_the_same_words(rule):
    page, book, told = rules_page(), list_rules(RULES), show_rule(rule)
    assert " ".join(rule.headline.split()) in " ".join(book.split())
    for text in (rule.headline, *sections(rule).values()):
        assert text in told
        assert text in page
    for number in rule.numbers:
        assert re.search(rf"Trade rules? .*\b{number}\b", told)
    assert rule.strength.value in told


@every_rule
def test_what_is_quoted_as_source_reads_as_sentences(rule):
    assert all(text.endswith(".") for text in sections(rule).values())
