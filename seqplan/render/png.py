"""Pictures as PNG: the same SVG, each set on a page of its own size by a typesetter.

The shipped fonts are used and nothing else, so that the same picture gives the same bytes on every
machine.
"""

from collections.abc import Sequence
from importlib.resources import as_file, files
from typing import Any, Final

from seqplan.draw.figure import Figure
from seqplan.draw.svg import svg
from seqplan.draw.textwidth import only_known_letters

PIXELS_PER_INCH: Final = 288.0
"""Four pixels to a point: sharp on paper and on every screen."""

_MAIN: Final = "main.typ"
_PAGE: Final = "#set page(width: auto, height: auto, margin: 0pt, fill: white)"


def pngs(figures: Sequence[Figure], pixels_per_inch: float = PIXELS_PER_INCH) -> tuple[bytes, ...]:
    """Write pictures as PNG files on a white ground, all in one go.

    Parameters
    ----------
    figures
        The pictures; equal pictures give equal bytes.
    pixels_per_inch
        How finely they are drawn.
    """
    if not figures:
        return ()
    # Loading the typesetter takes longer than all other imports together.
    import typst

    names = [f"{number}.svg" for number in range(len(figures))]
    images = "\n#pagebreak()\n".join(f'#image("{name}")' for name in names)
    # The typesetter takes several files at once, which its stubs do not say.
    sources: Any = {name: _spelled(figure) for name, figure in zip(names, figures, strict=True)}
    sources[_MAIN] = f"{_PAGE}\n{images}\n".encode()
    with as_file(files("seqplan.render").joinpath("fonts")) as folder:
        found = typst.compile(
            sources,
            font_paths=[str(folder)],
            ignore_system_fonts=True,
            format="png",
            ppi=pixels_per_inch,
        )
    return _pages(found)


def _spelled(figure: Figure) -> bytes:
    """The picture with a box for every letter that the shipped font lacks."""
    return only_known_letters(svg(figure)).encode()


def _pages(found: bytes | list[bytes]) -> tuple[bytes, ...]:
    """One page comes by itself, several as a list."""
    return (found,) if isinstance(found, bytes) else tuple(found)
