"""Print how long it takes to rehearse the written order, for shipped and for generated garments.

    python -m tests.benchmarks.bench_rehearse

Each figure is the least of several runs, in CPU milliseconds, each on a garment that is laid out
anew. Nothing here asserts: machines differ.
"""

# ruff: noqa: T201
import time

from seqplan.model.garment import Garment
from seqplan.rehearse.walk import rehearse
from tests.tools.copies import copies

from .bench_processes import coverall
from .bench_rules import COUNTS, GARMENTS, RUNS, SHIRT, SIZES, laid_out, loaded


def main() -> None:
    """Print a row for each garment, and how the generated ones grow."""
    print(f"{'garment':26}{'operations':>11}{'ms':>9}")
    for path in GARMENTS:
        row(path.stem, loaded(path.read_text(encoding="utf-8")))
    spent = [row(f"coverall, {size}", loaded(coverall(size))) for size in SIZES]
    print(f"{SIZES[-1]} operations take {spent[-1] / spent[0]:.1f} times as long as {SIZES[0]}")
    shirt = loaded((GARMENTS[0].parent / f"{SHIRT}.yaml").read_text(encoding="utf-8"))
    spent = [row(f"shirts, {count}", copies(shirt, count)) for count in COUNTS]
    print(f"{COUNTS[-1]} shirts take {spent[-1] / spent[0]:.1f} times as long as one")


def row(name: str, garment: Garment) -> float:
    """Print the figures of a garment; give the milliseconds."""
    spent = min(timed(garment) for _ in range(RUNS))
    print(f"{name:26}{len(laid_out(garment).operations):>11}{spent:>9.2f}")
    return spent


def timed(garment: Garment) -> float:
    """CPU milliseconds to walk through the written order of a garment."""
    c = laid_out(garment)
    begun = time.process_time()
    found = rehearse(c, c.ids)
    spent = (time.process_time() - begun) * 1000
    assert found.is_clean
    return spent


if __name__ == "__main__":
    main()
