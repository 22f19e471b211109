"""What stands where in a picture of the dependencies, measured on the picture itself."""

import re
import xml.etree.ElementTree as ET
from collections.abc import Iterator
from dataclasses import dataclass
from itertools import pairwise

from render.charts import SVG, Picture

from seqplan.draw.textwidth import text_width

_NUMBER = re.compile(r"-?\d+(?:\.\d+)?")
_CAPITALS = 0.72
_DESCENT = 0.2


@dataclass(frozen=True)
class Area:
    """A rectangle; a point or a straight line is one too."""

    left: float
    top: float
    right: float
    bottom: float

    @classmethod
    def around(cls, *points: tuple[float, float]) -> "Area":
        xs, ys = zip(*points, strict=True)
        return cls(min(xs), min(ys), max(xs), max(ys))

    def meets(self, other: "Area", by: float = 0.0) -> bool:
        """Whether they overlap by more than so many points."""
        return (
            self.left + by < other.right
            and other.left + by < self.right
            and self.top + by < other.bottom
            and other.top + by < self.bottom
        )

    def holds(self, other: "Area", slack: float = 0.6) -> bool:
        return (
            self.left <= other.left + slack
            and self.top <= other.top + slack
            and other.right <= self.right + slack
            and other.bottom <= self.bottom + slack
        )


@dataclass(frozen=True)
class Frame:
    """A lane as it is drawn, with its heading and the boxes in it."""

    words: str
    area: Area
    heading: tuple[Area, ...]


class Drawing:
    """Lanes, boxes, lines and numbers of a picture."""

    def __init__(self, picture: Picture) -> None:
        self.picture = picture
        groups = list(picture.root.iter(f"{SVG}g"))
        kinds = {kind: [g for g in groups if g.get("class") == kind] for kind in _KINDS}
        self.lanes = [_frame(g) for g in kinds["cluster"] if g.find(f"{SVG}path") is not None]
        self.boxes = [Area.around(*_corners(g)) for g in kinds["node"]]
        self.lines = [list(_pieces(g)) for g in kinds["edge"]]
        self.page = Area.around(*_corners(groups[0], own=True))
        self.numbers = [text_area(t) for g in kinds["edge"] for t in g.iter(f"{SVG}text")]

    def words_in_lanes(self) -> Iterator[Area]:
        for lane in self.lanes:
            yield from lane.heading


_KINDS = ("cluster", "node", "edge")


def _frame(group: ET.Element) -> Frame:
    path = group.find(f"{SVG}path")
    assert path is not None
    texts = list(group.iter(f"{SVG}text"))
    words = " ".join("".join(text.itertext()).strip() for text in texts)
    return Frame(
        words, Area.around(*_points(path.get("d", ""))), tuple(text_area(text) for text in texts)
    )


def _points(text: str) -> list[tuple[float, float]]:
    numbers = [float(number) for number in _NUMBER.findall(text)]
    return list(zip(numbers[::2], numbers[1::2], strict=True))


def _corners(group: ET.Element, *, own: bool = False) -> list[tuple[float, float]]:
    """The corners of what is drawn in a group, or of only what is no group in it."""
    polygons = group.findall(f"{SVG}polygon") if own else group.iter(f"{SVG}polygon")
    return [point for polygon in polygons for point in _points(polygon.get("points", ""))]


def _pieces(group: ET.Element) -> Iterator[Area]:
    """A line in short straight pieces, its arrow heads included."""
    for path in group.iter(f"{SVG}path"):
        points = _points(path.get("d", ""))
        for start in range(0, len(points) - 3, 3):
            curve = points[start : start + 4]
            for one, other in pairwise(_bezier(curve, step / 4) for step in range(5)):
                yield Area.around(one, other)
    for polygon in group.iter(f"{SVG}polygon"):
        yield Area.around(*_points(polygon.get("points", "")))


def _bezier(curve: list[tuple[float, float]], t: float) -> tuple[float, float]:
    shares = ((1 - t) ** 3, 3 * t * (1 - t) ** 2, 3 * t**2 * (1 - t), t**3)
    x, y = (sum(s * p[axis] for s, p in zip(shares, curve, strict=True)) for axis in (0, 1))
    return x, y


def text_area(text: ET.Element) -> Area:
    """The room that a line of text takes."""
    words = "".join(text.itertext()).strip()
    size = float(text.get("font-size", "0"))
    width = text_width(words, size, bold=text.get("font-weight") == "bold")
    left = float(text.get("x", "0"))
    left -= {"middle": width / 2, "end": width}.get(text.get("text-anchor", ""), 0)
    base = float(text.get("y", "0"))
    return Area(left, base - _CAPITALS * size, left + width, base + _DESCENT * size)
