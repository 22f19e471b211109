"""Print the CPU time to proof of the fewest changes of set-up, per instance and per group.

Run as ``python -m tests.benchmarks.bench_fewest [states]``: the number limits the search of each
instance.
"""

# ruff: noqa: T201
import sys

from seqplan.order.fewest import fewest_changes
from seqplan.order.limits import StateLimit
from tests.benchmarks.instances import invented
from tests.benchmarks.timing import print_groups, timed


def main(most):
    rows = []
    for instance in invented():
        result, spent = timed(
            lambda told=instance: fewest_changes(
                told.operations, told.reasons, told.setup_of, limit=StateLimit(most)
            )
        )
        rows.append((instance.group, result, spent))
        print(
            f"{instance.name:20} changes {result.cost:3} bound {result.lower_bound:3} "
            f"{result.proof.value:8} states {result.states:8} CPU s {spent:9.4f}",
            flush=True,
        )
    print_groups(rows)


if __name__ == "__main__":
    main(int(sys.argv[1]) if len(sys.argv) > 1 else 2_000_000)
