"""Sentences of what is printed on a terminal: steps, reasons, rules."""

from typing import Final

SENTENCES: Final[dict[str, str]] = {
    "steps-title-booklet": "{garment}: order for a booklet",
    "steps-title-batch": "{garment}: order with the fewest changes of set-up",
    "steps-title-repair": "{garment}: the written order with the fewest moves",
    "steps-about-booklet": "Unit by unit, near the written order.",
    "steps-about-batch": "All that one set-up can do at a time is done before changing it.",
    "steps-about-repair-none": "The written order holds as it stands.",
    "steps-about-repair-moved": "Moved: {moved}. Everything else keeps its written order.",
    "steps-count-one": (
        "1 step; set-up changes: {changes} (about {minutes} min of getting ready); changes of the"
        " part in hand: {units}"
    ),
    "steps-count": (
        "{count} steps; set-up changes: {changes} (about {minutes} min of getting ready);"
        " changes of the part in hand: {units}"
    ),
    "steps-proven": "No valid order has fewer changes of set-up (proven).",
    "steps-gap": (
        "Not proven: some order may have as few as {bound} changes. Give it more time with"
        " `--seconds`."
    ),
    "steps-price": "In this workroom: {minutes} min of getting ready.",
    "steps-proven-minutes": "No valid order takes fewer of these minutes (proven).",
    "steps-gap-minutes": (
        "Not proven: some order may take as few as {bound} of these minutes. Give it more time with"
        " `--seconds`."
    ),
    "steps-repair-gap": "Not proven to be the fewest moves: the search was stopped early.",
    "steps-given-up": "Good practice given up for this garment: {line} ({rule}).",
    "steps-written-broken": (
        "The written order in {name} does not hold; `seqplan check` says why. What follows comes"
        " from the nearest order that does."
    ),
    "steps-key": "Stations: {stations}.",
    "steps-station": "{mark} {title}",
    "steps-part": "{part} {mark}",
    "whole-garment": "the whole garment",
    "no-piece": "no piece in hand",
    "list-and": "{first} and {last}",
    "list-comma": ", ",
    "why-before": "Before `{name}`:",
    "why-after": "After `{name}`:",
    "why-nothing-before": "Nothing has to come before `{name}`.",
    "why-nothing-after": "Nothing has to wait for `{name}`.",
    "why-line": "`{name}` ({rule}, {strength})",
    "why-long-before": "Earlier still: {names}.",
    "why-long-after": "Later still: {names}.",
    "why-choices": "Either way round, within these:",
    "why-chain": "`{first}` comes before `{second}`:",
    "why-chain-line": "`{before}` before `{after}` ({rule}, {strength})",
    "why-free": "`{first}` and `{second}` are free: no reason puts one before the other.",
    "why-source": "see {place}",
    "rules-title": "The rule book: {count} rules",
    "rules-needs": "Needs: what an operation cannot do without",
    "rules-trade": "Rules of the trade",
    "rules-findings": "What else a check finds",
    "rules-severity": "Told as: {severity}.",
    "rules-strength": "Strength: {strength}.",
    "rules-number": "Trade rule {numbers}.",
    "rules-numbers": "Trade rules {numbers}.",
    "rules-need": "It follows from what the operations make.",
    "check-summary-clean": "{name}: operations {operations}, reasons {reasons}, nothing to mend",
    "check-summary": "{name}: errors {errors}, warnings {warnings}, hints {hints}",
    "check-summary-cautions": (
        "{name}: errors {errors}, warnings {warnings}, cautions {cautions}, hints {hints}"
    ),
    "made-folder": "Wrote to {folder}:",
    "made-check": "check.txt           what the check found",
    "made-booklet-steps": "booklet-steps.txt   the order for a booklet",
    "made-batch-steps": "batch-steps.txt     the order with the fewest changes of set-up",
    "made-graph": "graph.svg           what comes before what, and why",
    "made-booklet": "booklet.html        the booklet, to read on a screen",
    "made-booklet-pdf": "booklet.pdf         the booklet, to print or to send",
    "made-nothing": "No order exists, so only check.txt was written. Mend the errors first.",
    "watching": "Watching {name}; Ctrl-C ends it.",
    "stage-bar": "[{bar}] {stage} {seconds} s",
    "handout-composing": "Composing and drawing ...",
    "handout-writing": "Writing {name} ...",
    "handout-written": "{name}: {kind}",
    "unknown-suffix": "{name} is of no format known here; let it end in one of {suffixes}.",
    "searching": "Searching: best so far {best} changes, at least {bound}",
    "not-found-name": "the garment has no operation `{name}`",
    "not-found-near": "Did you mean {names}?",
    "not-found-finding": "no rule or finding is called `{name}`",
    "not-found-rule": "there is no rule `{name}`",
}
