"""CPU seconds of searches, and their sums."""

# ruff: noqa: T201
import statistics
import time
from collections import defaultdict

from seqplan.order.result import Proof


def timed(search, runs=1):
    """Run a search; its outcome, and the median of its CPU seconds."""
    spent = []
    for _ in range(runs):
        begun = time.process_time()
        outcome = search()
        spent.append(time.process_time() - begun)
    return outcome, statistics.median(spent)


def print_groups(rows):
    """Print proofs and times for each group of (group, result, seconds)."""
    groups = defaultdict(list)
    for group, result, spent in rows:
        groups[group].append((result.proof is Proof.OPTIMAL, spent))
    for group, told in groups.items():
        seconds = [spent for _, spent in told]
        print(
            f"{group}: proven {sum(proven for proven, _ in told)} of {len(told)}, "
            f"median {statistics.median(seconds):.4f} CPU s, most {max(seconds):.4f}"
        )
