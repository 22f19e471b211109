"""Sentences for hems and casings, and for what goes through a casing."""

from typing import Final

SENTENCES: Final[dict[str, str]] = {
    "step-turn-up-twice": (
        "Fold {edges} to the wrong side by {first} and press; fold again by {depth}, press, and"
        " pin close to the inner fold."
    ),
    "step-turn-up-twice-ring": (
        "Fold {edges} to the wrong side by {first} all the way round and press; fold again by"
        " {depth}, press, and pin close to the inner fold."
    ),
    "step-turn-up-once": (
        "Fold {edges} to the wrong side by {depth}, press, and pin close to the edge that is"
        " turned up."
    ),
    "step-turn-up-once-ring": (
        "Fold {edges} to the wrong side by {depth} all the way round, press, and pin close to the"
        " edge that is turned up."
    ),
    "step-turn-up-unknown": (
        "Fold {edges} to the wrong side on the fold lines of your pattern, press, and pin close to"
        " the inner edge."
    ),
    "step-turn-up-ease": (
        "Where the raw edge is longer than the cloth that it lies on, as on a flared or rounded"
        " edge, draw it in with a row of long stitches until it lies flat; where it is shorter,"
        " unpick the seams in the fold as far as it needs."
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
    "step-hem-cover": (
        "From the right side stitch along {edges}, {row} from the fold, so that the needle next to"
        " the edge just catches what is turned up and the loops cover it on the wrong side; leave"
        " long threads at both ends, draw them to the wrong side, and knot them."
    ),
    "step-hem-cover-ring": (
        "From the right side stitch along {edges}, {row} from the fold, all the way round, so that"
        " the needle next to the edge just catches what is turned up and the loops cover it on the"
        " wrong side; overlap the beginning by {overlap}, draw the threads to the wrong side, and"
        " knot them."
    ),
    "step-hem-cover-unknown": (
        "From the right side stitch along {edges}, parallel to the fold, so that the needle next to"
        " the edge just catches what is turned up and the loops cover it on the wrong side; leave"
        " long threads at both ends, draw them to the wrong side, and knot them."
    ),
    "step-hem-cover-ring-unknown": (
        "From the right side stitch along {edges}, parallel to the fold, all the way round, so that"
        " the needle next to the edge just catches what is turned up and the loops cover it on the"
        " wrong side; overlap the beginning by {overlap}, draw the threads to the wrong side, and"
        " knot them."
    ),
    "step-hem-hand": (
        "Sew {edges} down by hand with slip stitch, a stitch every {apart}, each taking up only a"
        " thread or two of the outside; fasten the thread at the beginning and at the end."
    ),
    "step-hem-hand-ring": (
        "Sew {edges} down all the way round by hand with slip stitch, a stitch every {apart}, each"
        " taking up only a thread or two of the outside; fasten the thread at the beginning and at"
        " the end."
    ),
    "step-hem-hand-once": (
        "Sew {edges} down by hand with blind stitch, a stitch every {apart}: fold the edge that is"
        " turned up back by {back}, and take up by turns a thread or two of the outside and a"
        " little of the edge; fasten the thread at the beginning and at the end."
    ),
    "step-hem-hand-once-ring": (
        "Sew {edges} down all the way round by hand with blind stitch, a stitch every {apart}: fold"
        " the edge that is turned up back by {back}, and take up by turns a thread or two of the"
        " outside and a little of the edge; fasten the thread at the beginning and at the end."
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
        "Stitch the casing of {edges} from the wrong side, {distance} from the inner fold, all the"
        " way round, and overlap the beginning by {overlap}."
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
    "step-thread-length-size": (
        "Cut the {notion} to the length that the table of sizes gives for your size."
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
        "Lap the ends of the {notion} over one another by {overlap}, flat and without a twist, and"
        " stitch across the overlap several times, as a box with a cross in it."
    ),
    "step-check-ends": "pull hard: the join holds; try the garment on before you close the gap.",
    "step-close-gap": (
        "Let the elastic slip into the channel; hold it flat and stitch the opening of {gap} shut"
        " on the same line, overlapping the stitching at both ends and not catching the elastic."
    ),
    "step-close-casing": (
        "Stitch the opening of the casing shut on the same line, overlapping the stitching at both"
        " ends and catching nothing that lies in the channel."
    ),
    "step-check-casing": "what runs in the channel moves freely.",
    "step-check-gap": "the elastic moves freely, and the fullness is spread evenly.",
}
