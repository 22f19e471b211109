"""What stands where in a picture, read off the SVG itself."""

import re
import xml.etree.ElementTree as ET
from functools import cache
from itertools import combinations, pairwise
from pathlib import Path
from typing import NamedTuple

from rules.reasoning import construction
from tell.sampler import OTHER_WAYS, SHIPPED, built

from seqplan.draw.pictures import draw_order
from seqplan.draw.svg import svg
from seqplan.draw.textwidth import text_width

SVG = "{http://www.w3.org/2000/svg}"
VERBS = sorted((Path(__file__).parents[1] / "tell" / "verbs").glob("*.yaml"))
NAMES = (*SHIPPED, *OTHER_WAYS, *(path.stem for path in VERBS))
_NUMBER = re.compile(r"-?\d+(?:\.\d+)?")


class Box(NamedTuple):
    left: float
    top: float
    right: float
    bottom: float

    def meets(self, other, by=0.3):
        return (
            self.left + by < other.right
            and other.left + by < self.right
            and self.top + by < other.bottom
            and other.top + by < self.bottom
        )

    def holds(self, other):
        return (
            self.left <= other.left
            and self.top <= other.top
            and other.right <= self.right
            and other.bottom <= self.bottom
        )


class Seen:
    """A picture as it is written."""

    def __init__(self, text):
        self.text = text
        self.root = ET.fromstring(text)
        self.canvas = Box(*map(float, self.root.get("viewBox").split()))

    def words(self, role=None):
        return [
            ("".join(t.itertext()), text_box(t))
            for t in self.root.iter(f"{SVG}text")
            if role is None or t.get("class") == role
        ]

    def lines(self, role):
        return [
            points(path.get("d"))
            for path in self.root.iter(f"{SVG}path")
            if role in (path.get("class") or "").split()
        ]

    def groups(self, role):
        return [g for g in self.root.iter(f"{SVG}g") if g.get("class") == role]

    def overlapping(self):
        boxes = self.words()
        return [(a[0], b[0]) for a, b in combinations(boxes, 2) if a[1].meets(b[1])]


def points(way):
    numbers = [float(n) for n in _NUMBER.findall(way)]
    return list(zip(numbers[::2], numbers[1::2], strict=True))


def text_box(text):
    words = "".join(text.itertext())
    size = float(text.get("font-size"))
    width = text_width(words, size, bold=text.get("font-weight") == "bold")
    left = float(text.get("x"))
    left -= {"middle": width / 2, "end": width}.get(text.get("text-anchor"), 0)
    base = float(text.get("y"))
    return Box(left, base - 0.72 * size, left + width, base + 0.2 * size)


def straight_crossings(lines):
    """Pairs of straight lines that cross, by the sides on which their ends lie."""
    ways = [pair for line in lines for pair in pairwise(line)]
    return [(a, b) for a, b in combinations(ways, 2) if _cross(a, b)]


def _cross(one, other):
    def hand(a, b, c):
        return (b[0] - a[0]) * (c[1] - a[1]) - (b[1] - a[1]) * (c[0] - a[0])

    return (
        hand(*one, other[0]) * hand(*one, other[1]) < 0
        and hand(*other, one[0]) * hand(*other, one[1]) < 0
    )


@cache
def garment(name):
    paths = {path.stem: path for path in VERBS}
    return construction(paths[name].read_text("utf-8")) if name in paths else built(name)


@cache
def figures(name):
    c = garment(name)
    return draw_order(c, c.ids)


@cache
def seen(name):
    """Every picture of a garment: (operation, kind, picture)."""
    return tuple(
        (garment(name).op[id_], kind.value, Seen(svg(figure)))
        for id_, pictures in figures(name).items()
        for kind, found in pictures.items()
        for figure in found
    )
