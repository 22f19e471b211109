"""What each finding is about, in one sentence; rules and audits have headlines of their own."""

from typing import Final

SENTENCES: Final[dict[str, str]] = {
    "finding-after": "What you asked for with `after:` comes first.",
    "finding-no-order": "Some order holds all that is asked for.",
    "finding-cannot-be-done": "Every operation can be done on the work as it lies.",
    "finding-left-undone": "Nothing is left undone at the end.",
    "finding-unknown-rule": "A waiver names a rule that exists.",
    "finding-cannot-be-waived": "Only what can be sewn the other way is set aside.",
    "finding-unused-waiver": "A waiver sets something aside.",
    "finding-kept-though-waived": "The written order breaks what a waiver sets aside.",
    "finding-edge-wanted": "Where an edge is meant, it is named.",
    "finding-unknown-direction": "Allowances are pressed towards something that is there.",
    "finding-listed-twice": "Nothing stands twice in a list.",
    "finding-options-alike": "The options of a choice differ.",
    "finding-look-alike-names": "Names differ by more than case and accents.",
    "finding-same-mark": "Every station has a mark of its own.",
    "finding-because-of-nothing": "A reason stands beside what it is the reason for.",
    "finding-long-edge-differs": "As many strips meet an edge as it has stretches.",
    "finding-cord-at-neck": "No cord or tie is at the neck or hood of children's clothes.",
    "finding-free-cord-ends": "No cord or tie on children's clothes has long free ends.",
    "finding-small-part": "No small part comes off children's clothes.",
    "finding-after-not-needed": "An `after:` says what the program has not found itself.",
    "finding-free-words": "Operations are told in verbs that the program understands.",
    "finding-measures-disagree": "A measure in two units is the same length in both.",
    "finding-unlike-lengths": "A length that is given in two units is the same in both.",
    "finding-step-not-there": "A text points to steps that are there.",
    "finding-inside-out": "A text says which side of the work is out.",
    "finding-part-not-there": "A text speaks of parts that the garment has.",
    "finding-told-later": "A text names what was told before.",
}
