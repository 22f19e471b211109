"""Words of the trade: name, forms in which they occur, meaning."""

from typing import Final

SENTENCES: Final[dict[str, str]] = {
    "term-allowance": (
        "The strip of cloth between the stitching and the raw edge. It stays on the inside."
    ),
    "term-allowance-name": "seam allowance",
    "term-allowance-forms": "allowance|allowances",
    "term-backstitch": (
        "A few stitches backwards and forwards again at the beginning and end of a row, so that it"
        " does not come undone."
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
    "term-french-forms": "French seam|second row",
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
        "A row of short stitches through one layer, just outside the seam line, which keeps a"
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
    "term-band": (
        "A strip sewn along an edge and folded over it, so that the raw edges lie inside: at a"
        " waist, a wrist, a neck."
    ),
    "term-band-name": "band",
    "term-band-forms": "band|bands",
    "term-binding": (
        "A narrow strip that is folded round a raw edge and stitched, so that the edge cannot"
        " fray; cut on the slant it also follows curves."
    ),
    "term-binding-name": "binding",
    "term-binding-forms": "binding|bias tape",
    "term-placket": (
        "The finished opening of a sleeve or neck, made with a slit and strips of cloth."
    ),
    "term-placket-name": "placket",
    "term-placket-forms": "placket|plackets",
    "term-slit": "A cut from the edge into a piece; until it is cut, it is only a line.",
    "term-slit-name": "slit",
    "term-slit-forms": "slit|slits",
    "term-underlap": (
        "The two strips of a shirt placket: the narrow underlap lies underneath, the wide tower on"
        " top, with a point or a straight end above the slit."
    ),
    "term-underlap-name": "underlap and tower",
    "term-underlap-forms": "underlap|tower",
    "term-felled": (
        "A seam whose one allowance is folded round the other and stitched flat to the cloth, so"
        " that no raw edge is left."
    ),
    "term-felled-name": "flat-felled seam",
    "term-felled-forms": "felled",
    "term-welt": "A folded strip that stands in a cut like a lip and closes the mouth of a pocket.",
    "term-welt-name": "welt",
    "term-welt-forms": "welt",
    "term-bag": "The part of a pocket that hangs inside and that the hand lies in.",
    "term-bag-name": "pocket bag",
    "term-bag-forms": "round the bag|pocket bag|the bag points|halves of the bag|both bags",
    "term-fly": (
        "The covered opening of trousers: the facing folds the upper edge to the inside, the"
        " shield lies behind the zip."
    ),
    "term-fly-name": "fly",
    "term-fly-forms": "the fly|fly facing|fly shield",
    "term-lining": "An inner layer of the same shape as the outside, which hides the seams.",
    "term-lining-name": "lining",
    "term-lining-forms": "lining",
    "term-seam-ripper": "A small fork with a blade in its notch, made to cut stitches.",
    "term-seam-ripper-name": "seam ripper",
    "term-seam-ripper-forms": "seam ripper",
    "term-crease": "The line that a pressed fold leaves in the cloth.",
    "term-crease-name": "crease",
    "term-crease-forms": "crease",
    "term-groove": (
        "The line where the two pieces meet on the right side; a row stitched exactly there sinks"
        " in and hardly shows."
    ),
    "term-groove-name": "groove of the seam",
    "term-groove-forms": "groove of the seam",
    "term-quarter": (
        "Four equal parts of an edge or a band, marked with pins so that fullness spreads evenly."
    ),
    "term-quarter-name": "quarters",
    "term-quarter-forms": "quarters",
    "term-grain": (
        "The direction of the threads that run along the selvage; the arrow on a pattern piece"
        " lies parallel to it."
    ),
    "term-grain-name": "grain",
    "term-grain-forms": "grain|grain arrow|grain arrows",
}
