"""A row along a turned edge comes after the seams that it runs across.

Why
---
A seam that is sewn later cuts the row in two: it has to be unpicked at the seam, or its ends show.

Fires
-----
`sides` before `row`, which topstitches the armholes of a lined bodice whose side seams close
outside and lining in one.

Stays quiet
-----------
The row lies on a seam that is not turned, and so is crossed by the next; it ends before the seam,
as with `stop:`, or the seam runs on past its end.

Sources
-------
Common practice; a maker's account of a sleeveless bodice whose armholes are topstitched once the
underarm seams are closed.
"""

from collections.abc import Iterator

from seqplan.base.ids import RuleSlug
from seqplan.base.strength import Strength
from seqplan.graph.reason import Reason
from seqplan.model.entry import SeamKind
from seqplan.model.operation import Action
from seqplan.recipes.construction import Construction
from seqplan.rules.rule import Rule, arc

_TURNED = frozenset({SeamKind.FACED, SeamKind.ENCLOSED})


def _derive(c: Construction) -> Iterator[Reason]:
    for row in c.acting(Action.TOPSTITCH):
        edges = c.seams_at(row.segments)
        if not any(c.garment.entry[id_].seam in _TURNED for id_ in edges):
            continue
        for seam in dict.fromkeys(e for s in c.stretches[row.entry] for e in s.junctions):
            if c.garment.entry[seam].seam not in _TURNED and seam != row.entry:
                yield arc(RULE, c.closing(seam), row)


RULE = Rule(
    RuleSlug("edge-row-after-its-seams"), Strength.SHOULD, _derive, __doc__ or "", numbers=(72,)
)
