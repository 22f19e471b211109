"""Picture files by what is in them: which kind they are, and whether they can do any harm.

A PNG or JPEG is known by its first bytes, and refused where it would unpack to more than any page
needs, or is damaged (`dots`). An SVG is read as a whole and refused, never mended, where it holds
more than a drawing: scripts, things that move, other documents, anything that leads out of the
file, or parts that show one another without end (`repeats`).
"""

import re
from collections.abc import Mapping
from typing import Final
from xml.parsers import expat

from seqplan.load.dots import JPEG, PNG, is_whole_jpeg, is_whole_png, jpeg_size, png_size
from seqplan.load.repeats import Repeats

SIZE_LIMIT: Final = 5_000_000
"""Bytes of a picture: a page of A4 at 300 dots to the inch has less as a JPEG."""

PIXEL_LIMIT: Final = 50_000_000
"""Dots of a picture: A4 at 600 to the inch has 35 million."""

_MARK: Final = b"\xef\xbb\xbf"
_SVG: Final = "http://www.w3.org/2000/svg"
_HTML: Final = "http://www.w3.org/1999/xhtml"
_XML: Final = "http://www.w3.org/XML/1998/namespace"
_DEEPEST: Final = 200

_ACTIVE: Final = frozenset({"script", "handler", "listener"})
_MOVING: Final = frozenset(
    {"animate", "animateColor", "animateMotion", "animateTransform", "discard", "set"}
)
_OTHERS: Final = frozenset(
    {"audio", "canvas", "embed", "foreignObject", "iframe", "object", "video"}
)
_LEADING: Final = frozenset({"href", "src"})
_WITHIN: Final = re.compile(r"#[^\s]*|data:image/(png|jpe?g)[;,].*", re.DOTALL | re.IGNORECASE)
"""What a link may lead to: a part of the same file, or dots that are in it."""

_URL: Final = re.compile(r"url\s*\(\s*[\"']?\s*(?P<to>[^\"')]*)", re.IGNORECASE)
_FETCHING: Final = re.compile(
    r"@import|image-set\s*\(|\bsrc\s*\(|expression\s*\(|\\", re.IGNORECASE
)
"""What brings something in otherwise, and the sign that could hide it."""

_SIDES: Final = ("width", "height")
_NUMBER: Final = re.compile(r"\s*[+-]?(\d+\.?\d*|\.\d+)")


class ImageFaultError(ValueError):
    """A picture that is not used.

    Parameters
    ----------
    kind
        ``large``, ``kind``, ``broken``, ``dots``, ``xml``, ``entity``, ``script``, ``event``,
        ``moving``, ``document``, ``link``, ``base`` or ``repeats``.
    line, column
        Where in the file, from 1; 0 where it is about no place.
    found
        What stands there.
    """

    def __init__(self, kind: str, line: int = 0, column: int = 0, found: str = "") -> None:
        super().__init__(f"{kind} at {line}:{column}")
        self.kind = kind
        self.line = line
        self.column = column
        self.found = found


def media_of(data: bytes) -> str:
    """Tell what kind of picture some bytes are, whatever their file is called.

    Parameters
    ----------
    data
        The whole file, or one byte more than ``SIZE_LIMIT`` of it.

    Returns
    -------
    str
        ``image/png``, ``image/jpeg`` or ``image/svg+xml``.

    Raises
    ------
    ImageFaultError
        When it is something else, or is not safe to show.
    """
    if len(data) > SIZE_LIMIT:
        raise ImageFaultError("large")
    if data.startswith(PNG):
        _check_dots(png_size(data))
        _check_whole(is_whole_png(data))
        return "image/png"
    if data.startswith(JPEG):
        _check_dots(jpeg_size(data))
        _check_whole(is_whole_jpeg(data))
        return "image/jpeg"
    if not data.removeprefix(_MARK).lstrip().startswith(b"<"):
        raise ImageFaultError("kind")
    _Reader().read(data)
    return "image/svg+xml"


def _check_dots(size: tuple[int, int]) -> None:
    wide, high = size
    if not wide or not high:
        raise ImageFaultError("broken")
    if wide * high > PIXEL_LIMIT:
        raise ImageFaultError("dots", found=f"{wide} by {high}")


def _check_whole(is_whole: bool) -> None:
    if not is_whole:
        raise ImageFaultError("broken")


class _Reader:
    """Reads an SVG from one end to the other and stops at what is more than a drawing."""

    def __init__(self) -> None:
        self._depth = 0
        self._style: list[str] | None = None
        self._repeats = Repeats()
        self._parser = expat.ParserCreate(namespace_separator=" ")
        self._parser.EntityDeclHandler = self._entity
        self._parser.ProcessingInstructionHandler = self._instruction
        self._parser.StartElementHandler = self._start
        self._parser.EndElementHandler = self._end
        self._parser.CharacterDataHandler = self._text

    def read(self, data: bytes) -> None:
        try:
            self._parser.Parse(data, True)
        except expat.ExpatError as error:
            words = expat.ErrorString(error.code)
            raise ImageFaultError("xml", error.lineno, error.offset + 1, words) from error
        except (LookupError, ValueError) as error:
            if isinstance(error, ImageFaultError):
                raise
            raise ImageFaultError("xml", found=str(error)) from error
        if (endless := self._repeats.first_endless()) is not None:
            raise ImageFaultError("repeats", endless.line, endless.column, endless.to)

    def _fault(self, kind: str, found: str) -> ImageFaultError:
        parser = self._parser
        return ImageFaultError(
            kind, parser.CurrentLineNumber, parser.CurrentColumnNumber + 1, found
        )

    def _entity(self, name: str, *_: object) -> None:
        raise self._fault("entity", name)

    def _instruction(self, target: str, _data: str) -> None:
        if target.casefold() == "xml-stylesheet":
            raise self._fault("link", target)

    def _start(self, tag: str, attributes: Mapping[str, str]) -> None:
        space, _, name = tag.rpartition(" ")
        if not self._depth and (space, name) != (_SVG, "svg"):
            raise self._fault("kind", name)
        self._depth += 1
        if self._depth > _DEEPEST:
            raise self._fault("xml", name)
        kind = _forbidden(space, name)
        if kind:
            raise self._fault(kind, f"<{name}>")
        if self._depth == 1 and any(_is_nothing(attributes.get(k, "")) for k in _SIDES):
            raise self._fault("broken", name)
        self._repeats.start(attributes.get("id"))
        for key, value in attributes.items():
            self._attribute(name, key, value)
        if name == "style":
            self._style = []

    def _attribute(self, tag: str, key: str, value: str) -> None:
        space, _, name = key.rpartition(" ")
        if name.casefold().startswith("on"):
            raise self._fault("event", name)
        if (space, name) == (_XML, "base"):
            raise self._fault("base", value)
        if name in _LEADING and not _WITHIN.fullmatch(value.strip()):
            raise self._fault("link", value)
        if name in _LEADING and tag != "a":
            self._repeat(value)
        self._leads(value, is_style=name == "style")

    def _leads(self, text: str, *, is_style: bool) -> None:
        """Stop where a style, or an attribute that may be one, brings something in."""
        for match in _URL.finditer(text):
            if not _WITHIN.fullmatch(match["to"].strip()):
                raise self._fault("link", match["to"])
            self._repeat(match["to"])
        found = _FETCHING.search(text) if is_style else None
        if found is not None:
            raise self._fault("link", found[0])

    def _repeat(self, to: str) -> None:
        """Note that a part of the file is shown here once more."""
        if to.strip().startswith("#"):
            line, column = self._parser.CurrentLineNumber, self._parser.CurrentColumnNumber + 1
            self._repeats.shows(to.strip()[1:], line, column)

    def _text(self, text: str) -> None:
        if self._style is not None:
            self._style.append(text)

    def _end(self, _tag: str) -> None:
        self._depth -= 1
        self._repeats.end()
        if self._style is not None:
            written, self._style = "".join(self._style), None
            self._leads(written, is_style=True)


def _is_nothing(written: str) -> bool:
    """Whether a width or height is nothing or less."""
    found = _NUMBER.match(written)
    return found is not None and float(found[0]) <= 0


def _forbidden(space: str, name: str) -> str:
    """Why an element is no part of a drawing; nothing where it is one."""
    if name in _ACTIVE:
        return "script"
    if name in _MOVING:
        return "moving"
    return "document" if name in _OTHERS or space == _HTML else ""
