"""Sound orders, drawn by lot."""


def random_order(operations, reasons, chance, pair=None):
    """Draw an order that holds every reason, or None where the draw ends in a circle.

    Either-ors are settled by lot, once all else is, and of what may come next the next is drawn.
    With a ``pair`` the second of the two follows the first at once.
    """
    arcs = _Arcs(operations, pair)
    shuffled = chance.sample(reasons, len(reasons))
    for reason in sorted(shuffled, key=lambda reason: reason.is_either_or):
        bundles = list(reason.alternatives)
        if not any(map(arcs.settle, chance.sample(bundles, len(bundles)))):
            return None
    order = []
    waiting = {node: sum(node in others for others in arcs.later.values()) for node in arcs.later}
    while waiting:
        node = chance.choice([each for each, count in waiting.items() if not count])
        del waiting[node]
        for other in arcs.later[node]:
            waiting[other] -= 1
        order += pair if pair and node == pair[0] else [node]
    return order


class _Arcs:
    """What comes later than what; of a pair the first stands for both."""

    def __init__(self, operations, pair):
        self.pair = pair
        self.later = {each: set() for each in operations if pair is None or each != pair[1]}

    def settle(self, bundle):
        """Add all arcs of an alternative, or none where one of them closes a circle."""
        added = []
        for arc in bundle:
            before, after = map(self._standing, arc)
            is_inner = before == after and tuple(arc) == self.pair
            if is_inner or after in self.later[before]:
                continue
            if self._reaches(after, before):
                for one, other in added:
                    self.later[one].discard(other)
                return False
            self.later[before].add(after)
            added.append((before, after))
        return True

    def _standing(self, operation):
        return self.pair[0] if self.pair and operation == self.pair[1] else operation

    def _reaches(self, start, goal):
        seen, ahead = {start}, [start]
        while ahead:
            node = ahead.pop()
            if node == goal:
                return True
            new = self.later[node] - seen
            seen |= new
            ahead += new
        return False
