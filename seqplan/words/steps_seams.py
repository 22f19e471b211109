"""Sentences for seams: laying together, stitching, tidying, pressing, turning."""

from typing import Final

SENTENCES: Final[dict[str, str]] = {
    # Laying together.
    "step-lay": (
        "With right sides together, lay {one} on {other}; let the ends and any notches meet, and"
        " pin across the edge."
    ),
    "step-lay-alone": (
        "Lay {pieces} on one another with right sides together; let the ends and any notches meet,"
        " and pin across the {edges} edges."
    ),
    "step-lay-halves": (
        "Lay the left and the right of {pieces} on one another with right sides together; let the"
        " ends and any notches meet, and pin across the {edges} edges."
    ),
    "step-lay-itself-one": (
        "Fold {pieces}, with right sides together, so that its {one} edge lies on its {other}"
        " edge; let the ends and any notches meet, and pin across the edge."
    ),
    "step-lay-itself": (
        "Fold {pieces}, each by itself, with right sides together, so that the {one} edge lies on"
        " the {other} edge of the same piece; let the ends and any notches meet, and pin across"
        " the edge."
    ),
    "step-lay-itself-alone": (
        "Fold {pieces}, with right sides together, so that its {edges} edges lie on one another;"
        " let the ends and any notches meet, and pin across the edge."
    ),
    "step-lay-itself-french-one": (
        "Fold {pieces}, with wrong sides together, so that its {one} edge lies on its {other}"
        " edge; let the ends and any notches meet, and pin across the edge."
    ),
    "step-lay-itself-french": (
        "Fold {pieces}, each by itself, with wrong sides together, so that the {one} edge lies on"
        " the {other} edge of the same piece; let the ends and any notches meet, and pin across"
        " the edge."
    ),
    "step-lay-itself-alone-french": (
        "Fold {pieces}, with wrong sides together, so that its {edges} edges lie on one another;"
        " let the ends and any notches meet, and pin across the edge."
    ),
    "step-lay-french": (
        "With wrong sides together, lay {one} on {other}; let the ends and any notches meet, and"
        " pin across the edge."
    ),
    "step-lay-alone-french": (
        "Lay {pieces} on one another with wrong sides together; let the ends and any notches meet,"
        " and pin across the {edges} edges."
    ),
    "step-lay-halves-french": (
        "Lay the left and the right of {pieces} on one another with wrong sides together; let the"
        " ends and any notches meet, and pin across the {edges} edges."
    ),
    "step-lay-tubes": (
        "The two parts are closed to tubes or bags by now: turn one right side out and slip it"
        " into the other, which is wrong side out, so that right sides face each other; let the"
        " ends and any notches of {edges} meet, and pin."
    ),
    "step-lay-into": (
        "Both parts are closed to tubes or bags by now: turn the part of {inner} right side out and"
        " slip it into the part of {outer}, which is wrong side out, so that right sides face"
        " each other; let the ends and any notches of {edges} meet, and pin."
    ),
    "step-lay-into-turned": (
        "Both parts are closed to tubes or bags by now: slip the part of {inner}, right side out,"
        " into the part of {outer}, which is wrong side out, so that right sides face each"
        " other; let the ends and any notches of {edges} meet, and pin."
    ),
    "step-turn-first": "Turn the part of {pieces} right side out.",
    "step-short-of-fold": (
        "At both ends stop on the seam line of {edges}, and backstitch there: beyond it that edge"
        " of one layer is folded up later."
    ),
    "step-lay-into-french": (
        "Both parts are closed to tubes or bags by now: leave the part of {inner} wrong side out"
        " and slip it into the part of {outer}, which is right side out, so that wrong sides face"
        " each other; let the ends and any notches of {edges} meet, and pin."
    ),
    "step-lay-drawn-out": (
        "Reach in through the gap in the {gap}, take hold of {one} and {other}, and draw them out"
        " through it, right sides together all the way round, each layer on its like;"
        " let the ends and any notches meet, and pin."
    ),
    "step-push-back-in": (
        "Press it while it is drawn out, as the next item says; push it back in through the gap"
        " only then."
    ),
    "step-lay-tubes-french": (
        "The two parts are closed to tubes or bags by now: leave one wrong side out and slip it"
        " into the other, which is right side out, so that wrong sides face each other; let the"
        " ends and any notches of {edges} meet, and pin."
    ),
    "step-lay-over": (
        "Lay the right side of {one} on the wrong side of {other}; let the ends and any notches"
        " meet, and pin across the edge."
    ),
    "step-lay-alone-over": (
        "Lay {pieces} on one another, the right side of one on the wrong side of the other; let"
        " the ends and any notches meet, and pin across the {edges} edges."
    ),
    "step-lay-halves-over": (
        "Lay the left and the right of {pieces} on one another, the right side of one on the wrong"
        " side of the other; let the ends and any notches meet, and pin across the {edges} edges."
    ),
    "step-lay-tubes-over": (
        "The two parts are closed to tubes or bags by now: slip one into the other, both the same"
        " side out, so that the right side of one lies on the wrong side of the other; let the"
        " ends and any notches of {edges} meet, and pin."
    ),
    "step-lap": (
        "Lay the pressed fold of {one} on the right side of {other}, so that the fold lies"
        " {allowance} from the raw edge below it, on the seam line; let the ends and any notches"
        " meet, and pin across the fold."
    ),
    "step-lap-unknown": (
        "Lay the pressed fold of {one} on the right side of {other}, so that the fold lies on the"
        " seam line; let the ends and any notches meet, and pin across the fold."
    ),
    "step-lap-stitch": (
        "From the right side stitch through all layers, {distance} from the fold, and backstitch"
        " at the beginning and at the end."
    ),
    "step-check-lap": "the edge below is caught all the way along; hold it up to the light.",
    # What lies between the layers: it is pinned to the one that stays outside first.
    "step-caught-edge": (
        "Lay {name} on {place}, with right sides together and all raw edges level, and pin: it will"
        " lie between the two layers of this seam."
    ),
    "step-caught-made": (
        "Lay {made}, sewn to one another and turned, on {place}: {name} on the right side of the"
        " cloth, the other layer on top, all raw edges level; pin. Both will lie between the two"
        " layers of this seam."
    ),
    "step-caught-middle": "Let its middle meet the middle of that edge.",
    "step-caught": (
        "Lay {name} on the right side along {place} where the pattern shows it, pointing inwards,"
        " away from the raw edges, its raw ends level with them; pin. It will lie between the two"
        " layers of this seam."
    ),
    "step-caught-end": (
        "Lay {name} on the right side along {place} where the pattern shows it, level with the raw"
        " edges; all the rest points inwards, away from the seam and untwisted. Pin: this will lie"
        " between the two layers of the seam."
    ),
    "step-caught-along": (
        "Lay {name} on the right side all along {place}, the part that will show pointing inwards"
        " and its plain edge level with the raw edges; pin or baste, and stitch with the zip foot"
        " where it is thick. It will lie between the two layers of this seam."
    ),
    "step-caught-stay": (
        "Lay {name} on the right side along the seam line of {place}, from end to end and without"
        " stretching it, so that the row catches it all along; pin."
    ),
    "step-caught-zip": (
        "Lay {name} face down on the right side along {place}, the edge of its tape level with the"
        " raw edges, the teeth pointing inwards and its middle at the middle of the edge; pin. It"
        " will lie between the two layers of this seam: stitch with the zip foot."
    ),
    # With the body out of the way.
    "step-roll-first": (
        "Lay the work flat and roll everything that does not belong to this seam up from the far"
        " end, until it lies well clear of the seam line; bring the inner layer round under the"
        " roll, so that the layers of the seam close round it."
    ),
    "step-wrap-first": (
        "Fold everything that does not belong to this seam together until it lies well clear"
        " of the seam line, and wrap the inner layer round it, so that the layers of the seam"
        " close round it."
    ),
    "step-roll-out": (
        "Draw everything that lies inside through an open end of the seam, and lay the seam smooth."
    ),
    "step-notch-1": "a single one",
    "step-notch-2": "a double one",
    "step-notch-3": "a triple one",
    "step-notch-middle": "{marks} in the middle",
    "step-notch-from": "{marks} {length} from the {edge} edge",
    "step-notch-from-fold": "{marks} {length} from the fold",
    "step-notch-at-seam": "{notch} (it meets a seam there)",
    "step-notch-at-mark": "{notch} (it meets a mark there)",
    "step-notch-at-fold": "{notch} (it meets the middle of the {piece} there)",
    "step-notches-one": "Let the notch of {edges} meet that of the other layer: {notches}.",
    "step-notches": "Let the notches of {edges} meet those of the other layer: {notches}.",
    "step-match-seams": (
        "Where the seam crosses {seams}, put a pin straight through both layers at the stitching,"
        " and let the allowances lie as they were pressed."
    ),
    "step-match-seam": (
        "Where the seam crosses the {seams}, put a pin straight through both layers at the"
        " stitching, and let the allowances lie as they were pressed."
    ),
    "step-caught-zip-second": (
        "In the second seam take the other tape of the zip, and see that it is not twisted."
    ),
    "step-open-zip-first": "Open the zip first, and lay its tapes and their allowances out flat.",
    "step-zip-stays-open": (
        "The zip is open by half: leave it so, and lay its tapes and their allowances out flat."
    ),
    "step-over-zip": (
        "At the zip stitch over the tops of the tapes, above the top stops, right to the raw ends."
    ),
    "step-over-fly": (
        "At the fly stitch over the tops of the tapes, above the top stops, and over the facing and"
        " the shield as they will lie, right to their ends."
    ),
    "step-in-one": ("Sew it in one go, from the one end over {seams} to the other end."),
    "step-turned-at-corner": (
        "At each corner stop with the needle in the cloth, lift the foot, turn the work and go on."
    ),
    "step-turned-along": (
        "It is one row, along the {edges} edges in this order: at each corner stop with the needle"
        " in the cloth, lift the foot, turn the work and go on."
    ),
    # Stitching.
    "step-stitch": (
        "Stitch {allowance} from the raw edges, and backstitch at the beginning and at the end."
    ),
    "step-stitch-chain": (
        "Sew so that the seam lies {allowance} from the raw edges, and let a short chain of thread"
        " run off at both ends; where no other seam will cross an end, draw its chain back under"
        " the stitches with a thick needle."
    ),
    "step-stitch-ring-chain": (
        "Sew all the way round, so that the seam lies {allowance} from the raw edges; overlap the"
        " beginning by {overlap}, lift the foot, and draw the chain of thread back under the"
        " stitches with a thick needle."
    ),
    "step-check-press": "hold it level: no fold lies beside the seam, and nothing shines.",
    "step-check-finish": "the stitch goes round the edge all along, and no fold is caught in it.",
    "step-check-topstitch": "the row is parallel to the edge all along.",
    "step-check-turned-out": "every corner is out, and nothing is caught in the seams.",
    "step-still-open": "Leave {seams} open until this is sewn.",
    "step-stitch-ring": (
        "Stitch all the way round, {allowance} from the raw edges, and overlap the beginning by"
        " {overlap}."
    ),
    "step-stitch-unknown": (
        "Stitch along the seam line of your pattern, and backstitch at the beginning and at the"
        " end."
    ),
    "step-stitch-gap": (
        "Mark a stretch of {gap} with two pins near the middle, where the edge is straight;"
        " stitch {allowance} from the raw edges up to the one pin and on from the other,"
        " backstitch at both pins and at both ends, and leave {gap} open between them."
    ),
    "step-stitch-gap-unknown": (
        "Mark a stretch of {gap} with two pins near the middle, where the edge is straight;"
        " stitch along the seam line of your pattern up to the one pin and on from the other,"
        " backstitch at both pins and at both ends, and leave {gap} open between them."
    ),
    "step-stitch-gap-turn": (
        "Mark a stretch of {gap} with two pins near the middle, where the edge is straight;"
        " stitch {allowance} from the raw edges up to the one pin and on from the other,"
        " backstitch at both pins and at both ends, and leave {gap} open between them: through"
        " this gap it is turned later."
    ),
    "step-stitch-gap-turn-unknown": (
        "Mark a stretch of {gap} with two pins near the middle, where the edge is straight;"
        " stitch along the seam line of your pattern up to the one pin and on from the other,"
        " backstitch at both pins and at both ends, and leave {gap} open between them: through"
        " this gap it is turned later."
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
        "Stitch {allowance} from the raw edges, but stop {length} before the {neighbour} edge, and"
        " backstitch at both ends."
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
        "Begin or end exactly at the mark where the {edge} begins, with a backstitch there: beyond"
        " it the edges stay open."
    ),
    "step-below-zip": (
        "Begin exactly where the stitching of the zip ends, with the loose ends of the tapes held"
        " out of the way, and sew from there to the other end."
    ),
    "step-finger-press": "Crease it with the fingers or a seam roller: no iron on this cloth.",
    "step-keep-clear": "Fold {pieces} out of the way, so that the needle does not catch them.",
    "step-thread": "Use the {thread} thread.",
    "step-needle": "Put in the {needle} needle.",
    "step-stitch-set": "Set the machine to this stitch: {stitch}.",
    "step-twice-sides": "Sew this seam twice, once for each side.",
    "step-seam-times": "Sew {count} such seams in all.",
    "step-other-side": "Do the same on the other side of the garment.",
    "step-the-other": "Do the same with the other one.",
    "step-the-others": "Do the same with the others, {count} in all.",
    "step-check-seam": (
        "both layers are caught all the way along, and nothing else is caught between them."
    ),
    "step-check-seam-all": "all layers are caught all the way along, and nothing else with them.",
    "step-check-seam-part": (
        "both layers are caught wherever the row runs, and nothing else is caught between them."
    ),
    "step-check-crossing": (
        "look at the right side: the seams that meet lie exactly across from one another."
    ),
    # The French seam.
    "step-trim-french": (
        "Trim both allowances of the {seam} to {width}, so that no thread can peep out of the"
        " second row."
    ),
    "step-trim-not-gap": "Leave the allowances of the gap as they are: they are folded in later.",
    "step-trim-corner": "Cut the corners off at an angle, just outside the stitching.",
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
        "With right sides still together, stitch the {seam} a second time, {second} from the fold,"
        " so that the raw edges are shut in; backstitch at the beginning and at the end."
    ),
    "step-enclose-unknown": (
        "With right sides still together, stitch the {seam} a second time on the seam line of your"
        " pattern, so that the raw edges are shut in; backstitch at the beginning and at the end."
    ),
    "step-check-enclosed": (
        "no raw edge or thread shows on the right side; if one does, stitch again a little deeper."
    ),
    # The flat-felled and the lapped seam.
    "step-press-fell": (
        "Press the {seam} flat as it was sewn; then press both allowances to the side on which it"
        " is to be felled (either will do)."
    ),
    "step-trim-fell": (
        "Trim the allowance of the {seam} that lies underneath to {width}; leave the upper one as"
        " wide as it is."
    ),
    "step-fold-fell": (
        "Fold the wide allowance of the {seam} over the trimmed one, so that its raw edge touches"
        " the stitching, press, fold it over once more flat onto the cloth, and pin; the raw edges"
        " are shut in."
    ),
    "step-fell": (
        "Stitch the {seam} down through all layers, {distance} from the fold, and backstitch at"
        " the beginning and at the end."
    ),
    "step-check-fell": "the row is parallel to the seam, and no raw edge looks out on either side.",
    "step-trim-seam": "Trim both allowances of the {seam} to {width}.",
    "step-press-under": "Press {edges} to the wrong side by {allowance}, and keep the fold sharp.",
    "step-press-under-unknown": (
        "Press {edges} to the wrong side on the seam line of your pattern, and keep the fold sharp."
    ),
    "step-press-lap": (
        "Press the {seam} flat, from the wrong side and once more from the right side."
    ),
    # The bound seam.
    "step-some-binding": "a strip of binding",
    "step-bind-together": (
        "Lay {binding}, folded lengthwise, round both allowances of the {seam} together, so that"
        " the raw edges lie in its crease; stitch close to its edge, through all layers, from end"
        " to end."
    ),
    "step-bind-apart": (
        "Lay {binding}, folded lengthwise, round each allowance of the {seam} by itself, so that"
        " the raw edge lies in its crease; stitch close to its edge from end to end, not through"
        " the garment."
    ),
    # The enclosed seam.
    "step-press-enclosed": (
        "Press the {seam} flat as it was sewn; then open the allowances with your fingers and"
        " press them open as far as the point of the iron reaches: it will turn to a sharper edge."
    ),
    "step-turn-enclosed": (
        "Turn {pieces} right side out, push the corners out with something blunt, roll the {seam}"
        " between your fingers until it lies exactly on the edge, and press."
    ),
    "step-turn-enclosed-gap": (
        "Turn {pieces} right side out through the gap, push the corners out with something blunt,"
        " roll the {seam} between your fingers until it lies exactly on the edge, and press; press"
        " the allowances of the gap in, in one line with the seam."
    ),
    "step-check-turned": (
        "corners that belong together are equally sharp, and the seam lies on the edge all along."
    ),
    # The faced seam.
    "step-trim-graded": (
        "Grade the allowances of the {seam}: trim that of {inner} to {narrow} and that of {outer}"
        " to {wide}."
    ),
    "step-trim-graded-plain": (
        "Grade the allowances of the {seam}: trim the one that will lie inside, or underneath, to"
        " {narrow}, the other to {wide}."
    ),
    "step-clip-seam": (
        "Clip the trimmed allowances of the {seam} every {from_width} to {to_width} wherever it"
        " curves: straight snips where the curve is hollow, small notches where it bulges."
    ),
    "step-check-clip": "every snip stops one or two threads before the stitching.",
    "step-press-facing": (
        "Press the {seam} flat as it was sewn; then fold {inner} over the seam, away from the"
        " outside, and press all allowances in that direction, too."
    ),
    "step-press-facing-plain": (
        "Press the {seam} flat as it was sewn; then press all allowances towards the facing."
    ),
    "step-understitch": (
        "Understitch the {seam}: with {inner} opened out and right side up, stitch {distance} from"
        " the seam, through it and all allowances but not the outside; begin and end as close to"
        " the ends as the foot reaches."
    ),
    "step-understitch-plain": (
        "Understitch {edges}: open the facing out right side up, and stitch on it {distance} from"
        " the seam, through the facing and all allowances but not the outside; begin and end as"
        " close to the ends as the foot reaches."
    ),
    "step-turn-out": "Turn it right side out, and push the corners out with something blunt.",
    "step-turn-facing": (
        "Fold {inner} to the inside along the {seam}, roll the seam a thread's width to the inside"
        " so that it does not show, and press from the inside."
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
    "step-finish-past-bags": (
        "At the pocket leave the bag out, whose edges are finished already: finish the allowances"
        " above and below it together, and along the mouth each with that of its bag."
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
        "Finish {edges} on one layer, from end to end, so that they do not fray; trim no more than"
        " loose threads."
    ),
    "step-finish-over": (
        "Finish {edges} in one go, straight over the seams between them, so that they do not fray;"
        " trim no more than loose threads."
    ),
    "step-finish-together-cutting": (
        "Finish the two allowances of the {seam} together as one layer, from end to end; let the"
        " knife take {cuts} off, and no more."
    ),
    "step-finish-edges-cutting": (
        "Finish {edges} on one layer, from end to end, so that they do not fray; let the knife take"
        " {cuts} off, and no more."
    ),
    "step-knife": "Let the knife of the overlocker take {cuts} off, and no more.",
    "step-press-seam-open": (
        "Press the {seam} flat as it was sewn; then open the allowances with your fingers and"
        " press them open from the wrong side."
    ),
    "step-press-bags": (
        "At the pocket press both bags and all allowances towards the front; snip into the back"
        " allowance just above and below the bag, so that it can lie open there."
    ),
    "step-press-bags-along": "At the pocket press both bags in that direction, too.",
    "step-press-seam-to": (
        "Press the {seam} flat as it was sewn; then press both allowances towards the {where},"
        " from the wrong side and once more from the right side."
    ),
    "step-press-seam-away": (
        "Press the {seam} flat as it was sewn; then press both allowances away from the {where},"
        " from the wrong side and once more from the right side."
    ),
    "step-press-caught-away": (
        "Press the {seam} flat as it was sewn; then fold {pieces} away from the {where}, until they"
        " lie on one another with wrong sides together and the allowances between them, and press"
        " along the seam."
    ),
    "step-press-seam-worn-left": (
        "Press the {seam} flat as it was sewn; then press both allowances towards the wearer's"
        " left, from the wrong side and once more from the right side."
    ),
    "step-press-seam-worn-right": (
        "Press the {seam} flat as it was sewn; then press both allowances towards the wearer's"
        " right, from the wrong side and once more from the right side."
    ),
    "step-press-seam-up": (
        "Press the {seam} flat as it was sewn; then press both allowances upwards, from the wrong"
        " side and once more from the right side."
    ),
    "step-press-seam-down": (
        "Press the {seam} flat as it was sewn; then press both allowances downwards, from the"
        " wrong side and once more from the right side."
    ),
    "step-press-seam-pieces": (
        "Press the {seam} flat as it was sewn; then press both allowances towards {pieces}, from"
        " the wrong side and once more from the right side."
    ),
    "step-press-seam-aside": (
        "Press the {seam} flat as it was sewn; then press both allowances to one side (either will"
        " do), from the wrong side and once more from the right side."
    ),
    "step-topstitch-seam": (
        "Topstitch along the {seam} from the right side, {distance} from it, through the"
        " allowances below, with a stitch of {stitch}."
    ),
    "step-topstitch-both": (
        "Topstitch along both sides of the {seam} from the right side, {distance} from it, with a"
        " stitch of {stitch}."
    ),
    "step-topstitch-side": (
        "Topstitch along the {seam} from the right side, on the side of the {side} and {distance}"
        " from the seam, through the allowances below, with a stitch of {stitch}."
    ),
    "step-topstitch-edge": (
        "Topstitch along the edge that the {seam} makes, from the right side and {distance} from"
        " it, with a stitch of {stitch}."
    ),
    "step-topstitch-enclosed": (
        "Let {inner} lie inside {outer}, roll the seam between your fingers until it lies exactly"
        " on the edge, and press or pin it."
    ),
    "step-press-edges": "Press {edges} from the wrong side until they lie flat.",
    "step-press-edges-enclosed": (
        "Roll the seam along {edges} between your fingers until it lies exactly on the edge, and"
        " press it flat from the side of {inner}."
    ),
}
