"""Shots for a film: operations that are filmed in one go, in the order of filming.

They are filmed in the order with the fewest changes of set-up and seen in that of the booklet. So a
shot is as much of a visit to a set-up as stands together in one step of the booklet.
"""

from collections.abc import Sequence
from typing import NamedTuple

from seqplan.base.ids import OpId
from seqplan.graph.precedence import Precedence, arcs_of
from seqplan.model.operation import Operation
from seqplan.plan.bundles import bundles, direct_needs, pieces_in_hand
from seqplan.plan.plan import Plan, Planner
from seqplan.plan.undoing import UNDOING, Undoing
from seqplan.plan.unit import Unit
from seqplan.recipes.construction import Construction


class Shot(NamedTuple):
    """Operations that are filmed in one go.

    Parameters
    ----------
    number
        Its place in the order of filming, from 1.
    visit
        The visit to a set-up in which it is filmed, from 1.
    step
        The number of the step of the booklet that it shows, or a part of it.
    operations
        What is done in it.
    units
        What is in the picture, as it is before.
    ready
        What must be done before: only what nothing else in the list implies.
    left
        What the entry still lacks afterwards.
    """

    number: int
    visit: int
    step: int
    operations: tuple[Operation, ...]
    units: tuple[Unit, ...]
    ready: tuple[OpId, ...]
    left: tuple[OpId, ...]

    @property
    def is_once(self) -> bool:
        """Whether something is cut or glued for good, so that it cannot be filmed again."""
        return any(UNDOING[op.action] is Undoing.LOST for op in self.operations)


def find_shots(c: Construction, planner: Planner, batch: Plan, booklet: Plan) -> tuple[Shot, ...]:
    """Part the order of filming into shots.

    Parameters
    ----------
    c
        The garment.
    planner
        Knows the reasons that bind.
    batch, booklet
        The orders of filming and of viewing.
    """
    precedence = Precedence.of(c.ids, arcs_of(planner.binding.held))
    place = {id_: at for at, id_ in enumerate(booklet.order)}
    step_of = {
        op.id: step.number
        for group in booklet.groups
        for step in group.steps
        for op in step.operations
    }
    shots: list[Shot] = []
    done: list[OpId] = []
    for visit, group in enumerate(batch.groups, 1):
        for step in group.steps:
            for ops in _in_one_go(step.operations, place):
                ids = [op.id for op in ops]
                touched = pieces_in_hand(c, ops)
                units = tuple(unit for unit in bundles(c, done) if unit & touched)
                done += ids
                left = (op.id for op in c.of_entry[ops[0].entry] if op.id not in done)
                shots.append(
                    Shot(
                        number=len(shots) + 1,
                        visit=visit,
                        step=step_of[ids[0]],
                        operations=ops,
                        units=units,
                        ready=direct_needs(precedence, ids),
                        left=tuple(sorted(left, key=place.__getitem__)),
                    )
                )
    return tuple(shots)


def _in_one_go(ops: Sequence[Operation], place: dict[OpId, int]) -> list[tuple[Operation, ...]]:
    """Part operations where the booklet has another one between them, or the other way round."""
    parts: list[list[Operation]] = []
    for op in ops:
        if parts and place[op.id] == place[parts[-1][-1].id] + 1:
            parts[-1].append(op)
        else:
            parts.append([op])
    return [tuple(part) for part in parts]
