"""Cut the shipped fonts down to the letters we need, and write the table of their widths.

Needs fontTools, which nothing else here does:

    python tests/tools/cut_fonts.py FOLDER_WITH_ARIMO seqplan/render/fonts seqplan/draw/fonts
"""

import json
import sys
from pathlib import Path

from fontTools.subset import Options, Subsetter  # type: ignore[import-not-found]
from fontTools.ttLib import TTFont  # type: ignore[import-not-found]

RANGES = (
    (0x20, 0x7E),  # Latin
    (0xA0, 0x17F),  # Latin-1 supplement, Latin extended-A
    (0x218, 0x21B),  # comma below
    (0x300, 0x36F),  # combining marks
    (0x1E80, 0x1E85),
    (0x2010, 0x2044),  # dashes, quotes, primes, fraction slash
    (0x2070, 0x2089),  # raised and lowered figures
    (0x20AC, 0x20AC),  # euro
    (0x2100, 0x2126),
    (0x2150, 0x215E),  # fractions
    (0x2190, 0x21A8),  # arrows
    (0x2200, 0x2265),  # signs
    (0x25A0, 0x25EF),  # shapes
    (0xFB01, 0xFB02),
)


def main(source: Path, target: Path, measures: Path) -> None:
    widths = {}
    for style in ("Regular", "Bold"):
        font = TTFont(source / f"Arimo-{style}.ttf", recalcTimestamp=False)
        options = Options(hinting=False, name_IDs=[0, 1, 2, 3, 4, 5, 6, 7, 13, 14])
        options.layout_features = ["kern", "mark", "mkmk", "frac", "ccmp"]
        cutter = Subsetter(options)
        cutter.populate(unicodes=[code for low, high in RANGES for code in range(low, high + 1)])
        cutter.subset(font)
        font.save(target / f"Arimo-{style}.ttf")
        glyphs = font["hmtx"].metrics
        widths[style.lower()] = {
            chr(code): glyphs[name][0] for code, name in sorted(font.getBestCmap().items())
        }
        widths["units"] = font["head"].unitsPerEm
    text = json.dumps(widths, ensure_ascii=True, sort_keys=True, separators=(",", ":"))
    (measures / "widths.json").write_text(text + "\n", encoding="ascii")


if __name__ == "__main__":
    main(*map(Path, sys.argv[1:4]))
