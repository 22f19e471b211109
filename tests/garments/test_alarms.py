"""The check is silent about sound orders of shipped garments, and names what a near miss breaks.

``python -m tests.tools.alarms`` prints both rates.
"""

import random

import oracles
import pytest
from hypothesis import given
from hypothesis import strategies as st
from strategies import problems
from tools.alarms import GARMENTS, ORDERS, near_misses, sound_orders, variants
from tools.random_orders import random_order

every_variant = pytest.mark.parametrize(
    ("path", "picks", "count"),
    [
        pytest.param(path, picks, ORDERS // len(variants(path)), id=f"{path.stem} {picks}")
        for path in GARMENTS
        for picks in variants(path)
    ],
)


@every_variant
def test_sound_orders_raise_no_finding(path, picks, count):
    orders = list(sound_orders(path, picks, count))
    assert [finding for order in orders for finding in order.findings] == []
    written = {order.garment.ids for order in orders}
    assert len(written) > 1


@every_variant
def test_a_near_miss_is_named_by_its_rule(path, picks, count):
    misses = list(near_misses(path, picks))
    assert misses
    assert [miss for miss in misses if not miss.is_named] == []


@given(problems(most=6, most_choices=3, acyclic=True), st.integers(0, 999))
def test_an_order_that_is_drawn_holds_every_reason(problem, seed):
    names, reasons = problem
    order = random_order(list(names), reasons, random.Random(seed))
    if order is not None:
        assert sorted(order) == sorted(names)
        assert oracles.holds(order, reasons)
