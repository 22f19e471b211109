"""What a step makes is made before another step uses it.

Why
---
Free-word operations say with `makes:` and `uses:` what the program cannot see.

Fires
-----
`{do: make the strap, makes: strap}` before `{do: pin the strap in place, uses: strap}`.

Stays quiet
-----------
Nothing is declared.

Sources
-------
Follows from what the operations make.
"""

from collections.abc import Iterator

from seqplan.base.ids import RuleSlug
from seqplan.base.strength import Strength
from seqplan.graph.reason import Reason, ReasonKind
from seqplan.recipes.construction import Construction
from seqplan.rules.rule import Rule, arc


def _derive(c: Construction) -> Iterator[Reason]:
    makers = {name: entry.id for entry in c.garment.entries for name in entry.makes}
    for entry in c.garment.entries:
        for name in entry.uses:
            if name in makers and makers[name] != entry.id:
                yield arc(RULE, c.of_entry[makers[name]][-1], c.of_entry[entry.id][0], name=name)


RULE = Rule(
    RuleSlug("made-before-used"),
    Strength.MUST,
    _derive,
    __doc__ or "",
    kind=ReasonKind.NEEDS,
)
