"""False alarms and near misses: what the check says of orders of which the right answer is known.

    python -m tests.tools.alarms

Sound orders of the entries of each shipped garment are drawn by lot, and the check has to be
silent about them. A near miss is a sound order in which two neighbours change places that a reason
puts in order; the check has to name the rule. Either-ors are settled by lot first where they leave
a choice, so that orders of every kind are drawn.
"""

# ruff: noqa: T201
import random
from collections.abc import Iterator, Sequence
from dataclasses import replace
from functools import cache
from pathlib import Path
from typing import NamedTuple

from seqplan.base.diagnostic import Diagnostic
from seqplan.base.ids import EntryId
from seqplan.base.strength import Strength
from seqplan.graph.reason import Reason
from seqplan.pipeline import Opened, open_garment
from seqplan.plan.whole_entries import between_entries
from seqplan.recipes.expand import construct
from seqplan.rules.book import RULE
from seqplan.rules.derive import SAID

from .random_orders import random_order

GARMENTS = sorted((Path(__file__).parents[2] / "garments").glob("*.yaml"))
ORDERS = 100
"""How many sound orders are drawn for a garment, over all of its variants."""
_DRAWS = 20
"""How often a draw that ends in a circle is made anew."""

Picks = tuple[tuple[str, str], ...]


class Miss(NamedTuple):
    """A near miss: the two entries that changed places, and what became of it.

    ``broken`` are the rules that the order breaks, ``strongest`` those of them that bind most, and
    ``findings`` is what the check says.
    """

    early: EntryId
    late: EntryId
    broken: frozenset[str]
    strongest: frozenset[str]
    findings: tuple[Diagnostic, ...]

    @property
    def is_named(self) -> bool:
        """Whether one finding is told, under a strongest rule, and names all that are broken.

        What the walk through the order finds besides is not counted.
        """
        slugs = {*RULE, SAID}
        order = [found for found in self.findings if found.slug in slugs]
        told = " ".join(note.message for found in order for note in found.notes)
        heads = {found.slug for found in order}
        named = heads | {slug for slug in slugs if f"`{slug}`" in told}
        return len(order) == 1 and heads <= self.strongest and named >= self.broken


def variants(garment: Path) -> list[Picks]:
    """Every option of every choice of a garment, once."""
    choices = _opened(garment).loaded.garment.choices
    return [((choice.id, option),) for choice in choices for option in choice.options] or [()]


def sound_orders(garment: Path, picks: Picks, count: int) -> Iterator[Opened]:
    """Draw sound orders of the entries, and give the garment as if it were written so."""
    whole = _opened(garment, picks)
    chance = random.Random(f"{garment.stem} {picks}")
    for _ in range(count):
        yield _draw(whole, chance)


def near_misses(garment: Path, picks: Picks) -> Iterator[Miss]:
    """Let two neighbours of a sound order change places, once for every pair that is ordered."""
    whole = _opened(garment, picks)
    chance = random.Random(f"{garment.stem} {picks} misses")
    reasons = _between_entries(whole)
    pairs = {tuple(arc) for reason in reasons for bundle in reason.alternatives for arc in bundle}
    for early, late in sorted(pairs):
        drawn = _try_draw(whole, chance, pair=(early, late))
        if drawn is None:
            continue
        swapped = [{early: late, late: early}.get(each, each) for each in drawn]
        wrong = written(whole, swapped)
        broken = _broken(whole, wrong)
        if broken:
            most = max(reason.strength.weight for reason in broken)
            yield Miss(
                early=late,
                late=early,
                broken=frozenset(reason.rule for reason in broken),
                strongest=frozenset(r.rule for r in broken if r.strength.weight == most),
                findings=wrong.findings,
            )


def written(whole: Opened, order: Sequence[str]) -> Opened:
    """The garment as it were if its entries were written in another order."""
    garment = whole.garment.garment
    entries = tuple(garment.entry[EntryId(id_)] for id_ in order)
    construction, laid_out = construct(replace(garment, entries=entries))
    return Opened(whole.loaded, construction, laid_out)


@cache
def _opened(garment: Path, picks: Picks = ()) -> Opened:
    return open_garment(garment, dict(picks))


def _draw(whole: Opened, chance: random.Random) -> Opened:
    order = _try_draw(whole, chance)
    assert order is not None, "no draw ended in a sound order"
    drawn = written(whole, order)
    assert not _broken(whole, drawn)
    return drawn


def _try_draw(
    whole: Opened, chance: random.Random, pair: tuple[str, str] | None = None
) -> list[EntryId] | None:
    entries, reasons = list(whole.garment.garment.entry), _between_entries(whole)
    draws = (random_order(entries, reasons, chance, pair) for _ in range(_DRAWS))
    return next((order for order in draws if order is not None), None)


def _broken(whole: Opened, other: Opened) -> list[Reason]:
    """The reasons of a garment that do not hold as it is written elsewhere."""
    position = {id_: place for place, id_ in enumerate(other.garment.ids)}
    return [reason for reason in _binding(whole) if not reason.is_held(position)]


def _binding(whole: Opened) -> list[Reason]:
    return [reason for reason in whole.reasons if reason.strength is not Strength.PREFER]


def _between_entries(whole: Opened) -> list[Reason]:
    reasons = between_entries(whole.garment, _binding(whole))
    assert reasons is not None, "an entry would have to be torn apart"
    return list(reasons)


def main() -> None:
    """Print both rates for each garment, and for all together."""
    print(f"{'garment':24}{'sound orders':>13}{'alarms':>8}{'near misses':>13}{'named':>7}")
    rows = []
    for path in GARMENTS:
        orders, misses = [], []
        picks = variants(path)
        for pick in picks:
            orders += sound_orders(path, pick, ORDERS // len(picks))
            misses += near_misses(path, pick)
        alarms = sum(bool(order.findings) for order in orders)
        named = sum(miss.is_named for miss in misses)
        rows.append((len(orders), alarms, len(misses), named))
        _print_row(path.stem, rows[-1])
        for miss in misses:
            if not miss.is_named:
                print(f"    not named: {miss.early} before {miss.late}, {sorted(miss.broken)}")
    _print_row("together", [sum(column) for column in zip(*rows, strict=True)])


def _print_row(name: str, row: Sequence[int]) -> None:
    orders, alarms, misses, named = row
    print(f"{name:24}{orders:>13}{alarms:>8}{misses:>13}{named:>7}", flush=True)


if __name__ == "__main__":
    main()
