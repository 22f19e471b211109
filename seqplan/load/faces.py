"""What a piece bears besides its edges: darts, pleats, spots, and slits, which add edges."""

import re
from collections.abc import Collection, Iterable
from typing import NamedTuple

from seqplan.base.measure import parse_length
from seqplan.load import fields
from seqplan.load.keys import Section, keys_of
from seqplan.load.names import check_name, clean, report_twice
from seqplan.load.nodes import Node, Pair, Placed, Scalar
from seqplan.load.sink import Sink, found_instead, quoted
from seqplan.model.piece import Beginning, Cut, Edge, Fullness, Hand, Piece, Slit, Spot
from seqplan.words.say import say

FOLD = "fold"
_BAR = "|"
_BEGINNING = re.compile(r"^(?P<length>.+?)\s+from\s+(?P<edge>\S+)$")
_HANDS = {hand.value: hand for hand in Hand}

Named = tuple[tuple[str, Node], ...]


class CutSlit(NamedTuple):
    """A slit with the places of its name and of where it begins."""

    slit: Slit
    name_at: Pair
    at: Node


def fold_named(edges: tuple[Edge, ...], node: Node, sink: Sink) -> tuple[Edge, ...]:
    """The edges of a strip, the one called ``fold`` marked as never raw."""
    if sum(edge.name == FOLD for edge in edges) != 1:
        sink.error("strip-without-fold", node)
    return tuple(edge._replace(is_folded=edge.name == FOLD) for edge in edges)


def read_fullness(node: Node | None, units: str, sink: Sink) -> tuple[tuple[Fullness, Node], ...]:
    """Read ``darts:`` and ``pleats:``: edges, each alone or with how many there are."""
    found: dict[str, tuple[Fullness, Node]] = {}
    for (fullness, at), _ in fields.listed(node, lambda item: _fullness(item, units, sink), sink):
        if fullness.on in found:
            fix = say("fix-fullness-twice", name=fullness.on)
            sink.warning("listed-twice", at, name=quoted(fullness.on), fix=fix)
        found.setdefault(fullness.on, (fullness, at))
    return tuple(found.values())


def _fullness(node: Node, units: str, sink: Sink) -> tuple[Fullness, Node] | None:
    """Darts or pleats, and the place where their edge is named."""
    if isinstance(node, Scalar):
        name = fields.edge_name(node, sink)
        return (Fullness(name), node) if name else None
    keys = keys_of(Section.FULLNESS)
    table = fields.mapping_of(node, keys, sink, words="expected-fullness")
    if table is None:
        return None
    found = fields.read_fields(table, keys, sink)
    fields.check_required(found, keys, table, sink)
    name = fields.edge_name(found.get("on"), sink)
    number = fields.number(found.get("number"), sink, keys["number"].bounds)
    intake = fields.length(found.get("intake"), sink, units)
    return (Fullness(name, number or 1, intake), found["on"]) if name else None


def read_spots(node: Node | None, sink: Sink) -> tuple[tuple[Spot, Node], ...]:
    """Read ``spots:``, each a name, with a side where it is on one side only."""
    found: dict[Spot, Node] = {}
    for spot, item in fields.listed(node, lambda item: _spot(item, sink), sink):
        if spot in found:
            report_twice(spot.name, item, sink)
        found.setdefault(spot, item)
    return tuple(found.items())


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


def read_begins(
    node: Node | None, marks: Collection[str], units: str, sink: Sink
) -> tuple[tuple[Beginning, Pair], ...]:
    """Read ``begins:``: spots and lines, each with its distance from an edge."""
    table = fields.mapping(node, sink, words="expected-begins") if node is not None else None
    if table is not None and not table.pairs:
        sink.error("wrong-type", table, words="expected-begins", found="`{}`")
    found: dict[str, tuple[Beginning, Pair]] = {}
    for pair in table.pairs if table is not None else ():
        name, written = clean(pair.key), fields.text(pair.value, sink)
        match = _BEGINNING.match(written or "")
        length = parse_length(match["length"], default_unit=units) if match else None
        if name not in marks:
            fix = sink.suggest(name, marks, "fix-no-marks")
            sink.error("unknown-mark", pair, name=quoted(name), fix=fix)
        elif match is None or length is None or length.mm > fields.LONGEST_MM:
            if written is not None:
                names = {"words": "expected-part", "found": quoted(written)}
                sink.error("unreadable-part", pair.value, **names)
        else:
            found.setdefault(name, (Beginning(name, length, clean(match["edge"])), pair))
    return tuple(found.values())


def check_face(
    piece: Piece, spots: Iterable[tuple[Spot, Node]], lines: Iterable[tuple[str, Node]], sink: Sink
) -> None:
    """Report spots and lines that are called like an edge, and sides that a piece has not."""
    for spot, at in spots:
        _check_name(spot.name, piece.edge_names, at, sink)
        if spot.hand is not None:
            has_sides(piece, at, sink)
    for line, at in lines:
        _check_name(line, piece.edge_names, at, sink)


def has_sides(piece: Piece, at: Placed, sink: Sink) -> bool:
    """Whether left and right can be told apart on a piece; where not, it is reported."""
    if piece.cut is Cut.ALIKE:
        sink.error("no-sides", at, piece=quoted(piece.id))
    elif piece.worn is None:
        sink.error("sides-unknown", at, piece=quoted(piece.id))
    else:
        return True
    return False


def _check_name(name: str, edges: Collection[str], at: Placed, sink: Sink) -> bool:
    if name not in edges:
        return True
    sink.error("name-of-edge", at, name=quoted(name))
    return False


def read_slits(node: Node | None, units: str, sink: Sink) -> tuple[CutSlit, ...]:
    """Read ``slits:``, each with the two edges between which it begins."""
    if node is None:
        return ()
    table = fields.mapping(node, sink, words="expected-slits")
    if table is not None and not table.pairs:
        sink.error("wrong-type", node, words="expected-slits", found="`{}`")
    pairs = table.pairs if table is not None else ()
    found = {pair.key: _slit(pair, units, sink) for pair in reversed(pairs)}
    return tuple(slit for slit in reversed(found.values()) if slit is not None)


def _slit(pair: Pair, units: str, sink: Sink) -> CutSlit | None:
    keys = keys_of(Section.SLIT)
    table = fields.mapping_of(pair.value, keys, sink, words="expected-slit")
    if table is None or not check_name(pair.key, pair, sink):
        return None
    found = fields.read_fields(table, keys, sink)
    fields.check_required(found, keys, pair, sink)
    length = fields.length(found.get("length"), sink, units)
    at = found.get("at")
    if at is None or fields.is_empty(at, sink):
        return None
    names = [clean(part) for part in at.text.split(_BAR)] if isinstance(at, Scalar) else []
    if len(names) != 2 or not all(names):
        sink.error("unreadable-slit", at, found=found_instead(at))
        return None
    return CutSlit(Slit(pair.key, names[0], names[1], length), pair, at)


def with_slits(
    edges: tuple[Edge, ...], piece: Piece, slits: Iterable[CutSlit], sink: Sink
) -> tuple[Edge, ...]:
    """Add the two edges of each slit; one, where it lies on the fold of a piece."""
    for slit, name_at, at in slits:
        names = [edge.name for edge in edges]
        if not _check_name(slit.name, names, name_at, sink):
            continue
        added = _with_slit(edges, piece.cut, slit)
        if added is None:
            _report_slit(slit, piece, names, at, sink)
        else:
            edges = added
    return edges


def _report_slit(slit: Slit, piece: Piece, names: list[str], at: Node, sink: Sink) -> None:
    """Say which edge is unknown, or that the two are no neighbours."""
    known = [*names, FOLD] if piece.cut is Cut.FOLD else names
    unknown = dict.fromkeys(name for name in (slit.before, slit.after) if name not in known)
    for name in unknown:
        fix = sink.suggest(name, dict.fromkeys(known), "fix-no-edges")
        sink.error("unknown-edge", at, piece=quoted(piece.id), edge=quoted(name), fix=fix)
    if not unknown:
        sink.error("slit-nowhere", at, before=quoted(slit.before), after=quoted(slit.after))


def _with_slit(edges: tuple[Edge, ...], cut: Cut, slit: Slit) -> tuple[Edge, ...] | None:
    side = Edge(slit.name, is_slit=True)
    names = [edge.name for edge in edges]
    ends = (names[-1:], names[:1])
    if cut is Cut.FOLD and (slit.before, [slit.after]) == (FOLD, ends[1]):
        return (side, *edges)
    if cut is Cut.FOLD and ([slit.before], slit.after) == (ends[0], FOLD):
        return (*edges, side)
    for place in range(1, len(edges)):
        if (names[place - 1], names[place]) == (slit.before, slit.after):
            after = edges[place]._replace(at_mark=False)
            return (*edges[:place], side, side, after, *edges[place + 1 :])
    if cut is not Cut.FOLD and ([slit.before], [slit.after]) == ends:
        return (*edges, side, side)
    return None
