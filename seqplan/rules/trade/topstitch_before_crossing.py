"""A seam is pressed, then topstitched, and both before another seam crosses it.

Why
---
A row that begins after the crossing shows its ends; inside a tube it is awkward, and a layer that
was added since is caught.

Fires
-----
`yoke/press` before `yoke/topstitch`; `yoke/topstitch` before the armhole seam that crosses it; of
a bag, `turn` before `top/topstitch`.

Stays quiet
-----------
The seam is not topstitched, or it is an edge that is turned: there the row goes all round, at last.

Sources
-------
The classic shirt, P. Powell, 2020; Cargo pant operation breakdown, 2015; Production sequence
of basic T-shirt, textileflowchart, 2015 (shoulder topstitched before the neck rib).
"""

from collections.abc import Iterator
from itertools import permutations

from seqplan.base.ids import EntryId, RuleSlug
from seqplan.base.strength import Strength
from seqplan.graph.reason import Reason
from seqplan.model.entry import SeamKind
from seqplan.model.operation import Action
from seqplan.recipes.construction import Construction
from seqplan.rules.crossings import (
    in_own_order,
    tidied_before_crossed,
    tidying,
    turned_by_hand,
)
from seqplan.rules.rule import Rule, arc


def _derive(c: Construction) -> Iterator[Reason]:
    for shape in c.joins:
        seam = shape.entry.id
        ready = [op for action in _MAKING_READY for op in tidying(c, seam, action)]
        for row in tidying(c, seam, Action.TOPSTITCH):
            for before in (*ready, *turned_by_hand(c, seam)):
                if not in_own_order(c, before, row):
                    yield arc(RULE, before, row, key="because-ready-before-topstitching")
    turned = {shape.entry.id for shape in c.joins if turned_by_hand(c, shape.entry.id)}
    yield from tidied_before_crossed(
        RULE, c, Action.TOPSTITCH, but=turned, later=set(_rows_that_run_on(c))
    )


def _rows_that_run_on(c: Construction) -> Iterator[tuple[EntryId, EntryId]]:
    """Seams, each with one that crosses it first.

    A row along a turned edge comes last, and so does one that runs on from one into the other.
    """
    for shape in c.joins:
        if shape.entry.seam in {SeamKind.FACED, SeamKind.ENCLOSED}:
            for stretch in c.stretches[shape.entry.id]:
                yield from ((shape.entry.id, seam) for seam in stretch.junctions)
    for row in c.acting(Action.TOPSTITCH):
        on = {op.entry for segment in row.segments for op in c.on_segment[segment]}
        yield from permutations(sorted(on), 2)


_MAKING_READY = (Action.FINISH, Action.PRESS, Action.TURN, Action.CLOSE_BAND)


RULE = Rule(
    RuleSlug("topstitch-before-crossing"),
    Strength.SHOULD,
    _derive,
    __doc__ or "",
    numbers=(38, 66, 76),
)
