"""Sentences for pockets, boxed corners, slits and buttonholes."""

from typing import Final

_POCKETS: Final[dict[str, str]] = {
    "step-pocket-mouth-fold": (
        "Fold {edges} to the wrong side twice on the fold lines of your pattern, press, and pin"
        " close to the inner fold."
    ),
    "step-pocket-mouth": (
        "Stitch the fold down along {edges}, {distance} from the inner fold, and backstitch at"
        " the beginning and at the end."
    ),
    "step-pocket-under": (
        "Press {edges} to the wrong side by {allowance}, the lower edge first and then the sides;"
        " cut the corners off at an angle where the layers would lie on one another."
    ),
    "step-pocket-under-unknown": (
        "Press {edges} to the wrong side on the seam line of your pattern, the lower edge first"
        " and then the sides; cut the corners off at an angle where the layers would lie on one"
        " another."
    ),
    "step-pocket-round": (
        "Run a gathering thread round {edges}, lay a piece of card cut to the finished shape on"
        " the wrong side, draw the thread up over it and press the allowance of {allowance} down;"
        " take the card out."
    ),
    "step-pocket-round-unknown": (
        "Run a gathering thread round {edges}, lay a piece of card cut to the finished shape on"
        " the wrong side, draw the thread up over it and press the allowance down; take the card"
        " out."
    ),
    "step-check-pocket-under": "both halves are alike: fold it down the middle to compare them.",
    "step-pocket-place": (
        "Lay {pocket}, right side up, on the right side of the garment at {place}, the upper"
        " corners exactly on the marks, and pin from the middle outwards."
    ),
    "step-pocket-stitch": (
        "Stitch it down {distance} from the folded edges, from one upper corner to the other; the"
        " mouth stays open."
    ),
    "step-pocket-bars": (
        "Secure both upper corners: sew a small triangle, {bar} long, or a short row of close"
        " zigzag, with backstitches at its end; that is where a hand pulls."
    ),
    "step-check-pocket": "the pocket lies flat, and your hand goes in without a pull at the cloth.",
    # In the seam.
    "step-bag-finish": (
        "Finish {edges} on one layer, each by itself, so that they do not fray inside the pocket."
    ),
    "step-bag-lay": (
        "Lay the straight edge of {bag} on {edges}, right sides together, its upper and lower end"
        " {allowance} beyond the pocket marks, the raw edges level, and pin; the bag points away"
        " from the edge, into the garment."
    ),
    "step-bag-lay-unknown": (
        "Lay the straight edge of {bag} on {edges}, right sides together, its upper and lower end a"
        " seam allowance beyond the pocket marks, the raw edges level, and pin; the bag points away"
        " from the edge, into the garment."
    ),
    "step-bag-stitch": (
        "Stitch {row} from the raw edges, that is {less} nearer to them than the seam that comes"
        " later, so that this row will lie hidden; backstitch at both ends."
    ),
    "step-bag-stitch-unknown": (
        "Stitch {less} nearer to the raw edges than the seam line, so that this row will lie"
        " hidden behind the seam that comes later; backstitch at both ends."
    ),
    "step-bag-all": "Sew on all {count} pieces of the bags in this way.",
    "step-bag-press": (
        "Fold {bag} outwards over the seam, away from the garment, and press it and both"
        " allowances flat in that direction."
    ),
    "step-check-bag": "bags that belong together lie at the same height on both sides.",
    "step-round-bag": (
        "At the pocket go round the bag: stitch the seam down to the upper mark, stop with the"
        " needle in the cloth, turn, stitch round the bag {allowance} from its raw edges to the"
        " lower mark, turn again and go on down the seam, so that the mouth stays open."
    ),
    "step-round-bag-unknown": (
        "At the pocket go round the bag: stitch the seam down to the upper mark, stop with the"
        " needle in the cloth, turn, stitch round the bag to the lower mark, turn again and go on"
        " down the seam, so that the mouth stays open."
    ),
    # Welts.
    "step-welt-fold": (
        "Fold {welt} lengthwise along the middle with wrong sides together and press; baste the"
        " long raw edges together."
    ),
    "step-welt-fold-plain": (
        "Fold {bag} with wrong sides together on the fold line of the pattern, press the crease"
        " and open it out again."
    ),
    "step-welt-line": "the line at {place}",
    "step-welt-set": (
        "On the right side of the garment lay the raw edges of {welt}, folded, along the lower"
        " side of {line}, the fold pointing down, and an edge of {bag}, right side down, along its"
        " upper side, so that the raw edges meet on the line; pin."
    ),
    "step-welt-set-plain": (
        "On the right side of the garment lay {bag}, right side down, over {line}, so that the"
        " crease lies on the line, and pin."
    ),
    "step-welt-rows": (
        "Stitch one row on each side of the line, {seam} from it, both exactly from one marked end"
        " of the mouth to the other, with a short stitch and backstitches at all four ends."
    ),
    "step-check-welt-rows": (
        "look at the wrong side: the two rows are parallel and end exactly opposite one another."
    ),
    "step-welt-slash": (
        "From the wrong side cut the garment open along the line between the two rows, not the"
        " welt and not the bag: begin in the middle with the point of small scissors, stop {end}"
        " before either end, and from there cut slantwise into each of the four corners, up to the"
        " last thread before the stitching."
    ),
    "step-check-slash-corner": (
        "each cut ends one thread before the last stitch of its row, and no stitch is cut."
    ),
    "step-welt-turn": (
        "Push {welt} and {bag} through the cut to the wrong side, draw the small triangles at the"
        " ends out straight, let the welt stand up and fill the mouth, and press."
    ),
    "step-welt-turn-plain": (
        "Push {bag} through the cut to the wrong side, draw the small triangles at the ends out"
        " straight, and press."
    ),
    "step-check-welt-turn": "the corners lie flat; if one puckers, cut a thread further into it.",
    "step-welt-bag-plain": (
        "Fold the garment out of the way; lay the two halves of {bag} on one another with right"
        " sides together and stitch round them, {allowance} from the raw edges, with backstitches"
        " at both ends; finish the raw edges."
    ),
    "step-welt-bag-plain-unknown": (
        "Fold the garment out of the way; lay the two halves of {bag} on one another with right"
        " sides together and stitch round them on the seam line of your pattern, with backstitches"
        " at both ends; finish the raw edges."
    ),
    "step-welt-bag": (
        "Fold the garment out of the way and turn {bag} up double, right sides together, so that"
        " its free edge meets the raw edges of the welt; stitch it to the allowances there. Then"
        " close the sides of the bag, {allowance} from the raw edges, with backstitches at both"
        " ends, and finish the raw edges."
    ),
    "step-welt-bag-unknown": (
        "Fold the garment out of the way and turn {bag} up double, right sides together, so that"
        " its free edge meets the raw edges of the welt; stitch it to the allowances there. Then"
        " close the sides of the bag on the seam line of your pattern, with backstitches at both"
        " ends, and finish the raw edges."
    ),
    "step-welt-ends": (
        "At each end of the mouth fold the garment back, so that the small triangle lies on the"
        " ends of the welt and the bag, and stitch across the foot of the triangle several times,"
        " close to the fold."
    ),
    "step-check-welt": "the welt fills the mouth, its corners are square, and no hole shows.",
}

_CORNERS: Final[dict[str, str]] = {
    "step-box": (
        "Reach into {pieces} at the corner and draw the layers apart until it lies flat the other"
        " way, right sides together, with the {one} seam exactly on the {other} seam; feel for"
        " them, and put a pin straight through both."
    ),
    "step-box-cut-out": (
        "Draw the cut-out corner apart the other way, right sides together, so that {edges} lie"
        " level on one another, a seam exactly on a seam; pin."
    ),
    "step-box-row": (
        "Measure {half} from the tip along the seam and draw a line across, at right angles to it:"
        " it is {width} long. Stitch along it and backstitch at both ends."
    ),
    "step-box-row-plain": (
        "Draw a line across the corner where the pattern shows it, at right angles to the seam;"
        " stitch along it and backstitch at both ends."
    ),
    "step-box-row-cut-out": (
        "Stitch straight across, {allowance} from the raw edges, and backstitch at both ends."
    ),
    "step-box-trim": (
        "Cut the tip off {width} beyond the stitching, and finish the two raw edges together."
    ),
    "step-box-trim-plain": (
        "Cut the tip off {width} beyond the stitching; its raw edges stay as they are, like those"
        " of the seams."
    ),
    "step-box-all": "Sew every corner of this kind alike.",
    "step-check-box": "corners that belong together are equally wide, and the bottom lies flat.",
    # Slits.
    "step-slash": (
        "Cut {edges} open with small sharp scissors: along the marked line, from the edge of the"
        " piece towards the end of the slit; the last two or three threads with the very points,"
        " and not a thread further: a cut that is too long cannot be mended."
    ),
    "step-slash-long": (
        "Cut {edges} open with small sharp scissors: along the marked line, from the edge of the"
        " piece, {length} long; the last two or three threads with the very points, and not a"
        " thread further: a cut that is too long cannot be mended."
    ),
    "step-slash-tower": (
        "With small sharp scissors cut {edges} open along the marked line, from the edge of the"
        " piece, but stop {seam} before the marked end. From there cut slantwise to both corners"
        " of the placket, {seam} to the left and to the right of the marked end, so that a small"
        " triangle remains; not a thread further."
    ),
    "step-slash-one-by-one": "Cut one piece at a time.",
    "step-check-slash": "the cut ends at the mark, and no thread beyond it is cut.",
    "step-check-slash-all": (
        "each cut ends at the mark, no thread beyond it is cut, and the copies are equally long."
    ),
    # Buttonholes.
    "step-buttonhole-try": (
        "First sew one on a scrap of as many layers, with interfacing where there is any, as long"
        " as the button is wide and thick; cut it open, and try whether the button passes"
        " through."
    ),
    "step-buttonhole-at-one": (
        "Mark both ends of the buttonhole with chalk, and sew it at {place}, with the buttonhole"
        " stitch of the machine, the mark in the middle of the row."
    ),
    "step-buttonhole-on-one": (
        "Mark both ends of the buttonhole with chalk on {place}, where the pattern shows it, and"
        " sew it with the buttonhole stitch of the machine, the mark in the middle of the row."
    ),
    "step-buttonhole-again": (
        "Mark both ends of each buttonhole with chalk on {place}, and sew and cut the buttonholes"
        " in the same way as those before: a pin across each end before you cut, and never towards"
        " your hand."
    ),
    "step-buttonhole-again-one": (
        "Mark both ends of the buttonhole with chalk on {place}, and sew and cut it in the same way"
        " as those before: a pin across each end before you cut, and never towards your hand."
    ),
    "step-buttonhole-over": "They belong in the end that lies on top.",
    "step-buttonhole-over-one": "It belongs in the end that lies on top.",
    "step-buttonhole-at": (
        "Mark both ends of each buttonhole with chalk, and sew the buttonholes at {place}, with"
        " the buttonhole stitch of the machine, the mark in the middle of the row."
    ),
    "step-buttonhole-on": (
        "Mark both ends of each buttonhole with chalk on {place}, where the pattern shows it, and"
        " sew the buttonholes with the buttonhole stitch of the machine, the mark in the middle of"
        " the row."
    ),
    "step-buttonhole-number": "There are {count} of them.",
    "step-buttonhole-number-each": "There are {count} of them, {each} on each piece.",
    "step-buttonhole-number-all": "Here and on the other pieces there are {count} of them in all.",
    "step-buttonhole-open-one": (
        "Put a pin across each end of the buttonhole, just inside the bar, and cut it open with the"
        " seam ripper, from each end towards the middle, never towards your hand."
    ),
    "step-buttonhole-open": (
        "Put a pin across each end of a buttonhole, just inside the bar, and cut it open with the"
        " seam ripper, from each end towards the middle, never towards your hand."
    ),
    "step-bound-try": (
        "Make one on a scrap first, with the same interfacing, and try whether the button passes"
        " through."
    ),
    "step-bound-lips": (
        "Mark the ends of each buttonhole on {place}. Fold two strips of the cloth lengthwise and"
        " stitch them on, right side down, one on each side of the mark, each {lips} wide from fold"
        " to stitching, exactly from end to end; fasten both ends of each row."
    ),
    "step-bound-cut": (
        "Cut between the rows along the mark, only the cloth and not the strips, and into the"
        " corners at each end; draw the strips through to the wrong side and stitch the small"
        " triangles at the ends to them."
    ),
    "step-check-bound": "both lips are equally wide and meet in the middle.",
    "step-bound-press": (
        "Press each buttonhole from the wrong side, its lips closed by a few long stitches."
    ),
    "step-bound-behind": (
        "On the wrong side of {place} put a pin through each end of every buttonhole, slash the"
        " facing between the pins, turn its edges under and sew them by hand to the lips; take the"
        " long stitches out."
    ),
    "step-check-buttonhole": "the button passes through, and no thread of the bars is cut.",
}

SENTENCES: Final[dict[str, str]] = {**_POCKETS, **_CORNERS}
