"""Sentences: what an editor shows that helps while a garment file is typed."""

from typing import Final

SENTENCES: Final[dict[str, str]] = {
    "editor-title": "A garment for seqplan",
    "editor-about": (
        "The pieces of a garment with their edges, and what is done to them. `seqplan check` says"
        " more about it than an editor can."
    ),
    "editor-operation-title": "an operation",
    "editor-operation": "What it does, and how. It has one verb, such as `sew`, `hem` or `do`.",
    "editor-verb": "expected a verb that says what is done, such as `sew`, `hem` or `do`",
    # Shown where what was typed is of another form.
    "editor-expected-text": "expected some text",
    "editor-expected-number": "expected a whole number from {least} to {most}",
    "editor-expected-yes-no": "expected yes or no",
    "editor-expected-choice": "expected one of {choices}",
    "editor-expected-length": "expected a length such as `1.5 cm` or `5/8 in`",
    "editor-expected-amount": "expected how much with its unit, such as `1.2 m` or `1 3/8 yd`",
    "editor-expected-width": "expected the width of the cloth, such as `150` or `60 in`",
    "editor-expected-picture": "expected the name of a picture file, such as `mark.svg`",
    "editor-expected-coordinate": "expected a length such as `18` or `-1 cm`",
    "editor-expected-shape": "expected a drawing and a path such as `skirt.svg#front`",
    "editor-expected-cut": "expected `fold`, `pair` or a number",
    "editor-expected-mark": "expected one or two letters",
    "editor-expected-name": "expected a name of letters, digits, `-` and `_`, without spaces",
    "editor-expected-edge": "expected an edge such as `front.side`",
    "editor-expected-place": "expected a piece such as `cuff`, or a place: `front.pocket@left`",
    "editor-expected-pieces": "expected a piece such as `cuff`, or pieces such as `cuff + band`",
    "editor-expected-spot": "expected a name such as `pocket`, or `pocket@left` on one side only",
    "editor-expected-hours": "expected a number of hours, such as `24`",
    "editor-expected-marks": "expected an edge such as `side`, or edges such as `side | slot`",
    "editor-expected-run-or-name": "expected an edge such as `front.side`, or a name",
    "editor-expected-operation": "expected an operation such as `hem` or `side-seams/press`",
    "editor-expected-notch": (
        "expected a notch, such as `20 from waist`, `double` or `single middle`"
    ),
    "editor-expected-portion": "expected a length and an edge, such as `10 from waist`",
    "editor-expected-direction": "expected a direction such as `to back` or `open`",
}
