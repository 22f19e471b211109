"""The unit: the part in hand while an operation is done.

It is fixed beforehand and not by the order: an operation's own pieces, and all that must have been
joined to them by then. An entry may name its own unit.
"""

from collections.abc import Iterable, Mapping

from seqplan.base.ids import OpId, PieceId
from seqplan.graph.precedence import Precedence
from seqplan.graph.reason import Arc, Reason
from seqplan.model.operation import Operation
from seqplan.recipes.construction import Construction

Unit = frozenset[PieceId]


def find_units(c: Construction, reasons: Iterable[Reason]) -> Mapping[OpId, Unit]:
    """Find the unit of every operation.

    Parameters
    ----------
    c
        The garment.
    reasons
        The reasons that bind; only plain arcs count, since either-ors fix nothing beforehand.
    """
    precedence = Precedence.of(c.ids, _plain_arcs(reasons))
    joins = [c.main(shape.entry.id) for shape in c.joins]
    units: dict[OpId, Unit] = {}
    for op in c.operations:
        named = c.entry(op).unit
        before = precedence.ancestors(op.id)
        earlier = [join for join in joins if join.id in before]
        units[op.id] = frozenset(named) if named else _joined_to(op, earlier)
    return units


def _plain_arcs(reasons: Iterable[Reason]) -> list[Arc]:
    return [r.alternatives[0][0] for r in reasons if r.alternatives == ((r.alternatives[0][0],),)]


def _joined_to(op: Operation, joins: list[Operation]) -> Unit:
    """All pieces that hang together with an operation's own once these joins are sewn."""
    unit = op.pieces
    waiting = list(joins)
    while True:
        touching = [join for join in waiting if join.pieces & unit]
        if not touching:
            return unit
        waiting = [join for join in waiting if not join.pieces & unit]
        unit = unit.union(*(join.pieces for join in touching))
