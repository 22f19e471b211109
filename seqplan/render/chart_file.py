"""A chart as a file: SVG, or PDF and PNG of it with its texts set in the shipped font."""

import json
from collections.abc import Iterator
from importlib.resources import as_file, files
from typing import Any, Final
from xml.etree import ElementTree as ET

from seqplan.base.language import spoken
from seqplan.draw.textwidth import only_known_letters
from seqplan.render.handout.paper import Paper

SUFFIXES: Final = (".svg", ".pdf", ".png")
"""The formats, by how the names of their files end."""

_TEMPLATE: Final = "chart.typ"
_MAIN: Final = "main.typ"
_STANDARD: Final = "ua-1"
"""PDF/UA-1, ISO 14289-1: a PDF that can be read aloud."""

_SHEETS: Final = {Paper.A4: (595.28, 841.89), Paper.LETTER: (612.0, 792.0)}
_MARGIN: Final = 28.35
"""Sheets and what is left free round the chart on one, in points: 10 mm."""

_DOTS_TO_THE_INCH: Final = 192
_SVG: Final = "{http://www.w3.org/2000/svg}"


def chart_file(svg: str, suffix: str, paper: Paper | None = None) -> bytes:
    """Write a chart in a format; equal charts give equal bytes.

    Parameters
    ----------
    svg
        The chart as an SVG with its size in points, a title and a description.
    suffix
        The format, one of ``SUFFIXES``.
    paper
        The sheet that it stands on, lying where it is wider than high; as large as the chart
        where it is ``None``. An SVG has the size of the chart in any case.
    """
    if suffix == ".svg":
        return svg.encode("utf-8")
    # The typesetter is loaded by who asks for its formats only.
    import typst

    root = ET.fromstring(svg)
    options: dict[str, Any] = {"format": "pdf", "pdf_standards": [_STANDARD]}
    if suffix == ".png":
        options = {"format": "png", "ppi": _DOTS_TO_THE_INCH}
    template = files(__package__).joinpath(_TEMPLATE).read_bytes()
    with as_file(files(__package__).joinpath("fonts")) as folder:
        found: bytes = typst.compile(
            {_MAIN: template, "chart.svg": _spelled(root)},
            font_paths=[str(folder)],
            ignore_system_fonts=True,
            sys_inputs={"data": json.dumps(dict(_data(root, paper)), ensure_ascii=False)},
            **options,
        )
    return found


def _spelled(root: ET.Element) -> bytes:
    """The chart with a box for every letter that the shipped font lacks."""
    for text in root.iter(f"{_SVG}text"):
        text.text = only_known_letters(text.text or "")
    ET.register_namespace("", _SVG[1:-1])
    found: bytes = ET.tostring(root, encoding="utf-8")
    return found


def _data(root: ET.Element, paper: Paper | None) -> Iterator[tuple[str, object]]:
    """What the template places: the sheet, and the chart on it with its words."""
    width, height = (float(root.get(side, "0").removesuffix("pt")) for side in ("width", "height"))
    sheet, scale = (width, height), 1.0
    if paper is not None:
        short, long = _SHEETS[paper]
        sheet = (long, short) if width > height else (short, long)
        free = [side - 2 * _MARGIN for side in sheet]
        scale = min(1.0, free[0] / width, free[1] / height)
    yield "sheet", sheet
    yield "margin", _MARGIN if paper else 0
    yield "size", (width * scale, height * scale)
    yield "title", only_known_letters(root.findtext(f"{_SVG}title", ""))
    yield "lang", spoken()
    yield "words", only_known_letters(root.findtext(f"{_SVG}desc", ""))
