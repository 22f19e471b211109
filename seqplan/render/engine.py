"""From the graph language to a picture: the one place where a layout program is run.

The program places nothing: it draws what stands where, fonts, signs and links included.

The picture that comes out stands by itself: it can be opened as a file or put into a page.
"""

import os
import shutil
import subprocess
import sysconfig
import xml.etree.ElementTree as ET
from pathlib import Path
from typing import Final

from seqplan.base.errors import MissingToolError
from seqplan.draw.figure import DOTS
from seqplan.draw.textwidth import FONT_FAMILY
from seqplan.render.chart_look import DASHED, LINE_WIDTH, page_scale
from seqplan.render.quoting import JOINER
from seqplan.words.say import say

VARIABLE: Final = "SEQPLAN_DOT"
"""Names the layout program, where it is set."""

TIMEOUT_S: Final = 60

BUNDLED: Final = "graphviz-pure"
SYSTEM: Final = "dot"


_SVG: Final = "{http://www.w3.org/2000/svg}"
_TITLE_OF_LINK: Final = "{http://www.w3.org/1999/xlink}title"
_FAMILY: Final = f"{FONT_FAMILY}, Arial, Helvetica, Liberation Sans, sans-serif"
_ERROR_LENGTH: Final = 300


def render_svg(dot: str, *, program: str | None = None) -> str:
    """Draw a graph in which everything has its place.

    Parameters
    ----------
    dot
        The graph, in the graph language. The name of the graph becomes the title of the picture,
        and its ``tooltip`` the description for those who cannot see it.
    program
        A layout program that takes the place of the bundled one: a name or a path. Where it is
        ``None``, the environment may name one in ``SEQPLAN_DOT``.

    Returns
    -------
    str
        An SVG that fits A4, upright or lying, without declarations before it, so that it can be
        put into a page. It refers to nothing outside itself.

    Raises
    ------
    MissingToolError
        When there is no layout program, or it fails.
    """
    return tidy_svg(_run(find_program(program), dot))


def find_program(program: str | None = None) -> str:
    """Find the layout program: the one asked for, the bundled one, or the one of the system.

    Parameters
    ----------
    program
        A name or a path, or ``None``.

    Raises
    ------
    MissingToolError
        When it is not there.
    """
    wanted = program or os.environ.get(VARIABLE)
    if wanted:
        found = shutil.which(wanted)
        if found is None:
            raise MissingToolError(wanted, say("chart-no-such-program"))
        return found
    found = shutil.which(BUNDLED, path=sysconfig.get_path("scripts")) or shutil.which(SYSTEM)
    if found is None:
        raise MissingToolError(BUNDLED, say("chart-no-program", variable=VARIABLE))
    return found


def _run(program: str, dot: str) -> str:
    try:
        done = subprocess.run(
            [program, "-Kneato", "-n2", "-Tsvg", "-q"],
            input=dot.encode(),
            capture_output=True,
            timeout=TIMEOUT_S,
            check=False,
            env=_environment(),
            cwd=Path(program).anchor or None,
        )
    except subprocess.TimeoutExpired as error:
        why = say("chart-program-too-slow", seconds=TIMEOUT_S)
        raise MissingToolError(program, why) from error
    except OSError as error:
        why = say("chart-program-will-not-run", problem=error.strerror or type(error).__name__)
        raise MissingToolError(program, why) from error
    text = done.stdout.decode(errors="replace")
    if done.returncode or "<svg" not in text:
        problem = " ".join(done.stderr.decode(errors="replace").split())[:_ERROR_LENGTH]
        raise MissingToolError(program, say("chart-program-failed", problem=problem or "-"))
    return text


def _environment() -> dict[str, str]:
    """What a program needs to start, and nothing that would make it draw differently."""
    kept = ("PATH", "HOME", "SYSTEMROOT", "TEMP", "TMP", "LD_LIBRARY_PATH")
    return {"LC_ALL": "C.UTF-8"} | {key: os.environ[key] for key in kept if key in os.environ}


def tidy_svg(text: str) -> str:
    """Make a picture from a layout program stand by itself.

    Parameters
    ----------
    text
        An SVG as layout programs write it.

    Returns
    -------
    str
        The same picture with a title and a description, fonts to fall back on, tooltips where
        browsers look for them, and a size that fits A4.
    """
    try:
        root = ET.fromstring(text.replace(JOINER, ""))
    except ET.ParseError as error:
        raise MissingToolError(BUNDLED, say("chart-program-failed", problem=error)) from error
    drawing = root.find(f"{_SVG}g")
    if drawing is None:
        raise MissingToolError(BUNDLED, say("chart-program-failed", problem="-"))
    title = drawing.findtext(f"{_SVG}title", "")
    description = _tooltip(drawing)
    for group in drawing.iter(f"{_SVG}g"):
        _tidy_group(group)
    for mark in drawing.iter():
        _dash(mark)
    drawing.attrib.pop("id", None)
    for label in root.iter(f"{_SVG}text"):
        label.attrib["font-family"] = _FAMILY
    _fit_page(root)
    _head(root, title, description)
    ET.register_namespace("", _SVG[1:-1])
    return ET.tostring(root, encoding="unicode") + "\n"


def _tooltip(group: ET.Element) -> str:
    """The tooltip of a group, which layout programs write as the title of a link."""
    for link in _links(group):
        return link.get(_TITLE_OF_LINK, "")
    return ""


def _links(group: ET.Element) -> list[ET.Element]:
    """The links of a group that belong to itself and not to a group of its own within."""
    return [
        link
        for part in group
        for link in ([part] if part.tag == f"{_SVG}a" else part.findall(f"{_SVG}a"))
    ]


def _tidy_group(group: ET.Element) -> None:
    """Say the tooltip as the title of a group, and take the links out that carried it."""
    title = group.find(f"{_SVG}title")
    tooltip = _tooltip(group) if title is not None else ""
    if title is not None:
        title.text = tooltip
        if not tooltip:
            group.remove(title)
    parts = [inner for part in group for inner in _unlinked(part)]
    for part in list(group):
        group.remove(part)
    group.extend(parts)
    if not group.get("id", "").startswith("chart-"):
        group.attrib.pop("id", None)


def _dash(mark: ET.Element) -> None:
    """Dash a line as the pictures do: heavy ones in longer strokes, dots with round ends."""
    dashes = DASHED.get(mark.get("stroke-dasharray", ""))
    if dashes is None:
        return
    weight = max(1.0, float(mark.get("stroke-width", "1")) / LINE_WIDTH / 2)
    mark.set("stroke-dasharray", " ".join(f"{stroke * weight:.1f}" for stroke in dashes))
    if dashes is DOTS:
        mark.set("stroke-linecap", "round")


def _unlinked(part: ET.Element) -> list[ET.Element]:
    """What stands in a link, or in a group that only holds one; anything else as it is."""
    if part.tag == f"{_SVG}a":
        return list(part)
    if part.tag == f"{_SVG}g" and len(part) == 1 and part[0].tag == f"{_SVG}a":
        return list(part[0])
    return [part]


def _fit_page(root: ET.Element) -> None:
    """Give the picture the size at which it fits A4, upright or lying; never enlarge it."""
    _, _, width, height = (float(number) for number in root.get("viewBox", "0 0 1 1").split())
    scale = page_scale(width, height)
    root.set("width", f"{width * scale:.2f}pt")
    root.set("height", f"{height * scale:.2f}pt")


def _head(root: ET.Element, title: str, description: str) -> None:
    """Say to those who cannot see it what the picture is."""
    root.set("role", "img")
    for place, (tag, text) in enumerate((("title", title), ("desc", description))):
        element = ET.Element(f"{_SVG}{tag}")
        element.text = text
        root.insert(place, element)
