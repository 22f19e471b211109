"""What is folded, pressed under or marked is used before it gets wet, or folded after that.

Why
---
In the bath folds come out and marks wash away: bias tape that was pressed in half is a flat strip
again.

Fires
-----
Of `tape-fold`, `dye` (`wet: yes`) and `binding`: `dye` before `tape-fold`, or `binding` before
`dye`.

Stays quiet
-----------
Nothing gets wet, or the folded piece does not.

Sources
-------
Common practice; a maker's account of an apron that was dyed with its tape.
"""

from collections.abc import Iterator

from seqplan.base.ids import RuleSlug
from seqplan.base.strength import Strength
from seqplan.graph.reason import Reason
from seqplan.model.operation import Action, Operation
from seqplan.recipes.construction import Construction
from seqplan.rules.rule import Rule, either
from seqplan.words.say import say


def _derive(c: Construction) -> Iterator[Reason]:
    for wet in c.acting(Action.DO, Action.SEND_OUT):
        if not c.entry(wet).is_wet:
            continue
        for fold in c.on_pieces(wet.pieces, *_LOST):
            for user in _users(c, fold):
                because = say("because-folded-after-wet", fold=fold.id, wet=wet.id, user=user.id)
                bundles = ([(wet, fold)], [(user, wet)])
                yield either(RULE, bundles, asker=wet, because=because)


_LOST = (Action.FOLD, Action.FOLD_BAND, Action.TURN_UP, Action.PRESS_UNDER, Action.MARK)

_OF_FOLDS = frozenset(
    {
        Action.HEM,
        Action.CASE,
        Action.SET_ON,
        Action.WRAP,
        Action.CLOSE_BAND,
        Action.STITCH_ON,
        Action.MAKE_STRAP,
    }
)
"""What is stitched along a fold."""

_BY_MARKS = frozenset({Action.DART, Action.PLEAT, Action.SLASH, Action.BUTTONHOLE, Action.SET_ZIP})
"""What goes by marks."""


def _users(c: Construction, fold: Operation) -> Iterator[Operation]:
    """What needs the fold or the mark: parts of the same recipe, or what is done to those edges."""
    wanted = _BY_MARKS if fold.action is Action.MARK else _OF_FOLDS
    is_own_entry = fold.action in {Action.FOLD, Action.MARK}
    for op in c.on_pieces(fold.pieces, *wanted):
        if op.entry == fold.entry or is_own_entry:
            yield op


RULE = Rule(RuleSlug("folded-after-wet"), Strength.SHOULD, _derive, __doc__ or "", numbers=(1,))
