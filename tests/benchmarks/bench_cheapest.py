"""Print the CPU time to proof of the cheapest changes of set-up.

Run as ``python -m tests.benchmarks.bench_cheapest [states [kind]]``: the number limits the search
of each instance; the kind is one of ``workroom``, ``attributes``, ``table``, ``sop``.

The garment-like instances say only which class an operation is of, so what a class needs is made
up here: a station and what is on it, in a workroom with the usual minutes; or three attributes
with a price each; or a table of random prices, closed under going through other set-ups.
"""

# ruff: noqa: T201
import random
import sys

from seqplan.model.workroom import Machine, Needs, Workroom
from seqplan.order.changes import Changes, Track
from seqplan.order.fewest import cheapest_order
from seqplan.order.limits import StateLimit
from seqplan.order.workroom import changes_in
from tests.benchmarks.instances import DATA, invented, published
from tests.benchmarks.timing import print_groups, timed

ROOM = Workroom(
    (
        Machine(
            "sewing machine",
            "lockstitch",
            setup_minutes=2,
            foot_minutes=1,
            colour_minutes=2,
            mounted=Needs("lockstitch", foot="standard", colour="shell"),
        ),
        Machine("iron", "iron", setup_minutes=3),
        Machine("overlocker", "overlocker", setup_minutes=2),
        Machine("hand", "hand", setup_minutes=1),
    )
)
NEEDS = (
    Needs("lockstitch", foot="standard", colour="shell"),
    Needs("iron"),
    Needs("overlocker"),
    Needs("lockstitch", foot="zip", colour="shell"),
    Needs("hand"),
    Needs("lockstitch", foot="standard", colour="topstitching"),
)


def in_workroom(instance):
    return changes_in(ROOM, {each: NEEDS[kind] for each, kind in instance.setup_of.items()})


def of_attributes(instance):
    """Give a machine by class, and on two of four machines a foot and a thread by lot."""
    lot = random.Random(instance.name)
    machine = {each: kind % 4 for each, kind in instance.setup_of.items()}
    sewn = [each for each in instance.operations if machine[each] in (0, 2)]
    return Changes(
        (
            Track.even(machine, 60),
            Track.even({each: lot.choice("abc") for each in sewn}, 20),
            Track.even({each: lot.choice("ab") for each in sewn}, 30),
        )
    )


def by_table(instance):
    lot = random.Random(instance.name)
    kinds = range(max(instance.setup_of.values()) + 1)
    rows = tuple(tuple(0 if a == b else lot.randint(20, 99) for b in kinds) for a in kinds)
    return Changes((Track(instance.setup_of, tuple(kinds), rows).through(),))


KINDS = {"workroom": in_workroom, "attributes": of_attributes, "table": by_table}

SOP = (
    "ESC07 ESC11 ESC12 br17.10 br17.12 ESC25 p43.1 p43.2 p43.3 p43.4 prob.42 ESC47 ry48p.1 ry48p.2 "
    "ry48p.3 ry48p.4 rbg048a rbg050c ft53.1 ft53.2 ft53.3 ft53.4 ft70.4 ESC63 ESC78 rbg109a rbg150a"
)


def run(name, group, search):
    """Search and print a line."""
    result, spent = timed(search)
    print(
        f"{name:20} {group:28} cost {result.cost:6} bound {result.lower_bound:6} "
        f"{result.proof.value:8} states {result.states:7} CPU s {spent:8.3f}",
        flush=True,
    )
    return group, result, spent


def main(most, kinds):
    rows = []
    for kind in kinds:
        for instance in invented() if kind in KINDS else ():
            changes = KINDS[kind](instance)
            rows.append(
                run(
                    instance.name,
                    f"{kind}, {instance.group}",
                    lambda told=instance, prices=changes: cheapest_order(
                        told.operations, told.reasons, prices, limit=StateLimit(most)
                    ),
                )
            )
    for name in SOP.split() if "sop" in kinds and DATA.is_dir() else ():
        told = published(name)
        run(name, "sop", lambda told=told: cheapest_order(*told, limit=StateLimit(most)))
    print_groups(rows)


if __name__ == "__main__":
    main(
        int(sys.argv[1]) if len(sys.argv) > 1 else 25_000,
        sys.argv[2:] or [*KINDS, "sop"],
    )
