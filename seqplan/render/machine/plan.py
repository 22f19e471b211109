"""Orders as data."""

from seqplan.plan.plan import Group, Plan
from seqplan.render.machine.answer import reason_data
from seqplan.render.machine.document import Data


def plan_data(plan: Plan) -> Data:
    """Give an order with its steps, its groups and what is known about it."""
    return {
        "purpose": plan.purpose.value,
        "order": list(plan.order),
        "groups": [_group(group) for group in plan.groups],
        "changes": plan.changes,
        "change_minutes": plan.change_minutes,
        "unit_changes": plan.unit_changes,
        "workroom_minutes": plan.price,
        "lower_bound": plan.lower_bound,
        "proof": plan.proof.value,
        "moved": list(plan.moved),
        "given_up": [reason_data(reason) for reason in plan.given_up],
        "waived": [reason_data(reason) for reason in plan.waived],
    }


def _group(group: Group) -> Data:
    return {
        "unit": sorted(group.unit),
        "station": group.setup.station if group.setup else None,
        "foot": group.setup.foot if group.setup else None,
        "thread": group.setup.thread if group.setup else None,
        "needle": group.setup.needle if group.setup else None,
        "steps": [
            {
                "number": step.number,
                "entry": step.entry,
                "operations": [
                    {
                        "id": op.id,
                        "action": op.action.value,
                        "station": op.setup.station,
                        "foot": op.setup.foot,
                        "thread": op.setup.thread,
                        "needle": op.setup.needle,
                    }
                    for op in step.operations
                ],
            }
            for step in group.steps
        ],
    }
