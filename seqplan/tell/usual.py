"""Measures that no file gives: common practice, each with where it is seen.

Sources by title: "Apparel" = Apparel: Design, Textiles & Construction, Goodheart-Willcox 2012,
chapter 26; "Dressmaking" = A Complete Course in Dressmaking, I. D. Conover 1921; "French seam" =
Technique: French Seam, Utah State University Extension; others in full. Common practice has no
single source.
"""

from dataclasses import dataclass
from fractions import Fraction

from seqplan.base.measure import MM_PER_INCH, Length, both, decimal
from seqplan.model.garment import Garment
from seqplan.words.say import say

STAYSTITCH_INSIDE = 3
"""From the seam line towards the raw edge; 1/8 in: common practice."""
CLIP_FROM = 6
CLIP_TO = 13
"""A clip every 1/4 to 1/2 in: Apparel."""
FRENCH_CLIP_SHORT = 3
"""How far before the final seam line a snip at the end of a French seam stops: common practice."""
EDGE_STITCH = 2
"""From the inner fold of a hem or casing: common practice."""
TOPSTITCH = 6
"""From seam or edge: common practice."""
FIRST_TURN = 10
"""The first turn of an edge turned twice: common practice; never deeper than the second."""
LIPS = 3
"""Each lip of a bound buttonhole, 1/8 in: The Bound Buttonhole, Circular 442, Univ. of Hawaii (from
memory)."""
DEEP_HEM = 20
"""A hem so deep has to be eased where it is flared, a narrower one gives way: common practice."""
SLIP_STITCH_APART = 6
"""Between hand stitches of a hem: common practice."""
BLIND_BACK = 6
"""How far the edge is folded back while it is blind stitched: common practice."""
OVERLAP_OF_STITCHING = 20
"""Where a row that runs round meets its beginning: common practice."""
ELASTIC_OVERLAP = 20
"""1/2 to 1 in: common practice of elastic casings."""
ZIP_STOP_UNDER_FACING = 13
ZIP_STOP = 6
"""Top stop below the seam line: 1/4 in, and 1/2 in where a facing follows."""
INVISIBLE_ZIP_LONGER = 25
"""How much longer an invisible zip is than its opening, since the slider stops the foot: common
practice."""
ZIP_BEYOND = 13
"""What is left of the tape of a zip beyond the stop that is sewn, 1/2 in: common practice."""
FLY_UNDER = (3, 2, 4)
"""How much further the side beneath reaches than the fly that covers it: common practice of
trousers, 1/8 in."""
FOLD_CLEAR_OF_ZIP = 3
"""Between the fold of a facing and the teeth: common practice."""
BASTE_OUTSIDE = 3
"""From the seam line towards the raw edge, so that the seam does not catch it: common practice."""
PLEAT_BASTE = 6
"""From the raw edge: common practice."""
GATHER_FIRST = 6
GATHER_SECOND = 13
"""Rows from the raw edge, 1/4 and 1/2 in: published rows at 6, 13 and 19 mm."""

BAND_COVER = (2, 3, 4)
"""How far the loose edge of a band reaches over its seam, so that the row catches it: common
practice."""
PLACKET_SEAM = 6
"""Strips on a slit, 1/4 in: common practice of shirt making."""
BAG_NEARER = (3, 2, 4)
"""How much nearer to the raw edge a pocket bag is sewn on than the seam, so that its row hides:
common practice."""
POCKET_BAR = 6
"""The triangle at the mouth of a patch pocket: common practice."""
WELT_SEAM = 6
WELT_END = 10
"""Rows beside the line of a welt pocket, and how far before its ends the cut forks: common
practice."""
BOX_TRIMMED = 10
"""What is left beyond the seam across a boxed corner: common practice."""
STRAP_END = 10
"""The turned-in end of a strap: common practice."""

STRAIGHT_STITCH = "2.5"
STAYSTITCH_LENGTH = "2"
TOPSTITCH_LENGTH = "3"
"""Stitch lengths in mm: regular 2 to 3, staystitching 1.5 to 2, topstitching 3 to 3.5."""


def usual(garment: Garment, mm: int | Fraction) -> Length:
    """A measure of common practice in the unit that the file uses."""
    return Length(Fraction(mm), "in" if garment.units == "in" else "mm")


def told(garment: Garment, mm: int | Fraction) -> str:
    """A measure of common practice in both systems, the file's first."""
    return both(usual(garment, mm))


def stitch(mm: str) -> str:
    """A stitch length, also as stitches to the inch."""
    per_inch = round(MM_PER_INCH / Fraction(mm))
    return say("step-stitch-length", mm=decimal(Fraction(mm)), per_inch=per_inch)


def shorter(length: Length, *, by: tuple[int, ...]) -> tuple[Length, Length]:
    """A length made shorter, so that it comes out right in both systems as printed.

    Parameters
    ----------
    length
        The length.
    by
        By how many millimetres, the best first; one that adds up in eighths of an inch is taken.

    Returns
    -------
    Length, Length
        What remains, and by how much it was made shorter.

    >>> [both(found) for found in shorter(Length(Fraction(15)), by=(2, 3))]
    ['1.3 cm (½ in)', '2 mm (⅛ in)']
    >>> [both(found) for found in shorter(Length(Fraction(10)), by=(2, 3))]
    ['7 mm (¼ in)', '3 mm (⅛ in)']
    """
    if length.written_in == "in":
        eighth = MM_PER_INCH / 8
        return Length(max(length.mm - eighth, eighth), "in"), Length(eighth, "in")
    fits = (mm for mm in by if mm * 2 <= length.mm and _parts_add_up(length, mm))
    mm = next(fits, min(Fraction(by[0]), length.mm / 2))
    unit = length.written_in
    return Length(length.mm - mm, unit), Length(Fraction(mm), unit)


def _parts_add_up(whole: Length, mm: int) -> bool:
    """Whether printed inches less printed inches are the printed inches of what remains."""
    rest = _eighths(whole.mm - mm)
    return rest + _eighths(Fraction(mm)) == _eighths(whole.mm)


def first_turn(depth: Length) -> Length:
    """How deep the first turn of an edge turned twice is: 1 cm, or all of a narrow hem."""
    return Length(min(Fraction(FIRST_TURN), depth.mm), depth.written_in)


@dataclass(frozen=True, slots=True)
class FrenchRows:
    """The rows of a French seam: the first from the raw edges, the second from the fold."""

    first: Length
    second: Length


def french_rows(allowance: Length) -> FrenchRows:
    """Part an allowance between the two rows, the first the narrower.

    Together they take up the whole allowance in both systems, each rounded as printed, so that
    whoever follows the inches sews the same seam. Published: 3/8 and 3/8 in (French seam), 1/8 and
    1/4 in (Dressmaking).

    >>> rows = french_rows(Length(Fraction(10)))
    >>> both(rows.first), both(rows.second)
    ('4 mm (⅛ in)', '6 mm (¼ in)')
    """
    unit = allowance.written_in
    grain = MM_PER_INCH / 8 if unit == "in" else Fraction(1)
    half = max(1, int(allowance.mm / 2 / grain))
    best = next((n for n in range(half, 2, -1) if _adds_up(allowance, n * grain)), half)
    first = min(best * grain, allowance.mm)
    return FrenchRows(Length(first, unit), Length(allowance.mm - first, unit))


def _adds_up(allowance: Length, first: Fraction) -> bool:
    """Whether the printed inches of the rows add up to those of the allowance."""
    return _eighths(first) + _eighths(allowance.mm - first) == _eighths(allowance.mm)


def _eighths(mm: Fraction) -> int:
    return max(1, round(mm / MM_PER_INCH * 8))
