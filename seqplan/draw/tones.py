"""How cloth is told apart in black and white: tones and hatching of sides, patterns of kinds.

The right side is paper white; the wrong side is toned and hatched. What a piece is cut from is
told by a pattern on top of that. Letters and names say the same again.
"""

from collections.abc import Iterator, Sequence
from itertools import pairwise
from math import ceil
from typing import Final, NamedTuple

from seqplan.draw.cloth import Cloth
from seqplan.draw.figure import PAPER, TONE, Area, Mark, Spot, Strokes

_PITCH: Final = 6.0


class _Pattern(NamedTuple):
    """Direction and pitch of strokes, width of the pen, dashes."""

    way: tuple[float, float]
    pitch: float
    width: float
    dashes: tuple[float, ...]


_PATTERNS: Final[dict[Cloth, _Pattern | None]] = {
    Cloth.SHELL: None,
    Cloth.FACING: _Pattern((1, 0), 6.5, 0.6, (3, 4)),
    Cloth.LINING: _Pattern((1, 0), 5.5, 1.3, (0.01, 5.5)),
    Cloth.INTERLINING: _Pattern((0, 1), 3.0, 0.4, (1, 1)),
    Cloth.NOTION: _Pattern((0, 1), 2.6, 0.6, (100, 0.1)),
}


def cloth_marks(
    outline: Sequence[Spot], cloth: Cloth, *, is_right: bool, pen: float = 0.9
) -> Iterator[Mark]:
    """A piece of cloth.

    Parameters
    ----------
    outline
        All round.
    cloth
        What it is cut from.
    is_right
        Whether its right side is seen.
    pen
        How heavy its outline is.
    """
    spots = tuple(outline)
    yield Area(spots, PAPER if is_right else TONE)
    if not is_right:
        yield Strokes(tuple(hatching(spots, (1, 1), _PITCH)), 0.5)
    pattern = _PATTERNS[cloth]
    if pattern is not None:
        strokes = tuple(hatching(spots, pattern.way, pattern.pitch))
        yield Strokes(strokes, pattern.width, pattern.dashes, is_round=pattern.dashes[0] < 0.1)
    yield Area(spots, "none", pen)


def hatching(
    outline: Sequence[Spot], way: tuple[float, float], pitch: float
) -> Iterator[tuple[Spot, Spot]]:
    """Strokes in one direction across an area, which may have dents.

    They lie on one grid for the whole canvas, so that those of neighbours go on into one another.
    """
    length = (way[0] ** 2 + way[1] ** 2) ** 0.5
    ux, uy = way[0] / length, way[1] / length
    turned = [(x * ux + y * uy, x * uy - y * ux) for x, y in outline]
    sides = list(pairwise([*turned, turned[0]]))
    across = [offset for _, offset in turned]
    first = ceil(min(across) / pitch + 1e-6)
    last = ceil(max(across) / pitch - 1e-6) - 1
    for step in range(first, last + 1):
        offset = step * pitch
        crossed = sorted(
            a + (b - a) * (offset - low) / (high - low)
            for (a, low), (b, high) in sides
            if (low < offset) != (high < offset)
        )
        for one, other in zip(crossed[::2], crossed[1::2], strict=False):
            yield (
                (one * ux + offset * uy, one * uy - offset * ux),
                (other * ux + offset * uy, other * uy - offset * ux),
            )
