"""Construction orders in print, which hold every reason, and orders that nobody should follow.

``accepted`` lists whole orders. ``warned`` names rules of good practice that a printed order goes
against. ``rejected`` moves one operation of the first order, and names the rule that objects.
"""

from pathlib import Path

import pytest
import yaml
from rules.reasoning import construction

from seqplan.base.strength import Strength
from seqplan.rules.derive import derive

PUBLISHED = sorted((Path(__file__).parent / "published").glob("*.yaml"))


def read(path):
    return yaml.safe_load(path.read_text(encoding="utf-8"))


def broken(text, order):
    """The reasons that an order of all operations breaks."""
    built = construction(text)
    assert sorted(order) == sorted(built.ids)
    place = {operation: number for number, operation in enumerate(order)}
    return [reason for reason in derive(built) if not reason.is_held(place)]


def whole(order):
    """Put together an order that is written in lines."""
    return [operation for line in order for operation in line]


def moved(order, case):
    order = [operation for operation in order if operation != case["move"]]
    if "to after" in case:
        place = order.index(case["to after"]) + 1
    else:
        place = order.index(case["to before"])
    return [*order[:place], case["move"], *order[place:]]


ACCEPTED = [
    pytest.param(read(path), whole(order), id=f"{path.stem} {number}")
    for path in PUBLISHED
    for number, order in enumerate(read(path)["accepted"], start=1)
]
REJECTED = [
    pytest.param(read(path), case, id=f"{path.stem}: {case['name']}")
    for path in PUBLISHED
    for case in read(path)["rejected"]
]


@pytest.mark.parametrize(("published", "order"), ACCEPTED)
def test_an_order_in_print_is_accepted(published, order):
    against = broken(published["garment"], order)
    assert [r for r in against if r.strength is Strength.MUST] == []
    assert {reason.rule for reason in against} == set(published.get("warned", ()))


@pytest.mark.parametrize(("published", "case"), REJECTED)
def test_an_order_that_spoils_the_work_is_rejected(published, case):
    order = moved(whole(published["accepted"][0]), case)
    assert case["by"] in {reason.rule for reason in broken(published["garment"], order)}


def test_every_published_order_names_its_source():
    assert all(path.read_text(encoding="utf-8").startswith("# ") for path in PUBLISHED)
