"""Construction orders in print check without an error, and orders that spoil the work do not."""

import pytest
import yaml
from tools.printed import changed, findings, printed_orders, rejected_orders

from seqplan.base.diagnostic import Severity
from seqplan.rules.book import RULE
from seqplan.words.say import say

WANTED = {1, 2, 3, 5, 6, 7, 8, 9, 12, 13, 14, 20, 21, 22, 23, 25, 26}
MUST_REJECT = {f"N{number}" for number in range(1, 15)}
SEVERITY = {"error": Severity.ERROR, "warning": Severity.WARNING}

every_order = pytest.mark.parametrize("printed", printed_orders(), ids=lambda p: p.path.stem)


def cases(*verdicts):
    found = [case for case in rejected_orders() if case.verdict in verdicts]
    return pytest.mark.parametrize("case", found, ids=[f"{c.case}: {c.name}" for c in found])


def found_in(case, tmp_path):
    path = tmp_path / "changed.yaml"
    path.write_text(changed(case))
    return findings(path)


def named_rules(found):
    """Every rule that a finding names, at the head of it or in its notes."""
    for finding in found:
        text = " ".join([finding.slug, *(note.message for note in finding.notes)])
        yield finding, {rule for rule in RULE if rule in text}


@every_order
def test_an_order_in_print_checks_without_an_error(printed):
    assert [f.message for f in findings(printed.path) if f.severity is Severity.ERROR] == []


@every_order
def test_an_order_in_print_is_warned_of_only_where_it_is_known_to_depart(printed):
    warned = {(finding.slug, finding.message) for finding in findings(printed.path)}
    assert warned == {
        (departure.rule, say("check-order", early=departure.early, late=departure.late))
        for departure in printed.departs
    }


@every_order
def test_each_step_of_an_order_in_print_bears_the_number_of_its_source(printed):
    operations = yaml.load(printed.path.read_text(), Loader=yaml.BaseLoader)["operations"]
    assert all("title" in entry for entry in operations.values())


def test_all_the_orders_that_were_asked_for_are_there():
    assert {int(printed.order[1:]) for printed in printed_orders()} >= WANTED


@cases("error", "warning")
def test_an_order_that_spoils_the_work_is_rejected_by_its_rule(case, tmp_path):
    severities = {
        finding.severity
        for finding, rules in named_rules(found_in(case, tmp_path))
        if case.by in rules
    }
    # Where a rule forbids one thing and advises another, the worst is its verdict.
    worst = Severity.ERROR if Severity.ERROR in severities else Severity.WARNING
    assert severities
    assert worst is SEVERITY[case.verdict]


@cases("accepted")
def test_a_second_order_that_works_is_accepted(case, tmp_path):
    assert found_in(case, tmp_path) == ()


def test_every_order_that_must_be_rejected_is_listed():
    assert {case.case for case in rejected_orders()} >= MUST_REJECT
