"""Techniques: which ones an operation wants of whoever does it, and which deserve samples."""

from collections.abc import Callable, Iterable, Mapping, Sequence
from typing import Final, NamedTuple

from seqplan.base.ids import EntryId, OpId
from seqplan.model.entry import Entry, SeamKind, StrapMethod, Verb, ZipMethod
from seqplan.model.operation import Action, Operation
from seqplan.plan.plan import Step
from seqplan.plan.undoing import UNDOING, Undoing
from seqplan.recipes.construction import Construction
from seqplan.tell.scene import Scene
from seqplan.words.say import say

_MANY: Final = 3
"""A technique of so many operations is shown better than told."""

_OF_ACTIONS: Final[Mapping[Action, str]] = {
    Action.FINISH: "finish",
    Action.PRESS: "press",
    Action.PRESS_OVER: "press",
    Action.TRIM: "trim",
    Action.GRADE: "trim",
    Action.CLIP: "clip",
    Action.UNDERSTITCH: "understitch",
    Action.TOPSTITCH: "topstitch",
    Action.SLASH: "slash",
    Action.BASTE: "baste",
    Action.REMOVE_BASTING: "baste",
}
"""Techniques that an operation wants whatever entry it belongs to."""

_PLAIN: Final = frozenset({"seam-plain", "hem-machine", "hem-hand"})
"""Everybody sews these all the time, so nobody needs a sample of their stages."""

_FINE: Final = frozenset({"gather", "dart", "box-corner", "in-the-round"})
"""Short techniques that are hard to tell, besides all zips."""

_SILENT: Final = frozenset({Verb.FOLD, Verb.UNFOLD, Verb.OPEN, Verb.INSPECT})
"""What nobody has to learn."""

_OF_ZIP: Final[Mapping[ZipMethod, str]] = {method: f"zip-{method.value}" for method in ZipMethod}


class Sample(NamedTuple):
    """A technique that is shown with samples, one for each of its stages.

    Parameters
    ----------
    skill
        The technique.
    step
        The step that wants it first.
    stages
        The operations after each of which one sample is left as it is.
    """

    skill: str
    step: int
    stages: tuple[OpId, ...]


def skill_name(key: str) -> str:
    """The name of a technique."""
    return say(f"skill-{key}")


def goes_wrong(key: str) -> str:
    """Where a technique goes wrong most often; empty where nothing general can be said."""
    return say(f"skill-{key}-wrong")


def skills_of(c: Construction, step: Step, before: Iterable[OpId]) -> tuple[str, ...]:
    """The techniques that a step wants, each once, in the order of its operations.

    Parameters
    ----------
    c
        The garment.
    step
        The step.
    before
        The operations that are done before it.
    """
    found: dict[str, None] = {}
    done = frozenset(before)
    for op in step.operations:
        if not op.part or op is step.operations[0]:
            found |= dict.fromkeys(_of_entry(c, op, done))
        if op.action in _OF_ACTIONS:
            found[_OF_ACTIONS[op.action]] = None
    return tuple(found)


def _of_entry(c: Construction, op: Operation, done: frozenset[OpId]) -> tuple[str, ...]:
    """What an entry is called as a technique, and that it joins tubes where it does."""
    entry = c.entry(op)
    key = entry_skill(c, entry)
    if key is None:
        return ()
    main = c.main(entry.id)
    is_round = entry.verb is Verb.SEW and Scene(c, main, done).tubes is not None
    return (key, "in-the-round") if is_round else (key,)


def entry_skill(c: Construction, entry: Entry) -> str | None:
    """The technique that an entry is an example of, if it is one of its own."""
    if entry.verb in _SILENT or c.main(entry.id).action in _OF_ACTIONS:
        return None
    special = _SPECIAL.get(entry.verb)
    return special(c, entry) if special else entry.verb.value.replace(" ", "-")


def _sew(_c: Construction, entry: Entry) -> str:
    plain = {SeamKind.PLAIN, SeamKind.PRESSED_OPEN, SeamKind.FINISHED_TOGETHER}
    kind = SeamKind.PLAIN if entry.seam in plain else entry.seam
    return f"seam-{kind.value.casefold()}"


def _insert(c: Construction, entry: Entry) -> str:
    if entry.into is None:
        return _OF_ZIP[entry.method or ZipMethod.CENTRED]
    kind = c.garment.notion[entry.notion].kind if entry.notion else ""
    return "elastic" if "elastic" in kind else "cord"


def _hem(c: Construction, entry: Entry) -> str:
    return "hem-hand" if c.main(entry.id).setup.station == "hand" else "hem-machine"


def _strap(_c: Construction, entry: Entry) -> str:
    return "strap-turned" if entry.strap is StrapMethod.TURNED else "strap-folded"


def _attach(c: Construction, entry: Entry) -> str:
    return "stitch-on" if c.main(entry.id).action is Action.STITCH_ON else "attach"


_SPECIAL: Final[Mapping[Verb, Callable[[Construction, Entry], str]]] = {
    Verb.SEW: _sew,
    Verb.INSERT: _insert,
    Verb.HEM: _hem,
    Verb.STRAP: _strap,
    Verb.ATTACH: _attach,
    Verb.BUTTONHOLE: lambda _, entry: "bound-buttonhole" if entry.is_bound else "buttonhole",
    Verb.CLOSE: lambda _, __: "close-gap",
}
"""Verbs that are more than one technique, or are called otherwise."""


def find_samples(c: Construction, steps: Sequence[Step]) -> tuple[Sample, ...]:
    """Choose the techniques that deserve samples: of many stages, fine, or with a cut that stays.

    Parameters
    ----------
    c
        The garment.
    steps
        The steps in their order; a sample is asked for where its technique occurs first.
    """
    found: dict[str, Sample] = {}
    seen: set[EntryId] = set()
    for step in steps:
        entry = c.garment.entry[step.entry]
        key = entry_skill(c, c.entry(step.operations[0]))
        if key is None or key in _PLAIN or key in found or entry.id in seen:
            continue
        seen.add(entry.id)
        stages = tuple(op.id for op in step.operations)
        is_fine = key in _FINE or key in _OF_ZIP.values()
        if is_fine or len(stages) >= _MANY or any(map(_cuts, step.operations)):
            found[key] = Sample(key, step.number, stages)
    return tuple(found.values())


def _cuts(op: Operation) -> bool:
    """Whether it cuts into a piece for good, other than along an allowance."""
    is_lost = UNDOING[op.action] is Undoing.LOST
    return is_lost and op.action in {Action.SLASH, Action.BUTTONHOLE, Action.BIND_HOLE}
