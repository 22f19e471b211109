"""Construction orders in print, and orders that nobody should follow, as data.

Each garment under ``rules/published/`` is a printed order: its opening comment is YAML, too, and
says what it was taken from, what was added, and where it departs from good practice.
``rules/rejected.yaml`` changes these garments, or the ones that are shipped, and says what has to
be found then.
"""

from collections.abc import Iterator, Mapping
from functools import cache
from pathlib import Path
from typing import Any, NamedTuple

import yaml

from seqplan.base.diagnostic import Diagnostic, Severity
from seqplan.pipeline import open_garment

HERE = Path(__file__).parents[1] / "rules"
GARMENTS = HERE.parents[1] / "garments"


class Departure(NamedTuple):
    """Good practice that a printed order goes against, and why it does."""

    rule: str
    early: str
    late: str
    why: str


class Printed(NamedTuple):
    """A printed order as a garment."""

    path: Path
    order: str
    garment: str
    source: str
    publisher: str
    year: str
    extent: str
    added: str
    departs: tuple[Departure, ...]


class Rejected(NamedTuple):
    """A change to a garment, and what has to be found then."""

    case: str
    name: str
    garment: str
    verdict: str
    by: str
    why: str
    changes: Mapping[str, Any]

    @property
    def is_accepted(self) -> bool:
        """Whether it is a second order that works, and no slip."""
        return self.verdict == "accepted"

    @property
    def path(self) -> Path:
        """The garment that is changed."""
        printed = HERE / "published" / f"{self.garment}.yaml"
        return printed if printed.exists() else GARMENTS / f"{self.garment}.yaml"


@cache
def printed_orders() -> tuple[Printed, ...]:
    """All printed orders, by number."""
    paths = sorted((HERE / "published").glob("*.yaml"))
    return tuple(_printed(path) for path in paths)


@cache
def rejected_orders() -> tuple[Rejected, ...]:
    """All changed orders, as listed."""
    text = (HERE / "rejected.yaml").read_text(encoding="utf-8")
    return tuple(_rejected(item) for item in yaml.load(text, Loader=yaml.BaseLoader))


def findings(path: Path) -> tuple[Diagnostic, ...]:
    """What the check finds, but for hints."""
    return tuple(f for f in open_garment(path).findings if f.severity is not Severity.HINT)


def changed(case: Rejected) -> str:
    """The text of a garment with its operations moved, altered or added."""
    garment = yaml.load(case.path.read_text(encoding="utf-8"), Loader=yaml.BaseLoader)
    operations = garment["operations"]
    for name, keys in case.changes.get("alter", {}).items():
        operations[name] = {**operations[name], **keys}
    operations.update(case.changes.get("add", {}))
    for move in case.changes.get("move", ()):
        operations = _moved(operations, move)
    return yaml.safe_dump({**garment, "operations": operations}, sort_keys=False)


def _moved(operations: dict[str, Any], move: Mapping[str, str]) -> dict[str, Any]:
    """One entry moved to stand right before or right after another."""
    names = [name for name in operations if name != move["entry"]]
    is_after = "after" in move
    place = names.index(move["after"] if is_after else move["before"]) + is_after
    return {name: operations[name] for name in (*names[:place], move["entry"], *names[place:])}


def _printed(path: Path) -> Printed:
    text = path.read_text(encoding="utf-8")
    said = yaml.load("\n".join(_comment(text)), Loader=yaml.BaseLoader)
    departs = tuple(Departure(**item) for item in said.pop("departs", ()))
    garment = yaml.load(text, Loader=yaml.BaseLoader)["garment"]
    return Printed(path=path, garment=garment, departs=departs, **said)


def _comment(text: str) -> Iterator[str]:
    for line in text.splitlines():
        if not line.startswith("#"):
            return
        yield line.removeprefix("# ")


def _rejected(item: dict[str, Any]) -> Rejected:
    told = {key: item.pop(key, "") for key in ("case", "name", "garment", "verdict", "by", "why")}
    return Rejected(**told, changes=item)
