"""The shipped garments, and what is expected of each, from the data files beside this one."""

import re
import shutil
from functools import cache
from pathlib import Path

import yaml

from seqplan.pipeline import open_garment

HERE = Path(__file__).parent
FOLDER = HERE.parents[1] / "garments"
GARMENTS = sorted(FOLDER.glob("*.yaml"))


@cache
def opened(garment, picks=()):
    """Open a shipped garment with some of its choices made."""
    return open_garment(FOLDER / f"{garment}.yaml", dict(picks))


def expected(folder):
    """Read every data file of a folder, by its name."""
    paths = sorted((HERE / folder).glob("*.yaml"))
    return {path.stem: yaml.safe_load(path.read_text(encoding="utf-8")) for path in paths}


def put(folder, text):
    """Write the text of a changed garment beside copies of the pictures that garments name."""
    for picture in FOLDER.glob("*.svg"):
        shutil.copy(picture, folder)
    path = folder / "changed.yaml"
    path.write_text(text, encoding="utf-8")
    return path


def changed(text, changes):
    """Replace each text by another; each must be there exactly once."""
    for old, new in changes.items():
        assert text.count(old) == 1, f"expected once, found {text.count(old)} times: {old!r}"
        text = text.replace(old, new)
    return text


def moved(text, move):
    """Move the line of an entry above or below that of another: ``hem above zip``."""
    name, where, other = move.split()
    lines = text.splitlines(keepends=True)
    line = lines.pop(line_of(text, name) - 1)
    place = line_of("".join(lines), other)
    lines.insert(place - 1 if where == "above" else place, line)
    return "".join(lines)


def line_of(text, name):
    """The number of the line on which a name stands: ``hem``, or ``pieces front``."""
    section, _, key = ("operations " + name).rpartition(" ")
    section = section.split()[-1]
    inside = ""
    found = []
    for number, line in enumerate(text.splitlines(), 1):
        if heading := re.match(r"(\w+):", line):
            inside = heading[1]
        if inside == section and line.startswith(f"  {key}:"):
            found.append(number)
    assert len(found) == 1, f"expected once under {section}, found {len(found)} times: {key}"
    return found[0]
