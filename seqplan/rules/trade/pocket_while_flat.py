"""A pocket, a welt or a fly is sewn while the piece lies flat, in one layer.

Why
---
In a tube the other side is caught by mistake, and through a facing or lining the stitches show.

Fires
-----
`pocket` before one of `shoulders` and `sides`, or of `sides` and `centre-back`, whichever closes
the tube; before a seam that lays a lining of the same shape under the piece; a fly, with its
topstitching, before one of the seams that close the leg.

Stays quiet
-----------
The seam joins the piece to its neighbour and leaves it flat; a label or a tape, which is stitched
on wherever one gets at its place.

Sources
-------
D. P. Coffin, book on shirtmaking, chapter 6 (pockets and bands first); Notes on "sew on
the flat" order of construction, J. Pray, 2022; The order of construction of the trousers, factory
style, 2015 (zip before side seams).
"""

from collections.abc import Iterator
from itertools import combinations

from seqplan.base.ids import EntryId, PieceId, RuleSlug
from seqplan.base.strength import Strength
from seqplan.graph.reason import Reason
from seqplan.model.entry import Verb, ZipMethod
from seqplan.model.operation import Action, Operation
from seqplan.recipes.construction import Construction
from seqplan.recipes.shape import Shape
from seqplan.rules.rule import Rule, arc, either, names
from seqplan.surface.closing import WaysRound
from seqplan.surface.glued import Glue
from seqplan.words.say import say


def _derive(c: Construction) -> Iterator[Reason]:
    for op in c.acting(Action.STITCH_ON, Action.SET_ZIP, Action.SET_ON):
        last = c.of_entry[op.entry][-1]
        for piece in sorted(_carriers(c, op)):
            lined = _lined_by(c, piece)
            for seam in lined:
                yield arc(RULE, last, c.main(seam))
            for seams in _closing(c, piece):
                if set(seams) & set(lined):
                    continue
                if len(seams) == 1:
                    yield arc(RULE, last, c.main(seams[0]), key="because-before-it-is-a-tube")
                    continue
                key = "because-pocket-while-flat-either"
                because = say(key, pocket=op.entry, seams=names(seams))
                bundles = [[(last, c.main(seam))] for seam in seams]
                yield either(RULE, bundles, asker=last, because=because)


def _carriers(c: Construction, op: Operation) -> frozenset[PieceId]:
    """The pieces that have to lie flat: what something is sewn onto, or a slit is cut into."""
    entry = c.entry(op)
    is_fly = op.action is Action.SET_ZIP and entry.method is ZipMethod.FLY
    if is_fly or entry.verb in _PLACKETS:
        return frozenset(ref.piece for ref in entry.run)
    if op.action is Action.STITCH_ON and entry.notion is None:
        return frozenset(place.piece for place in entry.places)
    return frozenset()


def _lined_by(c: Construction, piece: PieceId) -> list[EntryId]:
    """The seams that lay a piece of the same shape under this one."""
    found = []
    for shape in c.joins:
        if any(_is_lining(c, piece, glue) for glue in shape.glues):
            found.append(shape.entry.id)
    return found


def _is_lining(c: Construction, piece: PieceId, glue: Glue) -> bool:
    """Whether a seam joins a piece to one that has its shape and lies under it."""
    ids = {glue.first.piece, glue.second.piece}
    return piece in ids and any(c.garment.piece[id_].like == piece for id_ in ids)


def _closing(c: Construction, piece: PieceId) -> Iterator[tuple[EntryId, ...]]:
    """Find the seams that close a piece to a tube: as long as one of them is open, it lies flat.

    Of a seam at the piece only what it sews there counts. One that closes a tube by itself does so
    together with seams elsewhere, as the side seams do with a centre back seam.
    """
    sewn = [shape for shape in c.joins if shape.entry.verb is Verb.SEW]
    at_piece = {shape.entry.id: _at(shape, piece) for shape in sewn}
    ours = {id_: shape for id_, shape in at_piece.items() if shape.glues or shape.riders}
    others = [shape for shape in sewn if shape.entry.id not in ours]
    ways = WaysRound(c.body(others))
    seams = {id_: c.body([shape]).glues for id_, shape in ours.items()}
    alone = [id_ for id_, glues in seams.items() if ways.added_by(glues) > 0]
    if len(alone) == 1:
        seam = seams[alone[0]]
        closes_by_itself = WaysRound(c.body(())).added_by(seam) > 0
        helping = [] if closes_by_itself else others
        elsewhere = (o.entry.id for o in helping if _lies_flat(c, seam, others, o))
        yield (*alone, *sorted(elsewhere))
    elif alone:
        # With its shoulders sewn a body lies flat round its neck, with its sides sewn it does not;
        # which of the two is which, edges do not tell.
        yield tuple(sorted(alone))
    for one, other in combinations(sorted(ours.keys() - set(alone)), 2):
        if ways.added_by((*seams[one], *seams[other])) > 0:
            yield one, other


def _lies_flat(c: Construction, seam: tuple[Glue, ...], others: list[Shape], open_: Shape) -> bool:
    """Whether a seam closes no tube as long as another one is open."""
    sewn = WaysRound(c.body(shape for shape in others if shape is not open_))
    return sewn.added_by(seam) == 0


def _at(shape: Shape, piece: PieceId) -> Shape:
    """A seam as far as it touches a piece."""

    def touching(glues: tuple[Glue, ...]) -> tuple[Glue, ...]:
        return tuple(g for g in glues if piece in {g.first.piece, g.second.piece})

    return shape._replace(glues=touching(shape.glues), riders=touching(shape.riders))


_PLACKETS = frozenset({Verb.TOWER_PLACKET, Verb.CONTINUOUS_PLACKET})


RULE = Rule(
    RuleSlug("pocket-while-flat"), Strength.SHOULD, _derive, __doc__ or "", numbers=(18, 19, 20, 58)
)
