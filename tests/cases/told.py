"""Cases from sewing tables: garments, what the check must say of them, and their twins.

A file holds a list of cases. The first has the garment; a twin changes a text that stands there
exactly once, leaves operations out, or names all operations in another order.
"""

from pathlib import Path

import yaml

from seqplan.pipeline import open_garment
from seqplan.rehearse.walk import rehearse

FOLDER = Path(__file__).parent


def files():
    return sorted(FOLDER.rglob("*.yaml"))


def cases(path):
    return yaml.safe_load(path.read_text(encoding="utf-8"))


def text_of(case):
    """The garment file of a case."""
    text = case["garment"]
    for old, new in case.get("change", {}).items():
        assert text.count(old) == 1, f"{old!r} stands there {text.count(old)} times"
        text = text.replace(old, new)
    head, _, tail = text.partition("\noperations:\n")
    lines = {line.split(":")[0].strip(): line for line in tail.splitlines() if line.strip()}
    for name in case.get("without", []):
        del lines[name]
    if "order" in case:
        assert sorted(case["order"]) == sorted(lines)
        lines = {name: lines[name] for name in case["order"]}
    return "\n".join((head, "operations:", *lines.values(), ""))


def opened(case, folder):
    path = Path(folder) / "case.yaml"
    path.write_text(text_of(case), encoding="utf-8")
    return open_garment(path, case.get("picks"))


def told(finding):
    """A finding as a case states it: how bad, its name, where, and what to do."""
    return {finding.severity.value: finding.slug, "at": entry_at(finding), "fix": finding.fix}


def entry_at(finding):
    """The operation, piece or notion that a finding is about, by its place in the file."""
    return str(finding.path[1]) if len(finding.path) > 1 else ""


def walked(c):
    """Where the rehearsal of the written order gets stuck, why, whom it blames, what is undone."""
    found = rehearse(c, c.ids)
    answer = {}
    if found.troubles:
        first = found.troubles[0]
        answer = {"stuck": first.op, "why": first.why}
        answer |= {"blame": first.blame} if first.blame else {}
        answer |= {"missing": first.missing} if first.missing else {}
    if found.debts:
        answer["undone"] = [debt.why for debt in found.debts]
    return answer
