"""Sentences: where an operation can stand."""

from typing import Final

SENTENCES: Final[dict[str, str]] = {
    "leeway-title-entries": "{garment}: where each operation can stand, of {places} places",
    "leeway-title-parts": "{garment}: where each single operation can stand, of {places} places",
    "leeway-about-entries": (
        "Each operation is kept together with its parts. `--parts` looks at single ones."
    ),
    "leeway-about-torn": (
        "No order keeps all operations together with their parts, so these are single ones."
    ),
    "leeway-about-each": (
        "Each line is looked at by itself: when one operation moves, others make room for it."
    ),
    "leeway-about-between": (
        "Some reasons leave a choice, so a place in between may be one that no order reaches."
    ),
    "leeway-about-bound": (
        "A `~` marks places that are only bounds: none beyond them can be reached, but how near"
        " to them an order comes was not settled."
    ),
    "leeway-about-late": (
        "Too late: once one of these has been begun. In brackets: it is still possible, but good"
        " practice has it the other way round."
    ),
    "leeway-no-operations": "{garment}: no operations.",
    "leeway-head-name": "operation",
    "leeway-head-written": "stands",
    "leeway-head-span": "can stand",
    "leeway-head-slack": "leeway",
    "leeway-head-must": "by musts alone",
    "leeway-head-late": "too late once begun",
    "leeway-span": "{earliest} to {latest}",
    "leeway-fixed": "{earliest}",
    "leeway-bound": "~{span}",
    "leeway-better": "({names})",
    "leeway-at": "`{name}` stands at place {written} of {places} and can stand at {span}.",
    "leeway-at-fixed": (
        "`{name}` stands at place {written} of {places}, and {span} is the only one it can have."
    ),
    "leeway-at-must": "Without good practice, by musts alone, it could stand at {span}.",
    "leeway-at-all-must": "Good practice takes nothing of that: it is all a matter of musts.",
    "leeway-must-after": "Too early until these are done:",
    "leeway-must-before": "Too late once one of these has been begun:",
    "leeway-should-after": "Possible, but against good practice, until these are done:",
    "leeway-should-before": (
        "Possible, but against good practice, once one of these has been begun:"
    ),
    "leeway-free-after": "Nothing has to be done before it.",
    "leeway-free-before": "It is never too late for it.",
    "leeway-neighbour": "`{name}` ({rule})",
    "leeway-neighbour-choice": "`{name}` (by a choice that only goes this way)",
    "leeway-choices": "It may also go either way round, within these:",
}
