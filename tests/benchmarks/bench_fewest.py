"""Print the CPU time to proof of the fewest changes of set-up, per instance and per group.

Run as ``python tests/benchmarks/bench_fewest.py [states]``: the number limits the search of each
instance. The instances are found by the environment variable SEQPLAN_DATA, else in
``../shared/data`` beside the repository.
"""

# ruff: noqa: T201
import json
import os
import statistics
import sys
import time
from collections import defaultdict
from pathlib import Path

from seqplan.base.ids import OpId
from seqplan.base.strength import Strength
from seqplan.graph.reason import Arc, Reason, ReasonKind
from seqplan.order.fewest import fewest_changes
from seqplan.order.limits import StateLimit
from seqplan.order.result import Proof

ROOT = Path(__file__).resolve().parents[2]
DATA = Path(os.environ.get("SEQPLAN_DATA", ROOT.parent / "shared" / "data"))


def load(path):
    instance = json.loads(path.read_text(encoding="utf-8"))
    operations = [OpId(f"op-{number}") for number in range(instance["n"])]
    reasons = [
        Reason(
            alternatives=((Arc(operations[before], operations[after]),),),
            kind=ReasonKind.SAID,
            strength=Strength.MUST,
            rule="after",
            because="The instance says so.",
        )
        for before, after in instance["edges"]
    ]
    setups = dict(zip(operations, instance["class_of"], strict=True))
    return instance, operations, reasons, setups


def main(most):
    groups = defaultdict(list)
    for path in sorted((DATA / "garmentlike").glob("*.json")):
        instance, operations, reasons, setups = load(path)
        begun = time.process_time()
        result = fewest_changes(operations, reasons, setups, limit=StateLimit(most))
        spent = time.process_time() - begun
        groups[instance["kind"], instance["n"]].append((spent, result.proof is Proof.OPTIMAL))
        print(
            f"{path.stem:24} batches {result.cost + 1:3} bound {result.lower_bound + 1:3} "
            f"{result.proof.value:9} states {result.states:8} CPU s {spent:9.4f}",
            flush=True,
        )
    for (kind, size), rows in groups.items():
        seconds = [spent for spent, _ in rows]
        print(
            f"{kind:8} n={size:3}: proven {sum(proven for _, proven in rows)}/{len(rows)}, "
            f"median {statistics.median(seconds):.4f} CPU s, most {max(seconds):.4f}"
        )


if __name__ == "__main__":
    main(int(sys.argv[1]) if len(sys.argv) > 1 else 2_000_000)
