"""Sentences of the checker: the written order, leftovers, and what was said twice."""

from typing import Final

SENTENCES: Final[dict[str, str]] = {
    "arc-line": "`{before}` before `{after}`",
    "and-between-arcs": " and ",
    "or-between-bundles": ", or ",
    "check-letter-without-shape": "in the PDF a box stands for {letters}",
    "check-letter-without-shape-fix": "Write it in Latin letters, which the font of the PDF has; or"
    " print the HTML, which takes other letters from the fonts at hand.",
    "check-letter": "{letter} ({number})",
    "check-order": "`{early}` comes before `{late}`",
    "check-order-many": "`{early}` comes before {late}",
    "check-other-place": "`{late}` stands here.",
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
    "check-cannot-be-waived": "`{rule}` cannot be set aside: it is a must",
    "check-cannot-be-waived-why": (
        "The other way is impossible or ruins the cloth, whatever the reason; only good practice,"
        " a should, can be set aside."
    ),
    "check-cannot-be-waived-fix": (
        "Take the waiver out, and change the order, or name another method in the operation."
    ),
    "check-unused-waiver": "nothing to set aside: `{rule}` asks nothing of {at}",
    "check-unused-waiver-anywhere": "nothing to set aside: `{rule}` asks nothing of this garment",
    "check-unused-waiver-fix": "Take the waiver out.",
    "check-unused-waiver-elsewhere": (
        "Take it out, or name other operations: `{rule}` speaks of {names} here."
    ),
    "check-kept-though-waived": "the written order keeps `{rule}`, though you set it aside",
    "check-kept-though-waived-fix": (
        "Take the waiver out, unless other orders than the written one shall be free of the rule."
    ),
    "check-waived": "You set `{rule}` aside at {at}: {because}.",
    "check-waived-everywhere": "You set `{rule}` aside everywhere: {because}.",
    "check-free-words-one": "one operation is told in free words",
    "check-free-words": "{count} operations are told in free words",
    "check-free-words-why": (
        "The program keeps them in order by `after:`, `makes:` and `uses:`, but cannot tell what"
        " they do to the cloth."
    ),
    "check-cord-at-neck": "the cord or tie `{name}` is at the neck or hood, and a child wears it",
    "check-cord-at-neck-source": (
        "It can catch and strangle. EN 14682 (Europe) has no cords at hood or neck for children up"
        " to seven, and no free ends there up to fourteen; CPSC and ASTM F1816 (United States) have"
        " none there in outerwear of sizes 2T to 12."
    ),
    "check-cord-at-neck-fix": (
        "Do without `{name}`: use elastic, or a fastening that lets go when it is pulled."
    ),
    "check-free-cord-ends": "the cord or tie `{name}` has free ends, and a child wears it",
    "check-free-cord-ends-source": (
        "Long ends catch in doors, playground equipment and wheels. EN 14682 (Europe) limits them;"
        " ASTM F1816 (United States) has at most 3 in (7.5 cm) hanging out at waist and hem, no"
        " knots or toggles at the ends, and the cord tacked to its channel."
    ),
    "check-free-cord-ends-fix": (
        "Keep the ends of `{name}` short, tack it in the middle of its channel, or use elastic."
    ),
    "check-small-part": "`{name}` may be small enough to swallow, and a child wears it",
    "check-small-part-zip": "the pull of `{name}` may come off, and a child wears it",
    "check-small-part-source": (
        "What comes off and fits into the cylinder of 16 CFR 1501 (United States; 1.25 in, 32 mm,"
        " wide) can choke a child under three. That text exempts the buttons of clothes; they have"
        " to hold all the same."
    ),
    "check-small-part-fix": (
        "For a small child leave `{name}` out, or fasten it so that a hard pull does not loosen it."
    ),
    "check-caution-rules": (
        "This is a usual caution; the rules of the country where it is worn decide."
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
    "size-unknown": "the garment does not come in size {name}",
    "size-nothing": "It comes in one size only: name no size.",
}
