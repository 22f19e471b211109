"""Published optima of the sequential ordering problem, found and proven by the same search.

Instances and optima: TSPLIB95 (G. Reinelt, "TSPLIB - A traveling salesman problem library", ORSA
Journal on Computing 3, 1991; SOP instances by Ascheuer, Escudero, Groetschel, Stoer), page "SOP",
Heidelberg. Every operation is a set-up of its own, and the table of prices is the instance's.
"""

import os
from pathlib import Path

import pytest
from strategies import reason

from seqplan.order.changes import Changes, Track
from seqplan.order.fewest import cheapest_order
from seqplan.order.result import Proof

DATA = Path(os.environ.get("SEQPLAN_DATA", Path(__file__).parents[3] / "shared" / "data"))
SOP = DATA / "sop-tsplib"
needs_data = pytest.mark.skipif(not SOP.is_dir(), reason=f"no published instances in {SOP}")

OPTIMA = {
    "ESC07": 2125,
    "ESC11": 2075,
    "ESC12": 1675,
    "ESC25": 1681,
    "br17.10": 55,
    "br17.12": 55,
}


def read(path):
    """Read an instance: -1 in row i, column j means that j comes before i."""
    size, *flat = map(int, path.read_text().split("EDGE_WEIGHT_SECTION")[1].split()[:-1])
    rows = [flat[start : start + size] for start in range(0, size * size, size)]
    names = [chr(ord("a") + place) for place in range(size)]
    reasons = [
        reason(names[j] + names[i]) for i, row in enumerate(rows) for j in range(size) if row[j] < 0
    ]
    costs = tuple(tuple(max(price, 0) for price in row) for row in rows)
    track = Track(dict(zip(names, names, strict=True)), tuple(names), costs)
    return names, reasons, Changes((track,))


@needs_data
@pytest.mark.parametrize("name", OPTIMA)
def test_the_published_optimum_is_found_and_proven(name):
    names, reasons, changes = read(SOP / f"{name}.sop")
    result = cheapest_order(names, reasons, changes)
    assert result.proof is Proof.OPTIMAL
    assert result.cost == changes.cost(result.order) == OPTIMA[name]
