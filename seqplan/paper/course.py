"""What the sheets of a class have in common: the order, its stops, and the work at each of them."""

from collections.abc import Iterator, Mapping
from dataclasses import dataclass
from functools import cached_property

from seqplan.draw.map import map_figure
from seqplan.draw.pattern import Pattern
from seqplan.model.workroom import Workroom
from seqplan.paper.blocks import Beside, Block, Card, Items, Picture
from seqplan.plan.binding import Binding
from seqplan.plan.plan import Plan, Step
from seqplan.plan.stops import Pause, Session, steps_of
from seqplan.recipes.construction import Construction
from seqplan.rehearse.work import Work
from seqplan.tell.content import Sheet, SheetStep
from seqplan.tell.names import capital
from seqplan.tell.progress import Progress, tell_progress
from seqplan.words.say import say


@dataclass(frozen=True)
class Course:
    """A garment that is made in a class.

    Parameters
    ----------
    c, binding
        The garment, and the reasons that bind.
    plan, sheet
        The order of the booklet, and what it says.
    pauses, sessions
        The places after its steps, and the sessions.
    asked
        How many sessions were asked for, if anyone asked.
    learners, workroom
        Who shares which machines, if anyone said so.
    """

    c: Construction
    binding: Binding
    plan: Plan
    sheet: Sheet
    pauses: tuple[Pause, ...]
    sessions: tuple[Session, ...]
    asked: int | None = None
    learners: int | None = None
    workroom: Workroom | None = None

    @cached_property
    def step(self) -> Mapping[int, SheetStep]:
        """What is told of each step, by its number."""
        return {step.number: step for group in self.sheet.groups for step in group.steps}

    @cached_property
    def steps(self) -> tuple[Step, ...]:
        """The steps of the order."""
        return steps_of(self.plan)

    @property
    def safe(self) -> tuple[Pause, ...]:
        """The safe stops."""
        return tuple(pause for pause in self.pauses if pause.is_safe)

    @cached_property
    def state(self) -> Mapping[int, tuple[Block, ...]]:
        """How the work stands at each safe stop, by the number of the step before: map and words.

        Only what is looked up is worth its time, so it is made for all of them at once.
        """
        safe = {pause.step for pause in self.safe}
        work, pattern = Work(self.c), Pattern(self.c)
        found = {}
        for step in self.steps:
            for op in step.operations:
                work.do(op)
            if step.number in safe:
                found[step.number] = tuple(_state(self.c, work, pattern))
        return found


def _state(c: Construction, work: Work, pattern: Pattern) -> Iterator[Block]:
    if c.garment.pieces:
        yield Picture(map_figure(c, work, pattern=pattern))
    yield Beside(*_told(tell_progress(c, work)))


def _told(progress: Progress) -> tuple[tuple[Block, ...], tuple[Block, ...]]:
    """In two columns: what is done, and what hangs together or is still open."""
    right: list[Block] = []
    if progress.together:
        right.append(Card(say("class-state-hand"), (Items(progress.together),)))
    for key, edges in (("open", progress.open), ("finished", progress.finished)):
        if edges:
            right.append(Card(say(f"class-state-{key}"), (Items((capital(edges),)),)))
    if progress.untouched:
        right.append(Card(say("class-state-untouched"), (Items(("; ".join(progress.untouched),)),)))
    return (Card(say("class-state-done"), (Items(progress.done),)),), tuple(right)
