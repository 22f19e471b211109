"""Everything else that stands on a sheet: headings, lists, checks."""

from typing import Final

SENTENCES: Final[dict[str, str]] = {
    # Cover.
    "sheet-kind-booklet": "Sewing booklet",
    "sheet-kind-batch": "Batch sheet",
    "sheet-by": "Design: {author}",
    "sheet-version": "Version {version}",
    "sheet-as-of": "As of {date}",
    "sheet-name-of-maker": "Made by",
    "sheet-date": "Begun on",
    "sheet-size": "Size",
    "sheet-variant": "{choice}: {pick} (there is also: {others})",
    "sheet-variant-label": "This booklet is for",
    "sheet-sizes": "Sizes: {sizes}",
    "sheet-one-size": "Size: {size}",
    "sheet-size-column": "Size",
    "sheet-size-table": "By size",
    "sheet-size-length": "{kind}, length",
    "sheet-size-amount": "{name}, {width} wide",
    "sheet-waived": (
        "For this step a usual rule is set aside on purpose. The rule: {usual}. The reason:"
        " {because}."
    ),
    "sheet-waived-everywhere": (
        "For this garment a usual rule is set aside on purpose. The rule: {usual}. The reason:"
        " {because}."
    ),
    "sheet-picture-own": "Place for the designer's picture: {caption}",
    "sheet-steps-label": "Steps",
    "sheet-operations-label": "Things to tick",
    "sheet-changes-label": "Changes of machine, foot or place",
    # Headings.
    "sheet-needs": "What you need",
    "sheet-cutting": "Cut",
    "sheet-allowances": "Allowances",
    "sheet-marks": "Mark before you take the pattern off",
    "sheet-key": "How to read this sheet",
    "sheet-key-pictures": "What tones, letters and lines mean in the pictures.",
    "sheet-cautions": "Take care",
    "sheet-glance": "All steps at a glance",
    "sheet-glance-line": "{number}. {heading}",
    "sheet-steps": "Steps",
    "sheet-checks": "Before you call it done",
    "sheet-terms": "Terms of use",
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
    "sheet-fabric-amount-some": (
        "{fabrics}: how much depends on your size and on the width of the cloth; lay out the pieces"
        " before you buy."
    ),
    "sheet-amount": "{name}, {width} wide: {amount}",
    "sheet-amount-or": "or {name}, {width} wide: {amount}",
    "sheet-amount-by-size-or": "or {name}, {width} wide: see the table of sizes",
    "sheet-amount-by-size": "{name}, {width} wide: see the table of sizes",
    "sheet-plan": "Lay plan: {name}",
    "sheet-plan-width": "Lay plan: {name}, {width} wide",
    "sheet-plan-size": "Lay plan: {name}, size {size}",
    "sheet-plan-width-size": "Lay plan: {name}, {width} wide, size {size}",
    "sheet-mark-alt": "The designer's mark",
    "sheet-mark-alt-by": "The mark of {author}",
    "sheet-fabric-wash": "Wash, dry and press what can be washed before you cut it: it may shrink.",
    "sheet-notion": "{count} \N{MULTIPLICATION SIGN} {kind}",
    "sheet-notion-long": "{count} \N{MULTIPLICATION SIGN} {kind}, {length} long",
    "sheet-notion-wide": "{count} \N{MULTIPLICATION SIGN} {kind}, {width} wide",
    "sheet-notion-wide-long": (
        "{count} \N{MULTIPLICATION SIGN} {kind}, {width} wide and {length} long"
    ),
    "sheet-notion-by-size": "{notion}, its length by the table of sizes",
    "sheet-notion-binding": "Binding tape for the seams that are bound, as long as all of them",
    "sheet-notion-note": "{notion}; {note}",
    "sheet-thread": "Sewing thread that matches the cloth",
    "sheet-thread-overlocker": (
        "Thread for the overlocker, one reel for each of its needles and loopers"
    ),
    "sheet-thread-own": "{thread} thread",
    "sheet-needle-own": "{needle} needle",
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
    "sheet-tool-slash": "Small scissors that are sharp up to the points, for cutting into a piece",
    "sheet-tool-hanger": "Hanger with clips",
    "sheet-tool-card": "A piece of card, cut to the finished shape of the pocket",
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
    "sheet-cut-fused-half": (
        "Interfacing half as wide, from the edge that is sewn on to the fold, to be fused to"
        " {pieces}."
    ),
    "sheet-cut-rectangle": ("A rectangle, {width} wide and {height} high, allowances included."),
    "sheet-cut-strip": "A strip: cut both halves in one, it is folded lengthwise later.",
    "sheet-cut-slant": (
        "For a curved edge cut it on the slant, at half a right angle to the selvage."
    ),
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
    "sheet-strip-means": (
        "A strip: its pattern may show only half of the width, up to the fold; what you cut is"
        " both halves in one piece, with the grain arrow along it."
    ),
    "sheet-marked-on": "On {pieces}: {marks}.",
    "sheet-marked": "On {pieces}: the point where {one} and {other} meet, as the pattern shows it.",
    "sheet-marked-mouth": (
        "On {edges}: the two marks between which the mouth of the pocket stays open."
    ),
    "sheet-marked-holes": "On {pieces}: both ends of every buttonhole.",
    "sheet-marked-fly": (
        "On {pieces}: the curved line along which the fly is topstitched, on the side that will lie"
        " on top."
    ),
    "sheet-marked-place": "On {edges}: where {pieces} will lie.",
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
    "sheet-allowance-slit": "{edges} and the strips that are sewn to them: {seam} for the seam.",
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
    "sheet-read-knit": (
        "In knitted cloth sew on the sewing machine with a stretch stitch or a narrow zigzag: a"
        " straight row breaks when the seam is stretched."
    ),
    "sheet-read-pieces": "Edges have the names that stand in the list of pieces.",
    "sheet-read-pieces-worn": (
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
    "sheet-unit-whole": "All of it",
    "sheet-unit-facings": "The facings",
    "sheet-unit-lining": "The lining",
    "sheet-unit-many": "{first} and {count} more pieces",
    "sheet-unit-none": "The whole work",
    "sheet-unit-cloth": "The cloth",
    "sheet-setup-foot": "{setup}, {foot} foot",
    "sheet-setup-thread": "{setup}, {thread} thread",
    "sheet-setup-needle": "{setup}, {needle} needle",
    "sheet-done-threads": "All loose threads are cut off, and every row is fastened at both ends.",
    "sheet-done-seams": "Every seam is whole: pulled gently, it shows no gap.",
    "sheet-done-basting": "No pin, basting thread or chalk is left.",
    "sheet-done-closures": "Every closure works, several times: {closures}.",
    "sheet-done-hem": "Hems are level, and nothing is twisted.",
    "sheet-done-turned": "It is turned right side out.",
    "sheet-done-press": "All is pressed once more from the wrong side.",
    "sheet-done-boxes": "Every box on this sheet is ticked.",
}
