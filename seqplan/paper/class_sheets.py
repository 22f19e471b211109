"""The sheets for a class: one for each learner, one for the teacher, and the state cards."""

from seqplan.model.workroom import Workroom
from seqplan.paper.blocks import Document
from seqplan.paper.course import Course
from seqplan.paper.learner import learner_sheet, state_cards
from seqplan.paper.teacher import teacher_sheet
from seqplan.plan.plan import Planner
from seqplan.plan.stops import find_pauses, find_sessions, gathered_late
from seqplan.recipes.construction import Construction
from seqplan.tell.sheet import make_sheet


def compose(
    c: Construction,
    planner: Planner,
    *,
    sessions: int | None = None,
    learners: int | None = None,
    workroom: Workroom | None = None,
) -> tuple[Document, Document, Document]:
    """Compose the sheets for a class in the order of the booklet, gathers as late as can be.

    Parameters
    ----------
    c
        The garment.
    planner
        Finds its orders.
    sessions
        How many sessions; without it as many as the amount of work makes of it.
    learners, workroom
        How many learners there are, and the machines that they share; both are wanted for the
        length of queues.

    Returns
    -------
    Document, Document, Document
        The learner's sheet, the teacher's sheet, the state cards.

    Raises
    ------
    NoPlanError
        When no order exists.
    """
    held = planner.binding.held
    plan = planner.regrouped(gathered_late(c, planner.booklet().order, held))
    pauses = find_pauses(c, plan, held)
    course = Course(
        c=c,
        binding=planner.binding,
        plan=plan,
        sheet=make_sheet(c, plan),
        pauses=pauses,
        sessions=find_sessions(plan, pauses, sessions),
        asked=sessions,
        learners=learners,
        workroom=None if workroom is None else workroom.filled(c.garment.stations),
    )
    return learner_sheet(course), teacher_sheet(course), state_cards(course)
