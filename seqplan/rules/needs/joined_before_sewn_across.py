"""The seams that a run crosses are sewn before it is sewn across them.

Why
---
A run over several pieces, such as a waist over front and back, is one edge only once the pieces
are joined. Where the run closes into a ring, one of the seams across it may still be open,
whichever it is; `open:` says which, `method: in the round` asks for all of them.

Fires
-----
`side-seams` before `waist`, which runs over front and back.

Stays quiet
-----------
A single edge of a pair, such as the two inseams of trousers, is two separate seams, unless the
entry says `in one: yes`.

Sources
-------
Follows from what the operations make.
"""

from collections.abc import Iterator

from seqplan.base.ids import RuleSlug
from seqplan.base.strength import Strength
from seqplan.graph.reason import Reason, ReasonKind
from seqplan.model.entry import Verb
from seqplan.recipes.construction import Construction
from seqplan.recipes.shape import SETTING_ON
from seqplan.rules.rule import Rule
from seqplan.rules.runs import continuous_runs


def _derive(c: Construction) -> Iterator[Reason]:
    yield from continuous_runs(RULE, c, SETTING_ON | {Verb.SEW, Verb.INSERT})


RULE = Rule(
    RuleSlug("joined-before-sewn-across"),
    Strength.MUST,
    _derive,
    __doc__ or "",
    numbers=(42, 49, 50, 52, 56, 60, 65, 67),
    kind=ReasonKind.NEEDS,
)
