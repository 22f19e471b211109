"""Sets of operations as bits of one int: bit ``i`` stands for the operation with index ``i``."""

from collections.abc import Iterable


def bits(mask: int) -> list[int]:
    """List the indices that are in a set, in rising order.

    >>> bits(0b1011)
    [0, 1, 3]
    """
    found = []
    while mask:
        low = mask & -mask
        found.append(low.bit_length() - 1)
        mask ^= low
    return found


def mask_of(indices: Iterable[int]) -> int:
    """Make the set that holds these indices.

    >>> mask_of([0, 1, 3])
    11
    """
    mask = 0
    for index in indices:
        mask |= 1 << index
    return mask
