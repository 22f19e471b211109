"""Techniques, and where each of them goes wrong most often.

What goes wrong is common knowledge of sewing classes, put into our own words.
"""

from typing import Final

SENTENCES: Final[dict[str, str]] = {
    # Preparing.
    "skill-pretreat": "washing cloth before it is cut",
    "skill-pretreat-wrong": "The cloth is cut unwashed and shrinks when it is made up.",
    "skill-cut": "laying out and cutting",
    "skill-cut-wrong": (
        "A piece lies off the grain, or both of a pair are cut the same way round."
    ),
    "skill-mark": "carrying marks over",
    "skill-mark-wrong": "Marks stand on the right side, or on one copy of the piece only.",
    "skill-fuse": "fusing interfacing",
    "skill-fuse-wrong": (
        "The adhesive side lies up and sticks to the iron, or the iron slides and the piece is"
        " pulled out of shape."
    ),
    "skill-staystitch": "staystitching",
    "skill-staystitch-wrong": "The edge is stretched as it is sewn, so that it comes out longer.",
    "skill-dart": "darts",
    "skill-dart-wrong": "The point ends too bluntly and stands out as a dimple.",
    "skill-pleat": "pleats",
    "skill-pleat-wrong": "A pleat is laid the wrong way round, or its depth differs at the edge.",
    "skill-gather": "gathering",
    "skill-gather-wrong": "The thread breaks, or the fullness lies bunched in one place.",
    "skill-slash": "cutting a slit",
    "skill-slash-wrong": "The cut goes too far, or stops too early and puckers.",
    "skill-strap-turned": "a strap that is turned",
    "skill-strap-turned-wrong": "The strap twists, because its layers shifted as it was sewn.",
    "skill-strap-folded": "a strap that is folded and stitched",
    "skill-strap-folded-wrong": "The folds are uneven, so that a raw edge looks out.",
    # Seams.
    "skill-seam-plain": "a plain seam",
    "skill-seam-plain-wrong": "The width of the allowance wanders, or a layer creeps ahead.",
    "skill-seam-overlocked": "a seam sewn with the overlocker",
    "skill-seam-overlocked-wrong": (
        "The knife takes more than it should, or an edge slips out from under the needles."
    ),
    "skill-seam-french": "a French seam",
    "skill-seam-french-wrong": (
        "The first row is sewn with right sides together out of habit, or threads peep out of the"
        " second row."
    ),
    "skill-seam-flat-felled": "a flat-felled seam",
    "skill-seam-flat-felled-wrong": (
        "The wrong allowance is trimmed, or the fold narrows and the raw edge comes out."
    ),
    "skill-seam-lapped": "a lapped seam",
    "skill-seam-lapped-wrong": "The edge below is not caught all the way along.",
    "skill-seam-bound": "a bound seam",
    "skill-seam-bound-wrong": "The binding misses the edge underneath.",
    "skill-seam-faced": "a faced edge",
    "skill-seam-faced-wrong": (
        "The facing is sewn on back to front, or the seam is not clipped and pulls in the curve."
    ),
    "skill-seam-enclosed": "a seam that is turned and lies inside",
    "skill-seam-enclosed-wrong": "Corners are not trimmed and come out thick and round.",
    "skill-seam-own": "a seam of the designer's own",
    "skill-seam-own-wrong": "Its parts are done in another order than the step says.",
    "skill-in-the-round": "joining two tubes",
    "skill-in-the-round-wrong": (
        "One tube is twisted, or slipped in the wrong way round; put pins at the seams first."
    ),
    "skill-baste": "basting",
    "skill-baste-wrong": "The row lies on the seam line and cannot be taken out afterwards.",
    "skill-hold": "basting layers together",
    "skill-hold-wrong": "One layer lies in a bubble, since it was not smoothed from the middle.",
    # Fastenings.
    "skill-zip-invisible": "an invisible zip",
    "skill-zip-invisible-wrong": (
        "The zip is twisted between its two sides, or the row is too far from the coil."
    ),
    "skill-zip-centred": "a centred zip",
    "skill-zip-centred-wrong": "The rows are not equally far from the seam line, or cross a tooth.",
    "skill-zip-lapped": "a lapped zip",
    "skill-zip-lapped-wrong": "The lap is folded on the side that should lie underneath.",
    "skill-zip-fly": "a fly with a zip",
    "skill-zip-fly-wrong": "Facing and shield change sides, or the shield is caught in the row.",
    "skill-shorten": "shortening a zip",
    "skill-shorten-wrong": "It is cut before the new stop is sewn, and the slider runs off.",
    "skill-buttonhole": "buttonholes",
    "skill-buttonhole-wrong": (
        "They are sewn without a trial on the same layers, or cut open through the bar."
    ),
    "skill-bound-buttonhole": "bound buttonholes",
    "skill-bound-buttonhole-wrong": "The lips are not equally wide, or a corner is cut too far.",
    "skill-attach": "sewing fastenings on",
    "skill-attach-wrong": "The two sides are not level when it is closed.",
    "skill-elastic": "elastic in a casing",
    "skill-elastic-wrong": "It twists in the channel, or its end slips in.",
    "skill-cord": "a cord in a casing",
    "skill-cord-wrong": "Its end slips into the channel.",
    # Bands, pockets, plackets.
    "skill-band": "a band",
    "skill-band-wrong": "The loose edge is missed by the last row, or the band is twisted.",
    "skill-bind": "binding an edge",
    "skill-bind-wrong": "The binding is pulled too tight and the edge curls.",
    "skill-patch-pocket": "a patch pocket",
    "skill-patch-pocket-wrong": "The corners are uneven, or the mouth is sewn shut.",
    "skill-in-seam-pocket": "a pocket in a seam",
    "skill-in-seam-pocket-wrong": (
        "The bags are sewn to sides that do not belong together, or the seam closes the mouth."
    ),
    "skill-welt-pocket": "a welt pocket",
    "skill-welt-pocket-wrong": "The rows end unevenly, or the cut does not reach the corners.",
    "skill-tower-placket": "a shirt placket",
    "skill-tower-placket-wrong": "Tower and underlap change sides, so that the cuff laps wrongly.",
    "skill-continuous-placket": "a continuous placket",
    "skill-continuous-placket-wrong": "A pleat is caught at the end of the slit.",
    "skill-box-corner": "a boxed corner",
    "skill-box-corner-wrong": "The seams do not lie on one another, so that the corner is skew.",
    "skill-stitch-on": "stitching a part onto another",
    "skill-stitch-on-wrong": "The part is twisted, or its raw ends are not caught.",
    # Edges.
    "skill-hem-hand": "a hem sewn by hand",
    "skill-hem-hand-wrong": "The stitches are pulled tight and show on the right side.",
    "skill-hem-machine": "a hem sewn by machine",
    "skill-hem-machine-wrong": "The row misses the fold, or the hem is dragged to one side.",
    "skill-casing": "a casing",
    "skill-casing-wrong": "The gap for threading is forgotten, or the channel is too narrow.",
    "skill-tack": "tacking by hand",
    "skill-tack-wrong": "The stitches go through to the right side.",
    "skill-finish": "finishing edges",
    "skill-finish-wrong": "The knife cuts into the piece, or a fold is caught and cut.",
    "skill-press": "pressing a seam",
    "skill-press-wrong": (
        "The iron is pushed along and stretches the cloth, or the seam is pressed the other way."
    ),
    "skill-trim": "trimming and grading",
    "skill-trim-wrong": "The stitching is cut, or the layer next to the outside is trimmed most.",
    "skill-clip": "clipping",
    "skill-clip-wrong": "A snip goes into the stitching.",
    "skill-understitch": "understitching",
    "skill-understitch-wrong": "The row goes through the outside, too.",
    "skill-topstitch": "topstitching",
    "skill-topstitch-wrong": "The distance wanders: look at the foot, not at the needle.",
    # Handling.
    "skill-turn": "turning through an opening",
    "skill-turn-wrong": "Corners are pushed out with something sharp, which goes through.",
    "skill-close-gap": "closing a gap",
    "skill-close-gap-wrong": "The gap can be told from the seam beside it.",
    "skill-nest": "putting layers into one another",
    "skill-nest-wrong": "The wrong layer is turned, so that seams end up outside.",
    "skill-roll": "rolling the body up between layers",
    "skill-roll-wrong": "A part of the roll is caught in the seam.",
    "skill-fit": "trying on",
    "skill-fit-wrong": "It is tried on over thick clothes, or with pins left in.",
    "skill-wait": "letting cloth settle",
    "skill-wait-wrong": "The hem is marked before the cloth has hung.",
    "skill-send-out": "giving pieces out",
    "skill-send-out-wrong": "Nobody has noted which side is the right one.",
    "skill-do": "as the designer tells it",
    "skill-do-wrong": "",
}
