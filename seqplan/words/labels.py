"""Sentences: labels."""

from typing import Final

SENTENCES: Final[dict[str, str]] = {
    # The picture of the dependencies.
    "chart-operation": "{entry} · {part}",
    "chart-before": "{before} before {after}",
    "chart-then": ", then ",
    "chart-numbered": "({number}) {because}",
    "chart-lanes-unit": "What comes before what. Each lane is a part in hand.",
    "chart-lanes-station": "What comes before what. Each lane is a station.",
    "chart-key-lines": "Lines",
    "chart-key-reasons": "Reasons, by their numbers",
    "chart-key-must": "must come before",
    "chart-key-should": "should come before",
    "chart-key-prefer": "better before",
    "chart-key-said": "you asked for it",
    "chart-key-chain": "longest chain",
    "chart-key-choice": "one of the two waits, whichever is first",
    "chart-key-fork": "at least one of these holds",
    "chart-key-rows": "one row after the other",
    "chart-done-at": "{operation} ({station})",
    "chart-pieces-and-more": "{pieces} and {count} more",
    "chart-no-piece": "no part in hand",
    "chart-lane-goes-on": "{lane} (continued)",
    "chart-whole-garment": "whole garment",
    "chart-said": "you asked for it",
    "chart-description": (
        "Operations: {operations}. Lanes: {lanes}. Links between one and the next: {links}. The"
        " longest chain: {chain}."
    ),
    # Faults of the layout program; these end the sentence "PROGRAM: ...".
    "chart-paper-of-svg": "An SVG is as large as the graph; leave `--paper` out, or write a PDF.",
    "chart-no-such-program": (
        "there is no such program; leave `--dot` and `SEQPLAN_DOT` out to use the bundled one"
    ),
    "chart-no-program": (
        "the layout program is not there; install it with `pip install graphviz-pure`, or name"
        " another with `--dot` or `{variable}`"
    ),
    "chart-program-too-slow": "it took longer than {seconds} s and was stopped",
    "chart-program-will-not-run": "it cannot be started: {problem}",
    "chart-program-failed": "it drew no picture: {problem}",
}
