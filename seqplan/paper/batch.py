"""The sheet for a batch: visit by visit what to take there, how to set up, what goes where next."""

from collections.abc import Iterable, Iterator, Mapping, Sequence
from typing import Final

from seqplan.base.ids import NotionId
from seqplan.model.operation import Action, Operation
from seqplan.model.workroom import Workroom
from seqplan.order.limits import Limit, no_limit
from seqplan.order.result import Proof
from seqplan.paper.blocks import (
    Beside,
    Blanks,
    Block,
    Card,
    Cards,
    Document,
    Facts,
    Items,
    Pairs,
    Part,
    Prose,
    Row,
    Step,
    Table,
)
from seqplan.paper.cover import about, cautions
from seqplan.paper.steps import Drawn, deed_block, draw_sheet
from seqplan.plan.bundles import Visit, find_visits
from seqplan.plan.plan import Plan, Planner
from seqplan.plan.setups import change_minutes
from seqplan.plan.unit import Unit
from seqplan.recipes.construction import Construction
from seqplan.tell.cautions import tell_cautions_at, tell_cautions_everywhere
from seqplan.tell.content import Sheet, SheetStep, StationKey, Titled
from seqplan.tell.deeds import in_plain_names, name_deeds, name_done, name_unit
from seqplan.tell.mounting import tell_mounted
from seqplan.tell.names import capital, readable
from seqplan.tell.needs import tell_notion
from seqplan.tell.setups import name_setup
from seqplan.tell.sheet import make_sheet
from seqplan.words.say import say


def compose(
    c: Construction,
    planner: Planner,
    *,
    limit: Limit = no_limit,
    workroom: Workroom | None = None,
) -> Document:
    """Compose the sheet for a batch in the order with the fewest changes.

    Parameters
    ----------
    c
        The garment.
    planner
        Finds its orders.
    limit
        When to break off the search for the fewest changes.
    workroom
        One's own machines; the order then takes the fewest minutes of getting them ready.

    Raises
    ------
    NoPlanError
        When no order exists.
    NoMachineError
        An operation needs a station that the workroom does not have.
    """
    plan = planner.batch(limit, workroom=workroom)
    visits = find_visits(c, plan, planner.binding.held)
    room = None if workroom is None else workroom.filled(c.garment.stations)
    return batch_sheet(c, plan, visits, room)


def batch_sheet(
    c: Construction,
    plan: Plan,
    visits: Sequence[Visit],
    workroom: Workroom | None = None,
) -> Document:
    """Put the visits of a plan for a batch on paper, with the names of one's own machines."""
    sheet = make_sheet(c, plan)
    steps = {step.number: step for group in sheet.groups for step in group.steps}
    station = sheet.station
    pictures = draw_sheet(c, sheet)
    told: set[Titled] = set()
    parts = []
    for visit in visits:
        fresh = [item for item in tell_cautions_at(c, visit.operations) if item not in told]
        told.update(fresh)
        blocks = _visit(c, plan, visits, visit, _Told(steps, station, fresh, pictures, workroom))
        parts.append(Part(title=_title(c, visit), remark=_range(visit), blocks=tuple(blocks)))
    return Document(
        kind=sheet.kind,
        title=sheet.title,
        cover=tuple(_cover(c, plan, sheet)),
        parts=(
            cautions(say("sheet-cautions"), tell_cautions_everywhere(c), sheet.caution_intro),
            Part(title=say("batch-at-a-glance"), blocks=(_glance(c, visits),)),
            Part(title=say("batch-part-visits"), blocks=tuple(parts)),
            Part(title=say("sheet-checks"), blocks=(Items(sheet.checks, is_ticked=True),)),
        ),
        lang=sheet.lang,
    )


class _Told:
    """What is told at one visit: its steps, its cautions, its machine."""

    def __init__(
        self,
        steps: Mapping[int, SheetStep],
        station: Mapping[str, StationKey],
        cautions: Sequence[Titled],
        pictures: Drawn,
        workroom: Workroom | None,
    ) -> None:
        self.steps = steps
        self.station = station
        self.cautions = cautions
        self.pictures = pictures
        self.workroom = workroom


def _cover(c: Construction, plan: Plan, sheet: Sheet) -> Iterator[Block]:
    yield from about(sheet)
    yield Prose(tuple(say(f"batch-{key}") for key in ("about", "first-one", "apart", "booklet")))
    yield Facts(
        (
            (say("batch-visits"), str(len(plan.groups))),
            (say("batch-changes"), str(plan.changes)),
        )
    )
    pairs = [(say("batch-ready-minutes"), _ready_minutes(plan))]
    if plan.price is None and plan.lower_bound is not None:
        pairs.insert(0, (say("batch-changes"), _changes(plan)))
    work = _work_minutes([c.op[id_] for id_ in plan.order])
    if work:
        pairs.append((say("batch-work-minutes"), work))
    yield Pairs(tuple(pairs))
    if plan.given_up:
        lines = dict.fromkeys(in_plain_names(c, r.because) for r in plan.given_up)
        yield Cards((Card(say("batch-given-up"), (Items(tuple(lines)),)),))
    yield Blanks(tuple(say(f"batch-{key}") for key in ("garments", "sizes", "date")))


def _changes(plan: Plan) -> str:
    """How sure it is that no order has fewer changes."""
    key = "batch-changes-proven" if plan.proof is Proof.OPTIMAL else "batch-changes-bound"
    return say(key, changes=plan.changes, bound=plan.lower_bound)


def _ready_minutes(plan: Plan) -> str:
    if plan.price is None:
        return say("batch-minutes", minutes=plan.change_minutes)
    key = "batch-minutes-proven" if plan.proof is Proof.OPTIMAL else "batch-minutes-bound"
    return say(key, minutes=plan.price, bound=plan.lower_bound)


def _work_minutes(ops: Sequence[Operation]) -> str:
    """What some operations take, as far as the author says so; empty where nothing is said."""
    said = [op.minutes for op in ops if op.minutes is not None]
    if not said:
        return ""
    key = "batch-minutes" if len(said) == len(ops) else "batch-work-minutes-some"
    return say(key, minutes=sum(said))


def _glance(c: Construction, visits: Iterable[Visit]) -> Table:
    rows = (
        Row(
            (
                str(visit.number),
                capital(name_setup(c.garment, visit.operations[0].setup)),
                "; ".join(name_deeds(c, [op.id for op in visit.operations])),
            )
        )
        for visit in visits
    )
    head = tuple(say(f"batch-col-{key}") for key in ("visit", "setup", "deeds"))
    return Table("", head, tuple(rows), is_ticked=True)


def _title(c: Construction, visit: Visit) -> str:
    setup = capital(name_setup(c.garment, visit.operations[0].setup))
    return say("batch-visit", number=visit.number, setup=setup)


def _range(visit: Visit) -> str:
    first, last = visit.group.steps[0].number, visit.group.steps[-1].number
    return say("sheet-step-range", count=last - first + 1, first=first, last=last)


def _visit(
    c: Construction, plan: Plan, visits: Sequence[Visit], visit: Visit, told: _Told
) -> Iterator[Block]:
    """One visit: set up, take there, what is ready, do, pass on."""
    facts = [*tell_mounted(c, visit.operations)]
    if told.workroom is not None:
        machine = told.workroom.machine_for(visit.operations[0].setup.station)
        facts.insert(0, (say("batch-machine"), machine.name))
    ready = _minutes_here(c, visits, visit)
    if plan.price is None and ready:
        facts.append((say("batch-get-ready"), say("batch-minutes", minutes=ready)))
    work = _work_minutes(visit.operations)
    if work:
        facts.append((say("batch-work"), work))
    if facts:
        yield Pairs(tuple(facts))
    if told.cautions:
        yield cautions(say("batch-cautions"), told.cautions)
    wants = _wants(c, visits, visit)
    yield Beside((_takes(c, visits, visit),), (wants,)) if visit.takes else wants
    for step in visit.group.steps:
        sheet_step = told.steps[step.number]
        yield Step(
            number=step.number,
            heading="; ".join(name_deeds(c, sheet_step.operations)),
            deeds=tuple(
                deed_block(s, told.station, told.pictures.get(s.operation, ()))
                for s in sheet_step.sentences
            ),
            notes=(*([sheet_step.note] if sheet_step.note else []), *sheet_step.waived),
        )
    if visit.passes:
        yield _passes(c, visits, visit)


def _minutes_here(c: Construction, visits: Sequence[Visit], visit: Visit) -> int:
    """What it takes to get ready for one visit, coming from the one before."""
    ops = [op for each in visits[: visit.number] for op in each.operations]
    before = ops[: len(ops) - len(visit.operations)]
    return change_minutes(c, ops) - change_minutes(c, before)


def _takes(c: Construction, visits: Sequence[Visit], visit: Visit) -> Table:
    rows = [
        Row(
            (
                name_unit(c, unit),
                _origin(visit, unit, came),
            )
        )
        for unit, came in visit.takes
    ]
    fused = dict.fromkeys(c.entry(op).fabric for op in visit.operations if op.action is Action.FUSE)
    rows += [
        Row((capital(readable(fabric)), say("batch-from-cutting"))) for fabric in fused if fabric
    ]
    rows += [
        Row((tell_notion(c.garment.notion[id_]), where)) for id_, where in _notions(visits, visit)
    ]
    head = (say("batch-col-what"), say("batch-col-from"))
    return Table(say("batch-take"), head, tuple(rows), is_ticked=True)


def _notions(visits: Sequence[Visit], visit: Visit) -> Iterator[tuple[NotionId, str]]:
    """The notions that are taken to a visit, as long as they hang on nothing, and from where."""
    before = visits[: visit.number - 1]
    fixed = {id_ for each in before for id_ in _used(each, loose=False)}
    for id_ in sorted(_used(visit, loose=False) | _used(visit, loose=True)):
        came = [each.number for each in before if id_ in _used(each, loose=True)]
        if id_ not in fixed:
            yield id_, say("batch-from-visit", number=came[-1]) if came else say("batch-from-shelf")


def _used(visit: Visit, *, loose: bool) -> frozenset[NotionId]:
    """The notions that are worked with by themselves, or that are fixed to cloth.

    To baste an opening shut, or to take the basting out, asks for none.
    """
    ops = (op for op in visit.operations if op.action not in _WITHOUT)
    return frozenset(n for op in ops if (op.action in _LOOSE) == loose for n in op.notions)


_WITHOUT: Final = frozenset({Action.BASTE, Action.REMOVE_BASTING})
_LOOSE: Final = frozenset({Action.PRESS_COILS})


def _origin(visit: Visit, unit: Unit, came: int | None) -> str:
    """Where a bundle comes from: the visit before, the cut pieces, or the cloth itself."""
    if came is not None:
        return say("batch-from-visit", number=came)
    is_cut_here = any(op.action is Action.CUT and op.pieces & unit for op in visit.operations)
    return say("batch-from-cloth" if is_cut_here else "batch-from-cutting")


def _wants(c: Construction, visits: Sequence[Visit], visit: Visit) -> Card:
    """What must be done at other visits before this one begins."""
    at = {op.id: each.number for each in visits for op in each.operations}
    lines = [
        say("batch-wants-line", deed=deed, number=number)
        for number in sorted({at[id_] for id_ in visit.wants})
        for deed in name_done(c, [id_ for id_ in visit.wants if at[id_] == number])
    ]
    is_cut = c.acting(Action.CUT)
    nothing = say("batch-wants-nothing" if is_cut else "batch-wants-cutting")
    blocks: tuple[Block, ...] = (
        (Items(tuple(lines), is_ticked=True),) if lines else (Prose((nothing,)),)
    )
    return Card(say("batch-wants"), blocks)


def _passes(c: Construction, visits: Sequence[Visit], visit: Visit) -> Table:
    def where(goes: int | None) -> str:
        if goes is None:
            return say("batch-to-end")
        setup = visits[goes - 1].operations[0].setup
        return say("batch-to-visit", number=goes, setup=name_setup(c.garment, setup))

    rows = tuple(Row((name_unit(c, unit), where(goes))) for unit, goes in visit.passes)
    head = (say("batch-col-what"), say("batch-col-to"))
    return Table(say("batch-pass"), head, rows, is_ticked=True)
