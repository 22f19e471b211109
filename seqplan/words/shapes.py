"""Sentences about entries that cannot be laid out on the cloth."""

from typing import Final

SENTENCES: Final[dict[str, str]] = {
    "shape-sewn-twice": "`{entry}` sews `{edge}`, which `{other}` has sewn already",
    "shape-sewn-twice-fix": (
        "An edge bears one permanent seam. Name another edge, or split it with `part:` or `|`."
    ),
    "shape-copies-differ": (
        "the two sides of `{entry}` have different numbers of copies at `{edge}`"
    ),
    "shape-copies-differ-fix": (
        "Look at `cut:` of both pieces, or name one side with `@left` or `@right`."
    ),
    "shape-long-edge-differs": (
        "`{entry}` cannot be followed: {long} strips or long edges meet {runs} stretches of edges"
    ),
    "shape-long-edge-differs-fix": (
        "A stretch ends where its edges do not meet in any seam. Cut as many strips as there are"
        " stretches, name the edges in between, or sew the seams that join them."
    ),
    "shape-which-edge-is-set-on": "`{entry}` does not say by which edge `{piece}` is set on",
    "shape-which-edge-is-set-on-fix": (
        "Call that edge `attach`, or write the piece as a `strip:` that begins with it."
    ),
    "shape-nothing-to-join": "`{entry}` names `{edge}` alone, but the garment has only one of it",
    "shape-nothing-to-join-fix": "Say what it is sewn to with `to:`.",
    "shape-odd-copies": "`{entry}` would join the copies of `{edge}` in pairs, but they are odd",
    "shape-odd-copies-fix": "Say what is sewn to what with `to:`.",
    "shape-which-copies": "`{entry}` can be read in more than one way at `{edge}`",
    "shape-which-copies-fix": (
        "Is one copy sewn to the other? Then say so with `to:` and the name of the piece."
    ),
    "shape-part-unclear": "`{edge}` does not meet `{neighbour}` at exactly one end",
    "shape-part-unclear-fix": (
        "Measure the part from an edge that lies next to `{edge}` on one side only."
    ),
    "shape-unknown-part": "`{entry}` has no part called `{part}`",
    "shape-unknown-part-fix": "Its parts are: {parts}.",
}
