"""What a rehearsal says: why an operation cannot be done, and what would help."""

SENTENCES = {
    # Nothing there yet.
    "rehearse-not-cut": "`{op}` needs its pieces, and `{missing}` has not cut them out yet.",
    "rehearse-not-marked": "`{op}` goes by marks that `{missing}` has not made yet.",
    "rehearse-nothing-there": "`{op}` works on what `{missing}` makes, and that is not there yet.",
    "rehearse-not-continuous": (
        "`{op}` runs on over the seam that `{missing}` sews, and there is a gap as long as that is"
        " open."
    ),
    "rehearse-not-closed-over": (
        "`{op}` runs over the end of a band that `{missing}` has not closed yet."
    ),
    "rehearse-nothing-to-fasten-to": (
        "`{op}` needs what `{missing}` puts in, and that is not there yet."
    ),
    "rehearse-not-turned-yet": (
        "`{op}` holds the layers as they will lie, and they lie right sides together until"
        " `{missing}`."
    ),
    # Too late.
    "rehearse-too-late": "`{blame}` has made it impossible: `{op}` comes too late.",
    "rehearse-too-late-sew": (
        "`{op}` needs the edge free and single, and `{blame}` has sewn it to another."
    ),
    "rehearse-too-late-set-on": (
        "`{op}` needs the edge or the piece free, and `{blame}` has sewn the band on."
    ),
    "rehearse-too-late-set-zip": "`{op}` needs the edge free, and the zip of `{blame}` covers it.",
    "rehearse-too-late-stitch-on": (
        "`{op}` needs the piece loose in the hand, and `{blame}` has stitched it down."
    ),
    "rehearse-too-late-make-strap": (
        "`{op}` needs the strap open, and `{blame}` has closed it along its length."
    ),
    "rehearse-too-late-hem": "`{op}` needs the raw edge, and `{blame}` has hemmed it.",
    "rehearse-too-late-turn-up": "`{op}` needs the edge flat, and `{blame}` has folded it up.",
    "rehearse-too-late-case": "`{op}` needs the raw edge, and it lies in the casing of `{blame}`.",
    "rehearse-too-late-wrap": "`{op}` needs the allowance, and `{blame}` has covered it.",
    "rehearse-too-late-close-band": (
        "`{op}` needs the edge or the allowance, and `{blame}` has closed the band over it."
    ),
    "rehearse-too-late-enclose": (
        "`{op}` needs the allowance, and it lies inside the second row of `{blame}`."
    ),
    "rehearse-too-late-press-over": (
        "`{op}` needs the allowance, and it lies inside since `{blame}` turned the seam over."
    ),
    "rehearse-too-late-hold": (
        "`{op}` shapes one layer, and `{blame}` holds it to another already."
    ),
    "rehearse-too-late-finish": (
        "`{op}` lays layers together, and `{blame}` has finished the edge of one by itself."
    ),
    "rehearse-too-late-cut": "`{op}` is done to the whole cloth, and `{blame}` has cut it.",
    "rehearse-too-late-turn": "`{op}` needs the inside, and `{blame}` has turned it away.",
    "rehearse-too-late-topstitch": "`{op}` needs the edge loose, and `{blame}` holds it down.",
    "rehearse-too-late-slash": "`{op}` needs the piece whole, and `{blame}` has cut into it.",
    # Out of reach.
    "rehearse-lies-inside": "`{op}` needs the allowances, and they lie inside since `{blame}`.",
    "rehearse-caught-already": (
        "`{op}` makes a part up that `{blame}` has caught or stitched down: its ends are not free"
        " any more."
    ),
    "rehearse-held-together": (
        "`{op}` lays the layers right sides together, and `{blame}` holds them as they will lie."
    ),
    "rehearse-catches-more": (
        "`{op}` would go through a further layer that lies under it since `{blame}`."
    ),
    "rehearse-wrong-side-shut-in": (
        "`{op}` needs the wrong side of its layer, and that is shut in since `{blame}`."
    ),
    "rehearse-cannot-be-kept-clear": (
        "`{op}` is to leave a layer out that lies under it, and since `{blame}` that is held all"
        " round and cannot be folded away."
    ),
    "rehearse-held-at-two-places": (
        "`{op}` is to leave a layer out that lies under it, and since `{blame}` that hangs at two"
        " places and cannot be folded away."
    ),
    "rehearse-folded-already": (
        "`{op}` sews the strip while it lies single, and `{blame}` has folded it."
    ),
    "rehearse-band-closed-already": (
        "The end of the zip belongs inside the band, and `{blame}` has closed that before `{op}`."
    ),
    "rehearse-wrapped-already": (
        "`{op}` closes the ends while the band stands up, and `{blame}` has folded it over."
    ),
    "rehearse-closes-channel": (
        "`{op}` would stitch the channel shut that `{blame}` has folded at the end of this edge."
    ),
    "rehearse-no-longer-flat": (
        "`{op}` is done while the edge lies flat, and since `{blame}` it is a ring."
    ),
    # Ways in and out.
    "rehearse-slider-out-of-reach": (
        "`{op}` cannot get at the slider: `{blame}` has closed the work round the zip."
    ),
    "rehearse-no-way-into-casing": (
        "`{op}` finds no way in: the casing of `{blame}` is a closed ring without a gap or a hole."
    ),
    "rehearse-through-the-casing": (
        "`{op}` would go through both layers of the casing that `{blame}` has stitched, and shut"
        " it."
    ),
    "rehearse-still-to-be-turned": (
        "`{missing}` needs the gap that `{op}` closes: the work has to come out through it."
    ),
    "rehearse-still-to-be-sewn": (
        "`{missing}` is sewn through the gap that `{op}` closes, and that is still to do."
    ),
    "rehearse-still-to-be-threaded": (
        "`{missing}` goes in through the gap that `{op}` closes, and that is still to do."
    ),
    "rehearse-trapped": (
        "`{op}` cannot be done: with `{blame}` the layers are joined along more than one edge that"
        " runs round by itself, and cannot be drawn through to lie right side out."
    ),
    "rehearse-no-way-out": ("`{op}` cannot be done: `{blame}` has closed the last way out."),
    "rehearse-rolled-in-a-ring": (
        "`{op}` is sewn round what is rolled up between the layers, and since `{blame}` it runs"
        " right round: no end is left through which the roll could be drawn out."
    ),
    "rehearse-no-way-out-of-roll": (
        "`{op}` is sewn round what is rolled up between the layers, and since `{blame}` these have"
        " no open end left through which it could be drawn out."
    ),
    "rehearse-zip-shut": (
        "`{op}` has to come out through the zip of `{blame}`, and the zip is shut."
    ),
    # Allowances that are used up.
    "rehearse-used-up-sew": (
        "`{op}` is sewn {needed} from the edge, and `{blame}` has left {left} of {edge}: what is"
        " sewn by that edge comes out too small."
    ),
    "rehearse-used-up-band": (
        "`{op}` is sewn {needed} from the edge, and `{blame}` has left {left} of {edge}: the band"
        " would lie too low."
    ),
    "rehearse-used-up-zip": (
        "`{op}` needs {needed} beside the opening to be held by, and `{blame}` has left {left} of"
        " {edge}."
    ),
    "rehearse-used-up-fold": ("`{op}` folds {needed}, and `{blame}` has left {left} of {edge}."),
    "rehearse-used-up-row": (
        "`{op}` runs {needed} from the seam, and `{blame}` has left {left} of {edge}: the row would"
        " miss the allowance."
    ),
    "rehearse-used-up-fell": (
        "`{op}` folds the upper allowance round the lower one, which takes {needed}, and `{blame}`"
        " has left {left} of {edge}."
    ),
    "rehearse-used-up-fit": (
        "`{op}` may let {edge} out, and since `{blame}` no more than {left} are left there."
    ),
    "rehearse-used-up-knife": (
        "The knife of `{op}` needs {needed} beside the stitching, and `{blame}` has left {left} of"
        " {edge}: it would cut the seam."
    ),
    "rehearse-slider-runs-off": (
        "`{op}` cuts an end off that only `{missing}` will hold: until then the slider runs off."
    ),
    "rehearse-no-stop": (
        "`{op}` cuts off an end of the zip that neither a stop nor a seam holds: the slider runs"
        " off."
    ),
    # Waits, water, heat.
    "rehearse-away": "`{op}` needs what has been sent out, and it is not back until `{missing}`.",
    "rehearse-still-setting": (
        "`{op}` would bend or press what has to set, and that takes until `{missing}`."
    ),
    "rehearse-still-wet": ("`{op}` is done to dry cloth, and it is wet until `{missing}`."),
    "rehearse-washed-out": ("`{op}` goes by a fold that has come out in `{blame}`."),
    "rehearse-bears-no-iron": (
        "`{op}` brings the iron to what `{blame}` has sewn on, and that bears no iron."
    ),
    "plan-none": "No order can be sewn, as the file stands:",
    "plan-gave-up": (
        "No order that can be sewn was found: {count} were tried, and each got stuck. The last one:"
    ),
    # Repairs.
    "rehearse-move-above": "Move {moved} above `{anchor}`.",
    "rehearse-move-below": "Move {moved} below `{anchor}`.",
    "rehearse-leave-gap": (
        "Leave a gap (`gap:`) in one of these seams, the least visible first: {seams}."
    ),
    "rehearse-say-method": "Say `{word}: {value}` in `{entry}`; the order can stay.",
    "rehearse-leave-out": "Leave `{word}` out of `{entry}`; the order can stay.",
    "rehearse-open-zip": "Open the zip before that: `{{open: {zip}}}`.",
    "rehearse-sew-narrower": "Sew `{op}` by what is left, with `allowance: {plain}`.",
    "rehearse-without-iron": "Crease it with the fingers: `station: table` for `{op}`.",
    "rehearse-sew-a-stop": "Sew a stop over the teeth first: leave `without: stop` of `{op}` out.",
    "rehearse-or": "Or: {fix}",
    # As findings.
    "rehearse-stuck": "`{op}` cannot be done where it stands",
    "rehearse-never-turned": "what `{op}` joins right sides together is never turned",
    "rehearse-never-turned-fix": "Move `{op}` above the turning, or turn it afterwards.",
    "rehearse-gap-left-open": "the gap in `{op}` is closed before it is there, and stays open",
    "rehearse-gap-left-open-fix": "Close the gap after `{op}`.",
    # The walk as a list.
    "walk-title": "{garment}: the work step by step, in the {order} order",
    "walk-order-written": "written",
    "walk-order-booklet": "booklet",
    "walk-order-batch": "batch",
    "walk-together": "one part now: {pieces}",
    "walk-open": "open round: {loops}",
    "walk-closed": "closed all round",
    "walk-twisted": "twisted: right side and wrong side run into one another",
    "walk-loops": "; ",
    "walk-alike": "{loop} ({count} times)",
    "walk-to-turn": "right sides together, to be turned: {names}",
    "walk-to-turn-no-more": "turned: {names}",
    "walk-gaps": "gap left open in {names}",
    "walk-gaps-no-more": "gap closed in {names}",
    "walk-shut": "zip shut: {names}",
    "walk-shut-no-more": "zip opened: {names}",
    "walk-look": (
        "look before {names}, while it can be sewn anew: nothing twisted, left is left, right side"
        " is right side"
    ),
    "walk-caught": "caught in a seam, or lying on another piece: {names}",
    "walk-folded": "creased, not stitched yet: {names}",
    "walk-folded-no-more": "stitched along the crease, opened out or washed out: {names}",
    "walk-basted": "held by basting: {names}",
    "walk-basted-no-more": "not held by basting any more: {names}",
    "walk-wet": "wet: {names}",
    "walk-wet-no-more": "dry: {names}",
    "walk-away": "out of the house: {names}",
    "walk-away-no-more": "back in the house: {names}",
    "walk-setting": "to be left lying: {names}",
    "walk-setting-no-more": "to be handled again: {names}",
    "walk-no-iron": "no iron here from now on: {names}",
    "walk-trimmed": "left of the allowance: {left} at {edges}",
    "walk-lost": "cannot be undone: {names}",
    "walk-raw": "still raw: {edges}",
    "walk-nothing-raw": "no raw edge left on these pieces",
    "walk-done-one": "The one operation can be done.",
    "walk-done": "All {count} operations can be done in this order.",
    "walk-debt": "But {what}.",
    "walk-stuck-one": "Stuck after {reached} of one operation, at `{op}`:",
    "walk-stuck": "Stuck after {reached} of {count} operations, at `{op}`:",
}
