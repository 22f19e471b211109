"""Pieces and their edges, with ``like:`` followed to the piece that has the edges."""

from collections.abc import Iterable
from typing import NamedTuple

from seqplan.base.ids import PieceId
from seqplan.load import fields
from seqplan.load.choices import Choices, when
from seqplan.load.faces import (
    fold_named,
    read_fullness,
    read_slits,
    read_spots,
    with_slits,
)
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


class Around(NamedTuple):
    """What pieces may name: fabrics, pieces, choices; and the unit of bare lengths."""

    names: Names
    fabrics: Names
    choices: Choices
    units: str


def read_pieces(table: MappingNode | None, around: Around, sink: Sink) -> dict[str, Piece]:
    """Read ``pieces:``. Pieces whose edges could not be read are left out."""
    pairs = read_names(table, sink) if table is not None else []
    drafts: dict[str, _Draft] = {}
    for pair in pairs:
        draft = _draft(pair, around, sink)
        if draft is not None:
            drafts.setdefault(pair.key, draft)
    followed = _follow_likes(drafts, sink)
    in_order = ((key, followed[key]) for key in drafts)
    pieces = {key: piece for key, piece in in_order if piece is not None}
    for key, piece in pieces.items():
        found = drafts[key].found
        _check_edges(piece, found.get("selvage"), _names_under(found.get("selvage")), sink)
        for word, things in (("darts", piece.darts), ("pleats", piece.pleats)):
            _check_edges(piece, found.get(word), [(thing.on, None) for thing in things], sink)
    return pieces


def _draft(pair: Pair, around: Around, sink: Sink) -> _Draft | None:
    keys = keys_of(Section.PIECE)
    if pair.key == ALL:
        sink.error("reserved-name", pair, name=quoted(ALL))
    table = fields.mapping(pair.value, sink, words="expected-piece")
    if table is None:
        return None
    found = fields.read_fields(table, keys, sink)
    given = [word for word in ("like", "edges", "strip") if word in found]
    if len(given) > 1:
        names = {"one": quoted(given[0]), "other": quoted(given[1])}
        sink.error("edges-twice", found[given[1]], piece=quoted(pair.key), **names)
    cut, copies = _cut(found.get("cut"), sink) or (Cut.ALIKE, 1)
    edges = _edges(found.get("strip") or found.get("edges"), sink)
    if "strip" in found and edges:
        edges = fold_named(edges, found["strip"], sink)
    slits = read_slits(found.get("slits"), around.units, sink)
    if edges is not None and "like" not in found:
        edges = with_slits(edges, cut, slits, sink)
    layer = fields.choice(found.get("layer"), sink, keys["layer"])
    worn = fields.choice(found.get("worn"), sink, keys["worn"])
    like = _known(found.get("like"), around.names, "unknown-piece", sink)
    lines = fields.names_of(found.get("lines"), lambda node: fields.name(node, sink), sink)
    selvage = fields.names_of(found.get("selvage"), lambda node: fields.name(node, sink), sink)
    piece = Piece(
        id=PieceId(pair.key),
        edges=edges or (),
        cut=cut,
        copies=copies,
        fabric=_known(found.get("of"), around.fabrics, "unknown-fabric", sink),
        layer=Layer(layer) if layer else Layer.SHELL,
        like=PieceId(like) if like else None,
        worn=Worn(worn) if worn else None,
        selvage=tuple(name for name, _ in selvage),
        darts=read_fullness(found.get("darts"), sink),
        pleats=read_fullness(found.get("pleats"), sink),
        spots=read_spots(found.get("spots"), sink),
        lines=tuple(name for name, _ in lines),
        slits=tuple(slit for slit, _ in slits),
        is_strip="strip" in found,
        when=when(found.get("when"), around.choices, sink),
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
    piece = draft.piece._replace(edges=other.edges, is_strip=other.is_strip, slits=other.slits)
    return piece if "cut" in draft.found else piece._replace(cut=other.cut, copies=other.copies)


def _names_under(node: Node | None) -> list[tuple[str, Placed | None]]:
    """Each name of a list, with its place."""
    items = node.items if isinstance(node, ListNode) else (node,)
    return [
        (clean(item.text), item) for item in items if isinstance(item, Scalar) and not item.is_empty
    ]


def _check_edges(
    piece: Piece,
    node: Node | None,
    names: Iterable[tuple[str, Placed | None]],
    sink: Sink,
) -> None:
    """Report names of edges that the piece does not have."""
    known = Names(dict.fromkeys(piece.edge_names), "fix-no-edges")
    for name, at in names:
        if node is not None and name not in known:
            _report_edge(piece, name, at or node, sink)


def _report_edge(piece: Piece, name: str, at: Placed, sink: Sink) -> None:
    fix = sink.suggest(name, piece.edge_names, "fix-no-edges")
    sink.error("unknown-edge", at, piece=quoted(piece.id), edge=quoted(name), fix=fix)
