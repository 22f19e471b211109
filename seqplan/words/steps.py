"""Sentences of the handouts: what to do, what to buy and cut, what to mind, what words mean.

``step-`` tells an operation, ``caution-`` warns, ``term-`` explains a word of the trade, ``sheet-``
is everything else on a sheet. A place such as ``{edges}`` takes a name, a list of names, a number
or a measure in both systems, never a part of a sentence.
"""

from typing import Final

_NAMES: Final[dict[str, str]] = {
    # How edges, pieces and seams are called.
    "step-list-and": "{most} and {last}",
    "step-list-comma": "{one}, {other}",
    "step-the": "the {name}",
    "step-whole": "the whole garment",
    "step-piece": "the {pieces} piece",
    "step-pieces": "the {pieces} pieces",
    "step-piece-copies": "the {count} {pieces} pieces",
    "step-edge-of": "the {edges} edge of {pieces}",
    "step-edges-of": "the {edges} edges of {pieces}",
    "step-worn-left": "left {name}",
    "step-worn-right": "right {name}",
    "step-seam": "{edges} seam",
    "step-seam-layer": "{seam} of the {layer}",
    "step-seam-between": "seam between {one} and {other}",
    "step-heading-continued": "{title}, continued",
    "step-authors-words": "{words}.",
    "step-stitch-length": "{mm} mm ({per_inch} stitches to the inch)",
}

_SEAMS: Final[dict[str, str]] = {
    # Laying together.
    "step-lay": (
        "With right sides together, lay {one} on {other}; let the ends and any notches meet, and"
        " pin across the edge."
    ),
    "step-lay-alone": (
        "Lay {pieces} on one another with right sides together; let the ends and any notches"
        " meet, and pin across the {edges} edges."
    ),
    "step-lay-halves": (
        "Lay the left and the right of {pieces} on one another with right sides together; let the"
        " ends and any notches meet, and pin across the {edges} edges."
    ),
    "step-lay-french": (
        "With wrong sides together, lay {one} on {other}; let the ends and any notches meet, and"
        " pin across the edge."
    ),
    "step-lay-alone-french": (
        "Lay {pieces} on one another with wrong sides together; let the ends and any notches"
        " meet, and pin across the {edges} edges."
    ),
    "step-lay-halves-french": (
        "Lay the left and the right of {pieces} on one another with wrong sides together; let the"
        " ends and any notches meet, and pin across the {edges} edges."
    ),
    "step-lay-tubes": (
        "The two parts are tubes by now: turn one right side out and slip it into the other,"
        " which stays wrong side out, so that right sides face each other; let the ends and any"
        " notches of {edges} meet, and pin."
    ),
    "step-lay-tubes-french": (
        "The two parts are tubes by now: leave one wrong side out and slip it into the other,"
        " which is right side out, so that wrong sides face each other; let the ends and any"
        " notches of {edges} meet, and pin."
    ),
    "step-match-seams": (
        "Where the seam crosses {seams}, put a pin straight through both layers at the stitching,"
        " and let the allowances lie as they were pressed."
    ),
    "step-match-seam": (
        "Where the seam crosses the {seams}, put a pin straight through both layers at the"
        " stitching, and let the allowances lie as they were pressed."
    ),
    "step-open-zip-first": "Open the zip first, and lay its tapes and their allowances out flat.",
    "step-over-zip": (
        "At the zip stitch over the tops of the tapes, above the top stops, right to the raw ends."
    ),
    "step-turned-at-corner": (
        "At each corner stop with the needle in the cloth, lift the foot, turn the work and go on."
    ),
    # Stitching.
    "step-stitch": (
        "Stitch {allowance} from the raw edges, and backstitch at the beginning and at the end."
    ),
    "step-stitch-ring": (
        "Stitch all the way round, {allowance} from the raw edges, and overlap the beginning by"
        " {overlap}."
    ),
    "step-stitch-unknown": (
        "Stitch along the seam line of your pattern, and backstitch at the beginning and at the"
        " end."
    ),
    "step-stitch-french": (
        "Stitch a first row only {first} from the raw edges, and backstitch at the beginning and"
        " at the end; with the second row, {second} from the fold, the seam takes up its whole"
        " allowance of {allowance}."
    ),
    "step-stitch-french-unknown": (
        "Stitch a first row in the middle of the seam allowance, and backstitch at the beginning"
        " and at the end; a second row will enclose it."
    ),
    "step-stitch-part": (
        "Stitch only the {length} next to the {neighbour} edge, {allowance} from the raw edges,"
        " and backstitch at both ends."
    ),
    "step-stitch-stop": (
        "Stitch {allowance} from the raw edges, but stop {length} before the {neighbour} edge,"
        " and backstitch at both ends."
    ),
    "step-stitch-part-unknown": (
        "Stitch only the {length} next to the {neighbour} edge, on the seam line of your pattern,"
        " and backstitch at both ends."
    ),
    "step-stitch-stop-unknown": (
        "Stitch on the seam line of your pattern, but stop {length} before the {neighbour} edge,"
        " and backstitch at both ends."
    ),
    "step-at-mark": (
        "Begin and end exactly at the mark where the {edge} begins: beyond it the edges stay open."
    ),
    "step-below-zip": (
        "Begin exactly where the stitching of the zip ends, with the loose ends of the tapes held"
        " out of the way, and sew from there to the other end."
    ),
    "step-foot": "Use the {foot} foot.",
    "step-at-station": "Do this here: {station}.",
    "step-twice-sides": "Sew this seam twice, once for each side.",
    "step-seam-times": "Sew {count} such seams in all.",
    "step-other-side": "Do the same on the other side.",
    "step-the-other": "Do the same with the other one.",
    "step-the-others": "Do the same with the others, {count} in all.",
    "step-check-seam": (
        "both layers are caught all the way along, and nothing else is caught between them."
    ),
    "step-check-crossing": (
        "look at the right side: the seams that meet lie exactly across from one another."
    ),
    # The French seam.
    "step-trim-french": (
        "Trim both allowances of the {seam} to {width}, so that no thread can peep out of the"
        " second row."
    ),
    "step-trim-french-corner": "Cut the corners off at an angle, just outside the stitching.",
    "step-clip-french-mark": (
        "At each mark where the {edge} begins, snip straight into both layers for {depth}, to"
        " {short} short of the final seam line, so that the edges beyond it can later be folded"
        " back."
    ),
    "step-press-over": (
        "Press the {seam} to one side; then turn the work so that the right sides are together,"
        " roll the {seam} between your fingers until it lies exactly on the fold, and press."
    ),
    "step-enclose": (
        "With right sides still together, stitch the {seam} a second time, {second} from the"
        " fold, so that the raw edges are shut in; backstitch at the beginning and at the end."
    ),
    "step-enclose-unknown": (
        "With right sides still together, stitch the {seam} a second time on the seam line of"
        " your pattern, so that the raw edges are shut in; backstitch at the beginning and at the"
        " end."
    ),
    "step-check-enclosed": (
        "no raw edge or thread shows on the right side; if one does, stitch again a little deeper."
    ),
    # The faced seam.
    "step-trim-graded": (
        "Grade the allowances of the {seam}: trim that of {inner} to {narrow} and that of {outer}"
        " to {wide}."
    ),
    "step-trim-graded-plain": (
        "Grade the allowances of the {seam}: trim the one that will lie next to the body to"
        " {narrow}, the other to {wide}."
    ),
    "step-clip-seam": (
        "Clip the trimmed allowances of the {seam} every {from_width} to {to_width} wherever it"
        " curves: straight snips where the curve is hollow, small notches where it bulges."
    ),
    "step-check-clip": "every snip stops one or two threads before the stitching.",
    "step-press-facing": (
        "Press the {seam} flat as it was sewn; then fold {inner} up and away, and press all"
        " allowances the same way."
    ),
    "step-press-facing-plain": (
        "Press the {seam} flat as it was sewn; then press all allowances towards the facing."
    ),
    "step-understitch": (
        "Understitch the {seam}: with {inner} opened out and right side up, stitch {distance}"
        " from the seam, through it and all allowances but not the outside; begin and end as"
        " close to the ends as the foot reaches."
    ),
    "step-understitch-plain": (
        "Understitch {edges}: open the facing out right side up, and stitch on it {distance} from"
        " the seam, through the facing and all allowances but not the outside; begin and end as"
        " close to the ends as the foot reaches."
    ),
    "step-turn-facing": (
        "Fold {inner} to the inside along the {seam}, roll the seam a thread's width to the"
        " inside so that it does not show, and press from the inside."
    ),
    "step-turn-facing-plain": (
        "Fold the facing to the inside along the {seam}, roll the seam a thread's width to the"
        " inside so that it does not show, and press from the inside."
    ),
    # Finishing and pressing seams.
    "step-finish-together": (
        "Finish the two allowances of the {seam} together as one layer, from end to end, trimming"
        " no more than loose threads."
    ),
    "step-finish-apart": (
        "Before they are joined, finish {edges} on one layer, each by itself, from end to end, so"
        " that they do not fray."
    ),
    "step-finish-apart-after": (
        "Finish the two allowances of the {seam} each by itself, from end to end, so that they do"
        " not fray."
    ),
    "step-finish-edges": (
        "Finish {edges} on one layer, from end to end, so that they do not fray; trim no more"
        " than loose threads."
    ),
    "step-finish-over": (
        "Finish {edges} in one go, straight over the seams between them, so that they do not"
        " fray; trim no more than loose threads."
    ),
    "step-press-seam-open": (
        "Press the {seam} flat as it was sewn; then open the allowances with your fingers and"
        " press them open from the wrong side."
    ),
    "step-press-seam-to": (
        "Press the {seam} flat as it was sewn; then press both allowances towards the {where},"
        " from the wrong side and once more from the right side."
    ),
    "step-press-seam-worn": (
        "Press the {seam} flat as it was sewn; then press both allowances towards the wearer's"
        " {where}, from the wrong side and once more from the right side."
    ),
    "step-press-seam-up": (
        "Press the {seam} flat as it was sewn; then press both allowances upwards, from the wrong"
        " side and once more from the right side."
    ),
    "step-press-seam-down": (
        "Press the {seam} flat as it was sewn; then press both allowances downwards, from the"
        " wrong side and once more from the right side."
    ),
    "step-press-seam-aside": (
        "Press the {seam} flat as it was sewn; then press both allowances to one side, from the"
        " wrong side and once more from the right side."
    ),
    "step-press-edges": "Press {edges} from the wrong side until they lie flat.",
}

_FOLDS: Final[dict[str, str]] = {
    "step-turn-up-twice": (
        "Fold {edges} to the wrong side by {first} and press; fold again by {depth}, press, and"
        " pin close to the inner fold."
    ),
    "step-turn-up-twice-ring": (
        "Fold {edges} to the wrong side by {first} all the way round and press; fold again by"
        " {depth}, press, and pin close to the inner fold."
    ),
    "step-turn-up-once": (
        "Fold {edges} to the wrong side by {depth}, press, and pin close to the finished edge."
    ),
    "step-turn-up-once-ring": (
        "Fold {edges} to the wrong side by {depth} all the way round, press, and pin close to the"
        " finished edge."
    ),
    "step-turn-up-unknown": (
        "Fold {edges} to the wrong side on the fold lines of your pattern, press, and pin close"
        " to the inner edge."
    ),
    "step-check-turn-up": "measure as you fold: the depth is the same everywhere.",
    "step-check-turn-up-ring": (
        "measure as you fold: the depth is the same all round, and the seams in it meet."
    ),
    "step-hem-machine": (
        "Stitch {edges} down from the wrong side, {distance} from the inner edge, and backstitch"
        " at the beginning and at the end."
    ),
    "step-hem-machine-ring": (
        "Stitch {edges} down from the wrong side, {distance} from the inner edge, all the way"
        " round, and overlap the beginning by {overlap}."
    ),
    "step-hem-hand": (
        "Sew {edges} down by hand with slip stitch, a stitch every {apart}, each taking up only a"
        " thread or two of the outside; fasten the thread at the beginning and at the end."
    ),
    "step-hem-hand-ring": (
        "Sew {edges} down all the way round by hand with slip stitch, a stitch every {apart},"
        " each taking up only a thread or two of the outside; fasten the thread at the beginning"
        " and at the end."
    ),
    "step-check-hem": "the hem is level, and on the right side it lies without pulling.",
    "step-press-hem": (
        "Press the sewn fold along {edges} from the wrong side, lifting the iron, not sliding."
    ),
    "step-case": (
        "Stitch the casing of {edges} from the wrong side, {distance} from the inner fold, and"
        " backstitch at the beginning and at the end; leave both ends open for threading."
    ),
    "step-case-ring": (
        "Stitch the casing of {edges} from the wrong side, {distance} from the inner fold, all"
        " the way round, and overlap the beginning by {overlap}."
    ),
    "step-case-gap": (
        "Mark a stretch of {gap} on {edges} with two pins; stitch the casing from the wrong side,"
        " {distance} from the inner fold, from the one pin all the way round to the other,"
        " backstitch at both, and leave {gap} open at the pins."
    ),
    "step-case-gap-at": (
        "Mark a stretch of {gap} on {place} with two pins; stitch the casing of {edges} from the"
        " wrong side, {distance} from the inner fold, from the one pin all the way round to the"
        " other, backstitch at both, and leave {gap} open at the pins."
    ),
    "step-check-case": "the channel is equally wide everywhere and nothing else is caught in it.",
    "step-thread-elastic": (
        "Fix a safety pin to one end of the {notion} and pin the other end beside the opening, so"
        " that it cannot slip in; draw it through the channel of {edges}."
    ),
    "step-thread-length": "Cut the {notion} to {length} before you begin.",
    "step-thread-lengths": "Cut the {notion} into {count} lengths of {length} before you begin.",
    "step-thread-length-note": "Cut the {notion} to {length} before you begin ({note}).",
    "step-check-elastic": "the elastic is not twisted anywhere; feel it all the way round.",
    "step-thread-cord": (
        "Fix a safety pin to one end of the {notion}, draw it through the channel of {edges}, and"
        " even out the ends; tie a firm knot in each end."
    ),
    "step-thread-cord-round": (
        "Fix a safety pin to one end of the {notion}, draw it through one channel and straight"
        " back through the other, so that both ends hang out on the same side; knot the ends"
        " together firmly. The channels run along {edges}."
    ),
    "step-thread-second-cord": (
        "Draw the second one in the same way from the opposite side, so that its ends hang out"
        " there."
    ),
    "step-thread-more-cords": "Draw in all {count} of them.",
    "step-check-cord": "the knots do not slip into the channel, and pulling shuts it evenly.",
    "step-join-ends": (
        "Lap the ends of the {notion} over one another by {overlap}, flat and without a twist,"
        " and stitch across the overlap several times, as a box with a cross in it."
    ),
    "step-check-ends": "pull hard: the join holds; try the garment on before you close the gap.",
    "step-close-gap": (
        "Let the elastic slip into the channel; hold it flat and stitch the opening shut on the"
        " same line, overlapping the stitching at both ends and not catching the elastic."
    ),
    "step-close-gap-width": (
        "Let the elastic slip into the channel; hold it flat and stitch the opening of {gap} shut"
        " on the same line, overlapping the stitching at both ends and not catching the elastic."
    ),
    "step-check-gap": "the elastic moves freely, and the fullness is spread evenly.",
}

_ZIPS: Final[dict[str, str]] = {
    "step-press-coils": (
        "Open the {notion} and, from the wrong side, press its rolled coils flat and away from"
        " the tapes with a barely warm iron: too much heat melts them."
    ),
    "step-zip-mark-sides": (
        "Close the {notion} and hold it behind the opening as it will be worn, with the slider at"
        " the top and towards you; chalk L on the tape on your left and on the cloth beside it, R"
        " on the other tape and the cloth beside that."
    ),
    "step-set-invisible": (
        "Open the {notion} and lay the tape L face down on the right side of the cloth marked L,"
        " along {edges}: the coil on the seam line, {allowance} from the raw edge, the flat of"
        " the tape towards the raw edge, and the top stop {below} below the {upper} seam line."
    ),
    "step-set-invisible-plain": (
        "Open the {notion} and lay the tape L face down on the right side of the cloth marked L,"
        " along {edges}: the coil on the seam line, the flat of the tape towards the raw edge,"
        " and the top stop {below} below the seam line at the top."
    ),
    "step-stitch-invisible": (
        "Pin, and stitch close beside the coil from the top down to the mark where the {opening}"
        " ends; backstitch."
    ),
    "step-set-other-tape": (
        "Without twisting the zip, stitch the tape R to the cloth marked R in the same way."
    ),
    "step-check-invisible": (
        "close the zip: from the right side only the slider shows, and both sides are level at"
        " the top and at the mark."
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
    "step-zip-unbaste": (
        "Take out the basting along {edges}, with a seam ripper and tweezers, cutting every few"
        " stitches."
    ),
    "step-check-zip-runs": "the zip opens and closes freely over its whole length.",
}

_OTHERS: Final[dict[str, str]] = {
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
    "step-check-fuse": "no corner lifts when it is cold; if one does, press again.",
    "step-staystitch": (
        "Staystitch {edges} on one layer, {distance} inside the seam line, towards the raw edge,"
        " with a stitch of {stitch}; sew both halves in the same direction, from the outer end"
        " towards the middle."
    ),
    "step-staystitch-at": (
        "Staystitch {edges} on one layer, {from_edge} from the raw edge, that is {distance}"
        " inside the seam line, with a stitch of {stitch}; sew both halves in the same direction,"
        " from the outer end towards the middle."
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
        "Press the pleats at {edges} from the wrong side, as deep as they shall lie."
    ),
    "step-gather": (
        "Sew two rows of the longest stitch along {edges}, {first} and {second} from the raw"
        " edge, and leave long thread ends; draw up the lower threads until the edge is as long"
        " as the one it is joined to, and spread the gathers evenly."
    ),
    "step-baste": (
        "Lay {one} on {other} with right sides together and baste them within the seam allowance"
        " of {allowance}, {distance} outside the seam line, with the longest stitch."
    ),
    "step-baste-unknown": (
        "Lay {one} on {other} with right sides together and baste them within the seam allowance,"
        " {distance} outside the seam line, with the longest stitch."
    ),
    "step-baste-alone": (
        "Lay {pieces} right sides together and baste {edges} within the seam allowance of"
        " {allowance}, {distance} outside the seam line, with the longest stitch."
    ),
    "step-baste-alone-unknown": (
        "Lay {pieces} right sides together and baste {edges} within the seam allowance,"
        " {distance} outside the seam line, with the longest stitch."
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
    "step-tack-zip": (
        "Turn {edges} under so that the folds lie {clear} clear of the teeth of the {name}, and"
        " slip stitch the folds to its tapes by hand, through the tapes and allowances only."
    ),
    "step-tack-notion": (
        "Fasten {edges} to the {name} by hand with a few small stitches that do not show on the"
        " right side."
    ),
    "step-tack-seam": (
        "Fasten {edges} to the allowances of the {name} by hand with a few small stitches,"
        " through the allowances only, so that nothing shows on the right side."
    ),
    "step-tack-edges": (
        "Fasten {edges} to {other} by hand with a few small stitches, through the inner layers"
        " only, so that nothing shows on the right side."
    ),
    "step-check-tack-zip": "the zip runs past the folds without catching.",
    "step-attach-hook": (
        "By hand, sew the hook to the inside of one of {edges}, at the end beside the opening,"
        " and the eye opposite on the other, so that the two sides just meet; either may bear the"
        " hook. Sew through the inner layers only."
    ),
    "step-attach-button": (
        "By hand, sew the {notion} on along {edges}, opposite the buttonholes or where the"
        " pattern marks them, each with a short shank so that it does not pull."
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
    "step-fit": (
        "Have {pieces} tried on by the person who will wear it, pins away from the skin, and look"
        " whether it closes, hangs straight and allows sitting and lifting the arms; change it"
        " now if it must be changed."
    ),
    "step-inspect": (
        "Look over {pieces} from both sides in good light: no stitch skipped, nothing caught, no"
        " pin or basting thread left."
    ),
}

_TERMS: Final[dict[str, str]] = {
    "term-allowance": (
        "The strip of cloth between the stitching and the raw edge. It stays on the inside."
    ),
    "term-allowance-name": "seam allowance",
    "term-allowance-forms": "allowance|allowances",
    "term-backstitch": (
        "A few stitches backwards and forwards again at the beginning and end of a row, so that"
        " it does not come undone."
    ),
    "term-backstitch-name": "backstitch",
    "term-backstitch-forms": "backstitch|backstitching",
    "term-baste": (
        "To hold layers together for a while with long loose stitches, which are taken out later."
    ),
    "term-baste-name": "baste",
    "term-baste-forms": "baste|basted|basting",
    "term-casing": "A channel made by folding an edge over, for elastic or a cord to run in.",
    "term-casing-name": "casing",
    "term-casing-forms": "casing|casings|channel|channels",
    "term-clip": (
        "To snip into a seam allowance, almost to the stitching, so that a curve can lie flat."
    ),
    "term-clip-name": "clip",
    "term-clip-forms": "clip|clips|snip|snips|clipped",
    "term-dart": "A pointed fold, sewn so that flat cloth takes the shape of the body.",
    "term-dart-name": "dart",
    "term-dart-forms": "dart|darts",
    "term-ease": "To fit a slightly longer edge to a shorter one without a fold showing.",
    "term-ease-name": "ease",
    "term-ease-forms": "ease|eased|easing",
    "term-facing": (
        "A piece with the shape of an edge, sewn on there and folded to the inside to finish it."
    ),
    "term-facing-name": "facing",
    "term-facing-forms": "facing|facings",
    "term-finish": (
        "To stitch over a raw edge so that it does not fray, with an overlocker or with a zigzag"
        " stitch."
    ),
    "term-finish-name": "finish",
    "term-finish-forms": "finish|finished together|neaten",
    "term-french": (
        "A seam sewn twice, first with wrong sides, then with right sides together, so that the"
        " raw edges end up shut inside it."
    ),
    "term-french-name": "French seam",
    "term-french-forms": "first row|French seam|French",
    "term-fuse": "To stick interfacing to cloth by melting its adhesive with the iron.",
    "term-fuse-name": "fuse",
    "term-fuse-forms": "fuse|fused|fusing",
    "term-gather": "To draw an edge together along threads, so that it falls in soft folds.",
    "term-gather-name": "gathers",
    "term-gather-forms": "gather|gathers|gathered",
    "term-grade": (
        "To trim the allowances of one seam to different widths, so that they do not make one"
        " thick step; the one next to the outside stays widest."
    ),
    "term-grade-name": "grade",
    "term-grade-forms": "grade|grading",
    "term-interfacing": "A layer fixed inside a piece to make it firmer.",
    "term-interfacing-name": "interfacing",
    "term-interfacing-forms": "interfacing|fusible",
    "term-mark": (
        "A place that the pattern shows and that you draw or thread on the cloth, on the wrong"
        " side."
    ),
    "term-mark-name": "mark",
    "term-mark-forms": "mark where",
    "term-notch": (
        "A small sign at the edge of a pattern piece; notches that belong together meet. Also a"
        " small wedge cut out of an allowance."
    ),
    "term-notch-name": "notch",
    "term-notch-forms": "notch|notches",
    "term-pleat": "A fold laid in the cloth and held at one edge.",
    "term-pleat-name": "pleat",
    "term-pleat-forms": "pleat|pleats",
    "term-raw-edge": "The cut edge of the cloth, as the scissors left it.",
    "term-raw-edge-name": "raw edge",
    "term-raw-edge-forms": "raw edge|raw edges",
    "term-right-sides": (
        "The right side of cloth is the one meant to be seen, the wrong side the other. Right"
        " sides together: the two right sides touch, and the wrong sides look outwards."
    ),
    "term-right-sides-name": "right sides together",
    "term-right-sides-forms": (
        "right sides together|right sides are together|right sides still together|right sides face"
    ),
    "term-seam-line": (
        "The line that you stitch on; it lies the width of the seam allowance from the raw edge."
    ),
    "term-seam-line-name": "seam line",
    "term-seam-line-forms": "seam line",
    "term-slip-stitch": (
        "A hand stitch that hides: the needle runs inside the fold, comes out, takes up a thread"
        " of the other layer, and goes back into the fold."
    ),
    "term-slip-stitch-name": "slip stitch",
    "term-slip-stitch-forms": "slip stitch",
    "term-staystitch": (
        "A row of short stitches through one layer, just inside the seam line, which keeps a"
        " curved or slanting edge from stretching."
    ),
    "term-staystitch-name": "staystitch",
    "term-staystitch-forms": "staystitch|staystitched|staystitching",
    "term-topstitch": "To stitch on the right side where it shows, beside a seam or an edge.",
    "term-topstitch-name": "topstitch",
    "term-topstitch-forms": "topstitch|topstitched|topstitching",
    "term-understitch": (
        "To sew a facing to the seam allowances close beside the seam, so that it rolls to the"
        " inside and does not show."
    ),
    "term-understitch-name": "understitch",
    "term-understitch-forms": "understitch|understitched|understitching",
    "term-wrong-sides": (
        "The wrong side of cloth is the one that will be inside, the right side the other. Wrong"
        " sides together: the two wrong sides touch, and the right sides look outwards."
    ),
    "term-wrong-sides-name": "wrong sides together",
    "term-wrong-sides-forms": "wrong sides together|wrong sides face",
    "term-zip": (
        "Two tapes bear the teeth or coils; a slider opens and closes them between the top stops"
        " and the bottom stop."
    ),
    "term-zip-name": "parts of a zip",
    "term-zip-forms": "top stop|top stops|bottom stop|coil|coils|slider|tapes",
}

_CAUTIONS: Final[dict[str, str]] = {
    "caution-intro": (
        "These are usual cautions. The rules of your workroom, school or country, and the manuals"
        " of your machines, come first."
    ),
    "caution-lockstitch-title": "Sewing machine",
    "caution-lockstitch": (
        "Switch it off, or take your foot off the pedal, before you thread it or change the"
        " needle or the foot. Keep fingers beside the foot, never in front of the needle. If a"
        " needle breaks, stop and find every piece."
    ),
    "caution-overlocker-title": "Overlocker",
    "caution-overlocker": (
        "A knife moves beside the needles and cuts whatever reaches it: keep fingers, pins and"
        " other layers away, leave the guards on, and switch off before threading."
    ),
    "caution-coverstitch-title": "Coverstitch machine",
    "caution-coverstitch": (
        "It has several needles: keep fingers beside the foot, and switch off before threading."
    ),
    "caution-iron-title": "Iron",
    "caution-iron": (
        "The sole and the steam burn. Set it on its heel or stand, try the heat on a scrap, keep"
        " the cord out of the way, pull the plug when you leave, and air the room when you fuse."
        " Plastic pins and zip coils melt."
    ),
    "caution-hand-title": "Hand needles",
    "caution-hand": "Count needles out and in, keep them in a cushion, and use a thimble.",
    "caution-pins-title": "Pins",
    "caution-pins": (
        "Put pins across the edge, take each out before the needle reaches it, and never hold"
        " them in your mouth."
    ),
    "caution-cutting-title": "Scissors and rotary cutter",
    "caution-cutting": (
        "Pass scissors closed and handles first. Cut away from yourself, close the guard of a"
        " rotary cutter after every cut, and box old blades."
    ),
    "caution-child-title": "Made for a child",
    "caution-child": (
        "Small parts must not come off, and rules differ from country to country: look up those"
        " for children's clothes, and for sleepwear also those on fire, before you give it away"
        " or sell it."
    ),
    "caution-child-cord-title": "Cords on children's clothes",
    "caution-child-cord": (
        "Cords at hood and neck have killed children, and many countries forbid them or limit"
        " their length elsewhere; look up the rules that hold where it will be worn, and leave"
        " the cord out if in doubt."
    ),
    "caution-child-small-title": "Small parts",
    "caution-child-small": (
        "For children under three, sew nothing on that could come off and be swallowed, such as"
        " {parts}; pull hard at each before use."
    ),
    "caution-maybe-child-title": "If a child will use it",
    "caution-maybe-child": (
        "It has a cord. Many countries forbid or limit cords on children's clothes; look up the"
        " rules that hold where it will be used."
    ),
}

_SHEET: Final[dict[str, str]] = {
    # Cover.
    "sheet-kind-booklet": "Sewing booklet",
    "sheet-kind-batch": "Batch sheet",
    "sheet-by": "Design: {author}",
    "sheet-version": "Version {version}",
    "sheet-name-of-maker": "Made by",
    "sheet-date": "Begun on",
    "sheet-size": "Size",
    "sheet-steps-label": "Steps",
    "sheet-operations-label": "Things to tick",
    "sheet-changes-label": "Changes of machine, foot or place",
    # Headings.
    "sheet-needs": "What you need",
    "sheet-cutting": "Cut",
    "sheet-allowances": "Allowances",
    "sheet-marks": "Mark before you take the pattern off",
    "sheet-key": "How to read this sheet",
    "sheet-cautions": "Take care",
    "sheet-steps": "Steps",
    "sheet-checks": "Before you call it done",
    "sheet-glossary": "Words of the trade",
    "sheet-stations": "Where each thing is done",
    "sheet-step-number": "Step {number}",
    "sheet-step-range-one": "Step {first}",
    "sheet-step-range": "Steps {first} to {last}",
    "sheet-check": "Check:",
    "sheet-note": "From the designer:",
    "sheet-new-words": "New words",
    "sheet-picture": "Place for a sketch",
    # Needs.
    "sheet-need-fabric": "Fabric",
    "sheet-need-interfacing": "Interfacing",
    "sheet-need-notions": "Notions, the small things to buy",
    "sheet-need-thread": "Thread and needles",
    "sheet-need-machines": "Machines and feet",
    "sheet-need-tools": "Tools",
    "sheet-fabric": "{name}: {kind}",
    "sheet-fabric-weight": "{name}: {kind}, {weight} weight",
    "sheet-fabric-note": "{fabric}; {note}",
    "sheet-fabric-unnamed": "Cloth for the pieces in the list below",
    "sheet-fabric-amount": (
        "How much depends on your size and on the width of the cloth: lay out all pieces of the"
        " pattern before you buy."
    ),
    "sheet-fabric-wash": "Wash, dry and press what can be washed before you cut it: it may shrink.",
    "sheet-notion": "{count} \N{MULTIPLICATION SIGN} {kind}",
    "sheet-notion-long": "{count} \N{MULTIPLICATION SIGN} {kind}, {length} long",
    "sheet-notion-wide": "{count} \N{MULTIPLICATION SIGN} {kind}, {width} wide",
    "sheet-notion-wide-long": (
        "{count} \N{MULTIPLICATION SIGN} {kind}, {width} wide and {length} long"
    ),
    "sheet-notion-note": "{notion}; {note}",
    "sheet-thread": "Sewing thread that matches the cloth",
    "sheet-thread-overlocker": (
        "Thread for the overlocker, one reel for each of its needles and loopers"
    ),
    "sheet-thread-baste": "Basting thread of another colour",
    "sheet-needle-light": "New machine needles, about 70/10 for light cloth",
    "sheet-needle-medium": "New machine needles, about 80/12 for medium cloth",
    "sheet-needle-heavy": "New machine needles, about 90/14 for heavy cloth",
    "sheet-needle-knit": "New machine needles with ball points, for knitted cloth",
    "sheet-needle-any": "New machine needles that suit the cloth",
    "sheet-machine-lockstitch": "Sewing machine with {feet}",
    "sheet-foot": "{foot} foot",
    "sheet-machine-overlocker": "Overlocker, or a zigzag stitch on the sewing machine",
    "sheet-machine-iron": "Iron and ironing board",
    "sheet-machine-feet": "{machine} with {feet}",
    "sheet-tool-scissors": "Fabric scissors and small scissors for threads",
    "sheet-tool-pins": "Pins with glass or metal heads",
    "sheet-tool-tape": "Tape measure and a short ruler",
    "sheet-tool-chalk": "Tailor's chalk or another marker that comes out, tried on a scrap",
    "sheet-tool-ripper": "Seam ripper",
    "sheet-tool-needle": "Hand needles and a thimble",
    "sheet-tool-safety-pin": "Safety pin or bodkin, a thick blunt needle",
    "sheet-tool-point": (
        "Something blunt and pointed, such as a knitting needle, to push out corners"
    ),
    "sheet-tool-cloth": "Pressing cloth, to put between iron and right side",
    # Cutting.
    "sheet-col-done": "Done",
    "sheet-col-piece": "Piece",
    "sheet-col-cut": "Cut",
    "sheet-col-fabric": "From",
    "sheet-col-edges": "Edges, in their order round the piece",
    "sheet-cut-fold": "1, on the fold",
    "sheet-cut-folds": "{count}, each on the fold",
    "sheet-cut-pair": "2, a mirrored pair",
    "sheet-cut-pairs": "{count}, in mirrored pairs",
    "sheet-cut-one": "1, single layer",
    "sheet-cut-some": "{count}, all alike",
    "sheet-cut-mirrored": "{count}, with the pattern turned over",
    "sheet-layer": "{name}, {layer}",
    "sheet-cut-fused": "Interfacing of the same size, to be fused to {pieces}.",
    "sheet-fabric-none": "as you choose",
    "sheet-interfacing": "interfacing",
    "sheet-no-pieces": "This garment file lists no pieces; cut what your pattern shows.",
    "sheet-cut-first": (
        "Press the cloth. Lay out every piece before you cut the first, each with its grain arrow"
        " parallel to the selvage, the woven border of the cloth."
    ),
    "sheet-fold-means": (
        "On the fold: lay the edge of the pattern that is marked so on the fold of doubled cloth,"
        " and do not cut along it."
    ),
    "sheet-pair-means": (
        "A mirrored pair: cut through two layers with right sides together, or turn the pattern"
        " over for every second one."
    ),
    "sheet-marked": "On {pieces}: the point where {one} and {other} meet, as the pattern shows it.",
    "sheet-marked-invisible": (
        "If the pattern does not show where the {opening} ends: lay the closed {notion} along it,"
        " top stop {below} below the seam line, and mark {short} above its bottom stop."
    ),
    "sheet-marked-centred": (
        "If the pattern does not show where the {opening} ends: lay the closed {notion} along it,"
        " top stop {below} below the seam line, and mark just below its bottom stop."
    ),
    "sheet-marked-names": "On the wrong side of every piece: its name, and which end is up.",
    "sheet-marked-notches": "All notches.",
    "sheet-marked-notches-fold": "All notches, and the middle of every piece cut on the fold.",
    # Allowances.
    "sheet-allowance": "A seam allowance of {allowance} is included unless a step says otherwise.",
    "sheet-allowance-none": (
        "This sheet names no seam allowance: look at your pattern, and add one if it has none."
    ),
    "sheet-allowance-seam": "{edges}: {allowance} for the seam.",
    "sheet-allowance-fold": "{edges}: {whole} for the fold, {first} turned in and then {depth}.",
    "sheet-allowance-fold-once": "{edges}: {depth} for the fold.",
    "sheet-allowance-free": "{edges}: no allowance, because nothing is sewn to them.",
    # How to read.
    "sheet-read-order": (
        "Do the steps in their order. Tick each box when that part is done and checked."
    ),
    "sheet-read-marks": "The letter beside each box says where it is done:",
    "sheet-read-measures": (
        "Every measure is given twice. Keep to centimetres or to inches throughout; the two are"
        " each rounded and not exactly the same."
    ),
    "sheet-read-stitch": (
        "Where nothing else is said: straight stitch, length {stitch}, standard foot. Try stitch"
        " and iron on a scrap of the same cloth first."
    ),
    "sheet-read-pieces": (
        "Edges have the names that stand in the list of pieces. Left and right are those of the"
        " wearer."
    ),
    "sheet-station-lockstitch": "everything that is stitched, unless another place is named",
    "sheet-station-overlocker": "no overlocker? a zigzag stitch along the edge does the same",
    "sheet-station-coverstitch": "hems of knitted cloth; a twin needle comes close",
    "sheet-station-iron": "press down and lift, without sliding; from the wrong side if you can",
    "sheet-station-hand": "needle, thread and thimble",
    "sheet-station-table": "scissors, chalk, pins and a good light",
    # Units and checks.
    "sheet-unit-whole": "The whole garment",
    "sheet-unit-facings": "The facings",
    "sheet-unit-lining": "The lining",
    "sheet-unit-none": "To do",
    "sheet-setup": "{station}",
    "sheet-setup-foot": "{station}, {foot} foot",
    "sheet-done-threads": "All loose threads are cut off, and every row is fastened at both ends.",
    "sheet-done-seams": "Every seam is whole: pulled gently, it shows no gap.",
    "sheet-done-basting": "No pin, basting thread or chalk is left.",
    "sheet-done-closures": "Every closure works, several times: {closures}.",
    "sheet-done-hem": "Hems are level, and nothing is twisted.",
    "sheet-done-turned": "It is turned right side out.",
    "sheet-done-press": "All is pressed once more from the wrong side.",
    "sheet-done-boxes": "Every box on this sheet is ticked.",
}

SENTENCES: Final[dict[str, str]] = {
    **_NAMES,
    **_SEAMS,
    **_FOLDS,
    **_ZIPS,
    **_OTHERS,
    **_TERMS,
    **_CAUTIONS,
    **_SHEET,
}
