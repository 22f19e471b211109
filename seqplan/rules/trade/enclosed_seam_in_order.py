"""An enclosed seam is trimmed, then clipped, then pressed, then turned.

Why
---
Each needs the one before, and once the work is turned nobody gets at the allowances again.

Fires
-----
`waist/trim`, `waist/clip`, `waist/press`, `waist/turn`, one after the other.

Stays quiet
-----------
An operation that the seam does not have is passed over. A plain seam of the outside may be pressed
before it is trimmed, as for a fell. A press by an entry of its own is free: a
seam is also pressed as it was stitched, before it is trimmed, and again once it is turned.

Sources
-------
Apparel: Design, Textiles & Construction, Goodheart-Willcox, 2012, pp. 451-453; Crash course on
creating collars, Sew magazine. Pressed only when it is turned: Lined vest tutorial, after M. R.
Shields, 2010; I sewed myself into a corner, 2008.
"""

from collections.abc import Iterator
from itertools import pairwise

from seqplan.base.ids import RuleSlug
from seqplan.base.strength import Strength
from seqplan.graph.reason import Reason
from seqplan.model.entry import SeamKind
from seqplan.model.operation import Action
from seqplan.model.piece import Layer
from seqplan.recipes.construction import Construction
from seqplan.recipes.shape import Shape
from seqplan.rules.crossings import tidying, turned_by_hand
from seqplan.rules.rule import Rule, arc


def _derive(c: Construction) -> Iterator[Reason]:
    for shape in c.joins:
        if shape.entry.seam in {SeamKind.FRENCH, SeamKind.FLAT_FELLED, SeamKind.OWN}:
            continue
        present = [tidying(c, shape.entry.id, action) for action in _IN_ORDER]
        present.append(c.doing(shape.entry.id, Action.PRESS) if _lies_inside(c, shape) else ())
        present.append(tidying(c, shape.entry.id, Action.TURN) + turned_by_hand(c, shape.entry.id))
        groups = [ops for ops in present if ops]
        if not (present[-1] or present[0] or present[1]):
            continue
        for earlier, later in pairwise(groups):
            is_hard = later is present[-1] and earlier[0].action in _IN_ORDER
            strength = None if is_hard else Strength.SHOULD
            yield from (arc(RULE, a, b, strength=strength) for a in earlier for b in later)
        # What is turned can still be pressed, but no longer cut.
        for cut in (op for ops in present[: len(_IN_ORDER)] for op in ops):
            if groups[-1] is present[-1] and cut not in groups[-2]:
                yield from (arc(RULE, cut, turn) for turn in present[-1])


def _lies_inside(c: Construction, shape: Shape) -> bool:
    """Whether the allowances of a seam get enclosed; a seam of the outside may be felled."""
    layers = {c.garment.piece[piece].layer for piece in shape.skins}
    return shape.entry.seam is not SeamKind.PLAIN or layers != {Layer.SHELL}


_IN_ORDER = (Action.TRIM, Action.GRADE, Action.CLIP)


RULE = Rule(
    RuleSlug("enclosed-seam-in-order"), Strength.MUST, _derive, __doc__ or "", numbers=(30, 31, 73)
)
