"""A facing is understitched before its edge is topstitched or its ends are closed.

Why
---
The row goes through facing and allowances alone. Once the edge is topstitched, or the ends of the
facing are sewn down, the foot no longer gets between facing and garment.

Fires
-----
`{understitch: front.neck}` before `{topstitch: front.neck}`; before a seam that joins the end of
the facing to the garment, unless that seam was sewn before the facing was attached.

Stays quiet
-----------
The facing is only tacked: that is good practice, and another rule.

Sources
-------
Apparel: Design, Textiles & Construction, Goodheart-Willcox, 2012, p. 453; How to understitch a
facing, Threads, 2019.
"""

from collections.abc import Iterator

from seqplan.base.ids import EntryId, RuleSlug
from seqplan.base.strength import Strength
from seqplan.graph.reason import Reason
from seqplan.model.operation import Action
from seqplan.model.piece import Layer
from seqplan.recipes.construction import Construction
from seqplan.recipes.shape import Shape
from seqplan.rules.crossings import tidying
from seqplan.rules.rule import Rule, arc, either
from seqplan.words.say import say


def _derive(c: Construction) -> Iterator[Reason]:
    for shape in c.joins:
        seam = shape.entry.id
        for row in tidying(c, seam, Action.UNDERSTITCH):
            for after in tidying(c, seam, Action.TOPSTITCH):
                yield arc(RULE, row, after)
            for end in _closing_ends(c, shape):
                because = say("because-understitch-ends-either", row=row.id, end=end, seam=seam)
                bundles = ([(row, c.main(end))], [(c.main(end), c.main(seam))])
                yield either(RULE, bundles, asker=row, because=because)


def _closing_ends(c: Construction, shape: Shape) -> Iterator[EntryId]:
    """The seams that join the ends of a facing, where its seam ends, to the garment."""
    for stretch in c.stretches[shape.entry.id]:
        for tip in stretch.tips:
            glue = c.finished.glue_at(c.rings.across(tip).neighbour.segment)
            if glue is not None and glue.entry != shape.entry.id:
                layers = [c.garment.piece[s.piece].layer for s in (glue.first, glue.second)]
                if layers.count(Layer.SHELL) == 1:
                    yield glue.entry


RULE = Rule(
    RuleSlug("understitch-before-closed"), Strength.MUST, _derive, __doc__ or "", numbers=(32,)
)
