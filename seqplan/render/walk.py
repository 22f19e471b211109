"""A rehearsal as plain text: after each step how the work lies, as far as that has changed."""

from collections import Counter
from collections.abc import Iterable, Iterator, Sequence
from fractions import Fraction
from textwrap import wrap
from typing import Final, NamedTuple

from seqplan.base.measure import Length, both
from seqplan.base.visible import printable
from seqplan.explain.rehearsed import tell_repairs
from seqplan.plan.undoing import UNDOING, Undoing
from seqplan.recipes.construction import Construction
from seqplan.rehearse.lying import After, Lie
from seqplan.rehearse.trouble import tell_trouble
from seqplan.rehearse.walk import Rehearsal
from seqplan.words.say import say

_WIDTH = 92


def list_walk(c: Construction, steps: Sequence[After], found: Rehearsal, order: str) -> str:
    """Print a rehearsal.

    Parameters
    ----------
    c
        The garment.
    steps
        How the work lies after each step.
    found
        How far it went.
    order
        Which order was walked: ``written``, ``booklet`` or ``batch``.
    """
    title = say("walk-title", garment=c.garment.name, order=say(f"walk-order-{order}"))
    lines = [title, ""]
    last: After | None = None
    for number, step in enumerate(steps, 1):
        lines.append(f"{number:>3}  {step.entry}")
        for text in _changes(c, step, last):
            lines += _wrapped(text, 7)
        last = step
    lines += ["", *_outcome(c, found)]
    return printable("\n".join(lines) + "\n")


def _changes(c: Construction, step: After, last: After | None) -> Iterator[str]:
    """What a step has changed, a sentence each."""
    before = last.lies if last else ()
    for lie in step.lies:
        if lie not in before:
            yield say("walk-together", pieces=", ".join(lie.pieces))
            yield _open(lie)
    if step.look_before:
        yield say("walk-look", names=_quoted(step.look_before))
    yield from _comings_and_goings(step, last)
    yield from _cut_off(c, step, last)
    if last is None or step.raw != last.raw:
        raw = say("walk-raw", edges=_by_piece(step.raw))
        yield raw if step.raw else say("walk-nothing-raw")


class _Told(NamedTuple):
    """What is told when it begins to hold, and when it ends."""

    field: str
    key: str
    is_of_edges: bool = False
    ends: bool = True


_TOLD: Final = (
    _Told("to_be_turned", "to-turn"),
    _Told("gaps", "gaps"),
    _Told("shut", "shut"),
    _Told("caught", "caught", ends=False),
    _Told("folded", "folded", is_of_edges=True),
    _Told("basted", "basted", is_of_edges=True),
    _Told("wet", "wet"),
    _Told("away", "away"),
    _Told("setting", "setting"),
    _Told("no_iron", "no-iron", is_of_edges=True, ends=False),
)


def _comings_and_goings(step: After, last: After | None) -> Iterator[str]:
    for told in _TOLD:
        now: tuple[str, ...] = getattr(step, told.field)
        was: tuple[str, ...] = getattr(last, told.field) if last else ()
        begun = [name for name in now if name not in was]
        ended = [name for name in was if name not in now] if told.ends else []
        for end, names in (("", begun), ("-no-more", ended)):
            if names:
                listed = _by_piece(names) if told.is_of_edges else _quoted(names)
                yield say(f"walk-{told.key}{end}", names=listed)


def _cut_off(c: Construction, step: After, last: After | None) -> Iterator[str]:
    """What a step has left of allowances, and what of it cannot be undone."""
    was = set(last.trimmed) if last else set()
    by_width: dict[Fraction, list[str]] = {}
    for edge, left in step.trimmed:
        if (edge, left) not in was:
            by_width.setdefault(left, []).append(edge)
    unit = "in" if c.garment.units == "in" else "mm"
    for left, edges in by_width.items():
        yield say("walk-trimmed", left=both(Length(left, unit)), edges=_by_piece(edges))
    lost = [id_ for id_ in step.ops if UNDOING[c.op[id_].action] is Undoing.LOST]
    if lost:
        yield say("walk-lost", names=_quoted(lost))


def _quoted(names: Iterable[str]) -> str:
    return ", ".join(f"`{name}`" for name in names)


def _by_piece(edges: Iterable[str]) -> str:
    """Edges under their pieces: "front (side, hem)"."""
    found: dict[str, list[str]] = {}
    for name in edges:
        piece, _, edge = name.rpartition(".")
        found.setdefault(piece, []).append(edge)
    return ", ".join(f"{piece} ({', '.join(names)})" for piece, names in found.items())


def _open(lie: Lie) -> str:
    if lie.is_twisted:
        return say("walk-twisted")
    if not lie.open_edges:
        return say("walk-closed")
    loops = Counter(_by_piece(sorted(loop)) for loop in lie.open_edges)
    texts = (
        loop if count == 1 else say("walk-alike", loop=loop, count=count)
        for loop, count in loops.items()
    )
    return say("walk-open", loops=say("walk-loops").join(texts))


def _outcome(c: Construction, found: Rehearsal) -> Iterator[str]:
    count = len(found.order)
    if found.is_clean:
        yield say("walk-done", count=count)
        for debt in found.debts:
            yield say("walk-debt", what=say(f"rehearse-{debt.why}", op=debt.op))
        return
    yield say("walk-stuck", reached=found.reached, count=count, op=found.troubles[0].op)
    for text in (*map(tell_trouble, found.troubles), *tell_repairs(c, found)):
        yield from _wrapped(text, 2)


def _wrapped(text: str, indent: int) -> list[str]:
    first, later = " " * indent, " " * (indent + 2)
    return wrap(text, _WIDTH, initial_indent=first, subsequent_indent=later, break_on_hyphens=False)
