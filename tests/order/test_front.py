"""Comparing states block by block gives what comparing them one by one gives."""

import random

from strategies import LETTERS, reason

from seqplan.graph.bits import bits, mask_of
from seqplan.graph.choices import Problem
from seqplan.order.changes import Changes, Track
from seqplan.order.front import Front, State
from seqplan.order.rooms import Rooms, sides_of

NAMES = LETTERS[:14]
SIDES = sides_of(NAMES, Changes((Track.even({name: n % 3 for n, name in enumerate(NAMES)}, 2),)))


def states(count):
    """Make up sets that are closed under "comes before", with rooms and costs."""
    rolled = random.Random(1)
    arcs = [reason(a + b) for a in NAMES for b in NAMES if a < b and rolled.random() < 0.15]
    closure = Problem.of(NAMES, arcs).start.closure
    rooms = Rooms(SIDES, len(NAMES))
    known = [rooms.first, *(rooms.step(rooms.first, kind)[1] for kind in range(3))]
    made = []
    for _ in range(count):
        done = 0
        for node in rolled.sample(range(len(NAMES)), rolled.randint(0, 4)):
            done |= closure.ancestors[node] | 1 << node
        last = mask_of(node for node in bits(done) if not closure.descendants[node] & done)
        made.append(State(done, last, 0, rolled.choice(known), rolled.randint(0, 40), (), 0))
    return rooms, made


def beats(rooms, one, other):
    if one.done == other.done and one.room == other.room:
        return one.spent <= other.spent
    enough = one.spent + rooms.extra(one.room, other.room) <= other.spent
    return enough and one.done | other.done == one.done


def test_a_state_is_entered_unless_one_that_has_done_more_beats_it():
    rooms, made = states(4000)
    front = Front(len(NAMES), rooms, 40, compares_sets=True)
    kept = []
    for state in made:
        beaten = any(beats(rooms, other, state) for other in kept)
        assert front.add(state, None) == (not beaten)
        if not beaten:
            kept.append(state)
    assert 100 < len(kept) < 3000
    for place, state in enumerate(kept):
        later = any(beats(rooms, other, state) for other in kept[place + 1 :])
        assert front.is_beaten(state) == later


def test_without_comparing_sets_only_the_same_state_is_beaten():
    rooms, made = states(2000)
    front = Front(len(NAMES), rooms, 40, compares_sets=False)
    least = {}
    for state in made:
        key = state.done, state.room
        assert front.add(state, None) == (state.spent < least.get(key, 99))
        least[key] = min(state.spent, least.get(key, 99))
    assert all(front.is_beaten(each) == (each.spent > least[each.done, each.room]) for each in made)


def test_the_way_to_a_state_is_told_from_its_beginning():
    rooms, (one, other, *_) = states(2)
    front = Front(len(NAMES), rooms, 40, compares_sets=True)
    front.add(one, None)
    front.add(other, one)
    assert front.trace(other) == [one, other]
