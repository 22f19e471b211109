"""The booklet as one HTML page: no scripts, nothing from elsewhere, ready to print."""

import re
from collections.abc import Iterable, Mapping, Sequence
from functools import cache
from importlib.resources import files
from itertools import pairwise
from math import ceil
from typing import Final

from jinja2 import DictLoader, Environment, StrictUndefined
from markupsafe import Markup

from seqplan.base.ids import OpId
from seqplan.base.visible import straightened
from seqplan.draw.figure import Figure
from seqplan.draw.pictures import Pictures
from seqplan.draw.svg import inline_svg
from seqplan.tell.content import Sheet, SheetStep
from seqplan.tell.sentence import Term
from seqplan.words.say import say

_PAGE: Final = "booklet.html"
_STYLE: Final = "booklet.css"
_MEASURE: Final = re.compile(r"([\d\u00bc-\u00be\u215b-\u215e]) (mm|cm|in)\b")
_WIDTH: Final = 60
_WIDTH_BESIDE: Final = 28
"""Letters in a printed line: of what to do, and of the words beside it."""
_SKETCH: Final = 7
"""Lines that the place for a sketch takes up at least."""
_PT_OF_A_LINE: Final = 20
"""Of a picture beside a step, which is shown a little smaller than it is."""
_SMALLER: Final = 0.82
"""The height of a line of the words, in lines of what to do."""
_HANDFUL: Final = 3
"""How many pairs of terms stay together at least."""
_SHORT: Final = 50
"""A sentence of so many letters does not need a paragraph of its own."""


def booklet_html(sheet: Sheet, pictures: Mapping[OpId, Pictures] | None = None) -> str:
    """Write the booklet of a garment.

    Parameters
    ----------
    sheet
        All that it says. Every text of it is escaped; equal sheets give equal bytes.
    pictures
        The pictures of operations; a step that has none keeps a place for a sketch.
    """
    drawn = {
        step.number: figures_of(step, pictures or {})
        for group in sheet.groups
        for step in group.steps
    }
    page = _environment().get_template(_PAGE)
    return page.render(sheet=sheet, say=say, drawn=drawn)


def figures_of(step: SheetStep, pictures: Mapping[OpId, Pictures]) -> tuple[Figure, ...]:
    """The pictures that stand beside a step: how layers are laid, and how they lie in the end."""
    found = [pictures[id_] for id_ in step.operations if id_ in pictures]
    stacks = [one.stack for one in found if one.stack is not None][:1]
    sections = [one.section for one in found if one.section is not None][-1:]
    return (*stacks, *sections)


def _drawn(figure: Figure) -> Markup:
    return Markup(inline_svg(figure))


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


def place_words(
    step: SheetStep, figures: Sequence[Figure] = ()
) -> tuple[tuple[Term, ...], tuple[Term, ...]]:
    """Place the new words of a step: beside it, below its sketch, while there is room; then below.

    The height of the step is a rough count of its printed lines.
    """
    above = sum(figure.height for figure in figures) / _PT_OF_A_LINE if figures else _SKETCH
    told = [text for sentence in step.sentences for text in (*sentence.texts, sentence.check)]
    room: float = len(step.sentences) + _lines(told, _WIDTH) - above
    for count, term in enumerate(step.terms):
        room -= _SMALLER * _lines([f"{term.name}: {term.meaning}"], _WIDTH_BESIDE)
        if room < 0:
            return step.terms[:count], step.terms[count:]
    return step.terms, ()


def handfuls(terms: Sequence[Term]) -> list[Sequence[Term]]:
    """Cut a list into parts that each stay on one page, so that no term stands alone overleaf.

    Terms stand in pairs beside each other, so every part but the last is even.

    >>> [len(part) for part in handfuls([Term("a", "b")] * 17)]
    [6, 6, 5]
    """
    pairs = ceil(len(terms) / 2)
    parts = max(1, pairs // _HANDFUL)
    ends = [2 * round(pairs * number / parts) for number in range(parts + 1)]
    return [terms[start:end] for start, end in pairwise(ends)]


def _lines(texts: Iterable[str], width: int) -> int:
    """How many lines texts take up at a width in letters."""
    return sum(ceil(len(text) / width) for text in texts)


def printed(value: object) -> object:
    r"""Make any text fit for the page, and keep the unit of a measure on the line of its number.

    >>> printed("1.5 cm (\u215d in)")
    '1.5\xa0cm (\u215d\xa0in)'
    """
    if isinstance(value, str) and not isinstance(value, Markup):
        return _MEASURE.sub("\\1\N{NO-BREAK SPACE}\\2", straightened(value))
    return value


@cache
def _environment() -> Environment:
    here = files(__package__)
    sources = {name: here.joinpath(name).read_text("utf-8") for name in (_PAGE, _STYLE)}
    environment = Environment(
        loader=DictLoader(sources),
        autoescape=True,
        finalize=printed,
        undefined=StrictUndefined,
        trim_blocks=True,
        lstrip_blocks=True,
        keep_trailing_newline=True,
    )
    environment.filters["paragraphs"] = paragraphs
    environment.filters["place_words"] = place_words
    environment.filters["handfuls"] = handfuls
    environment.filters["drawn"] = _drawn
    environment.filters["css_string"] = css_string
    return environment
