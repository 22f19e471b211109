"""The learner's sheet of a class, and the state cards."""

from collections.abc import Iterator

from seqplan.model.operation import Action
from seqplan.model.station import IRON
from seqplan.paper.blocks import (
    Beside,
    Blanks,
    Block,
    Card,
    Cards,
    Document,
    Facts,
    Items,
    Part,
    Prose,
    Stations,
    Terms,
)
from seqplan.paper.course import Course
from seqplan.paper.cover import about, cautions
from seqplan.paper.steps import draw_sheet, step_block
from seqplan.plan.bundles import bundles
from seqplan.plan.stops import Pause, Session
from seqplan.tell.deeds import name_deed, name_unit
from seqplan.tell.names import capital, readable
from seqplan.tell.needs import tell_notion
from seqplan.tell.setups import name_setup
from seqplan.words.say import say


def learner_sheet(course: Course) -> Document:
    """Compose the sheet that each learner sews from, session by session."""
    learner = _Learner(course)
    sheet = course.sheet
    marks = (Prose((say("sheet-read-marks"),)), Stations(sheet.stations))
    key = Beside((Items(sheet.reading[1:]),), marks)
    parts = [
        Part(title=say("sheet-key"), blocks=(key,)),
        cautions(say("sheet-cautions"), sheet.cautions, sheet.caution_intro),
        *map(learner.session, course.sessions),
        Part(title=say("sheet-checks"), blocks=(Items(sheet.checks, is_ticked=True),)),
    ]
    if sheet.glossary:
        parts.append(Part(title=say("sheet-glossary"), blocks=(Terms(sheet.glossary),)))
    return Document(
        kind=say("class-kind-learner"),
        title=sheet.title,
        cover=tuple(learner.cover()),
        parts=tuple(parts),
        lang=sheet.lang,
        has_contents=len(course.sessions) > 1,
    )


def state_cards(course: Course) -> Document:
    """Compose a card for each safe stop, to be kept with the work."""
    sheet = course.sheet
    parts = (
        Part(
            title=say("class-card", step=pause.step, heading=course.step[pause.step].heading),
            blocks=(Blanks((say("class-name"), say("class-date"))), *course.state[pause.step]),
            starts_page=number > 0,
            is_whole=True,
        )
        for number, pause in enumerate(course.safe)
    )
    return Document(
        kind=say("class-kind-cards"),
        title=sheet.title,
        cover=(Prose((say("class-cards-about"),)),),
        parts=tuple(parts),
        lang=sheet.lang,
    )


class _Learner:
    def __init__(self, course: Course) -> None:
        self.course = course
        self.c = course.c
        self.pictures = draw_sheet(course.c, course.sheet)
        self.count = sum(1 for session in course.sessions if session.number)

    def cover(self) -> Iterator[Block]:
        sheet = self.course.sheet
        yield from about(sheet)
        yield Prose((say("class-learner-about"),))
        yield Facts(
            (
                (say("class-sessions"), str(self.count)),
                (say("class-steps"), str(sheet.steps)),
                (say("class-ticks"), str(sheet.operations)),
            )
        )
        yield Blanks(tuple(say(f"class-{key}") for key in ("name", "group", "date")))

    # -- a session -----------------------------------------------------------------------------

    def session(self, session: Session) -> Part:
        first, last = session.steps[0].number, session.steps[-1].number
        return Part(
            title=self._title(session),
            remark=say("sheet-step-range", count=last - first + 1, first=first, last=last),
            blocks=(
                *self._bring(session),
                *self._steps(session),
                *self._end(session),
            ),
            starts_page=session.number > 1,
        )

    def _title(self, session: Session) -> str:
        if not session.number:
            return say("class-ahead")
        key = "class-session" if self.count == 1 else "class-session-of"
        return say(key, number=session.number, count=self.count)

    def _bring(self, session: Session) -> Iterator[Block]:
        """What has to be at hand: places with their feet, parts of the garment, notions."""
        ops = session.operations
        setups = dict.fromkeys(capital(name_setup(self.c.garment, op.setup)) for op in ops)
        touched = {piece for op in ops for piece in op.pieces}
        order = self.course.plan.order
        done = order[: order.index(ops[0].id)]
        units = [unit for unit in bundles(self.c, done) if unit & touched]
        notions = dict.fromkeys(id_ for op in ops for id_ in op.notions)
        fused = dict.fromkeys(self.c.entry(op).fabric for op in ops if op.action is Action.FUSE)
        lists = {
            "machines": tuple(setups),
            "pieces": tuple(name_unit(self.c, unit) for unit in units),
            "notions": (
                *(capital(readable(fabric)) for fabric in fused if fabric),
                *(tell_notion(self.c.garment.notion[id_]) for id_ in notions),
            ),
        }
        cards = tuple(
            Card(say(f"class-bring-{key}"), (Items(lines, is_ticked=True),))
            for key, lines in lists.items()
            if lines
        )
        yield Part(title=say("class-bring"), blocks=(Cards(cards),))

    def _steps(self, session: Session) -> Iterator[Block]:
        """The steps, with a word wherever one may stop before the end of the session."""
        safe = {pause.step for pause in self.course.safe}
        for step in session.steps:
            told = self.course.step[step.number]
            yield step_block(told, self.course.sheet.station, self.pictures)
            if step.number in safe and step is not session.steps[-1]:
                yield Prose((say("class-may-stop"),), is_small=True)

    # -- its end -------------------------------------------------------------------------------

    def _end(self, session: Session) -> Iterator[Block]:
        pause = session.pause
        if pause is None:
            yield Prose((say("class-end"),))
            return
        if session.number:
            yield Part(title=say("class-state"), blocks=self.course.state[pause.step])
        lines = (*self._waits(pause), *self._put_away(session))
        following = self.course.step[pause.step + 1]
        op = self.c.op[following.operations[0]]
        coming = say(
            "class-next",
            step=following.number,
            heading=following.heading,
            place=name_setup(self.c.garment, op.setup),
        )
        yield Part(
            title=say("class-put-away"),
            blocks=(Items(lines, is_ticked=True), Prose((coming,))),
            is_whole=True,
        )

    def _waits(self, pause: Pause) -> Iterator[str]:
        if pause.waits is None:
            return
        op = self.c.op[pause.waits]
        hours = self.c.entry(op).hours if op.action is Action.WAIT else None
        key = "class-put-away-wait" if hours is None else "class-put-away-wait-hours"
        yield say(key, deed=name_deed(self.c, op), count=hours)

    def _put_away(self, session: Session) -> Iterator[str]:
        if not session.number:
            return
        ironed = [s for s in session.steps if any(_is_hot(op.setup.station) for op in s.operations)]
        if ironed:
            yield say("class-put-away-iron", step=ironed[-1].number)
            if ironed[-1] is session.steps[-1]:
                yield say("class-put-away-warm")
        yield say("class-put-away-pins")
        yield say("class-put-away-together")


def _is_hot(station: str) -> bool:
    return station == IRON
