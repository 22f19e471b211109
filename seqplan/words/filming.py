"""Sentences of the list for filming: camera places, shots, samples, chapters."""

from typing import Final

SENTENCES: Final[dict[str, str]] = {
    "film-kind": "Filming list",
    "film-about": (
        "Shots stand in the order of filming: all that one camera place and one set-up of the"
        " machine can show at a time, before either is changed. Filmed in this order, one garment"
        " is enough, and each shot finds it as it must be. The film is cut together again by the"
        " list of chapters at the end."
    ),
    "film-shots": "Shots",
    "film-places": "Camera places",
    "film-moves": "Changes of place or set-up",
    "film-chapters": "Chapters",
    "film-date": "Date",
    "film-camera": "Camera, lens",
    "film-hands": "Whose hands",
    # Camera places.
    "film-part-places": "Where the camera stands",
    "film-col-place": "Camera place",
    "film-col-view": "What it shows",
    "film-col-shots": "Shots",
    "film-view-lockstitch": (
        "Close-up at the needle, a little from the left, so that needle, foot and the raw edges on"
        " the right can be seen; laying and pinning from above, before."
    ),
    "film-view-overlocker": (
        "Close-up at needles and knife, from the front left, so that the edge that goes in can be"
        " seen; the guards stay on."
    ),
    "film-view-coverstitch": "Close-up at the needles, from the front left.",
    "film-view-iron": (
        "From above at a slant, over the board, so that the way in which the allowances are laid"
        " can be seen; far enough from the steam."
    ),
    "film-view-hand": "Close-up over the shoulder of the hand that sews, with the light across.",
    "film-view-table": (
        "Straight from above, the whole part in the picture, the edge of the table level with the"
        " edge of the picture."
    ),
    "film-view-other": "Close-up at the place of work, the hands beside it.",
    "film-views-note": (
        "Show right and wrong side apart: a plain ground, neither as light nor as dark as the"
        " cloth, and thread of another colour where a row must be seen."
    ),
    # Samples.
    "film-part-samples": "Samples, if each place is to be built up only once",
    "film-samples-about": (
        "With more than one garment all shots of a place can be filmed together. For that have"
        " these ready, each as it is after the shot that stands with it."
    ),
    "film-col-sample": "Sample",
    "film-state-cloth": "still cloth",
    "film-state-cut": "cut and marked",
    "film-state-after": "after shot {shot}",
    "film-part-spares": "Shots that cannot be filmed twice",
    "film-spares-about": (
        "Something is cut or glued here for good. Have a second sample ready in the same state, or"
        " film them with two cameras."
    ),
    "film-spare": "Shot {shot}: {deeds}",
    # Shots.
    "film-stand": "Set-up {number}: {place}",
    "film-shot": "Shot {shot}: {deeds}",
    "film-shot-where": "chapter {chapter}, step {step}",
    "film-ready": "Ready before",
    "film-ready-line": "{deed} (shot {shot})",
    "film-ready-nothing": "Nothing.",
    "film-ready-cutting": "Cut and marked, nothing else.",
    "film-unit": "{unit} ({state})",
    "film-shots-range-one": "Shot {shots}",
    "film-shots-range": "Shots {shots}",
    "film-in-picture": "In the picture",
    "film-left": "Left undone",
    "film-left-line": "{deed} (shot {shot})",
    "film-left-nothing": "Nothing: with this shot the step is done.",
    "film-once": "Cannot be filmed twice.",
    # Chapters.
    "film-part-chapters": "Chapters in the order of viewing",
    "film-chapter": "Chapter {number}: {title}",
    "film-col-step": "Step",
    "film-step": "{number}. {heading}",
}
