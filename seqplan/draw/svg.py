"""Write a picture as SVG. The one module that knows the format; equal pictures give equal bytes."""

import re
from collections.abc import Callable, Iterable, Mapping
from functools import lru_cache
from math import hypot
from typing import Final

from seqplan.base.visible import straightened
from seqplan.draw.figure import Area, Disc, Figure, Group, Line, Mark, Spot, Strokes, Words
from seqplan.draw.textwidth import FONT_FAMILY

_BLANK: Final = re.compile(r"\s+")


def svg(figure: Figure) -> str:
    """Write a picture as a file of its own. Texts are escaped, whatever they hold."""
    width, height = number(figure.width), number(figure.height)
    head = f'xmlns="http://www.w3.org/2000/svg" width="{width}pt" height="{height}pt"'
    return _whole(figure, head) + "\n"


def inline_svg(figure: Figure, scale: float = 1.0) -> str:
    """Write a picture to stand within a page.

    It is as wide as its place but no wider than drawn, times ``scale``, and bears no names of its
    own, so that many can stand in one page.
    """
    return _whole(figure, f'style="max-width:{number(scale * figure.width)}pt"')


def _whole(figure: Figure, head: str) -> str:
    canvas = f"0 0 {number(figure.width)} {number(figure.height)}"
    fonts = f"{FONT_FAMILY}, Liberation Sans, Arial, sans-serif"
    lines = [
        f'<svg {head} viewBox="{canvas}" role="img" font-family="{fonts}">',
        f"<title>{text(figure.title)}</title>",
        f"<desc>{text(figure.words)}</desc>",
        *_written(figure.marks),
        "</svg>",
    ]
    return "\n".join(lines)


@lru_cache(maxsize=10_000)
def number(value: float) -> str:
    """A number with at most one decimal.

    >>> number(2.0), number(-0.04), number(1.25)
    ('2', '0', '1.2')
    """
    found = f"{value:.1f}".removesuffix(".0")
    return "0" if found == "-0" else found


def text(value: str) -> str:
    """A text in one line that is text and nothing else, between tags or in quotes.

    >>> text('<b> & "c"')
    '&lt;b&gt; &amp; &quot;c&quot;'
    """
    clean = straightened(_BLANK.sub(" ", value)).strip()
    for letter, name in (("&", "&amp;"), ("<", "&lt;"), (">", "&gt;"), ('"', "&quot;")):
        clean = clean.replace(letter, name)
    return clean


def _written(marks: Iterable[Mark]) -> Iterable[str]:
    for mark in marks:
        if isinstance(mark, Group):
            name, side = _named("data-name", mark.name), _named("data-side", mark.side)
            yield f"<g{_named('class', mark.role)}{name}{side}>"
            yield from _written(mark.marks)
            yield "</g>"
        else:
            yield _WRITERS[type(mark)](mark)


def _line(mark: Line) -> str:
    pen = _pen(mark.ink, mark.width, mark.dashes, is_round=mark.is_round)
    way = _way(mark.points, mark.radius)
    return f'<path{_named("class", mark.role)} d="{way}" fill="none"{pen}/>'


def _strokes(mark: Strokes) -> str:
    way = "".join(f"M{_at(one)}L{_at(other)}" for one, other in mark.strokes)
    pen = _pen(mark.ink, mark.width, mark.dashes, is_round=mark.is_round)
    return f'<path d="{way}" fill="none"{pen}/>'


def _area(mark: Area) -> str:
    way = "L".join(map(_at, mark.points))
    pen = _pen("#000", mark.outline, ()) if mark.outline else ""
    return f'<path{_named("class", mark.role)} d="M{way}Z" fill="{mark.fill}"{pen}/>'


def _disc(mark: Disc) -> str:
    x, y = map(number, mark.centre)
    pen = _pen("#000", mark.outline, ()) if mark.outline else ""
    return f'<circle cx="{x}" cy="{y}" r="{number(mark.radius)}" fill="{mark.fill}"{pen}/>'


def _words(mark: Words) -> str:
    x, y = map(number, mark.spot)
    anchor = "" if mark.anchor == "start" else f' text-anchor="{mark.anchor}"'
    bold = ' font-weight="bold"' if mark.is_bold else ""
    return (
        f'<text{_named("class", mark.role)} x="{x}" y="{y}" font-size="{number(mark.size)}"'
        f"{anchor}{bold}>{text(mark.text)}</text>"
    )


_WRITERS: Final[Mapping[type, Callable[..., str]]] = {
    Line: _line,
    Strokes: _strokes,
    Area: _area,
    Disc: _disc,
    Words: _words,
}


def _named(attribute: str, value: str) -> str:
    return f' {attribute}="{text(value)}"' if value else ""


def _pen(ink: str, width: float, dashes: tuple[float, ...], *, is_round: bool = False) -> str:
    dashed = f' stroke-dasharray="{" ".join(map(number, dashes))}"' if dashes else ""
    ends = ' stroke-linecap="round"' if is_round else ""
    return f' stroke="{ink}" stroke-width="{number(width)}"{dashed}{ends}'


def _at(spot: Spot) -> str:
    return f"{number(spot[0])} {number(spot[1])}"


def _way(points: tuple[Spot, ...], radius: float) -> str:
    """A way through points, its corners rounded."""
    parts = [f"M{_at(points[0])}"]
    for before, corner, after in zip(points, points[1:], points[2:], strict=False):
        near = min(radius, _apart(before, corner) / 2, _apart(corner, after) / 2)
        if near <= 0:
            parts.append(f"L{_at(corner)}")
        else:
            start, end = _towards(corner, before, near), _towards(corner, after, near)
            parts.append(f"L{_at(start)}Q{_at(corner)} {_at(end)}")
    return "".join([*parts, f"L{_at(points[-1])}"])


def _apart(one: Spot, other: Spot) -> float:
    return hypot(other[0] - one[0], other[1] - one[1])


def _towards(start: Spot, goal: Spot, by: float) -> Spot:
    share = by / _apart(start, goal)
    return start[0] + share * (goal[0] - start[0]), start[1] + share * (goal[1] - start[1])
