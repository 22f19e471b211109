"""Sentences that give the reason for an order, as a sewist would say it."""

from typing import Final

SENTENCES: Final[dict[str, str]] = {
    # Each of several names in a sentence.
    "because-name": "`{name}`",
    "because-said": "You asked for `{before}` before `{after}`.",
    "because-seam-before-its-tidying": (
        "`{after}` works on the seam that `{before}` sews, so the seam comes first."
    ),
    "because-fitted-before-fixed": (
        "What `{before}` fits, `{after}` fixes: it would have to come off again."
    ),
    "because-folded-after-wet": (
        "In `{wet}` the folds and marks of `{fold}` come out: fold or mark after it, or do `{user}`"
        " before."
    ),
    "because-looked-at-before-cut-into": (
        "What `{before}` finds wrong can be sewn anew as long as `{after}` has not cut into it."
    ),
    "because-sewn-before-looked-at": "`{after}` looks at what `{before}` sews.",
    "because-stop-sewn-before-zip-cut": (
        "The slider runs off a zip that is cut before a stop is sewn over its teeth."
    ),
    "because-crossed-before-zip-cut": (
        "`{before}` crosses the end of the zip and keeps the slider on; cut before, it runs off."
    ),
    "because-waited-for-after-its-cause": (
        "`{after}` waits for what `{before}` makes wet, or sends out of the house."
    ),
    "because-joined-before-sewn-across": (
        "`{after}` runs across the seam that `{before}` sews, so the pieces are joined first."
    ),
    "because-held-before-sewn-across": (
        "`{after}` runs on over the layers that `{before}` holds there, so they are held first."
    ),
    "because-rolled-after-one": (
        "`{run}` is sewn round what is rolled up between layers that one of {seams} joins before."
    ),
    "because-rolled-after-the-other-seam": (
        "`{after}` is sewn round what is rolled up between the layers, and `{before}` joins these."
    ),
    "because-mouth-topstitched-before-backed": (
        "`{before}` goes through the front of the pocket only, and `{after}` lays its back there."
    ),
    "because-bound-buttonholes-before-facing": (
        "`{before}` is made from the wrong side of the outer cloth, which `{after}` covers."
    ),
    "because-bound-in-order": (
        "A bound buttonhole is made, pressed, and opened behind: `{before}` comes before `{after}`."
    ),
    "because-opened-behind": "`{after}` goes through the facing, which `{before}` puts in place.",
    "because-fused-before-bound": "`{before}` makes the cloth firm that `{after}` cuts.",
    "because-all-but-one": (
        "`{run}` runs right round over {seams}: all but one of these are sewn first, and any one"
        " of them may still be open."
    ),
    "because-this-open": "`{run}` is sewn flat, so {seams} is still open when it is done.",
    "because-one-open": (
        "`{run}` is sewn flat, so at least one of {seams} is still open when it is done."
    ),
    "because-layers-held-before-sewn": (
        "`{after}` has to go through every layer, so `{before}` holds them together first."
    ),
    "because-lie-together": (
        "The layers lie on one another for `{after}` only once `{before}` is done."
    ),
    "because-slit-before-its-edges": ("`{after}` works on the edges that `{before}` cuts open."),
    "because-own-seam-in-order": (
        "Your recipe lists the part of `{before}` before that of `{after}`."
    ),
    "because-washed-before-cut": (
        "`{before}` lets the cloth shrink; after `{after}` it could no longer be evened out."
    ),
    "because-cut-before-sewn": "`{after}` works on the piece that `{before}` cuts or marks.",
    "because-made-up-before-caught": (
        "`{before}` makes up what `{after}` takes up; afterwards it can no longer be turned,"
        " pressed or stitched all round."
    ),
    "because-trapped-part-before-seam": (
        "`{after}` has to catch what `{before}` fastens to the edge."
    ),
    "because-band-in-order": (
        "A strip is folded, sewn on, pressed, closed at its ends, folded over and fastened:"
        " `{before}` comes before `{after}`."
    ),
    "because-pocket-in-order": (
        "A patch pocket is hemmed at its mouth, pressed under all round, and then stitched on:"
        " `{before}` comes before `{after}`."
    ),
    "because-welt-in-order": (
        "A welt is folded and stitched on, the cloth is slashed and the welt turned, and then the"
        " bag is added and the ends are fastened: `{before}` comes before `{after}`."
    ),
    "because-bag-in-order": (
        "A pocket bag is finished while it lies free, sewn on, and pressed out: `{before}` comes"
        " before `{after}`."
    ),
    "because-bag-before-its-seam": (
        "`{after}` goes round the pocket bag, so `{before}` comes first."
    ),
    "because-bag-flat-under-the-foot": (
        "`{before}` needs the pocket bag flat under the foot, before `{after}` closes the seam."
    ),
    "because-pocket-while-flat": (
        "`{after}` lays a further layer under the piece; `{before}` goes through one layer only."
    ),
    "because-before-it-is-a-tube": (
        "`{after}` closes the piece to a tube, in which `{before}` is hard to reach."
    ),
    "because-pocket-while-flat-either": (
        "`{pocket}` is sewn while the piece lies flat, and so before one at least of {seams}, which"
        " together close a tube."
    ),
    "because-strap-folded-in-order": (
        "A folded strap is pressed first and then stitched: `{before}` comes before `{after}`."
    ),
    "because-strap-turned-in-order": (
        "A turned strap is sewn, turned, and then pressed: `{before}` comes before `{after}`."
    ),
    "because-ring-before-fold": (
        "`{before}` works on the band while it lies single; after `{after}` it is folded."
    ),
    "because-buttonholes-after-layers": (
        "`{after}` goes through all layers, so `{before}` has to be done."
    ),
    "because-buttonhole-while-free": (
        "`{before}` goes through the hem of the pocket only; after `{after}` it would catch the"
        " garment."
    ),
    "because-buttonholes-before-buttons": (
        "The buttons of `{after}` are marked through the holes of `{before}`."
    ),
    "because-felled-seam-in-order": (
        "A flat-felled seam is stitched, pressed, trimmed, turned under and stitched down:"
        " `{before}` comes before `{after}`."
    ),
    "because-lapped-seam-in-order": (
        "The edge is finished and pressed under, and then stitched down: `{before}` comes before"
        " `{after}`."
    ),
    "because-ready-before-topstitching": (
        "`{after}` goes through what `{before}` has finished, pressed or turned."
    ),
    "because-edge-row-after-its-seams": (
        "`{after}` runs on over the seam of `{before}`, which would cut the row in two."
    ),
    "because-topstitch-before-crossing": (
        "A row of topstitching runs off under the seam that crosses it: `{before}` comes before"
        " `{after}`."
    ),
    "because-topstitch-before-crossing-either": (
        "`{one}` and `{other}` meet: whichever is sewn second waits until the first is topstitched."
    ),
    "because-gathers-after-seams": (
        "The rows of `{after}` run over the flat allowances that `{before}` leaves."
    ),
    "because-turned-before-closed": (
        "After `{after}` the way out is closed, and `{before}` is no longer possible."
    ),
    "because-turned-before-closed-either": (
        "`{one}` and `{other}` together close the way out, so one of them stays open until the"
        " work is turned."
    ),
    "because-gap-before-closed": "`{after}` closes the gap that `{before}` leaves.",
    "because-gap-before-turned": "`{after}` needs the way out that `{before}` leaves.",
    "because-reached-through-gap": (
        "`{before}` is reached through the gap, which `{after}` closes."
    ),
    "because-gap-closed-after-turning": (
        "Once `{after}` has closed the last way out, `{before}` is no longer possible."
    ),
    "because-zip-open-before-turning": (
        "A closed zip bars the way out: `{before}` comes before `{after}`."
    ),
    "because-zip-in-before-opened": "`{after}` opens the zip that `{before}` sets in.",
    "because-slider-in-reach": (
        "Once {seams} have closed the outside all round the zip, its slider is out of reach for"
        " `{zip}`."
    ),
    "because-corner-boxed-after-its-seams": (
        "`{after}` lays seam on seam, each as `{before}` leaves it."
    ),
    "because-boxed-before-turned": (
        "`{before}` stitches across the wrong side, which `{after}` brings to the inside."
    ),
    "because-hang-before-hem": (
        "Cloth grows while it hangs, so `{before}` comes before `{after}` is marked."
    ),
    "because-sewn-before-hung": "`{before}` belongs to the weight that hangs in `{after}`.",
    "because-fly-in-order": (
        "A fly is faced, gets its zip and its shield, and is topstitched: `{before}` comes before"
        " `{after}`."
    ),
    "because-seam-before-fly": (
        "The fly begins where the seam ends, so `{before}` comes before `{after}`."
    ),
    "because-inspected-last": "What `{before}` does has to be looked at too, in `{after}`.",
    "because-joined-before-tried-on": "`{after}` needs what `{before}` joins.",
    "because-made-before-used": "`{after}` uses the {name} that `{before}` makes.",
    "because-there-before-fastened": (
        "`{after}` fastens to `{name}`, which `{before}` puts in place."
    ),
    "because-basting-before-its-seam": "`{before}` bastes what `{after}` then sews for good.",
    "because-basting-removed-after": (
        "`{after}` takes out basting, which is no longer needed once `{before}` is done."
    ),
    "because-staystitch-before-handling": (
        "`{before}` keeps the edge from stretching, which helps only before `{after}` handles the"
        " piece."
    ),
    "because-fuse-before-first-seam": (
        "`{before}` needs the piece open and flat under the iron, before `{after}` sews or folds"
        " it."
    ),
    "because-fuse-before-turned": (
        "After `{after}` the inside is shut: `{before}` needs the piece open and flat."
    ),
    "because-facing-built-before-attached": (
        "The facing is still light and flat in the hand for `{before}`; once `{after}` has"
        " attached it, it is not."
    ),
    "because-facing-finished-over-its-joins": (
        "The pieces of the facing are joined, so that `{after}` runs over the joins in one go."
    ),
    "because-fullness-before-crossing-seam": (
        "`{after}` has to catch the fullness that `{before}` takes in."
    ),
    "because-dart-sewn-before-pressed": "`{after}` presses what `{before}` sews.",
    "because-dart-pressed-before-crossing": (
        "What `{before}` presses can no longer be laid flat once `{after}` has crossed it."
    ),
    "because-press-before-crossing": (
        "A seam is pressed before another crosses it: after `{after}` the iron no longer gets"
        " into the corner."
    ),
    "because-press-before-crossing-either": (
        "`{one}` and `{other}` meet: whichever is sewn second waits until the first is pressed."
    ),
    "because-finish-before-pressing": (
        "The raw edges are finished while they still lie together or flat, before `{after}`"
        " presses them into place."
    ),
    "because-finish-before-crossing": (
        "`{after}` runs across these edges: afterwards their ends can no longer be finished."
    ),
    "because-finish-before-crossing-either": (
        "`{one}` and `{other}` meet: whichever is sewn second waits until the edges of the first"
        " are finished."
    ),
    "because-finish-before-covered": ("`{after}` covers the edge, and nobody can finish it then."),
    "because-no-crease-before-fitting": (
        "`{after}` leaves a crease, so the fit is confirmed first."
    ),
    "because-enclosed-seam-in-order": (
        "An enclosed seam is trimmed, then clipped, then pressed, then turned: after `{after}`,"
        " `{before}` can no longer be done well, or at all."
    ),
    "because-ready-before-understitching": (
        "Understitching goes through the allowances, so `{before}` comes first."
    ),
    "because-understitch-before-turning": (
        "After `{after}` the foot no longer gets between facing and garment."
    ),
    "because-understitch-before-closed": (
        "`{after}` stitches the edge down; then the foot no longer gets between facing and garment."
    ),
    "because-understitch-ends-either": (
        "`{end}` joins the end of the facing to the garment: it is sewn after `{row}`, or else"
        " before `{seam}` lays the facing on."
    ),
    "because-facing-tacked-last": (
        "Tacking holds the facing where it has come to lie, so `{before}` comes first."
    ),
    "because-french-seam-in-order": (
        "In a French seam each row and each press encloses the one before."
    ),
    "because-slit-apart-from-french-rows": (
        "The edges that `{hem}` turns in go straight on from `{seam}`: the whole of one is sewn"
        " before the other, not between the two rows of the French seam."
    ),
    "because-centred-zip-in-order": (
        "The opening is basted, pressed open, the zip set under it, and the basting taken out."
    ),
    "because-centred-zip-after-seam-below": (
        "The zip lies under one seam line, basted and pressed, so the seam below is sewn first."
    ),
    "because-coils-before-zip": "The coils are pressed flat so that the needle gets close to them.",
    "because-invisible-zip-before-seam-below": (
        "Both sides must lie open while an invisible zip is set; the seam below is closed last."
    ),
    "because-zip-before-waist-finish": (
        "`{after}` ends at the opening and encloses the ends of the zip tapes."
    ),
    "because-zip-while-flat": (
        "`{before}` goes along a zip whose sides lie flat; `{after}` joins them past its end."
    ),
    "because-zip-before-band-closed": (
        "The ends of the zip tapes lie inside the band, which `{after}` closes."
    ),
    "because-zip-before-opening-sewn": (
        "`{after}` sews up the opening in which the zip of `{before}` is set."
    ),
    "because-casing-in-order": (
        "The casing is folded over the seam that `{before}` sews, so the seam comes first."
    ),
    "because-folded-before-stitched": "The fold is pressed before it is stitched.",
    "because-channel-stays-open": (
        "The ends of the channel stay open, so the edges there are finished before it is folded."
    ),
    "because-channel-shut-after-threading": (
        "`{hem}` is sewn before `{casing}` is folded, or once everything lies in the channel."
    ),
    "because-channel-before-threading": "There is no channel to thread until it is stitched.",
    "because-threading-in-order": (
        "The elastic is drawn through, its ends are joined, and then the gap is closed."
    ),
    "because-hem-in-order": "A hem is turned up, then stitched, then pressed.",
    "because-hemmed-before-banded": (
        "`{after}` begins at the end of the hem, so `{before}` is done by then."
    ),
    "because-crossing-seams-before-hem": (
        "The hem runs over the seam that `{before}` sews, so the seam comes first."
    ),
    "because-fastenings-last": (
        "A fastening is sewn on when the edge that bears it is done; before, it is in the way."
    ),
    "because-staystitch-before-clipping": (
        "The clips of `{after}` stop at the row of `{before}`, and would run on into the cloth."
    ),
    "because-sent-out-before-joined": (
        "`{before}` takes a single piece; after `{after}` the rest of the garment hangs on it."
    ),
    "because-slit-before-band": (
        "The band of `{after}` ends at the slit, so `{before}` cuts it first."
    ),
    "because-opening-finished-before-band-closed": (
        "The band ends at the edge that `{before}` finishes, and `{after}` shuts that edge in."
    ),
    "because-trimmed-before-banded": (
        "`{after}` covers the end of the seam; `{before}` no longer gets there then."
    ),
    "because-hole-after-its-fold": (
        "`{before}` shows how deep the casing will lie, and so where `{after}` goes."
    ),
    "because-cord-opening-before-casing": (
        "The cord leaves through one layer only: after `{after}`, `{before}` would go through both."
    ),
    "because-shell-hemmed-before-lining": (
        "The lining is hemmed to the length that `{before}` gives the garment."
    ),
    "because-set-while-flat": (
        "`{before}` is easier while the part lies flat, before `{after}` closes it."
    ),
    "because-hem-last": "The length is sure when `{before}` is done; `{after}` may as well wait.",
}
