"""The list for filming: shots by camera place, what is ready before each, chapters for the cut."""

from collections.abc import Callable, Iterable, Iterator, Mapping, Sequence
from itertools import groupby

from seqplan.base.ids import OpId
from seqplan.model.operation import Action
from seqplan.order.limits import Limit, no_limit
from seqplan.paper.blocks import (
    Beside,
    Blanks,
    Block,
    Card,
    Deed,
    Document,
    Facts,
    Items,
    Pairs,
    Part,
    Prose,
    Row,
    Table,
)
from seqplan.paper.cover import about, cautions
from seqplan.paper.steps import deed_block
from seqplan.plan.bundles import pieces_in_hand
from seqplan.plan.plan import Plan, Planner
from seqplan.plan.shots import Shot, find_shots
from seqplan.plan.unit import Unit
from seqplan.recipes.construction import Construction
from seqplan.tell.content import Sheet
from seqplan.tell.deeds import name_deeds, name_done, name_unit
from seqplan.tell.mounting import tell_mounted
from seqplan.tell.names import capital, station_title
from seqplan.tell.setups import name_setup
from seqplan.tell.sheet import make_sheet
from seqplan.tell.step import tell_operation
from seqplan.words.say import has, say

Name = Callable[[Construction, Iterable[OpId]], tuple[str, ...]]


def compose(c: Construction, planner: Planner, *, limit: Limit = no_limit) -> Document:
    """Compose the list for filming.

    Raises
    ------
    NoPlanError
        When no order exists.
    """
    batch, booklet = planner.batch(limit), planner.booklet()
    shots = find_shots(c, planner, batch, booklet)
    return filming_list(c, shots, make_sheet(c, booklet), batch)


def filming_list(c: Construction, shots: Sequence[Shot], sheet: Sheet, batch: Plan) -> Document:
    """Put shots on paper.

    Parameters
    ----------
    c
        The garment.
    shots
        The shots in the order of filming.
    sheet
        The booklet: the order of viewing.
    batch
        The order of filming.
    """
    film = _Film(c, shots, sheet, batch)
    return Document(
        kind=say("film-kind"),
        title=sheet.title,
        cover=tuple(film.cover()),
        parts=(
            film.places(),
            *film.stands(),
            *film.samples(),
            Part(title=say("film-part-chapters"), blocks=tuple(film.chapters()), starts_page=True),
            cautions(say("sheet-cautions"), sheet.cautions, sheet.caution_intro),
        ),
        lang=sheet.lang,
    )


class _Film:
    def __init__(self, c: Construction, shots: Sequence[Shot], sheet: Sheet, batch: Plan) -> None:
        self.c = c
        self.shots = shots
        self.sheet = sheet
        self.batch = batch
        self.shot_of = {op.id: shot.number for shot in shots for op in shot.operations}
        self.done_before = _before(batch.order)
        self._is_cut = bool(c.acting(Action.CUT))
        self.chapter_of = {
            step.number: number
            for number, group in enumerate(sheet.groups, 1)
            for step in group.steps
        }

    # -- the whole -----------------------------------------------------------------------------

    def cover(self) -> Iterator[Block]:
        yield from about(self.sheet)
        yield Prose((say("film-about"),))
        counts = {
            "shots": len(self.shots),
            "places": len({shot.operations[0].setup.station for shot in self.shots}),
            "moves": self.batch.changes,
            "chapters": len(self.sheet.groups),
        }
        yield Facts(tuple((say(f"film-{key}"), str(count)) for key, count in counts.items()))
        yield Blanks(tuple(say(f"film-{key}") for key in ("date", "camera", "hands")))

    def places(self) -> Part:
        rows = []
        for station in self.c.garment.stations:
            here = [s.number for s in self.shots if s.operations[0].setup.station == station.id]
            if here:
                key = f"film-view-{station.id}"
                view = say(key if has(key) else "film-view-other")
                rows.append(Row((capital(station_title(station)), view, _ranges(here))))
        head = tuple(say(f"film-col-{key}") for key in ("place", "view", "shots"))
        table = Table("", head, tuple(rows))
        note = Prose((say("film-views-note"),), is_small=True)
        return Part(title=say("film-part-places"), blocks=(table, note))

    # -- shots ---------------------------------------------------------------------------------

    def stands(self) -> Iterator[Part]:
        """The shots of each camera place and set-up, without leaving it."""
        for visit, held in groupby(self.shots, lambda shot: shot.visit):
            shots = tuple(held)
            ops = [op for shot in shots for op in shot.operations]
            setup = tell_mounted(self.c, ops)
            pairs = (Pairs(setup),) if setup else ()
            place = say(
                "film-stand", number=visit, place=capital(name_setup(self.c.garment, ops[0].setup))
            )
            numbers = [shot.number for shot in shots]
            remark = say("film-shots-range", count=len(numbers), shots=_ranges(numbers))
            yield Part(title=place, remark=remark, blocks=(*pairs, *map(self.shot, shots)))

    def shot(self, shot: Shot) -> Part:
        ids = [op.id for op in shot.operations]
        deeds = "; ".join(name_deeds(self.c, ids))
        where = say("film-shot-where", chapter=self.chapter_of[shot.step], step=shot.step)
        notes = (Prose((say("film-once"),), is_small=True),) if shot.is_once else ()
        return Part(
            title=say("film-shot", shot=shot.number, deeds=deeds),
            remark=where,
            blocks=(
                Beside(tuple(self._ready(shot)), (self._left(shot),)),
                *self._deeds(ids),
                *notes,
            ),
            is_whole=True,
        )

    def _ready(self, shot: Shot) -> Iterator[Card]:
        lines = self._by_shot(shot.ready, "film-ready-line", name_done)
        units = tuple(self._unit(unit, shot.number) for unit in shot.units)
        if units:
            yield Card(say("film-in-picture"), (Items(units),))
        key = "film-ready-nothing" if self._is_cut else "film-ready-cutting"
        block = Items(lines) if lines else Prose((say(key),))
        yield Card(say("film-ready"), (block,))

    def _left(self, shot: Shot) -> Card:
        lines = self._by_shot(shot.left, "film-left-line", name_deeds)
        block = Items(lines) if lines else Prose((say("film-left-nothing"),))
        return Card(say("film-left"), (block,))

    def _by_shot(self, ids: Iterable[OpId], key: str, name: Name) -> tuple[str, ...]:
        """Operations with the shots that show them."""
        found: dict[int, list[OpId]] = {}
        for id_ in ids:
            found.setdefault(self.shot_of[id_], []).append(id_)
        return tuple(
            say(key, deed=deed, shot=shot)
            for shot, held in sorted(found.items())
            for deed in name(self.c, held)
        )

    def _deeds(self, ids: Sequence[OpId]) -> Iterator[Deed]:
        for id_ in ids:
            told = tell_operation(self.c, self.c.op[id_], self.done_before[id_])
            yield deed_block(told, self.sheet.station)

    # -- samples -------------------------------------------------------------------------------

    def samples(self) -> Iterator[Part]:
        rows = tuple(self._sample_rows())
        if rows:
            head = tuple(say(f"film-col-{key}") for key in ("place", "shots", "sample"))
            blocks: tuple[Block, ...] = (
                Prose((say("film-samples-about"),)),
                Table("", head, rows, is_ticked=True),
            )
            yield Part(title=say("film-part-samples"), blocks=blocks)
        once = tuple(
            say(
                "film-spare",
                shot=shot.number,
                deeds="; ".join(name_deeds(self.c, [op.id for op in shot.operations])),
            )
            for shot in self.shots
            if shot.is_once
        )
        if once:
            blocks = (Prose((say("film-spares-about"),)), Items(once, is_ticked=True))
            yield Part(title=say("film-part-spares"), blocks=blocks)

    def _sample_rows(self) -> Iterator[Row]:
        """The state of what is wanted at each visit, of places that are visited more than once."""
        for station in self.c.garment.stations:
            here = [s for s in self.shots if s.operations[0].setup.station == station.id]
            visits = [list(held) for _, held in groupby(here, lambda shot: shot.visit)]
            if len(visits) < 2:
                continue
            for place, shots in enumerate(visits):
                title = "" if place else capital(station_title(station))
                numbers = _ranges([shot.number for shot in shots])
                units = (self._unit(unit, shots[0].number) for unit in _wanted(shots))
                yield Row((title, numbers, "; ".join(units)), is_under=place > 0)

    def _unit(self, unit: Unit, before: int) -> str:
        """What is in the picture, and how far it is."""
        state = self._state(unit, before)
        return say("film-unit", unit=name_unit(self.c, unit), state=state)

    def _state(self, unit: Unit, before: int) -> str:
        last = [
            shot.number
            for shot in self.shots
            if shot.number < before and pieces_in_hand(self.c, shot.operations) & unit
        ]
        if last:
            return say("film-state-after", shot=last[-1])
        return say("film-state-cloth" if self._is_cut else "film-state-cut")

    # -- the cut -------------------------------------------------------------------------------

    def chapters(self) -> Iterator[Table]:
        head = tuple(say(f"film-col-{key}") for key in ("step", "shots"))
        for number, group in enumerate(self.sheet.groups, 1):
            rows = []
            for step in group.steps:
                shots = dict.fromkeys(self.shot_of[id_] for id_ in step.operations)
                title = say("film-step", number=step.number, heading=step.heading)
                rows.append(Row((title, ", ".join(map(str, shots)))))
            title = say("film-chapter", number=number, title=group.heading)
            yield Table(title, head, tuple(rows), is_ticked=True)


def _wanted(shots: Iterable[Shot]) -> tuple[Unit, ...]:
    """What shots show, as it is before the first of them."""
    found: dict[Unit, None] = {}
    for shot in shots:
        for unit in shot.units:
            if not any(unit & other for other in found):
                found[unit] = None
    return tuple(found)


def _before(order: Sequence[OpId]) -> Mapping[OpId, frozenset[OpId]]:
    return {id_: frozenset(order[:place]) for place, id_ in enumerate(order)}


def _ranges(numbers: Sequence[int]) -> str:
    """Numbers, those that follow one another as a range: "3-5, 8"."""
    parts: list[list[int]] = []
    for number in numbers:
        if parts and number == parts[-1][-1] + 1:
            parts[-1].append(number)
        else:
            parts.append([number])
    dash = "\N{EN DASH}"
    return ", ".join(f"{p[0]}{dash}{p[-1]}" if len(p) > 1 else str(p[0]) for p in parts)
