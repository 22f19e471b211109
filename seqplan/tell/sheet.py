"""Make a sheet: everything that a stranger needs to sew a garment from paper."""

from collections.abc import Collection, Iterable, Iterator, Sequence
from itertools import groupby

from seqplan.base.ids import OpId, PieceId
from seqplan.base.language import spoken
from seqplan.model.entry import Verb
from seqplan.model.garment import Garment
from seqplan.model.operation import Action
from seqplan.model.piece import Cut, Layer
from seqplan.plan.plan import Group, Plan, Purpose, Step
from seqplan.plan.waivers import is_named
from seqplan.recipes.construction import Construction
from seqplan.rules.book import RULE
from seqplan.tell import usual
from seqplan.tell.cautions import tell_cautions
from seqplan.tell.content import Sheet, SheetGroup, SheetStep, StationKey
from seqplan.tell.cutting import tell_allowances, tell_cutting, tell_cutting_notes, tell_marks
from seqplan.tell.material import tell_mark, tell_plans
from seqplan.tell.names import (
    as_clause,
    as_sentence,
    capital,
    comma_list,
    in_garment_order,
    listing,
    notion_words,
    readable,
    station_title,
)
from seqplan.tell.needs import stations_used, tell_needs, tell_sizes
from seqplan.tell.sentence import Sentence, Term
from seqplan.tell.setups import name_setup
from seqplan.tell.step import heading, tell_step
from seqplan.tell.terms import own_terms, terms_in
from seqplan.words.say import has, say, translated

_LAYER_HEADINGS = {Layer.FACING: "sheet-unit-facings", Layer.LINING: "sheet-unit-lining"}


_LONGEST_HEADING = 5
_NAMED_OF_MANY = 3
"""Pieces that a heading names at most, and how many it names where there are more."""
_KNIT = "knit"
_NO_CLOSURES = ("elastic", "label")


def make_sheet(c: Construction, plan: Plan) -> Sheet:
    """Make the sheet for one order of a garment.

    Parameters
    ----------
    c
        The garment.
    plan
        The order: one for a booklet has headings by the part in hand, one for a batch by station.
    """
    garment = c.garment
    steps = _tell_steps(c, plan)
    groups = tuple(
        SheetGroup(title, tuple(steps[step.number - 1] for step in held))
        for title, held in _headed(c, plan)
    )
    texts = [text for step in steps for text in (*_texts(step.sentences), step.note or "")]
    is_batch = plan.purpose is Purpose.BATCH
    return Sheet(
        kind=say("sheet-kind-batch" if is_batch else "sheet-kind-booklet"),
        title=_line(garment.name) or "",
        about=_line(garment.about),
        author=_line(garment.author),
        version=_line(garment.version),
        steps=len(steps),
        operations=len(plan.order),
        changes=plan.changes,
        needs=tell_needs(c),
        cutting=tell_cutting(c),
        cutting_notes=tell_cutting_notes(c),
        marks=tell_marks(c),
        allowances=tell_allowances(c),
        stations=tuple(_stations(c)),
        reading=tuple(_reading(garment)),
        caution_intro=say("caution-intro"),
        cautions=tell_cautions(c),
        groups=groups,
        checks=tuple(_checks(c)),
        glossary=terms_in((*texts, *_words(garment)), own_terms(garment)),
        variant=tuple(_variant(c)),
        sizes=garment.sizes,
        measures=tell_sizes(c),
        notes=tuple(_waived(c, plan)),
        date=_line(garment.date),
        mark=tell_mark(garment),
        terms=garment.terms,
        plans=tell_plans(garment),
        lang=spoken(),
    )


def _tell_steps(c: Construction, plan: Plan) -> list[SheetStep]:
    done: set[OpId] = set()
    known: set[Term] = set()
    seen: set[str] = set()
    own = own_terms(c.garment)
    found = []
    for group in plan.groups:
        for step in group.steps:
            sentences = tell_step(c, step, done)
            is_continued = step.entry in seen
            note = "" if is_continued else c.garment.entry[step.entry].note or ""
            used = terms_in((*_texts(sentences), note), own)
            terms = tuple(term for term in used if term not in known)
            names = _names_in(step, is_continued=is_continued)
            found.append(
                SheetStep(
                    number=step.number,
                    entry=step.entry,
                    heading=heading(c, step, is_continued=is_continued),
                    sentences=sentences,
                    terms=terms,
                    note=as_sentence(note) if note else None,
                    waived=tuple(_waived(c, plan, names)),
                    picture=None if is_continued else _line(c.garment.entry[step.entry].picture),
                )
            )
            done.update(op.id for op in step.operations)
            known.update(terms)
            seen.add(step.entry)
    return found


def _words(garment: Garment) -> Iterator[str]:
    """The author's own words, all of which are explained, whether or not a step uses them."""
    return (word for word, _ in garment.glossary)


def _variant(c: Construction) -> Iterator[str]:
    """The choices that are made, each with what else there is."""
    picks = dict(c.garment.picks)
    for choice in c.garment.choices:
        pick = picks.get(choice.id, choice.options[0])
        others = [readable(option) for option in choice.options if option != pick]
        values = {"choice": capital(readable(choice.id)), "pick": readable(pick)}
        yield say("sheet-variant", others=listing(others), **values)


def _waived(c: Construction, plan: Plan, names: Collection[str] | None = None) -> Iterator[str]:
    """Why the designer sets a rule aside: at what bears one of the names, or everywhere."""
    for waiver in c.garment.waivers:
        is_here = not waiver.at if names is None else not set(waiver.at).isdisjoint(names)
        if is_here and any(is_named(waiver, reason) for reason in plan.waived):
            rule = as_clause(translated("rule", RULE[waiver.rule].headline))
            key = "sheet-waived-everywhere" if names is None else "sheet-waived"
            yield say(key, usual=rule, because=as_clause(waiver.because))


def _names_in(step: Step, *, is_continued: bool) -> set[str]:
    """What a waiver may call a step: its operations, and its entry where that begins."""
    parts: set[str] = {op.id for op in step.operations if op.part}
    return parts if is_continued else parts | {step.entry}


def _headed(c: Construction, plan: Plan) -> Iterator[tuple[str, list[Step]]]:
    """Steps with their headings; neighbours of one heading stand together."""
    sewn: list[frozenset[PieceId]] = []
    titled = []
    for group in plan.groups:
        for step in group.steps:
            titled.append((_heading(c, group, step, sewn), step))
            sewn += [op.pieces for op in step.operations if op.action is Action.SEW]
    for title, held in groupby(titled, lambda pair: pair[0]):
        yield title, [step for _, step in held]


def _heading(c: Construction, group: Group, step: Step, sewn: Sequence[frozenset[PieceId]]) -> str:
    """The station that is visited, else the part in hand: facings and linings while apart."""
    if group.setup is not None:
        return capital(name_setup(c.garment, group.setup))
    pieces = frozenset[PieceId]().union(*(op.pieces for op in step.operations))
    pieces = pieces.union(*(joined for joined in sewn if joined & pieces))
    layers = {c.garment.piece[id_].layer for id_ in pieces}
    if len(layers) == 1 and layers <= set(_LAYER_HEADINGS):
        return say(_LAYER_HEADINGS[layers.pop()])
    if not group.unit:
        is_cloth = all(op.action is Action.PRETREAT for op in step.operations)
        return say("sheet-unit-cloth" if is_cloth else "sheet-unit-none")
    if group.unit == set(c.garment.piece) and len(group.unit) > 1:
        return say("sheet-unit-whole")
    return _pieces_in_hand(c, in_garment_order(c.garment, group.unit))


def _pieces_in_hand(c: Construction, ids: Sequence[PieceId]) -> str:
    """The pieces of a unit; of many only the first, so that it stays a heading."""
    titles = [c.garment.piece[id_].title for id_ in ids]
    if len(titles) <= _LONGEST_HEADING:
        return capital(listing(titles))
    first = capital(comma_list(titles[:_NAMED_OF_MANY]))
    return say("sheet-unit-many", first=first, count=len(titles) - _NAMED_OF_MANY)


def _stations(c: Construction) -> Iterator[StationKey]:
    for station in stations_used(c):
        key = f"sheet-station-{station.id}"
        note = say(key) if has(key) else ""
        yield StationKey(station.id, station.mark, station_title(station), note)


def _reading(garment: Garment) -> Iterator[str]:
    yield say("sheet-read-order")
    yield say("sheet-read-stitch", stitch=usual.stitch(usual.STRAIGHT_STITCH))
    if any(fabric.kind == _KNIT for fabric in garment.fabrics):
        yield say("sheet-read-knit")
    yield say("sheet-read-measures")
    has_hands = any(piece.cut in {Cut.PAIR, Cut.FOLD} for piece in garment.pieces)
    yield say("sheet-read-pieces-worn" if has_hands else "sheet-read-pieces")


def _checks(c: Construction) -> Iterator[str]:
    yield say("sheet-done-threads")
    yield say("sheet-done-seams")
    yield say("sheet-done-basting")
    closing = c.acting(Action.SET_ZIP, Action.ATTACH, Action.THREAD)
    ids = dict.fromkeys(notion for op in closing for notion in op.notions)
    named = dict.fromkeys(c.garment.notion[id_].kind for id_ in ids)
    kinds = [notion_words(kind) for kind in named if not any(word in kind for word in _NO_CLOSURES)]
    if kinds:
        yield say("sheet-done-closures", closures=listing(kinds))
    if any(entry.verb is Verb.HEM for entry in c.garment.entries):
        yield say("sheet-done-hem")
    if c.garment.pieces:
        yield say("sheet-done-turned")
    yield say("sheet-done-press")
    yield say("sheet-done-boxes")


def _texts(sentences: Iterable[Sentence]) -> list[str]:
    return [text for sentence in sentences for text in (sentence.text, sentence.check)]


def _line(text: str | None) -> str | None:
    """The text in one line."""
    return " ".join(text.split()) if text else None
