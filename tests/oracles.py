"""Answers found in the most stupid way there is, to judge the clever ones by."""

from itertools import combinations, pairwise, permutations


def positions(order):
    return {operation: place for place, operation in enumerate(order)}


def holds(order, reasons):
    """Whether an order holds every reason."""
    place = positions(order)
    return all(
        any(all(place[arc.before] < place[arc.after] for arc in bundle) for bundle in alternatives)
        for alternatives in (reason.alternatives for reason in reasons)
    )


def valid_orders(operations, reasons):
    """List every order that holds every reason."""
    return [order for order in permutations(operations) if holds(order, reasons)]


def has_order(operations, reasons):
    return any(holds(order, reasons) for order in permutations(operations))


def changes(order, setup_of):
    return sum(setup_of[one] != setup_of[other] for one, other in pairwise(order))


def fewest_changes(operations, reasons, setup_of):
    """Give the least number of changes of any valid order; None if there is none."""
    return min(
        (changes(order, setup_of) for order in valid_orders(operations, reasons)), default=None
    )


def price(order, tracks):
    """Walk through an order, track by track, and add up what is paid on the way."""
    paid = 0
    for track in tracks:
        here = track.start
        for operation in order:
            want = track.needs.get(operation)
            if want is None:
                continue
            if here is not None:
                paid += track.costs[track.states.index(here)][track.states.index(want)]
            here = want
    return paid


def least_price(operations, reasons, tracks):
    """Give the least price of any valid order; None if there is none."""
    return min((price(order, tracks) for order in valid_orders(operations, reasons)), default=None)


def least_price_stepwise(operations, arcs, tracks):
    """Give the least price under arcs, one operation at a time, forgetting only the order so far.

    Slower than any search and right for any prices; good for some fifteen operations.
    """
    before = {each: {arc.before for arc in arcs if arc.after == each} for each in operations}
    level = {(frozenset(), tuple(track.start for track in tracks)): 0}
    for _ in operations:
        reached = {}
        for (done, here), paid in level.items():
            for each in operations:
                if each in done or not before[each] <= done:
                    continue
                there, cost = [], paid
                for track, state in zip(tracks, here, strict=True):
                    want = track.needs.get(each, state)
                    if want is not None and state is not None:
                        cost += track.costs[track.states.index(state)][track.states.index(want)]
                    there.append(want)
                key = done | {each}, tuple(there)
                reached[key] = min(cost, reached.get(key, cost))
        level = reached
    return min(level.values())


def moves(operations, order):
    """Give the fewest operations to lift out of an order so that the rest stands as written."""
    written = positions(operations)
    for count in range(len(order), -1, -1):
        for kept in combinations(order, count):
            if all(written[one] < written[other] for one, other in pairwise(kept)):
                return len(order) - count
    raise AssertionError


def fewest_moves(operations, reasons):
    """Give the fewest moves that make the written order valid; None if it cannot be."""
    return min(
        (moves(operations, order) for order in valid_orders(operations, reasons)), default=None
    )


def fewest_given_up(operations, musts, shoulds):
    """Give size and strength of the least set of shoulds to drop; None if the musts clash."""
    if not has_order(operations, musts):
        return None
    for size in range(len(shoulds) + 1):
        fitting = [
            sum(reason.strength.weight for reason in dropped)
            for dropped in combinations(shoulds, size)
            if has_order(operations, [*musts, *(r for r in shoulds if r not in dropped)])
        ]
        if fitting:
            return size, min(fitting)
    raise AssertionError
