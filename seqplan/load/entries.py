"""One entry: from its fields to what the model keeps of it."""

import re
from collections.abc import Callable, Mapping
from typing import Final

from seqplan.base.ids import EntryId, NotionId, OpId, PieceId
from seqplan.load import fields, joins, resolve
from seqplan.load.choices import operation, when
from seqplan.load.fields import Fields
from seqplan.load.keys import keys_with
from seqplan.load.names import ALL, clean
from seqplan.load.nodes import ListNode, Node, Scalar
from seqplan.load.scope import Scope
from seqplan.load.sink import found_instead, quoted
from seqplan.model.entry import Closing, Ends, Entry, Purpose, StrapMethod, Verb, ZipMethod
from seqplan.model.piece import Hand, Worn
from seqplan.words.say import say

_HOURS = re.compile(r"^(?P<count>\d{1,4})\s*(?P<unit>h|hours?|days?)?$", re.IGNORECASE)
_MOST_HOURS = 9999
_OF_ZIPS = frozenset({"method", "on top", "with", "part", "stop"})

Reader = Callable[[Entry, Fields, Scope], Entry]


def read_entry(entry_id: EntryId, verb: Verb, found: Fields, scope: Scope) -> Entry:
    """Read what all entries have, then what this verb has."""
    sink = scope.sink
    without = fields.names_of(found.get("without"), lambda node: fields.text(node, sink), sink)
    if "because" in found and "after" not in found:
        sink.warning("because-of-nothing", found["because"])
    entry = Entry(
        id=entry_id,
        verb=verb,
        without=tuple(part for part, _ in without),
        station=scope.known(found.get("station"), scope.stations, "unknown-station"),
        foot=fields.text(found.get("foot"), sink),
        thread=fields.text(found.get("thread"), sink),
        needle=fields.text(found.get("needle"), sink),
        setting=fields.text(found.get("setting"), sink),
        minutes=fields.number(found.get("minutes"), sink, keys_with(verb)["minutes"].bounds),
        unit=resolve.pieces(found.get("unit"), scope),
        keep_clear=resolve.pieces(found.get("keep clear"), scope),
        after=_after(entry_id, found.get("after"), scope),
        because=fields.text(found.get("because"), sink),
        title=fields.text(found.get("title"), sink),
        note=fields.note(found.get("note"), sink),
        say=fields.text(found.get("say"), sink),
        when=when(found.get("when"), scope.choices, sink),
        picture=fields.text(found.get("picture"), sink),
        path=("operations", entry_id),
    )
    return _READERS.get(verb, _on_edges)(entry, found, scope)


def _after(entry_id: EntryId, node: Node | None, scope: Scope) -> tuple[OpId, ...]:
    found = fields.names_of(node, lambda item: _operation(entry_id, item, scope), scope.sink)
    return tuple(OpId(name) for name, _ in found)


def _operation(entry_id: EntryId, node: Node, scope: Scope) -> str | None:
    """An entry, or one operation of it, but not of the entry itself."""
    name = operation(node, scope.entries, scope.sink)
    if name is not None and name.partition("/")[0] == entry_id:
        scope.sink.error("after-itself", node, entry=quoted(entry_id))
        return None
    return name


def _on_edges(entry: Entry, found: Fields, scope: Scope) -> Entry:
    node = found.get(entry.verb.value)
    run = resolve.run(node, scope)
    if entry.verb is Verb.TOWER_PLACKET and node is not None:
        _check_slits(run, node, scope)
    return entry._replace(run=run, portion=joins.read_portion(run, found, scope))


def _check_slits(run: resolve.Run, node: Node, scope: Scope) -> None:
    """Report edges that are not those of a slit, where only a slit can be bound."""
    items = fields.items_of(node)
    for place, ref in enumerate(run):
        piece = scope.piece.get(ref.piece)
        if piece is None or any(edge.is_slit for edge in piece.edges if edge.name == ref.edge):
            continue
        at = items[place] if len(items) == len(run) else node
        slits = [f"{piece.id}.{slit.name}" for slit in piece.slits]
        fix = scope.sink.suggest(str(ref), slits, "fix-no-slit")
        scope.sink.error("no-slit", at, edge=quoted(str(ref)), fix=fix)


def _on_pieces(entry: Entry, found: Fields, scope: Scope) -> Entry:
    return entry._replace(pieces=resolve.pieces(found.get(entry.verb.value), scope))


def _send_out(entry: Entry, found: Fields, scope: Scope) -> Entry:
    is_wet = bool(fields.yes_no(found.get("wet"), scope.sink))
    return _on_pieces(entry, found, scope)._replace(is_wet=is_wet)


def _finish(entry: Entry, found: Fields, scope: Scope) -> Entry:
    cuts = fields.length(found.get("cuts"), scope.sink, scope.units)
    return _on_edges(entry, found, scope)._replace(cuts=cuts)


def _trim(entry: Entry, found: Fields, scope: Scope) -> Entry:
    left = fields.length(found.get("to"), scope.sink, scope.units)
    return _on_edges(entry, found, scope)._replace(left=left)


def _fit(entry: Entry, found: Fields, scope: Scope) -> Entry:
    return _on_pieces(entry, found, scope)._replace(run=resolve.run(found.get("at"), scope))


def _fuse(entry: Entry, found: Fields, scope: Scope) -> Entry:
    fabric = scope.known(found.get("with"), scope.fabrics, "unknown-fabric")
    pieces, half = resolve.halved(found.get("fuse"), scope)
    return entry._replace(pieces=pieces, half=half, fabric=fabric)


def _pretreat(entry: Entry, found: Fields, scope: Scope) -> Entry:
    node = found.get("pretreat")
    if isinstance(node, Scalar) and clean(node.text).casefold() == ALL:
        return entry._replace(fabrics=tuple(scope.fabrics.names))
    read = fields.names_of(
        node, lambda item: scope.known(item, scope.fabrics, "unknown-fabric"), scope.sink
    )
    return entry._replace(fabrics=tuple(name for name, _ in read))


def _strap(entry: Entry, found: Fields, scope: Scope) -> Entry:
    key = keys_with(entry.verb)["method"]
    method = fields.choice(found.get("method"), scope.sink, key)
    return _on_pieces(entry, found, scope)._replace(
        strap=StrapMethod(method) if method else StrapMethod.TURNED,
        topstitch=joins.topstitch(found.get("topstitch"), scope),
    )


def _hold(entry: Entry, found: Fields, scope: Scope) -> Entry:
    return _on_edges(entry, found, scope)._replace(
        partners=resolve.pieces(found.get("with"), scope)
    )


def _set_on(entry: Entry, found: Fields, scope: Scope) -> Entry:
    """Bands and bindings."""
    sink, keys = scope.sink, keys_with(entry.verb)
    ends = fields.choice(found.get("ends"), sink, keys["ends"])
    closing = fields.choice(found.get("close"), sink, keys["close"])
    side = fields.choice(found.get("from"), sink, keys["from"])
    entry = _on_edges(entry, found, scope)._replace(
        ends=Ends(ends) if ends else None,
        closing=Closing(closing) if closing else None,
        from_wrong_side=side == "wrong side",
        topstitch=joins.topstitch(found.get("topstitch"), scope),
        is_flat=bool(fields.yes_no(found.get("flat"), sink)),
    )
    node = found.get("with")
    if isinstance(node, ListNode) and len(node.items) == 1:
        (node,) = node.items
    if entry.verb is Verb.BIND and isinstance(node, Scalar) and "+" not in node.text:
        notion, piece = resolve.notion_or_piece(node, scope)
        return entry._replace(notion=notion, partners=(piece,) if piece else ())
    partners, under = resolve.layered(node, scope)
    return entry._replace(partners=partners, under=under)


def _patch_pocket(entry: Entry, found: Fields, scope: Scope) -> Entry:
    sink = scope.sink
    piece = scope.known(found.get(entry.verb.value), scope.pieces, "unknown-piece")
    names = fields.names_of(found.get("open"), lambda node: fields.edge_name(node, sink), sink)
    known = scope.piece.get(piece or "")
    for name, at in names:
        if known is not None and name not in known.edge_names:
            fix = sink.suggest(name, known.edge_names, "fix-no-edges")
            sink.error("unknown-edge", at, piece=quoted(known.id), edge=quoted(name), fix=fix)
    return entry._replace(
        pieces=(PieceId(piece),) if piece else (),
        mouth=tuple(name for name, _ in names),
        depth=fields.length(found.get("depth"), sink, scope.units),
        places=resolve.places(found.get("at"), scope),
        partners=resolve.pieces(found.get("with"), scope),
    )


def _in_seam_pocket(entry: Entry, found: Fields, scope: Scope) -> Entry:
    return _on_pieces(entry, found, scope)._replace(run=resolve.run(found.get("in"), scope))


def _box_corner(entry: Entry, found: Fields, scope: Scope) -> Entry:
    width = fields.length(found.get("width"), scope.sink, scope.units)
    return _on_edges(entry, found, scope)._replace(width=width)


def _buttonhole(entry: Entry, found: Fields, scope: Scope) -> Entry:
    number = fields.number(found.get("number"), scope.sink, keys_with(entry.verb)["number"].bounds)
    places = resolve.places(found.get(entry.verb.value), scope)
    method = fields.choice(found.get("method"), scope.sink, keys_with(entry.verb)["method"])
    return entry._replace(places=places, number=number, is_bound=method == "bound")


def _turn(entry: Entry, found: Fields, scope: Scope) -> Entry:
    through = fields.text(found.get("through"), scope.sink)
    return _on_pieces(entry, found, scope)._replace(through=through)


def _shorten(entry: Entry, found: Fields, scope: Scope) -> Entry:
    end = fields.choice(found.get("from"), scope.sink, keys_with(entry.verb)["from"])
    return _open(entry, found, scope)._replace(from_bottom=end == "bottom")


def _open(entry: Entry, found: Fields, scope: Scope) -> Entry:
    """What is done to a zip as such."""
    node = found.get(entry.verb.value)
    name = scope.known(node, scope.notions, "unknown-notion")
    known = scope.notion.get(name or "")
    if known is not None and node is not None and "zip" not in known.kind.casefold():
        words = {"notion": quoted(known.id), "kind": quoted(known.kind)}
        scope.sink.error("no-zip", node, **words)
    return entry._replace(notion=NotionId(name) if name else None)


def _close(entry: Entry, found: Fields, scope: Scope) -> Entry:
    """The entry whose gap is closed."""
    node = found.get("close")
    name = scope.known(node, scope.entries, "unknown-operation")
    if name == entry.id and node is not None:
        scope.sink.error("to-itself", node, entry=quoted(name))
        return entry
    return entry._replace(closes=EntryId(name) if name else None)


def _wait(entry: Entry, found: Fields, scope: Scope) -> Entry:
    """``wait: 24``, ``wait: 24 hours`` or ``wait: 2 days``."""
    node, hours = found.get("wait"), 0
    if node is not None and not fields.is_empty(node, scope.sink):
        match = _HOURS.match(node.text.strip()) if isinstance(node, Scalar) else None
        if match is not None:
            hours = int(match["count"]) * (24 if (match["unit"] or "h")[0] in "dD" else 1)
        if not 1 <= hours <= _MOST_HOURS:
            scope.sink.error("unreadable-hours", node, found=found_instead(node))
    purpose = fields.choice(found.get("to"), scope.sink, keys_with(entry.verb)["to"])
    return entry._replace(
        hours=hours or None,
        pieces=resolve.pieces(found.get("on"), scope),
        purpose=Purpose(purpose) if purpose else None,
    )


def _insert(entry: Entry, found: Fields, scope: Scope) -> Entry:
    """Set a zip into edges, or thread something through a casing."""
    sink = scope.sink
    notion = scope.known(found.get("insert"), scope.notions, "unknown-notion")
    entry = entry._replace(notion=NotionId(notion) if notion else None)
    overlap = fields.length(found.get("overlap"), sink, scope.units)
    method = fields.choice(found.get("method"), sink, keys_with(entry.verb)["method"])
    partners = resolve.pieces(found.get("with"), scope)
    where = found.get("in")
    if where is None:
        return entry
    if not joins.is_edges(where):
        for word in _OF_ZIPS & found.keys():
            sink.error("key-of-zip", found[word], word=quoted(word))
        return entry._replace(into=_casing(where, scope), overlap=overlap)
    if "overlap" in found:
        sink.error("overlap-of-zip", found["overlap"])
    if method is None:
        known = scope.notion.get(notion or "")
        kind = known.kind if known is not None else ""
        method = "invisible" if "invisible" in kind.casefold() else "centred"
    run = resolve.run(where, scope)
    return entry._replace(
        run=run,
        portion=joins.read_portion(run, found, scope),
        method=ZipMethod(method),
        on_top=_on_top(found, ZipMethod(method), scope),
        partners=partners,
    )


def _on_top(found: Fields, method: ZipMethod, scope: Scope) -> Hand | Worn | None:
    """The side that lies on top, of a zip that one side covers."""
    node = found.get("on top")
    if node is not None and not method.is_covered:
        scope.sink.error("on-top-of-zip", node, method=method.value)
        return None
    side = fields.choice(node, scope.sink, keys_with(Verb.INSERT)["on top"])
    if side is None:
        return None
    return Hand(side) if side in {hand.value for hand in Hand} else Worn(side)


def _casing(node: Node, scope: Scope) -> EntryId | None:
    """An entry that makes a casing; a piece alone is told apart from an unknown name."""
    name = clean(fields.text(node, scope.sink) or "")
    if name in scope.piece and name not in scope.verbs:
        resolve.edge_ref(node, scope)
        return None
    known = scope.known(node, scope.entries, "unknown-operation") if name else None
    if known is None:
        return None
    if scope.verbs.get(known, Verb.CASING) is not Verb.CASING:
        scope.sink.error("no-casing", node, entry=quoted(known))
        return None
    return EntryId(known)


def _attach(entry: Entry, found: Fields, scope: Scope) -> Entry:
    """Sew on a notion, or a finished piece such as a strap."""
    sink, node = scope.sink, found.get("attach")
    where = found.get("at") or found.get("to")
    if where is None and node is not None:
        sink.error("missing-key", node, word=quoted("at"), help=say("help-at"))
    if "at" in found and "to" in found:
        sink.error("at-and-to", found["to"])
    run, places = resolve.edges_or_places(where, scope)
    number = fields.number(found.get("number"), sink, keys_with(entry.verb)["number"].bounds)
    side = fields.choice(found.get("from"), sink, keys_with(entry.verb)["from"])
    notion, piece, by = resolve.attached(node, scope)
    return entry._replace(
        run=run,
        places=places,
        number=number,
        from_wrong_side=side == "wrong side",
        is_doubled=bool(fields.yes_no(found.get("doubled"), sink)),
        notion=notion,
        pieces=(piece,) if piece else (),
        by=by,
    )


def _tack(entry: Entry, found: Fields, scope: Scope) -> Entry:
    entry = _on_edges(entry, found, scope)
    written = fields.text(found.get("to"), scope.sink)
    if written is None:
        return entry
    name = clean(written)
    if name == entry.id and name not in scope.notions.names:
        scope.sink.error("to-itself", found["to"], entry=quoted(name))
    elif name not in scope.notions and name not in scope.entries:
        known = {**scope.notions.names, **scope.entries.names}
        fix = scope.sink.suggest(name, known, "")
        scope.sink.error("unknown-fastening", found["to"], name=quoted(name), fix=fix)
    return entry._replace(to_name=name)


def _hem(entry: Entry, found: Fields, scope: Scope) -> Entry:
    sink, keys = scope.sink, keys_with(entry.verb)
    entry = _on_edges(entry, found, scope)
    how, is_flat = joins.ring_or_flat(entry, found, scope)
    return entry._replace(
        depth=fields.length(found.get("depth"), sink, scope.units),
        turned=fields.choice(found.get("turned"), sink, keys["turned"]),
        by_hand=fields.choice(found.get("by"), sink, keys["by"]) == "hand",
        how=how,
        is_flat=is_flat,
    )


def _casing_entry(entry: Entry, found: Fields, scope: Scope) -> Entry:
    sink, keys = scope.sink, keys_with(entry.verb)
    return _on_edges(entry, found, scope)._replace(
        depth=fields.length(found.get("depth"), sink, scope.units),
        gap=fields.length(found.get("gap"), sink, scope.units),
        turned=fields.choice(found.get("turned"), sink, keys["turned"]),
        is_flat=bool(fields.yes_no(found.get("flat"), sink)),
    )


def _do(entry: Entry, found: Fields, scope: Scope) -> Entry:
    sink = scope.sink
    makes = fields.names_of(found.get("makes"), lambda node: fields.name(node, sink), sink)
    uses = fields.names_of(found.get("uses"), lambda node: fields.name(node, sink), sink)
    return entry._replace(
        words=fields.text(found.get("do"), sink),
        pieces=resolve.pieces(found.get("on"), scope),
        run=resolve.run(found.get("at"), scope),
        is_wet=bool(fields.yes_no(found.get("wet"), sink)),
        makes=tuple(name for name, _ in makes),
        uses=tuple(name for name, _ in uses),
    )


_READERS: Final[Mapping[Verb, Reader]] = {
    Verb.PRETREAT: _pretreat,
    Verb.CUT: _on_pieces,
    Verb.MARK: _on_pieces,
    Verb.FUSE: _fuse,
    Verb.STRAP: _strap,
    Verb.HOLD: _hold,
    Verb.BAND: _set_on,
    Verb.BIND: _set_on,
    Verb.TOWER_PLACKET: _hold,
    Verb.CONTINUOUS_PLACKET: _hold,
    Verb.PATCH_POCKET: _patch_pocket,
    Verb.WELT_POCKET: _patch_pocket,
    Verb.IN_SEAM_POCKET: _in_seam_pocket,
    Verb.BOX_CORNER: _box_corner,
    Verb.BUTTONHOLE: _buttonhole,
    Verb.SEW: joins.read_join,
    Verb.BASTE: joins.read_join,
    Verb.INSERT: _insert,
    Verb.ATTACH: _attach,
    Verb.TACK: _tack,
    Verb.HEM: _hem,
    Verb.CASING: _casing_entry,
    Verb.TURN: _turn,
    Verb.ROLL: _turn,
    Verb.NEST: _on_pieces,
    Verb.OPEN: _open,
    Verb.SHORTEN: _shorten,
    Verb.CLOSE: _close,
    Verb.FINISH: _finish,
    Verb.TRIM: _trim,
    Verb.GRADE: _trim,
    Verb.WAIT: _wait,
    Verb.SEND_OUT: _send_out,
    Verb.FIT: _fit,
    Verb.INSPECT: _on_pieces,
    Verb.DO: _do,
}
