"""What would help where a rehearsal gets stuck: moves and gaps, each tried before it is offered."""

from collections.abc import Iterator, Sequence
from typing import NamedTuple

from seqplan.base.ids import EntryId, OpId, PieceId
from seqplan.model.piece import Layer
from seqplan.recipes.construction import Construction
from seqplan.recipes.shape import Shape
from seqplan.rehearse.trouble import Trouble
from seqplan.rehearse.walk import Rehearsal, rehearse


class Repair(NamedTuple):
    """A move with which all can be done.

    Parameters
    ----------
    moved
        What to move: entries, or a single operation of a recipe.
    anchor
        Where to.
    is_above
        Whether it goes above the anchor or below it.
    order
        The order that comes of it.
    size, distance
        How many operations move, and how far.
    """

    moved: tuple[OpId | EntryId, ...]
    anchor: OpId | EntryId
    is_above: bool
    order: tuple[OpId, ...]
    size: int
    distance: int


def repairs(c: Construction, stuck: Rehearsal) -> tuple[Repair, ...]:
    """Find moves that help, those of the fewest operations first, of these the shortest.

    Each is tried by walking the changed order. Only those are offered with which everything can be
    done, and nothing is left undone; where there is none, no move by itself helps. Of moves to the
    same order one is offered.

    Parameters
    ----------
    c
        The garment.
    stuck
        A rehearsal that does not get through.
    """
    found: dict[tuple[OpId, ...], Repair] = {}
    for trouble in stuck.troubles:
        for moved, anchor, is_above in _moves(c, stuck, trouble):
            repair = _tried(c, stuck, moved, anchor, is_above=is_above)
            if repair is not None and _cost(repair) < _cost(found.get(repair.order, repair), 1):
                found[repair.order] = repair
    return tuple(sorted(found.values(), key=_cost))


def _cost(repair: Repair, more: int = 0) -> tuple[int, int, int]:
    return repair.size, repair.distance, more


def gap_places(c: Construction, stuck: Rehearsal) -> tuple[EntryId, ...]:
    """The seams in which a gap could be left where there is no way out, the least visible first.

    Seams of the lining come first, then those between lining and outside, of each the last sewn.
    """
    if not any(trouble.why == "no-way-out" for trouble in stuck.troubles):
        return ()
    place = {id_: number for number, id_ in enumerate(stuck.order[: stuck.reached])}
    op = c.op[stuck.troubles[0].op]
    sewn = [
        shape for shape in c.joins if shape.skins & op.pieces and c.main(shape.entry.id).id in place
    ]

    def rank(entry: EntryId) -> tuple[int, int]:
        layers = [c.garment.piece[piece].layer for piece in c.shapes[entry].skins]
        return sum(layer is Layer.SHELL for layer in layers), -place[c.main(entry).id]

    return tuple(sorted((shape.entry.id for shape in sewn), key=rank))


def _moves(
    c: Construction, stuck: Rehearsal, trouble: Trouble
) -> Iterator[tuple[tuple[OpId, ...], OpId, bool]]:
    if trouble.why == "zip-shut" and trouble.missing is None:
        return
    for missing in trouble.wanted:
        yield (missing,), trouble.op, True
        yield (trouble.op,), missing, False
    if trouble.blame is not None:
        yield (trouble.blame,), trouble.op, False
        yield (trouble.op,), trouble.blame, True
    if trouble.why == "rolled-in-a-ring" and trouble.blame is not None:
        for op in c.operations:
            if c.entry(op).how is c.entry(c.op[trouble.op]).how:
                yield _with_its_like(c, trouble.blame), op.id, False
    if trouble.why == "trapped":
        # Which seam is one too many is a matter of choice: any may wait, with its like.
        for id_ in stuck.order[: stuck.reached]:
            if c.main(c.op[id_].entry).id == id_ and c.shapes[c.op[id_].entry].glues:
                yield _with_its_like(c, id_), trouble.op, False


def _with_its_like(c: Construction, op: OpId) -> tuple[OpId, ...]:
    """A seam, and the same seam of the other layer."""

    def edges(shape: Shape) -> set[tuple[PieceId, str]]:
        pieces = c.garment.piece
        return {(pieces[s.piece].like or s.piece, c.rings.name(s)) for s in shape.run}

    ours = edges(c.shapes[c.op[op].entry])
    return tuple(c.main(s.entry.id).id for s in c.joins if edges(s) == ours)


def _tried(
    c: Construction, stuck: Rehearsal, moved: tuple[OpId, ...], anchor: OpId, *, is_above: bool
) -> Repair | None:
    """Move operations, with all of their entries where they belong to others than the anchor."""
    entries = dict.fromkeys(c.op[id_].entry for id_ in moved)
    is_whole = c.op[anchor].entry not in entries
    block = {op.id for id_ in entries for op in c.of_entry[id_]} if is_whole else set(moved)
    aim = {op.id for op in c.of_entry[c.op[anchor].entry]} if is_whole else {anchor}
    order = _moved(stuck.order, block, aim, is_above=is_above)
    again = rehearse(c, order)
    if not again.is_clean or again.debts:
        return None
    was = {id_: number for number, id_ in enumerate(stuck.order)}
    now = {id_: number for number, id_ in enumerate(order)}
    return Repair(
        moved=tuple(entries) if is_whole else moved,
        anchor=c.op[anchor].entry if is_whole else anchor,
        is_above=is_above,
        order=order,
        size=len(block),
        distance=max(abs(was[id_] - now[id_]) for id_ in block),
    )


def _moved(
    order: Sequence[OpId], block: set[OpId], aim: set[OpId], *, is_above: bool
) -> tuple[OpId, ...]:
    rest = [id_ for id_ in order if id_ not in block]
    places = [number for number, id_ in enumerate(rest) if id_ in aim]
    cut = places[0] if is_above else places[-1] + 1
    return (*rest[:cut], *(id_ for id_ in order if id_ in block), *rest[cut:])
