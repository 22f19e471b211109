"""Cloth is washed before it is cut, and cut and marked before it is sewn.

Why
---
Later shrinkage cannot be evened out and puckers the seams; marks cannot be found again once the
piece has a shape.

Fires
-----
`{pretreat: all}` before `{cut: all}`, that before `{mark: front}`, and that before everything
that is done to `front`.

Stays quiet
-----------
The file has no operation that washes, cuts or marks. Free words, waiting and sending out may come
before: cloth rests, is straightened and is printed, too.

Sources
-------
Prepare Fabric Properly, Threads; Linings Made Easy, CT-MMB.004, University of Kentucky (lining
preshrunk before cutting); Apparel: Design, Textiles & Construction, Goodheart-Willcox,
2012, p. 465 (marks).
"""

from collections.abc import Iterable, Iterator, Sequence

from seqplan.base.ids import PieceId, RuleSlug
from seqplan.base.strength import Strength
from seqplan.graph.reason import Reason
from seqplan.model.operation import Action, Operation
from seqplan.recipes.construction import Construction
from seqplan.rules.rule import Rule, arc


def _derive(c: Construction) -> Iterator[Reason]:
    stages = (c.acting(Action.CUT), c.acting(Action.MARK), _sewing(c))
    for wash in c.acting(Action.PRETREAT):
        for op in _first_of([[o for o in stage if _is_of(c, o, wash)] for stage in stages]):
            yield arc(RULE, wash, op, key="because-washed-before-cut")
    for place, stage in enumerate(stages[:-1], start=1):
        for early in stage:
            later = [[o for o in after if o.pieces & early.pieces] for after in stages[place:]]
            for op in _first_of(later):
                is_hard = early.action is Action.CUT or op.action in _BY_MARKS
                yield arc(RULE, early, op, strength=None if is_hard else Strength.SHOULD)


def _sewing(c: Construction) -> tuple[Operation, ...]:
    """What is done to cut pieces; what you say in your own words may as well come before."""
    return tuple(op for op in c.operations if op.action not in _ANY_TIME)


_ANY_TIME = frozenset(
    {
        Action.PRETREAT,
        Action.CUT,
        Action.MARK,
        Action.DO,
        Action.WAIT,
        Action.SEND_OUT,
    }
)


def _first_of(stages: Iterable[Sequence[Operation]]) -> Iterator[Operation]:
    """Of what is done to a piece only the first stage: what is marked is cut by then."""
    seen: set[PieceId] = set()
    for stage in stages:
        found = [op for op in stage if not (op.pieces and op.pieces <= seen)]
        yield from found
        seen = seen.union(*(op.pieces for op in found))


def _is_of(c: Construction, op: Operation, wash: Operation) -> bool:
    """Whether an operation works on the cloth that is washed."""
    washed = set(c.entry(wash).fabrics)
    cloth = {c.garment.piece[id_].fabric for id_ in op.pieces} | {c.entry(op).fabric}
    return bool(cloth & washed)


_BY_MARKS = frozenset(
    {
        Action.DART,
        Action.PLEAT,
        Action.SLASH,
        Action.STITCH_ON,
        Action.SET_ZIP,
        Action.BUTTONHOLE,
        Action.BIND_HOLE,
    }
)
"""What cannot be done without its marks."""


RULE = Rule(RuleSlug("cut-before-sewn"), Strength.MUST, _derive, __doc__ or "", numbers=(1, 2, 5))
