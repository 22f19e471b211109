"""What each entry means on the cloth: which cut edges it acts on and which seams it sews."""

from collections.abc import Mapping
from typing import Final, NamedTuple

from seqplan.base.ids import PieceId
from seqplan.model.entry import Entry, Verb
from seqplan.model.piece import Segment
from seqplan.recipes.recipe import Reach
from seqplan.surface.glued import Glue

FOLDING: Final = frozenset({Verb.HEM, Verb.CASING})
"""Verbs that fold an edge over, all round where it is a ring."""

SETTING_ON: Final = frozenset({Verb.BAND, Verb.BIND, Verb.TOWER_PLACKET, Verb.CONTINUOUS_PLACKET})
"""Verbs that sew a strip to an edge and fold it over."""

COVERING: Final = FOLDING | {Verb.BAND, Verb.BIND}
"""Verbs that cover an edge all round, so that they ask for the whole ring."""

JOINS: Final = frozenset({Verb.SEW}) | SETTING_ON
"""Verbs whose seams hold for good, so that they glue the surface."""


class Shape(NamedTuple):
    """An entry on the cloth.

    Parameters
    ----------
    entry
        The entry, with what the cloth tells where the author left it open.
    run
        Its cut edges, all copies, in the order in which it names them; both sides of a join.
    to
        Those of them that the other side of a join is made of; none where the entry names no
        other side.
    glues
        The seams it sews.
    riders
        What it catches or holds: glues from riders to the edges that carry them.
    along
        Cut edges that lie in it besides the run: what it catches, holds, or what is held to its
        edges by an earlier entry.
    reaches
        Further cut edges that single operations of its recipe act on.
    """

    entry: Entry
    run: tuple[Segment, ...] = ()
    to: frozenset[Segment] = frozenset()
    glues: tuple[Glue, ...] = ()
    riders: tuple[Glue, ...] = ()
    along: tuple[Segment, ...] = ()
    reaches: Mapping[Reach, tuple[Segment, ...]] = {}

    @property
    def skins(self) -> frozenset[PieceId]:
        """The pieces that it joins, without what it catches between them."""
        return frozenset(s.piece for glue in self.glues for s in (glue.first, glue.second))

    def reached(self, reach: Reach) -> tuple[Segment, ...]:
        """The cut edges that an operation with this reach acts on."""
        if reach is Reach.RUN:
            return (*self.run, *self.along)
        return self.reaches.get(reach, ())
