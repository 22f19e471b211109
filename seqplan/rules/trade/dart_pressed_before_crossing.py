"""A dart or pleat is pressed before the seam that crosses it.

Why
---
Once the seam has caught it, it can no longer be laid over the ham or pressed to one side up to
the edge.

Fires
-----
`waist-dart/press` before the seam on `front.waist`.

Stays quiet
-----------
The press is left out, or the seam lies on another edge.

Sources
-------
Apparel: Design, Textiles & Construction, Goodheart-Willcox, 2012, p. 468; Pressing Skills,
Oregon 4-H fact sheet 320-14, 2014.
"""

from collections.abc import Iterator

from seqplan.base.ids import RuleSlug
from seqplan.base.strength import Strength
from seqplan.graph.reason import Reason
from seqplan.model.entry import Verb
from seqplan.model.operation import Action
from seqplan.recipes.construction import Construction
from seqplan.rules.parts import pleats_both_layers
from seqplan.rules.rule import Rule, arc


def _derive(c: Construction) -> Iterator[Reason]:
    for press in c.acting(Action.PRESS):
        if c.entry(press).verb not in {Verb.DART, Verb.PLEAT}:
            continue
        for other in c.meeting(press, Action.DART, Action.PLEAT):
            if other.entry == press.entry:
                yield arc(RULE, other, press, key="because-dart-sewn-before-pressed")
        for other in c.meeting(press, Action.SEW, Action.TURN_UP, Action.SET_ZIP, Action.SET_ON):
            if not pleats_both_layers(c, press, other):
                yield arc(RULE, press, other)


RULE = Rule(
    RuleSlug("dart-pressed-before-crossing"),
    Strength.SHOULD,
    _derive,
    __doc__ or "",
    numbers=(13, 17),
)
