"""A rehearsal as plain text: after each step how the work lies, as far as that has changed."""

from collections import Counter
from collections.abc import Iterable, Iterator, Sequence
from textwrap import wrap

from seqplan.base.visible import printable
from seqplan.explain.rehearsed import tell_repairs
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
        for text in _changes(step, last):
            lines += _wrapped(text, 7)
        last = step
    lines += ["", *_outcome(c, found)]
    return printable("\n".join(lines) + "\n")


def _changes(step: After, last: After | None) -> Iterator[str]:
    """What a step has changed, a sentence each."""
    before = last.lies if last else ()
    for lie in step.lies:
        if lie not in before:
            yield say("walk-together", pieces=", ".join(lie.pieces))
            yield _open(lie)
    for key, now, was in (
        ("to-turn", step.to_be_turned, last.to_be_turned if last else ()),
        ("gaps", step.gaps, last.gaps if last else ()),
        ("shut", step.shut, last.shut if last else ()),
    ):
        for end, names in (
            ("", [id_ for id_ in now if id_ not in was]),
            ("-no-more", [id_ for id_ in was if id_ not in now]),
        ):
            if names:
                yield say(f"walk-{key}{end}", names=", ".join(f"`{id_}`" for id_ in names))
    if last is None or step.raw != last.raw:
        raw = say("walk-raw", edges=_by_piece(step.raw))
        yield raw if step.raw else say("walk-nothing-raw")


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
