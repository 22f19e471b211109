"""What is left of allowances that are trimmed, and how near a row is to its seam: usual measures.

In millimetres. Sources by title: "Apparel" = Apparel: Design, Textiles & Construction,
Goodheart-Willcox 2012, chapter 26; "French seam" = Technique: French Seam, Utah State University
Extension; others in full.
"""

from typing import Final

GRADED_NARROW: Final = 3
GRADED_WIDE: Final = 6
"""The layer next to the outside widest, 1/4 in, the inner less: Apparel; 3 and 6 mm: Sew magazine,
"Crash course on creating collars"."""

TRIMMED: Final = 6
"""Seams that are trimmed: 1/8 to 1/4 in: Apparel."""

FRENCH_TRIMMED: Final = 3
"""After the first row, 1/8 in: French seam."""

FELL_TRIMMED: Final = 3
"""The under allowance of a flat-felled seam: 1/8 in: common practice."""

UNDERSTITCH: Final = 3
"""From the seam, 1/8 in: Threads, "How to Understitch a Facing"."""

CENTRED_ZIP: Final = 6
"""From the seam line on each side, 1/4 in: "How to fix a stuck zipper" and common practice."""

LAPPED_ZIP: Final = 10
"""The row of a lapped zip from its fold, 3/8 in: common practice."""
