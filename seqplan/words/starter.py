"""Sentences: the file to start from, and what is said when it is written."""

from typing import Final

_STARTER = """\
# A garment for seqplan: a pull-on skirt to turn into your own. What stands after a # is a note
# for people. Everything else is `name: value`; what belongs under a name is indented by spaces.
# Change a line, save, and run `seqplan check` with this file: it says what is wrong, and where.
garment: {name}
units: {units}
allowance: {allowance}        # how wide seams are; a measure may name its unit, too: {measure}

fabrics:
  cloth: {{kind: woven, weight: medium}}

# Lay a piece right side up, its fold at your left, and name its edges clockwise from the fold.
pieces:
  front: {{of: cloth, cut: fold, edges: [waist, side, hem]}}
  back:  {{of: cloth, cut: fold, edges: [waist, side, hem]}}

notions:
  elastic: {{kind: elastic, length: {elastic}}}

# What is done, in the order in which you would do it. You choose the name before the colon; the
# first word in the braces is a verb, or `do:` with words of your own. `front.side` is the edge
# `side` of the piece `front`.
operations:
  side-seams: {{sew: front.side, to: back.side, as: pressed open}}
  # fitting: {{fit: all, note: Is it as wide and as long as you like it?}}
  # rows: {{topstitch: [front.side, back.side]}}
  waist: {{casing: [front.waist, back.waist], depth: {casing}, gap: {gap}}}
  elastic: {{insert: elastic, in: waist}}
  hem: {{hem: [front.hem, back.hem], depth: {hem}, turned: twice}}

# To try: take the `# ` away before `fitting` or `rows`. Then move `hem` above `side-seams`, check
# again, and read why that cannot be. `seqplan make` makes the booklet and the picture.
"""

SENTENCES: Final[dict[str, str]] = {
    "starter": _STARTER,
    "starter-written": "Wrote {path}. Open it in a text editor, then run:\n  seqplan check {shown}",
    "starter-no-name": 'a garment needs a name. Give it one in quotes: seqplan new "Quay skirt"',
    "starter-unseen": (
        "the name holds the invisible character {code}. Type the name afresh; it often comes along"
        " with text pasted from elsewhere."
    ),
    "starter-exists": "it is there already; name another with -o, or write over it with --force",
}
