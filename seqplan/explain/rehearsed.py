"""What a rehearsal found, as findings: where the work gets stuck, why, and what would help."""

from collections.abc import Iterator
from typing import Final

from seqplan.base.diagnostic import Diagnostic, Note, Severity
from seqplan.base.ids import RuleSlug
from seqplan.recipes.construction import Construction
from seqplan.rehearse.methods import Method, other_methods
from seqplan.rehearse.repair import Repair, gap_places, repairs
from seqplan.rehearse.trouble import tell_trouble
from seqplan.rehearse.walk import Rehearsal
from seqplan.words.say import say

STUCK = RuleSlug("cannot-be-done")
"""The slug of an operation that the work as it lies does not allow."""

UNDONE = RuleSlug("left-undone")
"""The slug of what is left undone at the end."""


def check_rehearsed(c: Construction, found: Rehearsal) -> tuple[Diagnostic, ...]:
    """Tell where a rehearsal got stuck, and what it left undone.

    The first operation that cannot be done is an error; what comes after it is not looked at. What
    is left undone at the end is a warning.
    """
    return (*_stuck(c, found), *_undone(c, found))


def tell_repair(repair: Repair) -> str:
    """Say what to move where."""
    key = "rehearse-move-above" if repair.is_above else "rehearse-move-below"
    return say(key, moved=", ".join(f"`{id_}`" for id_ in repair.moved), anchor=repair.anchor)


def tell_method(method: Method) -> str:
    """Say how else an entry could be sewn."""
    key = "rehearse-say-method" if method.value else "rehearse-leave-out"
    return say(key, entry=method.entry, word=method.key, value=method.value)


def tell_repairs(c: Construction, found: Rehearsal) -> tuple[str, ...]:
    """Everything that would help, the least change first."""
    texts = [tell_repair(repair) for repair in repairs(c, found)]
    seams = gap_places(c, found)
    if seams:
        names = ", ".join(f"`{id_}`" for id_ in seams)
        texts.append(say("rehearse-leave-gap", seams=names))
    shut = [trouble for trouble in found.troubles if trouble.why == "zip-shut"]
    if shut and shut[0].missing is None and shut[0].blame is not None:
        zips = [n for n in c.op[shut[0].blame].notions if "zip" in c.garment.notion[n].kind]
        texts += [say("rehearse-open-zip", zip=zip_) for zip_ in zips]
    texts += [
        say(_OTHERWISE[trouble.why], op=trouble.op, **dict(trouble.names))
        for trouble in found.troubles
        if trouble.why in _OTHERWISE
    ]
    return (*texts, *map(tell_method, other_methods(c, found)))


_OTHERWISE: Final = {
    "used-up-sew": "rehearse-sew-narrower",
    "bears-no-iron": "rehearse-without-iron",
    "slider-runs-off": "rehearse-sew-a-stop",
    "no-stop": "rehearse-sew-a-stop",
}
"""Another way of doing what cannot be done as it is said."""


def _stuck(c: Construction, found: Rehearsal) -> Iterator[Diagnostic]:
    if found.is_clean:
        return
    first, *others = found.troubles
    helping = tell_repairs(c, found)
    yield Diagnostic(
        slug=STUCK,
        severity=Severity.ERROR,
        message=say("rehearse-stuck", op=first.op),
        path=c.op[first.op].path,
        notes=(
            Note(tell_trouble(first)),
            *(Note(tell_trouble(other)) for other in others),
            *(Note(say("rehearse-or", fix=text)) for text in helping[1:]),
        ),
        fix=helping[0] if helping else None,
    )


def _undone(c: Construction, found: Rehearsal) -> Iterator[Diagnostic]:
    for debt in found.debts:
        yield Diagnostic(
            slug=UNDONE,
            severity=Severity.WARNING,
            message=say(f"rehearse-{debt.why}", op=debt.op),
            path=c.op[debt.op].path,
            fix=say(f"rehearse-{debt.why}-fix", op=debt.op),
        )
