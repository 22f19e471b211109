"""Cloth is not drawn through cloth, in any state of any garment."""

from itertools import combinations, pairwise

import pytest
from draw.looking import NAMES, garment

from seqplan.draw.section import section
from seqplan.rehearse.work import Work


def sections(name):
    c = garment(name)
    work = Work(c)
    for op in c.operations:
        work.do(op)
        found = section(c, work, op)
        if found is not None:
            yield op, found


def touch(one, other):
    """Whether two straight ways cross, or lie in one another."""
    (ax, ay), (bx, by) = one
    (cx, cy), (dx, dy) = other
    if max(ax, bx) < min(cx, dx) or max(cx, dx) < min(ax, bx):
        return False
    if max(ay, by) < min(cy, dy) or max(cy, dy) < min(ay, by):
        return False

    def hand(p, q, r):
        return (q[0] - p[0]) * (r[1] - p[1]) - (q[1] - p[1]) * (r[0] - p[0])

    first = hand(*one, other[0]) * hand(*one, other[1])
    second = hand(*other, one[0]) * hand(*other, one[1])
    return first <= 0 and second <= 0


@pytest.mark.parametrize("name", NAMES)
def test_plies_do_not_run_through_one_another_or_themselves(name):
    for op, found in sections(name):
        ways = [
            (ply, place, way)
            for ply, line in enumerate(found.plies)
            for place, way in enumerate(pairwise(line.points))
        ]
        for (p, i, one), (q, j, other) in combinations(ways, 2):
            is_corner = p == q and abs(i - j) == 1
            assert is_corner or not touch(one, other), (op.id, one, other)


@pytest.mark.parametrize("name", NAMES)
def test_every_row_holds_something_and_is_sewn_by_then(name):
    c = garment(name)
    for op, found in sections(name):
        done = c.ids[: c.ids.index(op.id) + 1]
        for row in found.rows:
            assert row.op in done, op.id
            assert found.through(row), op.id
        order = [done.index(row.op) for row in found.rows]
        assert order == sorted(order), op.id
