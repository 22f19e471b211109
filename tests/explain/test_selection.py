"""The names by which findings are chosen: every one that the code gives, and no other."""

import ast
from pathlib import Path

import pytest

from seqplan.base.diagnostic import Diagnostic, Severity
from seqplan.base.ids import RuleSlug
from seqplan.explain.audit.book import AUDIT
from seqplan.explain.selection import EVERYTHING, FINDINGS, NAMES, OTHERS, Selection, headline
from seqplan.rules.book import RULE
from seqplan.words.say import catalogue

PACKAGE = Path(__file__).parents[2] / "seqplan"


def _calls(folder, *names):
    """The first arguments of calls to these names and methods, where they are literals."""
    for path in (PACKAGE / folder).rglob("*.py"):
        for node in ast.walk(ast.parse(path.read_text(encoding="utf-8"))):
            if not (isinstance(node, ast.Call) and node.args):
                continue
            name = getattr(node.func, "id", getattr(node.func, "attr", ""))
            if name in names and isinstance(node.args[0], ast.Constant):
                yield node.args[0].value


def _found_by_the_check():
    """Slugs of findings that the check makes itself, beside the rules."""
    yield from _calls("explain", "RuleSlug", "_finding", "_caution")
    # A caution is about the one or the other.
    yield from ("cord-at-neck", "free-cord-ends", "after")
    yield from _calls("load", "warning")
    yield from ("long-edge-differs",)


def test_every_finding_that_keeps_nobody_from_working_can_be_chosen():
    assert set(_found_by_the_check()) == set(OTHERS)
    assert set(FINDINGS) == set(OTHERS) | set(AUDIT)


def test_errors_of_reading_cannot_be_left_out():
    assert not set(_calls("load", "error")) & set(NAMES)


def test_no_rule_is_called_like_another_finding():
    assert len(set(NAMES)) == len(RULE) + len(OTHERS) + len(AUDIT)


@pytest.mark.parametrize("slug", NAMES)
def test_each_says_in_one_sentence_what_it_is_about(slug):
    assert headline(slug).endswith(".")


def test_no_headline_is_left_over():
    assert {f"finding-{slug}" for slug in OTHERS} == set(catalogue("findings"))


def _item(slug):
    return Diagnostic(RuleSlug(slug), Severity.ERROR, "m")


@pytest.mark.parametrize(
    ("only", "without", "left"),
    [
        ((), (), ["raw-edge", "hem-in-order", "missing-key"]),
        (("raw-edge",), (), ["raw-edge", "missing-key"]),
        ((), ("raw-edge",), ["hem-in-order", "missing-key"]),
        (("raw-edge", "hem-in-order"), ("raw-edge",), ["hem-in-order", "missing-key"]),
    ],
)
def test_findings_are_chosen_by_name_and_faults_of_reading_stay(only, without, left):
    selection = Selection(frozenset(only), frozenset(without))
    found = [_item("raw-edge"), _item("hem-in-order"), _item("missing-key")]
    assert [item.slug for item in selection.of(found)] == left


def test_everything_is_everything():
    assert all(EVERYTHING.takes(slug) for slug in NAMES)
