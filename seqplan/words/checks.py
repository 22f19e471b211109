"""Sentences of the checker: the written order, leftovers, and what was said twice."""

from typing import Final

SENTENCES: Final[dict[str, str]] = {
    "arc-line": "`{before}` before `{after}`",
    "and-between-arcs": " and ",
    "or-between-bundles": ", or ",
    "check-order": "`{early}` comes before `{late}`",
    "check-order-many": "`{early}` comes before {late}",
    "check-move-down": "Move `{early}` below `{late}`.",
    "check-move-up": "Move `{late}` above `{early}`.",
    "otherwise-crossing-seams-before-hem": (
        "Or say `flat: yes` in `{early}`, and it is sewn flat before `{late}` closes it."
    ),
    "otherwise-casing-in-order": (
        "Or say `flat: yes` in `{early}`, and it is sewn flat before `{late}` closes it."
    ),
    "otherwise-invisible-zip-before-seam-below": (
        "Or say `method: centred`, where the seam below is closed first."
    ),
    "otherwise-centred-zip-after-seam-below": (
        "Or say `method: invisible`, where the seam below is closed last."
    ),
    "check-also": "The same two also break {rules}.",
    "check-no-order": "no order can hold all that is asked of {operations}",
    "check-no-order-fix": "One of these has to give way; the weakest is: {line}.",
    "check-conflict-line": "{line}: {because} ({rule})",
    "check-given-up": "good practice cannot be kept here: {line}",
    "check-given-up-why": (
        "It cannot be had together with the other reasons, and it is the least that can be given"
        " up. `seqplan why` shows what stands against it."
    ),
    "check-after-not-needed": "`after: {before}` is not needed",
    "check-after-not-needed-why": (
        "`{after}` comes after `{before}` for reasons that the program has found itself."
    ),
    "check-unused-piece": "no operation uses the piece `{name}`",
    "check-unused-piece-fix": "Name it in an operation, or take it out of `pieces:`.",
    "check-unused-notion": "no operation uses the notion `{name}`",
    "check-unused-notion-fix": "Insert or attach it, or take it out of `notions:`.",
    "check-unused-fabric": "nothing is cut from the fabric `{name}`, and nothing is fused with it",
    "check-unused-fabric-fix": "Name it with `of:` or `with:`, or take it out of `fabrics:`.",
    "check-raw-edge": "the edge `{name}` is left raw",
    "check-raw-edge-fix": (
        "Sew, finish, hem or face it, or declare it a `selvage:` if it does not ravel."
    ),
    "check-open-part": "a part of the edge `{name}` is left open",
    "check-open-part-fix": "Say in another operation what becomes of the rest of it.",
    "check-no-way-in": "nothing can be drawn through `{name}`: it is sewn shut all round",
    "check-no-way-in-fix": "Leave a `gap:` in `{name}` for `{thread}`.",
    "check-no-way-in-for-cord-fix": (
        "Leave a `gap:` in a seam that `{name}` crosses, or work a buttonhole before it, where"
        " `{thread}` comes out."
    ),
    "check-unknown-rule": "no rule is called `{rule}`",
    "check-unknown-rule-near": "Did you mean {names}?",
    "check-unknown-rule-fix": "`seqplan rules` lists them all.",
    "check-waived": "You set `{rule}` aside at {at}: {because}.",
    "check-waived-everywhere": "You set `{rule}` aside everywhere: {because}.",
    "check-free-word": "one operation is told in free words",
    "check-free-words": "{count} operations are told in free words",
    "check-free-words-why": (
        "The program keeps them in order by `after:`, `makes:` and `uses:`, but cannot tell what"
        " they do to the cloth."
    ),
    "left-out-pieces": "{entry} needs the piece {name}, which {pick} leaves out",
    "left-out-notions": "{entry} needs the notion {name}, which {pick} leaves out",
    "left-out-entries": "{entry} needs the operation {name}, which {pick} leaves out",
    "left-out-results": "{entry} uses {name}, and {pick} leaves out what makes it",
    "left-out-fix": (
        "Say {when} in {entry}, too, or put what concerns {name} into an operation of its own."
    ),
    "pick-unknown-choice": "no choice is called {name}",
    "pick-unknown-option": "{choice} has no option {found}",
    "pick-nothing": "This garment has no choices.",
}
