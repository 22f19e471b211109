"""Print the CPU time to proof of the fewest changes of set-up, beside a general solver's.

Run as ``python -m tests.benchmarks.bench_against_solver [seconds [pattern]]``: the solver gets so
many seconds for each instance (60 without a word); the pattern picks instances by name.

The solver is CP-SAT of OR-tools, if it can be imported; without it only our own times are printed.
It gets one worker, so that its CPU time is its running time, a fixed seed, our quick order as a
hint, our bound for every set-up, and a model that suits it well: visits in a row, each to one
set-up, every operation in one of them. Both get the same reasons, either-ors too. CPU seconds of
the process are taken of both; the solver's do not include building the model, and ours are
the median of five runs.
"""

# ruff: noqa: T201
import statistics
import sys
import time
from collections import defaultdict

from seqplan.graph.choices import Problem
from seqplan.graph.directions import settle_all
from seqplan.order.fewest import count_changes, fewest_changes
from seqplan.order.result import Proof
from seqplan.order.visits import VisitSearch, chain_levels
from tests.benchmarks.instances import DATA, invented, shipped

try:
    import ortools
    from ortools.sat.python import cp_model
except ImportError:
    cp_model = None

SEED = 1
RUNS = 5


def clocked(work, runs=1):
    """Run some work; its outcome, and the median of its CPU seconds."""
    spent = []
    for _ in range(runs):
        begun = time.process_time()
        outcome = work()
        spent.append(time.process_time() - begun)
    return outcome, statistics.median(spent)


class VisitModel:
    """Visits in a row for CP-SAT, as many as our quick order makes."""

    def __init__(self, instance):
        self.problem = Problem.of(instance.operations, instance.reasons)
        settled = settle_all(self.problem.start, range(len(instance.operations)))
        numbers = {}
        self.setups = [
            numbers.setdefault(instance.setup_of[each], len(numbers))
            for each in instance.operations
        ]
        changes, order = VisitSearch(self.setups).quick(settled.closure)
        self.most = changes + 1
        self.model = cp_model.CpModel()
        self.at = self.visits()
        self.visit = self.operations()
        self.place = [self.number(len(self.setups)) for _ in self.setups]
        for pair in self.problem.fixed:
            self.hold(pair)
        for choice in self.problem.choices:
            self.either_or(choice)
        v, last = -1, None
        for node in order:
            v += self.setups[node] != last
            last = self.setups[node]
            self.model.add_hint(self.visit[node], v)

    def flag(self):
        return self.model.new_bool_var("")

    def number(self, end):
        return self.model.new_int_var(0, end - 1, "")

    def visits(self):
        """Give every visit one set-up, unlike that of the one before; bound and minimise them."""
        kinds = range(max(self.setups) + 1)
        at = [[self.flag() for _ in kinds] for _ in range(self.most)]
        used = [self.flag() for _ in at]
        for v, row in enumerate(at):
            self.model.add(sum(row) == used[v])
            if v:
                self.model.add_implication(used[v], used[v - 1])
                for one, other in zip(at[v - 1], row, strict=True):
                    self.model.add_at_most_one(one, other)
        levels = chain_levels(self.problem.start.closure, self.setups)
        for kind in kinds:
            self.model.add(sum(row[kind] for row in at) >= len(levels[kind]) - 1)
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

    def solve(self, seconds):
        """Solve; the least visits found, the bound, and whether the one is the other."""
        solver = cp_model.CpSolver()
        solver.parameters.num_workers = 1
        solver.parameters.random_seed = SEED
        solver.parameters.max_time_in_seconds = seconds
        status = solver.solve(self.model)
        if status not in (cp_model.OPTIMAL, cp_model.FEASIBLE):
            return None, round(solver.best_objective_bound), False
        return (
            round(solver.objective_value),
            round(solver.best_objective_bound),
            status == cp_model.OPTIMAL,
        )


def compare(instance, seconds):
    """Print a line for one instance; our and the solver's time, and who proved."""
    result, ours = clocked(
        lambda: fewest_changes(instance.operations, instance.reasons, instance.setup_of), RUNS
    )
    assert count_changes(result.order, instance.setup_of) == result.cost
    line = f"{instance.name:22} {result.cost:4} changes, {result.proof.value} in {ours:8.4f} s"
    if cp_model is None:
        print(line, flush=True)
        return ours, result.proof is Proof.OPTIMAL, None, None
    model = VisitModel(instance)
    (visits, bound, proven), theirs = clocked(lambda: model.solve(seconds))
    found = "nothing" if visits is None else visits - 1
    print(
        f"{line}; solver {found} changes, bound {bound - 1}, "
        f"{'optimal' if proven else 'not proven'} in {theirs:7.2f} s, {theirs / ours:8.0f} times",
        flush=True,
    )
    if visits is not None:
        assert result.cost <= visits - 1, "a worse order than the solver's"
    if proven:
        assert result.cost == visits - 1, "the proofs disagree"
    return ours, result.proof is Proof.OPTIMAL, theirs, proven


def main(seconds, pattern):
    if cp_model is None:
        print("OR-tools is not here: only our own times.")
    else:
        print(f"OR-tools {ortools.__version__}, CP-SAT, 1 worker, seed {SEED}, {seconds} s each")
    if not DATA.is_dir():
        print(f"No instances in {DATA}: only the shipped garments.")
    groups = defaultdict(list)
    instances = [*invented(pattern)]
    if pattern == "*":
        instances += shipped()
    for instance in instances:
        groups[instance.group].append(compare(instance, seconds))
    for group, rows in groups.items():
        ours = [row[0] for row in rows]
        line = (
            f"{group}: proven {sum(row[1] for row in rows)} of {len(rows)}, "
            f"median {statistics.median(ours):.4f} s, most {max(ours):.4f} s"
        )
        if cp_model is not None:
            theirs = [row[2] for row in rows]
            ratio = statistics.median(theirs) / statistics.median(ours)
            line += (
                f"; solver: proven {sum(row[3] for row in rows)}, median "
                f"{statistics.median(theirs):.2f} s, most {max(theirs):.1f} s; "
                f"medians {ratio:.0f} to 1"
            )
        print(line)


if __name__ == "__main__":
    main(
        float(sys.argv[1]) if len(sys.argv) > 1 else 60.0,
        sys.argv[2] if len(sys.argv) > 2 else "*",
    )
