"""Sentences about the author's own words."""

from typing import Final

SENTENCES: Final[dict[str, str]] = {
    "check-measures-disagree": "`{imperial}` and `{metric}` are not the same length",
    "check-measures-disagree-fix": (
        "`{imperial}` is {imperial_in_metric}, and `{metric}` is {metric_in_imperial}: mend the one"
        " that is wrong."
    ),
    "check-step-not-there": "there is no step {number}: the file has {count} operations",
    "check-step-not-there-one": "there is no step {number}: the file has one operation",
    "check-step-not-there-fix": (
        "Say what is done there instead of `step {number}`; the numbers change with the order and"
        " with what the reader chooses."
    ),
    "check-inside-out": "`{words}` can be understood in two ways",
    "check-inside-out-fix": (
        "Say how the work lies afterwards: `right side out` or `wrong side out`."
    ),
    "check-part-not-there": "the text speaks of `{words}`, and nothing in the file is called so",
    "check-part-not-there-fix": (
        "Call the part by the name of its piece; if a piece is missing, add it under `pieces:`."
    ),
    "check-told-later": "`{words}` is told only later, in `{entry}`",
    "check-told-later-fix": (
        "Say it in words that the reader knows at this place, or put `{entry}` first."
    ),
}
