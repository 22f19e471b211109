"""Draw the lay plans of the garments in `garments/`: pieces on folded cloth, true to their shapes.

    python -m tests.tools.lay_plan           # write all of them
    python -m tests.tools.lay_plan --check   # only compare

The cloth is folded lengthwise, and all pieces lie one way, so that it may have a nap. The largest
pieces are laid first, each as far to the start of the cloth as it goes. Wants `shapely`.
"""

import sys
from collections.abc import Sequence
from itertools import pairwise
from math import ceil
from pathlib import Path
from typing import NamedTuple

import shapely
from shapely import affinity

from seqplan.base.measure import cloth_amount, cloth_width
from seqplan.draw.figure import FAINT, PAPER, TONE, Area, Figure, Line, Mark, Spot, Words, moved_by
from seqplan.draw.svg import svg
from seqplan.draw.textwidth import text_width
from seqplan.model.garment import LayPlan
from seqplan.model.piece import Cut, Piece
from seqplan.pipeline import open_garment
from seqplan.recipes.construction import Construction
from seqplan.shape.curve import flattened
from seqplan.shape.outline import Laid, lay
from seqplan.tell.cut_size import allowances
from seqplan.tell.cutting import tell_cutting

GARMENTS = Path(__file__).parents[2] / "garments"

GAP = 5.0
"""Millimetres between pieces, and between a piece and the selvages."""

_STEP = 5.0
_MARGIN = 14.0
_WIDEST = 460.0
_LARGEST = 0.5
"""Points to the millimetre, at most."""

_WORDS = 8.0


class Placed(NamedTuple):
    """A piece on the cloth: along it, and from the fold to the selvages, in millimetres."""

    piece: Piece
    cutting: shapely.Polygon
    stitching: shapely.Polygon


def lay_out(c: Construction, fabric: str, width: float) -> tuple[Placed, ...]:
    """Lay the pieces of a fabric on cloth of a width in millimetres, folded lengthwise."""
    waiting = []
    for piece in c.garment.pieces:
        laid = lay(piece) if piece.fabric == fabric else None
        if laid is not None:
            assert piece.cut is Cut.FOLD or piece.copies % 2 == 0, piece.id
            times = piece.copies if piece.cut is Cut.FOLD else piece.copies // 2
            waiting += [_flat(c, piece, laid)] * times
    done: list[Placed] = []
    waiting.sort(key=lambda each: (each.piece.cut is not Cut.FOLD, -each.cutting.area))
    for item in waiting:
        done.append(_lay(item, done, width / 2))
    return tuple(done)


def _flat(c: Construction, piece: Piece, laid: Laid) -> Placed:
    """A piece with its top at the start of the cloth and its left or its fold at the fold."""
    by_edge = allowances(c, piece)
    cutting = _turned(laid.cutting_line(by_edge.__getitem__))
    stitching = _turned(flattened(curve for path in laid.edges for curve in path))
    left, low, *_ = cutting.bounds
    along = -left
    across = -low if piece.cut is not Cut.FOLD else -_turned([laid.edges[0][0][0]] * 4).bounds[1]
    return Placed(
        piece,
        affinity.translate(cutting, along, across),
        affinity.translate(stitching, along, across),
    )


def _turned(points: Sequence[complex]) -> shapely.Polygon:
    """Down the piece is along the cloth, to the right of it is away from the fold."""
    return shapely.Polygon([(point.imag, point.real) for point in points])


def _lay(item: Placed, done: Sequence[Placed], high: float) -> Placed:
    """Lay a piece where it reaches least far along the cloth, then nearest to the fold."""
    room = high - GAP - item.cutting.bounds[3]
    assert room >= 0, item.piece.id
    taken = shapely.union_all([other.cutting.buffer(GAP - 0.01) for other in done])
    shapely.prepare(taken)
    furthest = max((other.cutting.bounds[2] for other in done), default=0.0)
    rows = [GAP + _STEP * step for step in range(int(room / _STEP))]
    if item.piece.cut is Cut.FOLD:
        rows = [0.0]
    for column in range(ceil((furthest + GAP) / _STEP) + 1):
        for row in rows:
            cutting = affinity.translate(item.cutting, column * _STEP, row)
            if not taken.intersects(cutting):
                stitching = affinity.translate(item.stitching, column * _STEP, row)
                return Placed(item.piece, cutting, stitching)
    raise AssertionError(item.piece.id)


def needed(placed: Sequence[Placed]) -> float:
    """How much cloth a lay takes, in millimetres."""
    return max(item.cutting.bounds[2] for item in placed)


# -- the picture -------------------------------------------------------------------------------


def draw(c: Construction, plan: LayPlan) -> str:
    """Draw a lay plan as SVG."""
    width = float(plan.width.mm)
    placed = lay_out(c, plan.fabric, width)
    amount = next(a for a in c.garment.fabric[plan.fabric].amounts if a.width.mm == plan.width.mm)
    long, high = float(amount.length.mm), width / 2
    assert needed(placed) <= long, f"{plan.picture.file} needs {needed(placed):.0f} mm"
    scale = min(_WIDEST / long, _LARGEST)
    frame = _Frame(scale, _MARGIN + high * scale)
    marks: list[Mark] = [Area(frame.all([(0, 0), (long, 0), (long, high), (0, high)]), TONE, 0.7)]
    rows = [row for row in tell_cutting(c) if not row.is_interfacing]
    cuts = {piece.id: row.cut for piece, row in zip(c.garment.pieces, rows, strict=True)}
    for item in placed:
        marks += _piece(item, frame, cuts)
    words = f"{cloth_width(plan.width)} wide, {cloth_amount(amount.length)} long"
    fold = frame.all([(0, 0), (long, 0)])
    marks += [
        Line(fold, 2.0, role="fold"),
        Words((_MARGIN, _MARGIN - 4), f"selvages; cloth {words}", _WORDS),
        Words((_MARGIN, frame.foot + 11), "fold of the cloth, right sides together", _WORDS),
        *_key(frame, long),
    ]
    names = ", ".join(item.piece.title for item in placed)
    return svg(
        Figure(
            2 * _MARGIN + long * scale,
            frame.foot + 32,
            f"{c.garment.name}: lay plan for {plan.fabric}, {words}",
            f"Cloth folded lengthwise; on it, from its start on: {names}.",
            tuple(marks),
        )
    )


class _Frame(NamedTuple):
    """Where the cloth lies on the canvas: its start at the left, its fold at the foot."""

    scale: float
    foot: float

    def all(self, points: Sequence[tuple[float, float]]) -> tuple[Spot, ...]:
        return tuple((_MARGIN + x * self.scale, self.foot - y * self.scale) for x, y in points)


def _piece(item: Placed, frame: _Frame, cuts: dict[str, str]) -> list[Mark]:
    cutting = frame.all(item.cutting.exterior.coords)
    stitching = list(item.stitching.exterior.coords)
    is_fold = item.piece.cut is Cut.FOLD
    if is_fold:
        # Not along the fold, where nothing is sewn.
        stitching = [p for p, q in pairwise(stitching) if max(p[1], q[1]) > 1e-6] + stitching[-2:-1]
    marks: list[Mark] = [
        Area(cutting[:-1], PAPER, 0.9, role="cutting-line"),
        Line(frame.all(stitching), 0.6, (3.0, 2.0), FAINT, role="stitching-line"),
    ]
    name = item.piece.title[:1].upper() + item.piece.title[1:]
    cut = cuts[item.piece.id]
    (left, low, right, top) = item.stitching.bounds
    middle = item.stitching.centroid
    ((x, y),) = frame.all([(middle.x, middle.y)])
    half = min(40.0, (right - left) * frame.scale * 0.3)
    is_low = (top - low) * frame.scale < 40
    lines = [f"{name}: {cut}"] if is_low else [name, cut]
    if (
        max(text_width(line, _WORDS, bold=True) for line in lines)
        > (right - left) * frame.scale - 8
    ):
        lines = [name]
    at = y + (_WORDS / 3 if is_low else -2)
    marks += [
        Words((x, at + n * 10), line, _WORDS, "middle", n == 0) for n, line in enumerate(lines)
    ]
    if not is_low:
        marks += _arrow(x, at + len(lines) * 10 - 2, half)
    return marks


def _arrow(x: float, y: float, half: float) -> list[Mark]:
    """The straight grain, along the cloth."""
    tips = [(x + side * half, y, side) for side in (-1, 1)]
    heads = [
        Area(((tip, at), (tip - side * 5, at - 2), (tip - side * 5, at + 2)), "#000")
        for tip, at, side in tips
    ]
    return [Line(((x - half, y), (x + half, y)), 0.7, role="grain"), *heads]


def _key(frame: _Frame, long: float) -> list[Mark]:
    low = frame.foot + 23
    x = _MARGIN
    marks: list[Mark] = []
    samples = (
        ([Line(((x, low - 3), (x + 24, low - 3)), 0.9)], "cut here"),
        ([Line(((0, low - 3), (24, low - 3)), 0.6, (3.0, 2.0), FAINT)], "sew here"),
        (_arrow(12, low - 3, 12), "straight grain"),
    )
    for sample, words in samples:
        shift = x if marks else 0
        marks += [moved_by(mark, shift, 0) for mark in sample]
        marks.append(Words((x + 28, low), words, _WORDS))
        x += 28 + text_width(words, _WORDS) + 14
    return marks


def written() -> dict[Path, str]:
    """The lay plans of all garments that have some, by the files that they belong in."""
    found = {}
    for path in sorted(GARMENTS.glob("*.yaml")):
        opened = open_garment(path)
        assert opened.construction is not None, path
        for plan in opened.construction.garment.plans:
            found[path.parent / plan.picture.file] = draw(opened.construction, plan)
    return found


def main() -> int:
    """Write the lay plans, or compare them."""
    stale = [
        (path, text) for path, text in written().items() if path.read_text(encoding="utf-8") != text
    ]
    for path, text in stale:
        print(path.name)  # noqa: T201
        if "--check" not in sys.argv:
            path.write_text(text, encoding="utf-8")
    return bool(stale) and "--check" in sys.argv


if __name__ == "__main__":
    sys.exit(main())
