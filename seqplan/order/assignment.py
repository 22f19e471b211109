"""The cheapest assignment of rows to columns, with the prices that prove it.

The Hungarian method by shortest augmenting paths, one row after the other (Kuhn, Naval Research
Logistics Quarterly 2, 1955; in this form after Jonker and Volgenant, Computing 38, 1987). What
the search wants of it are the prices: one for every row and every column, together never more
than the cost of their cell, and in sum the cost of the cheapest assignment.

Cost: cubic in the number of rows.
"""

from collections.abc import Sequence


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
    row_price, column_price = [0] * size, [0] * size
    row_in = [-1] * size
    for row in range(size):
        _place(row, costs, row_in, row_price, column_price)
    return sum(row_price) + sum(column_price), row_price, column_price


def _place(
    new: int,
    costs: Sequence[Sequence[int]],
    row_in: list[int],
    row_price: list[int],
    column_price: list[int],
) -> None:
    """Give one more row a column, moving others where that is cheaper; ``row_in`` is -1 if free."""
    size, start = len(costs), -1
    least = [cost - row_price[new] - column_price[c] for c, cost in enumerate(costs[new])]
    came = [start] * size
    far, near = set(range(size)), list[int]()
    while True:
        column = min(far, key=least.__getitem__)
        step = least[column]
        row_price[new] += step
        for each in near:
            row_price[row_in[each]] += step
            column_price[each] -= step
        far.remove(column)
        near.append(column)
        row = row_in[column]
        if row < 0:
            break
        price, line = row_price[row], costs[row]
        for each in far:
            least[each] -= step
            over = line[each] - price - column_price[each]
            if over < least[each]:
                least[each], came[each] = over, column
    while came[column] != start:
        row_in[column] = row_in[came[column]]
        column = came[column]
    row_in[column] = new
