"""The orders that the planner finds, where there are any."""

from seqplan.plan.lessons import LESSON
from seqplan.plan.plan import NoPlanError, Planner


def plans(c, binding) -> tuple:
    """A booklet, a batch and a repair; none where the cloth allows no order, which is said."""
    planner = Planner(c, binding)
    try:
        return planner.booklet(), planner.batch(), planner.repair()
    except NoPlanError as error:
        (conflict, *_) = error.binding.conflicts
        assert LESSON in {reason.rule for reason in conflict.reasons}
        return ()
