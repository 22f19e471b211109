"""What a seam catches is made up first: collars, straps, tabs and loops.

Why
---
Once its open edge is caught, a collar or strap can no longer be turned, pressed flat or
topstitched all round, and cannot be added afterwards either.

Fires
-----
`collar`, with all its parts, before the seam with `between: {collar.neck: stand.top}`; `straps`
before the seam with `between: strap`; a two-layer stand before the band that sets it on.

Stays quiet
-----------
What is caught is a part of the garment itself, such as a front between two yokes.

Sources
-------
Men's formal shirt, operation breakdown, P. Sarkar, 2011 (collar run-stitched, trimmed, turned,
creased, topstitched, then the band); Clothing and textiles leaflet 185, University of Kentucky
Extension; K. Omdahl, How to sew a lined tote bag, 2017 (straps between outer and lining).
"""

from collections.abc import Iterator

from seqplan.base.ids import EntryId, PieceId, RuleSlug
from seqplan.base.strength import Strength
from seqplan.graph.reason import Reason
from seqplan.model.entry import Entry, SeamKind, Verb
from seqplan.model.operation import Action, Operation
from seqplan.recipes.construction import Construction
from seqplan.rules.rule import Rule, arc


def _derive(c: Construction) -> Iterator[Reason]:
    for entry in c.garment.entries:
        catch = c.main(entry.id)
        for piece in _taken_up(entry):
            for op in _making_up(c, piece, entry.id):
                yield arc(RULE, op, catch)


def _taken_up(entry: Entry) -> list[PieceId]:
    """The pieces that an entry catches, sets on or stitches on whole."""
    caught = [item.edge.piece for item in entry.between if item.edge is not None]
    caught += [item.piece for item in entry.between if item.piece is not None]
    if entry.verb in {Verb.BAND, Verb.ATTACH, Verb.PATCH_POCKET}:
        caught += [*entry.partners, *entry.pieces]
    return caught


def _making_up(c: Construction, piece: PieceId, seam: EntryId) -> Iterator[Operation]:
    for op in c.on_pieces(frozenset({piece}), *Action):
        entry = c.entry(op)
        is_turned = entry.seam in {SeamKind.ENCLOSED, SeamKind.FACED}
        if op.entry != seam and (is_turned or entry.verb is Verb.STRAP):
            yield op


RULE = Rule(
    RuleSlug("made-up-before-caught"),
    Strength.MUST,
    _derive,
    __doc__ or "",
    numbers=(33, 40, 43, 44),
)
