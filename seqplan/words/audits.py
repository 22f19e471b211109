"""Sentences of the audits: what is still lacking after the last operation."""

from typing import Final

SENTENCES: Final[dict[str, str]] = {
    "check-interfacing-not-fused": "the interfacing `{name}` is never fused to anything",
    "check-interfacing-not-fused-fix": (
        "Name the piece that it stiffens: `{{fuse: collar, with: {fabric}}}`; the interfacing"
        " itself need not be a piece. One that is sewn in is held: `{{hold: ..., with: {name}}}`."
    ),
    "check-amount-not-said": "how much of `{name}` is needed is not said",
    "check-amount-not-said-fix": (
        "Of other fabrics it is: add it, as in `amounts: {{150: 1.2 m}}`, or who sews from the"
        " booklet has to find out."
    ),
    "check-too-little-cloth": (
        "the pieces of `{name}` do not fit on {amount} of cloth {width} wide: their area alone is"
        " {least} of it"
    ),
    "check-too-little-cloth-fix": "Lay the pieces out, and write under `amounts:` what they need.",
    "check-unused-mark": "nothing is placed at the mark `{name}`",
    "check-unused-mark-fix": (
        "Say what goes there with `at: {name}`, or take it out of the piece."
    ),
    "check-darts-not-sewn": "the darts at `{name}` are never sewn",
    "check-darts-not-sewn-fix": "Sew them: `{{dart: {name}}}`, or take them out of the piece.",
    "check-pleats-not-sewn": "the pleats at `{name}` are never laid",
    "check-pleats-not-sewn-fix": "Lay them: `{{pleat: {name}}}`, or take them out of the piece.",
    "check-gathers-not-held": "nothing holds the gathers of `{entry}`",
    "check-gathers-not-held-fix": (
        "Sew the edge to another one, or say with `hold:` or `topstitch:` what keeps the gathers."
    ),
    "check-strap-not-attached": "the strap `{name}` is made, and never attached",
    "check-strap-not-attached-fix": (
        "Attach it: `{{attach: {name}, at: ...}}`, or name its end under `between:` of the seam"
        " that catches it. If it stays loose, say so: `{{do: ..., on: {name}}}`."
    ),
    "check-pocket-copies": (
        "of the piece `{name}`, {cut} are cut, and the operation `{entry}` takes {places}"
    ),
    "check-pocket-copies-fix": (
        "Say `cut: {places}` in `{name}`, or name each place under `at:` of `{entry}`."
    ),
    "check-unused-copy": "of `{name}`, {cut} are cut and {used} used",
    "check-unused-copy-fix": (
        "Say in an operation what becomes of the rest, or cut fewer: `cut: {used}`."
    ),
    "check-one-copy-only": "the edge `{name}` is taken up on one side only",
    "check-one-copy-only-fix": (
        "Leave `@left` or `@right` out, or say in another operation what becomes of the other side."
    ),
    "check-slit-not-cut": "the slit `{name}` is never cut open",
    "check-slit-not-cut-fix": (
        "Cut it: `{{slash: {name}}}`, or set a placket into it, which cuts it too."
    ),
    "check-unfinished-seam": "the allowances of `{entry}` are left raw and will ravel",
    "check-unfinished-seam-fix": (
        "Say `as: finished together` or `as: pressed open` in `{entry}`, or finish the edges in an"
        " operation of their own: {edges}. If they lie hidden, say `layer: lining` or"
        " `layer: facing` in the piece that hides them."
    ),
    "check-raw-under-zip": "the edges under `{entry}` are left raw and will ravel",
    "check-raw-under-zip-fix": "Finish them in an operation of their own: {edges}.",
    "check-not-pressed": "`{entry}` is never pressed, and `{over}` is sewn across it",
    "check-not-pressed-why": "The allowances are caught as they lie, and make a lump.",
    "check-not-pressed-fix": (
        "Say in `{entry}` which way it is pressed, such as `press: open`. If the file leaves out"
        " pressing on purpose, say `not shown: [press]` at its top."
    ),
    "check-lengths-differ": (
        "`{entry}` joins {one}, {long}, to {other}, {short}: they differ by {difference}"
    ),
    "check-lengths-differ-fix": (
        "Correct the shape or the length; or say in `{entry}` that it is eased in, with"
        " `ease: {ease}`; or gather the longer edge before."
    ),
    "check-gathered-shorter-fix": (
        "The gathered edge {shorter} is the shorter one: gather the other one, or make it longer."
    ),
    "check-band-shorter-fix": (
        "The band {shorter} is too short: make it longer, or gather the edge that it is set on."
    ),
    "check-notches-apart": (
        "in `{entry}`, the notch `{notch}` of `{one}` and the notch `{mate}` of `{other}` come"
        " {gap} apart"
    ),
    "check-notches-apart-fix": (
        "Look whether two other edges were meant, or an edge lies the wrong way round; else mend"
        " the distance of one of them."
    ),
    "check-notch-alone": "in `{entry}`, the notch `{notch}` of `{one}` meets nothing on {other}",
    "check-notch-alone-fix": (
        "Give the other edge a notch of as many marks there, or mend the distance; or take it out."
    ),
    "check-no-seam-below-zip": "nothing sews `{name}`, where the opening of `{entry}` ends",
    "check-no-seam-below-zip-fix": (
        "Sew it, with `sew: {name}` for a centre seam, or say what becomes of it below the zip."
    ),
    "check-one-layer-boxed": "the corners of `{piece}` are boxed, and those of `{other}` are not",
    "check-one-layer-boxed-fix": "Box them too: `{{box corner: [{edges}], width: ...}}`.",
    "check-loose-part": "nothing joins {pieces} to the rest",
    "check-loose-part-fix": (
        "Sew or attach it, or say in words what it has to do with the rest:"
        " `{{do: ..., on: [{piece}, ...]}}`."
    ),
    "check-lies-in-the-fold": (
        "`{entry}` begins {begins} from `{edge}`, and `{fold}` folds {depth} of it"
    ),
    "check-lies-in-the-fold-fix": (
        "Begin `{entry}` at least {depth} from `{edge}`, or make `{fold}` less deep; no other order"
        " helps."
    ),
    "check-ring-twisted": (
        "with `{entry}`, the right side of a part runs on as the wrong side of another"
    ),
    "check-ring-twisted-fix": (
        "Turn one of the edges over: change `sides:` of `{entry}`, or of another seam of the ring."
    ),
    "check-legs-not-two": (
        "`{entry}` and the inseams leave openings, {legs} for legs and {waists} for the waist, and"
        " trousers have two and one"
    ),
    "check-legs-not-two-fix": (
        "Sew each inseam from front to back, and the crotch from the left leg to the right:"
        " `{{sew: [{crotches}]}}`."
    ),
    "check-copies-not-mirrored": (
        "`{one}` and `{other}` meet the wrong way round in `{entry}`: `{start}` would lie at"
        " `{end}`"
    ),
    "check-not-mirrored-pair-fix": (
        "Say `cut: pair` in {pieces}, so that one copy mirrors the other; what is the same on both"
        " sides has edges of the same name there."
    ),
    "check-not-mirrored-itself-fix": (
        "If both sides of {pieces} are the same, call them by one name, as in"
        " `[top, side, foot, side]`; if its copies mirror one another, say `cut: pair`, and leave"
        " `to:` out of `{entry}`."
    ),
    "check-not-mirrored-like-fix": (
        "Laid right sides together, one piece mirrors the other: say `like: {like}` in `{piece}` in"
        " place of its edges, or look whether another edge of it was meant."
    ),
    "check-left-sewn-to-right": (
        "`{entry}` sews the left of `{piece}` to its right, and the left of `{other}` to its right"
    ),
    "check-left-sewn-to-right-fix": "Did you mean `{{sew: {one}, to: {to}}}`?",
    "check-nothing-drawn-through": "`{name}` has a gap, and nothing is drawn through it",
    "check-nothing-drawn-through-fix": (
        "Draw something through: `{{insert: ..., in: {name}}}`, or close it: `{{close: {name}}}`."
    ),
    "check-channel-too-narrow": (
        "`{name}` is {depth} deep, and `{thread}`, which is drawn through it, is {width} wide"
    ),
    "check-channel-too-narrow-fix": "Make the channel 6 mm (¼ in) deeper than that is wide.",
    "check-pocket-without-mouth": "`{name}` is stitched on all round: the pocket has no mouth",
    "check-pocket-without-mouth-fix": "Say which of its edges stays open: `open: {edge}`.",
    "check-gap-not-closed": "the gap of `{name}` is never closed",
    "check-gap-not-closed-fix": "Close it at the end: `{{close: {name}}}`.",
    "check-never-turned": ("sewn right sides together, and never turned right side out: {entries}"),
    "check-never-turned-fix": (
        "Turn it right side out when all of it is joined: `{{turn: [{pieces}]}}`."
    ),
    "check-trimmed-before-looked-at": (
        "`{look}` comes when `{op}` is done, and what is wrong by then cannot be sewn anew"
    ),
    "check-trimmed-before-looked-at-fix": (
        "Sew `{entry}` as a plain seam, look it over, and then make it up by operations of its own."
    ),
    "check-elastic-ends-loose": "nothing holds the ends of the elastic that `{entry}` draws in",
    "check-elastic-ends-loose-fix": (
        "Stitch across both ends of `{casing}` afterwards (`tack:`), or draw the elastic in before"
        " the edges at its ends are sewn or bound."
    ),
    "check-wadding-turned-out": (
        "`{entry}` catches `{piece}` between the right sides, and it lies outside once turned"
    ),
    "check-wadding-turned-out-fix": (
        "Lay it on the wrong side of one layer: `{{hold: ..., with: {piece}}}` along the same"
        " edges, before `{entry}`."
    ),
    "check-held-short-of-a-tube": (
        "`{entry}` fastens the second end while the piece lies flat: closed by `{seam}`, it is"
        " drawn in"
    ),
    "check-held-short-of-a-tube-fix": (
        "Fold the allowance first as it will lie in `{seam}`, shape the piece to a tube, and then"
        " fasten the second end: two operations, with a `fold:` of that edge in between."
    ),
    "check-sewn-shut": "`{entry}` closes the last opening of {pieces}, which cannot be turned then",
    "check-sewn-shut-fix": (
        "Leave a gap in `{seam}`, where it shows least: `gap: 10`, turn through it, and close it:"
        " `{{close: {seam}}}`."
    ),
    "check-nothing-to-turn": "at `{entry}`, nothing is sewn yet that could be turned",
    "check-nothing-to-turn-fix": ("Sew the seam first that is turned, or take `{entry}` out."),
    "check-turn-lower-fix": "Move `{entry}` below `{seam}`.",
    "check-zip-not-opened": "`{turn}` has no way out: the zip `{zip}` is closed",
    "check-zip-not-opened-why": (
        "All else is sewn up by then, and its slider cannot be reached from inside."
    ),
    "check-zip-not-opened-fix": ("Open it as soon as it is set in: `{{open: {zip}}}`."),
    "check-basting-left": "the basting `{entry}` is never taken out",
    "check-basting-left-fix": (
        "Sew the same edges for good, or take it out: an operation with `remove basting:` and the"
        " edges."
    ),
    "check-fold-left": "`{seam}` is sewn across the fold that `{entry}` has creased",
    "check-fold-left-fix": "Open it out before: `{{unfold: [{edges}]}}` above `{seam}`.",
    "check-roll-left": "what `{entry}` rolls up is caught by `{seam}`, and never drawn out",
    "check-roll-left-fix": (
        "Say `through:` and the opening by which it comes out, or turn it after `{seam}`."
    ),
    "check-trimmed-before-fitting": (
        "`{entry}` takes the allowances away before `{fit}` shows whether they are wanted"
    ),
    "check-trimmed-before-fitting-fix": "Move `{entry}` below `{fit}`.",
    "check-buttonhole-without-button": "nothing goes through the buttonholes of `{entry}`",
    "check-buttonhole-without-button-fix": (
        "List the buttons under `notions:`, and sew them on: `{{attach: buttons, to: ...}}`."
    ),
    "check-button-without-buttonhole": "the buttons of `{entry}` have no buttonhole",
    "check-button-without-buttonhole-fix": (
        "Work the holes: `{{buttonhole: ..., number: ...}}`. If they go through loops, list these"
        " as a piece or a notion; if they are for show, say `kind: decorative button`."
    ),
    "check-fewer-buttons-than-holes": "there are {holes} buttonholes, and {count} of `{name}`",
    "check-fewer-buttons-than-holes-fix": (
        "Say `count: {holes}` in `{name}`, or mend the `number:` of the buttonholes."
    ),
    "check-fewer-holes-than-buttons": (
        "{count} buttons are sewn on, with `{entry}` and its like, and {holes} buttonholes are"
        " worked"
    ),
    "check-fewer-holes-than-buttons-fix": (
        "Work the holes that are missing: `{{buttonhole: ..., number: ...}}`, or mend a number. If"
        " some buttons are for show, list them as a notion of their own: `kind: decorative button`."
    ),
    "check-strip-not-fastened": "the other edge of the strip `{name}` is never fastened",
    "check-strip-not-fastened-fix": (
        "Do not leave `close` out of `{entry}`, or stitch the edge down:"
        " `{{topstitch: {name}.fold}}`."
    ),
    "check-strip-sewn-plainly-fix": (
        "Set it on with `band:` or `bind:` in place of `sew:` in `{entry}`, which folds it over and"
        " fastens it."
    ),
}
