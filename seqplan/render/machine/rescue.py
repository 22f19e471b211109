"""A rescue as data."""

from seqplan.plan.rescue import Rescue
from seqplan.plan.undoing import Undoing
from seqplan.rehearse.trouble import Trouble, tell_trouble
from seqplan.render.machine.answer import reason_data
from seqplan.render.machine.document import Data


def rescue_data(found: Rescue) -> Data:
    """Give what to undo, the last first, what stays, and the order from there to the end."""
    return {
        "missed": [id_ for id_ in found.missed if id_ not in found.wrong],
        "wrong": list(found.wrong),
        "done": list(found.done),
        "taken_as_done": list(found.implied),
        "undo": [
            {
                "operation": each.op,
                "how": each.how.value,
                "lost": each.how is Undoing.LOST,
                "reason": reason_data(each.reason),
            }
            for each in found.undone
        ],
        "kept": list(found.kept),
        "rest": list(found.rest),
        "given_up": [reason_data(reason) for reason in found.given_up],
        "proof": found.proof.value,
        "troubles": [_trouble(trouble) for trouble in found.rehearsal.troubles],
        "left_undone": [{"operation": debt.op, "why": debt.why} for debt in found.rehearsal.debts],
    }


def _trouble(trouble: Trouble) -> Data:
    return {"operation": trouble.op, "why": trouble.why, "says": tell_trouble(trouble)}
