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
from itertools import chain

from seqplan.base.ids import EntryId, PieceId, RuleSlug
from seqplan.base.strength import Strength
from seqplan.graph.reason import Reason
from seqplan.model.entry import Verb, ZipMethod
from seqplan.model.operation import Action, Operation
from seqplan.model.piece import Segment
from seqplan.recipes.construction import Construction
from seqplan.rules.rule import Rule, arc, either, names
from seqplan.rules.tubes import Tubes
from seqplan.surface.glued import Glue, Surface
from seqplan.words.say import say


def _derive(c: Construction) -> Iterator[Reason]:
    tubes = Tubes(c)
    wide = _at_wide_openings(c)
    for op in c.acting(Action.STITCH_ON, Action.SET_ZIP, Action.SET_ON):
        last = c.of_entry[op.entry][-1]
        for piece in sorted(_carriers(c, op)):
            lined = _lined_by(c, piece)
            for seam in lined:
                yield arc(RULE, last, c.main(seam))
            for seams in tubes.closing(piece):
                if set(seams) & set(lined) or wide & set(op.segments):
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


def _at_wide_openings(c: Construction) -> set[Segment]:
    """The slits for plackets that begin at an opening round several cut pieces, as a waist is."""
    slits = {
        s for op in c.acting(Action.SET_ON) if c.entry(op).verb in _PLACKETS for s in op.segments
    }
    if not slits:
        return slits
    sewn = Surface(c.rings, (g for s in c.joins if s.entry.verb is Verb.SEW for g in s.glues))
    loops = [loop for part in sewn.parts for loop in part.loops if slits & set(loop)]
    wide = [loop for loop in loops if len(set(map(c.rings.disc, loop))) > 1]
    return slits & set(chain.from_iterable(wide))


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


_PLACKETS = frozenset({Verb.TOWER_PLACKET, Verb.CONTINUOUS_PLACKET})


RULE = Rule(
    RuleSlug("pocket-while-flat"), Strength.SHOULD, _derive, __doc__ or "", numbers=(18, 19, 20, 58)
)
