"""A band is folded, sewn on, pressed, closed at its ends, folded over and fastened.

Why
---
Each part needs what the one before it leaves: the fold shows where the loose edge lands, the ends
are closed while the band still stands up, and the loose edge covers all of it.

Fires
-----
`waistband/fold`, `waistband`, `waistband/press`, `waistband/ends`, `waistband/wrap`,
`waistband/close`, one after the other; likewise for cuffs, bindings, plackets and straps. A seam of
its own that joins the ends of a strip to a ring, before the strip is folded.

Stays quiet
-----------
A part that is left out is passed over.

Sources
-------
Finishing the waistline, netplaces; Preparation, attachment: waist band (home-economics notes);
Waistline Treatments, CT-MMB.186, University of Kentucky.
"""

from collections.abc import Iterator

from seqplan.base.ids import RuleSlug
from seqplan.base.strength import Strength
from seqplan.graph.reason import Reason
from seqplan.model.entry import StrapMethod, Verb
from seqplan.model.operation import Action, Operation
from seqplan.recipes.construction import Construction
from seqplan.recipes.shape import SETTING_ON
from seqplan.rules.rule import Rule, arc, chain


def _derive(c: Construction) -> Iterator[Reason]:
    for entry in c.garment.entries:
        if entry.verb in SETTING_ON:
            yield from chain(RULE, c.of_entry[entry.id])
        if entry.verb is Verb.STRAP:
            is_folded = entry.strap is StrapMethod.FOLDED
            key = "because-strap-folded-in-order" if is_folded else "because-strap-turned-in-order"
            yield from chain(RULE, c.of_entry[entry.id], key=key)
    for fold in c.acting(Action.FOLD_BAND):
        yield from _joined_to_a_ring(c, fold)


def _joined_to_a_ring(c: Construction, fold: Operation) -> Iterator[Reason]:
    """A strip whose ends are joined by an entry of its own is joined, pressed, and then folded."""
    if c.entry(fold).verb not in SETTING_ON:
        return
    for shape in c.joins:
        joined = {segment.piece for segment in shape.run}
        strips = {id_ for id_ in joined & fold.pieces if c.garment.piece[id_].is_strip}
        if shape.entry.id != fold.entry and joined == strips:
            key = "because-ring-before-fold"
            yield arc(RULE, c.main(shape.entry.id), fold, key=key)
            for press in c.doing(shape.entry.id, Action.PRESS):
                yield arc(RULE, press, fold, key=key, strength=Strength.SHOULD)


RULE = Rule(RuleSlug("band-in-order"), Strength.MUST, _derive, __doc__ or "", numbers=(61,))
