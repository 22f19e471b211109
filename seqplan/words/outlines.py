"""Sentences: what can be wrong with the shape of a piece, and what would put it right."""

from typing import Final

SENTENCES: Final[dict[str, str]] = {
    "fault-expected-lengths": "expected edges, each with its length, found {found}",
    "fix-expected-lengths": "Write it like `lengths: {{waist: 36, side: 60}}`.",
    "fault-expected-shape": "expected corners, or a path of a drawing, found {found}",
    "fix-expected-shape": (
        "List the corners in the order of the edges, each as `[right, down]`, as in"
        " `[[0, 0], [18, -1], [25, 60], [0, 60]]`; or name a drawing, as in `skirt.svg#front`."
    ),
    "fault-expected-corner": "expected how far right and how far down, found {found}",
    "fix-expected-corner": (
        "Write a corner like `[18, -1]`; what bends the edge to the next one stands after it, like"
        " `{{curve: [[9, 0], [14, -1]]}}`."
    ),
    "fault-unreadable-coordinate": "expected a length, found {found}",
    "fix-unreadable-coordinate": (
        "Write it like `18`, `18.5`, `5/8 in`, or with a minus, like `-1`."
    ),
    "fault-far-corner": "{found} lies more than {limit} m away",
    "fix-far-corner": "Look at the unit: a bare number is in the `units:` of the file.",
    "fault-curve-points": "expected 1, 2, 5 or 8 points in the curve, found {found}",
    "fix-curve-points": (
        "One or two handles bend an edge; for a longer curve come a point that it runs through and"
        " two further handles."
    ),
    "fault-curve-nowhere": "this curve does not lie between two corners",
    "fix-curve-nowhere": (
        "A curve stands after the corner where it begins and before the one where it ends."
    ),
    "fault-corner-twice": "the corner {found} stands twice",
    "fix-corner-twice": "Leave one of them out.",
    "fault-shape-too-long": "expected at most {limit} points in a shape",
    "fix-shape-too-long": "Draw a curve with handles, and not as a row of points.",
    "fault-shape-without-edges": "the piece {piece} has a shape and no edges of its own",
    "fix-shape-without-edges": (
        "List its `edges:`; a piece that is `like:` another has the shape of that one."
    ),
    "fault-shape-corners": "the shape of {piece} has {found} corners, and its edges have {wanted}",
    "fix-shape-corners": (
        "Each edge of the list begins at a corner, and the last one comes back to the first. Where"
        " edges meet at a mark, as in `centre | opening`, the mark may be left out."
    ),
    "fault-shape-corners-fold": (
        "the shape of {piece} has {found} corners, and its edges have {wanted}"
    ),
    "fix-shape-corners-fold": (
        "Begin at the top of the fold and end at its foot: a half with three edges has four"
        " corners. Where edges meet at a mark, the mark may be left out."
    ),
    "fault-shape-mark": "nobody knows where on its side the edge {edge} of {piece} ends",
    "fix-shape-mark": (
        "Say how long it is, as in `lengths: {{opening: 23}}`, or give the mark as a corner."
    ),
    "fault-shape-beyond": "the edges that meet at a mark with {edge} of {piece} are too long",
    "fix-shape-beyond": "Look at `lengths:`: together they are longer than their side.",
    "fault-shape-direction": "the shape of {piece} does not go clockwise",
    "fix-shape-direction": (
        "Lay the piece right side up and follow its edges clockwise; the second number of a corner"
        " says how far down it lies."
    ),
    "fault-shape-fold": "the shape of {piece} does not have its fold at the left",
    "fix-shape-fold": (
        "Describe the right half: it begins at the top of the fold, ends at its foot, straight"
        " below, and nothing of it lies further left."
    ),
    "fault-shape-open": "the path {id} is not closed, and {piece} is not cut on the fold",
    "fix-shape-open": "Close the path in the drawing.",
    "fault-shape-unreadable": "the drawing {file} cannot be read: {why}",
    "fix-shape-unreadable": "Put it beside the garment file, and name it from there.",
    "fault-shape-large": "the drawing {file} is larger than any outline needs",
    "fix-shape-large": "Save the outline in a file of its own, without pictures.",
    "fault-shape-xml": "the drawing {file} is no sound XML: {found}",
    "fix-shape-xml": "Save it again as plain SVG.",
    "fault-shape-entity": "the drawing {file} defines the entity {found}, which is not read",
    "fix-shape-entity": "Save it again as plain SVG.",
    "fault-shape-not-svg": "expected SVG in {file}, found {found}",
    "fix-shape-not-svg": "Save it as plain SVG.",
    "fault-shape-missing": "the drawing {file} has no path called {id}",
    "fix-shape-no-paths": "Give the outline an id in the drawing.",
    "fault-shape-not-path": "expected {id} to be a path in {file}, found {found}",
    "fix-shape-not-path": "Turn it into a path in the drawing.",
    "fault-shape-transform": "{id} is turned or scaled in {file}: {found}",
    "fix-shape-transform": "Ungroup it, or apply the transform to the path.",
    "fault-shape-data-letter": "{id} in {file} has an unknown letter in its path, at {found}",
    "fault-shape-data-number": "{id} in {file} lacks a number in its path, at {found}",
    "fault-shape-data-start": "{id} in {file} is a path without a beginning, at {found}",
    "fault-shape-data-second": "{id} in {file} is more than one path, at {found}",
    "fault-shape-data-long": "{id} in {file} has more curves than any outline, at {found}",
    "fault-shape-data-far": "{id} in {file} leads farther than any outline, at {found}",
    "fix-shape-data": (
        "An outline is one path of the letters M, L, H, V, C, S, Q, T, A and Z; the number says at"
        " which letter of the path it goes wrong."
    ),
}
