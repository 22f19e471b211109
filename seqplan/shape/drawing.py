"""A path in an SVG file, found by its id, in millimetres.

Nothing but the path is looked at. Entities are refused, so that a file can neither grow when it is
read nor bring in another one.
"""

import re
from typing import Final
from xml.parsers import expat

from seqplan.shape.curve import Path
from seqplan.shape.pathdata import PathFaultError, read_path

SIZE_LIMIT: Final = 2_000_000
"""Bytes of a drawing that is read."""

_SVG = "http://www.w3.org/2000/svg"
_MM: Final = {
    "": 25.4 / 96,
    "px": 25.4 / 96,
    "pt": 25.4 / 72,
    "pc": 25.4 / 6,
    "mm": 1.0,
    "cm": 10.0,
    "in": 25.4,
}
"""Millimetres of a unit; CSS has 96 px to the inch."""

_LENGTH = re.compile(r"\s*(\d{1,6}(?:\.\d*)?|\.\d+)\s*(px|mm|cm|in|pt|pc)?\s*")
_SHIFT = re.compile(r"\s*(?:translate\s*\([^()]*\)[\s,]*)*")
_DEEPEST: Final = 200


class DrawingFaultError(ValueError):
    """A drawing that cannot be used.

    Parameters
    ----------
    kind
        ``large``, ``xml``, ``entity``, ``not-svg``, ``missing``, ``not-path`` or ``transform``; for
        path data ``data-`` and the kind of its fault.
    line, column
        Where in the drawing, from 1; 0 where it is about no place.
    found
        What stands there.
    known
        The ids of the paths that there are, where one is missing.
    """

    def __init__(
        self,
        kind: str,
        line: int = 0,
        column: int = 0,
        found: str = "",
        known: tuple[str, ...] = (),
    ) -> None:
        super().__init__(f"{kind} at {line}:{column}")
        self.kind = kind
        self.line = line
        self.column = column
        self.found = found
        self.known = known


def read_drawing(data: bytes, id_: str) -> tuple[Path, bool]:
    """Read a path of a drawing.

    Parameters
    ----------
    data
        The bytes of the SVG file.
    id_
        The id of the path.

    Returns
    -------
    Path, bool
        Its curves in millimetres, and whether it is closed.

    Raises
    ------
    DrawingFaultError
        When there is no such path, or it cannot be read.
    """
    if len(data) > SIZE_LIMIT:
        raise DrawingFaultError("large")
    return _Finder(id_).find(data)


class _Finder:
    def __init__(self, id_: str) -> None:
        self._id = id_
        self._scale = 1.0
        self._moved: list[tuple[int, int, str] | None] = []
        self._ids: list[str] = []
        self._path: tuple[Path, bool] | None = None
        self._parser = expat.ParserCreate(namespace_separator=" ")
        self._parser.EntityDeclHandler = self._entity
        self._parser.StartElementHandler = self._start
        self._parser.EndElementHandler = self._end

    def find(self, data: bytes) -> tuple[Path, bool]:
        try:
            self._parser.Parse(data, True)
        except expat.ExpatError as error:
            words = expat.ErrorString(error.code)
            raise DrawingFaultError("xml", error.lineno, error.offset + 1, words) from error
        if self._path is None:
            raise DrawingFaultError("missing", known=tuple(self._ids))
        return self._path

    def _fault(self, kind: str, found: str = "") -> DrawingFaultError:
        parser = self._parser
        return DrawingFaultError(
            kind, parser.CurrentLineNumber, parser.CurrentColumnNumber + 1, found
        )

    def _entity(self, name: str, *_: object) -> None:
        raise self._fault("entity", name)

    def _start(self, tag: str, attributes: dict[str, str]) -> None:
        if not self._moved:
            if tag != f"{_SVG} svg":
                raise self._fault("not-svg", tag.split(" ")[-1])
            self._scale = _scale(attributes)
        if len(self._moved) >= _DEEPEST:
            raise self._fault("xml", tag.split(" ")[-1])
        transform = attributes.get("transform", "")
        is_moved = not _SHIFT.fullmatch(transform)
        place = (self._parser.CurrentLineNumber, self._parser.CurrentColumnNumber + 1, transform)
        self._moved.append(place if is_moved else None)
        is_path = tag == f"{_SVG} path"
        if is_path and "id" in attributes:
            self._ids.append(attributes["id"])
        if attributes.get("id") == self._id and self._path is None:
            if not is_path:
                raise self._fault("not-path", tag.split(" ")[-1])
            self._path = self._read(attributes.get("d", ""))

    def _read(self, data: str) -> tuple[Path, bool]:
        for place in self._moved:
            if place is not None:
                raise DrawingFaultError("transform", *place)
        try:
            path, is_closed = read_path(data)
        except PathFaultError as error:
            raise self._fault(f"data-{error.kind}", f"{error.place}: {error.found}") from error
        scale = self._scale
        return tuple(tuple(point * scale for point in curve) for curve in path), is_closed

    def _end(self, _tag: str) -> None:
        self._moved.pop()


def _scale(attributes: dict[str, str]) -> float:
    """Millimetres of a unit of the drawing: from its width and its view box, else as CSS has it."""
    width = _LENGTH.fullmatch(attributes.get("width", ""))
    box = re.split(r"[\s,]+", attributes.get("viewBox", "").strip())
    try:
        wide = float(box[2]) if len(box) == 4 else 0.0
    except ValueError:
        wide = 0.0
    if width is None or not 0 < wide < 1e6:
        return _MM[""]
    return float(width[1]) * _MM[width[2] or ""] / wide
