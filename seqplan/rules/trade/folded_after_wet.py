"""What is folded, pressed under or marked is used before it gets wet, or folded after that.

Why
---
In the bath folds come out and marks wash away: bias tape that was pressed in half is a flat strip
again.

Fires
-----
Of `tape-fold`, `dye` (`wet: yes`) and `binding`: `dye` before `tape-fold`, or `binding` before
`dye`, or the tape is folded once more in between. A must of folds, and a should where a recipe
presses the edge once more, and of marks: chalk comes out, thread stays in.

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
        for fold in c.on_pieces(wet.pieces, *_FOLDS, Action.MARK):
            again = list(_again(c, fold))
            for user in _users(c, fold):
                because = say("because-folded-after-wet", fold=fold.id, wet=wet.id, user=user.id)
                bundles = [[(wet, fold)], [(user, wet)]]
                bundles += [[(wet, other), (other, user)] for other in again]
                is_lost = fold.action is not Action.MARK and not _is_folded_in_its_recipe(c, fold)
                strength = Strength.MUST if is_lost else Strength.SHOULD
                yield either(RULE, bundles, asker=wet, because=because, strength=strength)


_FOLDS = (Action.FOLD, Action.FOLD_BAND, Action.TURN_UP, Action.PRESS_UNDER)

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
    if fold.action is Action.MARK:
        yield from c.on_pieces(fold.pieces, *_BY_MARKS)
        return
    for op in c.on_pieces(fold.pieces, *_OF_FOLDS):
        is_there = fold.action is Action.FOLD and not set(fold.segments).isdisjoint(op.segments)
        if op.entry == fold.entry or is_there:
            yield op


def _again(c: Construction, fold: Operation) -> Iterator[Operation]:
    """What folds the same edges, or marks the same pieces, by an entry of its own."""
    for op in c.acting(Action.MARK if fold.action is Action.MARK else Action.FOLD):
        covers = set(fold.segments) <= set(op.segments) and fold.pieces <= op.pieces
        if op.entry != fold.entry and covers:
            yield op


def _is_folded_in_its_recipe(c: Construction, fold: Operation) -> bool:
    """Whether what is creased by an entry of its own is pressed once more by a recipe later."""
    return any(
        other.entry != fold.entry and set(fold.segments) <= set(other.segments)
        for other in c.on_pieces(fold.pieces, Action.TURN_UP, Action.PRESS_UNDER)
    )


RULE = Rule(RuleSlug("folded-after-wet"), Strength.MUST, _derive, __doc__ or "", numbers=(1,))
