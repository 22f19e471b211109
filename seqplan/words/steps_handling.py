"""Sentences for what moves cloth and sews nothing lasting: cutting, folding, turning, waiting."""

from typing import Final

SENTENCES: Final[dict[str, str]] = {
    "step-pretreat": (
        "Wash, dry and press {fabrics} the way the finished garment will be washed, before"
        " anything is cut: new cloth may shrink."
    ),
    "step-pretreat-plain": (
        "Wash, dry and press the cloth the way the finished garment will be washed, before"
        " anything is cut: new cloth may shrink."
    ),
    "step-check-pretreat": "the cloth is dry, smooth and square before you lay the pattern on it.",
    "step-cut": (
        "Lay out all pieces of the pattern on the pressed cloth, grain arrows parallel to the"
        " selvage, and pin or weigh them down; then cut {pieces} with long strokes, as many of"
        " each as the cutting list says."
    ),
    "step-check-cut": "count the pieces and tick them off in the cutting list.",
    "step-all-pieces": "all pieces",
    "step-mark-piece": "on {pieces} {marks}",
    "step-mark-darts-one": "the dart at the {edge} edge",
    "step-mark-darts": "the {count} darts at the {edge} edge",
    "step-mark-pleats-one": "the pleat at the {edge} edge",
    "step-mark-pleats": "the {count} pleats at the {edge} edge",
    "step-mark-spot": "the {name} mark",
    "step-mark-spot-left": "the {name} mark on the wearer's left",
    "step-mark-spot-right": "the {name} mark on the wearer's right",
    "step-mark-line": "the {name} line",
    "step-mark-notches-one": "the notch of the {edge} edge ({notches})",
    "step-mark-notches": "the notches of the {edge} edge ({notches})",
    "step-mark-slit": "the {name} line with its end",
    "step-mark-point": "the point where {one} and {other} meet",
    "step-mark": (
        "Before you take the pattern off, carry its marks over to {pieces}, on the wrong side,"
        " with chalk or thread."
    ),
    "step-mark-things": (
        "Before you take the pattern off, carry its marks over to {pieces}, on the wrong side,"
        " with chalk or thread: {marks}."
    ),
    "step-check-mark": "each mark is on every copy of the piece, and can still be seen tomorrow.",
    "step-fold": (
        "Fold {edges} to the wrong side on the fold line of the pattern and press a sharp crease;"
        " it shows later where the fold will lie."
    ),
    "step-unfold": "Open the fold along {edges} out flat again, and leave the crease as a guide.",
    "step-nest": (
        "Turn {inner} wrong side out and leave {outer} right side out; slip {inner} into {outer},"
        " so that wrong sides face each other, seams lie on seams and the raw edges are level;"
        " pin."
    ),
    "step-nest-right": (
        "Turn {outer} wrong side out and {inner} right side out; slip {inner} into {outer}, so"
        " that right sides face each other, seams lie on seams and the raw edges are level; pin."
    ),
    "step-nest-plain": (
        "Put the layers of {pieces} into one another, seams on seams and the raw edges level; pin."
    ),
    "step-roll": (
        "Roll {pieces} up tightly from the far end until the roll lies well clear of the seam that"
        " comes next, and hold it with a few pins."
    ),
    "step-roll-through": (
        "Roll {pieces} up tightly from the far end until the roll lies well clear of the seam that"
        " comes next, and hold it with a few pins; later it is drawn out through {through}."
    ),
    "step-open": (
        "Open the {notion} for half of its length: once the seams round it are closed, the work is"
        " turned out through it, and a closed zip cannot be reached from inside."
    ),
    "step-open-plain": "Open the {notion}, and leave it open until you are told to close it.",
    "step-sew-stop": (
        "Close the {notion} and pull its slider down, well below the place where the teeth are to"
        " end. There whip over both rows of teeth by hand, eight stitches close together, and"
        " fasten the thread: this is the new stop."
    ),
    "step-sew-stop-bottom": (
        "Close the {notion}. Where the teeth are to end below, whip over both rows by hand, eight"
        " stitches close together, and fasten the thread: this is the new stop."
    ),
    "step-check-stop": "pull the slider gently against the new stop: it does not pass.",
    "step-shorten": (
        "Cut the {notion} off {beyond} beyond the new stop, with old scissors, and never on the"
        " side where the slider is."
    ),
    "step-shorten-crossed": (
        "With the slider well inside, cut off what stands out of the {notion} beyond the seam that"
        " crosses it, with old scissors."
    ),
    "step-turn-through-seam": (
        "Turn {pieces} right side out through {through}: reach in between the two layers of"
        " {still} at an open edge and on through the {seam}, take hold of {drawn} at the far end,"
        " one after the other, and draw them back through and out at that edge. Then push the"
        " corners and curves out with something blunt, and roll the seams to the edge."
    ),
    "step-turn-through": (
        "Turn {pieces} right side out through {through}, push the corners and curves out with"
        " something blunt, and roll the seams to the edge."
    ),
    "step-wait": (
        "Let it lie or hang for {count} hours before you go on, so that the cloth can settle."
    ),
    "step-wait-one": (
        "Let it lie or hang for an hour before you go on, so that the cloth can settle."
    ),
    "step-wait-on": (
        "Hang {pieces} up by the upper edge for {count} hours before you go on: cloth stretches"
        " under its own weight, above all where it hangs on the slant."
    ),
    "step-wait-on-one": (
        "Hang {pieces} up by the upper edge for an hour before you go on: cloth stretches under"
        " its own weight, above all where it hangs on the slant."
    ),
    "step-check-wait": "if an edge has grown longer, trim it even before you sew it.",
    "step-wait-dry": (
        "Lay or hang {pieces} out for {count} hours, away from heat and bright sun, until dry"
        " through and through: damp cloth stretches under the foot, and glue does not hold on it."
    ),
    "step-wait-dry-one": (
        "Lay or hang {pieces} out for an hour, away from heat and bright sun, until dry through and"
        " through: damp cloth stretches under the foot, and glue does not hold on it."
    ),
    "step-wait-dry-all": (
        "Let everything dry through and through for {count} hours, away from heat and bright sun:"
        " damp cloth stretches under the foot, and glue does not hold on it."
    ),
    "step-wait-dry-all-one": (
        "Let everything dry through and through for an hour, away from heat and bright sun: damp"
        " cloth stretches under the foot, and glue does not hold on it."
    ),
    "step-check-wait-dry": "seams and folds, which dry last, feel no cooler than the rest.",
    "step-wait-set": (
        "Leave {pieces} lying flat for {count} hours, without bending or pressing, until firm."
    ),
    "step-wait-set-one": (
        "Leave {pieces} lying flat for an hour, without bending or pressing, until firm."
    ),
    "step-wait-set-all": (
        "Leave everything lying flat for {count} hours, without bending or pressing, until it is"
        " firm."
    ),
    "step-wait-set-all-one": (
        "Leave everything lying flat for an hour, without bending or pressing, until it is firm."
    ),
    "step-check-wait-set": "nothing gives way when you lift a corner.",
    "step-wait-come-back": (
        "Wait until {pieces} come back, some {count} hours; go on with what does not need them."
    ),
    "step-wait-come-back-one": (
        "Wait until {pieces} come back, in an hour or so; go on with what does not need them."
    ),
    "step-wait-come-back-all": (
        "Wait until everything that was sent out comes back, some {count} hours."
    ),
    "step-wait-come-back-all-one": (
        "Wait until everything that was sent out comes back, in an hour or so."
    ),
    "step-check-wait-come-back": (
        "count the pieces, and look at both sides of each before it is sewn."
    ),
    "step-send-out": (
        "Give {pieces} out of the house now, with a slip that says your name, the number of"
        " pieces, which side is the right one and what is to be done; go on when they are back."
    ),
    "step-check-send-out": "count the pieces when they leave and when they come back.",
    "step-close-seam-gap": (
        "Fold the allowances of the gap of {gap} in the {seam} to the inside, in one line with the"
        " seam beside it, press and pin."
    ),
    "step-close-seam-hand": (
        "Sew it shut by hand with slip stitch, a stitch every {apart}; fasten the thread at both"
        " ends."
    ),
    "step-close-seam-machine": (
        "Stitch it shut, {distance} from the folds, and backstitch at both ends."
    ),
    "step-close-lining": (
        "Then push the lining inside, corners into corners and seams along seams, smooth it out,"
        " and press the edges."
    ),
    "step-check-seam-gap": "the gap cannot be told from the seam beside it.",
    "step-hold": (
        "Lay {partner} on the wrong side of {pieces}, wrong sides together, the edges level;"
        " smooth both layers from the middle outwards and pin along {edges}."
    ),
    "step-hold-inside": (
        "Lay {partner} on the wrong side of {pieces}, the edges level; smooth both layers from the"
        " middle outwards and pin along {edges}."
    ),
    "step-hold-over": (
        "Lay {partner}, right side up, on the right side of {pieces}, the edges level; smooth both"
        " layers from the middle outwards and pin along {edges}."
    ),
    "step-hold-all": (
        "Lay {partner}, as they are joined, flat on the wrong side of {pieces}, the edges level;"
        " smooth all layers from the middle outwards and pin along {edges}."
    ),
    "step-hold-row-all": (
        "Baste within the seam allowance, {distance} outside the seam line, with the longest"
        " stitch; from now on all these layers are handled as one."
    ),
    "step-check-hold-all": "all layers lie smooth; none has a bubble.",
    "step-hold-row": (
        "Baste within the seam allowance, {distance} outside the seam line, with the longest"
        " stitch; from now on the two layers are handled as one."
    ),
    "step-hold-alone": (
        "Baste the layers together along {edges} within the seam allowance, {distance} outside the"
        " seam line, with the longest stitch; from now on they are handled as one."
    ),
    "step-check-hold": "both layers lie smooth; neither has a bubble.",
}
