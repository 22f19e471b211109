"""A slit is cut before its edges are bound, hemmed or turned.

Why
---
Its edges are not there before.

Fires
-----
`{slash: front.slit}` before what binds or hems `front.slit`; before the facing of a slit is
turned.

Stays quiet
-----------
The slit is cut as a part of the placket that is set into it. A facing may be stitched round the
line before it is cut.

Sources
-------
Follows from what the operations make.
"""

from collections.abc import Iterator

from seqplan.base.ids import RuleSlug
from seqplan.base.strength import Strength
from seqplan.graph.reason import Reason, ReasonKind
from seqplan.model.entry import SeamKind, Verb
from seqplan.model.operation import Action
from seqplan.recipes.construction import Construction
from seqplan.rules.rule import Rule, arc


def _derive(c: Construction) -> Iterator[Reason]:
    for slash in c.acting(Action.SLASH):
        if c.entry(slash).verb is not Verb.SLASH:
            continue
        edges = {s for s in slash.segments if c.rings.pieces[s.piece].edges[s.place].is_slit}
        for other in c.meeting(slash, *_ON_EDGES):
            is_facing = c.entry(other).seam in {SeamKind.FACED, SeamKind.ENCLOSED}
            is_stitched_round = is_facing and other.action is Action.SEW
            if edges & set(other.segments) and not is_stitched_round:
                yield arc(RULE, slash, other)


_ON_EDGES = (
    Action.SEW,
    Action.FINISH,
    Action.SET_ON,
    Action.TURN_UP,
    Action.SET_ZIP,
    Action.TRIM,
    Action.CLIP,
    Action.TURN,
)


RULE = Rule(
    RuleSlug("slit-before-its-edges"),
    Strength.MUST,
    _derive,
    __doc__ or "",
    kind=ReasonKind.NEEDS,
)
