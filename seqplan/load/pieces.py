"""Pieces and their edges, with ``like:`` followed to the piece that has the edges."""

from typing import NamedTuple

from seqplan.base.ids import PieceId
from seqplan.load import fields
from seqplan.load.beside import Beside
from seqplan.load.choices import Choices, when
from seqplan.load.faces import (
    check_face,
    fold_named,
    read_begins,
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
    warn_of_likeness,
)
from seqplan.load.nodes import ListNode, MappingNode, Node, Pair, Placed, Scalar
from seqplan.load.sink import Sink, found_instead, listing, quoted
from seqplan.model.piece import Cut, Edge, Layer, Notch, Piece, Spot, Worn
from seqplan.words.say import say

EDGE_LIMIT = 200
_BAR = "|"
_CUTS = (Cut.FOLD.value, Cut.PAIR.value)
_NONE: frozenset[str] = frozenset()


class _Draft(NamedTuple):
    """A piece as written: what it has itself, before ``like:`` is followed.

    ``named`` are the edges that it names, with the places where it does; ``spots``, ``lines`` and
    ``notches`` come with theirs, too.
    """

    piece: Piece
    has_cut: bool
    is_cut_known: bool
    is_whole: bool
    like_at: Node | None
    named: tuple[tuple[str, Placed], ...]
    spots: tuple[tuple[Spot, Node], ...]
    lines: tuple[tuple[str, Node], ...]
    notches: tuple[tuple[Notch, Node], ...]


class Around(NamedTuple):
    """What pieces may name: fabrics, pieces, choices, files; and the unit of bare lengths."""

    names: Names
    fabrics: Names
    choices: Choices
    units: str
    beside: Beside


def read_pieces(
    table: MappingNode | None, around: Around, sink: Sink
) -> tuple[dict[str, Piece], frozenset[str]]:
    """Read ``pieces:``, and say of which nobody knows how they are cut.

    Pieces whose edges could not be read are left out.
    """
    pairs = read_names(table, sink) if table is not None else []
    drafts: dict[str, _Draft] = {}
    for pair in pairs:
        draft = _draft(pair, around, sink)
        if draft is not None:
            drafts.setdefault(pair.key, draft)
    followed = _follow_likes(drafts, sink)
    uncut = _uncut(drafts) if any(not draft.is_cut_known for draft in drafts.values()) else _NONE
    in_order = ((key, followed[key]) for key in drafts)
    pieces = {key: piece for key, piece in in_order if piece is not None}
    for key, piece in pieces.items():
        for name, at in drafts[key].named:
            _check_edge(piece, name, at, sink)
        spots = () if key in uncut else drafts[key].spots
        check_face(piece, spots, drafts[key].lines, sink)
        if drafts[key].notches and key not in uncut:
            from seqplan.load.notches import check_notches

            check_notches(piece, drafts[key].notches, sink)
    return pieces, uncut


def _uncut(drafts: dict[str, _Draft]) -> frozenset[str]:
    """Pieces whose `cut:` could not be read, and those that take it over with `like:`."""
    found = {name for name, draft in drafts.items() if not draft.is_cut_known}
    for start, draft in drafts.items():
        trail, name = [start], draft.piece.like
        while name in drafts and name not in trail and not drafts[trail[-1]].has_cut:
            trail.append(name)
            name = drafts[name].piece.like
        if found and trail[-1] in found:
            found.add(start)
    return frozenset(found)


def _draft(pair: Pair, around: Around, sink: Sink) -> _Draft | None:
    """Read one piece; ``None`` where it has no keys."""
    if pair.key == ALL:
        sink.error("reserved-name", pair, name=quoted(ALL))
    table = fields.mapping(pair.value, sink, words="expected-piece")
    if table is None:
        return None
    found = fields.read_fields(table, keys_of(Section.PIECE), sink)
    like = fields.known(found.get("like"), around.names, "unknown-piece", sink)
    cut = _cut(found.get("cut"), sink)
    piece = _cloth(pair, found, around, sink)._replace(like=PieceId(like) if like else None)
    is_cut_known = "cut" not in found or (cut is not None and not cut.is_guess)
    if cut is not None:
        piece = piece._replace(cut=cut.how, copies=cut.copies)
    has_doubt = cut is None and not is_cut_known and "slits" in found
    if has_doubt:
        found = {word: node for word, node in found.items() if word != "slits"}
    piece, is_whole = _shape(piece, found, around.units, sink)
    piece, measured = _measured(piece, found, around, sink, is_whole=is_whole and not has_doubt)
    selvage = fields.names_of(found.get("selvage"), lambda n: fields.edge_name(n, sink), sink)
    lines = fields.names_of(found.get("lines"), lambda n: fields.name(n, sink), sink)
    darts, pleats = (
        read_fullness(found.get(word), around.units, sink) for word in ("darts", "pleats")
    )
    spots = read_spots(found.get("spots"), sink)
    marks = (*(spot.name for spot, _ in spots), *(name for name, _ in lines))
    begins = read_begins(found.get("begins"), marks, around.units, sink)
    notches, notched = _notches(found, around.units, sink)
    return _Draft(
        piece._replace(
            selvage=tuple(name for name, _ in selvage),
            darts=tuple(item for item, _ in darts),
            pleats=tuple(item for item, _ in pleats),
            spots=tuple(spot for spot, _ in spots),
            lines=tuple(name for name, _ in lines),
            begins=tuple(item for item, _ in begins),
            notches=tuple(notch for notch, _ in notches),
        ),
        has_cut="cut" in found,
        is_cut_known=is_cut_known,
        is_whole=is_whole and not has_doubt and not ("like" in found and like is None),
        like_at=found.get("like"),
        named=(
            *selvage,
            *((item.on, at) for item, at in (*darts, *pleats)),
            *((item.edge, at) for item, at in begins),
            *notched,
            *measured,
        ),
        spots=spots,
        lines=tuple(lines),
        notches=notches,
    )


def _notches(
    found: fields.Fields, units: str, sink: Sink
) -> tuple[tuple[tuple[Notch, Node], ...], tuple[tuple[str, Placed], ...]]:
    """The notches with their places, and the edges that they name."""
    if "notches" not in found:
        return (), ()
    from seqplan.load.notches import read_notches

    return read_notches(found["notches"], units, sink)


def _cloth(pair: Pair, found: fields.Fields, around: Around, sink: Sink) -> Piece:
    """What a piece is cut from and where it is worn, as yet without its edges."""
    keys = keys_of(Section.PIECE)
    layer = fields.choice(found.get("layer"), sink, keys["layer"])
    worn = fields.choice(found.get("worn"), sink, keys["worn"])
    return Piece(
        id=PieceId(pair.key),
        edges=(),
        fabric=fields.known(found.get("of"), around.fabrics, "unknown-fabric", sink),
        layer=Layer(layer) if layer else Layer.SHELL,
        worn=Worn(worn) if worn else None,
        when=when(found.get("when"), around.choices, sink),
        note=fields.note(found.get("note"), sink),
        path=pair.path,
    )


def _shape(piece: Piece, found: fields.Fields, units: str, sink: Sink) -> tuple[Piece, bool]:
    """The piece with its edges and slits, and whether all of them could be read."""
    given = [word for word in ("like", "edges", "strip") if word in found]
    own = ("slits", "shape")
    given += [word for word in own if word in found] if given[:1] == ["like"] else []
    if len(given) > 1:
        names = {"one": quoted(given[0]), "other": quoted(given[1])}
        sink.error("edges-twice", found[given[1]], piece=quoted(piece.id), **names)
    edges = _edges(found.get("strip") or found.get("edges"), sink)
    slits = read_slits(found.get("slits"), units, sink)
    if edges and given == ["strip"]:
        edges = fold_named(edges, found["strip"], sink)
    if edges is not None and "like" not in found:
        edges = with_slits(edges, piece, slits, sink)
    shaped = piece._replace(
        edges=edges or (),
        slits=tuple(item.slit for item in slits),
        is_strip="strip" in found,
    )
    return shaped, edges is not None


def _measured(
    piece: Piece, found: fields.Fields, around: Around, sink: Sink, *, is_whole: bool
) -> tuple[Piece, tuple[tuple[str, Placed], ...]]:
    """The piece with its shape and lengths, and the edges that the lengths name."""
    if "shape" not in found and "lengths" not in found:
        return piece, ()
    from seqplan.load.outlines import read_lengths, with_outline

    lengths, named = read_lengths(found.get("lengths"), around.units, sink)
    piece = piece._replace(lengths=lengths)
    if is_whole and "like" not in found:
        piece = with_outline(piece, found.get("shape"), around.units, around.beside, sink)
    return piece, named


class _Count(NamedTuple):
    """How a piece is cut; ``is_guess`` where that was written in other words."""

    how: Cut
    copies: int
    is_guess: bool = False


def _cut(node: Node | None, sink: Sink) -> _Count | None:
    if node is None or fields.is_empty(node, sink):
        return None
    word = node.text.strip().casefold() if isinstance(node, Scalar) else ""
    return _count(word) or _other_cut(word, node, sink)


def _count(word: str) -> _Count | None:
    if word == Cut.FOLD.value:
        return _Count(Cut.FOLD, 1)
    if word == Cut.PAIR.value:
        return _Count(Cut.PAIR, 2)
    least, most = keys_of(Section.PIECE)["cut"].bounds
    if word.isdecimal() and len(word) <= 4 and least <= int(word) <= most:
        return _Count(Cut.ALIKE, int(word))
    return None


def _other_cut(word: str, node: Node, sink: Sink) -> _Count | None:
    """Report a cut in other words, and give what was probably meant."""
    from seqplan.load.meant import cut_meant

    meant = cut_meant(word) or next(iter(sink.close(word, _CUTS)), "")
    count = _count(meant)
    fix = say("fix-write", text=quoted(f"cut: {meant}")) if count is not None else None
    least, most = keys_of(Section.PIECE)["cut"].bounds
    sink.error("unreadable-cut", node, found=found_instead(node), least=least, most=most, fix=fix)
    return count._replace(is_guess=True) if count is not None else None


def _edges(node: Node | None, sink: Sink) -> tuple[Edge, ...] | None:
    """The edges in their order; ``None`` where one of them could not be read."""
    if node is None:
        return ()
    if isinstance(node, ListNode) and len(node.items) > EDGE_LIMIT:
        sink.error("too-many-edges", node, limit=EDGE_LIMIT)
        return None
    if isinstance(node, MappingNode):
        sink.error("wrong-type", node, words="expected-edges", found=found_instead(node))
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
    at = drafts[first].like_at
    if at is not None:
        sink.error(words, at, piece=quoted(first), circle=listing([*circle, first]))


def _with_edges(draft: _Draft, done: dict[str, Piece | None]) -> Piece | None:
    """The piece with the edges, and the cut unless it has its own, of the one it is like."""
    if not draft.is_whole or draft.piece.like is None:
        return draft.piece if draft.is_whole else None
    other = done.get(draft.piece.like)
    if other is None:
        return None
    piece = draft.piece._replace(edges=other.edges, is_strip=other.is_strip, slits=other.slits)
    if not draft.has_cut:
        piece = piece._replace(cut=other.cut, copies=other.copies)
    # Half an outline is not that of a whole piece.
    is_same = (piece.cut is Cut.FOLD) == (other.cut is Cut.FOLD)
    lengths = tuple({**dict(other.lengths), **dict(piece.lengths)}.items())
    piece = piece._replace(shape=other.shape if is_same else None, lengths=lengths)
    if not other.notches:
        return piece
    from seqplan.load.notches import taken_over

    return piece._replace(notches=taken_over(piece, other))


def _check_edge(piece: Piece, name: str, at: Placed, sink: Sink) -> None:
    """Report the name of an edge that the piece does not have."""
    if name not in piece.edge_names:
        fix = sink.suggest(name, piece.edge_names, "fix-no-edges")
        sink.error("unknown-edge", at, piece=quoted(piece.id), edge=quoted(name), fix=fix)
