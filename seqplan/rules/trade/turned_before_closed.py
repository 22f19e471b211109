"""What is turned through is turned before a seam closes its way out.

Why
---
Two layers that are joined along one edge can be turned as long as they hang together like a bag
with an opening. A further seam that joins them along a second edge, or closes the last opening,
traps the work: it can no longer be brought right side out.

Fires
-----
`{turn: all}` before the side seams of a waistcoat whose front edges and armholes are joined to the
lining; before `shoulders` or before `sides`, where one of the two has to stay open.

Stays quiet
-----------
The seam leaves a way out: a gap, or edges that are still free. A seam that is sewn round the
rolled-up body has its own way out, which the rehearsal looks for.

Sources
-------
Lined vest after M. R. Shields, Industry Clothing Construction Methods, 2010; I sewed
myself into a corner, 2008, and Good thing I don't design bridges, 2009 (two failures).
"""

from collections.abc import Iterable, Iterator
from itertools import combinations

from seqplan.base.ids import EntryId, RuleSlug
from seqplan.base.strength import Strength
from seqplan.graph.reason import Reason
from seqplan.model.entry import SeamKind, SeamMethod, Verb
from seqplan.model.operation import Action, Operation
from seqplan.recipes.construction import Construction
from seqplan.rules.parts import pieces_of, rings_of
from seqplan.rules.rule import Rule, arc, either
from seqplan.surface.glued import Surface
from seqplan.words.say import say

_ROLLED = frozenset({SeamMethod.ROLL, SeamMethod.WRAP})


def _derive(c: Construction) -> Iterator[Reason]:
    for turn in c.acting(Action.TURN):
        base = _joined_before(c, turn) if c.entry(turn).verb is Verb.TURN else set()
        way = _WayOut(c, turn, base)
        if not base or not way.is_left(base):
            continue
        others = [
            shape.entry.id
            for shape in c.joins
            if shape.entry.id not in base
            and shape.skins <= turn.pieces
            and shape.entry.how not in _ROLLED
        ]
        trapping = [id_ for id_ in others if not way.is_left(base | {id_})]
        for seam in trapping:
            yield arc(RULE, turn, c.main(seam))
            for close in c.on_pieces(turn.pieces, Action.CLOSE_GAP):
                if c.entry(close).closes != seam:
                    yield arc(RULE, c.main(seam), close, key="because-reached-through-gap")
        for one, other in combinations(sorted(set(others) - set(trapping)), 2):
            if not way.is_left(base | {one, other}):
                because = say("because-turned-before-closed-either", one=one, other=other)
                bundles = ([(turn, c.main(one))], [(turn, c.main(other))])
                yield either(RULE, bundles, asker=turn, because=because)


def _joined_before(c: Construction, turn: Operation) -> set[EntryId]:
    """The seams that are turned, and the seams that these run across."""
    turned = {
        shape.entry.id
        for shape in c.joins
        if shape.entry.seam in {SeamKind.ENCLOSED, SeamKind.FACED} and shape.skins <= turn.pieces
    }
    needed = set(turned)
    waiting = list(turned)
    while waiting:
        more = c.meetings.demands[waiting.pop()].always - needed
        needed |= more
        waiting += [id_ for id_ in more if id_ in c.meetings.demands]
    return needed


class _WayOut:
    """Tells whether what is sewn by then hangs together like a bag with a way out."""

    def __init__(self, c: Construction, turn: Operation, base: Iterable[EntryId]) -> None:
        self._c = c
        self._turned = turn.pieces
        joined = (pieces_of(c.shapes[id_].glues) for id_ in base)
        self._rings = rings_of(c, turn.pieces.union(*joined))

    def is_left(self, seams: Iterable[EntryId]) -> bool:
        shapes = [self._c.shapes[id_] for id_ in seams]
        has_gap = any(shape.entry.gap is not None for shape in shapes)
        glues = (glue for shape in shapes for glue in shape.glues)
        parts = Surface(self._rings, glues).parts
        ours = [part for part in parts if any(piece in self._turned for piece, _ in part.discs)]
        return all(part.genus == 0 and (part.loops or has_gap) for part in ours)


RULE = Rule(RuleSlug("turned-before-closed"), Strength.MUST, _derive, __doc__ or "", numbers=(35,))
