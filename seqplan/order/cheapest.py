"""The cheapest changes under plain arcs: best-first search over what is done and how all stands.

1. A state is the set of operations done and the room, that is, the state of every track. A move
   makes the room ready for some available operation and then does everything that needs no
   further change, also what becomes available meanwhile. Doing less never helps, as whatever
   follows can still be done afterwards, and leaving an operation out of what follows never makes
   it dearer. That is so if no change is cheaper through another state (`Track.is_direct`);
   otherwise a move is a single operation.
2. Bound: what every track still costs at least (`entries`), added up.
3. States are taken up by cost so far plus bound, the youngest first. So the first complete set is
   cheapest.
4. One state beats another if it has done all that the other has, and costs no more even if its
   room makes what follows as much dearer as it can (`front`). Where a move is a single operation,
   both must have done the same in the same room.
5. A search that was stopped is given a better order than the first quick one by a beam: of all
   states after so many moves only the most promising few are followed.

Cost: a move looks at the successors of what it does and at every state of every track; the number
of states is small while the bound is nearly exact, and exponential at worst.
"""

from collections.abc import Iterator, Sequence
from heapq import heappop, heappush
from itertools import count
from operator import mul

from seqplan.base.ids import OpId
from seqplan.graph.bits import bits, mask_of
from seqplan.graph.closure import Closure
from seqplan.order.branch import Inner
from seqplan.order.changes import Changes
from seqplan.order.entries import ANY, Side, count_entries, find_prices
from seqplan.order.front import Front, State
from seqplan.order.limits import Meter
from seqplan.order.rooms import Rooms, sides_of

_BEAM = 100
"""How many states a beam follows at a time."""


class CheapestSearch:
    """Minimises the price of all changes.

    Parameters
    ----------
    operations
        In the order of their indices.
    changes
        What changes cost.
    """

    def __init__(self, operations: Sequence[OpId], changes: Changes) -> None:
        self.size = len(operations)
        self.sides = sides_of(operations, changes)
        self.rooms = Rooms(self.sides, self.size)
        self.is_direct = all(track.is_direct for track in changes.tracks)

    def bound(self, closure: Closure) -> int:
        """Add up what the tracks cost at least."""
        return _Graph(closure, self).first().bound

    def quick(self, closure: Closure) -> tuple[int, tuple[int, ...]]:
        """Always make the move that leaves the least bound, of equals the longest."""
        return _Graph(closure, self).beam(1)

    def thorough(self, closure: Closure) -> tuple[int, tuple[int, ...]]:
        """Follow the most promising states."""
        return _Graph(closure, self).beam(_BEAM)

    def solve(self, closure: Closure, ceiling: int, meter: Meter) -> Inner:
        """Find the cheapest order, unless none costs less than ``ceiling``."""
        graph = _Graph(closure, self)
        front = Front(self.size, self.rooms, ceiling, compares_sets=self.is_direct)
        ages = count()
        first = graph.first()
        front.add(first, None)
        queue = [(first.bound, next(ages), first)]
        while queue and queue[0][0] < ceiling:
            bound, _, state = heappop(queue)
            if front.is_beaten(state):
                continue
            if not state.available:
                return Inner(bound, graph.order(front.trace(state)))
            if not meter.take_up():
                return Inner(bound, None)
            for child in graph.moves(state):
                if child.bound < ceiling and front.add(child, state):
                    heappush(queue, (child.bound, -next(ages), child))
        return Inner(ceiling, None)


class _TrackBound:
    """What one track still costs at least, in numbers that the moves keep up to date."""

    def __init__(self, closure: Closure, side: Side, base: int) -> None:
        entries = count_entries(closure, side)
        self.base = base
        self.afresh = entries.afresh
        self.again = entries.again
        self.counts = tuple(len(steps) - 1 for steps in entries.afresh)
        self.end = base + len(self.counts)
        prices = find_prices(closure, side, self.counts)
        self.weights = list(map(int.__add__, prices.leaving, prices.entering))
        self.ends = [price - prices.last for price in prices.leaving]
        self.caring = mask_of(node for node, label in enumerate(side.labels) if label != ANY)

    def level(self, here: int, needs: tuple[int, ...], left: int) -> int:
        """Count anew how often the present state has to be entered afresh."""
        level, steps = needs[self.base + here], self.afresh[here]
        while level and not steps[level] & left:
            level -= 1
        return level

    def rest(self, here: int, needs: tuple[int, ...], left: int) -> int:
        """Bound what the track still costs."""
        if not self.caring & left:
            return 0
        cost: int = self.ends[here] + sum(map(mul, needs[self.base : self.end], self.weights))
        if here < len(self.weights):
            need, steps = needs[self.base + here], self.again[here]
            if need >= len(steps) or not steps[need] & left:
                cost -= self.weights[here]
        return max(cost, 0)


class _Graph:
    """What the moves need to know of one set of arcs."""

    def __init__(self, closure: Closure, search: CheapestSearch) -> None:
        self.closure = closure
        self.rooms = search.rooms
        self.is_direct = search.is_direct
        self.everything = (1 << search.size) - 1
        self.tracks: list[_TrackBound] = []
        base = 0
        for side in search.sides:
            self.tracks.append(_TrackBound(closure, side, base))
            base = self.tracks[-1].end

    def first(self) -> State:
        """What is done before any change: all that needs none."""
        available = mask_of(node for node, above in enumerate(self.closure.ancestors) if not above)
        needs = tuple(count for track in self.tracks for count in track.counts)
        state = State(0, 0, available, self.rooms.first, 0, needs, 0)
        fits = available & self.rooms.fits[state.room] if self.is_direct else 0
        return self.work(state, state.room, 0, fits)

    def moves(self, state: State) -> Iterator[State]:
        """Make every move."""
        for kind, mask in enumerate(self.rooms.kinds):
            news = state.available & mask
            if news:
                cost, room = self.rooms.step(state.room, kind)
                if self.is_direct:
                    yield self.work(state, room, cost, state.available & self.rooms.fits[room])
                else:
                    for node in bits(news):
                        yield self.work(state, room, cost, 1 << node)

    def work(self, state: State, room: int, cost: int, news: int) -> State:
        """Do some available operations in a room, and what else it fits if more is not worse."""
        done, last, available = state.done, state.last, state.available
        fits = self.rooms.fits[room] if self.is_direct else 0
        ancestors, successors = self.closure.ancestors, self.closure.successors
        while news:
            done |= news
            available &= ~news
            touched = 0
            for node in bits(news):
                touched |= successors[node]
                last = last & ~ancestors[node] | 1 << node
            for node in bits(touched):
                if not ancestors[node] & ~done:
                    available |= 1 << node
            news = available & fits
        return self.weighed(
            State(done, last, available, room, state.spent + cost, state.needs, state.bound)
        )

    def weighed(self, state: State) -> State:
        """Bound what is left; no less than was known before."""
        left = self.everything & ~state.done
        stand = self.rooms.stands[state.room]
        needs = state.needs
        for track, here in zip(self.tracks, stand, strict=True):
            if here < len(track.weights):
                slot = track.base + here
                level = track.level(here, needs, left)
                if level != needs[slot]:
                    needs = (*needs[:slot], level, *needs[slot + 1 :])
        rest = 0
        for track, here in zip(self.tracks, stand, strict=True):
            rest += track.rest(here, needs, left)
        return state._replace(needs=needs, bound=max(state.bound, state.spent + rest))

    def beam(self, width: int) -> tuple[int, tuple[int, ...]]:
        """Follow so many states, those with the least bounds, of equals the furthest."""
        came: dict[State, State] = {}
        ends: list[State] = []
        level = [self.first()]
        while level:
            found: dict[tuple[int, int], State] = {}
            for state in level:
                if not state.available:
                    ends.append(state)
                for child in self.moves(state):
                    known = found.get((child.done, child.room))
                    if known is None or child.spent < known.spent:
                        found[child.done, child.room] = child
                        came[child] = state
            level = sorted(found.values(), key=lambda each: (each.bound, -each.done.bit_count()))[
                :width
            ]
        walk = [min(ends, key=lambda each: each.spent)]
        while walk[-1] in came:
            walk.append(came[walk[-1]])
        return walk[0].spent, self.order(walk[::-1])

    def order(self, walk: Sequence[State]) -> tuple[int, ...]:
        """Write the moves out, each in the author's order as far as arcs allow."""
        order: list[int] = []
        before = 0
        for state in walk:
            order.extend(self.closure.walk(state.done & ~before))
            before = state.done
        return tuple(order)
