"""A handout as one HTML page: no script, nothing from elsewhere, ready to print."""

import sys
from base64 import b64encode
from collections import Counter
from collections.abc import Mapping
from contextlib import suppress
from functools import cache
from importlib.resources import files
from pathlib import Path
from typing import Final

from jinja2 import DictLoader, Environment, FileSystemBytecodeCache, StrictUndefined
from jinja2.bccache import Bucket
from markupsafe import Markup

from seqplan.base.visible import straightened
from seqplan.draw.figure import Figure
from seqplan.draw.svg import inline_svg
from seqplan.paper.blocks import Blanks, Block, Document, Facts, Image, Table
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
from seqplan.version import VERSION
from seqplan.words.say import say

_PAGE: Final = "handout.html"
_STYLE: Final = "handout.css"
_FONTS: Final = {"400": "Arimo-Regular.ttf", "700": "Arimo-Bold.ttf"}


def html(document: Document, paper: Paper) -> str:
    """Write a handout as a page that needs no network and no other file.

    Parameters
    ----------
    document
        What it says. Every text of it is escaped; equal documents give equal bytes.
    paper
        What it is printed on, unless the reader chooses otherwise.
    """
    page = _environment().get_template(_PAGE)
    return page.render(
        document=document,
        paper=paper.value,
        facts=[block for block in document.cover if isinstance(block, Facts)],
        to_fill=[block for block in document.cover if isinstance(block, Blanks)],
        cover=[block for block in document.cover if not isinstance(block, Facts | Blanks)],
        widths=widths_by_head(document),
        page_of_pages=page_of_pages(),
        margins=f"{MARGIN_TOP}mm {MARGIN_SIDE}mm {MARGIN_FOOT}mm",
        ids=_Ids(),
    )


class _Ids:
    """Names for elements, none of them twice."""

    def __init__(self) -> None:
        self._count: Counter[str] = Counter()

    def __call__(self, kind: str) -> str:
        self._count[kind] += 1
        return f"{kind}-{self._count[kind]}"


def _kind(block: Block) -> str:
    return type(block).__name__.lower()


def _drawn(figure: Figure, *, is_large: bool) -> Markup:
    return Markup(inline_svg(figure, LARGE if is_large else 1.0))


def _shares(table: Table, by_head: Mapping[tuple[str, ...], list[float]]) -> list[str]:
    """The widths of the columns of a table in per cent."""
    widths = by_head[table.head]
    return [f"{100 * width / sum(widths):.1f}%" for width in widths]


def _address(image: Image) -> str:
    return data_address(image.data, image.media)


def data_address(data: bytes, media: str) -> str:
    """An address that holds the file itself."""
    return f"data:{media};base64,{b64encode(data).decode('ascii')}"


def css_string(text: str) -> Markup:
    r"""A CSS string that is safe inside a ``style`` element whatever the text holds.

    >>> str(css_string("A</style>"))
    '"A\\3c \\2f style\\3e "'
    """
    inner = "".join(
        letter if letter.isascii() and letter.isalnum() else f"\\{ord(letter):x} "
        for letter in straightened(text)
    )
    return Markup(f'"{inner}"')


def css_counters(pieces: tuple[str, ...]) -> Markup:
    """A sentence with counters in it, for ``content``; every second piece names a counter."""
    told = (
        f"counter({piece})" if place % 2 else str(css_string(piece))
        for place, piece in enumerate(pieces)
    )
    return Markup(" ".join(told))


def _finalized(value: object) -> object:
    if isinstance(value, str) and not isinstance(value, Markup):
        return printed(value)
    return value


@cache
def _fonts() -> Markup:
    """The shipped font, within the style."""
    folder = files("seqplan.render").joinpath("fonts")
    faces = (
        "@font-face { font-family: Arimo; font-weight: "
        f'{weight}; src: url("{data_address(folder.joinpath(name).read_bytes(), "font/ttf")}"); }}'
        for weight, name in _FONTS.items()
    )
    return Markup("\n".join(faces))


def _check_squares() -> Markup:
    address = data_address(check_square.check_square_svg().encode(), "image/svg+xml")
    return Markup(f'url("{address}")')


class _Kept(FileSystemBytecodeCache):
    """The template, kept compiled beside the compiled modules, as Python keeps those.

    Compiling it takes a tenth of the time of a whole handout. Where Python may write nothing, nor
    does this; whatever is wrong with what was kept, the template is compiled anew.
    """

    def __init__(self, folder: Path) -> None:
        super().__init__(str(folder / "__pycache__"), f"%s-{VERSION}.jinja")

    def load_bytecode(self, bucket: Bucket) -> None:
        with suppress(OSError, ValueError, TypeError, EOFError):
            super().load_bytecode(bucket)

    def dump_bytecode(self, bucket: Bucket) -> None:
        if not sys.dont_write_bytecode:
            with suppress(OSError):
                super().dump_bytecode(bucket)


@cache
def _environment() -> Environment:
    here = files(__package__)
    sources = {_PAGE: here.joinpath(_PAGE).read_text("utf-8")}
    environment = Environment(
        loader=DictLoader(sources),
        bytecode_cache=_Kept(here) if isinstance(here, Path) else None,
        autoescape=True,
        finalize=_finalized,
        undefined=StrictUndefined,
        trim_blocks=True,
        lstrip_blocks=True,
        keep_trailing_newline=True,
    )
    filters = (_kind, _drawn, _address, css_string, css_counters, handfuls, lay, _shares)
    environment.filters |= {each.__name__.lstrip("_"): each for each in filters}
    environment.globals |= {
        "say": say,
        "style": Markup(here.joinpath(_STYLE).read_text("utf-8")),
        "fonts": _fonts,
        "check_squares": _check_squares,
    }
    return environment
