"""The fewest visits to set-ups under plain arcs: best-first search over closed sets.

1. A state is the set of operations done. A move picks a set-up and does everything of it that is
   available or becomes available meanwhile; doing less never helps, as whatever follows can
   still be done afterwards. So a move is one visit, and the state need not know the set-up.
2. Bound: for every operation v and set-up c, count the visits to c that a chain from v on needs
   at least: the runs of c along it, at their most. What is left to do is closed under "comes
   after", so these numbers do not depend on the state: the most over all operations left bounds
   the visits to c, and the sum over all set-ups bounds the rest. It falls by one at most per
   move, and only for the set-up picked.
3. States are taken up by least visits made plus bound, the youngest first. So the first complete
   set is optimal.
4. Of two states with equally many visits, one that contains all that the other has done needs
   no more visits than the other; the smaller one is dropped.
5. When a visit would finish its set-up for good, no other move is tried: the visit has to be
   made some time, and now it makes the most available.

Cost: a move looks at the successors of what it does, and its state is compared with all others of
as many visits. The number of states is small while the bound is nearly exact, and exponential at
worst.
"""

from collections.abc import Sequence
from typing import TypeAlias

from seqplan.graph.bits import bits
from seqplan.graph.closure import Closure
from seqplan.order.branch import Inner
from seqplan.order.limits import Meter

State: TypeAlias = tuple[int, int, tuple[int, ...], int]
"""Done, available, the bound for every set-up, visits made."""


class VisitSearch:
    """Minimises visits less one, the changes of set-up.

    Parameters
    ----------
    setups
        For every operation the number of its set-up, counting from 0 without holes.
    """

    def __init__(self, setups: Sequence[int]) -> None:
        self.setups = setups
        self.masks = [0] * (max(setups, default=-1) + 1)
        for node, setup in enumerate(setups):
            self.masks[setup] |= 1 << node

    def bound(self, closure: Closure) -> int:
        """Add up the visits that single chains need."""
        return changes(sum(len(steps) - 1 for steps in chain_levels(closure, self.setups)))

    def quick(self, closure: Closure) -> tuple[int, tuple[int, ...]]:
        """Always make the visit that leaves the least bound, of equals the longest."""
        graph = _Graph(closure, self)
        state = graph.first()
        visits = []
        while state[1]:
            state = min(
                (graph.visit(state, setup) for setup in graph.open(state[1])),
                key=lambda each: (sum(each[2]), -each[0].bit_count()),
            )
            visits.append(state[0])
        return changes(state[3]), graph.order(visits)

    def thorough(self, closure: Closure) -> tuple[int, tuple[int, ...]]:
        """Do as before; the first order is good enough while one waits for the proof."""
        return self.quick(closure)

    def solve(self, closure: Closure, ceiling: int, meter: Meter) -> Inner:
        """Find the fewest changes, unless there are none fewer than ``ceiling``."""
        graph = _Graph(closure, self)
        first = graph.first()
        least = sum(first[2])
        queues: dict[int, list[State]] = {least: [first]}
        front = _Front()
        while changes(least) < ceiling:
            queue = queues.get(least)
            if not queue:
                least += 1
                continue
            state = queue.pop()
            done, available, _, made = state
            if front.is_beaten(done, made):
                continue
            if not available:
                return Inner(changes(made), graph.order(front.trace(done)))
            if not meter.take_up():
                return Inner(changes(least), None)
            for child in sorted(graph.moves(state), key=lambda each: each[0].bit_count()):
                if front.add(child[0], child[3], done):
                    queues.setdefault(child[3] + sum(child[2]), []).append(child)
        return Inner(changes(least), None)


class _Front:
    """For every number of visits, the sets done that no other such set contains."""

    def __init__(self) -> None:
        self.sets: dict[int, set[int]] = {0: {0}}
        self.came: dict[int, int] = {}

    def add(self, done: int, made: int, before: int) -> bool:
        """Enter a set and what was done one visit before; False if another contains it."""
        front = self.sets.setdefault(made, set())
        contained = []
        for other in front:
            common = other & done
            if common == done:
                return False
            if common == other:
                contained.append(other)
        front.difference_update(contained)
        front.add(done)
        self.came[done] = before
        return True

    def is_beaten(self, done: int, made: int) -> bool:
        """Whether a set that contains this one was entered since."""
        return done not in self.sets[made]

    def trace(self, done: int) -> list[int]:
        """List the sets done after each visit, up to this one."""
        visits = []
        while done:
            visits.append(done)
            done = self.came[done]
        return visits[::-1]


def changes(visits: int) -> int:
    """Tell how many changes of set-up some visits are: the first set-up is free."""
    return max(visits - 1, 0)


def chain_levels(closure: Closure, setups: Sequence[int]) -> list[list[int]]:
    """For every set-up and number, which operations start a chain with so many visits to it.

    Returns
    -------
    list of list of int
        ``levels[c][t]`` is the set of operations with a chain, starting there, that visits
        set-up c at least t times; the last set in ``levels[c]`` is not empty, unless t is 0.
    """
    kinds = max(setups, default=-1) + 1
    runs = [[0] * kinds for _ in setups]
    levels = [[(1 << len(setups)) - 1] for _ in range(kinds)]
    for node in reversed(closure.sorted_indices()):
        own, row = setups[node], runs[node]
        for after in bits(closure.successors[node]):
            below = runs[after]
            for kind in range(kinds):
                reached = below[kind]
                if kind == own and setups[after] != own:
                    reached += 1
                row[kind] = max(row[kind], reached)
        row[own] = max(row[own], 1)
        for kind, reached in enumerate(row):
            if reached:
                steps = levels[kind]
                if reached == len(steps):
                    steps.append(0)
                steps[reached] |= 1 << node
    return [_accumulated(steps) for steps in levels]


def _accumulated(steps: list[int]) -> list[int]:
    """Turn "exactly t" into "at least t"."""
    for level in range(len(steps) - 2, 0, -1):
        steps[level] |= steps[level + 1]
    return steps


class _Graph:
    """What the moves need to know of one set of arcs."""

    def __init__(self, closure: Closure, search: VisitSearch) -> None:
        self.setups = search.setups
        self.masks = search.masks
        self.closure = closure
        self.ancestors = closure.ancestors
        self.successors = closure.successors
        self.levels = chain_levels(closure, search.setups)
        self.everything = (1 << len(search.setups)) - 1

    def first(self) -> State:
        available = 0
        for node, above in enumerate(self.ancestors):
            if not above:
                available |= 1 << node
        return 0, available, tuple(len(steps) - 1 for steps in self.levels), 0

    def open(self, available: int) -> list[int]:
        """List the set-ups that have something available."""
        return [setup for setup, mask in enumerate(self.masks) if mask & available]

    def moves(self, state: State) -> list[State]:
        """Make every visit that may pay; one alone if it finishes its set-up."""
        children = []
        for setup in self.open(state[1]):
            child = self.visit(state, setup)
            if not child[2][setup]:
                return [child]
            children.append(child)
        return children

    def visit(self, state: State, setup: int) -> State:
        """Do everything of one set-up that is available or becomes so."""
        done, available, need, made = state
        mask = self.masks[setup]
        news = available & mask
        available &= ~mask
        while news:
            done |= news
            touched = 0
            for node in bits(news):
                touched |= self.successors[node]
            news = 0
            for node in bits(touched):
                if not self.ancestors[node] & ~done:
                    news |= 1 << node
            available |= news & ~mask
            news &= mask
        level = need[setup]
        if not self.levels[setup][level] & ~done:
            need = (*need[:setup], level - 1, *need[setup + 1 :])
        return done, available, need, made + 1

    def order(self, visits: Sequence[int]) -> tuple[int, ...]:
        """Write the visits out, each in the author's order as far as arcs allow."""
        order: list[int] = []
        before = 0
        for done in visits:
            order.extend(self.closure.walk(done & ~before))
            before = done
        return tuple(order)
