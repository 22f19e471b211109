"""A pocket, a welt or a fly is sewn while the piece lies flat, in one layer.

Why
---
In a tube the other side is caught by mistake, and through a facing or lining the stitches show.

Fires
-----
`pocket` before one of `shoulders` and `sides`, whichever closes the tube; before a seam that lays
a lining of the same shape under the piece; a fly zip before one of the seams that close the leg.

Stays quiet
-----------
The seam joins the piece to its neighbour and leaves it flat.

Sources
-------
D. P. Coffin, book on shirtmaking, chapter 6 (pockets and bands first); Notes on sewing on the
flat, J. Pray, 2022; Trousers in factory style, 2015 (zip before side seams).
"""

from collections.abc import Iterable, Iterator
from itertools import combinations
from typing import NamedTuple

from seqplan.base.ids import EntryId, PieceId, RuleSlug
from seqplan.base.strength import Strength
from seqplan.graph.reason import Reason
from seqplan.model.entry import Verb, ZipMethod
from seqplan.model.operation import Action, Operation
from seqplan.recipes.construction import Construction
from seqplan.rules.rule import Rule, arc, either
from seqplan.words.say import say


def _derive(c: Construction) -> Iterator[Reason]:
    for op in c.acting(Action.STITCH_ON, Action.SET_ZIP, Action.SET_ON):
        for piece in sorted(_carriers(c, op)):
            closing = _closing(c, piece)
            for seam in _lined_by(c, piece):
                yield arc(RULE, op, c.main(seam))
            for seam in closing.alone:
                yield arc(RULE, op, c.main(seam), key="because-before-it-is-a-tube")
            for one, other in closing.together:
                key = "because-pocket-while-flat-either"
                because = say(key, pocket=op.id, one=one, other=other)
                bundles = ([(op, c.main(one))], [(op, c.main(other))])
                yield either(RULE, bundles, asker=op, because=because)


class _Closing(NamedTuple):
    """The seams at a piece that close it to a tube, each alone or two of them together."""

    alone: tuple[EntryId, ...]
    together: tuple[tuple[EntryId, EntryId], ...]


def _carriers(c: Construction, op: Operation) -> frozenset[PieceId]:
    """The pieces that have to lie flat: what something is sewn onto, or a slit is cut into."""
    entry = c.entry(op)
    is_fly = op.action is Action.SET_ZIP and entry.method is ZipMethod.FLY
    if is_fly or entry.verb in _PLACKETS:
        return frozenset(ref.piece for ref in entry.run)
    if op.action is Action.STITCH_ON:
        return frozenset(place.piece for place in entry.places)
    return frozenset()


def _lined_by(c: Construction, piece: PieceId) -> list[EntryId]:
    """The seams that lay a piece of the same shape under this one."""
    found = []
    for shape in c.joins:
        others = c.main(shape.entry.id).pieces
        if piece in others and any(c.garment.piece[id_].like == piece for id_ in others):
            found.append(shape.entry.id)
    return found


def _closing(c: Construction, piece: PieceId) -> _Closing:
    sewn = [shape for shape in c.joins if shape.entry.verb is Verb.SEW]
    at_piece = [
        shape.entry.id
        for shape in sewn
        if any(piece in {g.first.piece, g.second.piece} for g in (*shape.glues, *shape.riders))
    ]
    others = [shape.entry.id for shape in sewn if shape.entry.id not in at_piece]
    tubes = {id_: _tubes(c, [*others, id_]) for id_ in at_piece}
    flat = _tubes(c, others)
    alone = tuple(id_ for id_ in at_piece if tubes[id_] > flat)
    pairs = combinations([id_ for id_ in at_piece if id_ not in alone], 2)
    together = ((one, other) for one, other in pairs if _tubes(c, [*others, one, other]) > flat)
    return _Closing(alone, tuple(together))


def _tubes(c: Construction, entries: Iterable[EntryId]) -> int:
    """How many ways round there are in all that these seams join: none as long as it is flat.

    This is the first Betti number: what a cut from edge to edge can lower before parts fall apart.
    """
    return sum(
        len(part.loops) - 1 + part.genus * (2 if part.is_two_sided else 1)
        for part in c.body(entries).parts
    )


_PLACKETS = frozenset({Verb.TOWER_PLACKET, Verb.CONTINUOUS_PLACKET})


RULE = Rule(
    RuleSlug("pocket-while-flat"), Strength.SHOULD, _derive, __doc__ or "", numbers=(19, 20, 22, 58)
)
