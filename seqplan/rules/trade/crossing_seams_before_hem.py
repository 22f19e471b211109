"""The seams that a hem runs over are sewn before it.

Why
---
A hem that wraps a tube is folded over the seams that close it. A seam sewn later would cross a
finished hem. `flat: yes` says that the hem is sewn flat, before the last seam closes the tube.

Fires
-----
`centre-back` before `hem/turn-up`.

Stays quiet
-----------
The hem is flat, or ends where the seam begins.

Sources
-------
Putting in Hems (clothing handbook); Hemming Skills Level 2 & 3, Oregon 4-H fact sheet 320-32,
2014. That the hem comes last is a preference only: petticoat, apron, pyjamas and T-shirt orders
in print hem early.
"""

from collections.abc import Iterator

from seqplan.base.ids import RuleSlug
from seqplan.base.strength import Strength
from seqplan.graph.reason import Reason
from seqplan.model.entry import Verb
from seqplan.recipes.construction import Construction
from seqplan.rules.rule import Rule
from seqplan.rules.runs import continuous_runs


def _derive(c: Construction) -> Iterator[Reason]:
    yield from continuous_runs(RULE, c, frozenset({Verb.HEM}))


RULE = Rule(
    RuleSlug("crossing-seams-before-hem"), Strength.MUST, _derive, __doc__ or "", numbers=(72,)
)
