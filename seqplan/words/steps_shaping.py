"""Sentences for single parts and for pauses."""

from typing import Final

SENTENCES: Final[dict[str, str]] = {
    "step-fuse": (
        "Lay the {fabric} pieces on the wrong side of {pieces} with the adhesive side down (it"
        " feels rough or shines) and fuse them as their maker says: press down, hold, lift, move"
        " on; do not slide. Let them cool flat."
    ),
    "step-fuse-plain": (
        "Lay the interfacing on the wrong side of {pieces} with the adhesive side down (it feels"
        " rough or shines) and fuse it as its maker says: press down, hold, lift, move on; do not"
        " slide. Let it cool flat."
    ),
    "step-fuse-darts": (
        "Where a dart is sewn already, first cut the dart out of the interfacing along its lines,"
        " so that the two cut edges meet at the seam of the dart."
    ),
    "step-fuse-half": (
        "On {pieces} fuse only half of the width, from the edge that is sewn on first up to the"
        " fold line; so cut the interfacing half as wide."
    ),
    "step-check-fuse": "no corner lifts when it is cold; if one does, press again.",
    "step-staystitch": (
        "Staystitch {edges} on one layer, within the seam allowance and {distance} outside the"
        " seam line, with a stitch of {stitch}; sew each half from its outer end towards the"
        " middle."
    ),
    "step-staystitch-at": (
        "Staystitch {edges} on one layer, {from_edge} from the raw edge, that is {distance}"
        " outside the seam line, with a stitch of {stitch}; sew each half from its outer end"
        " towards the middle."
    ),
    "step-check-staystitch": (
        "the edge is as long as on the pattern, neither stretched nor drawn in."
    ),
    "step-dart": (
        "Fold the dart at {edges} right sides together, so that its two lines meet, and pin;"
        " stitch from the wide end to the point, let the last stitches run along the fold, and"
        " knot the thread ends instead of backstitching."
    ),
    "step-every-dart": "Sew every dart that is marked there.",
    "step-check-dart": "darts of a pair are equally long and point the same way.",
    "step-press-dart": (
        "Press each dart at {edges} flat as it was sewn, then press upright darts towards the"
        " centre and level ones downwards, over something round and firm."
    ),
    "step-pleat": (
        "Lay the pleats at {edges} along their marks, in the direction that the pattern shows;"
        " pin, and baste across them within the seam allowance, {distance} from the raw edge."
    ),
    "step-check-pleat": "the edge is as long as the one it is joined to.",
    "step-press-pleat": (
        "Press the pleats at {edges} the way they were laid, from the wrong side, as deep as they"
        " shall lie."
    ),
    "step-gather": (
        "Sew two rows of the longest stitch along {edges}, {first} and {second} from the raw edge,"
        " from the right side and breaking off at seams, and leave long thread ends; draw up the"
        " lower threads, those of the bobbin, until the edge is as long as the one it is joined to,"
        " and spread the gathers evenly."
    ),
    "step-gather-quarters": (
        "First divide {edges} and {other} into four equal parts each, with pins or chalk: as it is"
        " drawn up, mark will meet mark."
    ),
    "step-gather-notches": (
        "As it is drawn up, each notch of {edges} will meet its like on {other}: spread the"
        " fullness between them as the pattern shows it."
    ),
    "step-check-gather": (
        "measured from seam line to seam line, a hemmed end up to its fold, both edges are equally"
        " long, and the gathers are spread evenly."
    ),
    "step-gather-to": (
        "Sew two rows of the longest stitch along {edges}, {first} and {second} from the raw edge,"
        " from the right side and breaking off at seams, and leave long thread ends; draw up the"
        " lower threads, those of the bobbin, until the edge is as long as what it will be sewn to,"
        " {other}, and spread the gathers evenly."
    ),
    "step-baste": (
        "Lay {one} on {other} with right sides together and baste them within the seam allowance"
        " of {allowance}, {distance} outside the seam line, with the longest stitch."
    ),
    "step-baste-unknown": (
        "Lay {one} on {other} with right sides together and baste them within the seam allowance,"
        " {distance} outside the seam line, with the longest stitch."
    ),
    "step-baste-wrong": (
        "Lay {one} on {other} with wrong sides together and baste them within the seam allowance"
        " of {allowance}, {distance} outside the seam line, with the longest stitch."
    ),
    "step-baste-wrong-unknown": (
        "Lay {one} on {other} with wrong sides together and baste them within the seam allowance,"
        " {distance} outside the seam line, with the longest stitch."
    ),
    "step-baste-over": (
        "Lay the right side of {one} on the wrong side of {other} and baste them within the seam"
        " allowance of {allowance}, {distance} outside the seam line, with the longest stitch."
    ),
    "step-baste-over-unknown": (
        "Lay the right side of {one} on the wrong side of {other} and baste them within the seam"
        " allowance, {distance} outside the seam line, with the longest stitch."
    ),
    "step-baste-alone": (
        "Lay {pieces} right sides together and baste {edges} within the seam allowance of"
        " {allowance}, {distance} outside the seam line, with the longest stitch."
    ),
    "step-baste-alone-unknown": (
        "Lay {pieces} right sides together and baste {edges} within the seam allowance, {distance}"
        " outside the seam line, with the longest stitch."
    ),
    "step-unbaste": (
        "Take out the basting along {edges}, cutting every few stitches and drawing the thread"
        " from the other side."
    ),
    "step-trim-edges": (
        "Trim the allowances along {edges} to {width}, and cut outer corners off at an angle,"
        " close to the stitching but not into it."
    ),
    "step-clip-edges": (
        "Clip the allowances along {edges} every {from_width} to {to_width}: straight snips where"
        " the curve is hollow, small notches where it bulges."
    ),
    "step-topstitch": (
        "Topstitch along {edges} from the right side, {distance} from the edge or seam, with a"
        " stitch of {stitch}."
    ),
    "step-grade-edges": (
        "Grade the allowances along {edges}: trim the layer that will lie next to the outside to"
        " {wide}, the one next to the body to {narrow}, so that they do not end in one step."
    ),
    "step-tack-zip": (
        "Turn {edges} under so that the folds lie {clear} clear of the teeth of the {name}, and"
        " slip stitch the folds to its tapes by hand, through the tapes and allowances only."
    ),
    "step-tack-notion": (
        "Fasten {edges} to the {name} by hand with a few small stitches that do not show on the"
        " right side."
    ),
    "step-tack-seam": (
        "Fasten {edges} to the allowances of the {name} by hand with a few small stitches, through"
        " the allowances only, so that nothing shows on the right side."
    ),
    "step-tack-edges": (
        "Fasten {edges} to {other} by hand with a few small stitches, through the inner layers"
        " only, so that nothing shows on the right side."
    ),
    "step-check-tack-zip": "the zip runs past the folds without catching.",
    "step-attach-hook": (
        "By hand, sew the hook to the inside of one of {edges}, at the end beside the opening, and"
        " the eye opposite on the other, so that the two sides just meet; either may bear the"
        " hook. Sew through the inner layers only."
    ),
    "step-attach-hook-over": (
        "By hand, sew the hook to the inside of the end that lies on top, at {edges}, a little"
        " back from its edge, and the eye to the outside of the end underneath, so that both lie"
        " flat when the hook holds. Sew through as few layers as will bear it."
    ),
    "step-button-under": "They belong on the end that lies underneath.",
    "step-button-under-one": "It belongs on the end that lies underneath.",
    "step-attach-button-one": (
        "By hand, sew the button on at {edges}, opposite its buttonhole or where the pattern"
        " marks it, with a short shank so that it does not pull."
    ),
    "step-attach-button": (
        "By hand, sew the buttons on along {edges}, opposite the buttonholes or where the pattern"
        " marks them, each with a short shank so that it does not pull."
    ),
    "step-attach": (
        "By hand, sew the {notion} on at {edges} where the pattern marks it, with small firm"
        " stitches."
    ),
    "step-attach-count": "There are {count} of them.",
    "step-check-attach": "close and open it a few times: it holds, and the edges are level.",
    "step-turn-pieces": (
        "Turn {pieces} right side out, push the corners and curves out with something blunt, and"
        " roll the seams to the edge."
    ),
    "step-fit-at": "Mind {edges} above all: once the next steps have fixed it, it stays so.",
    "step-fit": (
        "Have {pieces} tried on by the person who will wear it, pins away from the skin, and look"
        " whether it closes, hangs straight and allows sitting, bending and reaching; change it now"
        " if it must be changed."
    ),
    "step-inspect": (
        "Look over {pieces} from both sides in good light: no stitch skipped, nothing caught, no"
        " pin or basting thread left."
    ),
}
