"""References: ``front.side``, ``back.centre@left``, runs of them, pieces, parts of an edge."""

import re

from seqplan.base.ids import PieceId
from seqplan.base.measure import parse_length
from seqplan.load import fields
from seqplan.load.names import ALL, clean, report_unknown
from seqplan.load.nodes import ListNode, Node, Scalar
from seqplan.load.scope import Scope
from seqplan.load.sink import found_instead, listing, quoted
from seqplan.model.entry import Portion
from seqplan.model.piece import Cut, EdgeRef, Hand, Piece, Place
from seqplan.words.say import say

Run = tuple[EdgeRef, ...]

_PORTION = {
    True: re.compile(r"^(?P<length>.+?)\s+from\s+(?P<edge>\S+)$"),
    False: re.compile(r"^(?P<length>.+?)\s+before\s+(?P<edge>\S+)$"),
}
_HALF = re.compile(r"^(?P<piece>\S+)\s+half$")
_HANDS = tuple(hand.value for hand in Hand)


def run(node: Node | None, scope: Scope) -> Run:
    """Read one edge or a list of edges as one run; no edge may stand in it twice."""
    edges: list[EdgeRef] = []
    seen: dict[tuple[str, str], list[Hand | None]] = {}
    for ref, item in fields.listed(node, lambda item: edge_ref(item, scope), scope.sink):
        hands = seen.setdefault((ref.piece, ref.edge), [])
        if hands and (ref.hand is None or None in hands or ref.hand in hands):
            scope.sink.error("same-edge-twice", item, edge=quoted(str(ref)))
        hands.append(ref.hand)
        edges.append(ref)
    return tuple(edges)


def edge_ref(node: Node, scope: Scope) -> EdgeRef | None:
    """Read ``piece.edge`` or ``piece.edge@left``."""
    if not isinstance(node, Scalar):
        scope.sink.error("wrong-type", node, words="expected-edge", found=found_instead(node))
        return None
    written = fields.text(node, scope.sink)
    if written is None:
        return None
    place, at, side = written.partition("@")
    piece_name, dot, edge_name = (clean(part) for part in place.partition("."))
    if not dot:
        _report_piece_alone(piece_name, node, scope)
        return None
    if not piece_name or not edge_name or "." in edge_name:
        scope.sink.error("unreadable-edge", node, found=found_instead(node))
        return None
    if piece_name not in scope.pieces:
        report_unknown("unknown-piece", piece_name, node, scope.pieces, scope.sink)
        return None
    hand = _hand(side.strip(), node, scope) if at else None
    ref = EdgeRef(PieceId(piece_name), edge_name, hand)
    return ref if _is_sound(ref, node, scope) else None


def edges_like(piece_name: str, others: Run, node: Node, scope: Scope) -> Run:
    """The edges of a piece that have the names of ``others``: the meaning of ``to: piece``."""
    refs = [EdgeRef(PieceId(piece_name), ref.edge, ref.hand) for ref in others]
    return tuple(ref for ref in refs if _is_sound(ref, node, scope))


def pieces(node: Node | None, scope: Scope) -> tuple[PieceId, ...]:
    """Read a piece, a list of pieces (``a + b`` is one too), or ``all``."""
    if isinstance(node, Scalar) and node.text.strip().casefold() == ALL:
        return scope.all_pieces
    found = fields.names_of(_plus_as_list(node), lambda n: _piece_name(n, scope), scope.sink)
    return tuple(PieceId(name) for name, _ in found)


def halved(node: Node | None, scope: Scope) -> tuple[tuple[PieceId, ...], tuple[PieceId, ...]]:
    """Read pieces, some of them with ``half`` after the name: all, and those."""
    node = _plus_as_list(node)
    items = node.items if isinstance(node, ListNode) else (node,) if node is not None else ()
    bare: list[Node] = []
    half: list[PieceId] = []
    for item in items:
        match = _HALF.match(item.text.strip()) if isinstance(item, Scalar) else None
        if match is not None and isinstance(item, Scalar):
            item = item._replace(text=match["piece"])
            half.append(PieceId(clean(match["piece"])))
        bare.append(item)
    whole = ListNode(tuple(bare), node.span, node.path) if isinstance(node, ListNode) else None
    found = pieces(whole or (bare[0] if bare else node), scope)
    return found, tuple(piece for piece in half if piece in found)


def places(node: Node | None, scope: Scope) -> tuple[Place, ...]:
    """Read pieces, sides of pieces, or places on them: ``band@left``, ``front.pocket``."""
    found: dict[Place, None] = {}
    for place, _ in fields.listed(node, lambda item: _place(item, scope), scope.sink):
        found.setdefault(place)
    return tuple(found)


def edges_or_places(node: Node | None, scope: Scope) -> tuple[Run, tuple[Place, ...]]:
    """Read a list in which edges, pieces and places on pieces may stand side by side."""
    edges: dict[EdgeRef, None] = {}
    spots: dict[Place, None] = {}
    for place, item in fields.listed(node, lambda item: _place(item, scope), scope.sink):
        piece = scope.piece.get(place.piece)
        if place.name and piece is not None and place.name in piece.edge_names:
            ref = edge_ref(item, scope)
            if ref is not None:
                edges.setdefault(ref)
        else:
            spots.setdefault(place)
    return tuple(edges), tuple(spots)


def _place(node: Node, scope: Scope) -> Place | None:
    """A piece, or a spot, line or edge of it, with the wearer's side if one is named."""
    written = fields.text(node, scope.sink)
    if written is None or not isinstance(node, Scalar):
        return None
    where, at, side = written.partition("@")
    piece_name, dot, name = (clean(part) for part in where.partition("."))
    if piece_name not in scope.pieces:
        report_unknown("unknown-piece", piece_name, node, scope.pieces, scope.sink)
        return None
    piece = scope.piece.get(piece_name)
    hand = _hand(side.strip(), node, scope) if at else None
    if piece is None:
        return Place(PieceId(piece_name), name or None, hand)
    spots = [*(spot.name for spot in piece.spots), *piece.lines, *piece.edge_names]
    if dot and name not in spots:
        fix = scope.sink.suggest(name, spots, "fix-no-spots")
        words = {"piece": quoted(piece.id), "spot": quoted(name)}
        scope.sink.error("unknown-spot", node, fix=fix, **words)
        return None
    if hand is not None and not _has_sides(piece, node, scope):
        return None
    return Place(PieceId(piece_name), name or None, hand)


def _plus_as_list(node: Node | None) -> Node | None:
    """``stand + stand-inner`` as a list of two."""
    if not isinstance(node, Scalar) or "+" not in node.text:
        return node
    parts = [part.strip() for part in node.text.split("+")]
    return ListNode(tuple(node._replace(text=part) for part in parts), node.span, node.path)


def portion(node: Node | None, of: Run, scope: Scope, *, is_named_part: bool) -> Portion | None:
    """Read ``10 from waist``, or ``10 before waist`` where the named part is left out."""
    written = fields.text(node, scope.sink)
    if node is None or written is None:
        return None
    match = _PORTION[is_named_part].match(written)
    measure = parse_length(match["length"], default_unit=scope.units) if match else None
    if match is None or measure is None or measure.mm > fields.LONGEST_MM:
        words = "expected-part" if is_named_part else "expected-stop"
        scope.sink.error("unreadable-part", node, words=words, found=found_instead(node))
        return None
    neighbour = clean(match["edge"])
    _check_neighbour(neighbour, of, node, scope)
    return Portion(measure, neighbour, is_named_part)


def _piece_name(node: Node, scope: Scope) -> str | None:
    """A piece by its name; an edge of one is reported."""
    if isinstance(node, Scalar) and "." in node.text:
        scope.sink.error("piece-wanted", node, found=found_instead(node))
        return None
    return scope.known(node, scope.pieces, "unknown-piece")


def _report_piece_alone(name: str, node: Node, scope: Scope) -> None:
    piece = scope.piece.get(name)
    if piece is not None and piece.edges:
        offers = listing(f"{piece.id}.{edge}" for edge in piece.edge_names)
        fix = say("fix-name-an-edge", offers=offers)
        scope.sink.error("edge-wanted", node, found=quoted(name), fix=fix)
    else:
        scope.sink.error("edge-wanted", node, found=quoted(name))


def _hand(side: str, node: Scalar, scope: Scope) -> Hand | None:
    if side in _HANDS:
        return Hand(side)
    scope.sink.error("unknown-side", node, found=quoted(f"@{side}"))
    return None


def _is_sound(ref: EdgeRef, node: Node, scope: Scope) -> bool:
    """Whether the piece has the edge, and sides if one is named; where not, it is reported."""
    piece = scope.piece.get(ref.piece)
    if piece is None:
        return True
    if not any(edge.name == ref.edge for edge in piece.edges):
        fix = scope.sink.suggest(ref.edge, piece.edge_names, "fix-no-edges")
        names = {"piece": quoted(piece.id), "edge": quoted(ref.edge)}
        scope.sink.error("unknown-edge", node, fix=fix, **names)
        return False
    return ref.hand is None or _has_sides(piece, node, scope)


def _has_sides(piece: Piece, node: Node, scope: Scope) -> bool:
    """Whether left and right can be told apart on a piece; where not, it is reported."""
    if piece.cut is Cut.ALIKE:
        scope.sink.error("no-sides", node, piece=quoted(piece.id))
    elif piece.worn is None:
        scope.sink.error("sides-unknown", node, piece=quoted(piece.id))
    else:
        return True
    return False


def _check_neighbour(neighbour: str, of: Run, node: Node, scope: Scope) -> None:
    """Report a part that is measured from an edge which none of the run's edges meets."""
    meets: set[str] = set()
    for ref in of:
        piece = scope.piece.get(ref.piece)
        if piece is None:
            return
        meets |= neighbours(piece, ref.edge)
    if of and neighbour not in meets:
        fix = scope.sink.suggest(neighbour, sorted(meets), "")
        edge = quoted(str(of[0]))
        scope.sink.error("not-next-to", node, neighbour=quoted(neighbour), edge=edge, fix=fix)


def neighbours(piece: Piece, edge: str) -> set[str]:
    """The names of the edges that meet ``edge``; the two ends of half a ring meet the fold."""
    names = [item.name for item in piece.edges]
    count = len(names)
    found: set[str] = set()
    for place in (place for place, name in enumerate(names) if name == edge):
        for other in (place - 1, place + 1):
            if 0 <= other < count or piece.cut is not Cut.FOLD:
                found.add(names[other % count])
    return found
