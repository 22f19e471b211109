"""Joins: ``sew`` and ``baste`` with their other side, their part of an edge and their method."""

import re

from seqplan.base.ids import EntryId, NotionId, PieceId
from seqplan.base.measure import Length, format_written
from seqplan.load import fields, resolve
from seqplan.load.fields import Fields
from seqplan.load.keys import keys_with
from seqplan.load.names import clean, report_twice, report_unknown
from seqplan.load.nearest import folded
from seqplan.load.nodes import ListNode, MappingNode, Node, Pair, Scalar
from seqplan.load.resolve import Run
from seqplan.load.scope import Scope
from seqplan.load.sink import found_instead, quoted
from seqplan.model.entry import Caught, Entry, Portion, SeamKind, SeamMethod, Sides, Verb
from seqplan.model.piece import Cut, EdgeRef, Piece

DIRECTIONS = (
    "open", "up", "down", "one side", "left", "right", "front", "back", "centre", "side",
    "shoulder", "neck", "waist", "hem", "body", "facing", "lining",
)  # fmt: skip
"""Where allowances are pressed, beside towards or away from what the file names."""

_BOTH_SIDES = frozenset({"both sides", "both"})

_DIRECTION = re.compile(r"^(?:(?:to|towards?)\s+)?(?P<where>[^.,:/@|]{1,60})$", re.IGNORECASE)


def read_join(entry: Entry, found: Fields, scope: Scope) -> Entry:
    """Read what ``sew`` and ``baste`` have."""
    sink, keys = scope.sink, keys_with(entry.verb)
    run = resolve.run(found.get(entry.verb.value), scope)
    to = _other_side(run, found.get("to"), scope)
    _check_sides(run, to, found, entry, scope)
    seam, own = _kind(found.get("as"), entry, scope)
    notion, strip = _binding(found.get("with"), seam, scope)
    how = fields.choice(found.get("method"), sink, keys["method"])
    sides = fields.choice(found.get("sides"), sink, keys["sides"])
    return entry._replace(
        run=run,
        to=to,
        seam=seam,
        own_seam=own,
        notion=notion,
        partners=(strip,) if strip else (),
        how=SeamMethod(how) if how else None,
        sides=Sides(sides) if sides else Sides.RIGHT_TOGETHER,
        between=_caught(found.get("between"), (*run, *to), scope),
        topstitch=topstitch(found.get("topstitch"), scope),
        gap=fields.length(found.get("gap"), sink, scope.units),
        press_to=_direction(found.get("press"), scope),
        allowance=fields.length(found.get("allowance"), sink, scope.units),
        cuts=_knife(found.get("cuts"), seam, own, scope),
        ease=fields.length(found.get("ease"), sink, scope.units),
        portion=read_portion(run, found, scope),
        is_in_one=bool(fields.yes_no(found.get("in one"), sink)),
        open=_open(entry.id, found.get("open"), scope),
    )


def _binding(
    node: Node | None, seam: SeamKind, scope: Scope
) -> tuple[NotionId | None, PieceId | None]:
    """Read what binds the allowances of a bound seam; no other seam has a binding."""
    if node is not None and seam is not SeamKind.BOUND:
        scope.sink.error("with-without-bound", node, found=found_instead(node))
        return None, None
    if isinstance(node, ListNode) and len(node.items) == 1:
        (node,) = node.items
    return resolve.notion_or_piece(node, scope)


def _knife(node: Node | None, seam: SeamKind, own: str | None, scope: Scope) -> Length | None:
    """Read what the knife takes off; a seam that nobody finishes meets no knife."""
    if node is not None and own is None and seam not in _FINISHED:
        scope.sink.error("cuts-without-finish", node)
        return None
    return fields.length(node, scope.sink, scope.units)


_FINISHED = {
    SeamKind.PRESSED_OPEN,
    SeamKind.FINISHED_TOGETHER,
    SeamKind.OVERLOCKED,
    SeamKind.LAPPED,
}


def is_edges(node: Node) -> bool:
    """Whether what stands there is meant as edges, and not as the name of one thing."""
    return not isinstance(node, Scalar) or "." in node.text


def topstitch(node: Node | None, scope: Scope) -> str | None:
    """Read ``topstitch: yes``, a distance, or the side on which it is done.

    A distance gets its unit; what begins like one has to be one.
    """
    written = fields.text(node, scope.sink)
    if written is None or written.casefold() in {"no", "false"}:
        return None
    if written[0].isdigit() or written[0] in "-.":
        measure = fields.length(node, scope.sink, scope.units)
        return format_written(measure) if measure is not None else None
    if written.casefold() in {"yes", "true"}:
        return "yes"
    side = written.casefold().removeprefix("on ").removeprefix("the ")
    if side not in _BOTH_SIDES and node is not None and not is_direction(side, scope):
        _report_topstitch(written, node, scope)
    return written


def _report_topstitch(written: str, node: Node, scope: Scope) -> None:
    from seqplan.load.directions import side_meant

    fix = side_meant(written, scope)
    words = {"words": "unknown-topstitch", "found": quoted(written), "fix": fix}
    scope.sink.warning("unknown-direction", node, **words)


def _kind(node: Node | None, entry: Entry, scope: Scope) -> tuple[SeamKind, str | None]:
    """The kind of a seam: one of the usual ones, or one of the author's own."""
    written = fields.text(node, scope.sink) if entry.verb is Verb.SEW else None
    if node is None or written is None:
        return SeamKind.PLAIN, None
    name, own = clean(written), scope.own_seams
    if name in own.names:
        return SeamKind.OWN, name
    key = keys_with(entry.verb)["as"]
    if not own.is_known and name.casefold() not in {word.casefold() for word in key.choices}:
        return SeamKind.PLAIN, None
    key = key._replace(choices=(*key.choices, *own.names))
    word = fields.choice(node, scope.sink, key, otherwise="fix-own-seam")
    if word in own.names:
        return SeamKind.OWN, word
    return (SeamKind(word) if word else SeamKind.PLAIN), None


def _caught(node: Node | None, sides: Run, scope: Scope) -> tuple[Caught, ...]:
    """Read ``between:``: what is caught, alone or with the edge at which it is."""
    sink = scope.sink
    if isinstance(node, MappingNode):
        if not node.pairs:
            sink.error("wrong-type", node, words="expected-caught", found="`{}`")
        read = [_caught_at(pair, sides, scope) for pair in node.pairs]
        return tuple(caught for caught in read if caught is not None)
    found: dict[Caught, None] = {}
    for caught, item in fields.listed(node, lambda item: _caught_thing(item, sides, scope), sink):
        if caught in found and isinstance(item, Scalar):
            report_twice(clean(item.text), item, sink)
        found.setdefault(caught)
    return tuple(found)


def _caught_at(pair: Pair, sides: Run, scope: Scope) -> Caught | None:
    """One line of a mapping: what is caught, and where."""
    key = Scalar(pair.key, pair.span, pair.path)
    caught, at = _caught_thing(key, sides, scope), resolve.edge_ref(pair.value, scope)
    if caught is None or at is None:
        return None
    if sides and not _is_among(at, sides):
        scope.sink.error("caught-elsewhere", pair.value, edge=quoted(str(at)))
        return None
    return caught._replace(at=at)


def _caught_thing(node: Node, sides: Run, scope: Scope) -> Caught | None:
    """An edge, a piece or a notion; a side of the seam cannot be caught in it."""
    if is_edges(node):
        ref = resolve.edge_ref(node, scope)
        if ref is not None and _is_among(ref, sides):
            scope.sink.error("caught-in-itself", node, edge=quoted(str(ref)))
            return None
        return Caught(edge=ref) if ref else None
    notion, piece = resolve.notion_or_piece(node, scope)
    return Caught(notion=notion, piece=piece) if notion or piece else None


def _is_among(ref: EdgeRef, sides: Run) -> bool:
    """Whether an edge is one of those of a seam, or a copy of one."""
    return any(
        (ref.piece, ref.edge) == (side.piece, side.edge) and side.hand in {None, ref.hand}
        for side in sides
    )


def ring_or_flat(entry: Entry, found: Fields, scope: Scope) -> tuple[SeamMethod | None, bool]:
    """Read ``method: in the round`` or ``flat``, and ``flat: yes`` which says the same."""
    sink = scope.sink
    method = fields.choice(found.get("method"), sink, keys_with(entry.verb)["method"])
    flat = fields.yes_no(found.get("flat"), sink)
    if method is not None and flat is not None and flat != (method == "flat"):
        sink.error("round-and-flat", found["flat"])
    is_flat = method == "flat" or flat is True
    return (SeamMethod.IN_THE_ROUND if method == "in the round" else None), is_flat


def _other_side(run: Run, node: Node | None, scope: Scope) -> Run:
    """Read ``to:``: edges, or a piece whose edges of the same names are meant."""
    if node is None:
        return ()
    if is_edges(node):
        return resolve.run(node, scope)
    piece = scope.known(node, scope.pieces, "unknown-piece")
    return resolve.edges_like(piece, run, node, scope) if piece else ()


def _check_sides(run: Run, to: Run, found: Fields, entry: Entry, scope: Scope) -> None:
    """Report sides that do not pair up, or edges that would be sewn to themselves."""
    main, other = found.get(entry.verb.value), found.get("to")
    if main is None or len(run) != _count(main):
        return
    if other is None:
        _check_alone(run, main, scope)
    elif is_edges(other) and len(to) == _count(other):
        if len(run) != len(to) and 1 not in {len(run), len(to)}:
            scope.sink.error("uneven-run", other, ours=len(run), theirs=len(to))
        _check_selves(run, to, other, scope)
    elif to:
        _check_selves(run, to, other, scope)


def _count(node: Node) -> int:
    return len(node.items) if isinstance(node, ListNode) else 1


def _check_alone(run: Run, node: Node, scope: Scope) -> None:
    """Report an edge that is sewn without ``to`` and has no second copy to be sewn to."""
    for place, ref in enumerate(run):
        piece = scope.piece.get(ref.piece)
        if piece is not None and ref.piece not in scope.uncut and _copies(piece, ref) < 2:
            at = node.items[place] if isinstance(node, ListNode) else node
            scope.sink.error("no-other-side", at, edge=quoted(str(ref)))


def _copies(piece: Piece, ref: EdgeRef) -> int:
    """How many cut edges a reference stands for."""
    halves = 1 if ref.hand is not None else len(piece.halves())
    return halves * sum(1 for edge in piece.edges if edge.name == ref.edge)


def _check_selves(run: Run, to: Run, node: Node, scope: Scope) -> None:
    """Report edges on both sides of one join; copies that are all alike may meet so."""
    hands: dict[tuple[str, str], object] = {(ref.piece, ref.edge): ref.hand for ref in run}
    for place, ref in enumerate(to):
        if not _is_same_edge(ref, hands) or _has_copies(ref, scope):
            continue
        items = node.items if isinstance(node, ListNode) else (node,)
        at = items[place] if len(items) == len(to) else node
        scope.sink.error("sewn-to-itself", at, edge=quoted(str(ref)))


def _is_same_edge(ref: EdgeRef, hands: dict[tuple[str, str], object]) -> bool:
    if (ref.piece, ref.edge) not in hands:
        return False
    hand = hands[ref.piece, ref.edge]
    return hand is None or ref.hand is None or hand is ref.hand


def _has_copies(ref: EdgeRef, scope: Scope) -> bool:
    piece = scope.piece.get(ref.piece)
    if piece is None or piece.id in scope.uncut:
        return True
    return piece.cut is Cut.ALIKE and piece.copies > 1


def _direction(node: Node | None, scope: Scope) -> str | None:
    """Which way allowances are pressed; the word ``to`` is left out."""
    written = fields.text(node, scope.sink)
    if node is None or written is None:
        return None
    match = _DIRECTION.match(written)
    where = match["where"].strip() if match is not None else None
    if where is None or not is_direction(where, scope):
        _report_direction(written, where, node, scope)
    return where


def _report_direction(written: str, where: str | None, node: Node, scope: Scope) -> None:
    from seqplan.load.directions import direction_meant

    fix = direction_meant(written, DIRECTIONS, scope)
    if where is None:
        scope.sink.error("unreadable-direction", node, found=quoted(written), fix=fix)
    else:
        scope.sink.warning("unknown-direction", node, found=quoted(written), fix=fix)


def is_direction(where: str, scope: Scope) -> bool:
    """Whether a direction is one that the program knows, or speaks of something in the file."""
    word = where.casefold().removeprefix("away from ").removeprefix("the ")
    if word in DIRECTIONS or not scope.pieces.is_known:
        return True
    things = (*scope.pieces.names, *scope.notions.names, *scope.entries.names)
    edges = (edge for piece in scope.piece.values() for edge in piece.edge_names)
    named = " ".join((*things, *edges, *DIRECTIONS))
    spoken = set(folded(named).replace("_", " ").replace("-", " ").split())
    return all(part in spoken for part in folded(word).replace("-", " ").split())


def read_portion(run: Run, found: Fields, scope: Scope) -> Portion | None:
    """Read ``part:`` or ``stop:``, of which an entry has one at most."""
    part = resolve.portion(found.get("part"), run, scope, is_named_part=True)
    stop = resolve.portion(found.get("stop"), run, scope, is_named_part=False)
    if "part" in found and "stop" in found:
        scope.sink.error("part-and-stop", found["stop"])
    return part or stop


def _open(entry_id: EntryId, node: Node | None, scope: Scope) -> EntryId | None:
    written = fields.text(node, scope.sink)
    if node is None or written is None:
        return None
    name = clean(written)
    if name not in scope.entries:
        report_unknown("unknown-operation", name, node, scope.entries, scope.sink)
        return None
    if name == entry_id:
        scope.sink.error("open-itself", node, entry=quoted(name))
        return None
    return EntryId(name)
