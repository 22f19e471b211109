"""A slit is cut before anything is done to its edges.

Why
---
Its edges are not there before.

Fires
-----
`{slash: front.slit}` before what binds, faces or hems `front.slit`.

Stays quiet
-----------
The slit is cut as a part of the placket that is set into it.

Sources
-------
Follows from what the operations make.
"""

from collections.abc import Iterator

from seqplan.base.ids import RuleSlug
from seqplan.base.strength import Strength
from seqplan.graph.reason import Reason
from seqplan.model.entry import Verb
from seqplan.model.operation import Action
from seqplan.recipes.construction import Construction
from seqplan.rules.rule import Rule, arc


def _derive(c: Construction) -> Iterator[Reason]:
    for slash in c.acting(Action.SLASH):
        if c.entry(slash).verb is not Verb.SLASH:
            continue
        edges = {s for s in slash.segments if c.rings.pieces[s.piece].edges[s.place].is_slit}
        for other in c.meeting(slash, *_ON_EDGES):
            if edges & set(other.segments):
                yield arc(RULE, slash, other)


_ON_EDGES = (Action.SEW, Action.FINISH, Action.SET_ON, Action.TURN_UP, Action.SET_ZIP, Action.CLIP)


RULE = Rule(RuleSlug("slit-before-its-edges"), Strength.MUST, _derive, __doc__ or "")
