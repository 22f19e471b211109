"""A handout as PDF: tagged, with real text and its fonts within; equal handouts give equal bytes.

The template is the only markup. What a handout says reaches it as JSON, its pictures as files in
a folder of their own: no text of a garment is ever read as markup.
"""

import json
import re
import warnings
from collections.abc import Callable, Mapping
from dataclasses import fields, is_dataclass
from importlib.resources import as_file, files
from pathlib import Path
from tempfile import TemporaryDirectory
from typing import Any, Final

import typst

from seqplan.base.visible import straightened
from seqplan.draw.figure import Figure
from seqplan.draw.svg import svg
from seqplan.draw.textwidth import only_known_letters, text_width
from seqplan.paper.blocks import Deed, Document, Image, Step, Table, Terms
from seqplan.render.handout import check_square
from seqplan.render.handout.flow import handfuls, lay, widths_by_head
from seqplan.render.handout.letters import printed
from seqplan.render.handout.paper import (
    LARGE,
    MARGIN_FOOT,
    MARGIN_SIDE,
    MARGIN_TOP,
    Paper,
    page_of_pages,
)
from seqplan.render.handout.unprinted import BoxedLettersWarning, UnprintableImagesError
from seqplan.words.say import say

_TEMPLATE: Final = "handout.typ"
_STANDARD: Final = "ua-1"
"""PDF/UA-1, ISO 14289-1: a PDF that can be read aloud."""
_PAPERS: Final = {Paper.A4: "a4", Paper.LETTER: "us-letter"}
_SUFFIXES: Final = {"image/png": ".png", "image/jpeg": ".jpg", "image/svg+xml": ".svg"}
_LONGEST_WORD: Final = 120.0
"""A word that is wider, in points at a size of 10, may be broken anywhere."""
_SIZE: Final = 10
_PART: Final = 12
_WORDS: Final = re.compile(r"\s+|\S+")
_TEXT: Final = {
    "sheet-check": "check",
    "sheet-note": "note",
    "sheet-new-words": "words",
    "sheet-col-done": "done",
    "paper-contents": "contents",
    "paper-check-square": "square",
}


def pdf(document: Document, paper: Paper) -> bytes:
    """Write a handout as PDF/UA-1.

    Where a text holds letters that no font at hand has, every letter that the shipped font lacks
    is shown as a box: the standard allows no letter without a shape.

    Warns
    -----
    BoxedLettersWarning
        There are such letters.

    Raises
    ------
    UnprintableImagesError
        A picture is damaged inside.
    """
    boxed: set[str] = set()

    def spelled(text: str) -> str:
        known = only_known_letters(text)
        boxed.update(old for old, new in zip(text, known, strict=True) if old != new)
        return known

    try:
        return _compile(document, paper, str)
    except typst.TypstError:
        try:
            written = _compile(document, paper, spelled)
        except typst.TypstError as error:
            damaged = tuple(each.data for each in _images(document) if not _is_printable(each))
            if damaged:
                raise UnprintableImagesError(damaged) from error
            raise
    warnings.warn(BoxedLettersWarning(frozenset(boxed)), stacklevel=2)
    return written


def _images(document: Document) -> tuple[Image, ...]:
    told = _Telling(document, str)
    told.of(document)
    return tuple(told.images)


def _is_printable(image: Image) -> bool:
    """Whether a picture alone can be put into a PDF."""
    page = f'#set document(title: "-")\n#image("one{_SUFFIXES[image.media]}", alt: "-")'
    with TemporaryDirectory(prefix="seqplan-") as folder:
        Path(folder, f"one{_SUFFIXES[image.media]}").write_bytes(image.data)
        Path(folder, "page.typ").write_text(page, "utf-8")
        try:
            typst.compile(str(Path(folder, "page.typ")), format="pdf", pdf_standards=[_STANDARD])
        except typst.TypstError:
            return False
    return True


def _compile(document: Document, paper: Paper, spelled: Callable[[str], str]) -> bytes:
    told = _Telling(document, spelled)
    data = {
        "document": told.of(document),
        "title": spelled(straightened(document.title)),
        "author": spelled(straightened(document.author)),
        "paper": _PAPERS[paper],
        "size": told.size,
        "margin": {"top": MARGIN_TOP, "side": MARGIN_SIDE, "foot": MARGIN_FOOT},
        "squares": [told.of(square) for square in check_square.squares()],
        "squares_width": check_square.width(),
        "foot": page_of_pages(),
        "say": {name: told.of(say(key)) for key, name in _TEXT.items()},
    }
    template = files(__package__).joinpath(_TEMPLATE).read_bytes()
    with (
        TemporaryDirectory(prefix="seqplan-") as folder,
        as_file(files("seqplan.render").joinpath("fonts")) as fonts,
    ):
        for name, content in {_TEMPLATE: template, **told.files}.items():
            Path(folder, name).write_bytes(content)
        return typst.compile(
            str(Path(folder, _TEMPLATE)),
            root=folder,
            format="pdf",
            font_paths=[str(fonts)],
            ignore_system_fonts=True,
            sys_inputs={"data": json.dumps(data, ensure_ascii=False)},
            pdf_standards=[_STANDARD],
        )


class _Telling:
    """Makes plain data of blocks, and keeps the pictures that they hold as files."""

    def __init__(self, document: Document, spelled: Callable[[str], str]) -> None:
        self._widths = widths_by_head(document)
        self.size = (LARGE if document.is_large else 1.0) * _SIZE
        self._spelled = spelled
        self.files: dict[str, bytes] = {}
        self.images: list[Image] = []
        self._own: Mapping[type, Callable[[Any], Any]] = {
            str: self._text,
            Figure: self._figure,
            Image: self._image,
            Deed: self._deed,
            Step: self._step,
            Table: self._table,
            Terms: self._terms,
        }

    def of(self, value: object) -> Any:
        """The data of a block, or of anything in one."""
        if own := self._own.get(type(value)):
            return own(value)
        if is_dataclass(value) or hasattr(value, "_fields"):
            return self._fields(value)
        return [self.of(each) for each in value] if isinstance(value, tuple) else value

    def _fields(self, value: Any, *without: str) -> dict[str, Any]:
        names = [each.name for each in fields(value)] if is_dataclass(value) else value._fields
        told = {name: self.of(getattr(value, name)) for name in names if name not in without}
        return {"block": type(value).__name__.lower(), **told}

    def _text(self, text: str) -> str:
        return breakable(self._spelled(printed(text)))

    def _deed(self, deed: Deed) -> dict[str, Any]:
        foot = say("sheet-foot", foot=deed.foot) if deed.foot else ""
        return {**self._fields(deed, "figures"), "foot": self.of(foot)}

    def _step(self, step: Step) -> dict[str, Any]:
        told = self._fields(step, "deeds", "terms")
        return {**told, "laid": self.of(lay(step))}

    def _terms(self, terms: Terms) -> dict[str, Any]:
        return {
            "block": "terms",
            "handfuls": [self.of(tuple(part)) for part in handfuls(terms.terms)],
        }

    def _table(self, table: Table) -> dict[str, Any]:
        return {**self._fields(table), "widths": self._widths[table.head]}

    def _figure(self, figure: Figure) -> dict[str, Any]:
        drawn = self._spelled(svg(figure)).encode("utf-8")
        return {
            "file": self._keep(drawn, ".svg"),
            "width": figure.width,
            "alt": self.of(figure.words),
        }

    def _image(self, image: Image) -> dict[str, Any]:
        self.images.append(image)
        return {
            "block": "image",
            "file": self._keep(image.data, _SUFFIXES[image.media]),
            "alt": self.of(image.alt),
            "caption": self.of(image.caption),
        }

    def _keep(self, data: bytes, suffix: str) -> str:
        name = f"picture-{len(self.files) + 1}{suffix}"
        self.files[name] = data
        return name


def breakable(text: str) -> str:
    """Let a word that may be wider than its column go on in the next line.

    >>> breakable("short words stay") == "short words stay"
    True
    """
    if all(text_width(word, _SIZE) <= _LONGEST_WORD for word in text.split()):
        return text
    return "".join(_broken(word) for word in _WORDS.findall(text))


def _broken(word: str) -> str:
    if text_width(word, _SIZE) <= _LONGEST_WORD:
        return word
    parts = (word[start : start + _PART] for start in range(0, len(word), _PART))
    return "\N{ZERO WIDTH SPACE}".join(parts)
