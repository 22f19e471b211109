"""How long whole commands take against a bare interpreter that imports what every run needs.

    python -m tests.benchmarks.bench_processes

Each pair of commands runs in turn, so that a machine that slows down slows both; what is printed
are medians of the CPU seconds (user and system) that the operating system accounts to each run;
for handouts, which people wait for, medians of the seconds by the clock.
Byte code is kept between runs, as it is wherever the program was installed: else every run would
compile the whole program anew, which nobody's does.
Nothing here asserts: machines differ. docs/performance.md holds the figures and when they were
taken.
"""

import os
import statistics
import subprocess
import sys
import tempfile
import time
from collections.abc import Callable
from pathlib import Path

RUNS = 10
BARE = [sys.executable, "-c", "import click, yaml"]
BARE_PAGE = [sys.executable, "-c", "import click, yaml, jinja2"]
STEPS = 40
"""Of the booklet that is timed, with three operations each."""
SEQPLAN = [sys.executable, "-m", "seqplan"]
ROOT = Path(__file__).parents[2]
KEEPS_BYTE_CODE = {k: v for k, v in os.environ.items() if k != "PYTHONDONTWRITEBYTECODE"}


def coverall(operations: int) -> str:
    """A garment with about so many operations: skirts of four gores, joined at the waist."""
    lines = ["garment: Harbour coverall", "allowance: 1.5", "pieces:"]
    entries = ["operations:"]
    count = 0
    part = 0
    while count < operations:
        part += 1
        front, back = f"front{part}", f"back{part}"
        lines += [
            f"  {front}: {{cut: fold, edges: [waist, side, hem]}}",
            f"  {back}: {{cut: pair, edges: [waist, side, hem, centre]}}",
        ]
        recipes = [
            (f"side{part}", f"{{sew: {front}.side, to: {back}.side, as: finished together}}", 3),
            (f"centre{part}", f"{{sew: {back}.centre, as: pressed open}}", 3),
            (f"hem{part}", f"{{hem: [{back}.hem, {front}.hem], depth: 2, turned: once}}", 4),
            (f"waist{part}", f"{{casing: [{front}.waist, {back}.waist], depth: 3, gap: 5}}", 2),
        ]
        for name, text, size in recipes:
            entries.append(f"  {name}: {text}")
            count += size
    return "\n".join([*lines, *entries]) + "\n"


def cpu_seconds(command: list[str]) -> float:
    """Run a command to its end and give the CPU seconds that it took."""
    process = subprocess.Popen(
        command,
        stdout=subprocess.DEVNULL,
        stderr=subprocess.DEVNULL,
        cwd=ROOT,
        env=KEEPS_BYTE_CODE,
    )
    _, _, usage = os.wait4(process.pid, 0)
    return usage.ru_utime + usage.ru_stime


def clock_seconds(command: list[str]) -> float:
    """Run a command to its end and give the seconds that passed."""
    start = time.perf_counter()
    cpu_seconds(command)
    return time.perf_counter() - start


def ratio(
    command: list[str],
    bare: list[str] = BARE,
    seconds: Callable[[list[str]], float] = cpu_seconds,
) -> tuple[float, float, float]:
    """Median seconds of a command and of the bare interpreter, in turn, and their ratio."""
    seconds(command), seconds(bare)
    pairs = [(seconds(command), seconds(bare)) for _ in range(RUNS)]
    ours = statistics.median(pair[0] for pair in pairs)
    theirs = statistics.median(pair[1] for pair in pairs)
    return ours, theirs, ours / theirs


def main() -> None:
    """Print a row for each command."""
    with tempfile.TemporaryDirectory() as folder:
        rows = {"--version": ["--version"], "--help": ["--help"]}
        for size in (60, 500):
            file = Path(folder) / f"coverall-{size}.yaml"
            file.write_text(coverall(size))
            rows[f"check, {size} operations"] = ["check", str(file)]
            rows[f"steps --for batch, {size}"] = ["steps", str(file), "--for", "batch"]
        print(f"{'command':28}{'seqplan s':>10}{'bare s':>10}{'ratio':>8}")  # noqa: T201
        for name, words in rows.items():
            _print(name, ratio([*SEQPLAN, *words]))
        file.write_text(coverall(3 * STEPS))
        for suffix in (".html", ".pdf", ".md"):
            words = ["handout", str(file), "-o", f"{folder}/booklet{suffix}"]
            found = ratio([*SEQPLAN, *words], BARE_PAGE, clock_seconds)
            _print(f"handout, {STEPS} steps, {suffix}", found)


def _print(name: str, found: tuple[float, float, float]) -> None:
    ours, bare, times = found
    print(f"{name:28}{ours:>10.3f}{bare:>10.3f}{times:>8.2f}")  # noqa: T201


if __name__ == "__main__":
    main()
