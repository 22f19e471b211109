"""Sentences and labels of the map of all pieces."""

from typing import Final

SENTENCES: Final[dict[str, str]] = {
    "map-title-map": "{step}: all pieces laid flat",
    "map-title-piece": "{step}: on the piece",
    "map-title-start": "All pieces laid flat",
    "map-piece": "{piece}",
    "map-piece-copies": "{piece} ({count}\N{MULTIPLICATION SIGN})",
    "map-piece-mirrored": "{piece}, mirrored",
    "map-piece-mirrored-copies": "{piece}, mirrored ({count}\N{MULTIPLICATION SIGN})",
    "map-right-letter": "R",
    "map-wrong-letter": "W",
    "map-piece-larger": "{piece}, drawn larger",
    # Letters beside the names of edges.
    "map-letter-rows": "b",
    "map-letter-sewn": "s",
    "map-letter-hemmed": "h",
    "map-letter-enclosed": "e",
    "map-letter-finished": "f",
    # The key.
    "map-key-right": "right side up",
    "map-key-wrong": "wrong side up",
    "map-key-active": "sewn or treated in this step",
    "map-key-raw": "as it was cut",
    "map-key-rows": "staystitched, basted or gathered",
    "map-key-sewn": "sewn to another edge",
    "map-key-hemmed": "folded over: hem, casing, pressed under",
    "map-key-enclosed": "enclosed",
    "map-key-finished": "finished, so that it does not ravel",
    "map-key-fold": "fold of the piece or the strip",
    "map-key-slit": "slit, not cut yet",
    "map-one-scale": "One scale for all pieces; sketches stand for what has no shape.",
    "map-one-scale-larger": (
        "One scale for all pieces but those that are drawn larger; sketches stand for what has no"
        " shape."
    ),
    # What lies on the face of a piece.
    "map-places": "Exact places: marks of the pattern.",
    "map-thing-interfacing": "interfacing",
    "map-thing-mark": "mark",
    "map-thing-button": "button",
    "map-thing-hole": "buttonhole",
    "map-thing-notion": "what is sewn on",
    "map-thing-strap": "what is stitched on",
    "map-thing-pocket": "pocket, stitched round",
    "map-thing-tack": "sewn down by hand",
    "map-thing-opening": "mouth: two rows beside the line",
    "map-thing-cut": "slit, cut open",
    "map-thing-slit": "mouth: cut open to the corners",
    # Told to who cannot see the picture.
    "map-told": "{words} So far: {pieces}.",
    "map-told-piece": "{piece} ({side}): {edges}",
    "map-told-raw": "{edge} as cut",
    "map-told-rows": "{edge} with a row of stitches",
    "map-told-sewn": "{edge} sewn",
    "map-told-hemmed": "{edge} folded over",
    "map-told-enclosed": "{edge} enclosed",
    "map-told-fold": "{edge} on the fold",
    "map-told-raw-finished": "{edge} finished",
    "map-told-rows-finished": "{edge} finished, with a row of stitches",
    "map-told-sewn-finished": "{edge} sewn and finished",
    "map-told-hemmed-finished": "{edge} finished and folded over",
    "map-told-enclosed-finished": "{edge} finished and enclosed",
    "map-told-fold-finished": "{edge} on the fold, finished",
    "map-told-active": "{state} in this step",
    "map-told-and": "{one}; {other}",
}
