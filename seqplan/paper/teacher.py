"""The teacher's sheet of a class: sessions, queues, techniques, mistakes, samples."""

from collections.abc import Iterator, Mapping, Sequence
from fractions import Fraction
from functools import cached_property
from math import ceil
from typing import Final

from seqplan.base.ids import OpId
from seqplan.model.station import Station
from seqplan.model.workroom import Workroom
from seqplan.paper.blocks import (
    Blanks,
    Block,
    Document,
    Facts,
    Items,
    Pairs,
    Part,
    Prose,
    Row,
    Table,
)
from seqplan.paper.course import Course
from seqplan.paper.cover import about, cautions
from seqplan.plan.catching import Catch, find_catches
from seqplan.plan.plan import Step
from seqplan.plan.stops import Hindrance, Pause, Session, change_places, find_stretches
from seqplan.tell.deeds import in_plain_names, name_deed, name_deeds, quoted, what_is_done
from seqplan.tell.names import capital, listing, station_title
from seqplan.tell.needs import stations_used
from seqplan.tell.skills import find_samples, goes_wrong, skill_name, skills_of
from seqplan.words.say import say

_DASH: Final = "\N{EN DASH}"


def teacher_sheet(course: Course) -> Document:
    """Compose the sheet for the teacher."""
    teacher = _Teacher(course)
    sheet = course.sheet
    parts = (
        Part(title=say("class-part-sessions"), blocks=tuple(teacher.sessions())),
        Part(title=say("class-part-queue"), blocks=tuple(teacher.queue())),
        Part(title=say("class-part-samples"), blocks=tuple(teacher.samples())),
        Part(title=say("class-part-steps"), blocks=tuple(teacher.steps())),
        cautions(say("sheet-cautions"), sheet.cautions, sheet.caution_intro),
    )
    return Document(
        kind=say("class-kind-teacher"),
        title=sheet.title,
        cover=tuple(teacher.cover()),
        parts=parts,
        lang=sheet.lang,
    )


class _Teacher:
    def __init__(self, course: Course) -> None:
        self.course = course
        self.c = course.c
        self.count = sum(1 for session in course.sessions if session.number)

    # -- the whole -----------------------------------------------------------------------------

    def cover(self) -> Iterator[Block]:
        sheet = self.course.sheet
        yield from about(sheet)
        yield Prose((say("class-teacher-about"),))
        facts = {
            "sessions": self.count,
            "stops": len(self.course.safe),
            "steps": sheet.steps,
            "ticks": sheet.operations,
        }
        if self.course.learners is not None:
            facts["learners"] = self.course.learners
        yield Facts(tuple((say(f"class-{key}"), str(value)) for key, value in facts.items()))
        yield Blanks(tuple(say(f"class-{key}") for key in ("group", "date", "learners")))

    # -- sessions ------------------------------------------------------------------------------

    def sessions(self) -> Iterator[Block]:
        has_minutes = any(op.minutes is not None for op in self.c.operations)
        keys = ["session", "steps", "ticks", *(["minutes"] if has_minutes else []), "ends"]
        rows = tuple(self._session_row(s, has_minutes=has_minutes) for s in self.course.sessions)
        yield Table("", tuple(say(f"class-col-{key}") for key in keys), rows)
        texts = []
        asked = self.course.asked
        if asked is not None and self.count != asked:
            texts.append(say("class-few-stops" if self.count < asked else "class-more-waits"))
        ends = {s.pause.step for s in self.course.sessions if s.pause}
        others = [str(pause.step) for pause in self.course.safe if pause.step not in ends]
        if others:
            texts.append(say("class-safe-after", count=len(others), steps=listing(others)))
        else:
            texts.append(say("class-no-other-stops"))
        yield Prose(tuple(texts))
        unsafe = tuple(self._unsafe(p) for p in self.course.pauses if not p.is_safe)
        if unsafe:
            yield Part(title=say("class-part-unsafe"), blocks=(Items(unsafe),))

    def _session_row(self, session: Session, *, has_minutes: bool) -> Row:
        said = [op.minutes for op in session.operations if op.minutes is not None]
        return Row(
            (
                str(session.number) if session.number else say("class-ahead"),
                _range(session.steps),
                str(len(session.operations)),
                *([str(sum(said))] if has_minutes else []),
                self._end(session.pause),
            )
        )

    def _end(self, pause: Pause | None) -> str:
        if pause is None:
            return say("class-ends-whole")
        key = "class-ends-after" if pause.waits is None else "class-ends-wait"
        return say(key, step=pause.step, heading=self.course.step[pause.step].heading)

    def _unsafe(self, pause: Pause) -> str:
        """Why the work cannot be put down: of several reasons the first of each kind."""
        first: dict[Hindrance, OpId] = {}
        for hindrance, op in pause.hindrances:
            first.setdefault(hindrance, op)
        whys = (
            say(f"class-unsafe-{hindrance.value}", deed=self._quoted(op))
            for hindrance, op in first.items()
        )
        return say("class-unsafe", step=pause.step, why=" ".join(whys))

    def _quoted(self, op: OpId) -> str:
        return quoted(name_deed(self.c, self.c.op[op]))

    # -- queues --------------------------------------------------------------------------------

    def queue(self) -> Iterator[Block]:
        stations = stations_used(self.c)
        stretches = find_stretches(self.course.plan, self.course.pauses)
        swaps = change_places(self.c, self.course.plan, self.course.binding.held, stretches)
        machines = self._machines
        texts = [say("class-queue-about")]
        if machines:
            texts.append(say("class-turns-about", count=self.course.learners))
        yield Prose(tuple(texts))
        head = (
            say("class-col-steps"),
            *(capital(station_title(station)) for station in stations),
            say("class-col-swap"),
        )
        rows = [
            Row(
                (
                    _range(stretch),
                    *(self._turns(stretch, station) for station in stations),
                    say("class-swap" if place in swaps else "class-no-swap"),
                )
            )
            for place, stretch in enumerate(stretches)
        ]
        if machines:
            counts = (str(machines[station.id]) for station in stations)
            rows.insert(0, Row((say("class-row-machines"), *counts, "")))
        yield Table("", head, tuple(rows))
        if machines:
            yield Prose((self._narrow(stretches, stations),))

    @cached_property
    def _machines(self) -> Mapping[str, int]:
        """How many machines there are of each kind; nothing where nobody said so."""
        room = self.course.workroom
        if room is None or self.course.learners is None:
            return {}
        return {station.id: _count(room, station.id) for station in stations_used(self.c)}

    def _wanted(self, stretch: Sequence[Step], station: Station) -> int:
        ops = (op for step in stretch for op in step.operations)
        return sum(1 for op in ops if op.setup.station == station.id)

    def _each(self, wanted: int, station: Station) -> int:
        """The turns at each machine of a kind."""
        return ceil(Fraction(wanted * (self.course.learners or 0), self._machines[station.id]))

    def _turns(self, stretch: Sequence[Step], station: Station) -> str:
        wanted = self._wanted(stretch, station)
        if not wanted:
            return _DASH
        if not self._machines:
            return say("class-turns", count=wanted)
        return say("class-turns-of", count=wanted, turns=self._each(wanted, station))

    def _narrow(self, stretches: Sequence[Sequence[Step]], stations: Sequence[Station]) -> str:
        """The longest queue of all."""
        turns, stretch, station = max(
            (
                (self._each(self._wanted(stretch, station), station), stretch, station)
                for stretch in stretches
                for station in stations
            ),
            key=lambda each: each[0],
        )
        return say("class-narrow", steps=_range(stretch), place=station_title(station), count=turns)

    # -- samples -------------------------------------------------------------------------------

    def samples(self) -> Iterator[Block]:
        samples = find_samples(self.c, self.course.steps)
        if not samples:
            yield Prose((say("class-no-samples"),))
            return
        yield Prose((say("class-samples-about"),))
        rows = tuple(
            Row(
                (
                    capital(skill_name(sample.skill)),
                    str(sample.step),
                    say(
                        "class-sample-count",
                        count=len(sample.stages),
                        stages=what_is_done(self.c.op[id_] for id_ in sample.stages),
                    ),
                )
            )
            for sample in samples
        )
        head = tuple(say(f"class-col-{key}") for key in ("skill", "step", "samples"))
        yield Table("", head, rows, is_ticked=True)

    # -- step by step --------------------------------------------------------------------------

    def steps(self) -> Iterator[Block]:
        yield Prose((say("class-steps-about"),))
        catches = find_catches(self.c, self.course.binding, self.course.plan)
        known: set[str] = set()
        done: list[OpId] = []
        told: set[str] = set()
        for step in self.course.steps:
            skills = skills_of(self.c, step, done)
            done += [op.id for op in step.operations]
            fresh = [skill for skill in skills if skill not in known]
            known.update(fresh)
            catch = None if step.entry in told else catches[step.entry]
            told.add(step.entry)
            yield self._step(step, fresh, catch)

    def _step(self, step: Step, fresh: Sequence[str], catch: Catch | None) -> Part:
        sheet_step = self.course.step[step.number]
        facts = []
        if fresh:
            facts.append((say("class-new-skills"), capital(listing(map(skill_name, fresh)))))
        wrong = " ".join(filter(None, map(goes_wrong, fresh)))
        if wrong:
            facts.append((say("class-goes-wrong"), wrong))
        checks = dict.fromkeys(s.check for s in sheet_step.sentences if s.check)
        if checks:
            facts.append((say("class-look-at"), " ".join(map(capital, checks))))
        facts += self._catch(catch) if catch else ()
        title = say("sheet-glance-line", number=step.number, heading=sheet_step.heading)
        return Part(title=title, blocks=(Pairs(tuple(facts)),), is_whole=True)

    def _catch(self, catch: Catch) -> Iterator[tuple[str, str]]:
        yield say("class-latest"), self._latest(catch)
        if catch.too_late is None:
            return
        if catch.reason is not None:
            yield say("class-why"), in_plain_names(self.c, catch.reason.because)
        yield say("class-cost"), self._cost(catch)
        if catch.at_end != catch.then:
            count = len(catch.at_end.undone)
            yield (
                say("class-cost-end"),
                say("class-cost-end-count", count=count, all=len(self.c.operations)),
            )

    def _latest(self, catch: Catch) -> str:
        if catch.too_late is None:
            key = "class-latest-never" if catch.better is None else "class-latest-good"
            return say(key, better=catch.better)
        heading = self.course.step[catch.too_late].heading
        is_earlier = catch.better is not None and catch.better < catch.too_late
        key = "class-latest-better" if is_earlier else "class-latest-before"
        return say(key, better=catch.better, step=catch.too_late, heading=heading)

    def _cost(self, catch: Catch) -> str:
        deeds = "; ".join(name_deeds(self.c, reversed(catch.then.undone)))
        cost = say("class-cost-then", count=len(catch.then.undone), deeds=deeds)
        if not catch.then.lost:
            return cost
        lost = "; ".join(name_deeds(self.c, reversed(catch.then.lost)))
        return say("class-cost-lost", cost=cost, lost=lost)


def _count(room: Workroom, station: str) -> int:
    """How many machines serve a kind of station.

    Raises
    ------
    NoMachineError
        There is none.
    """
    room.machine_for(station)
    return sum(each.count for each in room.machines if station in {each.station, each.name})


def _range(steps: Sequence[Step]) -> str:
    first, last = steps[0].number, steps[-1].number
    return str(first) if first == last else f"{first}{_DASH}{last}"
