"""What the benchmarks work on: invented instances, shipped garments, published instances.

Instances are found by the environment variable SEQPLAN_DATA, else in ``../shared/data`` beside the
repository.
"""

# ruff: noqa: T201
import json
import os
from collections.abc import Hashable, Mapping
from pathlib import Path
from typing import NamedTuple

from seqplan.base.ids import OpId
from seqplan.base.strength import Strength
from seqplan.graph.reason import Arc, Reason, ReasonKind

ROOT = Path(__file__).resolve().parents[2]
DATA = Path(os.environ.get("SEQPLAN_DATA", ROOT.parent / "shared" / "data"))


class Instance(NamedTuple):
    """Operations, reasons, and the set-up of every operation."""

    name: str
    group: str
    operations: tuple[OpId, ...]
    reasons: tuple[Reason, ...]
    setup_of: Mapping[OpId, Hashable]


def arc(before, after):
    return Reason(
        alternatives=((Arc(before, after),),),
        kind=ReasonKind.SAID,
        strength=Strength.MUST,
        rule="after",
        because="The instance says so.",
    )


def invented(pattern="*"):
    """Read the garment-like instances, the small ones first."""
    if not DATA.is_dir():
        print(f"No instances in {DATA}.")
    paths = (DATA / "garmentlike").glob(f"{pattern}.json")
    for path in sorted(paths, key=lambda each: (each.stem.split("_")[1], each.stem)):
        told = json.loads(path.read_text(encoding="utf-8"))
        operations = tuple(OpId(f"op-{number}") for number in range(told["n"]))
        yield Instance(
            name=path.stem,
            group=f"{told['n']} operations",
            operations=operations,
            reasons=tuple(arc(operations[one], operations[other]) for one, other in told["edges"]),
            setup_of=dict(zip(operations, told["class_of"], strict=True)),
        )


def shipped():
    """Read the garments of the repository, with all that binds them, either-ors included."""
    from seqplan.pipeline import open_garment

    for path in sorted((ROOT / "garments").glob("*.yaml")):
        opened = open_garment(path)
        construction = opened.construction
        yield Instance(
            name=path.stem,
            group="shipped garments",
            operations=tuple(construction.ids),
            reasons=tuple(opened.binding.held),
            setup_of={op.id: op.setup for op in construction.operations},
        )


def published(name):
    """Read an instance of the sequential ordering problem: operations, reasons, prices."""
    from seqplan.order.changes import Changes, Track

    text = (DATA / "sop-tsplib" / f"{name}.sop").read_text(encoding="ascii")
    size, *flat = map(int, text.split("EDGE_WEIGHT_SECTION")[1].split()[:-1])
    rows = [flat[start : start + size] for start in range(0, size * size, size)]
    operations = tuple(OpId(f"op-{number}") for number in range(size))
    reasons = tuple(
        arc(operations[j], operations[i])
        for i, row in enumerate(rows)
        for j, price in enumerate(row)
        if price < 0
    )
    costs = tuple(tuple(max(price, 0) for price in row) for row in rows)
    needs = dict(zip(operations, operations, strict=True))
    return operations, reasons, Changes((Track(needs, operations, costs),))
