"""How binding a reason is."""

from enum import Enum


class Strength(Enum):
    """How binding a reason is.

    ``MUST``: the other way is impossible or ruins cloth. ``SHOULD``: accepted good practice.
    ``PREFER``: published orders go both ways; it shapes the booklet order and never forces.
    """

    MUST = "must"
    SHOULD = "should"
    PREFER = "prefer"

    @property
    def weight(self) -> int:
        """3 for must, 2 for should, 1 for prefer: what is given up first has the least."""
        return {"must": 3, "should": 2, "prefer": 1}[self.value]
