"""Who watches a search: empty methods, to be filled by progress bars and tests."""

from collections.abc import Sequence


class Observer:
    """Told what a search does; does nothing with it.

    Orders are given as indices into the operations of the search.
    """

    def took_up(self, states: int) -> None:
        """Hear that another state was taken up; ``states`` counts them from 1."""

    def raised(self, lower_bound: int) -> None:
        """Hear that no order costs less than this."""

    def found(self, order: Sequence[int], cost: int) -> None:
        """Hear of a valid order that is better than all before it."""

    def branched(self, alternatives: int) -> None:
        """Hear that an either-or was split into this many cases."""
