"""Sentences and labels of the pictures of steps."""

from typing import Final

SENTENCES: Final[dict[str, str]] = {
    # Names of what is drawn.
    "picture-other-copy": "{piece}, the other one",
    "picture-band": "band",
    "picture-binding": "binding",
    "picture-step-part": "{entry}, {part}",
    "picture-title-stack": "{step}: how the layers lie",
    "picture-title-section": "{step}: cut across",
    # Layers, from the table up.
    "picture-layer-right": "{number} {piece}, right side up",
    "picture-layer-wrong": "{number} {piece}, wrong side up",
    "picture-layer-bought": "{number} {piece}",
    "picture-right-letter": "R",
    "picture-wrong-letter": "W",
    "picture-right-side": "right side",
    "picture-wrong-side": "wrong side",
    "picture-not-to-scale": "not to scale",
    "picture-leave-open": "leave {gap} open",
    "picture-only-part": "only {length} from {neighbour}",
    "picture-stop-before": "stop {length} before {neighbour}",
    # Sections.
    "picture-outside": "outside",
    "picture-inside": "inside",
    "picture-table": "table",
    "picture-row": "{number} {row}",
    "picture-stitch-seam": "seam",
    "picture-stitch-overlock": "overlocking",
    "picture-stitch-basting": "basting",
    "picture-stitch-staystitching": "staystitching",
    "picture-stitch-understitching": "understitching",
    "picture-stitch-topstitching": "topstitching",
    "picture-stitch-hem": "row of the hem",
    "picture-stitch-hand": "hand stitches",
    "picture-stitch-gathering": "gathering threads",
    # The key of fabrics.
    "picture-cloth-shell": "fabric",
    "picture-cloth-facing": "facing",
    "picture-cloth-lining": "lining",
    "picture-cloth-interlining": "interlining",
    "picture-cloth-notion": "notion",
    # Told to who cannot see the picture.
    "picture-told-stack": "{words} From the table up: {layers}.",
    "picture-told-section": "{words} Stitched through, from the top: {rows}.",
    "picture-told-right": "{piece} (right side first)",
    "picture-told-wrong": "{piece} (wrong side first)",
    "picture-told-row": "{row} through {plies}",
}
