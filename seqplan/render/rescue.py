"""A rescue as plain text: what to undo, what is lost, how to go on."""

from collections.abc import Iterable, Iterator, Sequence
from itertools import groupby
from textwrap import wrap

from seqplan.base.ids import OpId
from seqplan.base.visible import printable, screen_width
from seqplan.graph.reason import Reason
from seqplan.model.operation import Operation
from seqplan.order.result import Proof
from seqplan.plan.rescue import Rescue, Undone
from seqplan.plan.undoing import UNDOING, Undoing
from seqplan.recipes.construction import Construction
from seqplan.rehearse.trouble import tell_trouble
from seqplan.words.say import say

_WIDTH = 92
_KNIFE = "overlocker"


def list_rescue(c: Construction, found: Rescue, by_the_book: Rescue) -> str:
    """Print a rescue.

    Parameters
    ----------
    c
        The garment.
    found
        What to undo, and how to go on.
    by_the_book
        The same with good practice held, to say what that would take.
    """
    lines = [
        say(
            _title(found),
            garment=c.garment.name,
            missed=_names(c, found.missed),
            done=len(found.done),
            count=len(c.operations),
        )
    ]
    if found.implied:
        lines += _indented(say("rescue-implied", names=_names(c, found.implied)), 0)
    lines += ["", *_undo(c, found), "", say("rescue-go-on")]
    lines += [*_go_on(c, found), ""]
    lines += _given_up(c, found.given_up)
    if len(by_the_book.undone) > len(found.undone):
        lines += _indented(
            say("rescue-more", undone=len(by_the_book.undone), least=len(found.undone)), 0
        )
    if found.proof is not Proof.OPTIMAL:
        lines += _indented(say("rescue-not-proven"), 0)
    lines += _walked(found)
    return printable("\n".join(lines) + "\n")


def _title(found: Rescue) -> str:
    if not found.wrong:
        return "rescue-title"
    is_all_wrong = set(found.missed) == set(found.wrong)
    return "rescue-title-wrong" if is_all_wrong else "rescue-title-both"


def _undo(c: Construction, found: Rescue) -> Iterator[str]:
    if not found.undone:
        yield say("rescue-nothing" if not found.wrong else "rescue-nothing-but-wrong")
    else:
        yield say(
            "rescue-undo",
            undone=len(found.undone),
            done=len(found.done),
            kept=len(found.kept),
        )
    told: set[str] = set()
    for entry, held in groupby(found.undone, lambda each: c.op[each.op].entry):
        undone = tuple(held)
        parts = (
            say("rescue-undo-part", part=_part(c.op[each.op]), how=_how(each.how))
            for each in undone
        )
        line = say("rescue-undo-line", entry=entry, parts=", ".join(parts))
        yield from _indented(line, 2)
        why = _outermost(c, undone).because
        if why not in told:
            yield from _indented(why, 6)
        told.add(why)
    if found.wrong:
        yield say("rescue-wrong")
    for entry, ids in groupby(found.wrong, lambda id_: c.op[id_].entry):
        wrong = [c.op[id_] for id_ in ids]
        named = (
            say("rescue-undo-part", part=_part(op), how=_how(UNDOING[op.action])) for op in wrong
        )
        yield from _indented(say("rescue-undo-line", entry=entry, parts=", ".join(named)), 2)
    off = [c.op[id_] for id_ in (*(each.op for each in found.undone), *found.wrong)]
    yield from _lost(c, off)
    unpicked = [op for op in off if UNDOING[op.action] is Undoing.UNPICK]
    if any(op.setup.station == _KNIFE for op in unpicked):
        yield from _indented(say("rescue-knife"), 0)
    if unpicked:
        yield from _indented(say("rescue-care"), 0)


def _outermost(c: Construction, undone: Sequence[Undone]) -> Reason:
    """Why an entry is undone: a reason from outside of it, where there is one."""
    entries = {c.op[each.op].entry for each in undone}
    for each in undone:
        if {c.op[op].entry for op in each.reason.operations} - entries:
            return each.reason
    return undone[0].reason


def _lost(c: Construction, off: Iterable[Operation]) -> Iterator[str]:
    lost = [op for op in off if UNDOING[op.action] is Undoing.LOST]
    if lost:
        yield say("rescue-lost")
    for op in lost:
        pieces = _quoted(piece.id for piece in c.garment.pieces if piece.id in op.pieces)
        slug = op.action.value.replace(" ", "-")
        yield from _indented(say(f"rescue-lost-{slug}", op=op.id, pieces=pieces), 2)


def _go_on(c: Construction, found: Rescue) -> Iterator[str]:
    undone = {each.op for each in found.undone}
    labels = {
        **dict.fromkeys(undone, say("rescue-again")),
        **dict.fromkeys(found.missed, say("rescue-forgotten")),
        **dict.fromkeys(found.wrong, say("rescue-again")),
    }
    width = max(screen_width(label) for label in labels.values())
    stretches = groupby(found.rest, lambda id_: (labels.get(id_, ""), c.op[id_].entry))
    for number, ((label, entry), held) in enumerate(stretches, 1):
        space = " " * (width - screen_width(label))
        parts = ", ".join(_marked(c, c.op[id_]) for id_ in held)
        step = say("rescue-step", entry=entry, parts=parts)
        yield f"  {number:>3}  {label}{space}  {step}"


def _given_up(c: Construction, given_up: Iterable[Reason]) -> Iterator[str]:
    """Good practice that is not kept, said once for each rule and pair of entries."""
    told: dict[tuple[object, ...], str] = {}
    for reason in given_up:
        arcs = (arc for bundle in reason.alternatives for arc in bundle)
        entries = tuple((c.op[arc.before].entry, c.op[arc.after].entry) for arc in arcs)
        line = say("rescue-given-up-line", because=reason.because, rule=reason.rule)
        told.setdefault((reason.rule, entries), line)
    if told:
        yield say("rescue-given-up")
    for line in dict.fromkeys(told.values()):
        yield from _indented(line, 2)


def _walked(found: Rescue) -> Iterator[str]:
    walk = found.rehearsal
    if not walk.is_clean:
        yield say("rescue-stuck", op=walk.troubles[0].op)
        for trouble in walk.troubles:
            yield from _indented(tell_trouble(trouble), 2)
    elif walk.debts:
        for debt in walk.debts:
            yield from _indented(
                say("rescue-debt", what=say(f"rehearse-{debt.why}", op=debt.op)), 0
            )
    else:
        yield say("rescue-walked")


def _how(how: Undoing) -> str:
    return say(f"rescue-how-{how.value.replace(' ', '-')}")


def _part(op: Operation) -> str:
    return op.part.replace("-", " ") if op.part else op.action.value


def _marked(c: Construction, op: Operation) -> str:
    return say("steps-part", part=_part(op), mark=c.garment.station[op.setup.station].mark)


def _names(c: Construction, ids: Sequence[OpId]) -> str:
    """Name operations; an entry stands for all of its own."""
    names = []
    for id_ in ids:
        parts = [op.id for op in c.of_entry[c.op[id_].entry]]
        names.append(c.op[id_].entry if all(part in ids for part in parts) else id_)
    return _quoted(dict.fromkeys(names))


def _quoted(names: Iterable[str]) -> str:
    return ", ".join(f"`{name}`" for name in names)


def _indented(text: str, indent: int) -> list[str]:
    space = " " * indent
    later = " " * (indent + 2 if indent else 0)
    return wrap(text, _WIDTH, initial_indent=space, subsequent_indent=later, break_on_hyphens=False)
