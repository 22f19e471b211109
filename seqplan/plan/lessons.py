"""What a rehearsal teaches: an order that gets stuck becomes a reason for the next search.

Whether a thing can be turned, reached or threaded depends on the state of the work, which no fixed
reason holds. So an order is found, walked, and where it gets stuck a reason is added that rules out
this way of getting stuck and no sound order; then another is found. Each lesson holds whenever its
operation comes next with the same things done, however the rest stands, so a proof with lessons is
a proof.
"""

from seqplan.base.ids import OpId, RuleSlug
from seqplan.base.strength import Strength
from seqplan.graph.reason import Arc, Reason, ReasonKind
from seqplan.model.operation import Action
from seqplan.recipes.construction import Construction
from seqplan.rehearse.trouble import Trouble, tell_trouble
from seqplan.rehearse.walk import Rehearsal

LESSON = RuleSlug("rehearsed")
"""What stands in place of a rule's name where the rehearsal teaches it."""


_ONE_OF_MANY = frozenset({"trapped", "no-way-out", "no-longer-flat", "slider-out-of-reach"})
"""Where several seams together are to blame, so that any one of them could have waited."""


_IN_BETWEEN = frozenset({"away", "still-setting", "still-wet"})
"""Where something is the case for a while, so that one may come before it or wait."""


def lesson(c: Construction, stuck: Rehearsal) -> Reason | None:
    """Make a reason of the place where a rehearsal got stuck.

    What is missing comes before; of what is done already something has to wait: the operation that
    is to blame, or one of the seams sewn so far where only several together close the work.

    Of what is left undone at the end, layers that are never turned are joined before the turning.

    Returns
    -------
    Reason or None
        ``None`` where it did not get stuck, or nothing that is done could wait.
    """
    unturned = [debt for debt in stuck.debts if debt.why == "never-turned"]
    if not stuck.troubles and not unturned:
        return None
    trouble = (*stuck.troubles, *unturned)[0]
    alternatives = _alternatives(c, stuck, trouble)
    if not alternatives:
        return None
    return Reason(
        alternatives=alternatives,
        kind=ReasonKind.NEEDS,
        strength=Strength.MUST,
        rule=LESSON,
        because=tell_trouble(trouble),
        source=c.op[trouble.op].path,
    )


def _alternatives(
    c: Construction, stuck: Rehearsal, trouble: Trouble
) -> tuple[tuple[Arc, ...], ...]:
    op = trouble.op
    if trouble.why == "never-turned":
        turns = (o for o in c.acting(Action.TURN) if c.shapes[c.op[op].entry].skins <= o.pieces)
        return tuple((Arc(op, turn.id),) for turn in turns)
    if trouble.missing is not None and trouble.blame is not None and trouble.why in _IN_BETWEEN:
        return ((Arc(trouble.missing, op),), (Arc(op, trouble.blame),))
    if trouble.wanted:
        return tuple((Arc(missing, op),) for missing in trouble.wanted)
    if trouble.why in _ONE_OF_MANY:
        done = stuck.order[: stuck.reached]
        return tuple((Arc(op, seam),) for seam in done if _is_seam(c, seam) and seam != op)
    return ((Arc(op, trouble.blame),),) if trouble.blame is not None else ()


def _is_seam(c: Construction, op: OpId) -> bool:
    entry = c.op[op].entry
    return c.main(entry).id == op and bool(c.shapes[entry].glues)
