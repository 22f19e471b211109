"""References: ``front.side``, ``back.centre@left``, runs of them, pieces, parts of an edge."""

import re

from seqplan.base.ids import NotionId, PieceId
from seqplan.base.measure import parse_length
from seqplan.load import fields
from seqplan.load.faces import has_sides
from seqplan.load.names import ALL, clean, report_twice, report_unknown
from seqplan.load.nodes import ListNode, MappingNode, Node, Scalar
from seqplan.load.scope import Scope
from seqplan.load.sink import found_instead, quoted
from seqplan.model.entry import Portion
from seqplan.model.piece import Cut, EdgeRef, Hand, Piece, Place
from seqplan.words.say import say

Run = tuple[EdgeRef, ...]

_PORTION = {
    True: re.compile(r"^(?P<length>.+?)\s+from\s+(?P<edge>\S+)$"),
    False: re.compile(r"^(?P<length>.+?)\s+before\s+(?P<edge>\S+)$"),
}
_TWO_WORDS = re.compile(r"^(?P<first>\S+)\s+(?P<second>\S.*)$")
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
        _report_no_edge(node, scope)
        return None
    written = fields.text(node, scope.sink)
    if written is None:
        return None
    place, at, side = written.partition("@")
    piece_name, dot, edge_name = (clean(part) for part in place.partition("."))
    if not dot or not piece_name or not edge_name or "." in edge_name:
        _report_shape(clean(written), node, scope)
        return None
    if piece_name not in scope.pieces:
        _report_piece(piece_name, edge_name, node, scope)
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
    parted = _plus_as_list(node, scope)
    found = fields.names_of(parted, lambda item: _piece_name(item, scope), scope.sink)
    return tuple(PieceId(name) for name, _ in found)


def layered(node: Node | None, scope: Scope) -> tuple[tuple[PieceId, ...], tuple[PieceId, ...]]:
    """Read pieces in a row, some with layers under them (``band + lining``): all, and these."""
    found = pieces(node, scope)
    under = {
        clean(part)
        for item in (fields.items_of(node) if node is not None else ())
        if isinstance(item, Scalar)
        for part in item.text.split("+")[1:]
    }
    return found, tuple(piece for piece in found if piece in under)


def halved(node: Node | None, scope: Scope) -> tuple[tuple[PieceId, ...], tuple[PieceId, ...]]:
    """Read pieces, some of them with ``half`` after the name: all, and those."""
    node = _plus_as_list(node, scope)
    bare: list[Node] = []
    half: set[str] = set()
    for item in fields.items_of(node) if node is not None else ():
        match = _TWO_WORDS.match(item.text.strip()) if isinstance(item, Scalar) else None
        if match is None or not isinstance(item, Scalar):
            bare.append(item)
        elif match["second"] != "half" or match["first"].casefold() == ALL:
            scope.sink.error("half-wanted", item, found=found_instead(item))
        else:
            half.add(clean(match["first"]))
            bare.append(item._replace(text=match["first"]))
    if isinstance(node, ListNode) and (bare or not node.items):
        found = pieces(node._replace(items=tuple(bare)), scope)
    else:
        found = pieces(bare[0], scope) if bare else ()
    return found, tuple(piece for piece in found if piece in half)


def notion_or_piece(node: Node | None, scope: Scope) -> tuple[NotionId | None, PieceId | None]:
    """Read the name of a notion or of a piece; where both are called so, the notion."""
    written = fields.text(node, scope.sink)
    if node is None or written is None:
        return None, None
    name = clean(written)
    if name in scope.notions.names or not scope.notions.is_known:
        return NotionId(name), None
    if name in scope.pieces:
        return None, PieceId(name)
    known = {**scope.notions.names, **scope.pieces.names}
    if known:
        fix = scope.sink.suggest(name, known, "")
        scope.sink.error("unknown-thing", node, name=quoted(name), fix=fix)
    else:
        report_unknown("unknown-notion", name, node, scope.notions, scope.sink)
    return None, None


def attached(
    node: Node | None, scope: Scope
) -> tuple[NotionId | None, PieceId | None, EdgeRef | None]:
    """Read what is sewn on: a notion, a piece, or the edge by which a piece is held."""
    if (
        isinstance(node, Scalar)
        and "." in node.text
        and clean(node.text) not in scope.notions.names
    ):
        ref = edge_ref(node, scope)
        return None, ref.piece if ref else None, ref
    return (*notion_or_piece(node, scope), None)


def places(node: Node | None, scope: Scope) -> tuple[Place, ...]:
    """Read pieces, sides of pieces, or places on them: ``band@left``, ``front.pocket``."""
    return tuple(place for place, _ in _each_place(node, scope))


def edges_or_places(node: Node | None, scope: Scope) -> tuple[Run, tuple[Place, ...]]:
    """Read a list in which edges, pieces and places on pieces may stand side by side."""
    edges: list[EdgeRef] = []
    spots: list[Place] = []
    for place, _ in _each_place(node, scope):
        piece = scope.piece.get(place.piece)
        if place.name and piece is not None and place.name in piece.edge_names:
            edges.append(EdgeRef(place.piece, place.name, place.hand))
        else:
            spots.append(place)
    return tuple(edges), tuple(spots)


def _each_place(node: Node | None, scope: Scope) -> list[tuple[Place, Node]]:
    """Every place once; one that stands twice is reported."""
    found: dict[Place, Node] = {}
    for place, item in fields.listed(node, lambda item: _place(item, scope), scope.sink):
        if place in found:
            report_twice(str(place), item, scope.sink)
        found.setdefault(place, item)
    return list(found.items())


def _place(node: Node, scope: Scope) -> Place | None:
    """A piece, or a spot, line or edge of it, with the wearer's side if one is named."""
    written = fields.text(node, scope.sink)
    if written is None or not isinstance(node, Scalar):
        return None
    where, at, side = written.partition("@")
    piece_name, dot, name = (clean(part) for part in where.partition("."))
    if not piece_name or (dot and not name):
        scope.sink.error("unreadable-place", node, found=found_instead(node))
        return None
    if piece_name not in scope.pieces:
        report_unknown("unknown-piece", piece_name, node, scope.pieces, scope.sink)
        return None
    hand = _hand(side.strip(), node, scope) if at else None
    if at and hand is None:
        return None
    piece = scope.piece.get(piece_name)
    place = Place(PieceId(piece_name), name or None, hand)
    return place if piece is None or _is_on(piece, place, node, scope) else None


def _is_on(piece: Piece, place: Place, node: Node, scope: Scope) -> bool:
    """Whether a piece has such a place, on such a side; where not, it is reported."""
    hands = {spot.hand for spot in piece.spots if spot.name == place.name}
    names = [*(spot.name for spot in piece.spots), *piece.lines, *piece.edge_names]
    if place.name is not None and place.name not in names:
        fix = scope.sink.suggest(place.name, dict.fromkeys(names), "fix-no-spots")
        words = {"piece": quoted(piece.id), "spot": quoted(place.name)}
        scope.sink.error("unknown-spot", node, fix=fix, **words)
        return False
    if place.hand is None:
        return True
    if hands and not hands & {None, place.hand}:
        side = "left" if place.hand is Hand.RIGHT else "right"
        words = {"spot": quoted(f"{piece.id}.{place.name}"), "side": quoted(f"@{side}")}
        scope.sink.error("spot-on-other-side", node, **words)
        return False
    return piece.id in scope.uncut or has_sides(piece, node, scope.sink)


def _plus_as_list(node: Node | None, scope: Scope) -> Node | None:
    """``stand + stand-inner`` as two items of a list, alone or among others."""
    if node is None or not any(_has_plus(item) for item in fields.items_of(node)):
        return node
    items: list[Node] = []
    for item in fields.items_of(node):
        parts = item.text.split("+") if isinstance(item, Scalar) and _has_plus(item) else []
        if parts and not all(part.strip() for part in parts):
            scope.sink.error("plus-without-piece", item, found=found_instead(item))
        elif isinstance(item, Scalar) and parts:
            items += (item._replace(text=part.strip()) for part in parts)
        else:
            items.append(item)
    return ListNode(tuple(items), node.span, node.path) if items else None


def _has_plus(node: Node) -> bool:
    return isinstance(node, Scalar) and "+" in node.text


def portion(node: Node | None, of: Run, scope: Scope, *, is_named_part: bool) -> Portion | None:
    """Read ``10 from waist``, or ``10 before waist`` where the named part is left out."""
    written = fields.text(node, scope.sink)
    if node is None or written is None:
        return None
    match = _PORTION[is_named_part].match(written)
    measure = parse_length(match["length"], default_unit=scope.units) if match else None
    if match is None or measure is None or measure.mm > fields.LONGEST_MM:
        words = "expected-part" if is_named_part else "expected-stop"
        fix = _part_meant(match["length"], written) if match else None
        scope.sink.error("unreadable-part", node, words=words, found=quoted(written), fix=fix)
        return None
    neighbour = clean(match["edge"])
    _check_neighbour(neighbour, of, node, scope)
    return Portion(measure, neighbour, is_named_part)


def _part_meant(length: str, written: str) -> str | None:
    from seqplan.load.meant import length_meant

    meant = length_meant(length)
    return say("fix-write", text=quoted(written.replace(length, meant, 1))) if meant else None


def _piece_name(node: Node, scope: Scope) -> str | None:
    """A piece by its name; an edge of one is reported."""
    if isinstance(node, Scalar) and "." in node.text:
        scope.sink.error("piece-wanted", node, found=found_instead(node))
        return None
    return scope.known(node, scope.pieces, "unknown-piece")


def _report_no_edge(node: ListNode | MappingNode, scope: Scope) -> None:
    from seqplan.load.offers import edges_in

    fix, found = edges_in(node), found_instead(node)
    scope.sink.error("wrong-type", node, words="expected-edge", found=found, fix=fix)


def _report_shape(written: str, node: Scalar, scope: Scope) -> None:
    """Report a piece without an edge, an edge without its piece, or another sign for the dot."""
    from seqplan.load.offers import edge_meant

    words = "unreadable-edge" if "." in written else "edge-wanted"
    fix = edge_meant(written, node, scope)
    scope.sink.error(words, node, found=quoted(written), fix=fix)


def _report_piece(piece: str, edge: str, node: Scalar, scope: Scope) -> None:
    from seqplan.load.offers import both_meant

    fix = both_meant(piece, edge, scope)
    if fix is not None:
        scope.sink.error("unknown-piece", node, name=quoted(piece), fix=fix)
    else:
        report_unknown("unknown-piece", piece, node, scope.pieces, scope.sink)


def _report_edge(piece: Piece, edge: str, node: Node, scope: Scope) -> None:
    from seqplan.load.offers import edge_of

    fix = edge_of(piece, edge, scope)
    names = {"piece": quoted(piece.id), "edge": quoted(edge)}
    scope.sink.error("unknown-edge", node, fix=fix, **names)


def _hand(side: str, node: Scalar, scope: Scope) -> Hand | None:
    if side in _HANDS:
        return Hand(side)
    near = scope.sink.close(side, _HANDS)
    written = node.text.partition("@")[0].strip()
    fix = say("fix-write", text=quoted(f"{written}@{near[0]}")) if near else None
    scope.sink.error("unknown-side", node, found=quoted(f"@{side}"), fix=fix)
    return None


def _is_sound(ref: EdgeRef, node: Node, scope: Scope) -> bool:
    """Whether the piece has the edge, and sides if one is named; where not, it is reported."""
    piece = scope.piece.get(ref.piece)
    if piece is None:
        return True
    if not any(edge.name == ref.edge for edge in piece.edges):
        _report_edge(piece, ref.edge, node, scope)
        return False
    return ref.hand is None or piece.id in scope.uncut or has_sides(piece, node, scope.sink)


def _check_neighbour(neighbour: str, of: Run, node: Node, scope: Scope) -> None:
    """Report a part that is measured from an edge which none of the run's edges meets."""
    meets: set[str] = set()
    for ref in of:
        piece = scope.piece.get(ref.piece)
        if piece is None or piece.id in scope.uncut:
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
