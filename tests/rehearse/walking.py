"""Cases of rehearsals, and the orders that they ask for."""

from pathlib import Path

import yaml
from rules.reasoning import construction

CASES = Path(__file__).parent / "cases"


def cases():
    """Every case with the name of its file."""
    for path in sorted(CASES.glob("*.yaml")):
        for case in yaml.safe_load(path.read_text(encoding="utf-8")):
            yield path.stem, case


def order_of(c, names):
    """Operations by the names of entries or operations; what is not named stays behind its own."""
    if names is None:
        return c.ids
    single = {name for name in names if "/" in name}
    with_parts = {name.split("/")[0] for name in single}
    found = []
    for name in names:
        whole = name in c.of_entry and name not in with_parts
        ops = [op.id for op in c.of_entry[name]] if whole else [name]
        if name in c.of_entry and name in {n.split("/")[0] for n in single}:
            named = {n for n in single if n.split("/")[0] == name}
            ops = [op.id for op in c.of_entry[name] if op.id not in named]
            ops = [name] if name in ops else ops
        found += ops
    before = [op.id for op in c.operations if op.id not in found]
    return (*before, *found)


def walked(case):
    c = construction(case["garment"])
    return c, order_of(c, case.get("order"))
