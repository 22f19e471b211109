"""Sentences of the handouts: what to do, what to buy and cut, what to mind, what words mean.

``step-`` tells an operation, ``caution-`` warns, ``term-`` explains a word of the trade, ``sheet-``
is everything else on a sheet. A place such as ``{edges}`` takes a name, a list of names, a number
or a measure in both systems, never a part of a sentence. The tables stand in modules by subject.
"""

from typing import Final

from seqplan.words import (
    steps_bands,
    steps_cautions,
    steps_closures,
    steps_folds,
    steps_handling,
    steps_pockets,
    steps_seams,
    steps_shaping,
    steps_sheet,
    steps_terms,
)

_NAMES: Final[dict[str, str]] = {
    # How edges, pieces and seams are called.
    "step-list-and": "{most} and {last}",
    "step-list-comma": "{one}, {other}",
    "step-name": "{name}",
    "step-the": "the {name}",
    "step-whole": "the whole thing",
    "step-pieces-one": "the {pieces} piece",
    "step-pieces": "the {pieces} pieces",
    "step-piece-copies": "the {count} {pieces} pieces",
    "step-edges-of-one": "the {edges} edge of {pieces}",
    "step-edges-of": "the {edges} edges of {pieces}",
    "step-worn-left": "left {name}",
    "step-worn-right": "right {name}",
    "step-place-left": "the {piece} piece on the wearer's left",
    "step-place-right": "the {piece} piece on the wearer's right",
    "step-place-mark": "the {name} mark of {pieces}",
    "step-place-line": "the {name} line of {pieces}",
    "step-place-edge": "the {name} edge of {pieces}",
    "step-seam": "{edges} seam",
    "step-seam-named": "{edges}",
    "step-seam-layer": "{seam} of the {layer}",
    "step-seam-between": "seam between {one} and {other}",
    "step-heading-continued": "{title}, continued",
    "step-authors-words": "{words}.",
    "step-stitch-length": "{mm} mm ({per_inch} stitches to the inch)",
}

SENTENCES: Final[dict[str, str]] = {
    **_NAMES,
    **steps_seams.SENTENCES,
    **steps_folds.SENTENCES,
    **steps_bands.SENTENCES,
    **steps_pockets.SENTENCES,
    **steps_closures.SENTENCES,
    **steps_shaping.SENTENCES,
    **steps_handling.SENTENCES,
    **steps_terms.SENTENCES,
    **steps_cautions.SENTENCES,
    **steps_sheet.SENTENCES,
}
