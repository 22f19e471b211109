"""Sentences: what can be wrong with amounts of cloth, lay plans and picture files."""

from typing import Final

SENTENCES: Final[dict[str, str]] = {
    # Amounts of a fabric.
    "fault-expected-amounts": "expected widths of the cloth, each with how much, found {found}",
    "fix-expected-amounts": (
        "Write it like `amounts: {{150: 1.2 m, 115: 1.9 m}}`, or with sizes, like"
        " `{{150: {{S: 1.2 m, M: 1.3 m}}}}`."
    ),
    "fault-unreadable-width": "expected a width of the cloth, such as `150`, found {found}",
    "fix-unreadable-width": (
        "The width comes first and the sizes below it, like `{{150: {{S: 1.2 m, M: 1.3 m}}}}`."
    ),
    "fault-odd-width": "no cloth is {found} wide",
    "fix-odd-width": "Look at the unit: a bare number is in {units}.",
    "fault-width-twice": "the widths {other} and {width} are the same",
    "fix-width-twice": "Leave one of them out.",
    "fault-amount-without-unit": "expected how much with its unit, found {found}",
    "fix-amount-without-unit": "Write {metres} or {yards}.",
    # Lay plans.
    "fault-expected-plan": "expected a lay plan, found {found}",
    "fix-expected-plan": "Write it like `{{picture: lay-150.svg, fabric: shell, width: 150}}`.",
    # Picture files.
    "fault-image-unreadable": "the picture {file} cannot be read: {why}",
    "fix-image-unreadable": "Put it beside the garment file, and name it from there.",
    "fault-image-large": "the picture {file} is larger than {limit} MB",
    "fix-image-large": "Save it smaller: for paper, 300 dots to the inch are enough.",
    "fault-image-kind": "expected SVG, PNG or JPEG in {file}",
    "fix-image-kind": "Save the picture again as one of these.",
    "fault-image-broken": "the picture {file} is damaged, breaks off or has no size",
    "fix-image-broken": "Save it again.",
    "fault-image-dots": "the picture {file} has {found} dots, more than {dots} million",
    "fix-image-dots": "Save it smaller: for paper, 300 dots to the inch are enough.",
    "fault-image-xml": "the picture {file} is no sound SVG: {found}",
    "fix-image-xml": "Save it again as plain SVG.",
    "fault-image-entity": "the picture {file} defines the entity {found}, which is not read",
    "fix-image-entity": "Save it again as plain SVG.",
    "fault-image-script": "the picture {file} holds a script: {found}",
    "fix-image-script": "Save it as plain SVG without scripts, or as PNG.",
    "fault-image-event": "the picture {file} does something when it is shown: {found}",
    "fix-image-event": "Save it as plain SVG without scripts, or as PNG.",
    "fault-image-moving": "the picture {file} moves, which paper cannot: {found}",
    "fix-image-moving": "Save it as plain SVG without animation, or as PNG.",
    "fault-image-document": "the picture {file} holds more than a drawing: {found}",
    "fix-image-document": "Save it as plain SVG, texts as texts or paths, or as PNG.",
    "fault-image-link": "the picture {file} leads out of itself: {found}",
    "fix-image-link": "Embed what it uses, and take links out; or save it as PNG.",
    "fault-image-repeats": "the picture {file} shows {found} within itself, or far too often",
    "fix-image-repeats": "Draw what repeats only as often as it is seen; or save it as PNG.",
    "fault-image-base": "the picture {file} takes its links from elsewhere: {found}",
    "fix-image-base": "Take `xml:base` out; or save it as PNG.",
}
