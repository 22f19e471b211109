"""Sentences: what to undo when something was forgotten or went wrong, and how to go on."""

from typing import Final

SENTENCES: Final[dict[str, str]] = {
    "rescue-done-already": "`{before}` is done already and stays.",
    "rescue-done-wrong": "`{op}` is not right, so it is done again.",
    "rescue-title": "{garment}: forgotten {missed}, with {done} of {count} operations done",
    "rescue-title-wrong": "{garment}: wrong {wrong}, with {done} of {count} operations done",
    "rescue-title-both": (
        "{garment}: forgotten {missed}, wrong {wrong}, with {done} of {count} operations done"
    ),
    "rescue-say-what": (
        "say what was forgotten, with `--missed` and names, or what was not done right, with"
        " `--wrong`"
    ),
    "rescue-implied": "Taken as done, since it comes before what is done: {names}.",
    "rescue-nothing": "Nothing has to be undone: go on with what was forgotten.",
    "rescue-undo": "Undo, the last first ({undone} of the {done} that are done; {kept} stay):",
    "rescue-undo-line": "{entry}: {parts}",
    "rescue-undo-part": "{part} ({how})",
    "rescue-how-unpick": "unpick",
    "rescue-how-press-flat": "press flat",
    "rescue-how-lay-back": "lay back as it was",
    "rescue-how-take-off": "take off or draw out",
    "rescue-how-nothing": "only do again",
    "rescue-how-yours": "your own words: see what it takes",
    "rescue-how-lost": "cannot be undone",
    "rescue-lost": "Lost, because it cannot be undone:",
    "rescue-lost-cut": (
        "`{op}`: the cloth is cut. Go on with the pieces as they are, or cut {pieces} anew."
    ),
    "rescue-lost-fuse": (
        "`{op}`: the interfacing stays where it is glued. Where it is in the way, cut {pieces}"
        " anew."
    ),
    "rescue-lost-slash": (
        "`{op}`: the cut into the cloth stays. Sew again to the same lines, or cut {pieces} anew."
    ),
    "rescue-lost-trim": (
        "`{op}`: the allowance is gone. Sew again exactly along the old line, or cut {pieces} anew."
    ),
    "rescue-lost-grade": (
        "`{op}`: the allowances are cut back. Sew again exactly along the old line, or cut"
        " {pieces} anew."
    ),
    "rescue-lost-clip": (
        "`{op}`: the allowance is cut into. Sew again no further out than the old line, clear of"
        " the ends of the cuts, or cut {pieces} anew."
    ),
    "rescue-lost-buttonhole": (
        "`{op}`: holes that are cut open stay where they are. Do not unpick their edges; where"
        " they are in the way, cut {pieces} anew."
    ),
    "rescue-lost-bind-buttonhole": (
        "`{op}`: the cloth is slashed under the lips. Leave the lips in; where they are in the way,"
        " cut {pieces} anew."
    ),
    "rescue-lost-open-behind": (
        "`{op}`: the facing is cut open behind the buttonholes. Lay it again so that the cuts meet"
        " them, or cut the facing anew."
    ),
    "rescue-lost-shorten": (
        "`{op}`: the teeth are cut off. Where the zip is too short now, set a new one."
    ),
    "rescue-lost-send-out": (
        "`{op}`: what was done to it elsewhere stays. Ask there before you unpick round it."
    ),
    "rescue-knife": (
        "The knife of the overlocker has taken what lay beside the seam: sew again along the same"
        " line."
    ),
    "rescue-care": (
        "A seam ripper is sharp: unpick away from your hands, and mind the cloth beneath. Needle"
        " holes stay in leather, coated and very fine cloth."
    ),
    "rescue-go-on": "Then go on, to the end:",
    "rescue-step": "{entry}: {parts}",
    "rescue-forgotten": "forgotten",
    "rescue-again": "again",
    "rescue-given-up": "Good practice that this goes against, as it would cost more to undo:",
    "rescue-given-up-line": "{because} ({rule})",
    "rescue-more": (
        "`--by-the-book` keeps to good practice as well: it takes {undone} to undo instead of"
        " {least}."
    ),
    "rescue-not-proven": (
        "Not proven to be the least: the search was stopped early. Give it more time with"
        " `--seconds`."
    ),
    "rescue-walked": "Walked through with the work in hand: all of it can be done.",
    "rescue-stuck": "With the work in hand this gets stuck at `{op}`:",
    "rescue-debt": "With the work in hand all of it can be done, but {what}.",
    "rescue-say-done": (
        "say what is done, with `--done` and names, or `--up-to` and the operation that would"
        " have been next"
    ),
    "rescue-both": "{names}: done and forgotten at once",
}
