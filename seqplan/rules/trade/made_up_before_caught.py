"""What a seam catches is made up first: collars, straps, tabs and loops.

Why
---
Once its open edge is caught, a collar or strap can no longer be turned, pressed flat or
topstitched all round, and cannot be added afterwards either.

Fires
-----
`collar`, with all its parts, before the seam with `between: {collar.neck: stand.top}`; `straps`
before the seam with `between: strap`; a two-layer stand before the band that sets it on; a flap
before the pocket that it belongs to; a collar before it is held to the neck.

Stays quiet
-----------
What is caught is a part of the garment itself, such as a front between two yokes, whatever is faced
elsewhere on it; or it is caught a second time, as the other end of a strap.

Sources
-------
Men's formal shirt, operation breakdown, P. Sarkar, 2011 (collar run-stitched, trimmed, turned,
creased, topstitched, then the band); Collars, CT-LMH.185, University of Kentucky; K.
Omdahl, How to sew a lined tote bag, 2017 (straps between outer and lining).
"""

from collections.abc import Iterator, Mapping

from seqplan.base.ids import EntryId, PieceId, RuleSlug
from seqplan.base.strength import Strength
from seqplan.graph.reason import Reason
from seqplan.model.entry import Entry, SeamKind, Verb
from seqplan.model.operation import Action, Operation
from seqplan.recipes.construction import Construction
from seqplan.recipes.shape import Shape
from seqplan.rules.rule import Rule, arc


def _derive(c: Construction) -> Iterator[Reason]:
    sewn = {shape.entry.id: _sewn(shape) for shape in c.joins}
    for entry in c.garment.entries:
        catch = c.main(entry.id)
        for piece in _taken_up(entry):
            for op in _making_up(c, piece, catch, sewn):
                yield arc(RULE, op, catch)


def _taken_up(entry: Entry) -> list[PieceId]:
    """The pieces that an entry catches, holds, sets on or stitches on whole."""
    caught = [item.edge.piece for item in entry.between if item.edge is not None]
    caught += [item.piece for item in entry.between if item.piece is not None]
    if entry.verb in _TAKING_UP:
        caught += [*entry.partners, *entry.pieces]
    return caught


def _making_up(
    c: Construction,
    piece: PieceId,
    catch: Operation,
    sewn: Mapping[EntryId, frozenset[PieceId]],
) -> Iterator[Operation]:
    """What makes a piece up: a strap, or seams that are turned, with all that is done to them."""
    for entry in c.garment.entries:
        if entry.verb is Verb.STRAP and piece in entry.pieces:
            yield from (op for op in c.of_entry[entry.id] if op.entry != catch.entry)
    seams = [id_ for id_, pieces in sewn.items() if piece in pieces and id_ != catch.entry]
    ours = {id_ for id_ in seams if c.garment.entry[id_].seam in _TURNED}
    layers = frozenset({piece}).union(*(sewn[id_] for id_ in ours))
    if any(not sewn[id_] <= layers for id_ in seams):
        return
    edges = {s for id_ in ours for s in c.shapes[id_].run} - set(catch.segments)
    for op in c.operations if edges else ():
        is_turn = op.action is Action.TURN and c.entry(op).verb is Verb.TURN
        is_at_them = op.pieces <= layers and (is_turn or bool(edges & set(op.segments)))
        is_after = is_at_them and op.action in _FINISHING and op.entry != catch.entry
        if is_after or op.entry in ours:
            yield op


def _sewn(shape: Shape) -> frozenset[PieceId]:
    """The pieces that a seam joins, without what it catches."""
    return frozenset(s.piece for glue in shape.glues for s in (glue.first, glue.second))


_TAKING_UP = frozenset({Verb.BAND, Verb.ATTACH, Verb.PATCH_POCKET, Verb.WELT_POCKET, Verb.HOLD})
_TURNED = frozenset({SeamKind.ENCLOSED, SeamKind.FACED})
_FINISHING = frozenset({Action.TURN, Action.PRESS, Action.TOPSTITCH, Action.UNDERSTITCH})


RULE = Rule(
    RuleSlug("made-up-before-caught"),
    Strength.MUST,
    _derive,
    __doc__ or "",
    numbers=(33, 40, 43, 44),
)
