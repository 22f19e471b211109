"""What is out of reach: lying inside, caught in a seam, held to another layer, under something."""

from collections.abc import Iterator
from typing import Final

from seqplan.model.entry import Verb
from seqplan.model.operation import Action, Operation
from seqplan.recipes.recipe import MAIN
from seqplan.rehearse.trouble import Trouble
from seqplan.rehearse.work import TURNED_SEAMS, Work, too_late

_INSIDE_WHEN_TURNED: Final = frozenset(
    {Action.TRIM, Action.GRADE, Action.CLIP, Action.PRESS, Action.FINISH, Action.BOX}
)
"""What is done to allowances, which lie inside once their seam is turned."""

_MAKING: Final = frozenset(
    {Action.MAKE_STRAP, Action.TURN, Action.SEW, Action.TRIM, Action.CLIP, Action.GRADE}
)
"""What makes a part up, for which both its layers must be free."""

_PRONGED: Final = ("magnetic", "prong")
"""Kinds of fastenings that are bent over on the wrong side of their layer."""


def not_inside(work: Work, op: Operation) -> Iterator[Trouble]:
    """Allowances that have been turned to the inside are out of reach."""
    if op.action not in _INSIDE_WHEN_TURNED:
        return
    turn = work.turned.get(op.entry) if work.c.entry(op).seam in TURNED_SEAMS else None
    if op.action is Action.BOX:
        turns = (work.mark(piece, {Action.TURN}) for piece in sorted(op.pieces))
        turn = next((t for t in turns if t and work.c.entry(work.c.op[t]).verb is Verb.TURN), None)
    if turn is not None:
        yield Trouble(op.id, "lies-inside", blame=turn)


def free_to_be_made(work: Work, op: Operation) -> Iterator[Trouble]:
    """A strap, a collar, a pocket is made up before any of its edges is caught."""
    seam = work.c.entry(op).seam
    is_making = op.action in {Action.MAKE_STRAP, Action.TURN} or seam in TURNED_SEAMS
    if op.action not in _MAKING or not is_making:
        return
    pieces = set(op.pieces)
    catches = {work.caught[piece] for piece in pieces if piece in work.caught}
    earlier = [o for o in catches if work.c.op[o].entry != op.entry]
    is_strap = op.action is Action.MAKE_STRAP
    if earlier and (is_strap or all(piece in work.caught for piece in pieces)):
        yield Trouble(op.id, "caught-already", blame=min(earlier, key=work.done.__getitem__))


def not_lying_on_a_face(work: Work, op: Operation) -> Iterator[Trouble]:
    """A pocket has its mouth hemmed before it lies on the garment."""
    is_caught = bool(op.pieces) and all(piece in work.caught for piece in op.pieces)
    if op.action is not Action.TURN_UP or not is_caught:
        return
    first = min((work.caught[p] for p in op.pieces), key=work.done.__getitem__)
    if work.c.op[first].action is Action.STITCH_ON:
        yield Trouble(op.id, too_late(work, first), blame=first)


def not_lying_on_it(work: Work, op: Operation) -> Iterator[Trouble]:
    """Layers that are held wrong sides together cannot be laid right sides together any more."""
    shape = work.c.shapes[op.entry]
    if op.part != MAIN or op.action is not Action.SEW or not shape.glues:
        return
    for hold in work.c.acting(Action.HOLD):
        layers = set(work.c.entry(hold).partners)
        is_among_them = shape.skins <= hold.pieces and bool(shape.skins & layers)
        edges = {s for glue in shape.glues for s in (glue.first, glue.second)}
        if hold.id in work.done and is_among_them and not edges & set(hold.segments):
            yield Trouble(op.id, "held-together", blame=hold.id)


def lying_as_they_will(work: Work, op: Operation) -> Iterator[Trouble]:
    """Layers are held together once they lie as they will, with the seam between them turned."""
    if op.action is not Action.HOLD:
        return
    for id_ in work.joined:
        shape = work.c.shapes[id_]
        is_between = shape.skins <= op.pieces and bool(shape.skins & set(work.c.entry(op).partners))
        if not is_between or shape.entry.seam not in TURNED_SEAMS or id_ in work.turned:
            continue
        turns = [o for o in work.c.of_entry[id_] if o.action is Action.TURN]
        turns += [o for o in work.c.acting(Action.TURN) if shape.skins <= o.pieces]
        if turns:
            yield Trouble(op.id, "not-turned-yet", missing=turns[0].id)


def nothing_else_under_the_needle(work: Work, op: Operation) -> Iterator[Trouble]:
    """A pocket mouth is topstitched before the back of the bag lies under it."""
    if op.action is not Action.TOPSTITCH:
        return
    for hold in work.c.acting(Action.HOLD):
        partners = set(work.c.entry(hold).partners)
        is_more = partners & op.pieces and partners - op.pieces and op.pieces < hold.pieces
        if hold.id in work.done and is_more and not set(op.segments) & set(hold.segments):
            yield Trouble(op.id, "catches-more", blame=hold.id)


def wrong_side_in_reach(work: Work, op: Operation) -> Iterator[Trouble]:
    """What has prongs is set while the wrong side of its layer can be got at."""
    kinds = (work.c.garment.notion[notion].kind.casefold() for notion in op.notions)
    if op.action is not Action.ATTACH or not any(word in k for k in kinds for word in _PRONGED):
        return
    for part in work.parts_with(op.pieces):
        if not part.loops and not work.gaps_in(part):
            pieces = {piece for piece, _ in part.discs}
            seams = set(work.joined.values())
            last = [o for o in work.done if o in seams or work.c.op[o].action is Action.CLOSE_GAP]
            shut = [o for o in last if work.shuts(work.c.op[o]) & pieces]
            yield Trouble(op.id, "wrong-side-shut-in", blame=shut[-1])
            return


def not_under_a_fly(work: Work, op: Operation) -> Iterator[Trouble]:
    """The edges of a fly facing or shield are finished before the topstitching holds them down."""
    if op.action is not Action.FINISH:
        return
    for zip_ in work.c.acting(Action.SET_ZIP):
        if op.pieces <= set(work.c.entry(zip_).partners):
            rows = work.c.doing(zip_.entry, Action.TOPSTITCH)
            done = [row.id for row in rows if row.id in work.done]
            if done:
                yield Trouble(op.id, too_late(work, done[0]), blame=done[0])
