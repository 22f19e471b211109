"""A garment hangs before its hem is marked, and after its seams are sewn.

Why
---
Bias and flared edges grow while they hang; a hem made before drops unevenly, and what is trimmed
cannot be put back.

Fires
-----
The seams of the skirt before `{wait: 24 hours, on: skirt}`, and that before its hem and
before the hem edge is trimmed or finished.

Stays quiet
-----------
The pieces that hang are not hemmed, or are hemmed flat, before the seams close them; or one waits
for something else, as `to: dry`.

Sources
-------
Putting in Hems (clothing handbook); Hemming Skills Level 2 & 3, Oregon 4-H fact sheet 320-32,
2014.
"""

from collections.abc import Iterator

from seqplan.base.ids import RuleSlug
from seqplan.base.strength import Strength
from seqplan.graph.reason import Reason
from seqplan.model.entry import Purpose, Verb
from seqplan.model.operation import Action
from seqplan.recipes.construction import Construction
from seqplan.rules.rule import Rule, arc


def _derive(c: Construction) -> Iterator[Reason]:
    for wait in c.acting(Action.WAIT):
        if c.entry(wait).purpose not in {None, Purpose.HANG}:
            continue
        hems = [
            op
            for op in c.on_pieces(wait.pieces, Action.TURN_UP)
            if c.entry(op).verb is Verb.HEM and not c.entry(op).is_flat
        ]
        for hem in hems:
            for op in (hem, *c.meeting(hem, Action.FINISH, Action.TRIM)):
                yield arc(RULE, wait, op)
        for op in c.on_pieces(wait.pieces, *_SEWING) if hems else ():
            yield arc(RULE, op, wait, key="because-sewn-before-hung")


_SEWING = (Action.SEW, Action.SET_ON, Action.SET_ZIP)


RULE = Rule(RuleSlug("hang-before-hem"), Strength.SHOULD, _derive, __doc__ or "", numbers=(70,))
