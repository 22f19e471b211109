"""An opening is cut and its edges are finished before the band that ends there is closed.

Why
---
Cuff, collar and waistband end at the finished edge of a placket, a slit or a front. Once the ends
of the band are sewn, that edge is shut in and can no longer be folded, faced or bound; and a slit
that is cut after the band is on would have to be cut through the band.

Fires
-----
The slash of a sleeve before its cuff; the hem of a placket, and the facing of a slit, before
`cuff/ends` and `cuff/close`.

Stays quiet
-----------
The ends of the band stay open, or the hem runs over them, as a shirt hem over its front bands. That
the edge is finished before the first seam of the band, too, is good practice, and another rule.

Sources
-------
Flat assembly method for attaching a sleeve with a cuff, Sew Store Bought, 2010; Kinne & Cooley,
Clothing and Health, 1916, lesson 12 (placket, then band); Men's formal shirt, operation breakdown,
P. Sarkar, 2011 (fronts hemmed, then the collar).
"""

from collections.abc import Iterator

from seqplan.base.ids import EntryId, RuleSlug
from seqplan.base.strength import Strength
from seqplan.graph.reason import Reason
from seqplan.model.entry import Ends, SeamKind, Verb
from seqplan.model.operation import Action, Operation
from seqplan.recipes.bands import ends_of
from seqplan.recipes.construction import Construction
from seqplan.recipes.shape import SETTING_ON
from seqplan.rules.closures import entries_ending_at, runs_over
from seqplan.rules.crossings import turned_by_hand
from seqplan.rules.rule import Rule, arc


def _derive(c: Construction) -> Iterator[Reason]:
    for entry in c.garment.entries:
        if entry.verb is not Verb.BAND:
            continue
        is_closed = ends_of(c.garment, entry) is Ends.CLOSED
        closing = c.doing(entry.id, Action.CLOSE_ENDS, Action.CLOSE_BAND) if is_closed else ()
        for id_ in entries_ending_at(c, entry.id):
            if c.garment.entry[id_].verb is Verb.SLASH:
                yield arc(RULE, c.main(id_), c.main(entry.id), key="because-slit-before-band")
            elif not runs_over(c, id_, entry.id):
                for done in _finishing(c, id_):
                    yield from (arc(RULE, done, op) for op in closing)


def _finishing(c: Construction, id_: EntryId) -> tuple[Operation, ...]:
    """What an entry does last to an edge so that it is no longer raw."""
    entry = c.garment.entry[id_]
    if entry.verb is Verb.HEM or entry.verb in SETTING_ON:
        return (c.closing(id_),)
    if entry.seam is SeamKind.FACED:
        turned = c.doing(id_, Action.TURN) + turned_by_hand(c, id_)
        return turned or (c.main(id_),)
    return ()


RULE = Rule(
    RuleSlug("opening-finished-before-band-closed"),
    Strength.MUST,
    _derive,
    __doc__ or "",
    numbers=(24, 46),
)
