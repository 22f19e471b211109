"""What a piece bears besides its edges: darts, pleats, spots, and slits, which add edges."""

from collections.abc import Iterable

from seqplan.base.measure import Length
from seqplan.load import fields
from seqplan.load.keys import Section, keys_of
from seqplan.load.names import check_name, clean
from seqplan.load.nodes import MappingNode, Node, Pair, Scalar
from seqplan.load.sink import Sink, found_instead, quoted
from seqplan.model.piece import Cut, Edge, Fullness, Hand, Slit, Spot

FOLD = "fold"
_BAR = "|"
_HANDS = {hand.value: hand for hand in Hand}


def fold_named(edges: tuple[Edge, ...], node: Node, sink: Sink) -> tuple[Edge, ...]:
    """The edges of a strip, the one called ``fold`` marked as never raw."""
    if not any(edge.name == FOLD for edge in edges):
        sink.error("strip-without-fold", node)
    return tuple(edge._replace(is_folded=edge.name == FOLD) for edge in edges)


def read_fullness(node: Node | None, sink: Sink) -> tuple[Fullness, ...]:
    """Read ``darts:`` and ``pleats:``: edges, each alone or with how many there are."""
    return tuple(item for item, _ in fields.listed(node, lambda n: _fullness(n, sink), sink))


def _fullness(node: Node, sink: Sink) -> Fullness | None:
    if isinstance(node, Scalar):
        name = fields.name(node, sink)
        return Fullness(name) if name else None
    table = fields.mapping(node, sink, words="expected-fullness")
    if table is None:
        return None
    keys = keys_of(Section.FULLNESS)
    found = fields.read_fields(table, keys, sink)
    fields.check_required(found, keys, table, sink)
    name = fields.name(found.get("on"), sink)
    number = fields.number(found.get("number"), sink, keys["number"].bounds)
    return Fullness(name, number or 1) if name else None


def read_spots(node: Node | None, sink: Sink) -> tuple[Spot, ...]:
    """Read ``spots:``, each a name, with a side where it is on one side only."""
    found: dict[Spot, None] = {}
    for spot, _ in fields.listed(node, lambda item: _spot(item, sink), sink):
        found.setdefault(spot)
    return tuple(found)


def _spot(node: Node, sink: Sink) -> Spot | None:
    written = fields.text(node, sink)
    if written is None:
        return None
    name, at, side = (clean(part) for part in written.partition("@"))
    if not check_name(name, node, sink):
        return None
    if at and side not in _HANDS:
        sink.error("unknown-side", node, found=quoted(f"@{side}"))
        return None
    return Spot(name, _HANDS[side] if at else None)


def read_slits(node: Node | None, units: str, sink: Sink) -> tuple[tuple[Slit, Node], ...]:
    """Read ``slits:``, each with the two edges between which it begins."""
    if node is None:
        return ()
    table = fields.mapping(node, sink, words="expected-slits")
    pairs = table.pairs if table is not None else ()
    found = [(_slit(pair, units, sink), pair.value) for pair in pairs]
    return tuple((slit, at) for slit, at in found if slit is not None)


def _slit(pair: Pair, units: str, sink: Sink) -> Slit | None:
    table: MappingNode | None = fields.mapping(pair.value, sink, words="expected-slits")
    if table is None or not check_name(pair.key, pair, sink):
        return None
    keys = keys_of(Section.SLIT)
    found = fields.read_fields(table, keys, sink)
    fields.check_required(found, keys, pair, sink)
    length: Length | None = fields.length(found.get("length"), sink, units)
    written = fields.text(found.get("at"), sink)
    if written is None:
        return None
    names = [clean(part) for part in written.split(_BAR)]
    if len(names) != 2 or not all(names):
        sink.error("unreadable-slit", found["at"], found=found_instead(found["at"]))
        return None
    return Slit(clean(pair.key), names[0], names[1], length)


def with_slits(
    edges: tuple[Edge, ...], cut: Cut, slits: Iterable[tuple[Slit, Node]], sink: Sink
) -> tuple[Edge, ...]:
    """Add the two edges of each slit; one, where it lies on the fold of a piece."""
    for slit, at in slits:
        if any(edge.name == slit.name for edge in edges):
            sink.error("slit-like-edge", at, name=quoted(slit.name))
            continue
        added = _with_slit(edges, cut, slit)
        if added is None:
            sink.error("slit-nowhere", at, before=quoted(slit.before), after=quoted(slit.after))
        else:
            edges = added
    return edges


def _with_slit(edges: tuple[Edge, ...], cut: Cut, slit: Slit) -> tuple[Edge, ...] | None:
    side = Edge(slit.name, is_slit=True)
    if cut is Cut.FOLD and slit.before == FOLD and edges and edges[0].name == slit.after:
        return (side, *edges)
    if cut is Cut.FOLD and slit.after == FOLD and edges and edges[-1].name == slit.before:
        return (*edges, side)
    for place in range(1, len(edges)):
        if (edges[place - 1].name, edges[place].name) == (slit.before, slit.after):
            after = edges[place]._replace(at_mark=False)
            return (*edges[:place], side, side, after, *edges[place + 1 :])
    return None
