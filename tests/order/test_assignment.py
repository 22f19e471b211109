from itertools import permutations

from hypothesis import given, settings
from hypothesis import strategies as st

from seqplan.order.assignment import assign

tables = st.integers(0, 5).flatmap(
    lambda size: st.lists(
        st.lists(st.integers(0, 30) | st.just(10**12), min_size=size, max_size=size),
        min_size=size,
        max_size=size,
    )
)


@given(tables)
@settings(max_examples=300)
def test_the_prices_prove_that_no_assignment_is_cheaper(table):
    places = range(len(table))
    least = min(
        sum(table[row][column] for row, column in zip(places, way, strict=True))
        for way in permutations(places)
    )
    cost, rows, columns = assign(table)
    assert cost == least == sum(rows) + sum(columns)
    assert all(rows[a] + columns[b] <= table[a][b] for a in places for b in places)
