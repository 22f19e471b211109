"""Sentences for zips, buttons and what else closes or is sewn on."""

from typing import Final

SENTENCES: Final[dict[str, str]] = {
    "step-press-coils": (
        "Open the {notion} and, from the wrong side, press its rolled coils flat and away from the"
        " tapes with a barely warm iron: too much heat melts them."
    ),
    "step-bend-coils": (
        "Open the {notion} and, from the wrong side, bend its rolled coils flat and away from the"
        " tapes with your thumbnails, a little at a time: it bears no iron."
    ),
    "step-zip-mark-sides": (
        "Close the {notion} and hold it behind the opening as it will be worn, with the slider at"
        " the top and towards you; chalk L on the tape on your left and on the cloth beside it, R"
        " on the other tape and the cloth beside that."
    ),
    "step-set-invisible": (
        "Open the {notion} and lay the tape L face down on the right side of the cloth marked L,"
        " along {edges}: the coil on the seam line, {allowance} from the raw edge, the flat of the"
        " tape towards the raw edge, and the top stop {below} below the {upper} seam line."
    ),
    "step-set-invisible-plain": (
        "Open the {notion} and lay the tape L face down on the right side of the cloth marked L,"
        " along {edges}: the coil on the seam line, the flat of the tape towards the raw edge, and"
        " the top stop {below} below the seam line at the top."
    ),
    "step-stitch-invisible": (
        "Pin, and stitch close beside the coil from the top down to the mark where the {opening}"
        " ends; backstitch."
    ),
    "step-set-other-tape": (
        "Without twisting the zip, stitch the tape R to the cloth marked R in the same way."
    ),
    "step-check-invisible": (
        "close the zip: from the right side only the slider shows, and both sides are level at the"
        " top and at the mark."
    ),
    "step-zip-baste": (
        "Lay {edges} right sides together and baste them {allowance} from the raw edges, with the"
        " longest stitch and no backstitching."
    ),
    "step-zip-baste-plain": (
        "Lay {edges} right sides together and baste them along the seam line, with the longest"
        " stitch and no backstitching."
    ),
    "step-zip-press": (
        "Press the basted {opening} open from the wrong side, in one line with the seam below."
    ),
    "step-set-centred": (
        "Close the {notion} and lay it face down on the wrong side of the basted {opening}, the"
        " teeth exactly over the seam line and the top stop {below} below the seam line at the"
        " top; baste the tapes to the allowances."
    ),
    "step-stitch-centred": (
        "From the right side stitch down one side {distance} from the seam line, across below the"
        " bottom stop, and up the other side."
    ),
    "step-set-lapped": (
        "Fold the garment back so that the allowance of the {opening} which will lie underneath"
        " sticks out by itself; lay the closed {notion} face down on it, the teeth close beside"
        " the basted seam line and the top stop {below} below the seam line at the top. Pin, and"
        " stitch the tape down beside the teeth, through tape and allowance only."
    ),
    "step-stitch-lapped-under": (
        "Turn the zip face up, so that the allowance makes a narrow fold beside the teeth, and"
        " stitch along this fold, close to it, through allowance and tape."
    ),
    "step-stitch-lapped-over": (
        "Open the garment out flat, the zip face down over the seam, and pin; from the right side"
        " stitch across below the bottom stop and up the side that lies on top, {distance} from"
        " the seam line, through cloth, allowance and the second tape."
    ),
    "step-on-top-left": "The wearer's left lies on top, the right underneath.",
    "step-on-top-right": "The wearer's right lies on top, the left underneath.",
    "step-on-top-front": "The front lies on top, the back underneath.",
    "step-on-top-back": "The back lies on top, the front underneath.",
    "step-on-top": (
        "Decide which side will lie on top: the one that the pattern shows, else either; chalk a"
        " cross on it, and keep to it."
    ),
    "step-fly-the-facing": "the fly facing",
    "step-fly-the-shield": "the fly shield",
    "step-fly-facing": (
        "On the side that will lie on top lay {facing} on the {opening} edge, right sides"
        " together; stitch {allowance} from the raw edges from the top down to the mark where the"
        " opening ends, and backstitch at both ends; trim to half and clip where it curves."
    ),
    "step-fly-facing-unknown": (
        "On the side that will lie on top lay {facing} on the {opening} edge, right sides"
        " together; stitch on the seam line of your pattern from the top down to the mark where"
        " the opening ends, and backstitch at both ends; trim to half and clip where it curves."
    ),
    "step-fly-press": (
        "Fold {facing} to the inside, roll the {opening} seam a thread's width inwards, and press;"
        " on the side that lies underneath press the edge to the wrong side by only {under}, so"
        " that it reaches {less} under the fly."
    ),
    "step-fly-press-unknown": (
        "Fold {facing} to the inside, roll the {opening} seam a thread's width inwards, and press;"
        " on the side that lies underneath press the edge to the wrong side {less} nearer to the"
        " raw edge than the seam line, so that it reaches under the fly."
    ),
    "step-set-fly-under": (
        "On the side that lies underneath, lay the closed {notion} under the pressed fold of the"
        " {opening} edge, face up, the teeth just clear of it and the top stop {below} below the"
        " seam line at the top; pin and stitch close to the fold."
    ),
    "step-set-fly-over": (
        "Close the fly as it will be worn and pin it; turn the work over, lay the loose tape flat"
        " on {facing}, and stitch it to the facing alone with two rows, not through the front."
    ),
    "step-fly-shield": (
        "Fold {shield} lengthwise with right sides together, stitch across its lower end, turn it"
        " right side out and press it. Lay it under the zip on the side that lies underneath, its"
        " raw edge level with that of the tape; stitch through tape and allowances close to the"
        " first row, the other side of the fly held out of the way."
    ),
    "step-check-fly-shield": "the shield covers the whole zip from inside and is not caught.",
    "step-fly-topstitch": (
        "Fold the shield out of the way; from the right side topstitch the fly along the curved"
        " line of the pattern, through the front and its facing, with a stitch of {stitch}; then"
        " lay the shield back and sew a short bar through all layers at the lower end."
    ),
    "step-check-fly": "open and close it: nothing is caught, and the front lies flat over the zip.",
    "step-stitch-in-seam": (
        "Lay {name} on the right side at {place} where the pattern shows it, the raw ends level"
        " with the raw edge and all the rest pointing inwards; stitch across the ends within the"
        " seam allowance, {distance} outside the seam line, forwards and backwards. The seam that"
        " comes later catches it for good."
    ),
    "step-stitch-piece-in-seam": (
        "Lay {name}, right side down, on the right side at {place} where the pattern shows it, the"
        " raw ends level with the raw edge and all the rest pointing inwards; stitch across the"
        " ends within the seam allowance, {distance} outside the seam line, forwards and backwards."
        " The seam that comes later catches it for good."
    ),
    "step-stitch-free-ends": (
        "Lay the free ends of {pieces} over to {place}, flat and not twisted; turn them under by"
        " {under}, so that the folds lie there, cut off what is too long, and pin. Stitch across"
        " close to each fold, forwards and backwards."
    ),
    "step-stitch-in-seam-wrong": (
        "Lay {name} on the wrong side at {place} where the pattern shows it, the raw ends level"
        " with the raw edge and all the rest pointing inwards; stitch across the ends within the"
        " seam allowance, {distance} outside the seam line, forwards and backwards. The seam that"
        " comes later catches it for good."
    ),
    "step-attach-doubled": "Fold {name} in half across, so that its two short ends meet.",
    "step-one-of": "one of {edges}",
    "step-check-stitch-in-seam": "it is not twisted, and the row lies outside the seam line.",
    "step-stitch-ends-on": (
        "On the right side of the cloth lay the ends of {pieces} at {place}, as far in as the"
        " pattern shows, raw ends turned under, and pin; where a piece is held at both ends, see"
        " that it is not twisted before you pin the second."
    ),
    "step-stitch-ends-on-wrong": (
        "On the wrong side of the cloth lay the ends of {pieces} at {place}, as far in as the"
        " pattern shows, raw ends turned under, and pin; where a piece is held at both ends, see"
        " that it is not twisted before you pin the second."
    ),
    "step-stitch-piece-on": (
        "On the right side of the cloth lay both ends of {pieces} at {place}, as far in as the"
        " pattern shows, raw ends turned under, and pin; see that it is not twisted before you pin"
        " the second end."
    ),
    "step-stitch-piece-on-wrong": (
        "On the wrong side of the cloth lay both ends of {pieces} at {place}, as far in as the"
        " pattern shows, raw ends turned under, and pin; see that it is not twisted before you pin"
        " the second end."
    ),
    "step-stitch-end-on": (
        "On the right side of the cloth lay {end} at {place}, as far in as the pattern shows, the"
        " raw end turned under and all the rest pointing outwards, away from the garment; pin."
    ),
    "step-stitch-end-on-wrong": (
        "On the wrong side of the cloth lay {end} at {place}, as far in as the pattern shows, the"
        " raw end turned under and all the rest pointing outwards, away from the garment; pin."
    ),
    "step-stitch-piece-box": (
        "Stitch each end down as a square with a cross in it, and backstitch where the row ends."
    ),
    "step-stitch-label-on": (
        "Fold the ends of the {notion} under, lay it at {place} where it will be seen or looked"
        " for, and stitch it down {distance} from its edges; choose the bobbin thread to match the"
        " right side."
    ),
    "step-stitch-loop-on": (
        "Lay the {notion} double at {place}, its raw ends turned under, and stitch forwards and"
        " backwards across the ends three times."
    ),
    "step-stitch-trimming-on": (
        "Lay the {notion} along {place} without stretching it, pin, and stitch it down {distance}"
        " from its edges."
    ),
    "step-check-stitch-on": "pull at it: it holds.",
    "step-zip-unbaste": (
        "Take out the basting along {edges}, with a seam ripper and tweezers, cutting every few"
        " stitches."
    ),
    "step-check-zip-runs": "the zip opens and closes freely over its whole length.",
}
