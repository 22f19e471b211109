"""A zip that lies in the way out is opened before the work is turned, and can be reached then.

Why
---
A closed zip is a wall: the outside cannot be drawn out past it, and its slider lies inside.

Fires
-----
The zip is set in, then `{open: zip}`, then the seam that closes the outside of a pouch or cushion
round the zip, then `{turn: all}`.

Stays quiet
-----------
No operation opens the zip: then its absence is another finding. The work is open elsewhere, as a
dress at its hem, or the seam closes a lining only.

Sources
-------
Common practice; several published makers report the slip with pouches and cushions.
"""

from collections.abc import Iterator, Mapping, Sequence

from seqplan.base.ids import EntryId, RuleSlug
from seqplan.base.strength import Strength
from seqplan.graph.reason import Reason
from seqplan.model.entry import Verb
from seqplan.model.operation import Action, Operation
from seqplan.model.piece import Layer, Segment
from seqplan.recipes.construction import Construction
from seqplan.rules.parts import hanging_together, pieces_of, rings_of
from seqplan.rules.rule import Rule, arc, either, names
from seqplan.surface.glued import Glue, Part, Surface
from seqplan.surface.ring import Rings
from seqplan.words.say import say


def _derive(c: Construction) -> Iterator[Reason]:
    for opening in c.acting(Action.OPEN):
        for op in c.operations:
            is_set = not op.part and op is not opening
            if not (is_set and set(op.notions) & set(opening.notions)):
                continue
            yield arc(RULE, op, opening, key="because-zip-in-before-opened")
            for turn in c.on_pieces(op.pieces, Action.TURN):
                if c.entry(turn).verb is Verb.TURN:
                    yield arc(RULE, opening, turn)
            bundles = [[(opening, c.main(seam))] for seam in _closing_round(c, op)]
            if bundles:
                seams = names(after.entry for ((_, after),) in bundles)
                because = say("because-slider-in-reach", zip=opening.id, seams=seams)
                yield either(RULE, bundles, asker=opening, because=because)


def _closing_round(c: Construction, zip_: Operation) -> list[EntryId]:
    """The seams of the outside of which each closes it round the zip, if the others are sewn."""
    outside = {
        shape.entry.id: [glue for glue in shape.glues if _is_outside(c, glue)]
        for shape in c.joins
        if shape.entry.id != zip_.entry
    }
    together = hanging_together(pieces_of(glues) for glues in outside.values())
    beside = {segment.piece for segment in zip_.segments}
    pieces = frozenset(beside).union(*(together.get(id_, ()) for id_ in beside))
    skins = {id_: glues for id_, glues in outside.items() if glues and pieces_of(glues) <= pieces}
    rings = rings_of(c, pieces)
    if not _is_closed(c, zip_, rings, skins):
        return []
    return sorted(
        id_
        for id_ in skins
        if not _is_closed(c, zip_, rings, {k: v for k, v in skins.items() if k != id_})
    )


def _is_outside(c: Construction, glue: Glue) -> bool:
    pieces = (c.garment.piece[segment.piece] for segment in (glue.first, glue.second))
    return all(piece.layer is Layer.SHELL for piece in pieces)


def _is_closed(
    c: Construction, zip_: Operation, rings: Rings, skins: Mapping[EntryId, Sequence[Glue]]
) -> bool:
    """Whether nothing of the outside is open but the edges in which the zip is set."""
    parts = Surface(rings, (glue for held in skins.values() for glue in held)).parts
    beside = [part for part in parts if any(_lies_in(c, s, part) for s in zip_.segments)]
    shell = [part for part in beside if _is_shell(c, part)]
    free = {segment for part in shell for loop in part.loops for segment in loop}
    return bool(shell) and free <= set(zip_.segments)


def _lies_in(c: Construction, segment: Segment, part: Part) -> bool:
    return c.rings.disc(segment) in part.discs


def _is_shell(c: Construction, part: Part) -> bool:
    return all(c.garment.piece[piece].layer is Layer.SHELL for piece, _ in part.discs)


RULE = Rule(
    RuleSlug("zip-open-before-turning"), Strength.MUST, _derive, __doc__ or "", numbers=(35,)
)
