"""Interfacing is fused before the piece is turned or closed in a collar, cuff, band or strap.

Why
---
Inside there is no way in for the interfacing, and nothing lies flat under the iron any more.

Fires
-----
`interface` before `collar/turn`, `waistband/close` and `strap/turn`.

Stays quiet
-----------
A facing that is only folded to the inside can still be lifted. Interfacing that was sewn to a
facing as a layer of its own is turned first and fused then.

Sources
-------
Interfacing, Alberta distance learning; Apparel: Design, Textiles & Construction, Goodheart-
Willcox, 2012, p. 454; the exception: A neat way to attach fusible interfacing, Valentine and
Stitch.
"""

from collections.abc import Iterator

from seqplan.base.ids import RuleSlug
from seqplan.base.strength import Strength
from seqplan.graph.reason import Reason
from seqplan.model.entry import SeamKind, Verb
from seqplan.model.operation import Action, Operation
from seqplan.recipes.construction import Construction
from seqplan.rules.rule import Rule, arc


def _derive(c: Construction) -> Iterator[Reason]:
    for fuse in c.acting(Action.FUSE):
        for other in c.on_pieces(fuse.pieces, Action.TURN, Action.CLOSE_BAND):
            if _shuts_in(c, other, fuse):
                yield arc(RULE, fuse, other)


def _shuts_in(c: Construction, op: Operation, fuse: Operation) -> bool:
    """Whether an operation shuts a piece in that is to be fused."""
    entry = c.entry(op)
    if entry.verb is Verb.STRAP:
        return True
    if op.action is Action.CLOSE_BAND:
        return entry.verb is Verb.BAND and bool(fuse.pieces & set(entry.partners))
    skins = c.shapes[op.entry].skins
    layers = {c.garment.fabric[f].kind for f in _fabrics(c, op) if f in c.garment.fabric}
    is_interfaced = any("interfacing" in kind.casefold() for kind in layers)
    return entry.seam is SeamKind.ENCLOSED and bool(skins & fuse.pieces) and not is_interfaced


def _fabrics(c: Construction, op: Operation) -> Iterator[str]:
    for id_ in op.pieces:
        fabric = c.garment.piece[id_].fabric
        if fabric is not None:
            yield fabric


RULE = Rule(RuleSlug("fuse-before-turned"), Strength.MUST, _derive, __doc__ or "", numbers=(9,))
