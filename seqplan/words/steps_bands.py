"""Sentences for what is set on an edge and folded over it, and for straps."""

from typing import Final

_FOLDING: Final[dict[str, str]] = {
    # Pressing a band before it is set on.
    "step-band-fold": (
        "Fold {band} lengthwise along the middle with wrong sides together and press the crease;"
        " open it out again, fold the long edge that stays loose at first to the wrong side by"
        " {under} and press: that is {cover} less than the allowance, so that this edge will reach"
        " over the seam."
    ),
    "step-band-fold-unknown": (
        "Fold {band} lengthwise along the middle with wrong sides together and press the crease;"
        " open it out again, fold the long edge that stays loose at first to the wrong side,"
        " {cover} less deep than the allowance, so that this edge will reach over the seam, and"
        " press."
    ),
    "step-band-under": (
        "Fold the edge of {inner} that stays loose at first to the wrong side by {under} and"
        " press: that is {cover} less than the allowance, so that this edge will reach over the"
        " seam. {outer} keeps its edge flat."
    ),
    "step-band-under-unknown": (
        "Fold the edge of {inner} that stays loose at first to the wrong side, {cover} less deep"
        " than the allowance, so that this edge will reach over the seam, and press. {outer} keeps"
        " its edge flat."
    ),
    "step-band-fold-double": (
        "Fold {band} lengthwise with wrong sides together, so that the two long raw edges meet,"
        " and press the crease lightly or pin; mark the quarters of the raw edges, and those of"
        " the edge that they will be sewn to."
    ),
    "step-binding-fold": (
        "Fold {band} lengthwise along the middle with wrong sides together and press the crease;"
        " open it out again, fold both long edges to the wrong side so that they almost meet at"
        " the crease, and press without stretching it."
    ),
    "step-placket-fold": (
        "Fold {band} lengthwise along the middle with wrong sides together and press the crease;"
        " open it out again, fold the long edge that stays loose at first to the wrong side by"
        " {seam} and press."
    ),
    "step-placket-fold-tower": (
        "At the upper end of {band} fold both corners under to a point, or the end straight, as"
        " the pattern shows it, and press; this end will show above the slit."
    ),
    "step-check-band-fold": (
        "measure in several places: the pressed band is equally wide everywhere."
    ),
    # Straps.
    "step-strap-fold": (
        "Fold {pieces} lengthwise along the middle with wrong sides together and press; open out,"
        " fold both long edges in to the crease and press; fold once more along the crease and"
        " press, so that all raw edges lie inside."
    ),
    "step-strap-fold-end": "First turn any end that will hang free in by {under}.",
    "step-strap-fold-ends": (
        "First fold {edges} to the wrong side by {under} and press: there the strap will hang free."
    ),
    "step-strap-sew": (
        "Fold {pieces} lengthwise along the middle with right sides together, pin, and stitch"
        " along the open long edge, {allowance} from the raw edges, with backstitches at both"
        " ends."
    ),
    "step-strap-sew-unknown": (
        "Fold {pieces} lengthwise along the middle with right sides together, pin, and stitch"
        " along the open long edge on the seam line of your pattern, with backstitches at both"
        " ends."
    ),
    "step-strap-sew-end": (
        "Leave a short end open for turning. If one end will hang free, stitch across that end,"
        " too, and cut its corners off at an angle."
    ),
    "step-strap-sew-across": (
        "Stitch across {edges}, too, where the strap will hang free, and cut the corners off at an"
        " angle; leave the other short end open for turning."
    ),
    "step-strap-sew-open": "Leave both short ends open: a seam or a row takes them up later.",
    "step-strap-trim": "Trim the allowance to {width}, so that it turns easily.",
    "step-strap-stitch": (
        "Stitch {pieces} along the open long edge, {distance} from it, through all layers, and"
        " along the folded edge in the same way."
    ),
    "step-strap-stitch-open": (
        "Stitch {pieces} along the open long edge, {distance} from it, through all layers."
    ),
    "step-strap-count": "Make {count} of them alike.",
    "step-strap-all": "Do so with all {count} of them.",
    "step-strap-turn": (
        "Turn {pieces} right side out: fix a safety pin to one layer at the stitched end, push it"
        " through the tube and draw the strap over it; then push the corners out with something"
        " blunt."
    ),
    "step-strap-turn-open": (
        "Turn {pieces} right side out: fix a safety pin to one layer at one end, push it through"
        " the tube and draw the strap over it."
    ),
    "step-strap-press": (
        "Roll the seam of {pieces} between your fingers until it lies exactly along one edge, and"
        " press."
    ),
    "step-strap-topstitch": (
        "Topstitch {pieces} along both long edges, {distance} from the edge, with a stitch of"
        " {stitch}."
    ),
    "step-strap-topstitch-over": (
        "Topstitch {pieces} along both long edges, {distance} from the edge, along the open edge"
        " over the row that is there, so that both look alike, with a stitch of {stitch}."
    ),
    "step-check-strap": "the strap is equally wide all along, and no raw edge looks out.",
}

_SETTING_ON: Final[dict[str, str]] = {
    "step-band-join": (
        "Lay the two short ends of {band} on one another with right sides together, so that the"
        " band is not twisted, and stitch {allowance} from the raw edges with backstitches at both"
        " ends; press the allowances open. Now it is a ring."
    ),
    "step-band-join-unknown": (
        "Lay the two short ends of {band} on one another with right sides together, so that the"
        " band is not twisted, and stitch on the seam line of your pattern with backstitches at"
        " both ends; press the allowances open. Now it is a ring."
    ),
    "step-band-lay": (
        "Lay {attached}, the band opened out, on {edges}, right sides together, the raw edges"
        " level; let notches meet, and pin across the edge."
    ),
    "step-band-lay-wrong": (
        "Lay {attached}, the band opened out and right side down, on the wrong side of {edges},"
        " the raw edges level; let notches meet, and pin across the edge."
    ),
    "step-band-lay-outer": (
        "Lay {attached} on {edges}, right sides together, the raw edges level; let notches meet,"
        " and pin across the edge."
    ),
    "step-band-lay-outer-wrong": (
        "Lay {attached}, right side down, on the wrong side of {edges}, the raw edges level; let"
        " notches meet, and pin across the edge."
    ),
    "step-band-lay-plain": (
        "Lay the edge of {band} on {edges}, right sides together, the raw edges level; let notches"
        " meet, and pin across the edge."
    ),
    "step-band-lay-plain-wrong": (
        "Lay the edge of {band}, with its right side down, on the wrong side of {edges}, the raw"
        " edges level; let notches meet, and pin across the edge."
    ),
    "step-band-lay-two": "Keep {inner} folded out of the way: it is not caught in this row.",
    "step-band-lay-double": (
        "Lay {band}, folded, on the right side of {edges}, all raw edges level; let the quarters"
        " and the ends meet, and pin there."
    ),
    "step-band-stretch": (
        "If the band is shorter than the edge, stretch the band, never the edge, until both are"
        " equally long between one pin and the next."
    ),
    "step-band-ends-out": (
        "At each end the band reaches beyond the edge by its own allowance; do not trim that off."
    ),
    "step-band-ends-sewn": (
        "The sewn ends of the band lie level with the finished ends of the edge."
    ),
    "step-band-ends-level": "The ends of the band lie level with the ends of the edge.",
    "step-band-ring": (
        "Let the seam of the band lie where the pattern shows it, else on a seam of the edge or,"
        " where there is none, where it is seen least."
    ),
    "step-bind-lay": (
        "Open out one pressed edge of {band} and lay it on {edges}, right sides together, the raw"
        " edges level; pin. Let a curved edge lie as it lies, and do not stretch it."
    ),
    "step-bind-lay-wrong": (
        "Open out one pressed edge of {band} and lay it, right side down, on the wrong side of"
        " {edges}, the raw edges level; pin. Let a curved edge lie as it lies, and do not stretch"
        " it."
    ),
    "step-band-each-half": (
        "This edge lies in two halves, each of which is sewn by itself: of {band}, one goes on each"
        " half, from end to end."
    ),
    "step-bind-slit": (
        "Draw the slit apart until its two edges make one line; at the end of the slit, where no"
        " allowance is left, let the row catch only a few threads of the cloth, and lay its"
        " fullness out of the way of the needle."
    ),
    "step-bind-stitch": (
        "Stitch exactly in the first pressed fold of the binding, and backstitch at the beginning"
        " and at the end."
    ),
    "step-bind-stitch-ring": (
        "Fold the beginning of the binding in by {under}, let the end lie over it by {overlap},"
        " and stitch all the way round exactly in the first pressed fold; overlap the beginning of"
        " the row by {overlap}."
    ),
    "step-bind-stitch-joined": (
        "Stitch all the way round exactly in the first pressed fold of the binding, and overlap"
        " the beginning by {overlap}."
    ),
    "step-check-set-on": (
        "look at both sides: no fold is caught, and the row is equally far from the edge all the"
        " way."
    ),
    "step-press-band": (
        "Press the seam flat as it was sewn; then press {band} and all allowances away from the"
        " garment, so that they lie inside the band."
    ),
    "step-press-binding": (
        "Press the seam flat as it was sewn; then press {band} away from the garment, over the raw"
        " edges."
    ),
    "step-press-band-double": (
        "Press the allowances along {edges} away from the band and towards the garment, from the"
        " wrong side and without stretching."
    ),
    "step-band-finish": (
        "Finish all allowances along {edges} together as one layer; the knife may take off no more"
        " than loose threads."
    ),
    "step-band-ends": (
        "At each end fold {band} along the crease with right sides together, the pressed edge"
        " still turned under; stitch across the end, level with the end of the edge below it, from"
        " the crease to the seam, and backstitch at both ends."
    ),
    "step-band-ends-trim": (
        "Trim these allowances to {width}, cut off the corner at the crease at an angle, turn the"
        " end right side out and push the corner out with something blunt."
    ),
    "step-check-band-ends": "both ends are equally high and level with the edge below them.",
}

_CLOSING: Final[dict[str, str]] = {
    "step-wrap": (
        "Fold {band} along the crease over all allowances to the wrong side of the garment, so"
        " that the pressed edge reaches over the seam line by {cover}; pin from the right side, in"
        " the seam, and press."
    ),
    "step-wrap-wrong": (
        "Fold {band} along the crease over all allowances to the right side of the garment, so"
        " that the pressed edge covers the seam line by {cover}; pin along it and press."
    ),
    "step-wrap-two": (
        "Lay {inner} over all allowances, so that its pressed edge reaches over the seam line by"
        " {cover}; pin from the other side, in the seam, and press."
    ),
    "step-check-wrap": "feel along the seam: the loose edge reaches over it everywhere.",
    "step-close-band": (
        "From the right side topstitch on {band}, {distance} from the seam, so that the loose edge"
        " on the other side is caught all the way; backstitch at both ends."
    ),
    "step-close-band-ring": (
        "From the right side topstitch on {band}, {distance} from the seam, all the way round, so"
        " that the loose edge on the other side is caught; overlap the beginning by {overlap}."
    ),
    "step-close-band-wrong": (
        "From the right side topstitch on {band}, {distance} from the pressed edge, through all"
        " layers; backstitch at both ends."
    ),
    "step-close-band-wrong-ring": (
        "From the right side topstitch on {band}, {distance} from the pressed edge, through all"
        " layers and all the way round; overlap the beginning by {overlap}."
    ),
    "step-close-band-ditch": (
        "From the right side stitch exactly in the groove of the seam, drawing the cloth apart a"
        " little with your fingers, so that the loose edge on the other side is caught and the row"
        " sinks into the seam; fasten both ends."
    ),
    "step-close-band-hand": (
        "Sew the loose edge of {band} to the seam by hand with slip stitch, a stitch every"
        " {apart}, into the stitches of the seam and never through to the right side; fasten the"
        " thread at both ends."
    ),
    "step-check-close-band": (
        "turn the band over: the loose edge is caught everywhere; where it is not, unpick a few"
        " stitches and sew that place again."
    ),
    "step-band-topstitch": (
        "Topstitch {band} along the edges from the right side, {distance} from the edge, with a"
        " stitch of {stitch}."
    ),
    "step-band-topstitch-side": (
        "Topstitch along the seam of {band} from the right side, on the side of the {side} and"
        " {distance} from the seam, through the allowances below, with a stitch of {stitch}."
    ),
}

_PLACKETS: Final[dict[str, str]] = {
    # The two strips of a tower placket.
    "step-tower-lay": (
        "Lay {attached}, opened out and right side down, on the wrong side of {edges}, the raw"
        " edges level, the lower ends level with the lower edge; pin."
    ),
    "step-tower-sides": (
        "Let {first} go on that side of the slit which meets the {before} edge and will lie"
        " underneath, and {second} on the side which meets the {after} edge and will lie on top."
    ),
    "step-tower-stitch": (
        "Stitch {seam} from the raw edges, from the lower edge exactly to the corner of the slit"
        " and no further, and backstitch there; press both allowances towards the strips."
    ),
    "step-tower-wrap": (
        "Draw {band} through the slit to the right side and fold the strips along their creases,"
        " so that each pressed edge just covers its row of stitching; lay the small triangle at"
        " the upper end of the slit upwards, between the layers of the tower. Pin and press."
    ),
    "step-tower-close": (
        "Stitch the underlap down close to its pressed edge, {distance} from it, from the lower"
        " edge to the upper end of the slit; fold the tower aside while you do so."
    ),
    "step-tower-close-box": (
        "Lay the tower over the underlap as it will be worn; stitch round it {distance} from its"
        " edges, and across it at the upper end of the slit through all layers, as a box, so that"
        " the triangle and the end of the underlap are caught; below that the tower stays free of"
        " the underlap."
    ),
    "step-check-tower": (
        "the tower covers the slit, no raw edge looks out at its upper end, and the placket lies"
        " flat when closed."
    ),
    # The strip of a continuous placket.
    "step-continuous-lay": (
        "Draw the slit apart until its two edges are almost one straight line, and lay {attached},"
        " opened out and right side down, on the wrong side of {edges}: the raw edges level at the"
        " beginning and at the end, in the middle the end of the slit {seam} inside the edge of"
        " the strip; pin."
    ),
    "step-continuous-stitch": (
        "Stitch {seam} from the raw edge of the strip; in the middle the row just catches the end"
        " of the slit by two or three threads. Stop there with the needle down, lift the foot, and"
        " push the fold of the cloth behind the needle before you go on."
    ),
    "step-continuous-wrap": (
        "Press {band} and the allowances away from the cloth; fold the strip along its crease over"
        " the raw edges to the right side, so that its pressed edge just covers the row of"
        " stitching, and pin."
    ),
    "step-continuous-close": (
        "Stitch along the pressed edge, {distance} from it, through all layers and past the end of"
        " the slit without a pleat."
    ),
    "step-continuous-close-corner": (
        "Close the slit as it will be worn, right sides together, and stitch across the fold of"
        " the strip at its upper end at an angle, so that it cannot turn outwards."
    ),
    "step-check-continuous": "the end of the slit lies flat, without a pleat and without a hole.",
}

SENTENCES: Final[dict[str, str]] = {**_FOLDING, **_SETTING_ON, **_CLOSING, **_PLACKETS}
