"""The booklet as one HTML page: no scripts, nothing from elsewhere, ready to print."""

from collections.abc import Iterable
from functools import cache
from importlib.resources import files
from typing import Final

from jinja2 import DictLoader, Environment, StrictUndefined
from markupsafe import Markup

from seqplan.tell.content import Sheet
from seqplan.words.say import say

_PAGE: Final = "booklet.html"
_STYLE: Final = "booklet.css"
_SHORT: Final = 50
"""A sentence of so many letters does not need a paragraph of its own."""


def booklet_html(sheet: Sheet) -> str:
    """Write the booklet of a garment.

    Parameters
    ----------
    sheet
        All that it says. Every text of it is escaped; equal sheets give equal bytes.
    """
    return _environment().get_template(_PAGE).render(sheet=sheet, say=say)


def css_string(text: str) -> Markup:
    r"""A CSS string that is safe inside a ``style`` element whatever the text holds.

    >>> str(css_string("A</style>"))
    '"A\\3c \\2f style\\3e "'
    """
    inner = "".join(
        letter if letter.isascii() and letter.isalnum() else f"\\{ord(letter):x} "
        for letter in text
        if letter != "\0"
    )
    return Markup(f'"{inner}"')


def paragraphs(texts: Iterable[str]) -> list[str]:
    """Put sentences into paragraphs: each its own, but short ones follow on the one before.

    >>> paragraphs(["Stitch from the mark to the end, as close to the fold as you can.", "Turn."])
    ['Stitch from the mark to the end, as close to the fold as you can. Turn.']
    """
    found: list[str] = []
    for text in texts:
        if found and len(text) <= _SHORT:
            found[-1] = f"{found[-1]} {text}"
        else:
            found.append(text)
    return found


@cache
def _environment() -> Environment:
    here = files(__package__)
    sources = {name: here.joinpath(name).read_text("utf-8") for name in (_PAGE, _STYLE)}
    environment = Environment(
        loader=DictLoader(sources),
        autoescape=True,
        undefined=StrictUndefined,
        trim_blocks=True,
        lstrip_blocks=True,
        keep_trailing_newline=True,
    )
    environment.filters["paragraphs"] = paragraphs
    environment.filters["css_string"] = css_string
    return environment
