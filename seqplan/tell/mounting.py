"""What has to be mounted and set at a station for the operations of one visit."""

from collections.abc import Iterable, Iterator, Sequence

from seqplan.model.operation import Action, Operation
from seqplan.recipes.construction import Construction
from seqplan.tell import usual
from seqplan.tell.names import as_clause, listing
from seqplan.tell.needs import needle_keys
from seqplan.tell.setups import foot_name, needle_name, thread_name
from seqplan.words.say import has, say

_LOCKSTITCH = "lockstitch"
_LONG = frozenset({Action.BASTE, Action.GATHER, Action.HOLD})


def tell_mounted(c: Construction, ops: Sequence[Operation]) -> tuple[tuple[str, str], ...]:
    """Say foot, needle, thread and stitch for operations that share one set-up.

    Parameters
    ----------
    c
        The garment.
    ops
        At least one operation; all at the same station with the same foot.

    Returns
    -------
    tuple of (label, value)
        Only what the station has: an iron has none of them.
    """
    station, foot = ops[0].setup.station, ops[0].setup.foot
    found = {
        "foot": say("setup-foot", foot=foot_name(foot)) if foot else "",
        "needle": _needle(c, station, ops),
        "thread": _thread(station, ops),
        "stitch": listing(dict.fromkeys(_stitches(c, station, ops))),
    }
    return tuple((say(f"batch-{key}"), value) for key, value in found.items() if value)


def _needle(c: Construction, station: str, ops: Sequence[Operation]) -> str:
    named = ops[0].setup.needle
    if named:
        return say("setup-needle", needle=needle_name(named))
    if station != _LOCKSTITCH:
        key = f"setup-needle-{station}"
        return say(key) if has(key) else ""
    pieces = {id_ for op in ops for id_ in op.pieces}
    fabrics = {c.garment.piece[id_].fabric for id_ in pieces}
    cloths = [fabric for fabric in c.garment.fabrics if fabric.id in fabrics]
    return listing(say(f"setup-needle-lockstitch-{key}") for key in needle_keys(cloths))


def _thread(station: str, ops: Sequence[Operation]) -> str:
    named = ops[0].setup.thread
    if named:
        return say("setup-thread", thread=thread_name(named))
    key = f"setup-thread-{station}"
    if not has(key):
        return ""
    is_basted = station == _LOCKSTITCH and all(op.action is Action.BASTE for op in ops)
    return say(f"{key}-baste" if is_basted else key)


def _stitches(c: Construction, station: str, ops: Iterable[Operation]) -> Iterator[str]:
    """The stitches that are set, in the order in which they are wanted; the author's own first."""
    for op in ops:
        own = None if op.part else c.entry(op).setting
        if own:
            yield as_clause(own)
        elif station == _LOCKSTITCH:
            yield _stitch(op)
        elif has(f"setup-stitch-{station}"):
            yield say(f"setup-stitch-{station}")


def _stitch(op: Operation) -> str:
    lengths = {Action.STAYSTITCH: usual.STAYSTITCH_LENGTH, Action.TOPSTITCH: usual.TOPSTITCH_LENGTH}
    if op.action in _LONG:
        return say("setup-stitch-long")
    if op.action is Action.BUTTONHOLE:
        return say("setup-stitch-buttonhole")
    if op.action in lengths:
        return say(f"setup-stitch-{op.action.value}", stitch=usual.stitch(lengths[op.action]))
    return say("setup-stitch-straight", stitch=usual.stitch(usual.STRAIGHT_STITCH))
