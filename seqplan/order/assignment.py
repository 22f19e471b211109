"""The cheapest assignment of rows to columns, with the prices that prove it.

The Hungarian method by shortest augmenting paths, one row after the other (Kuhn, Naval Research
Logistics Quarterly 2, 1955; in this form after Jonker and Volgenant, Computing 38, 1987). What
the search wants of it are the prices: one for every row and every column, together never more
than the cost of their cell, and in sum the cost of the cheapest assignment.

Cost: cubic in the number of rows.
"""

from collections.abc import Sequence

FORBIDDEN = 1 << 40
"""Dearer than everything that is allowed taken together."""


def assign(costs: Sequence[Sequence[int]]) -> tuple[int, list[int], list[int]]:
    """Assign every row a column of its own as cheaply as possible.

    Parameters
    ----------
    costs
        A square table.

    Returns
    -------
    tuple
        The least cost; a price for every row; a price for every column.
    """
    size = len(costs)
    row_price, column_price = [0] * size, [0] * (size + 1)
    # The last column is a made-up one in which the row to be placed starts.
    row_in = [-1] * (size + 1)
    for row in range(size):
        row_in[size] = row
        _place(costs, row_in, row_price, column_price)
    del column_price[size]
    return sum(row_price) + sum(column_price), row_price, column_price


def _place(
    costs: Sequence[Sequence[int]],
    row_in: list[int],
    row_price: list[int],
    column_price: list[int],
) -> None:
    """Place the row that stands in the made-up column, moving others where that is cheaper."""
    size = len(costs)
    least = [FORBIDDEN << 20] * size
    came = [size] * size
    free = set(range(size))
    seen = [size]
    column = size
    while row_in[column] >= 0:
        row = row_in[column]
        price, line = row_price[row], costs[row]
        for each in free:
            over = line[each] - price - column_price[each]
            if over < least[each]:
                least[each], came[each] = over, column
        column = min(free, key=least.__getitem__)
        step = least[column]
        for each in seen:
            row_price[row_in[each]] += step
            column_price[each] -= step
        for each in free:
            least[each] -= step
        free.remove(column)
        seen.append(column)
    while column != size:
        row_in[column] = row_in[came[column]]
        column = came[column]
