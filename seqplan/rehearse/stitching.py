"""What an operation works on has to be there, and must not be spoilt: two tables.

A seam that is to be trimmed must be sewn; an edge that is to be pleated must not be sewn to
another.
"""

from collections.abc import Iterable, Iterator, Mapping
from typing import Final

from seqplan.base.ids import OpId
from seqplan.model.entry import SeamKind, Verb
from seqplan.model.operation import Action, Operation
from seqplan.model.piece import Segment
from seqplan.rehearse.trouble import Trouble
from seqplan.rehearse.work import Place, Work, too_late

_STITCHED: Final = frozenset(
    {Action.SEW, Action.SET_ON, Action.SET_ZIP, Action.STITCH_ON, Action.MAKE_STRAP}
)
"""Stitchings that hold two layers for good."""

_JOINED: Final = _STITCHED - {Action.STITCH_ON}
"""Stitchings after which an edge is not single any more; a strap may be laid on before."""

_FOLDED_AWAY: Final = frozenset({Action.HEM, Action.CASE, Action.WRAP, Action.CLOSE_BAND})
"""After these a raw edge lies in a fold."""

_SHAPED: Final = frozenset({Action.DART, Action.PLEAT, Action.GATHER})

NEEDS: Final[Mapping[Action, frozenset[Action]]] = {
    Action.TRIM: _STITCHED,
    Action.GRADE: _STITCHED,
    Action.CLIP: _STITCHED | {Action.STAYSTITCH},
    Action.UNDERSTITCH: _STITCHED,
    Action.TOPSTITCH: _STITCHED | {Action.HEM, Action.CASE},
    Action.PRESS: _STITCHED | _SHAPED | {Action.HEM, Action.CASE, Action.BASTE, Action.ENCLOSE},
    Action.PRESS_OVER: _STITCHED,
    Action.ENCLOSE: frozenset({Action.PRESS_OVER}),
    Action.HEM: frozenset({Action.TURN_UP}),
    Action.CASE: frozenset({Action.TURN_UP}),
    Action.WRAP: frozenset({Action.SET_ON}),
    Action.CLOSE_BAND: frozenset({Action.WRAP, Action.TURN}),
    Action.THREAD: frozenset({Action.CASE}),
    Action.JOIN_ENDS: frozenset({Action.THREAD}),
    Action.REMOVE_BASTING: frozenset({Action.BASTE, Action.GATHER}),
    Action.BOX: frozenset({Action.SEW}),
    Action.TACK: _STITCHED | {Action.SET_ZIP},
    Action.CLOSE_GAP: frozenset({Action.SEW, Action.CASE}),
}
"""What has to be there before: one of these, on every edge where the garment has it at all."""

TOO_LATE: Final[Mapping[Action, frozenset[Action]]] = {
    Action.STAYSTITCH: _JOINED | _FOLDED_AWAY,
    Action.DART: _JOINED | _FOLDED_AWAY | {Action.TURN_UP, Action.HOLD},
    Action.PLEAT: _JOINED | _FOLDED_AWAY | {Action.TURN_UP, Action.HOLD},
    Action.GATHER: _JOINED | _FOLDED_AWAY | {Action.TURN_UP},
    Action.HOLD: _JOINED | _FOLDED_AWAY | {Action.TURN_UP, Action.FINISH},
    Action.BASTE: _FOLDED_AWAY,
    Action.SEW: _FOLDED_AWAY | {Action.TURN_UP},
    Action.SET_ON: _FOLDED_AWAY | {Action.TURN_UP, Action.SEW},
    Action.STITCH_ON: frozenset({Action.SEW, Action.SET_ON}),
    Action.CLOSE_ENDS: frozenset({Action.SEW}),
    Action.SET_ZIP: _FOLDED_AWAY,
    Action.TURN_UP: _JOINED,
    Action.FINISH: _FOLDED_AWAY | {Action.ENCLOSE, Action.SET_ZIP, Action.TURN_UP},
    Action.TRIM: frozenset({Action.ENCLOSE, Action.WRAP, Action.PRESS_OVER}),
    Action.GRADE: frozenset({Action.ENCLOSE, Action.WRAP}),
    Action.CLIP: frozenset({Action.ENCLOSE, Action.WRAP}),
    Action.PRESS: frozenset({Action.WRAP}),
    Action.PRESS_OVER: frozenset({Action.ENCLOSE}),
    Action.PRESS_COILS: frozenset({Action.SET_ZIP}),
    Action.PRESS_UNDER: frozenset({Action.STITCH_ON, Action.SEW}),
    Action.SLASH: frozenset({Action.SET_ON, Action.WRAP}),
}
"""What spoils it: where one of these has been done to the same edge, it cannot be done any more."""

_TOO_LATE_ON_PIECES: Final[Mapping[Action, frozenset[Action]]] = {
    Action.FOLD_BAND: frozenset({Action.SET_ON, Action.STITCH_ON, Action.MAKE_STRAP}),
    Action.FUSE: frozenset({Action.TURN, Action.WRAP, Action.CLOSE_BAND, Action.STITCH_ON}),
    Action.PRESS_UNDER: frozenset({Action.STITCH_ON}),
}
"""The same for pieces as a whole."""

_TIDIED_AFTER: Final = frozenset({SeamKind.FINISHED_TOGETHER, SeamKind.BOUND})


def there(work: Work, op: Operation) -> Iterator[Trouble]:
    """The stitching, or the fold, that the operation works on."""
    needed = _needed(work, op)
    own = [o for o in work.c.of_entry[op.entry] if o.action in needed and o != op]
    if own:
        if all(other.id not in work.done for other in own):
            yield Trouble(op.id, "nothing-there", missing=own[0].id)
        return
    for segment in op.segments:
        makers = [o for o in work.c.on_segment.get(segment, ()) if o.action in needed and o != op]
        if makers and all(maker.id not in work.done for maker in makers):
            yield Trouble(op.id, "nothing-there", missing=makers[0].id)
            return


def _needed(work: Work, op: Operation) -> frozenset[Action]:
    """What has to be there, which for some recipes is more than for the operation in general.

    An edge may be pressed at any time where the author says so: creased, before it is sewn.
    """
    if work.c.entry(op).verb is Verb.PRESS:
        return frozenset()
    parts = {other.action for other in work.c.of_entry[op.entry]}
    special = {
        (Action.PRESS, Action.ENCLOSE): work.c.entry(op).seam is SeamKind.FRENCH,
        (Action.PRESS, Action.TURN): work.c.entry(op).verb is Verb.STRAP,
        (Action.FINISH, Action.SEW): work.c.entry(op).seam in _TIDIED_AFTER,
        (Action.CLOSE_ENDS, Action.SET_ON): op.part != "join",
        (Action.CLOSE_ENDS, Action.TURN): True,
        (Action.SLASH, Action.STITCH_ON): True,
        (Action.TURN, Action.SLASH): True,
        (Action.SET_ZIP, Action.PRESS): True,
        (Action.REMOVE_BASTING, Action.SET_ZIP): True,
        (Action.TURN, Action.MAKE_STRAP): True,
        (Action.TURN, Action.SEW): True,
    }
    for (action, before), holds in special.items():
        if holds and op.action is action and before in parts:
            return frozenset({before})
    return NEEDS.get(op.action, frozenset())


def not_spoilt(work: Work, op: Operation) -> Iterator[Trouble]:
    """Nothing has been done before that makes it impossible."""
    edges = TOO_LATE.get(op.action, frozenset())
    if work.c.entry(op).verb is Verb.PRESS:
        return
    whole = _TOO_LATE_ON_PIECES.get(op.action, frozenset())
    wanted: Iterable[Segment] = op.segments
    if op.action is Action.TURN_UP:
        wanted = _without_parts(work, op)
    elif op.action is Action.PLEAT:
        wanted = _single(work, op)
    places: list[tuple[Place, frozenset[Action]]] = [(s, edges) for s in wanted if edges]
    places += [(piece, whole) for piece in sorted(op.pieces) if whole]
    found = (work.mark(place, actions) for place, actions in places)
    first = next((o for o in found if o is not None and _spoils(work, o, op)), None)
    if first is not None:
        yield Trouble(op.id, too_late(work, first), blame=first)


def _single(work: Work, op: Operation) -> Iterator[Segment]:
    """The edges but for those that are sewn to one another, which are folded as one."""
    for segment in op.segments:
        glue = work.surface.glue_at(segment)
        if glue is None or not {glue.first, glue.second} <= set(op.segments):
            yield segment


def _without_parts(work: Work, op: Operation) -> Iterator[Segment]:
    """The edges of a hem but for those sewn in part, of which the rest is meant: slits, vents."""
    rest = [s for s in op.segments if work.surface.glue_at(s) is None]
    left_open = {(work.c.rings.disc(s), s.half, work.c.rings.name(s)) for s in rest}
    for s in op.segments:
        if s in rest or (work.c.rings.disc(s), s.half, work.c.rings.name(s)) not in left_open:
            yield s


def _spoils(work: Work, earlier: OpId, op: Operation) -> bool:
    """Whether what was done stands in the way; a fly's facing is sewn on before its shield."""
    is_own = work.c.op[earlier].entry == op.entry
    return earlier != op.id and not (is_own and op.action is Action.STITCH_ON)
