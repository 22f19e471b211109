"""A seam is sewn before it is trimmed, pressed, understitched or turned.

Why
---
There is nothing to tidy yet. The separate edges of a seam that is pressed open may be finished
before it, so their finishing is not meant; edges finished together are.

Fires
-----
`side-seams` before `side-seams/press`; `neck` before an entry that understitches `front.neck`.

Stays quiet
-----------
The operation tidies an edge that no seam joins. An inward curve that is staystitched may be
clipped before it is sewn, pocket bags pressed and understitched before their seam, and layers that
are held or basted may be pressed as they lie. The parts of a seam of your own come as you list
them.

Sources
-------
Follows from what the operations make.
"""

from collections.abc import Iterator

from seqplan.base.ids import RuleSlug
from seqplan.base.strength import Strength
from seqplan.graph.reason import Reason, ReasonKind
from seqplan.model.entry import SeamKind, Verb
from seqplan.model.operation import Action, Operation
from seqplan.recipes.construction import Construction
from seqplan.rules.crossings import in_own_order
from seqplan.rules.rule import Rule, arc


def _derive(c: Construction) -> Iterator[Reason]:
    for op in c.acting(*_TIDYING):
        for seam in c.seams_at(op.segments):
            is_part = op.entry == seam
            if (is_part or _is_on_its_own(c, op)) and not in_own_order(c, c.main(seam), op):
                yield arc(RULE, c.main(seam), op)
    for op in c.acting(Action.FINISH):
        if c.entry(op).seam in {SeamKind.FINISHED_TOGETHER, SeamKind.BOUND}:
            yield arc(RULE, c.main(op.entry), op)


_TIDYING = (
    Action.TRIM,
    Action.GRADE,
    Action.CLIP,
    Action.PRESS,
    Action.PRESS_OVER,
    Action.ENCLOSE,
    Action.UNDERSTITCH,
    Action.TOPSTITCH,
    Action.TURN,
)


def _is_on_its_own(c: Construction, op: Operation) -> bool:
    """Whether an entry does nothing but tidy: a hem's press is no press of the seams it meets."""
    if op.action is Action.CLIP and c.meeting(op, Action.STAYSTITCH):
        return False
    if op.action is Action.PRESS and c.meeting(op, Action.HOLD, Action.BASTE):
        return False
    if op.action in {Action.PRESS, Action.UNDERSTITCH} and _has_pocket_bags(c, op):
        return False
    return len(c.of_entry[op.entry]) == 1


def _has_pocket_bags(c: Construction, op: Operation) -> bool:
    """Whether pocket bags lie on the edges, which are tidied before the seam closes."""
    set_on = c.meeting(op, Action.SET_ON)
    return any(c.entry(other).verb is Verb.IN_SEAM_POCKET for other in set_on)


RULE = Rule(
    RuleSlug("seam-before-its-tidying"),
    Strength.MUST,
    _derive,
    __doc__ or "",
    kind=ReasonKind.NEEDS,
)
