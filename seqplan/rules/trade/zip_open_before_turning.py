"""A zip that lies in the way out is opened before the work is turned, and can be reached then.

Why
---
A closed zip is a wall: the outside cannot be drawn out past it, and its slider lies inside.

Fires
-----
The zip is set in, then `{open: zip}`, then the seams that end at the zip, then `{turn: all}`.

Stays quiet
-----------
No operation opens the zip: then its absence is another finding.

Sources
-------
Common practice; several published makers report the slip with pouches and cushions.
"""

from collections.abc import Iterator

from seqplan.base.ids import RuleSlug
from seqplan.base.strength import Strength
from seqplan.graph.reason import Reason
from seqplan.model.entry import Verb
from seqplan.model.operation import Action
from seqplan.recipes.construction import Construction
from seqplan.rules.closures import entries_ending_at
from seqplan.rules.rule import Rule, arc


def _derive(c: Construction) -> Iterator[Reason]:
    for opening in c.acting(Action.OPEN):
        for op in c.operations:
            holds_it = bool(set(op.notions) & set(opening.notions)) and op is not opening
            is_set = holds_it and not op.part
            if not is_set:
                continue
            yield arc(RULE, op, opening, key="because-zip-in-before-opened")
            for id_ in entries_ending_at(c, op.entry):
                if c.shapes[id_].glues and not c.garment.entry[id_].between:
                    yield arc(RULE, opening, c.main(id_), key="because-slider-in-reach")
            for turn in c.on_pieces(op.pieces, Action.TURN):
                if c.entry(turn).verb is Verb.TURN:
                    yield arc(RULE, opening, turn)


RULE = Rule(
    RuleSlug("zip-open-before-turning"), Strength.MUST, _derive, __doc__ or "", numbers=(35,)
)
