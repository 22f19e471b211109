"""Layers that are to be one are held together before a seam takes them up.

Why
---
The seam has to go through all of them; a layer that is not held slips out of it. And layers that
are joined elsewhere lie on one another only once those seams are sewn.

Fires
-----
`{hold: yoke.neck, with: yoke-inner}` before the seam on `yoke.neck`; the seams that join yoke and
inner yoke, or a pocket bag to its back, before the holding; an interlining before the darts that
are sewn through it.

Stays quiet
-----------
The layer is held along an edge that no seam, fold or band takes up. A seam that only catches the
layer, such as a side seam over a pocket bag, may come before or after.

Sources
-------
Follows from what the operations make.
"""

from collections.abc import Iterator

from seqplan.base.ids import PieceId, RuleSlug
from seqplan.base.strength import Strength
from seqplan.graph.reason import Reason, ReasonKind
from seqplan.model.entry import SeamKind
from seqplan.model.operation import Action, Operation
from seqplan.model.piece import Layer
from seqplan.recipes.construction import Construction
from seqplan.recipes.shape import Shape
from seqplan.rules.rule import Rule, arc


def _derive(c: Construction) -> Iterator[Reason]:
    for hold in c.acting(Action.HOLD):
        layers = frozenset(c.entry(hold).partners)
        is_one_cloth = all(c.garment.piece[id_].layer is Layer.INTERLINING for id_ in layers)
        for other in c.meeting(hold, *_TAKING_UP, *(_SHAPING if is_one_cloth else ())):
            yield arc(RULE, hold, other)
        for shape in c.joins:
            if _lays_together(shape, hold, layers):
                # A facing lies on its piece once it is turned, other layers once they are sewn.
                is_turned = shape.entry.seam in {SeamKind.ENCLOSED, SeamKind.FACED}
                whole = c.of_entry[shape.entry.id]
                last = whole[-1] if is_turned else c.closing(shape.entry.id)
                yield arc(RULE, last, hold, key="because-lie-together")


def _lays_together(shape: Shape, hold: Operation, layers: frozenset[PieceId]) -> bool:
    """Whether a seam elsewhere joins a held layer to what it is held with, or to another layer."""
    edges = {s for glue in shape.glues for s in (glue.first, glue.second)}
    pieces = {s.piece for s in edges}
    return pieces <= hold.pieces and bool(pieces & layers) and not edges & set(hold.segments)


_TAKING_UP = (
    Action.SEW,
    Action.BASTE,
    Action.SET_ON,
    Action.SET_ZIP,
    Action.TURN_UP,
    Action.FINISH,
)
_SHAPING = (Action.DART, Action.PLEAT, Action.GATHER)


RULE = Rule(
    RuleSlug("layers-held-before-sewn"),
    Strength.MUST,
    _derive,
    __doc__ or "",
    numbers=(11, 22, 60, 68),
    kind=ReasonKind.NEEDS,
)
