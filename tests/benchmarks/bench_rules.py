"""Print how long it takes to derive every reason, for shipped and for generated garments.

    python -m tests.benchmarks.bench_rules

Each figure is the least of several runs, in CPU milliseconds, each on a garment that is laid out
anew: the first look at how its entries meet is counted, too. Beside the whole stand the rules that
take most of it. Nothing here asserts: machines differ.
"""

# ruff: noqa: T201
import time
from collections.abc import Iterator
from pathlib import Path

from seqplan.load.document import load_text
from seqplan.model.garment import Garment
from seqplan.recipes.construction import Construction
from seqplan.recipes.expand import construct
from seqplan.rules.book import RULES
from seqplan.rules.derive import derive
from tests.tools.copies import copies

from .bench_processes import coverall

RUNS = 7
SIZES = (60, 120, 240, 500)
SHIRT = "net-loft-shirt"
COUNTS = (1, 2, 4, 8)
GARMENTS = sorted((Path(__file__).parents[2] / "garments").glob("*.yaml"))


def main() -> None:
    """Print a row for each garment, and how the generated ones grow."""
    print(f"{'garment':26}{'operations':>11}{'reasons':>9}{'ms':>9}  slowest rules")
    for path in GARMENTS:
        row(path.stem, loaded(path.read_text(encoding="utf-8")))
    spent = [row(f"coverall, {size}", loaded(coverall(size))) for size in SIZES]
    print(f"500 operations take {spent[-1] / spent[0]:.1f} times as long as 60")
    shirt = loaded((GARMENTS[0].parent / f"{SHIRT}.yaml").read_text(encoding="utf-8"))
    spent = [row(f"shirts, {count}", copies(shirt, count)) for count in COUNTS]
    print(f"{COUNTS[-1]} shirts take {spent[-1] / spent[0]:.1f} times as long as one")


def row(name: str, garment: Garment) -> float:
    """Print the figures of a garment; give the milliseconds."""
    c = laid_out(garment)
    reasons = derive(c)
    whole = min(timed(garment) for _ in range(RUNS))
    slowest = ", ".join(f"{slug} {ms:.1f}" for slug, ms in slowest_rules(garment))
    print(f"{name:26}{len(c.operations):>11}{len(reasons):>9}{whole:>9.2f}  {slowest}")
    return whole


def timed(garment: Garment) -> float:
    """CPU milliseconds to derive the reasons of a garment that nobody has looked at yet."""
    c = laid_out(garment)
    begun = time.process_time()
    derive(c)
    return (time.process_time() - begun) * 1000


def slowest_rules(garment: Garment, most: int = 3) -> Iterator[tuple[str, float]]:
    """The rules that take longest by themselves, once the garment has been looked at."""
    c = laid_out(garment)
    derive(c)
    spent = []
    for rule in RULES:
        begun = time.process_time()
        list(rule.derive(c))
        spent.append(((time.process_time() - begun) * 1000, rule.slug))
    for ms, slug in sorted(spent, reverse=True)[:most]:
        yield slug, ms


def loaded(text: str) -> Garment:
    """Read a garment, with the pictures that it names beside those that are shipped."""
    garment = load_text(text, folder=GARMENTS[0].parent).garment
    assert garment is not None
    return garment


def laid_out(garment: Garment) -> Construction:
    """Lay a garment out on the cloth."""
    construction, _ = construct(garment)
    assert construction is not None
    return construction


if __name__ == "__main__":
    main()
