"""Pieces and their edges, with ``like:`` followed to the piece that has the edges."""

from typing import NamedTuple

from seqplan.base.ids import PieceId
from seqplan.load import fields
from seqplan.load.keys import Section, keys_of
from seqplan.load.names import (
    ALL,
    Names,
    check_name,
    clean,
    read_names,
    report_unknown,
    warn_of_likeness,
)
from seqplan.load.nodes import ListNode, MappingNode, Node, Pair, Placed, Scalar
from seqplan.load.sink import Sink, found_instead, listing, quoted
from seqplan.model.piece import Cut, Edge, Layer, Piece, Worn

EDGE_LIMIT = 200
_BAR = "|"


class _Draft(NamedTuple):
    """A piece as written: what it has itself, before ``like:`` is followed."""

    piece: Piece
    found: fields.Fields
    is_whole: bool


def read_pieces(
    table: MappingNode | None, names: Names, fabrics: Names, sink: Sink
) -> dict[str, Piece]:
    """Read ``pieces:``. Pieces whose edges could not be read are left out."""
    pairs = read_names(table, sink) if table is not None else []
    drafts: dict[str, _Draft] = {}
    for pair in pairs:
        draft = _draft(pair, fabrics, names, sink)
        if draft is not None:
            drafts.setdefault(pair.key, draft)
    followed = _follow_likes(drafts, sink)
    in_order = ((key, followed[key]) for key in drafts)
    pieces = {key: piece for key, piece in in_order if piece is not None}
    for key, piece in pieces.items():
        _check_selvage(piece, drafts[key].found.get("selvage"), sink)
    return pieces


def _draft(pair: Pair, fabrics: Names, pieces: Names, sink: Sink) -> _Draft | None:
    keys = keys_of(Section.PIECE)
    if pair.key == ALL:
        sink.error("reserved-name", pair, name=quoted(ALL))
    table = fields.mapping(pair.value, sink, words="expected-piece")
    if table is None:
        return None
    found = fields.read_fields(table, keys, sink)
    if "like" in found and "edges" in found:
        sink.error("like-and-edges", found["edges"], piece=quoted(pair.key))
    cut, copies = _cut(found.get("cut"), sink) or (Cut.ALIKE, 1)
    edges = _edges(found.get("edges"), sink)
    layer = fields.choice(found.get("layer"), sink, keys["layer"])
    worn = fields.choice(found.get("worn"), sink, keys["worn"])
    like = _known(found.get("like"), pieces, "unknown-piece", sink)
    selvage = fields.names_of(found.get("selvage"), lambda node: fields.name(node, sink), sink)
    piece = Piece(
        id=PieceId(pair.key),
        edges=edges or (),
        cut=cut,
        copies=copies,
        fabric=_known(found.get("of"), fabrics, "unknown-fabric", sink),
        layer=Layer(layer) if layer else Layer.SHELL,
        like=PieceId(like) if like else None,
        worn=Worn(worn) if worn else None,
        selvage=tuple(name for name, _ in selvage),
        note=fields.note(found.get("note"), sink),
        path=pair.path,
    )
    is_whole = edges is not None and not ("like" in found and like is None)
    return _Draft(piece, found, is_whole)


def _known(node: Node | None, known: Names, slug: str, sink: Sink) -> str | None:
    """A name that has to be defined elsewhere in the file."""
    written = fields.text(node, sink)
    if node is None or written is None:
        return None
    name = clean(written)
    if name in known:
        return name
    report_unknown(slug, name, node, known, sink)
    return None


def _cut(node: Node | None, sink: Sink) -> tuple[Cut, int] | None:
    if node is None or fields.is_empty(node, sink):
        return None
    word = node.text.strip().casefold() if isinstance(node, Scalar) else ""
    if word == Cut.FOLD.value:
        return Cut.FOLD, 1
    if word == Cut.PAIR.value:
        return Cut.PAIR, 2
    least, most = keys_of(Section.PIECE)["cut"].bounds
    if word.isdecimal() and len(word) <= 4 and least <= int(word) <= most:
        return Cut.ALIKE, int(word)
    sink.error("unreadable-cut", node, found=found_instead(node), least=least, most=most)
    return None


def _edges(node: Node | None, sink: Sink) -> tuple[Edge, ...] | None:
    """The edges in their order; ``None`` where one of them could not be read."""
    if node is None:
        return ()
    if isinstance(node, ListNode) and len(node.items) > EDGE_LIMIT:
        sink.error("too-many-edges", node, limit=EDGE_LIMIT)
        return None
    runs = fields.listed(node, lambda item: _edges_at(item, sink), sink)
    count = len(node.items) if isinstance(node, ListNode) else 1
    if not count or len(runs) < count:
        return None
    edges = [(edge, item) for run, item in runs for edge in run]
    if len(edges) > EDGE_LIMIT:
        sink.error("too-many-edges", node, limit=EDGE_LIMIT)
        return None
    places: list[tuple[str, Placed]] = [(edge.name, item) for edge, item in edges]
    warn_of_likeness(places, sink)
    return tuple(edge for edge, _ in edges)


def _edges_at(node: Node, sink: Sink) -> tuple[Edge, ...] | None:
    """One item of the list: an edge, or edges that meet at marks."""
    written = fields.text(node, sink)
    if written is None:
        return None
    names = [clean(part) for part in written.split(_BAR)]
    if len(names) > 1 and not all(names):
        sink.error("bar-without-edge", node, found=quoted(written))
        return None
    good = [name for name in names if check_name(name, node, sink)]
    if len(good) < len(names):
        return None
    return tuple(Edge(name, at_mark=place > 0) for place, name in enumerate(names))


def _follow_likes(drafts: dict[str, _Draft], sink: Sink) -> dict[str, Piece | None]:
    """Give every piece the edges of the one it is like; circles are reported, each once."""
    done: dict[str, Piece | None] = {}
    for start in drafts:
        trail: dict[str, None] = {}
        name: str | None = start
        while name is not None and name in drafts and name not in done and name not in trail:
            trail[name] = None
            name = drafts[name].piece.like
        if name is not None and name in trail:
            _report_circle(list(trail), name, drafts, sink)
        for key in reversed(trail):
            done[key] = _with_edges(drafts[key], done)
    return done


def _report_circle(trail: list[str], first: str, drafts: dict[str, _Draft], sink: Sink) -> None:
    circle = trail[trail.index(first) :]
    words = "like-itself" if len(circle) == 1 else "like-circle"
    at = drafts[first].found["like"]
    sink.error(words, at, piece=quoted(first), circle=listing([*circle, first]))


def _with_edges(draft: _Draft, done: dict[str, Piece | None]) -> Piece | None:
    """The piece with the edges, and the cut unless it has its own, of the one it is like."""
    if not draft.is_whole or draft.piece.like is None:
        return draft.piece if draft.is_whole else None
    other = done.get(draft.piece.like)
    if other is None:
        return None
    piece = draft.piece._replace(edges=other.edges)
    return piece if "cut" in draft.found else piece._replace(cut=other.cut, copies=other.copies)


def _check_selvage(piece: Piece, node: Node | None, sink: Sink) -> None:
    """Report names under ``selvage:`` that are no edges of the piece."""
    items = node.items if isinstance(node, ListNode) else (node,)
    known = Names(dict.fromkeys(piece.edge_names), "fix-no-edges")
    for item in items:
        if isinstance(item, Scalar) and not item.is_empty:
            name = clean(item.text)
            if name not in known:
                _report_edge(piece, name, item, sink)


def _report_edge(piece: Piece, name: str, at: Placed, sink: Sink) -> None:
    fix = sink.suggest(name, piece.edge_names, "fix-no-edges")
    sink.error("unknown-edge", at, piece=quoted(piece.id), edge=quoted(name), fix=fix)
