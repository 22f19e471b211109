"""Sentences of the sheet for a batch: visits to the stations, what goes there and where next."""

from typing import Final

SENTENCES: Final[dict[str, str]] = {
    "batch-about": (
        "This order changes machine, foot and place as seldom as it can. At each visit do"
        " everything that stands there, for all garments of the batch, before you go on to the"
        " next visit; then no machine is set up twice for the same work."
    ),
    "batch-first-one": (
        "Take one garment through the whole sheet first, or at least a sample of every seam: a"
        " mistake found there is made once and not in every garment."
    ),
    "batch-apart": (
        "Keep the garments of a batch apart: tie what belongs to one garment together, with a slip"
        " for size and colour, and count the parts when they come and when they go."
    ),
    "batch-booklet": (
        "Fabric, cutting list, marks and the words of the trade stand in the booklet of this"
        " garment."
    ),
    "batch-garments": "Garments in this batch",
    "batch-sizes": "Sizes, colours",
    "batch-date": "Date",
    "batch-visits": "Visits",
    "batch-changes": "Changes of set-up",
    "batch-changes-proven": "{changes}; no order that can be sewn has fewer: this is proven",
    "batch-changes-bound": "{changes}; not proven, some order may have as few as {bound}",
    "batch-ready-minutes": "Getting ready, in all",
    "batch-minutes": "about {minutes} min",
    "batch-minutes-proven": "{minutes} min in your workroom; no order takes less (proven)",
    "batch-minutes-bound": (
        "{minutes} min in your workroom; not proven, some order may take only {bound} min"
    ),
    "batch-work-minutes": "Work on one garment",
    "batch-work-minutes-some": "at least {minutes} min, of the parts whose minutes are known",
    "batch-given-up": "Good practice that this order cannot keep",
    # The list of visits.
    "batch-at-a-glance": "All visits",
    "batch-col-visit": "Visit",
    "batch-col-setup": "Set-up",
    "batch-col-deeds": "What is done there",
    "batch-part-visits": "Visit by visit",
    # One visit.
    "batch-visit": "Visit {number}: {setup}",
    "batch-machine": "Machine",
    "batch-foot": "Foot",
    "batch-needle": "Needle",
    "batch-thread": "Thread",
    "batch-stitch": "Stitch",
    "batch-get-ready": "Getting ready",
    "batch-work": "Work on one garment here",
    "batch-take": "Take there",
    "batch-col-what": "What",
    "batch-col-from": "Comes from",
    "batch-from-visit": "visit {number}",
    "batch-from-cutting": "cut pieces",
    "batch-from-cloth": "cloth, cut at this visit",
    "batch-from-shelf": "notions",
    "batch-wants": "Done before you begin",
    "batch-wants-line": "{deed} (visit {number})",
    "batch-wants-nothing": "Nothing.",
    "batch-wants-cutting": "Nothing but cutting and marking.",
    "batch-pass": "Where it goes next",
    "batch-col-to": "Goes to",
    "batch-to-visit": "visit {number}, {setup}",
    "batch-to-end": "the end: ready",
    "batch-cautions": "Take care here",
    # Set-ups.
    "setup-foot": "{foot} foot",
    "setup-needle": "{needle} needle",
    "setup-thread": "{thread} thread",
    "setup-needle-lockstitch-light": "about 70/10, for light cloth",
    "setup-needle-lockstitch-medium": "about 80/12, for medium cloth",
    "setup-needle-lockstitch-heavy": "about 90/14, for heavy cloth",
    "setup-needle-lockstitch-knit": "ball point, for knitted cloth",
    "setup-needle-lockstitch-any": "one that suits the cloth",
    "setup-needle-hand": "hand needle, and a thimble",
    "setup-thread-lockstitch": "sewing thread that matches the cloth, above and in the bobbin",
    "setup-thread-lockstitch-baste": "basting thread of another colour",
    "setup-thread-overlocker": "overlocker thread for each needle and looper",
    "setup-thread-coverstitch": "thread for each needle and the looper",
    "setup-thread-hand": "sewing thread that matches the cloth",
    "setup-stitch-straight": "straight, length {stitch}",
    "setup-stitch-staystitch": "for staystitching: length {stitch}",
    "setup-stitch-long": "for basting and gathering: the longest",
    "setup-stitch-topstitch": "for topstitching: length {stitch}",
    "setup-stitch-buttonhole": "buttonhole",
    "setup-stitch-overlocker": "overlock, tried on a scrap",
    "setup-stitch-coverstitch": "coverstitch, tried on a scrap",
}
