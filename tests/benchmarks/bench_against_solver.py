"""Print the CPU time to proof of the fewest changes of set-up, beside a general solver's.

Run as ``python -m tests.benchmarks.bench_against_solver [seconds [pattern]]``: the solver gets so
many CPU seconds for each instance and model (60 without a word); the pattern picks instances by
name.

The solver is CP-SAT of OR-tools, if it can be imported; without it only our own times are printed.
It gets one worker, so that its CPU time is its running time, a fixed seed, and a model of visits
in a row, each to one set-up, every operation in one of them. It gets the same reasons, either-ors
too. Two models: ``plain`` has as many visits as the first order that comes to hand, the
written one; ``helped`` has as many as our quick order, which it gets as a hint, and our bound on
the visits to every set-up. CPU seconds of the process are taken of both; the solver's do not
include building the model, and ours are the median of five runs.
"""

# ruff: noqa: T201
import statistics
import sys
import threading
import time
from collections import defaultdict
from contextlib import contextmanager
from itertools import pairwise
from typing import NamedTuple

from seqplan.graph.choices import Problem
from seqplan.graph.directions import settle_all
from seqplan.order.changes import count_changes
from seqplan.order.fewest import fewest_changes
from seqplan.order.result import Proof
from seqplan.order.visits import VisitSearch, chain_levels
from tests.benchmarks.instances import invented, shipped
from tests.benchmarks.timing import timed

try:
    import ortools
    from ortools.sat.python import cp_model
except ImportError:
    cp_model = None

SEED = 1
RUNS = 5
MODELS = ("plain", "helped")


class VisitModel:
    """Visits in a row for CP-SAT."""

    def __init__(self, instance, *, is_helped):
        self.problem = Problem.of(instance.operations, instance.reasons)
        settled = settle_all(self.problem.start, range(len(instance.operations)))
        numbers = {}
        self.setups = [
            numbers.setdefault(instance.setup_of[each], len(numbers))
            for each in instance.operations
        ]
        order = settled.closure.walk((1 << len(self.setups)) - 1)
        if is_helped:
            _, order = VisitSearch(self.setups).quick(settled.closure)
        visits = [self.setups[node] for node in order]
        self.most = 1 + sum(one != other for one, other in pairwise(visits))
        self.model = cp_model.CpModel()
        self.at = self.visits()
        self.visit = self.operations()
        self.place = [self.number(len(self.setups)) for _ in self.setups]
        for pair in self.problem.fixed:
            self.hold(pair)
        for choice in self.problem.choices:
            self.either_or(choice)
        if is_helped:
            self.help(order)

    def flag(self):
        return self.model.new_bool_var("")

    def number(self, end):
        return self.model.new_int_var(0, end - 1, "")

    def visits(self):
        """Give every visit one set-up, unlike that of the one before; minimise them."""
        kinds = range(max(self.setups) + 1)
        at = [[self.flag() for _ in kinds] for _ in range(self.most)]
        used = [self.flag() for _ in at]
        for v, row in enumerate(at):
            self.model.add(sum(row) == used[v])
            if v:
                self.model.add_implication(used[v], used[v - 1])
                for one, other in zip(at[v - 1], row, strict=True):
                    self.model.add_at_most_one(one, other)
        self.model.minimize(sum(used))
        return at

    def operations(self):
        """Put every operation into one visit to its set-up; the numbers of the visits."""
        numbers = []
        for setup in self.setups:
            here = [self.flag() for _ in self.at]
            self.model.add_exactly_one(here)
            for flag, row in zip(here, self.at, strict=True):
                self.model.add_implication(flag, row[setup])
            numbers.append(self.number(self.most))
            self.model.add(numbers[-1] == sum(v * flag for v, flag in enumerate(here)))
        return numbers

    def hold(self, pair, only_if=()):
        """Hold an arc. Within a visit only either-ors can go in a circle."""
        before, after = pair
        apart = int(self.setups[before] != self.setups[after])
        held = [self.visit[before] + apart <= self.visit[after]]
        if self.problem.choices:
            held.append(self.place[before] + 1 <= self.place[after])
        for each in held:
            self.model.add(each).only_enforce_if(*only_if)

    def either_or(self, choice):
        taken = [self.flag() for _ in choice.alternatives]
        self.model.add_bool_or(taken)
        for flag, bundle in zip(taken, choice.alternatives, strict=True):
            for pair in bundle:
                self.hold(pair, [flag])

    def help(self, order):
        """Tell what we know: the visits that chains need, and an order."""
        levels = chain_levels(self.problem.start.closure, self.setups)
        for kind, steps in enumerate(levels):
            self.model.add(sum(row[kind] for row in self.at) >= len(steps) - 1)
        v, last = -1, None
        for node in order:
            v += self.setups[node] != last
            last = self.setups[node]
            self.model.add_hint(self.visit[node], v)

    def solve(self, seconds):
        """Solve; the least visits found, the bound, and whether the one is the other."""
        solver = cp_model.CpSolver()
        solver.parameters.num_workers = 1
        solver.parameters.random_seed = SEED
        with stopped_after(seconds, solver.stop_search):
            status = solver.solve(self.model)
        if status not in (cp_model.OPTIMAL, cp_model.FEASIBLE):
            return None, round(solver.best_objective_bound), False
        return (
            round(solver.objective_value),
            round(solver.best_objective_bound),
            status == cp_model.OPTIMAL,
        )


@contextmanager
def stopped_after(seconds, stop):
    """Stop something when this process has used so much CPU time; waiting for a core is free."""
    over = threading.Event()
    end = time.process_time() + seconds

    def watch():
        while not over.wait(0.1):
            if time.process_time() >= end:
                stop()

    watcher = threading.Thread(target=watch, daemon=True)
    watcher.start()
    try:
        yield
    finally:
        over.set()
        watcher.join()


class Row(NamedTuple):
    """Seconds, and whether there is a proof: ours, and by the solver's model."""

    ours: tuple[float, bool]
    theirs: dict[str, tuple[float, bool]]


def compare(instance, seconds):
    """Print a line for one instance."""
    result, ours = timed(
        lambda: fewest_changes(instance.operations, instance.reasons, instance.setup_of), RUNS
    )
    assert count_changes(result.order, instance.setup_of) == result.cost
    line = f"{instance.name:20} {result.cost:3} changes, {result.proof.value} {ours:7.4f} s"
    theirs = {}
    for name in MODELS if cp_model else ():
        model = VisitModel(instance, is_helped=name == "helped")
        (visits, bound, proven), spent = timed(lambda model=model: model.solve(seconds))
        found = "none" if visits is None else visits - 1
        line += f"; {name} {found}"
        line += " optimal" if proven else f", bound {max(bound - 1, 0)},"
        line += f" {spent:6.2f} s, {spent / ours:6.0f} times"
        theirs[name] = spent, proven
        assert visits is None or result.cost <= visits - 1, "a worse order than the solver's"
        assert not proven or result.cost == visits - 1, "the proofs disagree"
    print(line, flush=True)
    return Row((ours, result.proof is Proof.OPTIMAL), theirs)


def total(columns):
    """Sum up seconds and proofs; the median of the seconds too."""
    spent = [seconds for seconds, _ in columns]
    median = statistics.median(spent)
    proven = sum(proven for _, proven in columns)
    return median, f"proven {proven}/{len(spent)}, median {median:.4f} s, most {max(spent):.4f} s"


def main(seconds, pattern):
    if cp_model is None:
        print("OR-tools is not here: only our own times.")
    else:
        print(
            f"OR-tools {ortools.__version__}, CP-SAT, 1 worker, seed {SEED}, {seconds} CPU s each"
        )
    groups = defaultdict(list)
    for instance in [*invented(pattern), *(shipped() if pattern == "*" else ())]:
        groups[instance.group].append(compare(instance, seconds))
    for group, rows in groups.items():
        ours, line = total([row.ours for row in rows])
        print(f"{group}: {line}")
        for name in rows[0].theirs:
            theirs, line = total([row.theirs[name] for row in rows])
            print(f"    {name}: {line}; medians {theirs / ours:.0f} to 1")


if __name__ == "__main__":
    main(
        float(sys.argv[1]) if len(sys.argv) > 1 else 60.0,
        sys.argv[2] if len(sys.argv) > 2 else "*",
    )
