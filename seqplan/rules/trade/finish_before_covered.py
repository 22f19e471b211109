"""An edge that will be covered is finished before it is covered, or not at all.

Why
---
Under a zip tape or inside a fold neither knife nor needle reaches it any more.

Fires
-----
`neaten-back` before `zip`, whose tapes lie over the edges; `hem/finish` before `hem`; the edge of a
fly facing before the fly is topstitched.

Stays quiet
-----------
The edge is enclosed without a finish, as in a collar, a band or a hem turned twice. A hem may be
turned up and its depth evened before its edge is finished, as handbooks have it.

Sources
-------
Zipped fastening (home-economics notes), step 4 before 5; Facings Made Easy, Guide C-233, New
Mexico State University; Hemming Skills Level 2 & 3, Oregon 4-H fact sheet 320-32, 2014.
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
    for finish in c.acting(Action.FINISH):
        for cover in c.meeting(finish, Action.SET_ZIP, Action.HEM, Action.CASE, Action.SET_ON):
            # A bag, or a band sewn on in one seam, is finished together with the edge.
            is_together = cover.action is Action.SET_ON and cover.entry == finish.entry
            if c.entry(cover).verb is not Verb.IN_SEAM_POCKET and not is_together:
                yield arc(RULE, finish, cover)
        for zip_ in c.acting(Action.SET_ZIP):
            # The facing of a fly is caught by the topstitching, close to its edge.
            if finish.pieces & set(c.entry(zip_).partners):
                for row in c.doing(zip_.entry, Action.TOPSTITCH):
                    yield arc(RULE, finish, row)


RULE = Rule(RuleSlug("finish-before-covered"), Strength.MUST, _derive, __doc__ or "", numbers=(28,))
