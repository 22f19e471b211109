"""The most operations that may stay where they are written, under plain arcs.

1. A pair clashes when one operation is written before the other but must come after it. These
   pairs are a partial order: if a stands before b before c, and c must precede b and b a, then c
   must precede a.
2. What may stay is a set without clashing pairs, an antichain. The largest is as large as the
   number of operations less a largest matching in the graph of clashing pairs (Dilworth,
   König).
3. The matching is networkx's, by Hopcroft and Karp.
4. Among the largest antichains one is the latest in the text. It is read off the matching: go
   from every operation that is unmatched as the earlier of a pair, along alternating paths; what
   is reached as the earlier one and not as the later one stays.

So of two operations that clash the one written too early moves. Most mistakes are of that kind:
something is done before what it has to wait for, and the sentence "move it below" says so.

Cost: ``p sqrt(n)`` for p clashing pairs among n operations.
"""

from collections.abc import Sequence
from typing import TypeAlias

from seqplan.graph.bits import bits

Matching: TypeAlias = tuple[dict[int, int], dict[int, int]]
"""For earlier operations the later one each is matched with, and the other way round."""


def most_that_stay(clashes: Sequence[int]) -> list[int]:
    """Find the largest set without a clash, the latest of the largest.

    Parameters
    ----------
    clashes
        For every operation, by its place in the text, the set of those written later that must
        come before it.

    Returns
    -------
    list of int
        The places of the operations that stay, rising.
    """
    later_of, earlier_of = _matching(clashes)
    as_earlier = set(range(len(clashes))) - set(later_of)
    as_later: set[int] = set()
    frontier = list(as_earlier)
    while frontier:
        node = frontier.pop()
        for later in bits(clashes[node]):
            if later not in as_later:
                as_later.add(later)
                as_earlier.add(earlier_of[later])
                frontier.append(earlier_of[later])
    return sorted(as_earlier - as_later)


def fewest_that_move(clashes: Sequence[int]) -> int:
    """Count the operations outside a largest set without a clash."""
    return len(_matching(clashes)[0])


def _matching(clashes: Sequence[int]) -> Matching:
    """Match as many operations as possible with one written later that clashes with them.

    Returns
    -------
    tuple of dict
        For every operation matched with a later one, that one; and the other way round.
    """
    if not any(clashes):
        return {}, {}
    # networkx takes longer to import than most repairs take, so only a broken order pays for it.
    import networkx as nx

    count = len(clashes)
    graph: nx.Graph[int] = nx.Graph()
    graph.add_nodes_from(range(count))
    graph.add_edges_from(
        (node, count + later) for node, mask in enumerate(clashes) for later in bits(mask)
    )
    matched = nx.bipartite.hopcroft_karp_matching(graph, range(count))
    later_of = {node: mate - count for node, mate in sorted(matched.items()) if node < count}
    return later_of, {later: node for node, later in later_of.items()}
